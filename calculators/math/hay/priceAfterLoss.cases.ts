import { checkList } from '../checks.ts';
import { priceAfterLoss } from './priceAfterLoss.ts';

export default checkList('priceAfterLoss', [
  {
    what: 'Bale of $60, 20 % lost, as printed by multiplying',
    ours: () => priceAfterLoss({ price: 60, lossPercent: 20, convention: 'multiply' }),
    printed: '72',
    source: 'missouri-price-loss',
    where: 'Example of a $60 bale',
    seen: 'print',
  },
  {
    what: '$95 a ton, 30 % lost, as printed by multiplying',
    ours: () => priceAfterLoss({ price: 95, lossPercent: 30, convention: 'multiply' }),
    printed: '124',
    source: 'undersander-storage',
    where: 'Price with loss',
    seen: 'print',
    differs: { by: '0.6', because: 'the article rounds 123.50 up' },
  },
  {
    what: '$95 a ton, 70 % lost, as printed by multiplying',
    ours: () => priceAfterLoss({ price: 95, lossPercent: 70, convention: 'multiply' }),
    printed: '161.50',
    source: 'undersander-storage',
    where: 'Price with loss',
    seen: 'print',
  },
  {
    what: '$80 a ton, 20 % lost: value of the lost hay',
    ours: () => priceAfterLoss({ price: 80, lossPercent: 20, convention: 'multiply' }) - 80,
    printed: '16',
    source: 'huhnke-bae1716',
    where: 'Table 1, dollar value of hay lost',
    seen: 'transcription',
  },
]);
