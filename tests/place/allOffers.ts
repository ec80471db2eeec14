import { exampleOn } from '../../calculators/kit/occurs.ts';
import type { Place } from '../../src/place/model/place.ts';
import { fetchParts } from '../../src/place/offer/fetchParts.ts';
import { filler } from '../../src/place/offer/fillTexts.ts';
import * as ahead from '../../src/place/offer/lookAhead.ts';
import type { Offers } from '../../src/place/offer/offered.ts';
import { type Chosen, offersOf } from '../../src/place/offer/offersOf.ts';
import * as stack from '../../src/place/offer/withoutStack.ts';
import { calculators } from '../support/catalog.ts';

const parts = await fetchParts(calculators);
/** All that a place offers to any form. */
export const allOffers = (place: Place, todayDay: number, chosen?: Chosen): Offers => offersOf(parts, place, todayDay, chosen);
/** Fills any form. */
export const fillTexts = filler(exampleOn, { ahead, stack });
