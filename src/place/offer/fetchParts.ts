import type { Calculator } from '../../../calculators/kit/define.ts';
import { type Cell, movesWithToday } from '../../../calculators/kit/inputs.ts';
import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { type FillTexts, filler } from './fillTexts.ts';
import { isSinceTurnIn } from './fits.ts';
import type { OfferPart } from './offered.ts';

/** The offers that a form asks for. */
export function offerKeys({ inputs }: Pick<Calculator, 'inputs'>): readonly OfferKey[] {
  const cells = Object.values(inputs).flatMap((input): readonly { readonly offeredBy?: OfferKey }[] =>
    input.kind === 'rows' ? Object.values<Cell>(input.columns) : [input],
  );
  return cells.flatMap(({ offeredBy }) => (offeredBy === undefined ? [] : [offeredBy]));
}

/** Each a chunk of its own, with the subjects of its offers: a form that asks for a texture fetches no prices. */
const parts: readonly { readonly of: RegExp; readonly bring: () => Promise<{ readonly part: OfferPart }> }[] = [
  { of: /^(?:place|rain)\./, bring: () => import('./placeOffers.ts') },
  { of: /^(?:season|growth|grazing)\./, bring: () => import('./seasonOffers.ts') },
  { of: /^(?:season\.grassDays|herd\.seasonDemand)/, bring: () => import('./grassSeason.ts') },
  { of: /^pastures\.(?:hayArea|normal|ground|reachFrom|yieldFrom)/, bring: () => import('./allGround.ts') },
  { of: /^pasture\./, bring: () => import('./groundOffers.ts') },
  { of: /^pastures\.(?!hayArea|normal|ground|reachFrom|yieldFrom)/, bring: () => import('./togetherOffers.ts') },
  { of: /^layer\./, bring: () => import('./layerOffers.ts') },
  { of: /^herd\.(?!season|winter|cow|calf|main|\w+From)/, bring: () => import('./herdOffers.ts') },
  { of: /^herd\.(?:cow|calf|main|\w+From)/, bring: () => import('./herdWhole.ts') },
  // After the lines of the herd, which it tells with more.
  { of: /^herd\.(?:season(?!Demand)|winter)/, bring: () => import('./herdSeason.ts') },
  { of: /^hay\./, bring: () => import('./hayOffers.ts') },
  { of: /^prices\./, bring: () => import('./priceOffers.ts') },
  { of: /^water\./, bring: () => import('./waterOffers.ts') },
  { of: /^tools\./, bring: () => import('./toolOffers.ts') },
  { of: /^earlier\./, bring: () => import('./earlierOffers.ts') },
  { of: /^visit\./, bring: () => import('./visitOffers.ts') },
];
/** What works out the offers of these forms. */
export function fetchParts(forms: readonly Pick<Calculator, 'inputs'>[]): Promise<readonly OfferPart[]> {
  const keys = forms.flatMap(offerKeys);
  return Promise.all(parts.filter(({ of }) => keys.some((key) => of.test(key))).map(async ({ bring }) => (await bring()).part));
}
/** What fills one form with them. */
export async function fetchFiller({ inputs }: Pick<Calculator, 'inputs'>): Promise<FillTexts> {
  const keys = offerKeys({ inputs });
  const [move, ahead, stack] = await Promise.all([
    movesWithToday(inputs) ? import('../../../calculators/kit/occurs.ts').then(({ exampleOn }) => exampleOn) : undefined,
    Object.values(inputs).some(isSinceTurnIn) ? import('./lookAhead.ts') : undefined,
    keys.includes('hay.onHand') ? import('./withoutStack.ts') : undefined,
  ]);
  return filler(move, { ahead, stack });
}
