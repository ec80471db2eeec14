import type { ValuesOf } from '../../kit/inputs.ts';
import type { Between, SideNamed } from '../../kit/shown.ts';
import { dripHoles, dripRate, jarRateInPerHr, minutesOfRain } from '../../math/demonstration/dripRate.ts';
import { jarShares } from '../../math/demonstration/jarShares.ts';
import { millilitersPerCubicInch, trayDepthIn, trayWater } from '../../math/demonstration/trayWater.ts';
import { trayWeightLb } from '../../math/demonstration/trayWeightLb.ts';
import { cubicInchesPerGallon } from '../../math/water/waterVolume.ts';
import type { inputs } from './inputs.ts';

type Asked = ValuesOf<typeof inputs>;

const gallonMl = cubicInchesPerGallon * millilitersPerCubicInch;
const tablespoonMl = gallonMl / 256;
/** Jars are read by eye: a little more than was poured is reading error. The same share that `jarShares` takes. */
const readingErrorShare = 0.02;
/** Trays that differ by less than this share of the water are alike. Common practice. */
const alikePercent = 10;
/** Depths whose water and time stand in the table. */
const otherRainsIn = [0.25, 0.5, 1, 1.5, 2, 3] as const;

const timedMlOf = ({ headFrom, jar, otherMl }: Asked): number => {
  if (headFrom === 'one-hole') return tablespoonMl;
  return jar === 'pint' ? gallonMl / 8 : jar === 'quart' ? gallonMl / 4 : otherMl;
};
function headOf(asked: Asked) {
  const tray = { lengthIn: asked.lengthIn, widthIn: asked.widthIn };
  const timedMl = timedMlOf(asked);
  const isBuilt = asked.headFrom === 'jar';
  const timedInPerHr = jarRateInPerHr(timedMl, isBuilt ? asked.fillS : asked.spoonS, tray);
  const holeInPerHr = isBuilt ? timedInPerHr / asked.holesCount : timedInPerHr;
  const needHolesCount = dripHoles(asked.wantedInPerHr, tray, dripRate(holeInPerHr, tray));
  return { timedMl, timedInPerHr, holeInPerHr, needHolesCount, rateInPerHr: isBuilt ? timedInPerHr : needHolesCount * holeInPerHr };
}
const caughtOf = ({ jars, ran, runoffMl, throughMl }: Asked) =>
  jars === 'read' ? { runMl: ran ? runoffMl : 0, downMl: throughMl } : { runMl: 0, downMl: 0 };

/** What is wrong with the head or the readings, if anything. */
export function faultOf(asked: Asked): 'none' | 'hardly-rains' | 'floods' | 'too-many-holes' | 'too-steep' | 'more-than-poured' {
  const { rateInPerHr, needHolesCount } = headOf(asked);
  if (asked.riseIn > asked.lengthIn / 2) return 'too-steep';
  if (rateInPerHr < 0.1) return 'hardly-rains';
  if (rateInPerHr > 100) return 'floods';
  if (needHolesCount > 5000) return 'too-many-holes';
  const { runMl, downMl } = caughtOf(asked);
  return runMl + downMl > (1 + readingErrorShare) * trayWater(asked.lengthIn, asked.widthIn, asked.rainIn).milliliters ? 'more-than-poured' : 'none';
}

export function compute(asked: Asked) {
  const { lengthIn, widthIn, soilIn, riseIn, alike, rainIn, wantedInPerHr, cover, jars, ran, firstRunS } = asked;
  const water = trayWater(lengthIn, widthIn, rainIn);
  const head = headOf(asked);
  const { runMl, downMl } = caughtOf(asked);
  const isRead = jars === 'read';
  const { runoffPercent, throughPercent, heldPercent } = isRead
    ? jarShares(water.milliliters, runMl, downMl)
    : { runoffPercent: 0, throughPercent: 0, heldPercent: 0 };
  const heldMl = isRead ? water.milliliters - runMl - downMl : 0;
  const { rateInPerHr } = head;
  return {
    pourQt: water.quarts,
    pourGal: water.gallons,
    pourMl: water.milliliters,
    ...head,
    holesExactCount: wantedInPerHr / head.holeInPerHr,
    holeGapIn: Math.sqrt((lengthIn * widthIn) / head.needHolesCount),
    rainMin: minutesOfRain(rainIn, rateInPerHr),
    otherRains: otherRainsIn.map((fallIn) => ({
      fallIn,
      fallQt: trayWater(lengthIn, widthIn, fallIn).quarts,
      fallMin: minutesOfRain(fallIn, rateInPerHr),
    })),
    slopePercent: (100 * riseIn) / lengthIn,
    trayLb: trayWeightLb(lengthIn, widthIn, soilIn),
    shouldRun: cover,
    shouldSoak: cover,
    runMl,
    downMl,
    heldMl,
    inSoilMl: Math.max(0, heldMl),
    runoffPercent,
    throughPercent,
    heldPercent,
    runoffIn: trayDepthIn(runMl, lengthIn, widthIn),
    firstRunIn: isRead && ran ? Math.min(rainIn, (rateInPerHr * firstRunS) / 3600) : 0,
    tells: isRead ? (alike ? ('ranks' as const) : ('unlike' as const)) : ('not-poured' as const),
  };
}

type Side = SideNamed<'tells' | 'runoffPercent'>;
/** What two trays tell beside each other: trays rank, and close ones do not even that. */
export function runoffGap(here: Side, there: Side): Between | undefined {
  const tells = [here.word('tells'), there.word('tells')];
  if (tells.includes('not-poured')) return undefined;
  if (tells.includes('unlike')) return { instead: 'Can’t be compared', because: 'the trays were not set up alike' };
  const apart = Math.abs(there.number('runoffPercent') - here.number('runoffPercent'));
  return apart < alikePercent
    ? { instead: 'Alike', because: 'what ran off differs by under a tenth of the water' }
    : { unbounded: 'one pair of trays ranks, and measures nothing' };
}
