// Reaches the browser on every page with a calculator: keep it small.

/** One unit. `toBase` turns a value into the dimension's base unit; `offset` is added to the value first (temperatures only). */
interface Unit {
  readonly dimension: string;
  readonly toBase: number;
  readonly offset: number;
  /** Ending of a code name that holds this unit: `rainIn`. */
  readonly suffix: string;
  /** Printed after a number. */
  readonly print: string;
  /** Said in a label, for readers of the screen and of the source. */
  readonly words: string;
  /** Other ways to type it than its token, its print and its words, of one or many, lower case. */
  readonly typed: readonly string[];
}

const unit = <const D extends string, const S extends string>(
  dimension: D,
  toBase: number,
  suffix: S,
  print: string,
  words: string,
  typed: readonly string[] = [],
  offset = 0,
) => ({ dimension, toBase, offset, suffix, print, words, typed });

// Exact definitions: the inch (25.4 mm), the pound (0.45359237 kg), the US gallon (231 cubic inches), the international acre.
const inch = 0.0254;
const foot = 12 * inch;
const acre = 43560 * foot ** 2;
const pound = 0.45359237;
const gallon = 231 * inch ** 3;
const day = 86400;

/** Every unit by its link token. A token is for ever: links carry it. */
export const units = {
  in: unit('length', inch, 'In', 'in', 'inches', ['inch', '"', '”']),
  ft: unit('length', foot, 'Ft', 'ft', 'feet', ['foot', "'", '’']),
  mi: unit('length', 5280 * foot, 'Mi', 'mi', 'miles'),
  mm: unit('length', 0.001, 'Mm', 'mm', 'millimeters', ['millimetres']),
  cm: unit('length', 0.01, 'Cm', 'cm', 'centimeters', ['centimetres']),
  m: unit('length', 1, 'M', 'm', 'meters', ['metres', 'metre']),
  km: unit('length', 1000, 'Km', 'km', 'kilometers', ['kilometres']),
  sqft: unit('area', foot ** 2, 'Ft2', 'sq ft', 'square feet', ['ft2', 'ft²']),
  sqm: unit('area', 1, 'M2', 'm²', 'square meters', ['m2', 'square metres']),
  ac: unit('area', acre, 'Ac', 'ac', 'acres'),
  ha: unit('area', 10000, 'Ha', 'ha', 'hectares'),
  gal: unit('volume', gallon, 'Gal', 'gal', 'gallons'),
  qt: unit('volume', gallon / 4, 'Qt', 'qt', 'quarts'),
  ml: unit('volume', 1e-6, 'Ml', 'mL', 'milliliters', ['millilitres', 'cc']),
  l: unit('volume', 0.001, 'L', 'L', 'liters', ['litre', 'litres']),
  cuft: unit('volume', foot ** 3, 'Ft3', 'cu ft', 'cubic feet', ['ft3', 'ft³']),
  cum: unit('volume', 1, 'M3', 'm³', 'cubic meters', ['m3', 'cubic metres']),
  acin: unit('volume', acre * inch, 'AcIn', 'ac-in', 'acre-inches', ['acre-inch']),
  acft: unit('volume', acre * foot, 'AcFt', 'ac-ft', 'acre-feet', ['acre-foot']),
  lb: unit('mass', pound, 'Lb', 'lb', 'pounds', ['lbs']),
  ton: unit('mass', 2000 * pound, 'Ton', 'tons', 'tons of 2,000 lb', ['short ton', 'short tons']),
  g: unit('mass', 0.001, 'G', 'g', 'grams'),
  kg: unit('mass', 1, 'Kg', 'kg', 'kilograms', ['kilo', 'kilos']),
  // No `t`: some mean 2,000 lb by it and some 1,000 kg.
  tonne: unit('mass', 1000, 'Tonne', 'tonnes', 'metric tons'),
  min: unit('time', 60, 'Min', 'min', 'minutes'),
  s: unit('time', 1, 'S', 's', 'seconds', ['sec']),
  hr: unit('time', 3600, 'Hr', 'hours', 'hours', ['h']),
  d: unit('time', day, 'Days', 'days', 'days'),
  wk: unit('time', 7 * day, 'Weeks', 'weeks', 'weeks'),
  mo: unit('months', 1, 'Months', 'months', 'months'),
  yr: unit('years', 1, 'Years', 'years', 'years'),
  f: unit('temperature', 5 / 9, 'F', '°F', 'degrees Fahrenheit', ['degf', 'deg f', 'fahrenheit'], -32),
  c: unit('temperature', 1, 'C', '°C', 'degrees Celsius', ['degc', 'deg c', 'celsius']),
  pct: unit('share', 0.01, 'Percent', '%', 'percent'),
  // Printed bare, as a count: labels say it.
  ppm: unit('share', 1e-6, 'Count', '', 'ppm', ['mg/kg']),
  'lb/ac': unit('mass an area', pound / acre, 'LbPerAc', 'lb/ac', 'pounds an acre', ['lbs/ac', 'lb/acre', 'pounds per acre']),
  'ton/ac': unit('mass an area', (2000 * pound) / acre, 'TonPerAc', 'tons/ac', 'tons an acre', ['ton/acre', 'tons/acre']),
  'kg/ha': unit('mass an area', 1 / 10000, 'KgPerHa', 'kg/ha', 'kilograms a hectare'),
  'tonne/ha': unit('mass an area', 0.1, 'TonnePerHa', 'tonnes/ha', 'metric tons a hectare'),
  'lb/ac/d': unit('growth', pound / acre, 'LbPerAcDay', 'lb/ac a day', 'pounds an acre a day', ['lb/ac/day', 'lb/acre/day']),
  'kg/ha/d': unit('growth', 1 / 10000, 'KgPerHaDay', 'kg/ha a day', 'kilograms a hectare a day', ['kg/ha/day']),
  'lb/ac/in': unit('height density', pound / acre / inch, 'LbPerAcIn', 'lb/ac an inch', 'pounds an acre for each inch', [
    'lb/ac-in',
    'lb/acre/inch',
    'lb/ac/inch',
  ]),
  'kg/ha/cm': unit('height density', 1 / 10000 / 0.01, 'KgPerHaCm', 'kg/ha a cm', 'kilograms a hectare for each centimeter'),
  // What depth of water grows so much feed: 3 in per ton/ac are 34 mm per tonne/ha. A depth alone is meant for a ton an acre, as links before had it.
  'in/ton/ac': unit('water for feed', (inch * acre) / (2000 * pound), 'In', 'in per ton/ac', 'inches for a ton an acre', [
    'in',
    'inch',
    'inches',
    '"',
    '”',
  ]),
  'mm/ton/ac': unit('water for feed', (0.001 * acre) / (2000 * pound), 'In', 'mm per ton/ac', 'millimeters for a ton an acre', ['mm', 'millimeters']),
  'mm/tonne/ha': unit('water for feed', 0.01, 'In', 'mm per tonne/ha', 'millimeters for a metric ton a hectare'),
  'lb/cuft': unit('density', pound / foot ** 3, 'LbPerFt3', 'lb/cu ft', 'pounds a cubic foot', ['lb/ft3', 'lb/ft³']),
  'kg/cum': unit('density', 1, 'KgPerM3', 'kg/m³', 'kilograms a cubic meter', ['kg/m3']),
  'g/cc': unit('density', 1000, 'GPerCm3', 'g/cm³', 'grams a cubic centimeter', ['g/cm3']),
  'in/hr': unit('rate', inch / 3600, 'InPerHr', 'in an hour', 'inches an hour', ['in/h', 'in/hour', 'inches per hour', 'iph']),
  'mm/hr': unit('rate', 0.001 / 3600, 'MmPerHr', 'mm an hour', 'millimeters an hour', ['mm/h', 'mm/hour']),
  'cm/hr': unit('rate', 0.01 / 3600, 'CmPerHr', 'cm an hour', 'centimeters an hour', ['cm/h', 'cm/hour']),
  'in/d': unit('rate', inch / day, 'InPerDay', 'in a day', 'inches a day', ['in/day']),
  'mm/d': unit('rate', 0.001 / day, 'MmPerDay', 'mm a day', 'millimeters a day', ['mm/day']),
  gpm: unit('flow', gallon / 60, 'Gpm', 'gal/min', 'gallons a minute'),
  'gal/d': unit('flow', gallon / day, 'GalPerDay', 'gal a day', 'gallons a day', ['gal/day', 'gpd']),
  'l/s': unit('flow', 0.001, 'LPerS', 'L/s', 'liters a second'),
  'l/d': unit('flow', 0.001 / day, 'LPerDay', 'L a day', 'liters a day', ['l/day']),
  'lb/d': unit('feed', pound, 'LbPerDay', 'lb a day', 'pounds a day', ['lb/day', 'lbs/day']),
  'kg/d': unit('feed', 1, 'KgPerDay', 'kg a day', 'kilograms a day', ['kg/day']),
  psi: unit('pressure', 6894.757293168, 'Psi', 'psi', 'pounds a square inch'),
  kpa: unit('pressure', 1000, 'Kpa', 'kPa', 'kilopascals'),
  'mg/l': unit('concentration', 1, 'MgPerL', 'mg/L', 'milligrams a liter', ['ppm']),
  usd: unit('money', 1, 'Usd', '$', 'dollars'),
  'usd/ton': unit('price by mass', 1 / (2000 * pound), 'UsdPerTon', '$ a ton', 'dollars a ton', ['$/ton']),
  'usd/tonne': unit('price by mass', 0.001, 'UsdPerTonne', '$ a metric ton', 'dollars a metric ton', ['$/tonne']),
  'usd/lb': unit('price by mass', 1 / pound, 'UsdPerLb', '$ a lb', 'dollars a pound', ['$/lb']),
  'usd/cwt': unit('price by mass', 1 / (100 * pound), 'UsdPerCwt', '$ a hundred lb', 'dollars a hundred pounds', ['$/cwt']),
  'usd/kg': unit('price by mass', 1, 'UsdPerKg', '$ a kg', 'dollars a kilogram', ['$/kg']),
  'usd/head': unit('price a head', 1, 'UsdPerHead', '$ a head', 'dollars a head', ['$/head']),
  // A price alone is for an acre, as links before had it.
  'usd/ac': unit('price an area', 1 / acre, 'Usd', '$ an acre', 'dollars an acre', ['$', 'usd', 'dollars', '$/ac', '$/acre']),
  'usd/ha': unit('price an area', 1 / 10000, 'Usd', '$ a hectare', 'dollars a hectare', ['$/ha']),
  'usd/d': unit('price a day', 1, 'UsdPerDay', '$ a day', 'dollars a day', ['$/day', '$/d']),
  'usd/load': unit('price a load', 1, 'UsdPerLoad', '$ a load', 'dollars a load', ['$/load']),
  head: unit('head', 1, 'Head', 'head', 'head', ['hd']),
  au: unit('animal units', 1, 'Au', 'animal units', 'animal units'),
  count: unit('count', 1, 'Count', '', 'a count'),
  cn: unit('curve number', 1, 'CurveNumber', '', 'a curve number, 30 to 100'),
  ratio: unit('ratio', 1, 'Ratio', '', 'a ratio'),
} satisfies Record<string, Unit>;

