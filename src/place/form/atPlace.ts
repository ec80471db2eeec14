// What the open place does to one form: fills it while it is fresh, and marks what came from there. Fetched only where a place is open.

import { exampleDates, todayMarks } from '../../../calculators/kit/clock.ts';
import type { Calculator } from '../../../calculators/kit/define.ts';
import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { type Texts, withPlaceOf } from '../../../calculators/kit/state.ts';
import { tellInput } from '../../../calculators/kit/summary.ts';
import { textAt, withTextAt } from '../../../calculators/kit/textAt.ts';
import type { Change, Reach } from '../../../calculators/ui/formProps.ts';
import type { PlaceMarks } from '../../../calculators/ui/props.ts';
import { localDay } from '../../../calculators/units/days.ts';
import { printDay } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { clockNow } from '../../scripts/clock.ts';
import { isAnyKept, journalPrefix, keep, kept, placeKey, visitKey } from '../../scripts/kept.ts';
import type { Place } from '../model/place.ts';
import type { Row } from '../model/row.ts';
import { fetchFiller, fetchParts, offerKeys } from '../offer/fetchParts.ts';
import { type Filled, placedIn } from '../offer/fillTexts.ts';
import { hasSameRows, movedTexts } from '../offer/movedTexts.ts';
import type { EarlierTest, RecordOffers } from '../offer/offered.ts';
import { offersOf } from '../offer/offersOf.ts';
import { choose, chosenIn, ledKey, placePageOf } from './chosen.ts';
import { fromPlace, otherwise } from './marks.tsx';
import { drawPlaceHead } from './PlaceHead.tsx';
import { readPlaces, readRows } from './readPlaces.ts';
import type { AtPlace } from './types.ts';

function takesOf(calculator: Calculator): AtPlace['takes'] {
  const keys = offerKeys(calculator);
  if (
    keys.some((key) => key.startsWith('pastures.')) ||
    Object.values(calculator.inputs).some((input) => input.kind === 'rows' && input.offeredBy === 'pastures')
  )
    return 'several';
  return keys.some((key) => /^(?:pasture|layer|earlier)\./.test(key)) ? 'one' : 'none';
}

/** What a window that was killed in mid-write has left comes in first. It brings the whole store along, and seldom happens. */
async function bringLeft(): Promise<void> {
  if (isAnyKept('localStorage', journalPrefix)) (await (await import('./openHere.ts')).openHere()).close();
}
/** The last day on which anything of these was changed, by the clock of then. */
const lastDayOf = (kept: readonly Pick<Place, 'changedAt'>[]): number | undefined =>
  kept.reduce<number | undefined>((last, { changedAt }) => {
    const day = localDay(new Date(changedAt));
    return Number.isFinite(day) && (last === undefined || day > last) ? day : last;
  }, undefined);
/** Of the record of grazing and rain; the station's months are no part of it. */
const isOfRecord = (key: OfferKey): boolean => /^(?:record|rain)\./.test(key) && key !== 'rain.station' && key !== 'rain.from';
const recordOf = async (
  calculator: Calculator,
  place: Place,
  rows: readonly Row[],
): Promise<((todayDay: number) => RecordOffers | undefined) | undefined> =>
  rows.length === 0 ? undefined : (await import('./recordAt.ts')).recordAt(calculator, place, rows);
const earlierOf = async (calculator: Calculator, place: Place): Promise<((todayDay: number) => readonly EarlierTest[]) | undefined> =>
  offerKeys(calculator).some((key) => key.startsWith('earlier.')) ? (await import('./earlierAt.ts')).earlierAt(calculator, place) : undefined;

/** The open place as it stands to a form; nothing where it is gone, or where this window sees no store. */
export async function placeAt(calculator: Calculator, box: HTMLElement, query: string): Promise<AtPlace | undefined> {
  await bringLeft();
  const places = await readPlaces();
  const place = places.find(({ id }) => id === kept('localStorage', placeKey));
  if (!place) return undefined;
  const { inputs } = calculator;
  const rows = offerKeys(calculator).some(isOfRecord) ? await readRows(place.id) : [];
  const [parts, fillTexts, record, earlier, linked] = await Promise.all([
    fetchParts([calculator]),
    fetchFiller(calculator),
    recordOf(calculator, place, rows),
    earlierOf(calculator, place),
    query === '' ? undefined : import('./atLink.tsx'),
  ]);
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
  let redraw = (): void => {};
  const filledIn = (system: UnitSystem, form: Calculator = calculator): Filled =>
    fillTexts(form, offersOf(parts, place, todayDay, { pastureIds, record: record?.(todayDay), earlier: earlier?.(todayDay) }), todayDay, system);
  const take = (ids: readonly string[]) => {
    pastureIds = ids;
    choose(box, ids);
  };

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
        if (now === mark.text) return isDemo ? 'from the demo place' : fromPlace(mark.says);
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
  const openWith = (change: Change, reach: Reach, texts: Texts, filled: Filled, gone: ReadonlySet<string> = new Set()) => {
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

  const link = linked?.atLink({ calculator, filledIn, marksOf, openWith, take });
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
    link,
    choose: (ids, change, reach) => {
      const before = filledIn(change.system);
      take(ids);
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
      take(ids);
      redraw();
    },
    switchTo: (id) => {
      keep('localStorage', placeKey, id);
      location.reload();
    },
    draw: (root, id, reach) => {
      redraw = drawPlaceHead(root, { id, at, link: link?.isOthers() ? link : undefined, reach });
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
        const lead = target instanceof Element ? target.closest<HTMLAnchorElement>('.leads a') : null;
        if (lead && !link?.isOthers()) keep('sessionStorage', ledKey, `${new URL(lead.href).search.slice(1)} ${pastureIds.join(',')}`);
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
  earlier: 'visits',
};
const viewOf = (offer: OfferKey): string => (offer === 'rain.station' ? undefined : views[offer.slice(0, offer.indexOf('.'))]) ?? 'season';
