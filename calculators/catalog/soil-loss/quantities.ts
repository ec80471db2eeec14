import { amount, table, word } from '../../kit/quantities.ts';

const factor = (label: string, symbol: string, digits = 3) => amount(label, symbol, 'ratio', digits);
/** Good to a factor of two: whole tons, and no more than two digits count. */
const two = { significant: 2 } as const;
const loss = (label: string, symbol: string) => ({ ...amount(label, symbol, 'ton/ac', 0), ...two }) as const;
const loads = (label: string, symbol: string) => ({ ...amount(label, symbol, 'count', 0), ...two }) as const;

/** The size of a loss; under a ton an acre the figure is too weak to be told. */
const size = (label: string) =>
  word(
    label,
    { 'under-one': 'Under 1 ton an acre', whole: 'A ton an acre or more' },
    { 'under-one': 'Under 2 tonnes a hectare', whole: '2 tonnes a hectare or more' },
  );
const bearing = {
  within: 'Within it, even at twice the figure',
  unsure: 'Too close to call: within a factor of two of it',
  over: 'Over it, even at half the figure',
} as const;

export const quantities = {
  yearRainMm: amount('Rain of a year in millimeters', 'P_{mm}', 'mm', 0),
  yearFactorRatio: factor('Rain factor in metric units', 'R_{metric}', 0),
  erosivityRatio: factor('Rain factor', 'R', 0),
  erodibilityRatio: factor('Soil factor', 'K', 2),
  groundSlopePercent: amount('Slope', 's', 'pct', 1),
  runFt: amount('Slope length', '\\lambda', 'ft', 0),
  sineRatio: factor('Sine of the slope', '\\sin\\theta'),
  steepnessRatio: factor('Steepness factor', 'S', 2),
  otherSteepnessRatio: factor('Steepness factor by the other form', 'S_o', 2),
  otherTonPerAc: loss('Soil that leaves this pasture, slope worked by the other form', 'A_o'),
  otherSize: size('Soil that leaves this pasture, slope worked by the other form'),
  sodRillRatio: factor('Rills against the ground between, sod', '\\beta_{sod}', 2),
  sodExponentRatio: factor('Exponent of length, sod', 'm_{sod}', 2),
  sodSlopeRatio: factor('Slope factor, sod', 'LS_{sod}', 2),
  tilledRillRatio: factor('Rills against the ground between, tilled', '\\beta_{tilled}', 2),
  tilledExponentRatio: factor('Exponent of length, tilled', 'm_{tilled}', 2),
  tilledSlopeRatio: factor('Slope factor, tilled', 'LS_{tilled}', 2),
  coverRatio: factor('Cover factor of the pasture', 'C'),
  otherCoverRatio: factor('Cover factor of the pasture, read the other way between columns', 'C_o'),
  coverStanding: word('Cover of this pasture', { 'like-crops': 'As thin as under some row crops', holds: 'Better than under row crops' }),
  lossTonPerAc: loss('Soil that leaves this pasture in a year', 'A'),
  lossSize: size('Soil that leaves this pasture in a year'),
  lowTonPerAc: loss('Half of that', 'A_{low}'),
  highTonPerAc: loss('Twice that', 'A_{high}'),
  cropCoverRatio: factor('Cover factor of the plowed ground', 'C_{crop}'),
  cropPracticeRatio: factor('Practice factor of the plowed ground', 'P', 2),
  fallowTonPerAc: loss('Bare fallow, tilled with no crop all year', 'A_{fallow}'),
  ploughedTonPerAc: loss('The same ground in that crop rotation', 'A_{crop}'),
  ploughedSize: size('The plowed ground set beside it'),
  ploughedLowTonPerAc: loss('Half of the plowed figure', 'A_{crop,low}'),
  ploughedHighTonPerAc: loss('Twice the plowed figure', 'A_{crop,high}'),
  timesRatio: factor('Plowed ground loses so many times as much', 'x', 0),
  toleratedTonPerAc: loss('What this soil is said to bear in a year (tolerance)', 'T'),
  standing: word('This pasture against what the soil bears', bearing),
  ploughedStanding: word('Plowed ground against what the soil bears', bearing),
  loadsCount: loads('Truck loads off the whole pasture in a year', 'N'),
  lowLoadsCount: loads('Truck loads at half', 'N_{low}'),
  highLoadsCount: loads('Truck loads at twice', 'N_{high}'),
  mostLoadsCount: loads('Truck loads off the whole pasture in a year, at most', 'N_{most}'),
  ploughedLoadsCount: loads('Truck loads if it were plowed', 'N_{crop}'),
  inchYears: amount('An inch of this pasture is gone in', 't', 'yr', 0),
  fastInchYears: amount('An inch at twice the loss', 't_{fast}', 'yr', 0),
  slowInchYears: amount('An inch at half the loss', 't_{slow}', 'yr', 0),
  ploughedInchYears: amount('An inch is gone, plowed, in', 't_{crop}', 'yr', 0),
  oneYearIn: amount('Thickness gone in one year', 'd_1', 'in', 1),
  ploughedOneYearIn: amount('Thickness gone in one year, plowed', 'd_{crop,1}', 'in', 1),
  thirtyYearsIn: amount('Thickness gone in thirty years', 'd', 'in', 1),
  ploughedThirtyYearsIn: amount('Thickness gone in thirty years, plowed', 'd_{crop}', 'in', 1),
  curve: table('By how much ground is covered', {
    atCoverPercent: amount('Covered ground', 'G', 'pct', 0),
    pastureTonPerAc: loss('This pasture (0 is under half a ton)', 'A'),
    cropTonPerAc: loss('The plowed ground set beside it', 'A_{crop}'),
  }),
} as const;
