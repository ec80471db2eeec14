import { type Counted, groupLbPerDay } from './herdEats.ts';

/** The kind that eats most of those that can be weighed against each other. */
export function mainOf(groups: readonly Counted[], todayDay: number): Counted | undefined {
  const sized = groups.flatMap((group) => {
    const lbPerDay = groupLbPerDay(group, todayDay);
    return lbPerDay === undefined ? [] : [{ group, lbPerDay }];
  });
  return sized.toSorted((one, other) => other.lbPerDay - one.lbPerDay)[0]?.group;
}
