import type { OtherWords } from '../kit/leads.ts';
import type { GrazerKind } from '../tables/grazers.ts';

// What other forms call the kinds of stock that graze. Where a form has no such kind its row is left out, and the page says so.

type Grazing = Readonly<Record<Exclude<GrazerKind, 'cow-dry-cured'>, OtherWords[string]>>;

/** On hay: what one eats goes along, so that nursing and dry differ by that. */
export const onHay = {
  'cow-nursing': 'cow',
  'cow-dry': 'cow',
  bull: 'bull',
  heifer: 'heifer',
  stocker: 'growing',
  calf: 'calf',
  'ewe-nursing': 'ewe',
  'ewe-dry': 'ewe',
  doe: 'doe',
  'doe-dry': 'doe',
  horse: 'horse',
  other: 'other',
} as const satisfies Grazing & OtherWords;

/** At water: growing cattle by their weight. */
export const atWater = {
  'cow-nursing': 'cow-nursing',
  'cow-dry': 'cow-dry',
  bull: 'bull',
  heifer: 'heifer-pregnant-750',
  stocker: { 'growing-400': 400, 'growing-600': 600, 'growing-800': 800 },
  calf: 'calf-500',
  'ewe-nursing': 'ewe-nursing',
  'ewe-dry': 'ewe',
  doe: 'goat-nursing',
  'doe-dry': 'goat',
  horse: 'horse',
} as const satisfies Grazing & OtherWords;
