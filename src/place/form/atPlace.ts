// What the open place does to one form: fills it while it is fresh, and marks what came from there. Fetched only where a place is open.

import { exampleDates, todayMarks } from '../../../calculators/kit/clock.ts';
import type { Calculator } from '../../../calculators/kit/define.ts';
import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { textAt } from '../../../calculators/kit/textAt.ts';
import type { PlaceMarks } from '../../../calculators/ui/props.ts';
import { localDay } from '../../../calculators/units/days.ts';
import { printDay } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { clockNow } from '../../scripts/clock.ts';
import { isAnyKept, journalPrefix, keep, kept, placeKey } from '../../scripts/kept.ts';
import type { Place } from '../model/place.ts';
import { fetchFiller, fetchParts, offerKeys } from '../offer/fetchParts.ts';
import type { Filled } from '../offer/fillTexts.ts';
import type { Mark } from '../offer/offered.ts';
import { offersOf } from '../offer/offersOf.ts';
import { choose, chosenIn, placePageOf, whoseOf } from './chosen.ts';
import { fromPlace } from './marks.tsx';
import { drawPlaceHead } from './PlaceHead.tsx';
import { readPlaces, readRows } from './readPlaces.ts';
import type { AtForm, AtPlace, Choice } from './types.ts';

type Changes = typeof import('./changes.tsx');
/** By then the form is live. */
const liveMs = 500;

