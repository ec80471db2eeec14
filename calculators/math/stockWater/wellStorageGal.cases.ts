import { checkList } from '../checks.ts';
import { gallonsPerCubicFoot, litersPerCubicFoot } from '../water/waterVolume.ts';
import { deliveredGal } from './deliveredGal.ts';
import { drawdownFt, specificCapacityGpmPerFt, wellStorageGal } from './wellStorageGal.ts';

const book = { source: 'gw-project-domestic-wells-2022', where: 'solution of exercise 1', seen: 'print' } as const;
const glossary = { source: 'metaglossary-specific-capacity', where: 'example', seen: 'print' } as const;
/** A well of 50 m and 152 mm, water 5 m down, the lowest 5 m out of the pump's reach: 40 m of water, liters. */
const standingL = () => (wellStorageGal(152 / 25.4, 40 / 0.3048) / gallonsPerCubicFoot) * litersPerCubicFoot;

export default checkList('wellStorageGal', [
  { what: '152 mm well with 40 m of water, liters', ours: standingL, printed: '726', ...book },
  // Liters stand for gallons in the flow: the sum is the same.
  { what: 'the same with two hours of 2 liters a minute, liters', ours: () => standingL() + deliveredGal(2, 2), printed: '966', ...book },
  {
    what: '200 gallons a minute with 40 ft of drawdown, gallons a minute for each foot',
    ours: () => specificCapacityGpmPerFt(200, 40),
    printed: '5',
    source: 'se-hydrogeology-specific-capacity',
    where: 'figure and text',
    seen: 'print',
  },
  {
    what: '20 gallons a minute with 40 ft, gallons a minute for each foot',
    ours: () => specificCapacityGpmPerFt(20, 40),
    printed: '0.5',
    ...glossary,
  },
  { what: '30 gallons a minute from that well, drawdown, ft', ours: () => drawdownFt(30, 0.5), printed: '60', ...glossary },
]);
