import type { UnitName } from '../../units/units.ts';
import { classWords, listWords, mostWords } from './lists.ts';
import { readingWords } from './reading.ts';

const amount = <U extends UnitName>(label: string, symbol: string, unit: U, digits = 0) => ({ kind: 'number', label, symbol, unit, digits }) as const;
const things = {
  feed: 'Nitrate in the feed',
  'feed-and-water': 'Nitrate in all they eat, with the water’s',
  'prussic-acid': 'Prussic acid in the feed',
  'prussic-as-is': 'Prussic acid in the feed as it came',
  'water-nitrate': 'Nitrate in the water',
  'water-sulfate': 'Sulfate in the water',
  'water-salts': 'Salts in the water',
} as const;

export const quantities = {
  reading: { kind: 'word', label: 'For these animals', words: readingWords },
  feedReading: { kind: 'word', label: 'Nitrate in the feed, for these animals', words: readingWords },
  verdict: {
    kind: 'word',
    label: 'What the lists say, in short',
    words: {
      'under-every-limit': 'Under the limits in these lists. That clears nothing',
      limited: 'At least one list sets a limit or warns',
      'harm-named': 'At least one list names harm, or keeps it from some animals',
      'do-not-feed': 'At least one list says do not feed or use it',
    },
  },
  slipPpm: amount('Nitrate on the slip, ppm', 'x_p', 'count'),
  slipNitrogenPpm: amount('Counted as nitrogen (NO3-N), ppm', 'x_N', 'count'),
  nitrogenPpm: amount('Nitrate nitrogen (NO3-N) in the feed’s dry matter, ppm', 'N', 'count'),
  ionPpm: amount('The same reported as nitrate (NO3), ppm', 'N_{NO3}', 'count'),
  potassiumNitratePpm: amount('The same reported as potassium nitrate (KNO3), ppm', 'N_{KNO3}', 'count'),
  prussicPpm: amount('Prussic acid in the feed’s dry matter, ppm', 'P', 'count'),
  waterNitrogenMgPerL: amount('Nitrate nitrogen (NO3-N) in the water', 'w', 'mg/l', 1),
  sulfateMgPerL: amount('Sulfate (SO4) in the water', 's', 'mg/l'),
  saltsMgPerL: amount('Dissolved solids in the water', 't', 'mg/l', -1),
  drunkGal: amount('Water one animal drinks in a day', 'G', 'gal', 1),
  rationPpm: amount('Nitrate nitrogen in all they eat, ppm', 'c', 'count'),
  feedG: amount('Nitrate nitrogen from feed in a day', 'a_F', 'g', 1),
  waterG: amount('Nitrate nitrogen from water in a day', 'a_w', 'g', 1),
  totalG: amount('Nitrate nitrogen one animal takes in a day', 'a', 'g', 1),
  gPerCwt: amount('The same for 100 lb of its weight', 'b', 'g', 2),
  asFeedPpm: amount('As if it were all in what they eat, ppm', 'c_a', 'count'),
  waterAsFeedPpm: amount('The water’s part of that, ppm', 'c_w', 'count'),
  limitPpm: amount('Level to stay under, ppm', 'L', 'count'),
  roomPpm: amount('Room that the water leaves for feed, ppm', 'L_F', 'count'),
  mixSharePercent: amount('Share that comes to the level', 'm', 'pct'),
  listSharePercent: amount('Smallest share that a list names', 'm_l', 'pct'),
  leadSharePercent: amount('Most of this feed in the mix, by the strictest of these', 'M', 'pct'),
  mixing: {
    kind: 'word',
    label: 'Mixing it down',
    words: {
      'ask-first': 'Not before the laboratory and the veterinarian say how',
      'no-room': 'No mix of these two feeds stays under the level',
      'no-share-named': 'Neither the lists nor this level name a share',
      share: 'There is a share to talk over with them',
      'not-asked': 'Needs a second feed that was tested',
    },
  },
  readings: {
    kind: 'rows',
    label: 'What each list says, the strictest first',
    columns: {
      thing: { kind: 'word', label: 'Of', words: things },
      list: { kind: 'word', label: 'List', words: listWords },
      says: { kind: 'word', label: 'Its words', words: classWords },
      most: { kind: 'word', label: 'Most of it that the list allows', words: mostWords },
      valuePpm: amount('Yours, ppm or mg/L', 'v', 'count'),
      edgePpm: amount('That class begins at', 'e', 'count'),
    },
  },
  leastHeightIn: amount('Let it reach this height first', 'h', 'in'),
  killingFrostDays: amount('Wait after a killing frost', 't_k', 'd'),
  lightFrostDays: amount('Wait after each lighter frost, or on new shoots after one', 't_f', 'd'),
  afterDroughtDays: amount('Wait after the rain that ends a drought', 't_r', 'd'),
  ensiledDays: amount('Wait after it is put up as silage', 't_s', 'd'),
} as const;
