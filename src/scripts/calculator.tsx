// Takes over a built form, or draws one in a guide: loads the definition's chunk, applies the link or what was kept, follows what is typed. Fetched by calculatorLoader.ts.
import { hydrate, render } from 'preact';
import type { Calculator } from '../../calculators/kit/define.ts';
import { movesWithToday } from '../../calculators/kit/inputs.ts';
import { isShown, startTexts, type Texts } from '../../calculators/kit/state.ts';
import { CalculatorForm } from '../../calculators/ui/CalculatorForm.tsx';
import type { Change, Reach } from '../../calculators/ui/formProps.ts';
import type { Follow, Opening } from '../../calculators/ui/formState.ts';
import type { Told } from '../../calculators/ui/LaterPart.tsx';
import { type RanAhead, runAhead, sideOf } from '../../calculators/ui/sides.ts';
import type { ToolStore } from '../../calculators/ui/tools/keptTool.ts';
import { blankIn } from '../../calculators/ui/touched.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import { breath } from './breath.ts';
import { earlyAnswers } from './earlyAnswers.ts';
import { type Extras, fetchExtras, type Later, loadLater } from './formExtras.ts';
import { forget, formKeyOf, keep, kept, pickedCountry, recordKeyOf, toolKeyOf, unitsKey } from './kept.ts';
import type { Following } from './later.tsx';
import { putAside, type Waiting, waitForLater } from './waitForLater.ts';
import { keepWhose, keptWhose } from './whose.ts';

const definitions = import.meta.glob<{ default: Calculator }>('../../calculators/catalog/*/definition.ts');

/** Browsers refuse an address that is written too often; and writing it takes a slow phone as long as a key. */
const restMs = 400;
/** The address follows the form, right behind a key and then with rests, and never grows the history: Back leaves the page, as people expect. */
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
    void breath().then(flush);
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
/** What nobody has asked for yet waits until the live form is painted, on a slow phone as well. */
const paintedMs = 200;
/** The answers that a form is opened with, if any: its link's, or those that this guide's form was left with. */
const queryOf = (box: HTMLElement): string =>
  box.dataset['ownsAddress'] !== undefined ? location.search.slice(1) : (kept('sessionStorage', formKeyOf(box)) ?? '');
