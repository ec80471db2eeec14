import type { ValuesOf } from '../../kit/inputs.ts';
import { availableWaterInPerFt } from '../../math/soil/availableWaterInPerFt.ts';
import { daysToGrowthShare, daysToStress } from '../../math/soil/daysToStress.ts';
import { rootZoneWater } from '../../math/soil/rootZoneWater.ts';
import { waterRetention } from '../../math/soil/waterRetention.ts';
import { depletionFraction } from '../../math/soilWater/depletionFraction.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { pastureWaterUse } from '../../tables/pastureWaterUse.ts';
import { soilFeel } from '../../tables/soilFeel.ts';
import { textureCenters } from '../../tables/textureCenters.ts';
import { dailyUse, type inputs, millimetersPerInch } from './inputs.ts';

export type Asked = ValuesOf<typeof inputs>;
type Layer = Asked['layers'][number];
type End = 'low' | 'middle' | 'high';

/** A sheet of 1998: each percent of organic matter adds 1.5 percent of available water. */
const sheetRatioPerPercent = 0.015;
const swingIn = 6;

/** A foot of the top layer's texture at both contents of organic matter, by the equation, inches. */
function equationIn({ layers, topOrganicPercent, organicPercent }: Asked): { readonly organicNowIn: number; readonly organicThenIn: number } {
  const center = textureCenters.centers[layers[0]?.texture ?? 'loam'];
  const held = (percent: number): number => waterRetention({ ...center, organicMatterPercent: percent }).availableInPerFt;
  return { organicNowIn: held(organicPercent), organicThenIn: held(topOrganicPercent) };
}
/** What another content of organic matter does to a foot of the top layer, inches. */
function organicIn(asked: Asked, count: Asked['organicCount']): number {
  if (count === 'by-sheet') return 12 * sheetRatioPerPercent * (asked.organicPercent - asked.topOrganicPercent);
  const { organicNowIn, organicThenIn } = equationIn(asked);
  return organicNowIn - organicThenIn;
}
function listedInPerFt({ heldFrom, surveyRatio, texture }: Layer, end: End): number {
  if (heldFrom === 'survey') return 12 * surveyRatio;
  const { lowInPerFt, middleInPerFt, highInPerFt } = availableWaterInPerFt(texture);
  return { low: lowInPerFt, middle: middleInPerFt, high: highInPerFt }[end];
}
function filledAt({ feel, filledPercent }: Layer, end: End): number {
  if (feel === 'measured') return filledPercent;
  const { low, high } = soilFeel.filledPercent[feel];
  return { low, middle: (low + high) / 2, high }[end];
}
export const soilDepthIn = ({ layers }: Pick<Asked, 'layers'>): number => sumOf(layers, ({ thicknessIn }) => thicknessIn);
/** The top layer after all, inches in a foot: with the poorest of the published figures and either way to count organic matter. */
export const leastTopFootIn = (asked: Asked): number => {
  const [top] = asked.layers;
  return top ? listedInPerFt(top, 'low') + Math.min(organicIn(asked, 'by-sheet'), organicIn(asked, 'by-equation')) : 0;
};

function layersAt(asked: Asked, end: End, count: Asked['organicCount'], rootsIn: number) {
  const organic = organicIn(asked, count);
  let topIn = 0;
  return asked.layers.map((layer, index) => {
    const listedIn = listedInPerFt(layer, end);
    const addedIn = index === 0 ? organic : 0;
    const soil = {
      thicknessIn: layer.thicknessIn,
      availableInPerFt: listedIn + addedIn,
      stoneVolumePercent: layer.stonesPercent,
      filledPercent: filledAt(layer, end),
    };
    const reachedIn = Math.max(0, Math.min(layer.thicknessIn, rootsIn - topIn));
    const water = reachedIn > 0 ? rootZoneWater([soil], reachedIn) : { holdsIn: 0, hasIn: 0 };
    const line = {
      topIn,
      thicknessIn: layer.thicknessIn,
      listedIn,
      addedIn,
      footIn: soil.availableInPerFt,
      stonesPercent: layer.stonesPercent,
      reachedIn,
      layerHoldsIn: water.holdsIn,
      filledPercent: soil.filledPercent,
      layerHasIn: water.hasIn,
      soil,
    };
    topIn += layer.thicknessIn;
    return line;
  });
}

