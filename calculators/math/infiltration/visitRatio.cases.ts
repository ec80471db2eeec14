import { checkList } from '../checks.ts';
import { geometricMean } from './geometricMean.ts';
import { scatterFactor, visitRatio } from './visitRatio.ts';

const apart = { source: 'nist-sematech-handbook', where: 'two-sample t interval on logarithms, by SciPy', seen: 'computed' } as const;
const rings = { earlier: [0.8, 1.5, 2.1], later: [1.9, 4.4, 3, 2.2], confidencePercent: 95 };
const factor = (count: number) => scatterFactor({ earlierRings: count, laterRings: count, variationPercent: 80, confidencePercent: 95 });

export default checkList('visitRatio', [
  { what: 'three rings, geometric mean', ours: () => geometricMean(rings.earlier), printed: '1.360818', ...apart },
  { what: 'three rings, then four: ratio', ours: () => visitRatio(rings).ratio, printed: '2.002799', ...apart },
  { what: 'the same, low end', ours: () => visitRatio(rings).low, printed: '0.872927', ...apart },
  { what: 'the same, high end', ours: () => visitRatio(rings).high, printed: '4.595117', ...apart },
  { what: 'three rings each time that vary by 80 %: factor that is still scatter', ours: () => factor(3), printed: '4.9257', ...apart },
  { what: 'five rings each time', ours: () => factor(5), printed: '2.7893', ...apart },
  { what: 'ten rings each time', ours: () => factor(10), printed: '1.9364', ...apart },
]);
