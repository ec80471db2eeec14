import { checkList } from '../checks.ts';
import { slidPriceUsdPerCwt } from './slidPriceUsdPerCwt.ts';

const slide = { source: 'aces-price-slide', where: 'Table 1', seen: 'transcription' } as const;
const light = () => slidPriceUsdPerCwt({ basePriceUsdPerCwt: 75, baseWeightLb: 735, weightLb: 686, slideUsdPerCwt: 5 });

export default checkList('slidPriceUsdPerCwt', [
  { what: 'bid of $75 for 735 lb, pay weight 686 lb, slide $5, dollars per hundred lb', ours: light, printed: '77.45', ...slide },
  { what: 'the same, how far the bid is moved, dollars per hundred lb', ours: () => light() - 75, printed: '2.45', ...slide },
]);
