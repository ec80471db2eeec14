// What the open place does to one form: fills it while it is fresh, marks what came from there, and never touches the figures of a link. Fetched only
// where a place is open.
import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Cell } from '../../../calculators/kit/inputs.ts';
import { exampleDates, todayMarks } from '../../../calculators/kit/occurs.ts';
import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { runTexts } from '../../../calculators/kit/runTexts.ts';
import { isShown, type Text, type Texts, withPlaceOf } from '../../../calculators/kit/state.ts';
import { tellInput } from '../../../calculators/kit/summary.ts';
import { textAt, withTextAt } from '../../../calculators/kit/textAt.ts';
import type { Change, Reach } from '../../../calculators/ui/CalculatorForm.tsx';
import type { PlaceMarks } from '../../../calculators/ui/props.ts';
import { localDay } from '../../../calculators/units/days.ts';
import { printDay } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { isAnyKept, journalPrefix, keep, kept, placeKey, visitKey } from '../../scripts/kept.ts';
import { clockNow } from '../../scripts/today.ts';
import type { Place } from '../model/place.ts';
import type { Row } from '../model/row.ts';
import { type Filled, fillTexts } from '../offer/fillTexts.ts';
import { hasSameRows, movedTexts } from '../offer/movedTexts.ts';
import { offersOf } from '../offer/offersOf.ts';
import type { RecordOffers } from '../offer/recordOffers.ts';
import { choose, chosenIn, idsIn, placePageOf } from './chosen.ts';
import { otherwise, withWords } from './marks.tsx';
import { drawPlaceHead } from './PlaceHead.tsx';
import { readPlaces, readRows } from './readPlaces.ts';
import type { AtPlace } from './types.ts';

const ledKey = 'holdwater-led';

function offerKeys({ inputs }: Calculator): readonly OfferKey[] {
  const cells = Object.values(inputs).flatMap((input): readonly { readonly offeredBy?: OfferKey }[] =>
    input.kind === 'rows' ? Object.values<Cell>(input.columns) : [input],
  );
  return cells.flatMap(({ offeredBy }) => (offeredBy === undefined ? [] : [offeredBy]));
}
function takesOf(calculator: Calculator): AtPlace['takes'] {
  const keys = offerKeys(calculator);
  if (
    keys.some((key) => key.startsWith('pastures.')) ||
    Object.values(calculator.inputs).some((input) => input.kind === 'rows' && input.offeredBy === 'pastures')
  )
    return 'several';
  return keys.some((key) => /^(?:pasture|layer)\./.test(key)) ? 'one' : 'none';
}

/** What a window that was killed in mid-write has left comes in first. It brings the whole store along, and seldom happens. */
async function bringLeft(): Promise<void> {
  if (!isAnyKept('localStorage', journalPrefix)) return;
  const { openHere } = await import('./openHere.ts');
  const store = await openHere();
  store.close();
}
/** The last day on which anything of these was changed, by the clock of then. */
const lastDayOf = (kept: readonly Pick<Place, 'changedAt'>[]): number | undefined =>
  kept.reduce<number | undefined>((last, { changedAt }) => {
    const day = localDay(new Date(changedAt));
    return Number.isFinite(day) && (last === undefined || day > last) ? day : last;
  }, undefined);
/** Of the record of grazing and rain; the station's months are no part of it. */
const isOfRecord = (key: OfferKey): boolean => /^(?:record|rain)\./.test(key) && key !== 'rain.station' && key !== 'rain.from';
async function recordOf(place: Place, rows: readonly Row[]): Promise<(todayDay: number) => RecordOffers | undefined> {
  if (rows.length === 0) return () => undefined;
  const { recordAt } = await import('./recordAt.ts');
  return recordAt(place, rows);
}

