import { expect, test } from 'vitest';
import definition from '../../calculators/catalog/share-taken/definition.ts';
import { runQuery } from '../../calculators/kit/cases.ts';

const ofNinety = (plants: number) => runQuery(definition, `none=0&ten=0&thirty=0&fifty=0&seventy=0&ninety=${plants}`);

test('tells of one plant as of one, and no odds by it', () => {
  const { ranges } = ofNinety(1);
  expect(ranges['takenPercent']).toBe('of one plant, which tells nothing of the others: 0 to 100 %');
  expect(Object.values(ranges).join(' ')).not.toMatch(/\b1 plants|95 in 100/);
});
