import { printDay } from '../../../calculators/units/printQuantity.ts';
import { dayIn } from '../record/days.ts';
import { type OfferPart, offerMap } from './offered.ts';

/** What was noted of the ground at the visit that the form is filled for; of other pastures than those of the visit it tells nothing. */
export const part: OfferPart = ({ visit, pasture }) => {
  const moistureFeel = visit?.ground?.moistureFeel;
  if (visit === undefined || moistureFeel === undefined) return {};
  const isThere = pasture === undefined || visit.pastureIds.length === 0 || visit.pastureIds.includes(pasture.id);
  if (!isThere) return {};
  return { single: offerMap([['visit.moisture', { words: [moistureFeel], says: `felt at your visit of ${printDay(dayIn(visit.day))}` }]]) };
};