/** What a form takes of what the place has several of: pastures or one of them, and one of several waters. */
function choicesOf({ inputs }: Calculator, keys: readonly OfferKey[], { pastures, water }: Place): readonly Choice[] {
  const asks = (subjects: RegExp): boolean => keys.some((key) => subjects.test(key));
  const isMany = asks(/^pastures\./) || Object.values(inputs).some((input) => input.kind === 'rows' && input.offeredBy === 'pastures');
  const choices: readonly Choice[] = [
    { says: isMany ? 'Which pastures' : 'Which pasture', of: isMany || asks(/^(?:pasture|layer|earlier)\./) ? pastures : [], isMany },
    { says: 'Which water', of: water.length > 1 && asks(/^water\./) ? water : [], isMany: false },
  ];
  return choices.filter(({ of }) => of.length > 0);
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
/** Of the record of grazing, hay and rain; the station's months are no part of it. */
const isOfRecord = (key: OfferKey): boolean =>
  /^(?:record\.|rain\.|hay\.(?:onHand|count|ownLb)$)/.test(key) && key !== 'rain.station' && key !== 'rain.from';
const isIn = (of: Choice['of'], id: string): boolean => of.some((each) => each.id === id);

/** The open place as it stands to a form; nothing where it is gone, or where this window sees no store. */
export async function placeAt(calculator: Calculator, box: HTMLElement, query: string): Promise<AtPlace | undefined> {
  await bringLeft();
  const places = await readPlaces();
  const place = places.find(({ id }) => id === kept('localStorage', placeKey));
  if (!place) return undefined;
  const keys = offerKeys(calculator);
  const rows = keys.some(isOfRecord) ? await readRows(place.id) : [];
  const [parts, fillTexts, record, visits, linked] = await Promise.all([
    fetchParts([calculator]),
    fetchFiller(calculator),
    rows.length === 0 ? undefined : import('./recordAt.ts').then(({ recordAt }) => recordAt(calculator, place, rows)),
    keys.some((key) => /^(?:earlier|visit)\./.test(key)) ? import('./visitsAt.ts').then(({ visitsAt }) => visitsAt(calculator, place)) : undefined,
    query === '' ? undefined : import('./atLink.tsx'),
    // What fills a form looks whether it would be refused.
    calculator.fetchEngine?.(),
  ]);
  const placePage = placePageOf(box);
  const choices = choicesOf(calculator, keys, place);
  let chosen: readonly string[] = chosenIn(box).filter((id) => isIn([...place.pastures, ...place.water], id));
  const take = (ids: readonly string[]): void => {
    chosen = ids;
    choose(box, ids);
  };
  const clockHere = (built: string) => clockNow(built, lastDayOf([...places, ...rows]));
  const clock = clockHere(box.dataset['built'] ?? '');
  // A visit may have chosen several for a form that takes one.
  const fitting = chosen.filter(
    (id, index) => !choices.some(({ of, isMany }) => !isMany && isIn(of, id) && chosen.slice(0, index).some((each) => isIn(of, each))),
  );
  if (fitting.length < chosen.length) take(fitting);
  let todayDay = clock.answeredDay ?? clock.deviceDay;
  let redraw = (): void => {};
  /** With the dates that somebody gave. */
  let dated = calculator;
  let said = '';
  const filledIn = (system: UnitSystem, form = dated): Filled =>
    fillTexts(form, offersOf(parts, place, todayDay, { ids: chosen, record: record?.(todayDay), ...visits?.(todayDay) }), todayDay, system);

  const marksOf = (inSystem: (system: UnitSystem) => Filled): PlaceMarks => {
    const told = new Map<UnitSystem, { readonly filled: Filled; readonly byPath: ReadonlyMap<string, Mark> }>();
    const toldIn = (system: UnitSystem) => {
      const before = told.get(system);
      if (before) return before;
      const filled = inSystem(system);
      const now = { filled, byPath: new Map(filled.marks.map((mark) => [mark.at, mark])) };
      told.set(system, now);
      return now;
    };
    const { isDemo } = atForm;
    return {
      isDemo,
      title: isDemo ? `Invented example, ${printDay(todayDay)}` : whoseOf(place, chosen, printDay(todayDay)),
      textsIn: (system) => toldIn(system).filled.texts,
      toldAt: (path, texts, system, put) => {
        const { filled, byPath } = toldIn(system);
        const mark = byPath.get(path);
        const now = textAt(texts, path);
        if (!mark || now === undefined) return undefined;
        if (now === mark.text) return isDemo ? 'from the demo place' : fromPlace(mark.says);
        return changes?.otherwiseAt(atForm, filled, mark, path, texts, system, put);
      },
    };
  };
  const atForm: AtForm = { box, calculator, isDemo: place.isDemo === true, placePage, filledIn, marksOf, take };
  let changes: Changes | undefined;
  const fetchChanges = async (): Promise<Changes> => {
    changes = await import('./changes.tsx');
    return changes;
  };
  if (linked) await fetchChanges();

  const link = linked?.atLink(atForm);
  const at: AtPlace = {
    clockNow: clockHere,
    place,
    places,
    choices,
    placePage,
    chosen: () => chosen,
    said: () => filledIn('us').said,
    exampleBy: ({ deviceDay, answeredDay }, form, system) => {
      todayDay = answeredDay ?? deviceDay;
      dated = form;
      const filled = filledIn(system);
      if (said !== filled.said.join()) redraw();
      said = filled.said.join();
      const mark = answeredDay === undefined ? todayMarks.device : todayMarks.answer;
      return {
        texts: filled.texts,
        today: new Map(filled.todayAt.map((at) => [at, mark])),
        notices: filled.isExampleDates ? [exampleDates] : [],
        placed: new Set(filled.marks.map(({ at }) => at)),
        blank: new Set(filled.toBeTold),
        place: marksOf((other) => (other === system ? filled : filledIn(other))),
      };
    },
    link,
    choose: async (ids, reach) => (await fetchChanges()).chooseAt(atForm, ids, reach),
    recall: (ids) => {
      take(ids);
      redraw();
    },
    switchTo: (id) => {
      keep('localStorage', placeKey, id);
      location.reload();
    },
    draw: (root, id, reach) => {
      setTimeout(
        () =>
          void fetchChanges()
            .then(({ goOn }) => goOn(atForm, { root, id, placeId: place.id, reach, chosen: () => (link?.isOthers() ? undefined : chosen) }))
            .catch(console.info),
        liveMs,
      );
      redraw = drawPlaceHead(root, { id, at, link: link?.isOthers() ? link : undefined, reach });
    },
  };
  return at;
}
