import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

const own = (head: number, weightLb: number, percent: number): string =>
  `intake-from=own&herd.stock=cow&herd.count=${head}&herd.weight=${weightLb}lb&herd.own=${percent}pct`;
const eaten = (name: string, query: string, herdLbPerDay: string, source: string, where: string): Case => ({
  name,
  query,
  expect: { herdLbPerDay },
  source,
  where,
  seen: 'print',
});
/** Weight, lb, percent of it eaten, and the units that the chart prints at 26 lb a day. */
const chart = [
  ['horse', 1100, 3.0, '1.27'],
  ['ewe', 130, 3.5, '0.18'],
  ['doe', 125, 4.0, '0.19'],
] as const;
const pair = 'herd.stock=cow,calf&herd.count=1,1&herd.weight=1200lb,';
/** Place in the list of months, and what one animal unit is printed to eat in that month. */
const months = [
  [0, '600', 'launchbaugh-carrying-capacity', '2 percent of body weight', 'print'],
  [1, '750', 'oregon-state-pasture-capacity', 'Animal-unit month', 'print'],
  [2, '780', 'unl-beefwatch-2023', 'Animal-unit month', 'print'],
  [3, '790', 'nrcs-528-1-2007', 'Animal-unit month', 'transcription'],
  [4, '870', 'kansas-wildlife-grazing', 'Animal-unit month', 'transcription'],
  [5, '912', 'drovers-grazing-plan-2012', 'Animal-unit month', 'print'],
  [6, '915', 'nrcs-range-guides', 'Animal-unit month', 'memory'],
] as const;

export default defineCases(definition, [
  eaten('100 cows of 1,400 lb at 2.6 %', own(100, 1400, 2.6), '3640', 'johnson-hay-needs-2024', 'Hay a day'),
  eaten('68 cows of 1,200 lb at 2 %', own(68, 1200, 2), '1,632', 'kerr-center-fences', 'Need of the herd'),
  eaten('a 1,350-lb cow at 2.5 %', own(1, 1350, 2.5), '33.75', 'banta-hay-needs', 'Example'),
  eaten('a 1,200-lb cow at 2.8 %', own(1, 1200, 2.8), '33.6', 'pasture-inventory-2015', 'First approach'),
  eaten('a 1,050-lb cow at 3 %', own(1, 1050, 3), '31.5', 'rinehart-graziers-math', 'Daily intake'),
  {
    name: 'the most that a guide prints for growing cattle',
    query: 'herd.stock=growing&herd.count=1&herd.weight=700lb',
    expect: { 'kinds.0.highPercent': '3.0' },
    source: 'mullenix-2022',
    where: 'Growing cattle',
    seen: 'print',
  },
  ...chart.map(
    ([stock, weightLb, percent, eatenUnitsAu]): Case => ({
      name: `units by what one eats: ${stock} of ${weightLb} lb`,
      query: `intake-from=own&herd.stock=${stock}&herd.count=1&herd.weight=${weightLb}lb&herd.own=${percent}pct`,
      expect: { eatenUnitsAu },
      source: 'texas-animal-units',
      where: 'Chart, animal units per head',
      seen: 'transcription',
    }),
  ),
  {
    name: '100 cows of 1,400 lb, straight by weight',
    query: 'herd.stock=cow&herd.count=100&herd.weight=1400lb&weight-rule=linear',
    expect: { unitsAu: '140' },
    source: 'unl-stocking-creep',
    where: '100 cows of 1,400 lb are 140 units',
    seen: 'print',
  },
  {
    name: 'a cow of 1,200 lb with a calf of 300 lb counted by weight',
    query: `${pair}300lb&calf-rule=by-weight`,
    expect: { unitsAu: '1.5', 'calfCounts.1.countedAu': '1.5' },
    source: 'unl-stocking-creep',
    where: 'Pair',
    seen: 'print',
  },
  {
    name: 'a cow of 1,200 lb with a calf of 400 lb by weaning, by weight',
    query: `${pair}400lb&calf-rule=by-weight`,
    expect: { unitsAu: '1.6' },
    source: 'george-lile-stocking',
    where: 'Animal units',
    seen: 'transcription',
  },
  {
    name: 'a cow of 1,200 lb with a calf over four months, fixed',
    query: `${pair}400lb&calf-rule=fixed`,
    expect: { unitsAu: '1.5' },
    source: 'extension-pasture-rent',
    where: 'Answer',
    seen: 'print',
  },
  {
    name: 'a cow of 1,000 lb and calf, handbook',
    query: 'herd.stock=cow,calf&herd.count=1,1&herd.weight=1000lb,300lb&calf-rule=within&month-rule=lb-790',
    expect: { unitsAu: '1.00', ruleMonthLb: '790' },
    source: 'oregon-state-pasture-capacity',
    where: 'Table of forage requirements, cow with calf',
    seen: 'print',
  },
  {
    name: 'an animal of 1,000 lb, metabolic',
    query: 'herd.stock=cow&herd.count=1&herd.weight=1000lb&weight-rule=metabolic',
    expect: { unitsAu: '1.00' },
    source: 'manske-1998',
    where: 'Definition of the unit',
    seen: 'print',
  },
  {
    name: 'an animal of 1,400 lb, metabolic',
    query: 'herd.stock=cow&herd.count=1&herd.weight=1400lb&weight-rule=metabolic',
    expect: { unitsAu: '1.287', otherRuleAu: '1.400' },
    source: 'manske-1998',
    where: 'Method, worked out apart',
    seen: 'computed',
  },
  ...months.map(
    ([at, unitLb, source, where, seen]): Case => ({
      name: `the month of ${unitLb} lb`,
      query: 'month-rule=lb-790',
      expect: { [`monthCounts.${at}.unitLb`]: unitLb },
      source,
      where,
      seen,
    }),
  ),
]);
