import { describe, expect, it } from 'vitest';
import feedHazards from '../../calculators/catalog/feed-hazards/definition.ts';
import stockWater from '../../calculators/catalog/stock-water/definition.ts';
import { runQuery } from '../../calculators/kit/cases.ts';
import { waterSalts, waterSulfate } from '../../calculators/tables/feedHazards.ts';

const said = (calculator: typeof feedHazards | typeof stockWater, query: string) => runQuery(calculator, query).cautions;
const sources = ['meehan-water-2023', 'harty-sulfate-2012', 'montana-livestock-water'];
/** What both forms say of the same slip, with whether it tells of death. */
const bySlip = (sulfate: number, salt: number) => ({
  hazards: said(feedHazards, `water-sulfate=so4&slip-sulfate=${sulfate}&water-salts=dissolved-solids&slip-salts=${salt}`),
  water: said(stockWater, `slip=tested&sulfate=${sulfate}mg/l&salt=${salt}mg/l`),
});

describe('a water slip', () => {
  // North Dakota (meehan-water-2023): under 500 for calves, under 1,000 for grown cattle. South Dakota (harty-sulfate-2012): from 3,000 acutely toxic.
  // Montana (montana-livestock-water): dissolved solids of 3,000, 5,000, 7,000 and 10,000 begin its classes.
  it.each([
    [499, 2999, []],
    [500, 2999, ['Too much sulfate for calves']],
    [999, 2999, ['Too much sulfate for calves']],
    [1000, 2999, ['Too much sulfate for cattle']],
    [3000, 2999, ['This much sulfate kills']],
    [499, 3000, ['Salty']],
    [499, 5000, ['Too salty for pregnant']],
    [499, 7000, ['So salty']],
    [499, 10_000, ['Too salty for any']],
  ])('sulfate %i and salts %i are warned of alike by both forms', (sulfate, salt, leads) => {
    const { hazards, water } = bySlip(sulfate, salt);
    for (const lead of leads)
      expect(
        hazards.filter((each) => each.lead.startsWith(lead)),
        lead,
      ).toHaveLength(1);
    const limits = water.filter(({ source }) => sources.includes(source));
    expect(limits).toHaveLength(leads.length);
    for (const each of limits) expect(hazards).toContainEqual(each);
  });
  it('begins to warn where a class of the tables begins', () => {
    const edges = (lists: typeof waterSulfate | typeof waterSalts, source: string): readonly number[] =>
      lists.filter((each) => each.source === source).flatMap(({ bands }) => bands.map(({ from }) => from));
    expect(edges(waterSulfate, 'meehan-water-2023')).toEqual(expect.arrayContaining([500, 1000]));
    expect(edges(waterSulfate, 'harty-sulfate-2012')).toContain(3000);
    expect(edges(waterSalts, 'montana-livestock-water')).toEqual(expect.arrayContaining([3000, 5000, 7000, 10_000]));
  });
});
