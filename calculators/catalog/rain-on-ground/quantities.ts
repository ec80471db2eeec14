import type { UnitName } from '../../units/units.ts';

const amount = <U extends UnitName>(label: string, symbol: string, unit: U, digits = 0) => ({ kind: 'number', label, symbol, unit, digits }) as const;

export const quantities = {
  depthIn: amount('Rain', 'P', 'in', 2),
  surfaceAc: amount('Area as seen from above', 'A', 'ac', 2),
  waterFt3: amount('Rain, in cubic feet', 'V_{ft}', 'cuft'),
  waterGal: amount('Rain that fell', 'V', 'gal'),
  roundWaterGal: amount('Rain that fell', 'V', 'gal', -3),
  waterTon: amount('Weight of that water', 'M', 'ton', 1),
  roundWaterTon: amount('Weight of that water', 'M', 'ton', -1),
  usablePercent: amount('Share counted', 'c', 'pct'),
  caughtGal: amount('Water counted (off a roof: what reaches the tank)', 'V_c', 'gal'),
  roundCaughtGal: amount('Water counted (off a roof: what reaches the tank)', 'V_c', 'gal', -3),
  lostGal: amount('Lost on the way to the tank', 'V_l', 'gal'),
  fullTankGal: amount('Full tank', 'T', 'gal'),
  tankCount: amount('Tank-fulls', 'n_T', 'count', 1),
  roundTankCount: amount('Tank-fulls', 'n_T', 'count', -1),
  drinkers: {
    kind: 'rows',
    label: 'Each kind of stock',
    columns: {
      countHead: amount('Head', 'N', 'head'),
      headGalPerDay: amount('One drinks, to plan with', 'g', 'gal/d', 1),
      allGalPerDay: amount('All drink', 'N g', 'gal/d'),
      leastHeadGalPerDay: amount('One drinks, by the lowest list', 'g_{low}', 'gal/d', 1),
      leastAllGalPerDay: amount('All drink, by the lowest list', 'N g_{low}', 'gal/d'),
    },
  },
  herdGalPerDay: amount('The stock drink', 'G', 'gal/d'),
  leastHerdGalPerDay: amount('The stock drink, by the lowest lists', 'G_{low}', 'gal/d'),
  stockDays: amount('Would water your stock for', 't', 'd', 1),
  roundStockDays: amount('Would water your stock for', 't', 'd', 0),
  longStockDays: amount('Would water your stock for', 't', 'd', -1),
  highStockDays: amount('The same, by the lowest lists', 't_{high}', 'd', 1),
  roundHighStockDays: amount('The same, by the lowest lists', 't_{high}', 'd', 0),
  longHighStockDays: amount('The same, by the lowest lists', 't_{high}', 'd', -1),
  otherRains: {
    kind: 'rows',
    label: 'Other rains here',
    columns: { fallIn: amount('Rain', 'p', 'in', 2), fallGal: amount('Water counted', 'v', 'gal') },
  },
} as const;
