import { unitMark } from '../kit/read.ts';
import { isBare, isUnit, type UnitName, type UnitSystem, unitIn } from '../units/units.ts';

const isNumberAlone = (typed: string): boolean => /^[\s\d.,/$−-]+$/.test(typed) && /\d/.test(typed);

/** What is kept of a typed text: a number typed alone takes the unit that its field showed, so that a later switch cannot change it. */
export function keptText(typed: string, unit: UnitName, system: UnitSystem): string {
  const shown = unitIn(system, unit);
  return !isBare(shown) && isNumberAlone(typed) ? `${typed}${unitMark}${shown}` : typed;
}

/** What a field shows of a kept text: the unit that the field shows anyway is left out. */
export function shownText(kept: string, unit: UnitName, system: UnitSystem): string {
  const at = kept.lastIndexOf(unitMark);
  if (at < 0) return kept;
  const [amount, own] = [kept.slice(0, at), kept.slice(at + 1)];
  return isUnit(own) && own === unitIn(system, unit) ? amount : `${amount} ${own}`;
}
