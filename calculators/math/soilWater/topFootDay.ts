import { need } from '../need.ts';

/**
 * Water missing from the top foot this evening: what reaches the ground fills it first, evaporation leaves it, and plants draw from it and from below by
 * roots times the water left in each. It moves the retention of the runoff equation (`retentionByDepletionIn`) and nothing else. With missing water of
 * the top foot `topDepletionMm` and of the whole root zone `depletionMm`, each of `topAvailableMm` and `availableMm`.
 * @param options.topDepletionMm - Water missing from the top foot last evening, millimeters; 0 to `topAvailableMm`
 * @param options.topAvailableMm - Available water of the top foot, millimeters; above 0
 * @param options.depletionMm - Water missing from the root zone last evening, millimeters; 0 to `availableMm`
 * @param options.availableMm - Available water of the root zone, millimeters; at least `topAvailableMm`
 * @param options.rootShareInTop - Share of the roots in the top foot; 0 to 1
 * @param options.throughMm - Water that reached the ground, millimeters; at least 0
 * @param options.evaporationMm - Water that evaporated from the ground, millimeters; at least 0
 * @param options.transpirationMm - Water that plants used, millimeters; at least 0
 * @returns Water missing from the top foot this evening, millimeters
 * @throws RangeError if a parameter is outside its range
 * @source our own; that most roots of grass are in the top foot: jackson-1996
 * @example topFootDay({ topDepletionMm: 10, topAvailableMm: 60, depletionMm: 20, availableMm: 120, rootShareInTop: 0.8, throughMm: 10, evaporationMm: 1, transpirationMm: 0 }) //=> 1
 */
export function topFootDay({
  topDepletionMm,
  topAvailableMm,
  depletionMm,
  availableMm,
  rootShareInTop,
  throughMm,
  evaporationMm,
  transpirationMm,
}: {
  readonly topDepletionMm: number;
  readonly topAvailableMm: number;
  readonly depletionMm: number;
  readonly availableMm: number;
  readonly rootShareInTop: number;
  readonly throughMm: number;
  readonly evaporationMm: number;
  readonly transpirationMm: number;
}): number {
  need('topFootDay', 'topAvailableMm', topAvailableMm, { above: 0 });
  need('topFootDay', 'topDepletionMm', topDepletionMm, { atLeast: 0, atMost: topAvailableMm });
  need('topFootDay', 'availableMm', availableMm, { atLeast: topAvailableMm });
  need('topFootDay', 'depletionMm', depletionMm, { atLeast: 0, atMost: availableMm });
  need('topFootDay', 'rootShareInTop', rootShareInTop, { atLeast: 0, atMost: 1 });
  need('topFootDay', 'throughMm', throughMm, { atLeast: 0 });
  need('topFootDay', 'evaporationMm', evaporationMm, { atLeast: 0 });
  need('topFootDay', 'transpirationMm', transpirationMm, { atLeast: 0 });
  const wetTop = Math.max(0, topDepletionMm - throughMm);
  const wetAll = Math.max(0, depletionMm - throughMm);
  const belowAvailable = availableMm - topAvailableMm;
  const belowDepletion = Math.min(belowAvailable, Math.max(0, wetAll - wetTop));
  const topLeft = (rootShareInTop * (topAvailableMm - wetTop)) / topAvailableMm;
  const belowLeft = belowAvailable > 0 ? ((1 - rootShareInTop) * (belowAvailable - belowDepletion)) / belowAvailable : 0;
  const topShare = topLeft + belowLeft > 0 ? topLeft / (topLeft + belowLeft) : 1;
  const evening = wetTop + evaporationMm + topShare * transpirationMm;
  // The layer below never misses more than it can hold: what it cannot give, the top foot gave.
  const all = wetAll + evaporationMm + transpirationMm;
  return Math.min(topAvailableMm, Math.max(evening, all - belowAvailable));
}
