import { printAsIs, printDay, printNumber, printQuantity, withUnit } from '../../../calculators/units/printQuantity.ts';
import { convert, type UnitSystem, unitIn } from '../../../calculators/units/units.ts';
import type { Place } from '../model/place.ts';
import type { MoveRow, RainRow, StockLine } from '../model/row.ts';
import { kindNames } from '../offer/kindNames.ts';
import { groundsById } from '../record/grounds.ts';
import type { Ready } from '../record/nextReady.ts';
import type { Stay } from '../record/stays.ts';

/** `45 cows, 2 bulls`. */
export const stockWords = (stock: readonly Pick<StockLine, 'kind' | 'countHead'>[]): string =>
  stock.map(({ kind, countHead }) => `${printNumber(countHead, 0)} ${countHead === 1 ? kind : kindNames[kind].toLowerCase()}`).join(', ');
/** Who came, and who of them went on elsewhere meanwhile: `60 cows, 20 cows of them elsewhere from Jun 12`. */
export const stayedWords = ({ move: { stock }, splitOff, inDay }: Pick<Stay, 'move' | 'splitOff' | 'inDay'>): string =>
  [
    stockWords(stock),
    ...splitOff.map(({ kind, countHead, fromDay }) => `${stockWords([{ kind, countHead }])} of them elsewhere from ${dayWords(fromDay, inDay)}`),
  ].join(', ');
/** Where a move went, by its name then if it was taken away since. */
export const groundName = (place: Place, { paddockId, paddockName }: Pick<MoveRow, 'paddockId' | 'paddockName'>): string =>
  groundsById(place).get(paddockId)?.name ?? paddockName ?? 'a paddock that was taken away';
export const daysWords = (days: number): string => (days === 0.5 ? 'half a day' : days === 1 ? '1 day' : `${printAsIs(days)} days`);
/** `May 8`: the year only where it is another one. */
export const dayWords = (day: number, todayDay: number): string => {
  const words = printDay(day);
  return words.slice(-4) === printDay(todayDay).slice(-4) ? words.slice(0, -6) : words;
};
export const heightWords = (heightIn: number, system: UnitSystem): string => printQuantity(heightIn, 'in', heightIn % 1 === 0 ? 0 : 1, system);
export const rainWords = ({ amountIn, isTrace }: Pick<RainRow, 'amountIn' | 'isTrace'>, system: UnitSystem): string =>
  isTrace === true ? 'a trace' : printQuantity(amountIn, 'in', 2, system);

/** `an acre`, or what the reader counts ground in instead. */
export const groundUnit = (system: UnitSystem): string => (system === 'us' ? 'an acre' : 'a hectare');
/** Stock-days on an acre, told on what the reader counts ground in: 2.471 acres are a hectare. */
export const stockDaysOn = (stockDaysPerAc: number, system: UnitSystem): string =>
  printNumber(stockDaysPerAc / convert(1, 'ac', unitIn(system, 'ac')), 1);
/** What one eats in a day, as fine as it is kept: `27.48 lb`. */
export const dryWords = (lb: number, system: UnitSystem): string =>
  system === 'us' ? withUnit(printAsIs(lb), 'lb') : printQuantity(lb, 'lb', 1, system);

export const cannotBe = 'cannot be: out before in';

/** When a ground is ready, and how that is known. */
export function readyWords({ from, readyDay, lookDay, restedDays }: Ready, todayDay: number): string {
  const rested = restedDays === undefined ? '' : `, rested ${daysWords(restedDays)}`;
  if (from === 'hay') return 'cut for hay';
  if (from === 'never') return 'no stock on it in this record';
  if (from === 'no-growth') return `not before rain: it did not grow${rested}`;
  if (readyDay === undefined) return rested.slice(2);
  if (readyDay <= todayDay)
    return `${from === 'height' ? 'tall enough' : from.startsWith('rest') ? 'rest is over' : 'should be tall enough'}${rested}`;
  const look = lookDay === undefined || lookDay <= todayDay ? 'look now' : `look ${dayWords(lookDay, todayDay)}`;
  const growing = from === 'rest-in-growth' ? ', counting only months with growth' : '';
  return `ready ${dayWords(readyDay, todayDay)}${growing}, ${look}${rested}`;
}
