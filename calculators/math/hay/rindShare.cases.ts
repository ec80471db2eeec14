import { checkList } from '../checks.ts';
import { rindShare } from './rindShare.ts';

export default checkList('rindShare', [
  {
    what: 'Outer 6 in of a bale 60 in across, sides only',
    ours: () => 100 * rindShare({ diameterIn: 60, rindIn: 6 }),
    printed: '36.0',
    source: 'agproud-35488',
    where: 'Volume of a cylinder, worked out apart',
    seen: 'computed',
  },
  {
    what: 'Outer 4 in of a 5-ft bale, ends too: percent',
    ours: () => 100 * rindShare({ diameterIn: 60, rindIn: 4, widthIn: 60 }),
    printed: '33',
    source: 'agproud-35488',
    where: 'Weathering losses',
    seen: 'print',
    differs: { by: '2', because: 'the article says "approximately one-third"' },
  },
  {
    what: 'Outer 6 in of a 6-ft bale: percent',
    ours: () => 100 * rindShare({ diameterIn: 72, rindIn: 6 }),
    printed: '33',
    source: 'agproud-35488',
    where: 'Weathering losses',
    seen: 'print',
    differs: { by: '3', because: 'the article says "one-third"' },
  },
  {
    what: 'Outer 9 in of a bale 66 in across: percent',
    ours: () => 100 * rindShare({ diameterIn: 66, rindIn: 9 }),
    printed: '44.9',
    source: 'missouri-bale-rind',
    where: 'Outer layers of a 5.5-ft bale',
    seen: 'print',
    differs: { by: '2.3', because: 'the cylinder gives 47.1; the print does not show its sum' },
  },
]);
