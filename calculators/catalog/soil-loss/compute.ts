import type { ValuesOf } from '../../kit/inputs.ts';
import { annualErosivity } from '../../math/erosion/annualErosivity.ts';
import { type ErodibilityList, erodibilityByTexture } from '../../math/erosion/erodibilityByTexture.ts';
import { landUsesLosingLike } from '../../math/erosion/landUsesLosingLike.ts';
import { pastureCoverFactor } from '../../math/erosion/pastureCoverFactor.ts';
import { lengthExponent, type SlopeMethod, slopeFactor, steepness } from '../../math/erosion/slopeFactor.ts';
import { soilDepthIn, yearsPerInch } from '../../math/erosion/soilDepthIn.ts';
import { erosivityUs } from '../../math/erosion/soilLossMetric.ts';
import { soilLossBand, soilLossTonPerAc } from '../../math/erosion/soilLossTonPerAc.ts';
import { toleranceTonPerAc } from '../../math/erosion/toleranceTonPerAc.ts';
import { cropCover } from '../../tables/cropCover.ts';
import type { Texture } from '../../tables/soilGroups.ts';
import type { inputs } from './inputs.ts';

type Asked = ValuesOf<typeof inputs>;

export const hasErodibility = (texture: Texture, list: ErodibilityList): boolean => erodibilityByTexture(texture, 2, list) !== undefined;

const middle = ({ low, high }: { readonly low: number; readonly high: number }): number => (low + high) / 2;
/** Yearly mean of the rotation; where a list gives a span for a crop, its middle. */
const rotationCover: Readonly<Record<Exclude<Asked['ploughed'], 'own'>, number>> = {
  'corn-soybeans': (middle(cropCover['corn-residue-left-spring-plow']) + middle(cropCover['soybeans-spring-plow'])) / 2,
  // The handbook's own example of a rotation, wischmeier-smith-1978, Fountain County, Indiana (from memory).
  'wheat-meadow-corn': 0.119,
  'wheat-fallow': middle(cropCover['wheat-fallow-fall-plow']),
  'wheat-stubble': middle(cropCover['wheat-fallow-stubble-mulch']),
  'bare-fallow': middle(cropCover['tilled-fallow']),
};
const rootingDepthIn = { 'to-10': 10, 'to-20': 20, 'to-40': 40, 'to-60': 60, deeper: Number.POSITIVE_INFINITY } as const;

const slopeParts = (lengthFt: number, slopePercent: number, method: SlopeMethod) => {
  const exponent = lengthExponent(slopePercent, method);
  return {
    exponent,
    rills: exponent / (1 - exponent),
    steepness: steepness(slopePercent, method),
    factor: slopeFactor(lengthFt, slopePercent, method),
  };
};
const sizeOf = (tonPerAc: number): 'under-one' | 'whole' => (tonPerAc < 1 ? 'under-one' : 'whole');
/** With a factor of two either way, a loss is over or within only when all of its band is. */
function standingOf(tonPerAc: number, toleratedTonPerAc: number): 'within' | 'unsure' | 'over' {
  const { lowTonPerAc, highTonPerAc } = soilLossBand(tonPerAc);
  if (highTonPerAc <= toleratedTonPerAc) return 'within';
  return lowTonPerAc > toleratedTonPerAc ? 'over' : 'unsure';
}

