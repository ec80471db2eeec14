import type { ValuesOf } from '../../kit/inputs.ts';
import { herdDemandGal } from '../../math/stockWater/herdDemandGal.ts';
import { planningIntakeGal } from '../../math/stockWater/planningIntakeGal.ts';
import { roundTankGal, tankGal as squareTankGal } from '../../math/stockWater/tankGal.ts';
import { rectangleAc } from '../../math/water/rectangleAc.ts';
import { inchAcresToCubicFeet, inchAcresToGallons, inchAcresToTons } from '../../math/water/waterVolume.ts';
import type { inputs } from './inputs.ts';

type Asked = ValuesOf<typeof inputs>;
/** Rains whose gallons stand in the table and in the plot. */
const otherRainsIn = [0.1, 0.25, 0.5, 1, 2, 3, 4] as const;

function areaOf(asked: Asked): number {
  switch (asked.surface) {
    case 'acres':
      return asked.areaAc;
    case 'sides':
      return rectangleAc(asked.lengthFt, asked.widthFt);
    case 'paces':
      return rectangleAc(asked.longPacesCount * asked.paceFt, asked.shortPacesCount * asked.paceFt);
    case 'roof':
      return rectangleAc(asked.roofLengthFt, asked.roofWidthFt);
  }
}
function tankOf({ tankFrom, tankGal, tankAcrossFt, tankLengthFt, tankWidthFt, tankDepthFt }: Asked): number {
  if (tankFrom === 'known') return tankGal;
  return tankFrom === 'round' ? roundTankGal(tankAcrossFt, tankDepthFt) : squareTankGal(tankLengthFt, tankWidthFt, tankDepthFt);
}
/** The published lists disagree by a third: the most is planned with, the least shows how far they part. */
function drinks({ kind, ownGalPerDay }: Asked['stock'][number], airF: number): { readonly most: number; readonly least: number } {
  if (kind === 'other') return { most: ownGalPerDay, least: ownGalPerDay };
  const { galPerDay, bySource } = planningIntakeGal(kind, airF);
  return { most: galPerDay, least: Math.min(...bySource.map((each) => each.galPerDay)) };
}
const demandOf = (lines: readonly { readonly countHead: number; readonly headGalPerDay: number }[]): number =>
  herdDemandGal(lines.map(({ countHead, headGalPerDay }) => ({ head: countHead, galPerHeadDay: headGalPerDay, days: 1 }))).perDayGal;

export function compute(asked: Asked) {
  const depthIn = asked.rainFrom === 'gauge' ? asked.rainIn : (asked.firstCanIn + asked.secondCanIn) / 2;
  const surfaceAc = areaOf(asked);
  const usablePercent = asked.surface === 'roof' ? asked.caughtPercent : 100;
  const usableGal = (rainIn: number): number => inchAcresToGallons(rainIn * surfaceAc) * (usablePercent / 100);
  const waterGal = inchAcresToGallons(depthIn * surfaceAc);
  const caughtGal = usableGal(depthIn);
  const fullTankGal = tankOf(asked);
  const drinkers = asked.stock.map((row) => {
    const { most, least } = drinks(row, asked.airF);
    return {
      countHead: row.countHead,
      headGalPerDay: most,
      allGalPerDay: demandOf([{ countHead: row.countHead, headGalPerDay: most }]),
      leastHeadGalPerDay: least,
      leastAllGalPerDay: demandOf([{ countHead: row.countHead, headGalPerDay: least }]),
    };
  });
  const herdGalPerDay = demandOf(drinkers);
  const leastHerdGalPerDay = demandOf(drinkers.map(({ countHead, leastHeadGalPerDay }) => ({ countHead, headGalPerDay: leastHeadGalPerDay })));
  const [tankCount, stockDays] = [caughtGal / fullTankGal, caughtGal / herdGalPerDay];
  const highStockDays = caughtGal / leastHerdGalPerDay;
  return {
    depthIn,
    surfaceAc,
    waterFt3: inchAcresToCubicFeet(depthIn * surfaceAc),
    waterGal,
    waterTon: inchAcresToTons(depthIn * surfaceAc),
    usablePercent,
    caughtGal,
    lostGal: waterGal - caughtGal,
    fullTankGal,
    tankCount,
    drinkers,
    herdGalPerDay,
    leastHerdGalPerDay,
    stockDays,
    highStockDays,
    otherRains: otherRainsIn.map((fallIn) => ({ fallIn, fallGal: usableGal(fallIn) })),
  };
}
