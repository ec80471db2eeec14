import { type Caution, caution } from '../kit/define.ts';

/** What a slip says of water's sulfate (SO4) and of all its salts, mg/L; 0 where it was not tested. */
export interface WaterSlip {
  readonly sulfateMgPerL: number;
  readonly saltMgPerL: number;
}

// North Dakota recommends less than this for calves and for grown cattle (meehan-water-2023).
const calfSulfate = 500;
const cattleSulfate = 1000;
/** Sulfate that is acutely toxic to cattle (harty-sulfate-2012), mg/L. */
export const poisonSulfate = 3000;
// Edges of the table of dissolved solids (montana-livestock-water).
const refusedSalt = 3000;
const unfitSalt = 5000;
/** Salt that is a risk for all stock (montana-livestock-water), mg/L. */
export const riskySalt = 7000;
const deadlySalt = 10_000;

/** Whose water it is. Where several kinds drink it, the first of these: what holds for cattle is the strictest, and is said for all. */
const allDrinkers = ['cattle', 'sheep-or-goats', 'horses'] as const;
export type Drinkers = (typeof allDrinkers)[number];

/** Sulfate in the words of those that drink it. The lists were made for cattle; sheep and goats have the same paunch and are read by them, horses have none. */
const sulfateWords: Readonly<Record<Drinkers, Readonly<Record<'poison' | 'grown' | 'young', Omit<Caution<unknown>, 'when'> | undefined>>>> = {
  cattle: {
    poison: {
      lead: 'This much sulfate kills cattle. Bring other water and call your vet.',
      life: true,
      say: 'This much sulfate is acutely toxic to cattle and can bring on polio (polioencephalomalacia), a deadly brain disease: blind, dull, pressing the head, fits. Do not water stock with it. Bring other water and call your veterinarian.',
      source: 'harty-sulfate-2012',
    },
    grown: {
      lead: 'Too much sulfate for cattle: it can bring on polio, a brain disease.',
      life: true,
      say: 'Sulfate for grown cattle should stay under 1,000, and for calves under 500. This is not under it. Sulfur in feed adds to it: distillers grains, molasses, some minerals. Too much of both brings on polio (polioencephalomalacia), a brain disease: blind, dull, pressing the head, fits. Have a nutritionist add up both, and call the veterinarian at the first sign; the cure often comes too late.',
      source: 'meehan-water-2023',
    },
    young: {
      lead: 'Too much sulfate for calves, though not for grown cattle.',
      say: 'Sulfate for calves should stay under 500, and this is not under it. For grown cattle the limit is 1,000. Sulfur in feed adds to it.',
      source: 'meehan-water-2023',
    },
  },
  'sheep-or-goats': {
    poison: {
      lead: 'So much sulfate can kill sheep and goats. Bring other water, call a vet.',
      life: true,
      say: 'Sheep, goats and llamas are read by the list for cattle, to which this much sulfate is acutely toxic. They can get the same polio (polioencephalomalacia), a deadly brain disease: blind, dull, pressing the head, fits. Do not water stock with it. Bring other water and call your veterinarian.',
      source: 'harty-sulfate-2012, with common practice',
    },
    grown: {
      lead: 'Too much sulfate for sheep and goats: it can bring on a brain disease.',
      life: true,
      say: 'Sheep and goats are read by the limit for grown cattle: under 1,000. Sulfur in feed and mineral adds to it. Too much of both brings on polio (polioencephalomalacia), a brain disease: blind, dull, pressing the head, fits. Call the veterinarian at the first sign; the cure often comes too late.',
      source: 'meehan-water-2023, with common practice',
    },
    young: {
      lead: 'Too much sulfate for lambs and kids, by the limit for calves.',
      say: 'Lambs and kids are read by the limit for calves: under 500. For grown stock, by that for cattle, it is 1,000. Sulfur in feed and mineral adds to it.',
      source: 'meehan-water-2023, with common practice',
    },
  },
  horses: {
    poison: {
      lead: 'This much sulfate kills cattle. Bring horses other water and call a vet.',
      life: true,
      say: 'Horses, donkeys and mules have no figure in these lists. This much sulfate is acutely toxic to cattle, and it can scour horses badly. Do not water stock with it. Bring other water and call your veterinarian.',
      source: 'harty-sulfate-2012, of horses from memory',
    },
    grown: {
      lead: 'So much sulfate can scour horses, foals first. Ask your veterinarian.',
      say: 'No list here says how much sulfate horses, donkeys and mules stand; for grown cattle it should stay under 1,000. They do not get the brain disease that it brings on in cattle, but it can scour them, foals first, or keep them from drinking. Ask your veterinarian, and see that they drink.',
      source: 'meehan-water-2023, of horses from memory',
    },
    young: undefined,
  },
};

/** What must be said of sulfate and salts wherever a slip gives them, to those whose water it is. */
export const waterCautions = <V>(slipOf: (values: V) => WaterSlip, drinkersOf: (values: V) => Drinkers): readonly Caution<V>[] => {
  const between = (what: keyof WaterSlip, from: number, to = Number.POSITIVE_INFINITY, words: Omit<Caution<V>, 'when'>): Caution<V> =>
    caution((values) => slipOf(values)[what] >= from && slipOf(values)[what] < to, words);
  const sulfate = (band: 'poison' | 'grown' | 'young', from: number, to = Number.POSITIVE_INFINITY): readonly Caution<V>[] =>
    allDrinkers.flatMap((drinkers) => {
      const words = sulfateWords[drinkers][band];
      if (!words) return [];
      const { when, ...more } = between('sulfateMgPerL', from, to, words);
      return [{ when: (values: V) => when(values) && drinkersOf(values) === drinkers, ...more }];
    });
  return [
    ...sulfate('poison', poisonSulfate),
    ...sulfate('grown', cattleSulfate, poisonSulfate),
    ...sulfate('young', calfSulfate, cattleSulfate),
    between('saltMgPerL', deadlySalt, undefined, {
      lead: 'Too salty for any stock. Do not use it: bring other water now.',
      life: true,
      say: 'From 10,000 on the water is too salty for any stock, horses and sheep too. Do not use it. Bring other water now, and let thirsty stock have that in small amounts at first.',
      source: 'montana-livestock-water',
    }),
    between('saltMgPerL', riskySalt, deadlySalt, {
      lead: 'So salty that it is a risk for all stock. Bring other water.',
      life: true,
      say: 'From 7,000 on the water is a risk for all stock, horses and sheep too, and most for the pregnant, the nursing and the young. Bring other water.',
      source: 'montana-livestock-water',
    }),
    between('saltMgPerL', unfitSalt, riskySalt, {
      lead: 'Too salty for pregnant and nursing stock. Bring other water.',
      life: true,
      say: 'Too salty for pregnant and nursing stock, and from 7,000 a risk for all. Bring other water.',
      source: 'montana-livestock-water',
    }),
    between('saltMgPerL', refusedSalt, unfitSalt, {
      lead: 'Salty: stock may scour or refuse it. Have the sulfate tested too.',
      say: 'Salty: stock may scour or refuse it at first. Have the sulfate tested too, and ask a nutritionist about salt and mineral in the feed.',
      source: 'montana-livestock-water',
    }),
  ];
};
