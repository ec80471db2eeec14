import type { UnitName } from '../../units/units.ts';
import { listWords, stockWords } from './stock.ts';

const amount = <U extends UnitName>(label: string, symbol: string, unit: U, digits: number) =>
  ({ kind: 'number', label, symbol, unit, digits }) as const;
const gallons = (label: string, symbol: string, digits = -2) => amount(label, symbol, 'gal', digits);
const perDay = (label: string, symbol: string, digits = -1) => amount(label, symbol, 'gal/d', digits);

export const quantities = {
  lines: {
    kind: 'rows',
    label: 'What each kind drinks on the hottest day',
    shown: ['stock', 'countHead', 'eachGalPerDay', 'lineGalPerDay', 'from'],
    columns: {
      stock: { kind: 'word', label: 'Kind', words: stockWords },
      countHead: amount('Head', 'n', 'head', 0),
      from: { kind: 'word', label: 'Highest list', words: listWords },
      eachGalPerDay: perDay('One drinks', 'g', 1),
      lineGalPerDay: perDay('All of them', 'G_i', 0),
      leastGalPerDay: perDay('One drinks, lowest list', 'g_{low}', 1),
      leastLineGalPerDay: perDay('All of them, lowest list', 'G_{i,low}', 0),
    },
  },
  needGalPerDay: perDay('They drink on such a day', 'G'),
  leastNeedGalPerDay: perDay('The same by the lowest lists', 'G_{low}'),
  verdict: {
    kind: 'word',
    label: 'Will it last?',
    words: {
      lasts: 'It lasts that long',
      short: 'It runs out before then',
      'a-year': 'A year or more',
      'keeps-up': 'It keeps up with the stock',
    },
  },
  lastsDays: amount('Water for', 't', 'd', 0),
  leastDays: amount('Water for, if sun and ground take a quarter more', 't_{dry}', 'd', 0),
  mostDays: amount('Water for, if they drink as the lowest lists say', 't_{low}', 'd', 0),
  pondAc: amount('Water surface', 'A', 'ac', 2),
  pondGal: gallons('Water in the pond', 'V', -3),
  deadGal: gallons('Of that, left in the bottom', 'V_d', -3),
  usableGal: gallons('Water above what stays in the pond', 'V_u', -3),
  lossInPerDay: amount('Sun and ground take', 'z_a', 'in/d', 2),
  firstDayLossGal: gallons('Sun and ground take, first day', 'E_1'),
  firstDays: {
    kind: 'rows',
    label: 'The first days',
    shown: ['atDays', 'morningFt', 'drunkGal', 'eveningFt'],
    columns: {
      atDays: amount('Day', 'i', 'count', 0),
      morningFt: amount('Depth, morning', 'h_0', 'ft', 3),
      sunkFt: amount('Depth after sun and ground', 'h_1', 'ft', 3),
      sunkGal: gallons('Water then', 'V_1', 0),
      drunkGal: gallons('Drunk', 'G_d', 0),
      eveningGal: gallons('Water, evening', 'V_2', 0),
      eveningFt: amount('Depth, evening', 'h_2', 'ft', 3),
    },
  },
  drunkGal: gallons('They drink in that time', 'W_g', -3),
  lostGal: gallons('Sun and ground take in that time', 'W_e', -3),
  leftGal: gallons('Left in the pond at the end', 'W_l', -3),
  drinkOnlyDays: amount('If nothing dried up, it would look like', 't_0', 'd', 0),
  levels: {
    kind: 'rows',
    label: 'Water left, day by day',
    columns: { atDays: amount('Days from now', 'i', 'd', 0), leftGal: gallons('Water left to drink', 'V_i') },
  },
  flowGpm: amount('Flow', 'q', 'gpm', 1),
  pipeInsideIn: amount('Inside of the pipe', 'd_p', 'in', 2),
  pipeGpm: amount('The pipe can bring', 'q_p', 'gpm', 1),
  arrivesGpm: amount('Reaches the trough', 'q_a', 'gpm', 1),
  supplyGalPerDay: perDay('Water comes in', 'Q'),
  shortGalPerDay: perDay('Short', 'S'),
  supplyPercent: amount('Of what they drink, comes in', 'r', 'pct', 0),
  neededHr: amount('Hours a day to run for all of it', 'h_n', 'hr', 1),
  neededLoadsCount: amount('Loads a week for all of it', 'N_n', 'count', 1),
  storedGal: gallons('Water stored', 'V_t', -1),
  storedDays: amount('Stored water alone lasts', 't_t', 'd', 1),
  reserveGal: gallons('Three days in reserve', 'R'),
  reserveShortGal: gallons('Storage to add for that', 'R_s'),
  headCount: amount('Head in all', 'n_{all}', 'count', 0),
  comes: { kind: 'word', label: 'They come to water', words: { herd: 'as a herd, all at once', 'one-by-one': 'one by one' } },
  troughGal: gallons('Least water in the trough', 'V_m', -1),
  refillGpm: amount('Least flow into the trough', 'q_m', 'gpm', 1),
  atOnceHead: amount('Drink at once, up to', 'n_o', 'head', 0),
  edgeFt: amount('Trough edge for those', 'x', 'ft', 0),
} as const;