export type UnitName = keyof typeof units;
export type Suffix<U extends UnitName> = (typeof units)[U]['suffix'];

export const isUnit = (text: string): text is UnitName => Object.hasOwn(units, text);

/** Units that print as a bare number: nobody types them and links leave them out. */
export const isBare = (name: UnitName): boolean => units[name].print === '' || name === 'head' || name === 'au';

/** US customary and metric partners. What has no partner reads the same in both. */
const partners: readonly (readonly [UnitName, UnitName])[] = [
  ['in', 'mm'],
  ['ft', 'm'],
  ['mi', 'km'],
  ['sqft', 'sqm'],
  ['ac', 'ha'],
  ['gal', 'l'],
  ['qt', 'l'],
  ['cuft', 'cum'],
  ['acft', 'cum'],
  ['acin', 'cum'],
  ['lb', 'kg'],
  ['ton', 'tonne'],
  ['f', 'c'],
  ['lb/ac', 'kg/ha'],
  ['ton/ac', 'tonne/ha'],
  ['lb/ac/d', 'kg/ha/d'],
  ['lb/ac/in', 'kg/ha/cm'],
  ['lb/cuft', 'kg/cum'],
  ['in/hr', 'mm/hr'],
  ['in/d', 'mm/d'],
  ['gpm', 'l/s'],
  ['gal/d', 'l/d'],
  ['lb/d', 'kg/d'],
  ['psi', 'kpa'],
  ['usd/ton', 'usd/tonne'],
  ['usd/lb', 'usd/kg'],
  ['usd/cwt', 'usd/kg'],
  ['usd/ac', 'usd/ha'],
  ['in/ton/ac', 'mm/tonne/ha'],
];

export type UnitSystem = 'us' | 'si';

/** The unit in which a reader of that system sees a quantity declared in `name`. */
export function unitIn(system: UnitSystem, name: UnitName): UnitName {
  const at = system === 'us' ? 1 : 0;
  const found = partners.find((pair) => pair[at] === name);
  return found ? (found[1 - at] ?? name) : name;
}

/**
 * Converts between units of one dimension.
 * @throws RangeError if the dimensions differ
 */
export function convert(value: number, from: UnitName, to: UnitName): number {
  if (from === to) return value;
  const [one, other] = [units[from], units[to]];
  if (one.dimension !== other.dimension) throw new RangeError(`convert needs units of one dimension, got ${from} and ${to}`);
  return ((value + one.offset) * one.toBase) / other.toBase - other.offset;
}
