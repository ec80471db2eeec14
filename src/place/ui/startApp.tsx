import { render } from 'preact';
import { localDay } from '../../../calculators/units/days.ts';
import { isoDay, printClock } from '../../../calculators/units/printQuantity.ts';
import { sharedKey } from '../../scripts/kept.ts';
import type { TextStore } from '../store/journal.ts';
import { openStore } from '../store/openStore.ts';
import { App, type KeptUnits } from './App.tsx';
import { type Backups, backupsIn } from './backups.ts';
import type { OpenMark } from './openMark.ts';
import { type OldRain, Session } from './session.ts';
import type { View } from './view.ts';

interface Starting extends Pick<View, 'forms' | 'office'> {
  readonly box: HTMLElement;
  readonly units: KeptUnits;
  readonly edition: string;
  /** The day of the copy, and the first and the last one that it takes for today. */
  readonly built: { readonly day: string; readonly likelyDays: string };
  readonly mark: OpenMark;
  readonly oldRain: OldRain;
  readonly texts: Parameters<typeof backupsIn>[0];
}
/** Storage that may be switched off; to ask for it can already throw. */
function textStore(): TextStore | undefined {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
}
/** A window in words that a person would know again. */
const windowWords = (now: Date): string =>
  `${matchMedia('(pointer: coarse)').matches ? 'Phone or tablet' : 'Computer'}, window of ${printClock(now)}`;

/** Opens what is kept and draws the page over it. */
export async function startApp({ box, units, edition, built, forms, office, mark, oldRain, texts }: Starting): Promise<void> {
  const by = windowWords(new Date());
  const store = await openStore({ by, texts: textStore(), isMemoryChosen: location.search === '?keep-nothing' });
  const backups: Backups = backupsIn(texts);
  const [first = '', last = ''] = built.likelyDays.split(' ');
  const deviceDay = isoDay(localDay(new Date()));
  const asked = deviceDay < first || deviceDay > last ? (await import('./clockAsked.tsx')).clockAsked(built.day) : undefined;
  const session = new Session({ store, mark, oldRain, backups, by, now: asked?.now ?? (() => new Date()) });
  await session.begin();
  if (store.state().is === 'kept') texts.write(sharedKey, 'yes');
  for (const name of ['pagehide', 'visibilitychange']) addEventListener(name, () => void session.flush(), true);
  addEventListener('beforeunload', (event) => {
    if (session.state.is !== 'kept' && session.place !== undefined) event.preventDefault();
  });
  box.replaceChildren();
  render(<App session={session} units={units} edition={edition} forms={forms} office={office} ClockBar={asked?.ClockBar} />, box);
  box.dataset['ready'] = '';
}
