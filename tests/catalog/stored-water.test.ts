import { expect, it } from 'vitest';
import definition from '../../calculators/catalog/stored-water/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';

const months = ['january', 'february', 'march', 'april', 'may', 'june', 'july', 'august', 'september', 'october', 'november', 'december'];
const latitudes = [25, 30, 35, 40, 45, 50, 55].map((degrees) => `north-${degrees}`);
it('uses more each month toward June and less each month after July, and less to the north in winter', () => {
  const use = (month: string, latitude: string): number =>
    Number(resultAt(runQuery(definition, `use-from=weather&high=80f&low=60f&month=${month}&latitude=${latitude}`), 'dayUseIn'));
  for (const latitude of latitudes) {
    const year = months.map((month) => use(month, latitude));
    expect(year.slice(0, 6), latitude).toEqual(year.slice(0, 6).toSorted((one, other) => one - other));
    expect(year.slice(6), latitude).toEqual(year.slice(6).toSorted((one, other) => other - one));
    expect(new Set(year).size, `${latitude}: no two months alike`).toBe(12);
  }
  const january = latitudes.map((latitude) => use('january', latitude));
  expect(january).toEqual(january.toSorted((one, other) => other - one));
  expect(new Set(january).size).toBe(latitudes.length);
});
