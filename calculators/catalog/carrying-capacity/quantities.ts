import type { UnitName } from '../../units/units.ts';
import { kindWords } from './herd.ts';

const amount = <U extends UnitName>(label: string, symbol: string, unit: U, digits = 0) => ({ kind: 'number', label, symbol, unit, digits }) as const;
const pounds = (label: string, symbol: string) => amount(label, symbol, 'lb', -3);
const kind = { kind: 'word', label: 'Kind', words: kindWords } as const;
const pasture = amount('Pasture', 'i', 'count');

export const quantities = {
  eatenPercent: amount('Share eaten', 'h_e', 'pct'),
  basisPercent: amount('Dry matter in the pounds given', 'd', 'pct'),
  otherBasisPercent: amount('Dry matter, counted the other way', 'd_o', 'pct'),
  grounds: {
    kind: 'rows',
    label: 'Each pasture',
    columns: {
      pasture,
      areaAc: amount('Area', 'A', 'ac'),
      usablePercent: amount('Share used', 'r', 'pct'),
      usableAc: amount('Acres that count', 'A_u', 'ac'),
      normalLbPerAc: amount('Yield, normal year', 'Y_n', 'lb/ac', -1),
      poorLbPerAc: amount('Yield, poor year', 'Y_p', 'lb/ac', -1),
      normalEatenLb: pounds('Eaten, normal year', 'E_n'),
      poorEatenLb: pounds('Eaten, poor year', 'E_p'),
    },
  },
  usableAc: amount('Acres that count', 'A_U', 'ac'),
  usualYears: {
    kind: 'rows',
    label: 'Each pasture, as it was run',
    columns: {
      pasture,
      usualHead: amount('Head', 'n_u', 'head'),
      lastedDays: amount('Days', 't_u', 'd'),
      usualEatenLb: pounds('Eaten, usual year', 'E_n'),
      poorUsualLb: pounds('Eaten, poor year', 'E_p'),
    },
  },
  normalYearLb: pounds('To be eaten of a normal year’s growth', 'F_n'),
  poorYearLb: pounds('To be eaten of a poor year’s growth', 'F_p'),
  endPercent: amount('Growth that comes by the last day', 'c_e', 'pct'),
  normalLb: pounds('For this season, normal year', 'S_n'),
  poorLb: pounds('For this season, poor year', 'S_p'),
  kinds: {
    kind: 'rows',
    label: 'Each kind of stock',
    columns: {
      kind,
      countHead: amount('Head', 'n', 'head'),
      weightLb: amount('Weight of one', 'W', 'lb'),
      intakePercent: amount('Share of weight eaten', 'p', 'pct', 1),
      eachLbPerDay: amount('One eats', 'e', 'lb/d', 1),
      lineLbPerDay: amount('All eat', 'e_a', 'lb/d'),
    },
  },
  firstKind: { kind: 'word', label: 'Kind that would go first', words: kindWords },
  firstHead: amount('Of that kind now', 'n_1', 'head'),
  firstLbPerDay: amount('One of them eats', 'e_1', 'lb/d', 1),
  herdLbPerDay: amount('The herd eats', 'D', 'lb/d', -1),
  othersLbPerDay: amount('The other stock eat', 'D_o', 'lb/d', -1),
  seasonDays: amount('The whole season', 'T', 'd'),
  seasonNeedLb: pounds('The herd needs for the whole season', 'N'),
  grownPercent: amount('Of the season’s usual growth, due by today', 'c', 'pct'),
  thisLb: pounds('For this season, this year', 'S'),
  years: {
    kind: 'rows',
    label: 'Year beside year, whole season',
    columns: {
      year: { kind: 'word', label: 'Year', words: { normal: 'Normal', poor: 'Poor', this: 'This year, as it looks' } },
      supplyLb: pounds('To be eaten', 'S_y'),
      balanceLb: pounds('Over, or short', 'B_y'),
      yearHead: amount('Head of the first kind carried', 'n_y', 'head'),
    },
  },
  normalHead: amount('Head of the first kind that the place carries, normal year', 'n_n', 'head'),
  poorHead: amount('Head of the first kind, poor year', 'n_p', 'head'),
  otherBasisHead: amount('Normal year, if the pounds are on the other dryness', 'n_d', 'head'),
  goneDays: amount('Days grazed so far', 't_0', 'd'),
  leftDays: amount('Days still to feed', 't', 'd'),
  eatenSoFarLb: pounds('Eaten so far', 'E_0'),
  leftLb: pounds('Left to be eaten, with what still grows', 'L'),
  leftNeedLb: pounds('The herd needs from today', 'N_t'),
  balanceLb: pounds('Over, or short, from today', 'B'),
  lastsDays: amount('If none go, the grass lasts', 't_L', 'd'),
  outDay: { kind: 'day', label: 'If none go, the grazing ends' },
  forFirstLb: pounds('Of that, for the first kind', 'L_1'),
  nowHead: amount('Head of the first kind that the rest of this year carries', 'n_t', 'head'),
  waitDays: amount('Days until they could go', 'w', 'd'),
  verdict: {
    kind: 'word',
    label: 'Must any go?',
    words: {
      'all-stay': 'None need to go, as the year looks now',
      'some-go': 'Some must go',
      'too-late': 'Too late by that day: with all of the first kind gone, the grass still ends early',
    },
  },
  exactGoHead: amount('Head to go, not rounded', 'x', 'head', 1),
  goHead: amount('Head of the first kind that must go by your day', 'X', 'head'),
  lowGoHead: amount('Head to go, if the rest of the season grows as usual', 'X_l', 'head'),
  highGoHead: amount('Head to go, if nothing more grows', 'X_h', 'head'),
  nowGoHead: amount('If they went today', 'X_0', 'head'),
  delays: {
    kind: 'rows',
    label: 'What waiting does',
    columns: {
      delayDay: { kind: 'day', label: 'Gone by' },
      delayHead: amount('Head to go', 'X_d', 'head'),
      dryHead: amount('If nothing more grows', 'X_{dry}', 'head'),
      outcome: { kind: 'word', label: 'Then the grass', words: { lasts: 'lasts', 'too-late': 'ends early' } },
    },
  },
} as const;
