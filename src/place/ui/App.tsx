import type { FunctionComponent } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { askedToKeep } from '../form/keepAddress.ts';
import { Bars } from './Bars.tsx';
import { lazily } from './lazily.tsx';
import { usePrinting } from './Part.tsx';
import { Start } from './Start.tsx';
import type { Session } from './session.ts';
import type { Calculators, PlaceView, View } from './view.ts';
import { type ViewKey, viewIn, views } from './views.ts';

// Each with its own fields, so that who came to save a file does not wait for the tables of water.
const ofPlace: Readonly<Partial<Record<ViewKey, FunctionComponent<PlaceView>>>> = {
  ground: lazily(async () => (await import('./Ground.tsx')).Ground),
  stock: lazily(async () => (await import('./Stock.tsx')).Stock),
  feed: lazily(async () => (await import('./Feed.tsx')).Feed),
  water: lazily(async () => (await import('./Water.tsx')).Water),
  season: lazily(async () => (await import('./Groups.tsx')).Season),
  tools: lazily(async () => (await import('./Groups.tsx')).OwnTools),
};
const Keep = lazily<View & { readonly calculators: Calculators; readonly asked: NonNullable<ReturnType<typeof askedToKeep>> }>(
  async () => (await import('./Keep.tsx')).Keep,
);
const FromDisk = lazily<View & { readonly calculators: Calculators; readonly slugs: readonly string[] }>(
  async () => (await import('./FromDisk.tsx')).FromDisk,
);
const Files = lazily<View>(async () => (await import('./Files.tsx')).Files);

interface AppProps {
  readonly session: Session;
  readonly system: UnitSystem;
  readonly edition: string;
  readonly calculators: Calculators;
  /** Of all definitions. */
  readonly slugs: readonly string[];
}
export function App({ session, system, edition, calculators, slugs }: AppProps) {
  const [, redraw] = useState(0);
  const [at, setAt] = useState(() => viewIn(location.hash));
  const [asked, setAsked] = useState(() => askedToKeep(location.hash));
  const isPrinting = usePrinting();
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => session.listen(() => redraw((count) => count + 1)), [session]);
  useEffect(() => {
    const go = (): void => {
      void session.flush();
      setAt(viewIn(location.hash));
      setAsked(askedToKeep(location.hash));
      title.current?.focus();
    };
    addEventListener('hashchange', go);
    return () => removeEventListener('hashchange', go);
  }, [session]);
  useEffect(() => {
    document.title = at.key === '' ? 'Your place - Holdwater' : `${at.title} - Your place - Holdwater`;
  }, [at]);
  const { place } = session;
  const view = { session, system, isPrinting, edition };
  const Shown = ofPlace[at.key];
  return (
    <div class="screen">
      <div class="place">
        <nav class="place-views" aria-label="Your place">
          {views.map(({ key, short }) => (
            <a key={key} href={`#/${key}`} aria-current={key === at.key ? 'page' : undefined}>
              {short}
            </a>
          ))}
        </nav>
        <Bars {...view} />
        {/* The name of the open place stands above every view. */}
        {place && at.key !== '' && <p class="whose-place">{place.name}</p>}
        <h2 ref={title} tabIndex={-1} class={at.key === '' && !place ? 'unseen' : undefined}>
          {at.key === '' ? (place?.name ?? 'Start') : at.title}
        </h2>
        {location.protocol === 'file:' && <FromDisk {...view} calculators={calculators} slugs={slugs} />}
        {asked && <Keep {...view} calculators={calculators} asked={asked} />}
        {at.key === '' && !asked && <Start {...view} />}
        {at.key === 'files' && <Files {...view} />}
        {Shown !== undefined &&
          (place === undefined ? (
            <p>
              No place is open. <a href="#/">Start one, or open a file</a>.
            </p>
          ) : (
            <Shown key={place.id} {...view} place={place} />
          ))}
      </div>
    </div>
  );
}
