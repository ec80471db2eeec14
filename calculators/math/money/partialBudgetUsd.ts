import { need } from '../need.ts';

/**
 * What a change is worth by partial budget: N = (R + C′) − (C + R′), with R = `addedReturnsUsd`, C′ = `reducedCostsUsd`, C = `addedCostsUsd`,
 * R′ = `reducedReturnsUsd`. Only what changes is counted: costs that stay either way drop out.
 * @param options.addedReturnsUsd - Returns that the change brings, dollars; 0 or more
 * @param options.reducedCostsUsd - Costs that the change saves, dollars; 0 or more
 * @param options.addedCostsUsd - Costs that the change brings, dollars; 0 or more
 * @param options.reducedReturnsUsd - Returns that the change takes away, dollars; 0 or more
 * @returns Sum of the gains, sum of the losses, and the net, dollars
 * @throws RangeError if an amount is negative
 * @source csu-abm-partial-budget, worksheet 1
 * @example partialBudgetUsd({ addedReturnsUsd: 1100, reducedCostsUsd: 756, addedCostsUsd: 1600, reducedReturnsUsd: 0 }).netUsd //=> 256
 */
export function partialBudgetUsd({
  addedReturnsUsd,
  reducedCostsUsd,
  addedCostsUsd,
  reducedReturnsUsd,
}: {
  readonly addedReturnsUsd: number;
  readonly reducedCostsUsd: number;
  readonly addedCostsUsd: number;
  readonly reducedReturnsUsd: number;
}): { readonly gainUsd: number; readonly lossUsd: number; readonly netUsd: number } {
  need('partialBudgetUsd', 'addedReturnsUsd', addedReturnsUsd, { atLeast: 0 });
  need('partialBudgetUsd', 'reducedCostsUsd', reducedCostsUsd, { atLeast: 0 });
  need('partialBudgetUsd', 'addedCostsUsd', addedCostsUsd, { atLeast: 0 });
  need('partialBudgetUsd', 'reducedReturnsUsd', reducedReturnsUsd, { atLeast: 0 });
  const gainUsd = addedReturnsUsd + reducedCostsUsd;
  const lossUsd = addedCostsUsd + reducedReturnsUsd;
  return { gainUsd, lossUsd, netUsd: gainUsd - lossUsd };
}
