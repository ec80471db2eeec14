import { checkList } from '../checks.ts';
import { nearWaterShare } from './nearWaterShare.ts';

/** What a ring gives: the wider circle's ground that counts, less the narrower one's, over the ground between the two. */
function ringPercent(innerMi: number, outerMi: number): number {
  const counted = (farthestMi: number): number => farthestMi ** 2 * nearWaterShare({ farthestMi });
  return (100 * (counted(outerMi) - counted(innerMi))) / (outerMi ** 2 - innerMi ** 2);
}
const print = { source: 'rangelands-gateway-matching', where: 'Step a', seen: 'print' } as const;

export default checkList('nearWaterShare', [
  { what: 'Within 1.6 km of water: percent accessible', ours: () => 100 * nearWaterShare({ farthestMi: 0.9 }), printed: '100', ...print },
  { what: 'The ring 1.6 to 3.2 km from water: percent accessible', ours: () => ringPercent(1, 2), printed: '50', ...print },
  { what: 'The ring over 3.2 km from water: percent accessible', ours: () => ringPercent(2, 5), printed: '0', ...print },
]);
