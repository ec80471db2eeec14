import { checkList } from '../checks.ts';
import { meanChange } from './meanChange.ts';

const example = {
  source: 'nag-two-means',
  where: 'example G07CAF, equal variances; ends to the digits that its deviations bear',
  seen: 'computed',
} as const;
/** So many readings with this mean and this standard deviation: the example gives no more of its own. */
const readings = (count: number, mean: number, deviation: number): readonly number[] => {
  const away = deviation * Math.sqrt((count - 1) / count);
  return Array.from({ length: count }, (_, index) => mean + (index % 2 === 0 ? away : -away));
};
const given = meanChange({ earlier: readings(8, 21, 4.208), later: readings(4, 25, 0.8185), confidencePercent: 95 });

export default checkList('meanChange', [
  { what: 'means 21 and 25 of 8 and 4 readings: change', ours: () => given.change, printed: '4.0000', ...example },
  { what: 'the same, low end', ours: () => given.low, printed: '-0.843', ...example },
  { what: 'the same, high end', ours: () => given.high, printed: '8.843', ...example },
]);
