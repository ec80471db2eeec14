import { checkList } from '../checks.ts';
import { gallonsPerCubicFoot, litresPerCubicFoot, squareFeetPerAcre } from '../water/waterVolume.ts';
import { pondStorageGal } from './pondStorageGal.ts';

const metreFt = 1 / 0.3048;
/** Megalitres in a dam measured in metres. */
const megalitres = (lengthM: number, widthM: number, depthM: number): number =>
  ((pondStorageGal((lengthM * widthM * metreFt ** 2) / squareFeetPerAcre, depthM * metreFt) / gallonsPerCubicFoot) * litresPerCubicFoot) / 1e6;

export default checkList('pondStorageGal', [
  {
    what: 'dam of 60 by 40 m, 5 m deep, thousands of cubic metres',
    ours: () => megalitres(60, 40, 5),
    printed: '4.8',
    source: 'dpird-dam-volume',
    where: 'example; inputs and factor read, the product worked out apart',
    seen: 'computed',
  },
  {
    what: 'rectangular dam of 33 by 22 m, 3 m deep, megalitres',
    ours: () => megalitres(33, 22, 3),
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
