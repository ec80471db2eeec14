import { choice, number, rows } from '../../kit/inputs.ts';
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

const cattle = 'Cattle';
const others = 'Sheep, goats, horses';
const groupOf = (animal: string): string => (/^(?:cow|bull|heifer|calf|growing|finishing)/.test(animal) ? cattle : others);
const optionOf = (animal: DrinkingAnimal) => ({ label: stockWords[animal], group: groupOf(animal) });

export const herd = rows({
  label: 'Stock on this water',
  rowName: 'kind of stock',
  help: 'A line for each kind. Calves big enough to drink on their own get a line too.',
  maxRows: 10,
  columns: {
    stock: choice({
      label: 'Kind of stock',
      belongsTo: 'place',
      default: 'cow-nursing',
      options: {
        'cow-nursing': optionOf('cow-nursing'),
        'cow-dry': optionOf('cow-dry'),
        bull: optionOf('bull'),
        'heifer-pregnant-750': optionOf('heifer-pregnant-750'),
        'calf-500': optionOf('calf-500'),
        'growing-400': optionOf('growing-400'),
        'growing-600': optionOf('growing-600'),
        'growing-800': optionOf('growing-800'),
        'finishing-600': optionOf('finishing-600'),
        'finishing-800': optionOf('finishing-800'),
        'finishing-1000': optionOf('finishing-1000'),
        'finishing-1200': optionOf('finishing-1200'),
        ewe: optionOf('ewe'),
        'ewe-nursing': optionOf('ewe-nursing'),
        goat: optionOf('goat'),
        'goat-nursing': optionOf('goat-nursing'),
        horse: optionOf('horse'),
        'draft-horse': optionOf('draft-horse'),
        llama: optionOf('llama'),
      },
    }),
    countHead: number({
      label: 'Head',
      symbol: 'n',
      belongsTo: 'management',
      unit: 'head',
      min: 0,
      max: 20_000,
      usual: 'herdHead',
      default: 45,
      whole: true,
      help: 'Head may differ between two plans: some sold, or moved to other water.',
    }),
    knownGalPerDay: number({
      label: 'One drinks in a day',
      symbol: 'g_k',
      belongsTo: 'place',
      unit: 'gal/d',
      min: 0.1,
      max: 100,
      usual: 'drunkGalPerDay',
      default: 20,
      shownWhen: { intakeFrom: 'known' },
      field: 'A meter on the line over a hot week, divided by days and head.',
    }),
  },
  default: [
    { stock: 'cow-nursing', countHead: 45, knownGalPerDay: 24 },
    { stock: 'bull', countHead: 2, knownGalPerDay: 20 },
    { stock: 'heifer-pregnant-750', countHead: 9, knownGalPerDay: 15 },
    { stock: 'ewe-nursing', countHead: 60, knownGalPerDay: 3 },
  ],
});
