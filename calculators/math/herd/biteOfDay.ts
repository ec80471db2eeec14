import { need } from '../need.ts';
import { greenShareOfBite } from './greenShareOfBite.ts';
import { intakeShare } from './intakeShare.ts';

/** What a day's grazing takes from a stand, pounds of dry matter per acre. */
export interface Bite {
  readonly eatenLbPerAc: number;
  readonly trampledLbPerAc: number;
  /** Eaten and trampled together, by what it was taken from. */
  readonly fromGreenLbPerAc: number;
  readonly fromDeadLbPerAc: number;
}

/**
 * One day's grazing: stock eat what they want less what short grass withholds (`intakeShare`), tread down t pounds for each pound eaten, take green
 * before dead (`greenShareOfBite`), and leave what is out of reach, with t = `trampledPerEaten`.
 * @param options.greenLbPerAc - Green mass, pounds of dry matter per acre; at least 0
 * @param options.deadLbPerAc - Standing dead mass, pounds of dry matter per acre; at least 0
 * @param options.wantedLb - What the herd would eat in the day, pounds of dry matter; at least 0
 * @param options.areaAc - Area of the paddock, acres; above 0
 * @param options.fullIntakeFromLbPerAc - Standing mass from which stock get all they want, pounds of dry matter per acre; above 0
 * @param options.outOfReachLbPerAc - Standing mass below which nothing is taken, pounds of dry matter per acre; at least 0
 * @param options.trampledPerEaten - Pounds trodden into litter for each pound eaten, no unit; at least 0
 * @param options.greenPreference - How many times sooner stock take green than dead, no unit; above 0
 * @returns What was eaten, what was trampled, and what both took of green and of dead, pounds of dry matter per acre
 * @throws RangeError if a parameter is outside its range
 * @source our own; the parts have their sources
 * @example biteOfDay({ greenLbPerAc: 1000, deadLbPerAc: 0, wantedLb: 1000, areaAc: 10, fullIntakeFromLbPerAc: 750, outOfReachLbPerAc: 150, trampledPerEaten: 0.5, greenPreference: 3 }).fromGreenLbPerAc //=> 150
 */
export function biteOfDay({
  greenLbPerAc,
  deadLbPerAc,
  wantedLb,
  areaAc,
  fullIntakeFromLbPerAc,
  outOfReachLbPerAc,
  trampledPerEaten,
  greenPreference,
}: {
  readonly greenLbPerAc: number;
  readonly deadLbPerAc: number;
  readonly wantedLb: number;
  readonly areaAc: number;
  readonly fullIntakeFromLbPerAc: number;
  readonly outOfReachLbPerAc: number;
  readonly trampledPerEaten: number;
  readonly greenPreference: number;
}): Bite {
  need('biteOfDay', 'greenLbPerAc', greenLbPerAc, { atLeast: 0 });
  need('biteOfDay', 'deadLbPerAc', deadLbPerAc, { atLeast: 0 });
  need('biteOfDay', 'wantedLb', wantedLb, { atLeast: 0 });
  need('biteOfDay', 'areaAc', areaAc, { above: 0 });
  need('biteOfDay', 'fullIntakeFromLbPerAc', fullIntakeFromLbPerAc, { above: 0 });
  need('biteOfDay', 'outOfReachLbPerAc', outOfReachLbPerAc, { atLeast: 0 });
  need('biteOfDay', 'trampledPerEaten', trampledPerEaten, { atLeast: 0 });
  need('biteOfDay', 'greenPreference', greenPreference, { above: 0 });
  const standing = greenLbPerAc + deadLbPerAc;
  const within = Math.max(0, standing - outOfReachLbPerAc);
  const wantedHere = wantedLb * intakeShare(standing, fullIntakeFromLbPerAc);
  const eatenLbPerAc = Math.min(wantedHere / areaAc, within / (1 + trampledPerEaten));
  const trampledLbPerAc = eatenLbPerAc * trampledPerEaten;
  const gone = eatenLbPerAc + trampledLbPerAc;
  // What the dead cannot give, the green must, and the other way round.
  const preferred = gone * greenShareOfBite(greenLbPerAc, deadLbPerAc, greenPreference);
  const fromGreenLbPerAc = Math.min(greenLbPerAc, Math.max(gone - deadLbPerAc, preferred));
  return { eatenLbPerAc, trampledLbPerAc, fromGreenLbPerAc, fromDeadLbPerAc: gone - fromGreenLbPerAc };
}