async function start(box: HTMLElement, calculator: Calculator, { parts, later, records: drawRecord, opener, at, long }: Extras): Promise<void> {
  const root = box.querySelector('[data-form]');
  if (!root) return;
  const ownsAddress = box.dataset['ownsAddress'] !== undefined;
  const formKey = formKeyOf(box);
  const system: UnitSystem = kept('localStorage', unitsKey) === 'si' ? 'si' : 'us';
  const records = keptRecords(calculator);
  const hasRecords = Object.keys(records).length > 0;
  const isUsed = (key: string, texts: Texts): boolean => isShown(calculator.inputs[key] ?? {}, texts);
  const own = new Set(Object.keys(records));
  const dater = opener && 'query' in opener ? undefined : (at ?? opener);
  const clock = dater?.clockNow(box.dataset['built'] ?? '');
  const opening = (): Opening | null => {
    if (opener && 'query' in opener) {
      const { form: linked, notices, named } = opener.fromLink(calculator, opener.query);
      const form = { this: { ...linked.this, ...records }, that: linked.that && { ...linked.that, ...records } };
      const whose = keptWhose(box, opener.query);
      return {
        form,
        system,
        notices: Object.keys(records).some((key) => isUsed(key, form.this)) ? [...notices, keptNotice] : notices,
        linked: whose?.linked ?? named,
        touched: new Set([...(whose?.touched ?? []), ...own]),
        blank: blankIn(form.this, named),
        today: new Map(),
        placed: whose?.placed ?? new Set(),
        filled: whose?.filled,
        names: whose?.names ?? ['', ''],
        ...at?.link?.opened(opener.query, { form, named, system, isOwn: whose !== undefined }),
      };
    }
    const fresh = clock && dater?.exampleBy(clock, calculator, system);
    if (system === 'us' && !hasRecords && !fresh) return null;
    const texts = fresh?.texts ?? startTexts(calculator.inputs, system);
    const placed = fresh?.placed ?? new Set<string>();
    const blank = fresh?.blank ?? new Set<string>();
    return {
      form: { this: { ...texts, ...records }, that: null },
      system,
      notices: fresh?.notices ?? [],
      linked: new Set(),
      touched: new Set([...own, ...placed, ...blank]),
      blank,
      today: fresh?.today ?? new Map(),
      placed,
      place: fresh?.place,
      names: ['', ''],
    };
  };
  const begun = startTexts(calculator.inputs);
  const ahead: RanAhead[] = [];
  const run = async (texts: Texts, of: UnitSystem) => {
    if (!long) ahead.push(runAhead(calculator, texts, of));
    await breath();
  };
  await run(begun, 'us');
  let opened = opening();
  if (opened) {
    await breath();
    await run(opened.form.this, opened.system);
  }
  const page = new URL(box.dataset['page'] ?? location.pathname, location.href).href;
  const ownPage = box.querySelector<HTMLAnchorElement>('[data-own-page]');
  let [built, latest]: (Change | undefined)[] = [];
  let reach: Reach | undefined;
  let follow: Follow | undefined;
  // Before the address is written for the last time.
  addEventListener('pagehide', () => {
    const change = reach?.now();
    if (change && change.form !== latest?.form) onChange(change);
  });
  let following: Following | undefined;
  /** What changed while all that follows was brought to life. */
  let missed: { readonly told?: Told; readonly change?: Change } = {};
  let waiting: Waiting | undefined;
  const toAddress = ownsAddress ? addressBar() : (link: string) => keep('sessionStorage', formKey, link);
  let [isOpening, isOnes] = [true, false];
  const onChange = (change: Change) => {
    built ??= change;
    latest = change;
    missed = { ...missed, change };
    following?.follow(change);
    if (ownPage) ownPage.href = `${page}?${change.link}`;
    // Told a little later than it was opened, and still nothing that a person did.
    if (isOpening || (!isOnes && change.form === opened?.form && change.names === opened.names)) return;
    isOnes = true;
    toAddress(change.link);
    keepWhose(box, change);
  };
  const onTold = (told: Told) => {
    waiting?.outdate();
    missed = { ...missed, told };
    following?.show(told);
  };
  /** Other dates in an example that nobody has changed are no change by anybody. */
  const reopen = (opening: Opening) => {
    if (!isOnes) opened = opening;
    reach?.open(opening);
  };
  const id = box.dataset['name'] ?? calculator.slug;
  const replay = earlyAnswers(root);
  // A guide holds no built form: there is nothing to take over.
  const draw = ownsAddress ? hydrate : render;
  const putBack = putAside(root);
  draw(
    <CalculatorForm
      calculator={calculator}
      id={id}
      begun={begun}
      open={() => opened}
      useRan={sideOf(ahead)}
      onChange={onChange}
      follow={(now) => follow?.(now)}
      onTold={onTold}
      onLive={(way) => {
        reach = way;
      }}
      onSystem={(to) => keep('localStorage', unitsKey, to)}
      parts={parts}
      {...long?.drawn}
      store={toolStore(box)}
      {...(drawRecord && { records: drawRecord, keepRecord })}
    />,
    root,
  );
  const boxes = putBack();
  // Whoever goes into a field is about to change it.
  if (long) root.addEventListener('focusin', long.warmUp, { once: true });
  const startFollowing = async (startLater: Later): Promise<void> => {
    if (!boxes || !reach || !built) return;
    missed = {};
    following = await startLater({ box, boxes, id, calculator, page, ownsAddress, at, reach, built, now: reach.now() });
    if (missed.told) following.show(missed.told);
    if (missed.change) following.follow(missed.change);
  };
  if (later) {
    // Once it is opened: nothing is drawn that would not stay.
    await breath();
    await startFollowing(later);
  } else if (boxes) waiting = waitForLater(boxes);
  at?.draw(root, id, () => reach);
  const bringFollowing = (): void => {
    if (!dater || !clock) return;
    const { exampleBy } = dater;
    void import('./followDates.ts')
      .then(({ followDates }) => {
        follow = followDates({ root, id, calculator, clock, exampleBy, latest: () => reach?.now(), open: reopen });
      })
      .catch(console.info);
  };
  // The form's own first changes come from opening it; what follows comes from a person.
  return new Promise((done) =>
    setTimeout(async () => {
      isOpening = false;
      await replay();
      box.dataset['ready'] = '';
      done();
      // Where other answers stand than were built, the picture's place is empty meanwhile.
      const isEmpty = boxes?.pictured.dataset['waits'] !== undefined;
      const laterMs = isEmpty ? 0 : paintedMs;
      setTimeout(() => {
        reach?.bringParts();
        // The worker of a long run has it, but may not come: the signal may be gone by the first change.
        calculator.fetchEngine?.().catch(console.info);
        bringFollowing();
        if (!waiting || !latest) return;
        loadLater(calculator, latest.outcome?.values ?? latest.form.this).then(
          (all) => waiting?.come(() => startFollowing(all)),
          (error: unknown) => {
            console.info(error);
            waiting?.stayAway();
          },
        );
      }, laterMs);
      // Most people never pick a country: what fills its values in is fetched only for those who have. The form works without, and no signal is no error.
      if (pickedCountry() && box.querySelector('[data-local-fill]'))
        void import('./localFill.ts').then(({ offerLocalFill }) => offerLocalFill({ box, calculator, reach: () => reach })).catch(console.info);
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
  await breath();
  // Before the takeover: its first render must equal the built page, which has them.
  const query = queryOf(box);
  const ownsAddress = box.dataset['ownsAddress'] !== undefined;
  // Where other answers will stand than were built, what draws them is on its way meanwhile. It is asked for again when it is needed.
  if (ownsAddress && (query !== '' || movesWithToday(calculator.inputs))) loadLater(calculator, startTexts(calculator.inputs)).catch(console.info);
  const extras = await fetchExtras(box, calculator, query);
  await breath();
  await start(box, calculator, extras);
}
