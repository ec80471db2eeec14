import { checkList, tableChecks } from '../checks.ts';
import { stonySoil } from './stonySoil.ts';
import { waterRetention } from './waterRetention.ts';

const loam = waterRetention({ sandPercent: 40, clayPercent: 20, organicMatterPercent: 2.5 });

export default checkList('stonySoil', [
  ...tableChecks({
    columns: ['share of volume', 'density, g/cm3', 'available water, in/in', 'share of conductivity'],
    text: `
      10 0.0567 1.501 0.1345 0.9174
      20 0.1190 1.577 0.1256 0.8315`,
    what: (percent, column) => `loam with ${percent} % stones by weight: ${column}`,
    ours: (percent, column) => {
      const { stoneVolumePercent, densityGPerCm3, availableShare, conductivityShare } = stonySoil(Number(percent), loam.densityGPerCm3);
      if (column === 'share of volume') return stoneVolumePercent / 100;
      if (column === 'density, g/cm3') return densityGPerCm3;
      return column === 'share of conductivity' ? conductivityShare : (availableShare * loam.availableInPerFt) / 12;
    },
    source: 'saxton-rawls-2006',
    where: 'equations 19 to 22, worked in another program',
    seen: 'computed',
  }),
]);
