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

/** What must be said of sulfate and salts wherever a slip gives them. */
export const waterCautions = <V>(slipOf: (values: V) => WaterSlip): readonly Caution<V>[] => {
  const between = (what: keyof WaterSlip, from: number, to = Number.POSITIVE_INFINITY, words: Omit<Caution<V>, 'when'>): Caution<V> =>
    caution((values) => slipOf(values)[what] >= from && slipOf(values)[what] < to, words);
  return [
    between('sulfateMgPerL', poisonSulfate, undefined, {
      lead: 'This much sulfate kills cattle. Bring other water and call your vet.',
      life: true,
      say: 'This much sulfate is acutely toxic to cattle and can bring on polio (polioencephalomalacia), a deadly brain disease: blind, dull, pressing the head, fits. Do not water stock with it. Bring other water and call your veterinarian.',
      source: 'harty-sulfate-2012',
    }),
    between('sulfateMgPerL', cattleSulfate, poisonSulfate, {
      lead: 'Too much sulfate for cattle: it can bring on polio, a brain disease.',
      life: true,
      say: 'Sulfate for grown cattle should stay under 1,000, and for calves under 500. This is not under it. Sulfur in feed adds to it: distillers grains, molasses, some minerals. Too much of both brings on polio (polioencephalomalacia), a brain disease: blind, dull, pressing the head, fits. Have a nutritionist add up both, and call the veterinarian at the first sign; the cure often comes too late.',
      source: 'meehan-water-2023',
    }),
    between('sulfateMgPerL', calfSulfate, cattleSulfate, {
      lead: 'Too much sulfate for calves, though not for grown cattle.',
      say: 'Sulfate for calves should stay under 500, and this is not under it. For grown cattle the limit is 1,000. Sulfur in feed adds to it.',
      source: 'meehan-water-2023',
    }),
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
