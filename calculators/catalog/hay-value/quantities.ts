import { amount, table, word } from '../../kit/quantities.ts';

const price = (label: string, symbol: string) => amount(label, symbol, 'usd/ton', 0);
const percent = (label: string, symbol: string) => amount(label, symbol, 'pct', 1);
const pounds = (label: string, symbol: string) => amount(label, symbol, 'lb', -1);
const perLb = (label: string, symbol: string) => amount(label, symbol, 'usd/lb', 2);

const swingers = {
  price: 'the price',
  weight: 'the weight of a bale',
  moisture: 'water in the hay',
  storage: 'loss in storage',
  feeding: 'loss in feeding',
} as const;

export const quantities = {
  gateUsdPerTon: price('A ton at the seller’s gate', 'p_t'),
  deliveredUsdPerTon: price('A ton delivered', 'p_d'),
  lossAt9Percent: percent('Lost by 9 months', 's_9'),
  lossAt15Percent: percent('Lost by 15 months', 's_{15}'),
  storageLossPercent: percent('Lost in storage, of what was stacked', 's'),
  lowStoragePercent: percent('Lost in storage, low', 's_{low}'),
  highStoragePercent: percent('Lost in storage, high', 's_{high}'),
  feedingLossPercent: percent('Lost in feeding, of what is put out', 'f'),
  lowFeedingPercent: percent('Lost in feeding, low', 'f_{low}'),
  highFeedingPercent: percent('Lost in feeding, high', 'f_{high}'),
  lowMoisturePercent: percent('Water, low', 'm_{low}'),
  highMoisturePercent: percent('Water, high', 'm_{high}'),
  afterStorageUsdPerTon: price('After storage', 'p_s'),
  afterFeedingUsdPerTon: price('After feeding, as fed', 'p_f'),
  eatenUsdPerTon: price('A ton eaten, with the water out, costs', 'C'),
  otherUsdPerTon: price('Losses put on the other way, it would say', 'C_o'),
  eatenRatio: amount('Share of a ton that is eaten, water out', 'k', 'ratio', 3),
  priceLines: table('At the low, likely and high price', {
    end: word('Price', { low: 'low', likely: 'likely', high: 'high' }),
    lineGateUsdPerTon: price('At the gate', 'p_i'),
    lineDeliveredUsdPerTon: price('Delivered', 'p_{d,i}'),
    lineEatenUsdPerTon: price('Eaten, water out', 'C_i'),
  }),
  lowEatenUsdPerTon: price('The same at the low price', 'C_{low}'),
  highEatenUsdPerTon: price('The same at the high price', 'C_{high}'),
  swings: table('What it depends on, a ton eaten', ['input', 'atLowUsdPerTon', 'atHighUsdPerTon', 'swingUsdPerTon'], {
    input: word('If only this is otherwise', swingers),
    lowDeliveredUsdPerTon: price('Delivered, low end', 'p_1'),
    lowRatio: amount('Share eaten, low end', 'k_1', 'ratio', 3),
    atLowUsdPerTon: price('At its low end', 'C_1'),
    highDeliveredUsdPerTon: price('Delivered, high end', 'p_2'),
    highRatio: amount('Share eaten, high end', 'k_2', 'ratio', 3),
    atHighUsdPerTon: price('At its high end', 'C_2'),
    swingUsdPerTon: price('Between them', 'd'),
  }),
  hangsOn: word('What moves it most', swingers),
  boughtLb: pounds('A ton bought', 'T'),
  waterLb: pounds('Water', 'T_m'),
  storageLostLb: pounds('Lost in storage', 'T_s'),
  feedingLostLb: pounds('Lost in feeding', 'T_f'),
  eatenLb: pounds('Eaten', 'T_e'),
  wastedUsdPerTon: price('Of each ton’s price, lost', 'L'),
  proteinDryPercent: percent('Protein, of dry matter', 'c_d'),
  tdnDryPercent: percent('TDN, of dry matter', 'u_d'),
  eatenProteinLb: amount('Protein eaten from a ton bought', 'P', 'lb', 0),
  eatenTdnLb: amount('TDN eaten from a ton bought', 'U', 'lb', 0),
  proteinUsdPerLb: perLb('Protein eaten costs', 'C_c'),
  tdnUsdPerLb: amount('TDN eaten costs', 'C_u', 'usd/lb', 3),
  otherNutrientPercent: percent('Of it in the other feed', 'n_o'),
  otherUsdPerLb: amount('The same in the other feed costs', 'q', 'usd/lb', 3),
  worthUsdPerTon: price('This hay is worth, at the seller’s gate', 'Y'),
  worthBaleUsd: amount('That is, for a bale', 'Y_b', 'usd', 0),
  verdict: word('Beside the other feed', {
    cheaper: 'this hay is the cheaper',
    dearer: 'the other feed is the cheaper',
    'not-its-freight': 'this hay is not worth its freight',
  }),
} as const;
