// Takes over a built form, or draws one in a guide: loads the definition's chunk, applies the link or what was kept, follows what is typed. Fetched by calculatorLoader.ts.
import { hydrate, render } from 'preact';
import type { Calculator } from '../../calculators/kit/define.ts';
import { movesWithToday, usesTools } from '../../calculators/kit/inputs.ts';
import { startTexts, type Texts } from '../../calculators/kit/state.ts';
import { CalculatorForm, type CalculatorFormProps, type Change, type Reach } from '../../calculators/ui/CalculatorForm.tsx';
import type { Opening } from '../../calculators/ui/formState.ts';
import { type DrawPicture, loadPicture } from '../../calculators/ui/pictures/loadPicture.tsx';
import type { Tools } from '../../calculators/ui/props.ts';
import type { Records } from '../../calculators/ui/RecordField.tsx';
import type { ToolStore } from '../../calculators/ui/tools/keptTool.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import { forget, formKeyOf, keep, kept, pickedCountry, placeKey, recordKeyOf, toolKeyOf, unitsKey } from './kept.ts';
import { startPrint } from './print.ts';
import { keepWhose, keptWhose } from './whose.ts';
import { startWorking } from './working.ts';

const definitions = import.meta.glob<{ default: Calculator }>('../../calculators/catalog/*/definition.ts');
/** What somebody typed or chose before the script came: `hydrate` would overwrite it. */
function earlyAnswers(root: Element): () => Promise<void> {
  const fields = [...root.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>('input[type="text"], input[type="date"], textarea')]
    .filter((field) => field.value !== field.defaultValue)
    .map((field) => [field.id, field.value] as const);
  const radios = [...root.querySelectorAll<HTMLInputElement>('input[type="radio"]')]
    .filter((field) => field.checked && !field.defaultChecked && field.id !== '')
    .map((field) => field.id);
  const selects = [...root.querySelectorAll('select')]
    .filter((field) => field.selectedOptions[0]?.defaultSelected === false)
    .map((field) => [field.id, field.value] as const);
  const put = (id: string, value: string, event: string) => {
    const field = document.getElementById(id);
    if (!(field instanceof HTMLInputElement || field instanceof HTMLSelectElement || field instanceof HTMLTextAreaElement)) return;
    field.value = value;
    field.dispatchEvent(new Event(event, { bubbles: true }));
  };
  return async () => {
    // One at a time: each answer goes into the form as it stands after the one before.
    const drawn = () => new Promise((done) => setTimeout(done));
    for (const [id, value] of fields) {
      put(id, value, 'input');
      await drawn();
    }
    for (const [id, value] of selects) {
      put(id, value, 'change');
      await drawn();
    }
    for (const id of radios) {
      document.getElementById(id)?.click();
      await drawn();
    }
  };
}

/** Browsers refuse an address that is written too often. */
const restMs = 400;
/** The address follows the form, at once and then with rests, and never grows the history: Back leaves the page, as people expect. */
function addressBar(): (link: string) => void {
  let pending = '';
  let timer = 0;
  const flush = () => {
    if (pending !== '') history.replaceState(history.state, '', pending);
    pending = '';
  };
  addEventListener('pagehide', flush);
  return (link) => {
    pending = `?${link}${location.hash}`;
    if (timer !== 0) return;
    flush();
    timer = window.setTimeout(() => {
      timer = 0;
      flush();
    }, restMs);
  };
}

const keptNotice = 'A link carries no record. The one that is kept in this browser is used.';
/** The records that this browser keeps for a form. */
function keptRecords({ inputs }: Calculator): Texts {
  return Object.fromEntries(
    Object.entries(inputs).flatMap(([key, input]) => {
      const text = input.kind === 'record' ? kept('localStorage', recordKeyOf(key)) : null;
      return text === null ? [] : [[key, text] as const];
    }),
  );
}
/** A running watch and the order of taps outlive a reload, as what was typed does. */
const toolStore = (box: HTMLElement): ToolStore => ({
  read: (tool) => kept('sessionStorage', toolKeyOf(box, tool)),
  write: (tool, text) => (text === null ? forget('sessionStorage', toolKeyOf(box, tool)) : keep('sessionStorage', toolKeyOf(box, tool), text)),
});

