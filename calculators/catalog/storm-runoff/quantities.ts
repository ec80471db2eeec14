import { amount, table, word } from '../../kit/quantities.ts';

const depth = (label: string, symbol: string, digits = 1) => amount(label, symbol, 'in', digits);
const curveNumber = (label: string, symbol: string) => amount(label, symbol, 'cn', 0);

const group = word('Soil group', { a: 'A', b: 'B', c: 'C', d: 'D' });
const condition = word('Class in the table', { poor: 'poor', fair: 'fair', good: 'good', only: 'no classes' });

export const quantities = {
  lines: table('Each part', ['areaAc', 'group', 'condition', 'tabledCurveNumber', 'partRunoffIn'], {
    areaAc: amount('Area', 'A', 'ac', 1),
    group,
    condition,
    tabledCurveNumber: curveNumber('Curve number in the table', 'CN_{t}'),
    curveNumber: curveNumber('For this wetness', 'CN'),
    handbookStorageIn: depth('Can hold, handbook', 'S_{h}', 2),
    storageIn: depth('Can hold', 'S', 2),
    firstIn: depth('Used up first', 'I_a', 2),
    heldIn: depth('Of that, filled', 'H', 2),
    partRunoffIn: depth('Runs off', 'Q', 2),
    runoffAcIn: amount('Runoff times area', 'A Q', 'acin', 2),
    firstAcIn: amount('First times area', 'A I_a', 'acin', 2),
    heldAcIn: amount('Filled times area', 'A H', 'acin', 2),
    numberAcres: amount('Number times area', 'A \\, CN_{t}', 'count', 0),
  }),
  group,
  condition,
  tabledCurveNumber: curveNumber('Curve number in the table', 'CN_{t}'),
  totalAc: amount('All the ground', 'A_{all}', 'ac', 1),
  totalRunoffAcIn: amount('Runoff of all parts', 'W_Q', 'acin', 2),
  totalFirstAcIn: amount('Used up first on all parts', 'W_I', 'acin', 2),
  totalHeldAcIn: amount('Filled on all parts', 'W_H', 'acin', 2),
  totalNumberAcres: amount('Numbers times acres', 'W_{CN}', 'count', 0),
  middleCurveNumber: amount('Area-weighted curve number', '\\overline{CN}', 'cn', 1),
  middleWetCurveNumber: amount('Curve number for this wetness', 'CN', 'cn', 1),
  middleHandbookStorageIn: depth('Can hold, handbook', 'S_{h}', 2),
  middleStorageIn: depth('Can hold', 'S', 2),
  firstIn: depth('Rain used up before any runs', 'I_a', 2),
  heldFirstIn: depth('Held first, on leaves and in hollows', 'H', 2),
  runoffIn: depth('Ran off', 'Q'),
  method: word('Answer of the method', {
    'too-small': 'Too small a storm for this method',
    rough: 'Rough: under half an inch',
    usual: 'Within its usual range',
  }),
  sod: word('Sod', { thin: 'Less than half covered', closed: 'Half covered or more' }),
  lowRunoffIn: depth('Ran off if dry', 'Q_{dry}'),
  betweenRunoffIn: depth('Ran off if in between', 'Q_{between}'),
  highRunoffIn: depth('Ran off if wet', 'Q_{wet}'),
  stayedIn: depth('Stayed on the ground', 'F'),
  soakedIn: depth('Soaked in after that', 'F_a'),
  runoffPercent: amount('Share that ran off', 'q', 'pct', 0),
  // The inches behind them hold two digits.
  runoffGal: { ...amount('Ran off, by volume', 'V', 'gal', 0), significant: 2 },
  stayedGal: { ...amount('Stayed, by volume', 'V_F', 'gal', 0), significant: 2 },
  coverPercent: amount('Covered ground, over all', 'G', 'pct', 0),
} as const;
