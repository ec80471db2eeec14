import { type Check, checkList } from '../checks.ts';
import { partialBudgetUsd } from './partialBudgetUsd.ts';

const table = { source: 'limousin-today-2019', where: 'Table 1, creep feeding, dollars a calf', seen: 'print' } as const;

/** Returns without and with creep feed; feed, equipment, labor, transport; then what the table prints of them. */
const years = [
  { year: '2014', without: 1496.65, creep: 1463.84, costs: [45.13, 8.77, 13.82, 1.57], printedCost: '69.29', printedNet: '-102.10' },
  { year: '2015', without: 1061.48, creep: 1143.32, costs: [68.87, 10.42, 16.41, 1.35], printedCost: '97.05', printedNet: '-15.21' },
  { year: '2016', without: 821.03, creep: 834.54, costs: [76.47, 12.2, 19.21, 1.39], printedCost: '109.27', printedNet: '-95.76' },
  { year: 'mean of three years', without: 1111.88, creep: 1162.14, costs: [63.49, 10.46, 16.48, 1.44], printedCost: '91.87', printedNet: '-41.61' },
] as const;

const budget = ({ without, creep, costs }: (typeof years)[number]) =>
  partialBudgetUsd({
    addedReturnsUsd: Math.max(0, creep - without),
    reducedCostsUsd: 0,
    addedCostsUsd: costs.reduce((sum, cost) => sum + cost, 0),
    reducedReturnsUsd: Math.max(0, without - creep),
  });

export default checkList(
  'partialBudgetUsd',
  years.flatMap((year): Check[] => [
    {
      what: `creep feeding ${year.year}, costs that it adds, dollars a calf`,
      ours: () => budget(year).lossUsd - Math.max(0, year.without - year.creep),
      printed: year.printedCost,
      ...table,
    },
    { what: `creep feeding ${year.year}, net, dollars a calf`, ours: () => budget(year).netUsd, printed: year.printedNet, ...table },
  ]),
);
