import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import { dailyIntakeLb } from './dailyIntakeLb.ts';

const each = (weightLb: number, intakePercent: number) => dailyIntakeLb({ head: 1, weightLb, intakePercent });
/** Weight, lb, and intake, percent of weight, as the chart gives them. */
export const animals: Readonly<Record<string, readonly [weightLb: number, intakePercent: number]>> = {
  'beef-cow': [1000, 2.6],
  horse: [1100, 3.0],
  ewe: [130, 3.5],
  'Spanish-nanny': [90, 4.5],
  'Boer-cross-nanny': [125, 4.0],
  'Angora-nanny': [70, 4.5],
  'white-tailed-deer': [100, 3.5],
  'mule-deer': [135, 3.5],
  pronghorn: [90, 4.0],
  'axis-deer': [150, 3.5],
  'sika-deer': [145, 3.5],
  elk: [800, 3.0],
  'red-deer': [350, 3.5],
  'sambar-deer': [400, 3.5],
  'sable-antelope': [500, 3.0],
  blackbuck: [75, 4.0],
  addax: [250, 3.5],
  eland: [1000, 2.5],
  kudu: [450, 3.5],
  sitatunga: [200, 3.5],
  gazelle: [85, 4.0],
  'Barbado-sheep': [120, 3.5],
};

export default checkList('dailyIntakeLb', [
  ...tableChecks({
    columns: ['year'],
    text: `
      beef-cow 9490
      horse 12045
      ewe 1661
      Spanish-nanny 1478
      Boer-cross-nanny 1825
      Angora-nanny 1150
      white-tailed-deer 1278
      mule-deer 1725
      pronghorn 1314
      axis-deer 1916
      sika-deer 1852
      elk 8760
      red-deer 4471
      sambar-deer 5110
      sable-antelope 5475
      blackbuck 1095
      addax 3194
      eland 9125
      kudu 5749
      sitatunga 2555
      gazelle 1241
      Barbado-sheep 1533
    `,
    what: (animal) => `Forage of a year, lb: ${animal}`,
    ours: (animal) => {
      const [weightLb, intakePercent] = needThere('dailyIntakeLb', animal, animals[animal]);
      return 365 * each(weightLb, intakePercent);
    },
    source: 'texas-animal-units',
    where: 'Chart, annual forage',
    seen: 'transcription',
  }),
  ...tableChecks({
    columns: ['3.5', '3.0', '2.5'],
    text: `
      1400 49 42 35
      1000 35 30 25
      250 8.75 7.5 6.25
      125 4.4 3.75 3.1
    `,
    what: (weight, percent) => `${weight} lb at ${percent} %`,
    ours: (weight, percent) => each(Number(weight), Number(percent)),
    source: 'umaine-pasture-lesson-5',
    where: 'A simpler approach, table 2',
    seen: 'print',
  }),
  { what: 'A 700-lb calf at 3 %', ours: () => each(700, 3), printed: '21', source: 'mullenix-2022', where: 'Growing cattle', seen: 'print' },
  {
    what: 'A 1,200-lb cow at 3.5 %',
    ours: () => each(1200, 3.5),
    printed: '42',
    source: 'mccutcheon-growth',
    where: 'Growth against intake',
    seen: 'print',
  },
  {
    what: 'A 1,000-lb animal unit at 2.6 %',
    ours: () => each(1000, 2.6),
    printed: '26',
    source: 'extension-animal-units-2015',
    where: 'Animal unit',
    seen: 'print',
  },
  {
    what: 'A 1,000-lb cow at 2.5 % for 30 days',
    ours: () => 30 * each(1000, 2.5),
    printed: '750',
    source: 'oregon-state-pasture-capacity',
    where: 'Animal-unit month',
    seen: 'print',
  },
  {
    what: 'A 1,200-lb cow at 2 %',
    ours: () => each(1200, 2),
    printed: '24',
    source: 'eagle-2020',
    where: 'Example of a 1,200-lb cow',
    seen: 'print',
  },
  {
    what: 'A 1,200-lb cow at 2.8 %',
    ours: () => each(1200, 2.8),
    printed: '33.6',
    source: 'pasture-inventory-2015',
    where: 'First approach',
    seen: 'print',
  },
  {
    what: 'A 1,050-lb cow at 3 %',
    ours: () => each(1050, 3),
    printed: '31.5',
    source: 'rinehart-graziers-math',
    where: 'Daily intake',
    seen: 'print',
  },
  { what: 'A 1,200-lb cow at 3 %', ours: () => each(1200, 3), printed: '36', source: 'omafra-pasture-2010', where: 'Step 1', seen: 'print' },
  { what: 'A 1,500-lb cow at 3 %', ours: () => each(1500, 3), printed: '45', source: 'omafra-pasture-2010', where: 'Step 1', seen: 'print' },
  { what: 'A 1,400-lb cow at 2.6 %', ours: () => each(1400, 2.6), printed: '36.4', source: 'johnson-hay-needs-2024', where: 'Rule 1', seen: 'print' },
  {
    what: '100 cows of 1,400 lb at 2.6 %',
    ours: () => dailyIntakeLb({ head: 100, weightLb: 1400, intakePercent: 2.6 }),
    printed: '3640',
    source: 'johnson-hay-needs-2024',
    where: 'Hay a day',
    seen: 'print',
  },
  { what: 'A 1,350-lb cow at 2.5 %', ours: () => each(1350, 2.5), printed: '33.75', source: 'banta-hay-needs', where: 'Example', seen: 'print' },
  {
    what: '68 cows of 1,200 lb at 2 %',
    ours: () => dailyIntakeLb({ head: 68, weightLb: 1200, intakePercent: 2 }),
    printed: '1,632',
    source: 'kerr-center-fences',
    where: 'Need of the herd',
    seen: 'print',
  },
]);
