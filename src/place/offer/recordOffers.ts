import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { periodMonths } from '../../../calculators/math/drought/periodMonths.ts';
import { firstOfMonth, yearOf } from '../../../calculators/units/days.ts';
import { isoDay, printDay } from '../../../calculators/units/printQuantity.ts';
import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';
import type { Row } from '../model/row.ts';
import { dayIn, outDayOf, rainDays, rowsOf } from '../record/days.ts';
import { groundsById, isPartly } from '../record/grounds.ts';
import { lastReading, rainText } from '../record/rainText.ts';
import { type Stay, staysOf } from '../record/stays.ts';
import { wholeYears } from '../record/years.ts';
import { balesLeft, poundsLeft } from './hayLeft.ts';
import { amount, day, derived, type OfferMap, offerMap, type RecordOffers, word } from './offered.ts';
import { rainSinceDay } from './rainSince.ts';
import { yardstickOf } from './stockToday.ts';

/** A form that runs through the years of a record takes it from so many hay years on: each lies in two calendar years without a gap. */
const leastHayYears = 6;
/** Forms compare with a record from so many years on. */
const leastYears = 10;
/** Of the days of rain so far at least so many must have been read, percent. */
const leastReadPercent = 90;
/** A form that lays one's own rain against a station's medians looks back over so many months while nobody asks for others. */
const lookBackMonths = 6;
/** Two heights nearer or farther apart are no growth that a form takes. */
const apartDays = [3, 60] as const;

/** What is offered of so many days, if nearly all were read; the rest is told. */
function enoughRead(key: OfferKey, rain: ReadonlyMap<number, number>, from: number, until: number, says: string): OfferMap {
  const read = [...rain].filter(([each]) => each >= from && each <= until);
  const all = until - from + 1;
  if (read.length === 0 || (100 * read.length) / all < leastReadPercent) return offerMap();
  const sum = read.reduce((total, [, amountIn]) => total + amountIn, 0);
  const unread = all - read.length;
  const days = unread === 0 ? '' : `, ${unread === 1 ? '1 day' : `${unread} days`} not read`;
  return offerMap(amount(key, Math.round(sum * 100) / 100, `${says}${days}`));
}
function rainSoFar(place: Place, rows: readonly Row[], todayDay: number): OfferMap {
  const from = rainSinceDay(place, todayDay);
  if (from > todayDay) return offerMap(amount('rain.soFar', 0, `counted from ${printDay(from)}`));
  return enoughRead('rain.soFar', rainDays(rows), from, todayDay, `since ${printDay(from)}`);
}
/** The rain of the months up to the last reading, with that day, to lay against a station's medians. */
function lookedBack(rain: ReadonlyMap<number, number>, lastDay: number): OfferMap {
  const from = periodMonths(lastDay, lookBackMonths)[0]?.firstDay ?? lastDay;
  const sum = enoughRead('rain.halfYear', rain, from, lastDay, `${printDay(from)} to ${printDay(lastDay)}`);
  return sum.size === 0 ? sum : new Map([...sum, ...offerMap(day('rain.lastDay', isoDay(lastDay)))]);
}
/** Hay years that are sure to be whole, whenever they begin. */
function hayYearsIn(rain: ReadonlyMap<number, number>): number {
  const read = new Map<number, number>();
  for (const day of rain.keys()) read.set(yearOf(day), (read.get(yearOf(day)) ?? 0) + 1);
  const isWhole = (year: number): boolean => read.get(year) === firstOfMonth(0, year + 1) - firstOfMonth(0, year);
  return [...read.keys()].filter((year) => isWhole(year) && isWhole(year + 1)).length;
}
function rainOffers(place: Place, rows: readonly Row[], todayDay: number): OfferMap {
  const text = rainText(rows);
  const last = lastReading(rows, todayDay);
  if (text === undefined || last === undefined) return offerMap();
  const rain = rainDays(rows);
  const years = new Set([...rain.keys()].map(yearOf));
  // A form that compares with a shorter record would refuse it: its own example, or the station's medians, stays.
  const isLong = years.size >= leastYears;
  return new Map([
    ...offerMap(
      isLong ? [['rain.record', { record: text }], ...word('rain.from', 'record'), ...day('rain.lastDay', last.day)] : [],
      isLong && hayYearsIn(rain) >= leastHayYears ? word('rain.yearsFrom', 'record') : [],
      // A dry reading is no rain to count gallons of.
      last.amountIn > 0 ? amount('rain.lastReading', last.amountIn, `read ${printDay(dayIn(last.day))}`) : [],
    ),
    ...rainSoFar(place, rows, todayDay),
    ...(place.stationMonthsIn === undefined ? [] : lookedBack(rain, dayIn(last.day))),
  ]);
}

