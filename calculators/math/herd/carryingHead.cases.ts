import { checkList } from '../checks.ts';
import { carryingHead } from './carryingHead.ts';

export default checkList('carryingHead', [
  {
    what: '500 lb an acre at 30 lb a day and 30.4 days: animal-unit months an acre',
    ours: () => carryingHead({ eatenLb: 500, dailyLbPerHead: 30, days: 30.4 }),
    printed: '0.55',
    source: 'drovers-grazing-plan-2012',
    where: 'Example',
    seen: 'print',
  },
  {
    what: '160 acres of it',
    ours: () => 160 * carryingHead({ eatenLb: 500, dailyLbPerHead: 30, days: 30.4 }),
    printed: '88',
    source: 'drovers-grazing-plan-2012',
    where: 'Example',
    seen: 'print',
  },
  {
    what: '1,400 lb an acre at 33.6 lb a day: cows for a day',
    ours: () => carryingHead({ eatenLb: 1400, dailyLbPerHead: 33.6, days: 1 }),
    printed: '41.7',
    source: 'pasture-inventory-2015',
    where: 'First approach',
    seen: 'print',
  },
  {
    what: '750,000 lb at 780 lb a month: animal-unit months',
    ours: () => carryingHead({ eatenLb: 750000, dailyLbPerHead: 26, days: 30 }),
    printed: '961.5',
    source: 'stocking-example-unsigned',
    where: 'Supply of 1,000 acres',
    seen: 'transcription',
  },
]);
