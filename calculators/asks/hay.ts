import type { Caution } from '../kit/define.ts';
import { choice, number, type ShownWhen } from '../kit/inputs.ts';
import { tex } from '../kit/steps.ts';
import type { feederWaste } from '../tables/feederWaste.ts';
import type { StorageMethod } from '../tables/hayStorageLoss.ts';

/** Ways to store hay that the table of losses knows. */
export const storageMethods = {
  'ground-uncovered': 'On the ground, no cover',
  'raised-uncovered': 'Off the ground, no cover',
  'ground-covered': 'On the ground, covered',
  'raised-covered': 'Off the ground, covered',
  roof: 'Under a roof, open sides',
  barn: 'In a closed barn',
} as const satisfies Readonly<Record<StorageMethod, string>>;
/** The same by name, for fields that show only with them. */
export const storedByTable: readonly StorageMethod[] = ['ground-uncovered', 'raised-uncovered', 'ground-covered', 'raised-covered', 'roof', 'barn'];

const feeders = {
  cone: 'Cone feeder, bale hangs inside',
  'ring-sheeted': 'Ring with a sheeted bottom',
  'ring-open': 'Open ring',
  'ring-poly': 'Poly ring',
  trailer: 'Feeding trailer',
  cradle: 'Cradle',
  'square-rack': 'Square bales in a rack',
  'round-rack': 'Round bales in a rack',
  'no-rack': 'Bales set out, nothing around them',
  unrolled: 'Unrolled, more than a day of hay at once',
} as const satisfies Readonly<Record<(typeof feederWaste)[number]['feeder'], string>>;

/** How hay is fed, and what is wasted where nobody needs a trial to know. */
export const feedingInputs = {
  feeder: choice('How it is fed', 'ring-open', {
    options: { ...feeders, known: 'I know what is wasted' },
    belongsTo: 'management',
    help: 'From trials with good hay. Poor hay is wasted more.',
  }),
  knownFeedingPercent: number('Lost in feeding, of what is put out', 'f_k', 'pct', [0, 90], 20, {
    belongsTo: 'management',
    shownWhen: { feeder: 'known' },
    ask: 'Rake up and weigh what lies around one bale when it is gone, against the weight of the bale.',
  }),
};
export const yearlyRain = (more: { readonly shownWhen?: ShownWhen } = {}) =>
  choice('Rain in a usual year', 'middle', {
    options: { dry: 'Under 25 in', middle: '25 to 40 in', wet: 'Over 40 in' },
    ...more,
    help: 'Hay left outside loses more where it rains more.',
  });
export const spoiledRindIn = (shownWhen: ShownWhen) =>
  number('Spoiled rind', 't', 'in', [0, 15], 4, {
    belongsTo: 'management',
    usual: 'rindIn',
    shownWhen,
    field: 'Cut in from the side of a bale that is like the rest, to where the hay is bright.',
  });
export const hayMoisturePercent = (belongsTo: 'place' | 'management') =>
  number('Water in the hay', 'm', 'pct', [0, 80], 15, {
    belongsTo,
    usual: 'hayMoisturePercent',
    help: 'Cured hay holds about 15 %, wrapped bales 40 to 60 %.',
    field: 'A hay probe in several bales, or the lab slip: 100 less the dry matter.',
  });

/** Which end of the published range of storage losses: dry country has the low one. */
export const rangeEnd = { dry: 'low', middle: 'mid', wet: 'high' } as const;

export const lowAbove = 'The low price is above the likely one. Give low, likely and high in that order.';
export const highBelow = 'The high price is below the likely one. Give low, likely and high in that order.';

/** The two ways of putting on a loss, for the step that gives the share kept. */
export const keptWays = (lossPercent: string) =>
  [
    { when: ({ lossConvention }: Convention) => lossConvention === 'divide', formula: tex`1 - \frac{\q{${lossPercent}}}{100}` },
    { formula: tex`\frac{1}{1 + \q{${lossPercent}} / 100}`, because: 'the loss put on top, as some sheets do' },
  ] as const;
interface Convention {
  readonly lossConvention: 'divide' | 'multiply';
}

/** Above these shares of water, percent, stacked hay heats, and bales are wrapped. */
const hotPercent = 17;
const wrappedPercent = 35;
type Wet = Caution<{ readonly moisturePercent: number }>;
export const hotHay: Wet = {
  when: ({ moisturePercent }) => moisturePercent > hotPercent && moisturePercent <= wrappedPercent,
  say: 'Hay heats and can set a barn on fire, weeks after baling too: large square bales above 17 % water, large round ones above 18, small ones above 20. Keep it outside and apart. Probe it daily and never alone, twice a day from 140 °F, and call the fire department before you pull hot bales.',
  source: 'burbrink-hay-fire-2024',
};
export const wrappedHay: Wet = {
  when: ({ moisturePercent }) => moisturePercent > wrappedPercent,
  say: 'This much water is for wrapped bales only. A torn wrap or a bale that did not sour can carry botulism, which kills horses first, and listeria, which is hardest on sheep and goats: throw such bales out, and ask your veterinarian before a horse gets any. The storage losses here are those of dry hay: give your own.',
  source: 'common practice',
};
export const moldyHay = {
  say: 'Moldy or rotten hay can make stock abort or die, and its dust harms your lungs. Leave them room to refuse it, never grind it in, and keep it from horses and from bred cows. Throw out any bale with a dead animal in it: one can poison the whole bale.',
  source: 'common practice',
};
export const fedOnTheGround: Caution<{ readonly feeder: string }> = {
  when: ({ feeder }) => feeder === 'no-rack' || feeder === 'unrolled',
  say: 'Fed this way hay is wasted by how much lies there at once. One day of hay at a time loses far less than three or seven; if that is how you feed, give your own figure.',
  source: 'kallenbach-g4570',
};
