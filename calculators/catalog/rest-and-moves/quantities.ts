import type { UnitName } from '../../units/units.ts';

const amount = <U extends UnitName>(label: string, symbol: string, unit: U, digits = 0) => ({ kind: 'number', label, symbol, unit, digits }) as const;

export const quantities = {
  growthNowLbPerAcDay: amount('Growth now', 'g', 'lb/ac/d'),
  regrowLbPerAc: amount('Growth that must come back', 'B', 'lb/ac', -1),
  restDays: amount('Rest each paddock needs', 'R', 'd'),
  verdict: {
    kind: 'word',
    label: 'Rest each paddock needs',
    words: { 'none-until-rain': 'No rest is long enough until it rains', 'grows-back': 'The grass is growing' },
  },
  lowRestDays: amount('Published rest, shortest', 'R_{low}', 'd'),
  highRestDays: amount('Published rest, longest', 'R_{high}', 'd'),
  rangeFrom: {
    kind: 'word',
    label: 'Published rest is',
    words: {
      forage: 'in a published table for this forage',
      memory: 'for this forage, from memory',
      guides: 'in published guides for pasture, from fast growth to slow',
    },
  },
  exactPaddocks: amount('Paddocks, not rounded', 'n_x', 'count', 1),
  neededPaddocks: amount('Paddocks that rest needs', 'n_R', 'count'),
  givenRestDays: amount('Rest that today’s paddocks give', 'R_n', 'd'),
  todayVerdict: {
    kind: 'word',
    label: 'Is that enough?',
    words: { enough: 'Yes, at this growth', short: 'No: the herd is back before the grass is' },
  },
  shortDays: amount('Too short by', 'R_s', 'd'),
  slowerStayDays: amount('Stay that would give the rest with today’s paddocks', 's_R', 'd', 1),
  slowerOccupiedDays: amount('Days in a row in a paddock then', 'o_R', 'd', 1),
  occupiedDays: amount('Days in a row that stock are in a paddock', 'o', 'd'),
  restingPercent: amount('Paddocks at rest on any day', 'r', 'pct'),
  stockLines: {
    kind: 'rows',
    label: 'Each kind of stock',
    columns: {
      countHead: amount('Head', 'N', 'head'),
      weightLb: amount('Weight of one', 'W', 'lb'),
      intakePercent: amount('Eats a day, share of its weight', 'p', 'pct', 1),
      lineWeightLb: amount('Weight', 'N W', 'lb', -1),
      lineLbPerDay: amount('Eats', 'D_i', 'lb/d'),
    },
  },
  stockWeightLb: amount('Weight of all stock', 'W_{all}', 'lb', -2),
  demandLbPerDay: amount('All stock eat', 'D', 'lb/d', -1),
  eatenPercent: amount('Share eaten of what stands above the stubble', 'u', 'pct'),
  paddockAc: amount('Acres a paddock should have', 'A', 'ac', 1),
  todayAc: amount('Acres for today’s number of paddocks', 'A_n', 'ac'),
  densityLbPerAc: amount('Stock density, weight on an acre', 'q', 'lb/ac', -2),
  moves: {
    kind: 'rows',
    label: 'Moves',
    columns: {
      paddock: amount('Paddock', 'i', 'count'),
      herd: amount('Herd', 'j', 'count'),
      lookDay: { kind: 'day', label: 'Look at it' },
      inDay: { kind: 'day', label: 'In' },
      outDay: { kind: 'day', label: 'Out' },
    },
  },
} as const;
