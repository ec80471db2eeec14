// What only some forms need, fetched for those before they are taken over.
import type { Calculator } from '../../calculators/kit/define.ts';
import { isRecord, movesWithToday, usesTools } from '../../calculators/kit/inputs.ts';
import { askedFirst, isTable } from '../../calculators/kit/screen.ts';
import { startTexts } from '../../calculators/kit/state.ts';
import { fetchParts, fetchTools, type Parts } from '../../calculators/ui/parts.ts';
import type { Records } from '../../calculators/ui/RecordField.tsx';
import { kept, placeKey } from './kept.ts';
import type { Long } from './longRuns.ts';

export interface Extras {
  readonly parts: Parts;
  /** In a guide there is nothing built that could stand there meanwhile. */
  readonly later: Later | undefined;
  readonly records: Records['draw'] | undefined;
  /** What opens a link, or moves an example to today: a form needs one of them at most. */
  readonly opener: Opener | undefined;
  readonly at: AtPlace | undefined;
  /** What draws a form whose calculation takes long. */
  readonly long: Long | undefined;
}
export type Later = Awaited<ReturnType<typeof loadLater>>;
/** What follows the form, with the pictures that these answers show. */
export const loadLater = (calculator: Calculator, answers: Readonly<Record<string, unknown>>) =>
  import('./later.tsx').then(({ bringLater }) => bringLater(calculator, answers));
type AtPlace = NonNullable<Awaited<ReturnType<typeof import('../place/form/atPlace.ts').placeAt>>>;
type Opener =
  | { readonly query: string; readonly fromLink: typeof import('../../calculators/kit/openLink.ts').fromLink }
  | (Pick<typeof import('./clock.ts'), 'clockNow'> & Pick<typeof import('./today.ts'), 'exampleBy'>);

async function loadOpener(query: string, { inputs }: Calculator): Promise<Opener | undefined> {
  if (query === '') {
    if (!movesWithToday(inputs)) return undefined;
    const [{ clockNow }, { exampleBy }] = await Promise.all([import('./clock.ts'), import('./today.ts')]);
    return { clockNow, exampleBy };
  }
  const { fromLink } = await import('../../calculators/kit/openLink.ts');
  return { query, fromLink };
}

/** Most people keep no place: what it says is fetched only for those who do. Without it a form works as ever. */
const loadPlace = (box: HTMLElement, calculator: Calculator, query: string): Promise<AtPlace | undefined> | undefined =>
  kept('localStorage', placeKey) === null
    ? undefined
    : import('../place/form/atPlace.ts').then(({ placeAt }) => placeAt(calculator, box, query)).catch((error: unknown) => void console.info(error));

/** What a form is opened with: all for two managements, tables and tools where one stands open. */
async function loadParts(query: string, { inputs, layout }: Calculator): Promise<Parts> {
  if ([...new URLSearchParams(query).keys()].some((name) => /^that(?:\.|$)/.test(name))) return fetchParts(inputs);
  const asked = askedFirst(inputs, layout);
  const [tables, tools] = await Promise.all([
    Object.values(asked).some(isTable) ? import('../../calculators/ui/tables.ts') : {},
    usesTools(asked) ? fetchTools() : {},
  ]);
  return { ...tables, ...tools };
}

/** Draws records; where none is asked at first, the field comes when it is shown. */
async function loadRecords({ inputs, layout }: Calculator): Promise<Records['draw'] | undefined> {
  if (!Object.values(inputs).some(isRecord)) return undefined;
  if (Object.values(askedFirst(inputs, layout)).some(isRecord)) return (await import('../../calculators/ui/RecordField.tsx')).RecordField;
  return (await import('../../calculators/ui/LaterRecord.tsx')).LaterRecord;
}

/**
 * All that this form needs of it, at once.
 * @throws Error if any of it but the place cannot be had
 */
export async function fetchExtras(box: HTMLElement, calculator: Calculator, query: string): Promise<Extras> {
  const [opener, at, parts, later, records, long] = await Promise.all([
    loadOpener(query, calculator),
    loadPlace(box, calculator, query),
    loadParts(query, calculator),
    box.dataset['ownsAddress'] !== undefined ? undefined : loadLater(calculator, startTexts(calculator.inputs)),
    loadRecords(calculator),
    calculator.runs && import('./longRuns.ts').then(({ startLong }) => startLong(calculator)),
  ]);
  return { parts, later, records, opener, at, long };
}
