import type { FunctionComponent } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { Bars } from './Bars.tsx';
import { Feed } from './Feed.tsx';
import { Ground } from './Ground.tsx';
import { OwnTools, Season } from './Groups.tsx';
import { usePrinting } from './Part.tsx';
import { Start } from './Start.tsx';
import { Stock } from './Stock.tsx';
import type { Session } from './session.ts';
import type { PlaceView, View } from './view.ts';
import { type ViewKey, viewIn, views } from './views.ts';
import { Water } from './Water.tsx';

const ofPlace: Readonly<Partial<Record<ViewKey, FunctionComponent<PlaceView>>>> = {
  ground: Ground,
  stock: Stock,
  feed: Feed,
  water: Water,
  season: Season,
  tools: OwnTools,
};

/** Few visits need it, and it is not small. The worker keeps it with the page. */
function FilesWhenThere(view: View) {
  const [Files, setFiles] = useState<FunctionComponent<View> | 'failed' | undefined>(undefined);
  useEffect(() => {
    import('./Files.tsx').then(
      (brought) => setFiles(() => brought.Files),
      () => setFiles('failed'),
    );
  }, []);
  if (Files === undefined) return null;
  return Files === 'failed' ? (
    <p role="alert">This part of the page could not be loaded. Load the page again when there is signal.</p>
  ) : (
    <Files {...view} />
  );
}

interface AppProps {
  readonly session: Session;
  readonly system: UnitSystem;
  readonly edition: string;
}
export function App({ session, system, edition }: AppProps) {
  const [, redraw] = useState(0);
  const [at, setAt] = useState(() => viewIn(location.hash));
  const isPrinting = usePrinting();
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => session.listen(() => redraw((count) => count + 1)), [session]);
  useEffect(() => {
    const go = (): void => {
      void session.flush();
      setAt(viewIn(location.hash));
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
    <div class="screen place">
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
      {at.key === '' && <Start {...view} />}
      {at.key === 'files' && <FilesWhenThere {...view} />}
      {Shown !== undefined &&
        (place === undefined ? (
          <p>
            No place is open. <a href="#/">Start one, or open a file</a>.
          </p>
        ) : (
          <Shown key={place.id} {...view} place={place} />
        ))}
    </div>
  );
}
