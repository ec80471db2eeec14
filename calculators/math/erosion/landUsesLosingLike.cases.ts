import { checkList } from '../checks.ts';
import { landUsesLosingLike } from './landUsesLosingLike.ts';
import { pastureCoverFactor } from './pastureCoverFactor.ts';

const amongRowCrops = (coverFactor: number): string => (landUsesLosingLike(coverFactor).includes('row-crops') ? 'row crops' : 'not row crops');
const grass = (coverPercent: number): number =>
  pastureCoverFactor({ coverPercent, coverKind: 'grass', canopyPercent: 0, canopyHeight: 'short-brush' });
const practice = { source: 'scs-agronomy-note-50-1982', seen: 'practice' } as const;

export default checkList('landUsesLosingLike', [
  {
    what: 'a pasture with a fifth of its ground covered loses soil like a ploughed field',
    ours: () => amongRowCrops(grass(20)),
    printed: 'row crops',
    where: 'common practice: a badly overgrazed pasture loses soil like ploughed ground',
    ...practice,
  },
  {
    what: 'a bare pasture loses soil like a ploughed field',
    ours: () => amongRowCrops(grass(0)),
    printed: 'row crops',
    where: 'common practice: a badly overgrazed pasture loses soil like ploughed ground',
    ...practice,
  },
  {
    what: 'a pasture with 80 % of its ground covered does not',
    ours: () => amongRowCrops(grass(80)),
    printed: 'not row crops',
    where: 'common practice: well-kept sod holds its soil',
    ...practice,
  },
  {
    what: 'corn in conventional tillage, .49',
    ours: () => amongRowCrops(0.49),
    printed: 'row crops',
    source: 'weiner-matthews-2003',
    where: 'example 11.1 against table 11-3',
    seen: 'transcription',
  },
]);
