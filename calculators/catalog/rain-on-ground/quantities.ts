import { amount, table } from '../../kit/quantities.ts';
import type { UnitName } from '../../units/units.ts';

/** A number of any size, told with so many digits that count. */
const counts = <U extends UnitName>(label: string, symbol: string, unit: U, significant: number, digits = 0) =>
  ({ ...amount(label, symbol, unit, digits), significant }) as const;

export const quantities = {
  depthIn: amount('Rain', 'P', 'in', 2),
  surfaceAc: amount('Area as seen from above', 'A', 'ac', 2),
  waterFt3: amount('Rain, as a volume', 'V_{ft}', 'cuft'),
  waterGal: counts('Rain that fell', 'V', 'gal', 4),
  waterTon: counts('Weight of that water', 'M', 'ton', 3, 1),
  usablePercent: amount('Share counted', 'c', 'pct'),
  caughtGal: counts('Water counted (off a roof: what reaches the tank)', 'V_c', 'gal', 4),
  lostGal: amount('Lost on the way to the tank', 'V_l', 'gal'),
  fullTankGal: amount('Full tank', 'T', 'gal'),
  tankCount: counts('Tank-fulls', 'n_T', 'count', 3, 1),
  drinkers: table('Each kind of stock', {
    countHead: amount('Head', 'N', 'head'),
    headGalPerDay: amount('One drinks, to plan with', 'g', 'gal/d', 1),
    allGalPerDay: amount('All drink', 'N g', 'gal/d'),
    leastHeadGalPerDay: amount('One drinks, by the lowest list', 'g_{low}', 'gal/d', 1),
    leastAllGalPerDay: amount('All drink, by the lowest list', 'N g_{low}', 'gal/d'),
  }),
  herdGalPerDay: counts('The stock drink', 'G', 'gal/d', 3),
  leastHerdGalPerDay: counts('The stock drink, by the lowest lists', 'G_{low}', 'gal/d', 3),
  stockDays: counts('Would water your stock for', 't', 'd', 2, 1),
  highStockDays: counts('The same, by the lowest lists', 't_{high}', 'd', 2, 1),
  otherRains: table('Other rains here', { fallIn: amount('Rain', 'p', 'in', 2), fallGal: counts('Water counted', 'v', 'gal', 4) }),
} as const;
