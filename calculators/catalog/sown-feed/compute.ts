import type { ValuesOf } from '../../kit/inputs.ts';
import { costPerTonEaten } from '../../math/hay/costPerTonEaten.ts';
import { cropYieldTons } from '../../math/hay/cropYieldTons.ts';
import { sownFeedCostPerTon } from '../../math/hay/sownFeedCostPerTon.ts';
import { rootZoneWater } from '../../math/soil/rootZoneWater.ts';
import { daysByCrop, grazeHeightOf, hazardOf, heldInPerFt, type inputs, isWarmSeason } from './inputs.ts';

type Asked = ValuesOf<typeof inputs>;
/** Less than this is no crop: it would not pay to fence or cut. */
export const leastTonPerAc = 0.1;
const plotPoints = 8;
export type Fits = 'yes' | 'just' | 'early' | 'late' | 'cold';
/**
 * Within so many days after the usual first frost of a year earlier a crop has the winter before it. And oats and turnips sown longer than this
 * before the frost are not sown in late summer: turnips take up to 90 days (ball-extending-grazing), and the earliest published sowing of fall
 * oats, July 25 in Missouri (naumann-oats), lies some 85 days before a frost in the middle of October. Our own.
 */
export const seasonDays = 90;
/** Days and tons of oats and turnips are those of late summer. */
export const isTooEarly = ({ crop, leftDays }: { readonly crop: Asked['crop']; readonly leftDays: number }): boolean =>
  (crop === 'oats-fall' || crop === 'turnips') && leftDays > seasonDays;

/**
 * Days between the first use of a summer annual and frost under which its tons are not to be counted on: those of the table are a summer's regrowth. Iowa's
 * last good day to sow, July 15 (barnhart-replant), leaves some 80 days before a frost early in October, twice the 40 until the first use. Our own.
 */
export const regrowthDays = 40;
/** Foxtail millet is cut once. */
export const isShortSeason = ({ crop, growDays, leftDays }: Pick<Asked, 'crop' | 'growDays'> & { readonly leftDays: number }): boolean =>
  isWarmSeason(crop) && crop !== 'foxtail-millet' && leftDays >= growDays && leftDays - growDays < regrowthDays;

const storedOf = ({ storedFrom, knownStoredIn, texture, rootDepthIn, filledPercent }: Asked): number =>
  storedFrom === 'known'
    ? knownStoredIn
    : rootZoneWater([{ thicknessIn: rootDepthIn, availableInPerFt: heldInPerFt(texture), stoneVolumePercent: 0, filledPercent }], rootDepthIn).hasIn;

