import { need } from '../need.ts';

/**
 * Forage that weaning early spares, cow and calf kept apart: the cow W (m − d) t / 100, the calf f t, with W = `cowWeightLb`, m, d = `milkingPercent`,
 * `dryPercent`, f = `calfForageLbPerDay`, t = `days`. The calf's part is spared only on the ground that it leaves.
 * @param options.cowWeightLb - Weight of the cow, lb; above 0
 * @param options.milkingPercent - Dry matter that she eats while nursing, percent of weight a day; `dryPercent` to 5
 * @param options.dryPercent - Dry matter that she eats once dry, percent of weight a day; above 0
 * @param options.calfForageLbPerDay - Forage that the calf eats beside milk, lb of dry matter a day; 0 or more
 * @param options.days - Days between the early and the usual weaning, days; 0 or more
 * @returns Dry matter spared by cow, by calf and by both, lb; share of what the pair would have eaten, percent; and the days that each part feeds the dry cow
 * @throws RangeError if a value is outside its range
 * @source hibberd-thrift-1992, intake of dry and lactating cows
 * @example earlyWeaningFeedLb({ cowWeightLb: 1300, milkingPercent: 2.5, dryPercent: 2.2, calfForageLbPerDay: 6, days: 1 }).sparedLb //=> 9.9
 */
export function earlyWeaningFeedLb({
  cowWeightLb,
  milkingPercent,
  dryPercent,
  calfForageLbPerDay,
  days,
}: {
  readonly cowWeightLb: number;
  readonly milkingPercent: number;
  readonly dryPercent: number;
  readonly calfForageLbPerDay: number;
  readonly days: number;
}): {
  readonly cowLb: number;
  readonly calfLb: number;
  readonly sparedLb: number;
  readonly sparedPercent: number;
  readonly cowDays: number;
  readonly calfDays: number;
} {
  need('earlyWeaningFeedLb', 'cowWeightLb', cowWeightLb, { above: 0 });
  need('earlyWeaningFeedLb', 'dryPercent', dryPercent, { above: 0 });
  need('earlyWeaningFeedLb', 'milkingPercent', milkingPercent, { atLeast: dryPercent, atMost: 5 });
  need('earlyWeaningFeedLb', 'calfForageLbPerDay', calfForageLbPerDay, { atLeast: 0 });
  need('earlyWeaningFeedLb', 'days', days, { atLeast: 0 });
  const dryLbPerDay = (cowWeightLb * dryPercent) / 100;
  const milkingLbPerDay = (cowWeightLb * milkingPercent) / 100;
  const cowLb = (milkingLbPerDay - dryLbPerDay) * days;
  const calfLb = calfForageLbPerDay * days;
  return {
    cowLb,
    calfLb,
    sparedLb: cowLb + calfLb,
    // A share of the daily amounts, so that it stands even for no days.
    sparedPercent: (100 * (milkingLbPerDay - dryLbPerDay + calfForageLbPerDay)) / (milkingLbPerDay + calfForageLbPerDay),
    cowDays: cowLb / dryLbPerDay,
    calfDays: calfLb / dryLbPerDay,
  };
}
