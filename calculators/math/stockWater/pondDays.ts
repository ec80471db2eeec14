import { need } from '../need.ts';
import { type MeasuredPond, pondDepthFt, pondStorageAtGal } from './pondStorageGal.ts';

/** How a pond went down. `leftGal` includes what lies below the dead depth. */
export interface PondRun {
  readonly days: number;
  readonly lasted: boolean;
  readonly startGal: number;
  readonly drunkGal: number;
  readonly evaporatedGal: number;
  readonly seepedGal: number;
  readonly leftGal: number;
  readonly depthFt: number;
  readonly depthByDayFt: readonly number[];
}

/**
 * Whole days that a pond waters a herd, in daily steps: the level falls by evaporation and seepage, then the herd drinks. Water below the dead depth
 * (mud, bogging, foul water) is never drunk. No rain and no inflow: it is a dry-spell plan.
 * @param options.pond - Surface, acres, and greatest depth, feet, as measured today; both above 0
 * @param options.deadDepthFt - Depth to leave out, feet; 0 or more, below the depth today. 1 to 2 ft is usual
 * @param options.evaporationInByDay - Evaporation of each day to come, inches; 0 or more
 * @param options.seepageInPerDay - Seepage, inches a day; 0 or more
 * @param options.drinkGalByDay - Water that the herd needs each day, US gallons; 0 or more; as many days as the evaporation
 * @returns Days fully watered, whether all were, the water at the start, drunk, evaporated, seeped and left, US gallons, and the depth at the end of each day, feet
 * @throws RangeError if a value is outside its range or the two series differ in length
 * @source our own, daily steps with V = 0.4 A D
 * @example pondDays({ pond: { surfaceAc: 0.5, maxDepthFt: 6 }, deadDepthFt: 1.5, evaporationInByDay: Array(120).fill(0.3), seepageInPerDay: 0.05, drinkGalByDay: Array(120).fill(1500) }).days //=> 89
 */
export function pondDays({
  pond,
  deadDepthFt,
  evaporationInByDay,
  seepageInPerDay,
  drinkGalByDay,
}: {
  readonly pond: MeasuredPond;
  readonly deadDepthFt: number;
  readonly evaporationInByDay: readonly number[];
  readonly seepageInPerDay: number;
  readonly drinkGalByDay: readonly number[];
}): PondRun {
  need('pondDays', 'deadDepthFt', deadDepthFt, { atLeast: 0, below: pond.maxDepthFt });
  need('pondDays', 'seepageInPerDay', seepageInPerDay, { atLeast: 0 });
  need('pondDays', 'the days of evaporationInByDay', evaporationInByDay.length, { atLeast: drinkGalByDay.length, atMost: drinkGalByDay.length });
  const deadGal = pondStorageAtGal(pond, deadDepthFt);
  const startGal = pondStorageAtGal(pond, pond.maxDepthFt);
  const depthByDayFt: number[] = [];
  let heldGal = startGal;
  let depthFt = pond.maxDepthFt;
  let drunkGal = 0;
  let evaporatedGal = 0;
  let seepedGal = 0;
  let days = 0;
  for (const [index, evaporationIn] of evaporationInByDay.entries()) {
    const drinkGal = drinkGalByDay[index];
    if (drinkGal === undefined) throw new RangeError(`pondDays needs what is drunk on day ${index + 1}`);
    need('pondDays', 'evaporationInByDay', evaporationIn, { atLeast: 0 });
    need('pondDays', 'drinkGalByDay', drinkGal, { atLeast: 0 });
    const lossIn = evaporationIn + seepageInPerDay;
    const lostGal = heldGal - pondStorageAtGal(pond, Math.max(0, depthFt - lossIn / 12));
    // What leaves is shared between sun and ground by their rates: over one day both act on one surface.
    const sunShare = lossIn > 0 ? evaporationIn / lossIn : 0;
    evaporatedGal += lostGal * sunShare;
    seepedGal += lostGal * (1 - sunShare);
    heldGal -= lostGal;
    const takenGal = Math.min(drinkGal, Math.max(0, heldGal - deadGal));
    drunkGal += takenGal;
    heldGal -= takenGal;
    depthFt = pondDepthFt(pond, Math.max(0, heldGal));
    depthByDayFt.push(depthFt);
    if (takenGal < drinkGal) break;
    days += 1;
  }
  const lasted = days === drinkGalByDay.length;
  return { days, lasted, startGal, drunkGal, evaporatedGal, seepedGal, leftGal: heldGal, depthFt, depthByDayFt };
}
