import {
  animalUnitDay,
  animalUnitsHandbook,
  animalUnitsHandbookSource,
  animalUnitsVallentine,
  animalUnitsVallentineSource,
} from '../../calculators/tables/animalUnits.ts';
import { coldStressSource, lowerCriticalTemperatureF, wetCoatRules } from '../../calculators/tables/coldStress.ts';
import { intake } from '../../calculators/tables/intake.ts';
import { type DrinkingAnimal, type HeatList, intakeByHeat, intakeRanges } from '../../calculators/tables/stockWater.ts';
import { entriesOf, named, type Origin, type TableGroup, tableOf } from './table.ts';

const animalUnits = [
  ...animalUnitsHandbook.map((each) => ({ ...animalUnitsHandbookSource, ...each, key: each.animal })),
  ...animalUnitsVallentine.map((each) => ({ ...animalUnitsVallentineSource, ...each, key: `${each.animal}-vallentine` })),
];

type Eater = (typeof intake)[number];
const qualities = { low: 'poor feed', average: 'fair feed', high: 'good feed' } as const;
const eaterName = ({ animal, stage, quality }: Eater): string => {
  const who = `${named(animal)}, ${stage}`;
  return quality === 'any' ? who : `${who}, ${qualities[quality]}`;
};
/** One row for each printed figure, since each has a source of its own. */
const eaters = intake.flatMap((eater) =>
  eater.printed.map((printed, index) => ({
    ...printed,
    name: eaterName(eater),
    key: [eater.animal, ...eater.stage.split(/\W+/), ...(eater.quality === 'any' ? [] : [eater.quality]), ...(index === 0 ? [] : [index + 1])].join(
      '-',
    ),
  })),
);

const coats = { wet: 'Wet coat', 'dry-fall': 'Dry fall coat', 'dry-winter': 'Dry winter coat', 'dry-heavy-winter': 'Dry heavy winter coat' } as const;

const drinkers: Readonly<Record<DrinkingAnimal, string>> = {
  'cow-nursing': 'Cow, nursing',
  'cow-dry': 'Cow, dry',
  bull: 'Bull',
  'heifer-pregnant-750': 'Bred heifer, 750 lb',
  'calf-500': 'Calf, 500 lb',
  'growing-400': 'Growing, 400 lb',
  'growing-600': 'Growing, 600 lb',
  'growing-800': 'Growing, 800 lb',
  'finishing-600': 'Finishing, 600 lb',
  'finishing-800': 'Finishing, 800 lb',
  'finishing-1000': 'Finishing, 1,000 lb',
  'finishing-1200': 'Finishing, 1,200 lb',
  ewe: 'Ewe',
  'ewe-nursing': 'Ewe, nursing',
  goat: 'Goat',
  'goat-nursing': 'Goat, nursing',
  horse: 'Horse',
  'draft-horse': 'Draft horse',
  llama: 'Llama',
};
interface Drinker extends Origin {
  readonly animal: DrinkingAnimal;
  readonly gallons: ReadonlyMap<number, number>;
}
const lists: readonly HeatList[] = intakeByHeat;
const airOf = (shown: readonly HeatList[]): readonly number[] => [...new Set(shown.flatMap((list) => list.airF))].sort((one, other) => one - other);
const drinkersIn = (shown: readonly HeatList[]): readonly Drinker[] =>
  entriesOf(drinkers).flatMap(([animal]) =>
    shown.flatMap(({ source, where, seen, airF, gal }) => {
      const gallons = gal[animal];
      return gallons === undefined
        ? []
        : [{ source, where, seen, animal, gallons: new Map(gallons.map((each, index) => [airF[index] ?? Number.NaN, each])) }];
    }),
  );
const heatColumns = (shown: readonly HeatList[]) =>
  airOf(shown).map((temperature) => ({
    key: String(temperature),
    label: `At ${temperature} °F`,
    unit: 'gal/day' as const,
    of: ({ gallons }: Drinker) => gallons.get(temperature) ?? null,
  }));
/** The longest list stands alone; the short ones name other temperatures. */
const [longList, ...shortLists] = lists;
const longLists = longList === undefined ? [] : [longList];