export function compute(asked: Asked) {
  const { crop, sowDay, growDays, waterPerTonIn, mostTonPerAc, usedPercent } = asked;
  const storedNowIn = storedOf(asked);
  const leftDays = asked.frostDay - sowDay;
  const timing: 'in-time' | 'late' | 'cold' = isWarmSeason(crop) && !asked.isSoilWarm ? 'cold' : leftDays < growDays ? 'late' : 'in-time';
  const lowWaterIn = storedNowIn + (asked.lowRainIn * usedPercent) / 100;
  const likelyWaterIn = storedNowIn + (asked.likelyRainIn * usedPercent) / 100;
  const yieldOf = (waterIn: number) => cropYieldTons({ waterIn, inchesPerTon: waterPerTonIn, mostTonsPerAc: mostTonPerAc });
  const lowTonPerAc = yieldOf(lowWaterIn);
  const likelyTonPerAc = yieldOf(likelyWaterIn);

  const acreCostUsd = asked.seedUsd + asked.sowingUsd + asked.feedUsd + asked.otherUsd;
  const cutUsdPerTon = asked.use === 'bale' ? asked.balingUsdPerTon : 0;
  const madePercent = 100 - 10 * asked.failCount;
  // The money for an acre is spent every time; tons, and the cost of cutting them, come only when it is made.
  const costOf = (tonPerAc: number, sharePercent: number): number => {
    const madeTonPerAc = (tonPerAc * sharePercent) / 100;
    return sownFeedCostPerTon({
      costPerAc: acreCostUsd + cutUsdPerTon * madeTonPerAc,
      yieldTonsPerAc: madeTonPerAc,
      eatenShare: asked.eatenPercent / 100,
    });
  };
  const hasLikely = likelyTonPerAc >= leastTonPerAc;
  const hasLow = lowTonPerAc >= leastTonPerAc;
  const sownUsdPerTon = hasLikely ? costOf(likelyTonPerAc, madePercent) : 0;
  const madeUsdPerTon = hasLikely ? costOf(likelyTonPerAc, 100) : 0;
  const dryUsdPerTon = hasLow ? costOf(lowTonPerAc, madePercent) : 0;
  const hayEatenUsdPerTon = costPerTonEaten({
    pricePerTon: asked.hayPriceUsdPerTon,
    moisturePercent: asked.hayMoisturePercent,
    storageLossPercent: asked.hayStoragePercent,
    feedingLossPercent: asked.hayFeedingPercent,
  });
  const worthUsdPerTon = (hayEatenUsdPerTon * asked.eatenPercent) / 100 - cutUsdPerTon;
  const evenTonPerAc = worthUsdPerTon > 0 ? (100 * acreCostUsd) / (madePercent * worthUsdPerTon) : 0;
  const canPay: 'yes' | 'no' = worthUsdPerTon > 0 && evenTonPerAc <= mostTonPerAc ? 'yes' : 'no';
  const verdict: 'late' | 'cold' | 'no-crop' | 'sow' | 'hay' | 'short-season' | 'depends' =
    timing !== 'in-time'
      ? timing
      : !hasLikely
        ? 'no-crop'
        : sownUsdPerTon > hayEatenUsdPerTon
          ? 'hay'
          : isShortSeason({ crop, growDays, leftDays })
            ? 'short-season'
            : hasLow && dryUsdPerTon <= hayEatenUsdPerTon
              ? 'sow'
              : 'depends';
  const fitsOf = (each: (typeof daysByCrop)[number]): Fits =>
    isWarmSeason(each.crop) && !asked.isSoilWarm
      ? 'cold'
      : isTooEarly({ crop: each.crop, leftDays })
        ? 'early'
        : leftDays < each.fewDays
          ? 'late'
          : leftDays < each.manyDays
            ? 'just'
            : 'yes';
  return {
    leftDays,
    timing,
    crops: daysByCrop.map((each) => ({ ...each, firstUseDay: sowDay + each.fewDays, fits: fitsOf(each) })),
    heldPerFtIn: heldInPerFt(asked.texture),
    storedNowIn,
    lowWaterIn,
    likelyWaterIn,
    lowTonPerAc,
    likelyTonPerAc,
    acreCostUsd,
    cutUsdPerTon,
    madePercent,
    sownUsdPerTon,
    madeUsdPerTon,
    failedUsdPerTon: sownUsdPerTon - madeUsdPerTon,
    dryUsdPerTon,
    hayEatenUsdPerTon,
    worthUsdPerTon,
    evenTonPerAc,
    canPay,
    needStoredIn: Math.max(0, evenTonPerAc * waterPerTonIn - (asked.likelyRainIn * usedPercent) / 100),
    verdict,
    hazard: hazardOf(crop),
    grazeHeightIn: grazeHeightOf(crop),
    spentUsd: acreCostUsd * asked.areaAc,
    feedTon: (asked.areaAc * likelyTonPerAc * asked.eatenPercent) / 100,
    byYield: Array.from({ length: plotPoints }, (_, at) => {
      const yieldTonPerAc = (mostTonPerAc * (at + 1)) / plotPoints;
      return { yieldTonPerAc, atYieldUsdPerTon: costOf(yieldTonPerAc, madePercent), hayUsdPerTon: hayEatenUsdPerTon };
    }),
  };
}
