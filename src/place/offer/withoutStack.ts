import type { OfferKey } from '../../../calculators/kit/offers.ts';
import type { Offers } from './offered.ts';

/** What is told of hay on hand, and of nothing else. */
export const stackKeys: readonly OfferKey[] = ['hay.count', 'hay.bale', 'hay.baled', 'hay.weighed', 'hay.storage'];
/** Hay on hand that a form cannot take is none: the example's would be counted in its stead. What is bought, and how it is fed, stays. */
export const withoutStack = (offers: Offers): Offers => ({
  ...offers,
  single: new Map([
    ...[...offers.single].filter(([key]) => !stackKeys.includes(key)),
    ['hay.onHand', { words: ['none'], says: 'what lies there is not counted' }],
  ]),
});