/** What the root zone holds when full, with the poorest of the published figures, inches. */
export const heldInRootsIn = (asked: Asked): number =>
  sumOf(layersAt(asked, 'low', asked.organicCount, asked.rootsMostIn), ({ layerHoldsIn }) => layerHoldsIn);

export function compute(asked: Asked) {
  const { rootsMostIn, rootsDeepestIn, growthPercent, rainIn, lostPercent, organicCount } = asked;
  const use = dailyUse(asked);
  const easyShare =
    asked.easyFrom === 'own' ? asked.easyPercent / 100 : depletionFraction(pastureWaterUse.depletionFraction, use.dayUseIn * millimetersPerInch);
  const daysFrom = (holdsIn: number, missingIn: number) => {
    const zone = { totalAvailableIn: holdsIn, missingIn, easyShare, useInPerDay: use.dayUseIn };
    return { stressDays: daysToStress(zone), growthDays: daysToGrowthShare({ ...zone, growthShare: growthPercent / 100 }) };
  };
  const zoneAt = (end: End, rootsIn: number, count = organicCount) => {
    const { holdsIn, hasIn } = rootZoneWater(
      layersAt(asked, end, count, rootsIn).map(({ soil }) => soil),
      rootsIn,
    );
    // Adding up may leave a last digit less than nothing.
    const missingIn = Math.min(holdsIn, Math.max(0, holdsIn - hasIn));
    return { holdsIn, hasIn, missingIn, ...daysFrom(holdsIn, missingIn) };
  };
  const depthIn = soilDepthIn(asked);
  const zone = zoneAt('middle', rootsMostIn);
  const [low, high] = [zoneAt('low', rootsMostIn), zoneAt('high', rootsMostIn)];
  const deeperRootsIn = Math.min(depthIn, rootsMostIn + swingIn);
  const deepestRootsIn = Math.min(depthIn, rootsDeepestIn);
  const [deeper, deepest] = [zoneAt('middle', deeperRootsIn), zoneAt('middle', deepestRootsIn)];

  const { holdsIn, hasIn, missingIn } = zone;
  const easyIn = easyShare * holdsIn;
  const easyLeftIn = Math.max(0, easyIn - missingIn);
  const soakedIn = rainIn * (1 - lostPercent / 100);
  const keptIn = Math.min(soakedIn, missingIn);
  const wetMissingIn = missingIn - keptIn;
  const wet = daysFrom(holdsIn, wetMissingIn);
  const shareOf = (missing: number): number => 100 * Math.min(1, (holdsIn - missing) / (holdsIn - easyIn));
  const standing: 'growing' | 'short' = missingIn >= easyIn ? 'short' : 'growing';
  return {
    lines: layersAt(asked, 'middle', organicCount, rootsMostIn).map(({ soil: _, ...line }) => line),
    ...equationIn(asked),
    topAddedIn: organicIn(asked, organicCount),
    ...use,
    takenPercent: 100 * easyShare,
    holdsIn,
    hasIn,
    missingIn,
    fullPercent: (100 * hasIn) / holdsIn,
    easyIn,
    easyLeftIn,
    slowLeftIn: hasIn - easyLeftIn,
    standing,
    shareTodayPercent: shareOf(missingIn),
    slowDays: (holdsIn - easyIn) / use.dayUseIn,
    stressDays: zone.stressDays,
    lowStressDays: low.stressDays,
    highStressDays: high.stressDays,
    growthDays: zone.growthDays,
    lowGrowthDays: low.growthDays,
    highGrowthDays: high.growthDays,
    lowHasIn: low.hasIn,
    highHasIn: high.hasIn,
    lowMissingIn: Math.min(low.missingIn, high.missingIn),
    highMissingIn: Math.max(low.missingIn, high.missingIn),
    soakedIn,
    keptIn,
    drainedIn: soakedIn - keptIn,
    wetMissingIn,
    wetSharePercent: shareOf(wetMissingIn),
    wetStressDays: wet.stressDays,
    wetGrowthDays: wet.growthDays,
    otherHoldsIn: zoneAt('middle', rootsMostIn, organicCount === 'by-sheet' ? 'by-equation' : 'by-sheet').holdsIn,
    deeperRootsIn,
    deeperStressDays: deeper.stressDays,
    deeperGrowthDays: deeper.growthDays,
    deepestRootsIn,
    deepestGrowthDays: deepest.growthDays,
  };
}
