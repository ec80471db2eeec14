import { yesNo } from '../kit/inputs.ts';
import { monthIndexOf } from '../units/days.ts';

/** Asked where something is said by the month: south of the equator it comes half a year later. */
export const isSouth = yesNo('South of the equator', false, {
  short: ['south of the equator', 'north of the equator'],
  help: 'Spring is September to November there. It moves cautions that go by the month, and no figure.',
  offeredBy: 'place.isSouth',
});
/** The month that has this season in the north, 0 for January. */
export const northernMonth = (day: number, south: boolean): number => (monthIndexOf(day) + (south ? 6 : 0)) % 12;