/** The last two heights of a ground since stock went out, as far apart as a form takes them. */
function twoHeights(place: Place, rows: readonly Row[], { id }: Pasture): { readonly lastDay: number; readonly offers: OfferMap } | undefined {
  const grounds = groundsById(place);
  const moves = rowsOf(rows, 'move');
  const found = [...grounds.values()]
    .filter(({ pasture }) => pasture.id === id)
    .flatMap((ground) => {
      const here = moves.filter(({ paddockId }) => isPartly(paddockId, ground));
      if (here.some(({ outDay }) => outDay === undefined)) return [];
      const outDay = Math.max(-Infinity, ...here.flatMap((move) => outDayOf(move) ?? []));
      const read = rowsOf(rows, 'height').filter(({ paddockId, day: each }) => paddockId === ground.id && dayIn(each) >= outDay);
      const last = read.at(-1);
      const lastDay = last === undefined ? undefined : dayIn(last.day);
      if (last === undefined || lastDay === undefined) return [];
      const first = read.findLast(({ day: each }) => dayIn(each) <= lastDay - apartDays[0] && dayIn(each) >= lastDay - apartDays[1]);
      return first === undefined ? [] : [{ ground, first, last, firstDay: dayIn(first.day), lastDay }];
    });
  const latest = found.toSorted((one, other) => other.lastDay - one.lastDay)[0];
  if (latest === undefined) return undefined;
  const { ground, first, last, firstDay, lastDay } = latest;
  const offers = offerMap(
    word('record.growthFrom', 'heights'),
    amount('record.firstHeight', first.heightIn, `${ground.name}, ${printDay(firstDay)}`),
    amount('record.secondHeight', last.heightIn, `${ground.name}, ${printDay(lastDay)}`),
    amount('record.between', lastDay - firstDay),
  );
  return { lastDay, offers };
}

/** Head of the main kind, and days, that a pasture fed in the mean of so many whole years; none where any stay of it cannot be counted. */
function usual(stays: readonly Stay[], { id }: Pasture, years: number): { readonly head: number; readonly days: number } | undefined {
  const here = stays.filter(({ ground }) => ground?.pasture.id === id);
  let [stockDays, days] = [0, 0];
  for (const stay of here) {
    const acres = stay.ground?.areaAc;
    if (stay.stockDaysPerAc === undefined || acres === undefined || stay.isHayUnweighed) return undefined;
    stockDays += stay.stockDaysPerAc * acres;
    days += stay.days;
  }
  return days === 0 ? { head: 0, days: 0 } : { head: stockDays / days, days: days / years };
}

export function recordOffers(place: Place, rows: readonly Row[], todayDay: number): RecordOffers {
  const yardstick = yardstickOf(place, todayDay);
  const years = yardstick === undefined ? [] : wholeYears(place, rows, todayDay);
  const stays = years.flatMap((year) => staysOf(place, rows, { todayDay, year, ...(yardstick && { yardstickLbPerDay: yardstick.lbPerDay }) }));
  const grazed = place.pastures.filter(({ isCounted, use }) => isCounted && (use === undefined || use === 'grazed'));
  const fed = new Map(years.length === 0 ? [] : grazed.map((pasture) => [pasture.id, usual(stays, pasture, years.length)] as const));
  const isWhole =
    fed.size > 0 && [...fed.values()].every((each) => each !== undefined) && [...fed.values()].some((each) => each !== undefined && each.days > 0);
  const heights = place.pastures.flatMap((pasture) => {
    const found = twoHeights(place, rows, pasture);
    return found === undefined ? [] : [{ id: pasture.id, ...found }];
  });
  const ofPasture = place.pastures.map(({ id }): readonly [string, OfferMap] => {
    const mean = isWhole ? fed.get(id) : undefined;
    const read = heights.find((each) => each.id === id)?.offers ?? offerMap();
    return [id, new Map([...offerMap(derived('record.usualHead', mean?.head), derived('record.lasted', mean?.days)), ...read])];
  });
  const latest = heights.toSorted((one, other) => other.lastDay - one.lastDay)[0];
  const hayFed = rowsOf(rows, 'hay').filter(({ day: each }) => dayIn(each) <= todayDay);
  const yieldIsKnown = grazed.some(({ normalLbPerAc }) => normalLbPerAc !== undefined);
  return {
    single: new Map([
      ...rainOffers(place, rows, todayDay),
      ...(latest?.offers ?? []),
      ...(isWhole && yardstick !== undefined
        ? offerMap(amount('herd.yardstick', yardstick.lbPerDay), yieldIsKnown ? [] : word('pastures.yieldFrom', 'stock-days'))
        : []),
    ]),
    ofPasture: new Map(ofPasture),
    balesLeft: (stack, isOnly) => balesLeft(stack, hayFed, isOnly),
    poundsLeft: (stacks) => poundsLeft(stacks, hayFed),
  };
}
