import { defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

/** Only what the sources name: no aging, no deaths, no costs of selling and buying. */
const bare = 'aging-from=none&death-loss=0pct&sale-costs=0usd&buy-back-costs=0usd&daily-cost-from=known';
const gessnerHerd = `calf-sold=yes&weaned=85pct&calf-weight=500lb&keep=240d&known-cost=2.5usd/d&herd=200&sell=0&${bare}`;

export default defineCases(definition, [
  {
    name: 'nine months at $2.80 a day, $1,100 now, $1,600 then',
    query: `calf-sold=no&keep=270d&sale=1100usd&low-buy-back=1600usd&likely-buy-back=1600usd&high-buy-back=1600usd&interest=5pct&known-cost=2.8usd/d&${bare}`,
    expect: { keepingUsd: '756.00', interestUsd: '40.68', rebuyingUsd: '459.32', keepAdvantageUsd: '-296.68', verdict: 'sell' },
    source: 'jones-keep-or-sell-2011',
    where: 'inputs of the example, worked out apart',
    seen: 'computed',
  },
  {
    name: 'calf of 550 lb at $2.80, $1,000 to carry the cow',
    query: `calf-sold=yes&weaned=100pct&calf-weight=550lb&calf-price=280usd/cwt&keep=400d&known-cost=2.5usd/d&${bare}`,
    expect: { calfUsd: '1,540', feedingUsd: '1,000', keepingUsd: '-540' },
    source: 'ritten-rebuild-2015',
    where: 'calculating payback; the $1,000 spread over 400 days',
    seen: 'print',
  },
  {
    name: '200 cows at $600, 85 percent weaned, calves of 500 lb at $1.40',
    query: `${gessnerHerd}&calf-price=140usd/cwt`,
    expect: { calfUsd: '595', planCostUsd: '1,000' },
    source: 'gessner-2016',
    where: 'baseline, 200 head; income a cow is $119,000 over 200, the $600 spread over 240 days',
    seen: 'print',
  },
  {
    name: 'the same herd at $1.50',
    query: `${gessnerHerd}&calf-price=150usd/cwt`,
    expect: { planCostUsd: '-7,500' },
    source: 'gessner-igrow-2017',
    where: 'example scenario, worked out apart',
    seen: 'computed',
  },
  {
    name: '35 of 200 cows sold',
    query: 'herd=200&sell=35',
    expect: { soldPercent: '17.5' },
    source: 'gessner-2016',
    where: 'option A',
    seen: 'print',
  },
]);
