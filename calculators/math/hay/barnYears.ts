import { need, needThere } from '../need.ts';

/** What happened to the barn in one hay year, tons. */
export interface BarnYear {
  readonly boughtTons: number;
  /** What stood there when feeding began. */
  readonly stoodTons: number;
  readonly shortTons: number;
}

/**
 * One barn through hay years in order: what is left over, less its loss, and the year's own crop go in; then hay is bought up to the level that is meant to
 * stand there, but no more than can be bought; the year is short if its need is more than then stands. The barn never holds more than its level except
 * what was carried over. With no limit on what can be bought it is full again every fall.
 * @param options.needTons - Hay needed out of the barn in each hay year, tons; each at least 0
 * @param options.cropTons - Own hay made in each of the same years, tons; each at least 0
 * @param options.barnTons - Hay that is meant to stand in the barn each fall, tons; at least 0
 * @param options.startTons - Hay carried into the first year, tons; at least 0
 * @param options.mostBoughtTons - Most that can be bought in a fall, tons; may follow from the need of the year before
 * @param options.carriedShare - Share of leftover hay that is still good a year later; 0 to 1
 * @returns What was bought, what stood, and what was short, for each year
 * @throws RangeError if a parameter is outside its range or the two lists differ in length
 * @source our own, arithmetic of one barn
 * @example barnYears({ needTons: [100, 150], cropTons: [0, 0], barnTons: 120, startTons: 120, mostBoughtTons: () => 50, carriedShare: 1 })[1] //=> ({ boughtTons: 50, stoodTons: 70, shortTons: 80 })
 */
export function barnYears({
  needTons,
  cropTons,
  barnTons,
  startTons,
  mostBoughtTons,
  carriedShare,
}: {
  readonly needTons: readonly number[];
  readonly cropTons: readonly number[];
  readonly barnTons: number;
  readonly startTons: number;
  readonly mostBoughtTons: (lastNeedTons: number) => number;
  readonly carriedShare: number;
}): BarnYear[] {
  need('barnYears', 'barnTons', barnTons, { atLeast: 0 });
  need('barnYears', 'startTons', startTons, { atLeast: 0 });
  need('barnYears', 'carriedShare', carriedShare, { atLeast: 0, atMost: 1 });
  need('barnYears', 'cropTons.length', cropTons.length, { atLeast: needTons.length, atMost: needTons.length });
  let carried = startTons;
  let lastNeed = 0;
  return needTons.map((needed, year) => {
    const crop = needThere('barnYears', 'crop', cropTons[year]);
    need('barnYears', 'needTons', needed, { atLeast: 0 });
    need('barnYears', 'cropTons', crop, { atLeast: 0 });
    const before = carried + crop;
    const boughtTons = Math.min(Math.max(0, barnTons - before), mostBoughtTons(lastNeed));
    const stoodTons = Math.min(Math.max(barnTons, carried), before + boughtTons);
    carried = Math.max(0, stoodTons - needed) * carriedShare;
    lastNeed = needed;
    return { boughtTons, stoodTons, shortTons: Math.max(0, needed - stoodTons) };
  });
}
