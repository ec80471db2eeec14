import { checkList } from '../checks.ts';
import { trayWater } from './trayWater.ts';

const usgs = { source: 'usgs-storm-water', where: 'second and third paragraphs', seen: 'print' } as const;
const garden = { source: 'garden-inch-a-week', where: 'example of 350 square feet', seen: 'print' } as const;
/** An acre as a tray: 43,560 square feet, 660 by 66 ft. */
const acre = (share: number, rainIn: number) => trayWater(660 * 12 * share, 66 * 12, rainIn).gallons;

export default checkList('trayWater', [
  { what: 'one inch on half an acre, gallons', ours: () => acre(0.5, 1), printed: '13,577', ...usgs },
  { what: 'one inch on an acre, gallons', ours: () => acre(1, 1), printed: '27,154', ...usgs },
  { what: 'a tenth of an inch on a roof of 20 by 30 ft, gallons', ours: () => trayWater(240, 360, 0.1).gallons, printed: '37', ...usgs },
  {
    what: 'one inch on an acre, gallons',
    ours: () => acre(1, 1),
    printed: '27154.29',
    source: 'math-forum-rainfall-1995',
    where: 'answer of 12 June 1995',
    seen: 'print',
  },
  {
    what: 'one inch on a square foot, gallons',
    ours: () => trayWater(12, 12, 1).gallons,
    printed: '0.6',
    source: 'hodgin-2013',
    where: 'rainwater harvesting',
    seen: 'print',
  },
  {
    what: 'one inch on a square foot, gallons',
    ours: () => trayWater(12, 12, 1).gallons,
    printed: '0.62',
    source: 'purdue-inch-of-water',
    where: 'before example 1',
    seen: 'print',
  },
  { what: 'one inch on 50 square feet, gallons', ours: () => trayWater(120, 60, 1).gallons, printed: '31.17', ...garden },
  { what: 'one inch on 100 square feet, gallons', ours: () => trayWater(120, 120, 1).gallons, printed: '62.34', ...garden },
  { what: 'one inch on 200 square feet, gallons', ours: () => trayWater(240, 120, 1).gallons, printed: '124.68', ...garden },
]);
