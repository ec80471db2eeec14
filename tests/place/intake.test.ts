import { describe, expect, it } from 'vitest';
import { guidePercents } from '../../calculators/math/herd/guidePercents.ts';
import { intakePercentAt } from '../../src/place/offer/stages.ts';

// guidePercents is checked against the printed guides (hibberd-thrift-1992 and the others of its table). A place must tell a form what the form about intake says.
describe('what one eats a day, as a place tells it', () => {
  // Bulls start at a round share in all forms: no guide prints one.
  const kinds = [
    ['cow', 'cow'],
    ['heifer', 'heifer'],
    ['bull', 'bull'],
    ['stocker', 'growing'],
    ['calf', 'calf'],
    ['ewe', 'ewe'],
    ['lamb', 'lamb'],
    ['doe', 'doe'],
    ['horse', 'horse'],
  ] as const;
  it.each(kinds.flatMap(([kind, stock]) => (['dry', 'late', 'nursing'] as const).map((stage) => ({ kind, stock, stage }))))(
    'is what the guides print: $kind, $stage',
    ({ kind, stock, stage }) => {
      expect(intakePercentAt({ kind }, stage)).toBe(guidePercents(stock, stage, 'fair').likelyPercent);
    },
  );
});
