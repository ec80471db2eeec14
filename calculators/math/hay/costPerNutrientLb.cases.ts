import { checkList } from '../checks.ts';
import { costPerNutrientLb, nutrientLbPerTon } from './costPerNutrientLb.ts';

export default checkList('costPerNutrientLb', [
  {
    what: '91 % dry matter, 15 % protein: lb of protein a ton',
    ours: () => nutrientLbPerTon({ dryMatterPercent: 91, nutrientPercent: 15 }),
    printed: '273',
    source: 'montana-richland-2022',
    where: 'Feed A',
    seen: 'print',
  },
  {
    what: '90 % dry matter, 30 % protein: lb of protein a ton',
    ours: () => nutrientLbPerTon({ dryMatterPercent: 90, nutrientPercent: 30 }),
    printed: '540',
    source: 'montana-richland-2022',
    where: 'Feed B',
    seen: 'print',
  },
  {
    what: '$200 a ton: dollars a lb of protein',
    ours: () => costPerNutrientLb({ pricePerTon: 200, dryMatterPercent: 91, nutrientPercent: 15 }),
    printed: '0.73',
    source: 'montana-richland-2022',
    where: 'Feed A',
    seen: 'print',
  },
  {
    what: '$300 a ton: dollars a lb of protein',
    ours: () => costPerNutrientLb({ pricePerTon: 300, dryMatterPercent: 90, nutrientPercent: 30 }),
    printed: '0.55',
    source: 'montana-richland-2022',
    where: 'Feed B',
    seen: 'print',
    differs: { by: '0.006', because: 'the page drops the third figure of 0.556' },
  },
  {
    what: '82 % dry matter, 59 % TDN: lb of TDN a ton',
    ours: () => nutrientLbPerTon({ dryMatterPercent: 82, nutrientPercent: 59 }),
    printed: '967.6',
    source: 'penn-state-feeds-1993',
    where: 'Beef Briefs',
    seen: 'print',
  },
  {
    what: 'Silage at $30, 27 % dry matter, 55 % TDN: dollars a ton of TDN',
    ours: () => 2000 * costPerNutrientLb({ pricePerTon: 30, dryMatterPercent: 27, nutrientPercent: 55 }),
    printed: '202.02',
    source: 'warner-feedstuff-costs',
    where: 'Example of wheat silage',
    seen: 'print',
  },
]);
