import type { DrinkingAnimal } from '../../tables/stockWater.ts';

/** Kinds of stock that the lists of drinking water know. */
export const stockWords = {
  'cow-nursing': 'Cow with a calf on her',
  'cow-dry': 'Dry cow, bred',
  bull: 'Bull',
  'heifer-pregnant-750': 'Bred heifer',
  'calf-500': 'Calf of 500 lb',
  'growing-400': 'Growing cattle, 400 lb',
  'growing-600': 'Growing cattle, 600 lb',
  'growing-800': 'Growing cattle, 800 lb',
  'finishing-600': 'Cattle on grain, 600 lb',
  'finishing-800': 'Cattle on grain, 800 lb',
  'finishing-1000': 'Cattle on grain, 1,000 lb',
  'finishing-1200': 'Cattle on grain, 1,200 lb',
  ewe: 'Dry ewe',
  'ewe-nursing': 'Ewe with lambs',
  goat: 'Goat',
  'goat-nursing': 'Doe with kids',
  horse: 'Horse',
  'draft-horse': 'Draft horse',
  llama: 'Llama',
} as const satisfies Readonly<Record<DrinkingAnimal, string>>;

/** Which list asked for most; `own` where somebody measured. */
export const listWords = {
  'gould-fs1090': 'Michigan manual',
  'beef-summer-water': 'summer water list',
  'k-state-watering-handbook': 'Kansas handbook',
  'sigler-mt202209ag-2022': 'Montana guide',
  'noble-water-1999': 'rule by degree',
  'pennington-2014': 'Missouri sheep guide',
  'mwps14-new-hampshire': 'farm animal table',
  'burbrink-2022': 'Indiana guide',
  'german-c274-2008': 'Dakota guide',
  own: 'your figure',
} as const;
export type ListName = keyof typeof listWords;
export const isListName = (name: string): name is ListName => Object.hasOwn(listWords, name);

/** Each kind as it is counted, one and many. */
export const counted = {
  'cow-nursing': ['nursing cow', 'nursing cows'],
  'cow-dry': ['dry cow', 'dry cows'],
  bull: ['bull', 'bulls'],
  'heifer-pregnant-750': ['bred heifer', 'bred heifers'],
  'calf-500': ['500-lb calf', '500-lb calves'],
  'growing-400': ['400-lb stocker', '400-lb stockers'],
  'growing-600': ['600-lb stocker', '600-lb stockers'],
  'growing-800': ['800-lb stocker', '800-lb stockers'],
  'finishing-600': ['600-lb steer on grain', '600-lb steers on grain'],
  'finishing-800': ['800-lb steer on grain', '800-lb steers on grain'],
  'finishing-1000': ['1,000-lb steer on grain', '1,000-lb steers on grain'],
  'finishing-1200': ['1,200-lb steer on grain', '1,200-lb steers on grain'],
  ewe: ['dry ewe', 'dry ewes'],
  'ewe-nursing': ['nursing ewe', 'nursing ewes'],
  goat: ['goat', 'goats'],
  'goat-nursing': ['nursing doe', 'nursing does'],
  horse: ['horse', 'horses'],
  'draft-horse': ['draft horse', 'draft horses'],
  llama: ['llama', 'llamas'],
} as const satisfies Readonly<Record<DrinkingAnimal, readonly [one: string, many: string]>>;
