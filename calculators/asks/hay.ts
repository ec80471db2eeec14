import type { Caution } from '../kit/define.ts';
import { choice, number, type Option, type ShownWhen } from '../kit/inputs.ts';
import { tex } from '../kit/steps.ts';
import type { feederWaste } from '../tables/feederWaste.ts';
import type { StorageMethod } from '../tables/hayStorageLoss.ts';

/** Ways to store hay that the table of losses knows. */
export const storageMethods = {
  'ground-uncovered': { label: 'On the ground, no cover', short: 'on the ground, no cover' },
  'raised-uncovered': { label: 'Off the ground, no cover', short: 'off the ground, no cover' },
  'ground-covered': { label: 'On the ground, covered', short: 'on the ground, covered' },
  'raised-covered': { label: 'Off the ground, covered', short: 'off the ground, covered' },
  roof: { label: 'Under a roof, open sides', short: 'under a roof' },
  barn: { label: 'In a closed barn', short: 'in a closed barn' },
} as const satisfies Readonly<Record<StorageMethod, Option>>;
/** The same by name, for fields that show only with them. */
export const storedByTable: readonly StorageMethod[] = ['ground-uncovered', 'raised-uncovered', 'ground-covered', 'raised-covered', 'roof', 'barn'];

const feeders = {
  cone: { label: 'Cone feeder, bale hangs inside', short: 'in a cone feeder' },
  'ring-sheeted': { label: 'Ring with a sheeted bottom', short: 'in a sheeted ring' },
  'ring-open': { label: 'Open ring', short: 'in an open ring' },
  'ring-poly': { label: 'Poly ring', short: 'in a poly ring' },
  trailer: { label: 'Feeding trailer', short: 'from a feeding trailer' },
  cradle: { label: 'Cradle', short: 'in a cradle' },
  'square-rack': { label: 'Square bales in a rack', short: 'as squares in a rack' },
  'round-rack': { label: 'Round bales in a rack', short: 'as rounds in a rack' },
  'no-rack': { label: 'Bales set out, nothing around them', short: 'as bales set out' },
  unrolled: { label: 'Unrolled, more than a day of hay at once', short: 'unrolled' },
} as const satisfies Readonly<Record<(typeof feederWaste)[number]['feeder'], Option>>;

/** How hay is fed, and what is wasted where nobody needs a trial to know. */
export const feedingInputs = {
  feeder: choice('How it is fed', 'ring-open', {
    options: { ...feeders, known: { label: 'I know what is wasted', short: 'with a known waste' } },
    belongsTo: 'management',
    help: 'From trials with good hay. Poor hay is wasted more.',
    offeredBy: 'hay.feeder',
  }),
  knownFeedingPercent: number('Lost in feeding, of what is put out', 'f_k', 'pct', [0, 90], 20, {
    belongsTo: 'management',
    shownWhen: { feeder: 'known' },
    ask: 'Rake up and weigh what lies around one bale when it is gone, against the weight of the bale.',
  }),
};
export const yearlyRain = (more: { readonly shownWhen?: ShownWhen } = {}) =>
  choice('Rain in a usual year', 'middle', {
    options: {
      dry: { label: 'Under 25 in (635 mm)', short: 'under 25 in of rain', shortMetric: 'under 635 mm of rain' },
      middle: { label: '25 to 40 in (635 to 1,015 mm)', short: '25 to 40 in of rain', shortMetric: '635 to 1,015 mm of rain' },
      wet: { label: 'Over 40 in (1,015 mm)', short: 'over 40 in of rain', shortMetric: 'over 1,015 mm of rain' },
    },
    ...more,
    help: 'Hay left outside loses more where it rains more.',
    offeredBy: 'place.rainClass',
  });
export const spoiledRindIn = (shownWhen: ShownWhen) =>
  number('Spoiled rind', 't', 'in', [0, 15], 4, {
    belongsTo: 'management',
    usual: 'rindIn',
    shownWhen,
    field: 'Cut in from the side of a bale that is like the rest, to where the hay is bright.',
  });
