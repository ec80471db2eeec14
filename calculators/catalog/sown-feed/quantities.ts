import { amount, day, table, word } from '../../kit/quantities.ts';

const price = (label: string, symbol: string) => amount(label, symbol, 'usd/ton');
const tons = (label: string, symbol: string) => amount(label, symbol, 'ton/ac', 1);
const depth = (label: string, symbol: string) => amount(label, symbol, 'in', 1);

export const quantities = {
  leftDays: amount('Days from sowing to frost', 't_f', 'd'),
  timing: word('Is there time?', { 'in-time': 'Yes, in a usual year', late: 'No: frost comes first', cold: 'No: the soil is too cold for it' }),
  crops: table('What can still be sown by that day', {
    crop: word('Crop', {
      sudangrass: 'Sudangrass',
      'sorghum-sudangrass': 'Sorghum-sudangrass',
      'pearl-millet': 'Pearl millet',
      'foxtail-millet': 'Foxtail millet',
      'oats-fall': 'Oats',
      turnips: 'Turnips',
    }),
    fewDays: amount('Days until used, soonest', 't_1', 'd'),
    manyDays: amount('Days until used, latest', 't_2', 'd'),
    firstUseDay: day('First use, soonest'),
    fits: word('In time', { yes: 'Yes', just: 'Just: only if it comes on fast', early: 'For late summer', late: 'Too late', cold: 'Soil too cold' }),
  }),
  heldPerFtIn: amount('Water that a foot (0.3 m) of such soil holds', 'a', 'in', 2),
  storedNowIn: depth('Water stored in the soil now', 'w'),
  lowWaterIn: depth('Water for the crop, dry year', 'W_{low}'),
  likelyWaterIn: depth('Water for the crop, likely', 'W'),
  lowTonPerAc: tons('Likely dry yield in a dry year', 'y_{low}'),
  likelyTonPerAc: tons('Likely dry yield', 'y'),
  acreCostUsd: amount('Cost before it is cut', 'c', 'usd/ac'),
  cutUsdPerTon: price('Cutting and baling', 'h_c'),
  madePercent: amount('Tries that make a crop', 'g', 'pct'),
  sownUsdPerTon: price('Cost of a dry ton eaten, failures paid for', 'C'),
  madeUsdPerTon: price('The same when the crop is made', 'C_1'),
  failedUsdPerTon: price('Of that, for tries that fail', 'C_f'),
  dryUsdPerTon: price('The same in a dry year, failures paid for', 'C_{low}'),
  hayEatenUsdPerTon: price('Hay, a dry ton eaten', 'C_h'),
  worthUsdPerTon: price('Worth of a dry ton standing, against hay', 'v'),
  evenTonPerAc: tons('Dry yield at which it costs what hay costs', 'y_e'),
  canPay: word('Can it be cheaper than hay at all?', { yes: 'Yes', no: 'No, not even with all the water it wants' }),
  needStoredIn: depth('Stored water it needs to cost no more than hay', 'w_e'),
  verdict: word('By these numbers', {
    late: 'Too late to sow this: frost comes first',
    cold: 'Too cold to sow this yet',
    'no-crop': 'There is no water for a crop: buy hay, or wait for rain',
    sow: 'Sow: cheaper than hay, even in a dry year',
    hay: 'Buy hay: it is cheaper',
    'short-season': 'Only as much as stock can eat before frost: these are the tons of a longer season',
    depends: 'It depends on the rain: cheaper than hay if the likely rain comes, not in a dry year',
  }),
  hazard: word('Can it poison?', {
    'prussic-nitrate': 'Yes: prussic acid and nitrate',
    nitrate: 'Yes: nitrate',
    'nitrate-bloat': 'Yes: nitrate, and bloat or choking',
    'nitrate-foam': 'Yes: nitrate, and bloat while it is lush',
    unknown: 'Ask before you sow it',
  }),
  grazeHeightIn: amount('Not to be grazed under', 'H', 'in'),
  spentUsd: amount('Spent before you know', 'S', 'usd', -1),
  feedTon: amount('Dry feed eaten if it is made', 'T', 'ton'),
  byYield: table('Cost of a dry ton eaten, by the yield', {
    yieldTonPerAc: amount('Dry yield', 'y_x', 'ton/ac', 2),
    atYieldUsdPerTon: price('Sown feed', 'C_x'),
    hayUsdPerTon: price('Hay', 'C_{hx}'),
  }),
} as const;
