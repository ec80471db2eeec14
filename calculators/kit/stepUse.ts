import { areWays, usedWay } from './plain.ts';
import type { Step, StepUse } from './steps.ts';

/** How a step goes with these values: which of its ways, for rows one to each, or not at all. */
export const useOf = <R, V extends R>(step: Step<V, R>, values: V): StepUse => {
  if (step.onlyWhen && !step.onlyWhen(values)) return null;
  if (step.kind === 'formula') return usedWay(step.ways, values);
  if (step.kind !== 'rows') return 0;
  const list: unknown = values[step.of];
  const use: Record<string, readonly number[]> = {};
  const formulas: readonly (readonly [string, unknown])[] = Object.entries(step.formulas);
  for (const [column, ways] of formulas) {
    if (Array.isArray(list)) use[column] = list.map((row) => (areWays<V>(ways) ? usedWay(ways, { ...values, ...row }) : 0));
  }
  return use;
};