function keepRecord(name: string, text: string): boolean {
  const isKept = text !== '' && keep('localStorage', recordKeyOf(name), text);
  // Where the new one does not fit, the old one would come back at the next visit and pass for it.
  if (!isKept) forget('localStorage', recordKeyOf(name));
  return isKept || text === '';
}
/** What only some forms need, fetched for those. */
interface Extra {
  readonly Picture: DrawPicture | undefined;
  readonly tools: Tools['draw'] | undefined;
  readonly records: Records['draw'] | undefined;
  /** What opens a link, or moves an example to today: a form needs one of them at most. */
  readonly opener: Opener | undefined;
  readonly at: AtPlace | undefined;
  /** What draws a form whose calculation takes long. */
  readonly long: Pick<CalculatorFormProps, 'useRan' | 'Alone'> | undefined;
}
const carryMs = 500;
type NamesNow = typeof import('./names.ts').namesNow;
type AtPlace = NonNullable<Awaited<ReturnType<typeof import('../place/form/atPlace.ts').placeAt>>>;
type Opener =
  | { readonly query: string; readonly fromLink: typeof import('../../calculators/kit/openLink.ts').fromLink }
  | Pick<typeof import('./today.ts'), 'clockNow' | 'exampleBy'>;
/** The answers that a form is opened with, if any: its link's, or those that this guide's form was left with. */
const queryOf = (box: HTMLElement): string =>
  box.dataset['ownsAddress'] !== undefined ? location.search.slice(1) : (kept('sessionStorage', formKeyOf(box)) ?? '');
async function loadOpener(query: string, { inputs }: Calculator): Promise<Opener | undefined> {
  if (query === '') return movesWithToday(inputs) ? import('./today.ts') : undefined;
  const { fromLink } = await import('../../calculators/kit/openLink.ts');
  return { query, fromLink };
}

/** Most people keep no place: what it says is fetched only for those who do. Without it a form works as ever. */
const loadPlace = (box: HTMLElement, calculator: Calculator): Promise<AtPlace | undefined> | undefined =>
  kept('localStorage', placeKey) === null
    ? undefined
    : import('../place/form/atPlace.ts').then(({ placeAt }) => placeAt(calculator, box)).catch((error: unknown) => void console.info(error));

