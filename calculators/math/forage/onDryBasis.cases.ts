import { checkList } from '../checks.ts';
import { onDryBasis } from './onDryBasis.ts';

export default checkList('onDryBasis', [
  {
    what: 'A ton of cubes at 90 % dry matter',
    ours: () => onDryBasis({ weightLb: 2000, fromDryMatterPercent: 90, toDryMatterPercent: 100 }),
    printed: '1,800',
    source: 'unl-buying-supplements-2012',
    where: 'Pounds of actual feed',
    seen: 'print',
  },
  {
    what: 'A ton of silage at 40 % dry matter',
    ours: () => onDryBasis({ weightLb: 2000, fromDryMatterPercent: 40, toDryMatterPercent: 100 }),
    printed: '800',
    source: 'foster-sp-09-19',
    where: 'Moisture and dry matter, figure 1',
    seen: 'transcription',
  },
  {
    what: 'A ton of hay at 82 % dry matter',
    ours: () => onDryBasis({ weightLb: 2000, fromDryMatterPercent: 82, toDryMatterPercent: 100 }),
    printed: '1,640',
    source: 'penn-state-feeds-1993',
    where: 'Beef Briefs',
    seen: 'print',
  },
  {
    what: 'Dry matter in a 1,000-lb bale at 10 % moisture more than at 15 %',
    ours: () =>
      onDryBasis({ weightLb: 1000, fromDryMatterPercent: 90, toDryMatterPercent: 100 }) -
      onDryBasis({ weightLb: 1000, fromDryMatterPercent: 85, toDryMatterPercent: 100 }),
    printed: '50',
    source: 'gates-hay-2019',
    where: 'Hay inventory',
    seen: 'print',
  },
]);