export const hayMoisturePercent = (belongsTo: 'place' | 'management', offeredBy: 'hay.moisture' | 'hay.boughtMoisture') =>
  number('Water in the hay', 'm', 'pct', [0, 80], 15, {
    belongsTo,
    offeredBy,
    usual: 'hayMoisturePercent',
    help: 'Cured hay holds about 15 %, wrapped bales 40 to 60 %.',
    field: 'A hay probe in several bales, or the lab slip: 100 less the dry matter.',
  });

/** Which end of the published range of storage losses: dry country has the low one. */
export const rangeEnd = { dry: 'low', middle: 'mid', wet: 'high' } as const;

export const lowAbove = 'The low price is above the likely one. It may still be the example’s: put in the least that such hay went for lately.';
export const highBelow = 'The high price is below the likely one. It may still be the example’s: put in the most that such hay went for lately.';

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
  lead: 'Hay this wet can set a barn on fire. Keep it outside and probe it daily.',
  life: true,
  say: 'Hay heats and can set a barn on fire, weeks after baling too: large square bales above 17 % water, large round ones above 18, small ones above 20. Keep it outside and apart. Probe it daily and never alone, twice a day from 140 °F (60 °C), and call the fire department before you pull hot bales.',
  source: 'burbrink-hay-fire-2024',
};
export const wrappedHay: Wet = {
  when: ({ moisturePercent }) => moisturePercent > wrappedPercent,
  lead: 'Only wrapped bales may be this wet. A torn or unsoured one can kill.',
  life: true,
  say: 'This much water is for wrapped bales only. A torn wrap or a bale that did not sour can carry botulism, which kills horses first, and listeria, which is hardest on sheep and goats: throw such bales out, and ask your veterinarian before a horse gets any. The storage losses here are those of dry hay: give your own.',
  source: 'common practice',
};
export const moldyHay: Omit<Caution<unknown>, 'when'> = {
  lead: 'Moldy hay can kill stock. Let them refuse it; keep it from horses.',
  life: true,
  say: 'Moldy or rotten hay can make stock abort or die, and its dust harms your lungs. Leave them room to refuse it, never grind it in, and keep it from horses and from bred cows. Throw out any bale with a dead animal in it: one can poison the whole bale.',
  source: 'common practice',
};
/** Nobody sees nitrate by color, and drying keeps it. */
export const droughtHay: Omit<Caution<unknown>, 'when'> = {
  lead: 'Hay from a drought crop can hold nitrate that kills. Have it tested.',
  life: true,
  say: 'Hay from a drought crop can hold nitrate that kills, and drying does not take it out. Oats, sorghums, millets, corn and some weeds are the worst. A field strip can warn and cannot clear it: send cores of each lot to a laboratory before you feed it, and say if the cows are bred.',
  source: 'selk-nitrate-test',
};
export const boughtHay: Omit<Caution<unknown>, 'when'> = {
  lead: 'Bought hay can bring weeds, fire ants, ticks and weed killer. Ask first.',
  say: 'Bought hay can bring weeds, fire ants, ticks, blister beetles and weed killer. Ask what was sprayed, look for quarantines, feed it in one place and watch that place.',
  source: 'common practice',
};
export const blisterBeetles: Omit<Caution<unknown>, 'when'> = {
  lead: 'A few blister beetles in alfalfa hay can kill a horse. Look in each flake.',
  life: true,
  say: 'Blister beetles in alfalfa hay can kill a horse, a few in a flake, and dead ones do it too. Ask where and when it was cut, look through each flake, and throw out hay that has any: picking them out does not make it fit to feed.',
  source: 'swiger-blister-beetles',
};
export const fedOnTheGround: Caution<{ readonly feeder: string }> = {
  when: ({ feeder }) => feeder === 'no-rack' || feeder === 'unrolled',
  lead: 'Put out one day of hay at a time: more lying there wastes far more.',
  say: 'Fed this way hay is wasted by how much lies there at once. One day of hay at a time loses far less than three or seven; if that is how you feed, give your own figure.',
  source: 'kallenbach-g4570',
};
