import { checkList } from '../checks.ts';
import { gallonsPerCubicFoot, litersPerCubicFoot, squareFeetPerAcre } from '../water/waterVolume.ts';
import { pondStorageGal } from './pondStorageGal.ts';

const meterFt = 1 / 0.3048;
/** Megaliters in a dam measured in meters. */
const megaliters = (lengthM: number, widthM: number, depthM: number): number =>
  ((pondStorageGal((lengthM * widthM * meterFt ** 2) / squareFeetPerAcre, depthM * meterFt) / gallonsPerCubicFoot) * litersPerCubicFoot) / 1e6;

export default checkList('pondStorageGal', [
  {
    what: 'dam of 60 by 40 m, 5 m deep, thousands of cubic meters',
    ours: () => megaliters(60, 40, 5),
    printed: '4.8',
    source: 'dpird-dam-volume',
    where: 'example; inputs and factor read, the product worked out apart',
    seen: 'computed',
  },
  {
    what: 'rectangular dam of 33 by 22 m, 3 m deep, megaliters',
    ours: () => megaliters(33, 22, 3),
    printed: '1',
    source: 'sturmfels-dams',
    where: 'approximately 1 million litres',
    seen: 'print',
  },
  {
    what: 'one acre, one foot deep all over, acre-feet: 2.5 times what the rule gives for its greatest depth',
    ours: () => pondStorageGal(1, 1) * 2.5,
    printed: '325,851',
    source: 'sizes-acre-foot',
    where: 'acre-foot',
    seen: 'print',
  },
]);
