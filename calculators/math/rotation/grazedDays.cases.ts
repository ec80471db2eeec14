import { checkList } from '../checks.ts';
import { grazedDays } from './grazedDays.ts';

const byHand = { source: 'umaine-pasture-lesson-5', where: 'Days of a grazing period, counted on a calendar by hand', seen: 'computed' } as const;

export default checkList('grazedDays', [
  { what: 'In on May 1, out on May 6', ours: () => grazedDays({ inDay: 121, outDay: 126 }), printed: '5', ...byHand },
  { what: 'In and out on one day', ours: () => grazedDays({ inDay: 121, outDay: 121 }), printed: '0.5', ...byHand },
]);