function start(box: HTMLElement, calculator: Calculator, { Picture, tools, records: drawRecord, opener, at, long }: Extra): Promise<void> {
  const root = box.querySelector('[data-form]');
  if (!root) return Promise.resolve();
  const ownsAddress = box.dataset['ownsAddress'] !== undefined;
  const formKey = formKeyOf(box);
  const system: UnitSystem = kept('localStorage', unitsKey) === 'si' ? 'si' : 'us';
  const records = keptRecords(calculator);
  const hasRecords = Object.keys(records).length > 0;
  const own = new Set(Object.keys(records));
  const dater = opener && 'query' in opener ? undefined : (at ?? opener);
  const clock = dater?.clockNow(box.dataset['built'] ?? '');
  let opened: Opening | null = null;
  const opening = (): Opening | null => {
    if (opener && 'query' in opener) {
      const { form: linked, notices, named } = opener.fromLink(calculator, opener.query);
      const form = { this: { ...linked.this, ...records }, that: linked.that && { ...linked.that, ...records } };
      const whose = keptWhose(box, opener.query);
      return {
        form,
        system,
        notices: hasRecords ? [...notices, keptNotice] : notices,
        linked: whose?.linked ?? named,
        touched: new Set([...(whose?.touched ?? []), ...own]),
        blank: new Set([...named].filter((key) => form.this[key] === '')),
        today: new Map(),
        placed: whose?.placed ?? new Set(),
        filled: whose?.filled,
        names: whose?.names ?? ['', ''],
        ...at?.opened(opener.query, { form, named, system, isOwn: whose !== undefined }),
      };
    }
    const fresh = clock && dater?.exampleBy(clock, calculator, system);
    if (system === 'us' && !hasRecords && !fresh) return null;
    const texts = fresh?.texts ?? startTexts(calculator.inputs, system);
    const placed = fresh?.placed ?? new Set<string>();
    return {
      form: { this: { ...texts, ...records }, that: null },
      system,
      notices: fresh?.notices ?? [],
      linked: new Set(),
      touched: new Set([...own, ...placed]),
      today: fresh?.today ?? new Map(),
      placed,
      place: fresh?.place,
      names: ['', ''],
    };
  };
  const open = (): Opening | null => {
    opened = opening();
    return opened;
  };
  const page = new URL(box.dataset['page'] ?? location.pathname, location.href).href;
  // At the office's own copy, where it has named one: a page on a disk or on a room's network has no address that leads anywhere else.
  const { dataset } = document.documentElement;
  const published = () => (dataset['copyAt'] ? `${dataset['copyAt']}calculators/${calculator.slug}/` : page);
  const ownPage = box.querySelector<HTMLAnchorElement>('[data-own-page]');
  const toWorking = startWorking(box, calculator);
  // A guide prints as a guide; a sheet is printed from the calculator's own page.
  const paper = ownsAddress ? startPrint(calculator, { Picture, address: published, names: (title) => namesNow?.(title) }) : undefined;
  let latest: Change | undefined;
  let reach: Reach | undefined;
  // Before the address is written for the last time.
  addEventListener('pagehide', () => {
    const change = reach?.now();
    if (change && change.form !== latest?.form) onChange(change);
  });
  let namesNow: NamesNow | undefined;
  const toAddress = ownsAddress ? addressBar() : (link: string) => keep('sessionStorage', formKey, link);
  let [isOpening, isOnes] = [true, false];
  const onChange = (change: Change) => {
    latest = change;
    toWorking(change);
    paper?.follow(change);
    if (ownPage) ownPage.href = `${page}?${change.link}`;
    // Told a little later than it was opened, and still nothing that a person did.
    if (isOpening || (change.form === opened?.form && change.names === opened.names)) return;
    isOnes = true;
    toAddress(change.link);
    keepWhose(box, change);
  };
  /** Other dates in an example that nobody has changed are no change by anybody. */
  const reopen = (opening: Opening) => {
    if (!isOnes) opened = opening;
    reach?.open(opening);
  };
  const id = box.dataset['name'] ?? calculator.slug;
  /** Undo and what else is carried on comes once the page is quiet. */
  const carryLater = (start: Change | undefined) =>
    setTimeout(
      () =>
        void import('../place/carry/startCarrying.tsx')
          .then(({ startCarrying }) => {
            if (reach && start) namesNow = startCarrying({ box, id, calculator, page, at, reach, start });
          })
          .catch(console.info),
      carryMs,
    );
  const replay = earlyAnswers(root);
  // A guide holds no built form: there is nothing to take over.
  const draw = ownsAddress ? hydrate : render;
  draw(
    <CalculatorForm
      calculator={calculator}
      id={id}
      open={open}
      onChange={onChange}
      address={(link) => `${published()}?${link}`}
      leadAddress={({ page: to, query }) => new URL(`../../${to}/${query === '' ? '' : `?${query}`}`, page).href}
      onLive={(way) => {
        reach = way;
      }}
      {...(paper && { onPrint: paper.print })}
      headingOf={(title) => (namesNow ? namesNow(title).heading : title)}
      onKeep={async (host, as) => {
        const { keepHere } = await import('../place/form/keepHere.ts');
        if (reach) await keepHere(as, { host, box, id, calculator, change: reach.now() });
      }}
      onSystem={(to) => keep('localStorage', unitsKey, to)}
      Picture={Picture}
      {...long}
      {...(tools && { tools, store: toolStore(box) })}
      {...(drawRecord && { records: drawRecord, keepRecord })}
    />,
    root,
  );
  at?.draw(root, id, () => reach);
  // The form's own first changes come from opening it; what follows comes from a person.
  return new Promise((done) =>
    setTimeout(async () => {
      isOpening = false;
      await replay();
      box.dataset['ready'] = '';
      done();
      if (ownsAddress) carryLater(reach?.now());
      // Most people never pick a country: what fills its values in is fetched only for those who have. The form works without, and no signal is no error.
      if (pickedCountry() && box.querySelector('[data-local-fill]'))
        void import('./localFill.ts').then(({ offerLocalFill }) => offerLocalFill({ box, calculator, reach: () => reach })).catch(console.info);
      if (!dater || !clock?.isDoubted) return;
      const asking = { root, id, calculator, clock, exampleBy: dater.exampleBy, latest: () => latest, open: reopen };
      void import('./askToday.tsx').then(({ askToday }) => askToday(asking)).catch(console.info);
    }),
  );
}

/**
 * Loads one calculator and starts it.
 * @throws Error if its chunk cannot be had
 */
export async function openCalculator(box: HTMLElement): Promise<void> {
  const load = definitions[`../../calculators/catalog/${box.dataset['calculator'] ?? ''}/definition.ts`];
  if (!load) throw new Error(`no definition for ${box.dataset['calculator']}`);
  const { default: calculator } = await load();
  // Before the takeover: its first render must equal the built page, which has them.
  const hasRecord = Object.values(calculator.inputs).some(({ kind }) => kind === 'record');
  const [opener, at, Picture, tools, records, long] = await Promise.all([
    loadOpener(queryOf(box), calculator),
    loadPlace(box, calculator),
    loadPicture(calculator),
    usesTools(calculator.inputs) ? import('../../calculators/ui/tools/toolSet.ts').then(({ toolSet }) => toolSet) : undefined,
    hasRecord ? import('../../calculators/ui/RecordField.tsx').then(({ RecordField }) => RecordField) : undefined,
    calculator.runs && import('./longRuns.ts').then(({ startLong }) => startLong(calculator)),
  ]);
  await start(box, calculator, { Picture, tools, records, opener, at, long });
}
