import { need } from '../need.ts';

/** How well a pound of each covers the ground: acres of shade for each pound, if nothing lay over anything else. */
export interface CoverByMass {
  readonly perGreenAcPerLb: number;
  readonly perDeadAcPerLb: number;
  readonly perLitterAcPerLb: number;
}

/**
 * Share of the ground under cover, by what stands and lies on it: leaves and litter overlap at random, so their exponents add: c = 1 − (1 − b)
 * e^−(kg G + kd D + kl L), and of green alone g = 1 − e^−kg G, with G = `greenLbPerAc`, D = `deadLbPerAc`, L = `litterLbPerAc`, b = `baseShare`, kg =
 * `perGreenAcPerLb`, kd = `perDeadAcPerLb`, kl = `perLitterAcPerLb`.
 * @param options.greenLbPerAc - Green mass, pounds of dry matter per acre; at least 0
 * @param options.deadLbPerAc - Standing dead mass, pounds of dry matter per acre; at least 0
 * @param options.litterLbPerAc - Litter on the ground, pounds of dry matter per acre; at least 0
 * @param options.baseShare - Share that crowns, stones and moss cover whatever grows; 0 to 1
 * @param options.perGreenAcPerLb - Cover of a pound of green, acres; at least 0
 * @param options.perDeadAcPerLb - Cover of a pound of standing dead, acres; at least 0
 * @param options.perLitterAcPerLb - Cover of a pound of litter, acres; at least 0
 * @returns Share under green leaves, and share under anything, 0 to 1
 * @throws RangeError if a parameter is outside its range
 * @source gregory-1982, cover by mass; several kinds together as the soil-loss program of the same service adds them
 * @example coverShares({ greenLbPerAc: 1000, deadLbPerAc: 0, litterLbPerAc: 0, baseShare: 0, perGreenAcPerLb: 0.001, perDeadAcPerLb: 0.0006, perLitterAcPerLb: 0.001 }).groundShare //=> 0.632
 */
export function coverShares({
  greenLbPerAc,
  deadLbPerAc,
  litterLbPerAc,
  baseShare,
  perGreenAcPerLb,
  perDeadAcPerLb,
  perLitterAcPerLb,
}: CoverByMass & { readonly greenLbPerAc: number; readonly deadLbPerAc: number; readonly litterLbPerAc: number; readonly baseShare: number }): {
  readonly greenShare: number;
  readonly groundShare: number;
} {
  need('coverShares', 'greenLbPerAc', greenLbPerAc, { atLeast: 0 });
  need('coverShares', 'deadLbPerAc', deadLbPerAc, { atLeast: 0 });
  need('coverShares', 'litterLbPerAc', litterLbPerAc, { atLeast: 0 });
  need('coverShares', 'baseShare', baseShare, { atLeast: 0, atMost: 1 });
  need('coverShares', 'perGreenAcPerLb', perGreenAcPerLb, { atLeast: 0 });
  need('coverShares', 'perDeadAcPerLb', perDeadAcPerLb, { atLeast: 0 });
  need('coverShares', 'perLitterAcPerLb', perLitterAcPerLb, { atLeast: 0 });
  const green = perGreenAcPerLb * greenLbPerAc;
  return {
    greenShare: 1 - Math.exp(-green),
    groundShare: 1 - (1 - baseShare) * Math.exp(-(green + perDeadAcPerLb * deadLbPerAc + perLitterAcPerLb * litterLbPerAc)),
  };
}