/** The open place as it stands to a form; nothing where it is gone, or where this window sees no store. */
export async function placeAt(calculator: Calculator, box: HTMLElement): Promise<AtPlace | undefined> {
  await bringLeft();
  const places = await readPlaces();
  const place = places.find(({ id }) => id === kept('localStorage', placeKey));
  if (!place) return undefined;
  const { inputs } = calculator;
  const rows = offerKeys(calculator).some(isOfRecord) ? await readRows(place.id) : [];
  const record = await recordOf(place, rows);
  const placePage = placePageOf(box);
  let pastureIds: readonly string[] = chosenIn(box).filter((id) => place.pastures.some((each) => each.id === id));
  const clockHere = (built: string) => clockNow(built, lastDayOf([...places, ...rows]));
  const clock = clockHere(box.dataset['built'] ?? '');
  // A visit may have chosen several for a form that takes one.
  if (takesOf(calculator) === 'one' && pastureIds.length > 1) {
    pastureIds = pastureIds.slice(0, 1);
    choose(box, pastureIds);
  }
  let todayDay = clock.answeredDay ?? clock.deviceDay;
  let isOthers = false;
  let redraw = (): void => {};
  const filledIn = (system: UnitSystem): Filled =>
    fillTexts(calculator, offersOf(place, todayDay, { pastureIds, record: record(todayDay) }), todayDay, system);
  const remember = () => choose(box, pastureIds);

  function marksOf(filled: Filled): PlaceMarks {
    const byPath = new Map(filled.marks.map((mark) => [mark.at, mark]));
    const names = place ? place.pastures.filter(({ id }) => pastureIds.includes(id)).map(({ name }) => name) : [];
    const isDemo = place?.isDemo === true;
    return {
      isDemo,
      title: isDemo ? `Invented example, ${printDay(todayDay)}` : [...names, place?.name, printDay(todayDay)].join(', '),
      toldAt: (path, texts, system, put) => {
        const mark = byPath.get(path);
        const now = textAt(texts, path);
        if (!mark || now === undefined) return undefined;
        const words = isDemo ? 'from the demo place' : 'from your place';
        if (now === mark.text) return mark.says === undefined || isDemo ? words : withWords(words, mark.says);
        const [key = '', , column] = path.split('.');
        if (!hasSameRows(texts[key], filled.texts[key])) return undefined;
        const input = inputs[key];
        const cell = input?.kind === 'rows' ? input.columns[column ?? ''] : input;
        if (!cell || cell.kind === 'months' || cell.kind === 'record') return undefined;
        return otherwise({
          isDemo,
          shown: tellInput(cell, mark.text, texts, system),
          address: `${placePage}#/${viewOf(mark.offer)}`,
          use: () => put(withTextAt(texts, path, mark.text)),
        });
      },
    };
  }
  /** With what the place gives put in, whole tables whole. */
  const withMine = (texts: Texts, filled: Filled, isWanted: (key: string) => boolean): Texts => {
    const keys = new Set(filled.marks.map(({ at }) => at.split('.')[0] ?? at));
    return Object.fromEntries(
      Object.entries(texts).map(([key, text]): [string, Text] => [key, (keys.has(key) && isWanted(key) ? filled.texts[key] : undefined) ?? text]),
    );
  };
  /** The same, without what the form refuses beside the figures that stay: dates of a link hold to its own today. */
  const withAllowed = (texts: Texts, filled: Filled, system: UnitSystem, isWanted: (key: string) => boolean): Texts => {
    const all = withMine(texts, filled, isWanted);
    const isFine = (of: Texts): boolean => 'outcome' in runTexts(calculator, of, system);
    if (isFine(all)) return all;
    const undated = withMine(texts, filled, (key) => isWanted(key) && inputs[key]?.kind !== 'date');
    return isFine(undated) ? undated : all;
  };
  const placedIn = (filled: Filled, texts: Texts): readonly string[] =>
    filled.marks.filter(({ at, text }) => textAt(texts, at) === text).map(({ at }) => at);
  const openWith = (change: Change, reach: Reach, texts: Texts, filled: Filled, gone: ReadonlySet<string>) => {
    const placed = placedIn(filled, texts);
    const { form } = change;
    const kept = [...change.touched].filter((path) => !gone.has(path));
    reach.open({
      ...change,
      form: { this: texts, that: form.that && withPlaceOf(inputs, texts, form.that) },
      touched: new Set([...kept, ...placed]),
      placed: new Set(placed),
      place: marksOf(filled),
      notices: [],
    });
  };

  const at: AtPlace = {
    clockNow: clockHere,
    place,
    places,
    takes: takesOf(calculator),
    placePage,
    chosen: () => pastureIds,
    said: () => filledIn('us').said,
    exampleBy: ({ deviceDay, answeredDay }, _, system) => {
      todayDay = answeredDay ?? deviceDay;
      const filled = filledIn(system);
      const mark = answeredDay === undefined ? todayMarks.device : todayMarks.answer;
      return {
        texts: filled.texts,
        today: new Map(filled.todayAt.map((at) => [at, mark])),
        notices: filled.isExampleDates ? [exampleDates] : [],
        placed: new Set(filled.marks.map(({ at }) => at)),
        place: marksOf(filled),
      };
    },
    opened: (query, { form, named, system, isOwn }) => {
      if (isOwn) return { place: marksOf(filledIn(system)) };
      const [led, ids = ''] = (kept('sessionStorage', ledKey) ?? '').split(' ');
      isOthers = led !== query;
      if (isOthers) return {};
      pastureIds = idsIn(ids);
      remember();
      const filled = filledIn(system);
      const isBlank = (key: string): boolean => form.this[key] === '';
      const all = withAllowed(form.this, filled, system, (key) => isBlank(key) || !named.has(key));
      const texts = 'outcome' in runTexts(calculator, all, system) ? all : withMine(form.this, filled, isBlank);
      const placed = placedIn(filled, texts).filter((at) => textAt(form.this, at) !== textAt(texts, at));
      return {
        form: { this: texts, that: form.that },
        linked: new Set(),
        blank: new Set([...named].filter((key) => texts[key] === '')),
        touched: new Set([...named].filter((key) => texts[key] !== '').concat(placed)),
        placed: new Set(placed),
        place: marksOf(filled),
      };
    },
    choose: (ids, change, reach) => {
      const before = filledIn(change.system);
      pastureIds = ids;
      remember();
      const after = filledIn(change.system);
      openWith(
        change,
        reach,
        movedTexts(change.form.this, before.texts, after.texts),
        after,
        new Set(before.marks.map(({ at }) => at).filter((at) => change.placed.has(at))),
      );
    },
    recall: (ids) => {
      pastureIds = ids;
      remember();
      redraw();
    },
    differences: ({ form, system }) => {
      const filled = filledIn(system);
      const mine = withAllowed(form.this, filled, system, () => true);
      return Object.entries(inputs).flatMap(([key, input]) => {
        if (!isShown(input, mine)) return [];
        const [now, then] = [tellInput(input, form.this[key], form.this, system), tellInput(input, mine[key], mine, system)];
        return JSON.stringify(form.this[key]) === JSON.stringify(mine[key]) || now === then ? [] : [{ label: input.label, now, mine: then }];
      });
    },
    use: (change, reach) => {
      const filled = filledIn(change.system);
      openWith(
        change,
        reach,
        withAllowed(change.form.this, filled, change.system, () => true),
        filled,
        new Set(),
      );
      isOthers = false;
    },
    switchTo: (id) => {
      keep('localStorage', placeKey, id);
      location.reload();
    },
    draw: (root, id, reach) => {
      redraw = drawPlaceHead(root, { id, at, isLink: isOthers, reach });
      if (kept('sessionStorage', visitKey) !== null) {
        void import('./keepResult.tsx')
          .then(({ drawVisitBar }) =>
            drawVisitBar(root, place.id, (host) => {
              const change = reach()?.now();
              return change && { host, box, id, calculator, change };
            }),
          )
          .catch((error: unknown) => console.info(error));
      }
      // Where a result leads, the choice of pasture goes along, and the next form knows whose figures it opens with.
      box.addEventListener('click', ({ target }) => {
        const link = target instanceof Element ? target.closest<HTMLAnchorElement>('.leads a') : null;
        if (link && !isOthers) keep('sessionStorage', ledKey, `${new URL(link.href).search.slice(1)} ${pastureIds.join(',')}`);
      });
    },
  };
  return at;
}

/** The view of the place's page where an offer can be changed. */
const views: Readonly<Record<string, string>> = {
  pasture: 'ground',
  pastures: 'ground',
  layer: 'ground',
  herd: 'stock',
  hay: 'feed',
  prices: 'feed',
  water: 'water',
  tools: 'tools',
  record: 'record',
  rain: 'record',
};
const viewOf = (offer: OfferKey): string => (offer === 'rain.station' ? undefined : views[offer.slice(0, offer.indexOf('.'))]) ?? 'season';
