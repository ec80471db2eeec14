import type { Drinkers } from '../../asks/waterSlip.ts';
import { choice, number, type Option, rows } from '../../kit/inputs.ts';
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
  horse: 'Horse, donkey or mule',
  'draft-horse': 'Draft horse',
  llama: 'Llama',
} as const satisfies Readonly<Record<DrinkingAnimal, string>>;

/** `cattle('calf-500', '500-lb calf', '500-lb calves')`: a kind of a group, and how one and many of it are counted. */
const kindIn =
  (group: string) =>
  (animal: DrinkingAnimal, one: string, many = `${one}s`): Option => ({ label: stockWords[animal], short: [one, many], group });
const cattle = kindIn('Cattle');
const others = kindIn('Sheep, goats, horses');

/** Whose lists a slip of water is read by; what is not here is cattle. */
const readAs: Partial<Record<DrinkingAnimal, Drinkers>> = {
  ewe: 'sheep-or-goats',
  'ewe-nursing': 'sheep-or-goats',
  goat: 'sheep-or-goats',
  'goat-nursing': 'sheep-or-goats',
  llama: 'sheep-or-goats',
  horse: 'horses',
  'draft-horse': 'horses',
};
/** The strictest of those that drink it. */
export function drinkersOf({ herd: kinds }: { readonly herd: readonly { readonly stock: DrinkingAnimal; readonly countHead: number }[] }): Drinkers {
  const drinking = kinds.filter(({ countHead }) => countHead > 0).map(({ stock }) => readAs[stock] ?? 'cattle');
  return drinking.includes('cattle') ? 'cattle' : drinking.includes('sheep-or-goats') ? 'sheep-or-goats' : 'horses';
}

export const herd = rows({
  label: 'Stock on this water',
  rowName: 'kind of stock',
  each: '{#countHead} {stock}, {knownGalPerDay} each',
  help: 'A line for each kind. Calves big enough to drink on their own get a line too.',
  maxRows: 10,
  columns: {
    stock: choice('Kind of stock', 'cow-nursing', {
      options: {
        'cow-nursing': cattle('cow-nursing', 'nursing cow'),
        'cow-dry': cattle('cow-dry', 'dry cow'),
        bull: cattle('bull', 'bull'),
        'heifer-pregnant-750': cattle('heifer-pregnant-750', 'bred heifer'),
        'calf-500': cattle('calf-500', '500-lb calf', '500-lb calves'),
        'growing-400': cattle('growing-400', '400-lb stocker'),
        'growing-600': cattle('growing-600', '600-lb stocker'),
        'growing-800': cattle('growing-800', '800-lb stocker'),
        'finishing-600': cattle('finishing-600', '600-lb steer on grain', '600-lb steers on grain'),
        'finishing-800': cattle('finishing-800', '800-lb steer on grain', '800-lb steers on grain'),
        'finishing-1000': cattle('finishing-1000', '1,000-lb steer on grain', '1,000-lb steers on grain'),
        'finishing-1200': cattle('finishing-1200', '1,200-lb steer on grain', '1,200-lb steers on grain'),
        ewe: others('ewe', 'dry ewe'),
        'ewe-nursing': others('ewe-nursing', 'nursing ewe'),
        goat: others('goat', 'goat'),
        'goat-nursing': others('goat-nursing', 'nursing doe'),
        horse: others('horse', 'horse'),
        'draft-horse': others('draft-horse', 'draft horse'),
        llama: others('llama', 'llama'),
      },
      offeredBy: 'herd.kind',
      takesNot: ['lamb'],
    }),
    countHead: number('Head', 'n', 'head', [0, 20_000], 45, {
      belongsTo: 'management',
      usual: 'herdHead',
      whole: true,
      help: 'Head may differ between two plans: some sold, or moved to other water.',
      offeredBy: 'herd.count',
    }),
    knownGalPerDay: number('One drinks in a day', 'g_k', 'gal/d', [0.1, 100], 20, {
      usual: 'drunkGalPerDay',
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
  offeredBy: 'herd',
});
