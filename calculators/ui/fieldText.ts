import { unitMark } from '../kit/read.ts';
import { readQuantity } from '../units/readQuantity.ts';
import { isBare, isUnit, type UnitName, type UnitSystem, unitIn, units } from '../units/units.ts';

const isNumberAlone = (typed: string): boolean => /^[\s\d.,/$−-]+$/.test(typed) && /\d/.test(typed);

/** One word and no stroke before it: `34 mm`, not `95 $/ton`. */
const wordBehind = /(?<=^[^a-z]*[\d\s])[a-z]+\.?\s*$/i;
const firstWords = (unit: UnitName): readonly (string | undefined)[] =>
  [unit, units[unit].print, units[unit].words].map((each) => each.split(/[ /]/)[0]);
/**
 * Whether a text names the unit that its field shows by its first word alone: `34 mm` beside “mm per tonne/ha”, `100 dollars` beside “$ a hectare”.
 * By itself such a text is for a ton an acre or for an acre, as links before had it.
 */
function isCutShort(typed: string, unit: UnitName, shown: UnitName): boolean {
  const word = wordBehind.exec(typed)?.[0].toLowerCase().replace('.', '').trim();
  if (word === undefined || !firstWords(shown).includes(word)) return false;
  const reading = readQuantity(typed, unit);
  return reading.is === 'value' && reading.unit !== shown;
}

/** What is kept of a typed text: a number typed alone, or with its unit cut short, takes the unit that its field showed, so that a later switch cannot change it. */
export function keptText(typed: string, unit: UnitName, system: UnitSystem): string {
  const shown = unitIn(system, unit);
  return !isBare(shown) && (isNumberAlone(typed) || isCutShort(typed, unit, shown)) ? `${typed}${unitMark}${shown}` : typed;
}

/** What a field shows of a kept text: the unit that the field shows anyway is left out. */
export function shownText(kept: string, unit: UnitName, system: UnitSystem): string {
  const at = kept.lastIndexOf(unitMark);
  if (at < 0) return kept;
  const [amount, own] = [kept.slice(0, at), kept.slice(at + 1)];
  return isUnit(own) && own === unitIn(system, unit) ? amount : `${amount.replace(wordBehind, '').trim()} ${own}`;
}
