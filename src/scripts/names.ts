// For whom a calculation was made and by whom: on paper, in copied notes and in calendars of this device, and never in a link.
import { localDay } from '../../calculators/units/days.ts';
import { printDay } from '../../calculators/units/printQuantity.ts';
import { kept } from './kept.ts';

/** For whom, as long as the window is open. */
export const forKey = 'holdwater-for';
/** Who works it out: the same person tomorrow. */
export const byKey = 'holdwater-by';

/** The head of a sheet: whose ground and which day, and who did it. `placeTitle` is what the open place says. */
export function namesNow(placeTitle: string | undefined) {
  const [who, by] = [kept('sessionStorage', forKey), kept('localStorage', byKey)];
  const title = placeTitle ?? (who || by ? [...(who ? [who] : []), printDay(localDay(new Date()))].join(', ') : undefined);
  return { title, by: by || undefined, heading: title && (by ? `${title}, by ${by}` : title) };
}