export const stock: TableGroup = {
  title: 'Stock and what they eat and drink',
  tables: [
    tableOf({
      slug: 'intake',
      title: 'What stock eat in a day (dry matter intake)',
      says: 'Dry feed as a percent of live weight, by kind of stock and how good the feed is. Each printed figure has a row.',
      trap: 'Guides miss in both directions. Work with the range, weigh a few cows, and remember that cows weigh more than most people think.',
      searchWords: ['dry matter intake', 'percent of body weight', 'how much does a cow eat', 'feed a day'],
      file: 'intake',
      calculators: [
        'herd-intake',
        'carrying-capacity',
        'days-of-grass',
        'forage-on-hand',
        'hay-to-grass',
        'rest-and-moves',
        'standing-feed',
        'early-weaning',
      ],
      rowsAre: 'Who, on what',
      entries: eaters,
      key: ({ key }) => key,
      name: ({ name }) => name,
      origin: (entry) => entry,
      columns: [{ key: 'share', label: 'Of live weight a day', unit: '%', of: ({ percent }) => percent }],
    }),
    tableOf({
      slug: 'animal-units',
      title: 'Cows, sheep and horses on one scale (animal-unit equivalents)',
      says: 'How many animal units each kind of stock counts for, by two lists in common use.',
      trap: 'In one list a cow with her calf counts 1, and in the other a dry cow does. Say which one your lease or permit means, and trust pounds a day before either.',
      searchWords: ['AU', 'AUE', 'animal unit', 'AUM', 'animal unit month', 'sheep to cow'],
      file: 'animalUnits',
      calculators: ['herd-intake'],
      rowsAre: 'Animal',
      entries: animalUnits,
      key: ({ key }) => key,
      name: ({ name }) => name,
      origin: (entry) => entry,
      columns: [{ key: 'units', label: 'Animal units', of: ({ animalUnits: units }) => units }],
    }),
    tableOf({
      slug: 'animal-unit-day',
      title: 'Pounds in an animal-unit day',
      says: 'How much dry feed one animal unit stands for in a day. Agencies differ.',
      trap: 'Air-dry feed still holds some water and oven-dry holds none. Ask which is meant before you set two figures side by side.',
      searchWords: ['AUD', 'AUM pounds', 'animal unit month', 'forage demand'],
      file: 'animalUnits',
      calculators: ['herd-intake'],
      rowsAre: 'Convention',
      entries: animalUnitDay,
      key: ({ convention }) => convention,
      name: ({ convention }) => named(convention),
      origin: (entry) => entry,
      columns: [
        { key: 'feed', label: 'Feed', unit: 'lb/day', of: ({ lbPerDay }) => lbPerDay },
        { key: 'basis', label: 'Weighed', of: ({ basis }) => basis.replace('not-said', 'not said') },
      ],
    }),
    tableOf({
      slug: 'cold-stress',
      title: 'Cold at which cows need more feed (lower critical temperature)',
      says: 'Below this, with the wind counted, cattle in fair flesh burn feed to keep warm.',
      trap: 'A wet coat changes everything: rain just above freezing is worse than dry cold far below it. Thin cows feel it sooner.',
      searchWords: ['lower critical temperature', 'wind chill cattle', 'winter feed', 'cold cows'],
      file: 'coldStress',
      calculators: ['hay-to-grass'],
      rowsAre: 'Coat',
      entries: entriesOf(lowerCriticalTemperatureF),
      key: ([coat]) => coat,
      name: ([coat]) => coats[coat],
      origin: coldStressSource,
      columns: [{ key: 'temperature', label: 'More feed below', unit: '°F', of: ([, temperature]) => temperature }],
    }),
    tableOf({
      slug: 'wet-coat',
      title: 'How much more feed a wet coat takes, by source',
      says: 'More energy for each degree F below the temperature that a wet coat stands. Two universities have printed both figures.',
      trap: 'By the higher figure a soaked cow needs twice her feed in a cold wind, and she cannot eat that. Feed a little more, for longer, and give her a windbreak.',
      searchWords: ['wet cows', 'cold rain', 'wet hair coat', 'cold stress', 'winter storm'],
      file: 'coldStress',
      calculators: ['hay-to-grass'],
      rowsAre: 'Rule',
      entries: wetCoatRules,
      key: ({ source }) => source,
      name: ({ says }) => says.charAt(0).toUpperCase() + says.slice(1),
      origin: (entry) => entry,
      columns: [{ key: 'more', label: 'More feed a degree', unit: '%', of: ({ percentPerF }) => percentPerF }],
    }),
    tableOf({
      slug: 'stock-water',
      title: 'What cattle drink a day, by temperature',
      says: 'Gallons a head a day as the air gets hotter.',
      trap: 'The list drops again for nursing cows at the hot end, where other lists are well above it. Plan for the highest, and never for the average day.',
      searchWords: ['water intake', 'gallons per head', 'drinking water', 'water needs of cattle', 'hot weather'],
      file: 'stockWater',
      calculators: ['stock-water'],
      rowsAre: 'Animal',
      entries: drinkersIn(longLists),
      key: ({ animal }) => animal,
      name: ({ animal }) => drinkers[animal],
      origin: (entry) => entry,
      columns: heatColumns(longLists),
    }),
    tableOf({
      slug: 'stock-water-more',
      title: 'What cattle drink a day: three further lists',
      says: 'Gallons a head a day by temperature, as three other publications have them.',
      trap: 'Compare them with the longer list and plan for the highest, because they differ most on a hot day.',
      searchWords: ['water intake', 'gallons per head', 'drinking water', 'hot weather'],
      file: 'stockWater',
      calculators: ['stock-water'],
      rowsAre: 'Animal',
      entries: drinkersIn(shortLists),
      key: ({ animal, source }) => `${animal}-${source}`,
      name: ({ animal }) => drinkers[animal],
      origin: (entry) => entry,
      columns: heatColumns(shortLists),
    }),
    tableOf({
      slug: 'stock-water-others',
      title: 'What sheep, goats and horses drink a day',
      says: 'Gallons a head a day where no list by temperature was found. A plan takes the high end.',
      trap: 'Lush grass brings water with it, while hay and salt raise the need, and so do heat and milk.',
      searchWords: ['water intake sheep', 'water intake goats', 'horse water', 'gallons per head'],
      file: 'stockWater',
      calculators: ['stock-water'],
      rowsAre: 'Animal',
      entries: intakeRanges,
      key: ({ animal, source }) => `${animal}-${source}`,
      name: ({ animal }) => drinkers[animal],
      origin: (entry) => entry,
      columns: [{ key: 'water', label: 'Water', unit: 'gal/day', of: ({ lowGal, highGal }) => [lowGal, highGal] }],
    }),
  ],
};
