import type { HerdGroup } from '../model/herdGroup.ts';
import { intakePercentAt, stageOf } from './stages.ts';

/** A group of which there is any. */
export type Counted = HerdGroup & { readonly countHead: number };
export const counted = (herd: readonly HerdGroup[]): readonly Counted[] =>
  herd.flatMap((group) => (group.countHead !== undefined && group.countHead > 0 ? [{ ...group, countHead: group.countHead }] : []));

/** What one of a group eats today, lb of dry matter. */
export const eachLbPerDay = (group: HerdGroup, todayDay: number): number | undefined =>
  group.weightLb === undefined ? undefined : (group.weightLb * intakePercentAt(group, stageOf(group, todayDay))) / 100;
export const groupLbPerDay = (group: Counted, todayDay: number): number | undefined => {
  const each = eachLbPerDay(group, todayDay);
  return each === undefined ? undefined : each * group.countHead;
};
