import type { FunctionComponent } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { UnitsSwitch } from '../../../calculators/ui/UnitsSwitch.tsx';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { folder } from '../../site/folder.ts';
import { askedToKeep } from '../form/keepAddress.ts';
import { Aloud } from './aloud.tsx';
import { Bars } from './Bars.tsx';
import { lazily, useBehind } from './lazily.tsx';
import { usePrinting } from './Part.tsx';
import type { Session } from './session.ts';
import type { PlaceView, View } from './view.ts';
import { type ViewKey, viewIn, views } from './views.ts';

// Each with its own fields, so that who came to save a file does not wait for the tables of water.
const ofPlace: Readonly<Partial<Record<ViewKey, FunctionComponent<PlaceView>>>> = {
  gate: lazily(async () => (await import('./Gate.tsx')).Gate),
  record: lazily(async () => (await import('./Record.tsx')).Record),
  ground: lazily(async () => (await import('./Ground.tsx')).Ground),
  stock: lazily(async () => (await import('./Stock.tsx')).Stock),
  feed: lazily(async () => (await import('./Feed.tsx')).Feed),
  water: lazily(async () => (await import('./Water.tsx')).Water),
  season: lazily(async () => (await import('./Season.tsx')).Season),
  tools: lazily(async () => (await import('./OwnTools.tsx')).OwnTools),
  plan: lazily(async () => (await import('./Plan.tsx')).PlanPage),
  visits: lazily(async () => (await import('./Visits.tsx')).Visits),
  visit: lazily(async () => (await import('./Visit.tsx')).VisitPage),
  compare: lazily(async () => (await import('./Compare.tsx')).Compare),
  note: lazily(async () => (await import('./Note.tsx')).NotePage),
};
const Keep = lazily<View & { readonly asked: NonNullable<ReturnType<typeof askedToKeep>> }>(async () => (await import('./Keep.tsx')).Keep);
const FromDisk = lazily<View>(async () => (await import('./FromDisk.tsx')).FromDisk);
const Start = lazily<View>(async () => (await import('./Start.tsx')).Start);
const OpenLink = lazily<View>(async () => (await import('./OpenLink.tsx')).OpenLink);
const Files = lazily<View>(async () => (await import('./Files.tsx')).Files);
const keepFocus = () => import('../../../calculators/ui/keepFocus.ts');

/** The system of units that forms and the place are read in. */
export interface KeptUnits {
  readonly read: () => UnitSystem;
  readonly write: (system: UnitSystem) => void;
}
interface AppProps extends Pick<View, 'forms' | 'office'> {
  readonly session: Session;
  readonly units: KeptUnits;
  readonly edition: string;
  /** Where the clock of the device is doubted. */
  readonly ClockBar: FunctionComponent<{ readonly session: Session }> | undefined;
}
export function App({ session, units, edition, forms, office, ClockBar }: AppProps) {
  const [, redraw] = useState(0);
  const [hash, setHash] = useState(location.hash);
  const [system, setSystem] = useState(units.read);
  const at = viewIn(hash);
  const asked = askedToKeep(hash);
  const isPrinting = usePrinting();
  useBehind(keepFocus);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => session.listen(() => redraw((count) => count + 1)), [session]);
  useEffect(() => {
    const go = (): void => {
      void session.flush();
      setHash(location.hash);
    };
    addEventListener('hashchange', go);
    return () => removeEventListener('hashchange', go);
  }, [session]);
  useEffect(() => {
    document.title = at.key === '' ? 'Your place - Holdwater' : `${at.title} - Your place - Holdwater`;
  }, [at]);
  const { place } = session;
  // Another view, or another place, is told from its title on.
  useLayoutEffect(() => () => title.current?.focus(), [place?.id, hash]);
  const view = { session, system, isPrinting, edition, forms, office };
  const Shown = ofPlace[at.key];
  return (
    <div class="screen">
      <div class="place">
        <nav class="place-views" aria-label="Your place">
          {views
            .filter(({ short }) => short !== '')
            .map(({ key, short }) => (
              <a key={key} href={`#/${key}`} aria-current={key === at.key ? 'page' : 'within' in at && at.within === key ? 'true' : undefined}>
                {short}
              </a>
            ))}
          <UnitsSwitch
            system={system}
            onSystem={(to) => {
              setSystem(to);
              units.write(to);
            }}
          />
        </nav>
        {ClockBar && <ClockBar session={session} />}
        <Bars {...view} />
        {/* The name of the open place stands above every view. */}
        {place && at.key !== '' && <p class="whose-place">{place.name}</p>}
        <h2 ref={title} tabIndex={-1} class={at.key === '' && !place ? 'unseen' : undefined}>
          {at.key === '' ? (place?.name ?? 'Start') : at.title}
        </h2>
        {folder() && <FromDisk {...view} />}
        {asked && <Keep {...view} asked={asked} />}
        {at.key === '' && !asked && <Start {...view} />}
        {at.key === 'files' && <Files {...view} />}
        {at.key === 'link' && <OpenLink key={hash} {...view} />}
        {Shown !== undefined &&
          (place === undefined ? (
            <p>
              No place is open. <a href="#/">Start one, or open a file</a>.
            </p>
          ) : (
            <Shown key={`${place.id} ${hash}`} {...view} place={place} />
          ))}
        <Aloud />
      </div>
    </div>
  );
}
