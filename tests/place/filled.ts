import { holding } from '../../calculators/kit/holding.ts';
import { type Texts, textIn } from '../../calculators/kit/state.ts';
import { dayOf } from '../../calculators/units/printQuantity.ts';
import { demoPlace } from '../../src/place/demo.ts';
import type { Place } from '../../src/place/model/place.ts';
import type { Filled } from '../../src/place/offer/fillTexts.ts';
import type { Chosen } from '../../src/place/offer/offersOf.ts';
import { calculatorOf } from '../support/catalog.ts';
import { allOffers, fillTexts } from './allOffers.ts';

export const day = (iso: string): number => {
  const found = dayOf(iso);
  if (found === undefined) throw new RangeError(`${iso} is no day`);
  return found;
};
export const demo = demoPlace('demo', 'a test', '2026-06-01T00:00:00.000Z');
export const with_ = (more: Partial<Place>): Place => ({ ...demo, ...more });
export const fill = (
  slug: string,
  { place = demo, today = '2026-06-20', chosen = {}, given = {} }: { place?: Place; today?: string; chosen?: Chosen; given?: Texts } = {},
): Filled => fillTexts(holding(calculatorOf(slug), given), allOffers(place, day(today), chosen), day(today), 'us');
export const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
export const textAt = (texts: Texts, at: string): string => {
  const [key = '', index, column] = at.split('.');
  if (index === undefined) return textIn(texts[key]);
  const list = texts[key];
  const each = typeof list === 'object' ? list[Number(index)] : undefined;
  return typeof each === 'string' ? each : (each?.[column ?? ''] ?? '');
};