export function compute(asked: Asked) {
  const yearRainMm = asked.yearRainIn * 25.4;
  const yearFactorRatio = annualErosivity(yearRainMm);
  const rainErosivity = asked.rainFrom === 'known' ? asked.rainFactorRatio : erosivityUs(yearFactorRatio);
  // What the list lacks is refused before it comes here.
  const soilErodibility =
    asked.soilFrom === 'known' ? asked.soilFactorRatio : erodibilityByTexture(asked.texture, asked.organicMatterPercent, asked.erodibilityList);
  if (soilErodibility === undefined) throw new RangeError(`${asked.erodibilityList} has no single figure for ${asked.texture}`);
  const groundSlopePercent = asked.slopeFrom === 'known' ? asked.slopePercent : (asked.riseIn / 120) * 100;
  const runFt = asked.lengthFrom === 'known' ? asked.lengthFt : asked.stepsCount * asked.stepFt;
  const isOld = asked.slopeBook === 'handbook-1978';
  const sod = slopeParts(runFt, groundSlopePercent, isOld ? '1978' : '1997-low-rill');
  const tilled = slopeParts(runFt, groundSlopePercent, isOld ? '1978' : '1997-moderate-rill');
  const other = slopeParts(runFt, groundSlopePercent, isOld ? '1997-low-rill' : '1978');

  const coverAt = (coverPercent: number, between = asked.coverBetween): number =>
    pastureCoverFactor({
      coverPercent,
      coverKind: asked.coverKind,
      canopyPercent: asked.above === 'none' ? 0 : asked.canopyPercent,
      canopyHeight: asked.above === 'none' ? 'short-brush' : asked.above,
      between,
    });
  const lossOf = (slope: number, coverFactor: number, practiceFactor: number): number =>
    soilLossTonPerAc({ rainErosivity, soilErodibility, slopeFactor: slope, coverFactor, practiceFactor });
  const coverRatio = coverAt(asked.groundCoverPercent);
  const lossTonPerAc = lossOf(sod.factor, coverRatio, 1);
  const { lowTonPerAc, highTonPerAc } = soilLossBand(lossTonPerAc);

  const isBare = asked.ploughed === 'bare-fallow';
  const cropCoverRatio = asked.ploughed === 'own' ? asked.ploughedCoverRatio : rotationCover[asked.ploughed];
  const cropPracticeRatio = isBare ? 1 : asked.practiceRatio;
  const fallowTonPerAc = lossOf(tilled.factor, 1, 1);
  const ploughedTonPerAc = lossOf(tilled.factor, cropCoverRatio, cropPracticeRatio);
  const ploughedBand = soilLossBand(ploughedTonPerAc);
  const toleratedTonPerAc =
    asked.toleranceFrom === 'known' ? asked.surveyTonPerAc : toleranceTonPerAc(rootingDepthIn[asked.rooting], asked.subsoil === 'fair');
  const loads = (tonPerAc: number): number => (tonPerAc * asked.areaAc) / asked.truckTon;
  return {
    yearRainMm,
    yearFactorRatio,
    erosivityRatio: rainErosivity,
    erodibilityRatio: soilErodibility,
    groundSlopePercent,
    runFt,
    sineRatio: Math.sin(Math.atan(groundSlopePercent / 100)),
    steepnessRatio: sod.steepness,
    otherSteepnessRatio: other.steepness,
    otherTonPerAc: lossOf(other.factor, coverRatio, 1),
    otherSize: sizeOf(lossOf(other.factor, coverRatio, 1)),
    sodRillRatio: sod.rills,
    sodExponentRatio: sod.exponent,
    sodSlopeRatio: sod.factor,
    tilledRillRatio: tilled.rills,
    tilledExponentRatio: tilled.exponent,
    tilledSlopeRatio: tilled.factor,
    coverRatio,
    otherCoverRatio: coverAt(asked.groundCoverPercent, asked.coverBetween === 'straight' ? 'logarithms' : 'straight'),
    coverStanding: landUsesLosingLike(coverRatio).includes('row-crops') ? ('like-crops' as const) : ('holds' as const),
    lossTonPerAc,
    lossSize: sizeOf(lossTonPerAc),
    lowTonPerAc,
    highTonPerAc,
    cropCoverRatio,
    cropPracticeRatio,
    fallowTonPerAc,
    ploughedTonPerAc,
    ploughedSize: sizeOf(ploughedTonPerAc),
    ploughedLowTonPerAc: ploughedBand.lowTonPerAc,
    ploughedHighTonPerAc: ploughedBand.highTonPerAc,
    timesRatio: ploughedTonPerAc / lossTonPerAc,
    toleratedTonPerAc,
    standing: standingOf(lossTonPerAc, toleratedTonPerAc),
    ploughedStanding: standingOf(ploughedTonPerAc, toleratedTonPerAc),
    loadsCount: loads(lossTonPerAc),
    lowLoadsCount: loads(lowTonPerAc),
    highLoadsCount: loads(highTonPerAc),
    mostLoadsCount: loads(Math.max(1, highTonPerAc)),
    ploughedLoadsCount: loads(ploughedTonPerAc),
    inchYears: yearsPerInch(lossTonPerAc, asked.densityGPerCm3),
    fastInchYears: yearsPerInch(highTonPerAc, asked.densityGPerCm3),
    slowInchYears: yearsPerInch(lowTonPerAc, asked.densityGPerCm3),
    ploughedInchYears: yearsPerInch(ploughedTonPerAc, asked.densityGPerCm3),
    oneYearIn: soilDepthIn(lossTonPerAc, asked.densityGPerCm3),
    ploughedOneYearIn: soilDepthIn(ploughedTonPerAc, asked.densityGPerCm3),
    thirtyYearsIn: soilDepthIn(30 * lossTonPerAc, asked.densityGPerCm3),
    ploughedThirtyYearsIn: soilDepthIn(30 * ploughedTonPerAc, asked.densityGPerCm3),
    curve: Array.from({ length: 11 }, (_, index) => ({
      atCoverPercent: index * 10,
      pastureTonPerAc: lossOf(sod.factor, coverAt(index * 10), 1),
      cropTonPerAc: ploughedTonPerAc,
    })),
  };
}
