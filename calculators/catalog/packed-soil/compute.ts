import { meanGap } from '../../asks/meanGap.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import type { Between, SideNamed } from '../../kit/shown.ts';
import { coreDensity } from '../../math/soil/coreDensity.ts';
import { densityLimits, densityStanding } from '../../math/soil/densityStanding.ts';
import { dryWeightG } from '../../math/soil/gravimetricWaterPercent.ts';
import { porosityPercent } from '../../math/soil/porosityPercent.ts';
import { probeSummary } from '../../math/soil/probeSummary.ts';
import { particleDensityGPerCm3 } from '../../math/soil/waterRetention.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import type { DensityListName } from '../../tables/rootLimitingDensity.ts';
import type { Texture } from '../../tables/soilGroups.ts';
import type { inputs } from './inputs.ts';

type Asked = ValuesOf<typeof inputs>;
type Core = Asked['cores'][number];
type Measured = Pick<Asked, 'volumeFrom' | 'acrossIn' | 'tallIn' | 'ringMl' | 'weighed' | 'stones' | 'cores'>;

const lists: readonly DensityListName[] = ['by-class', 'critical-range', 'three-groups', 'seven-rows'];

const canMl = ({ acrossIn, tallIn }: Pick<Measured, 'acrossIn' | 'tallIn'>): number => (Math.PI / 4) * (2.54 * acrossIn) ** 2 * (2.54 * tallIn);
function partsOf(core: Core, asked: Measured) {
  const volumeMl = asked.volumeFrom === 'can' ? canMl(asked) : asked.volumeFrom === 'known' ? asked.ringMl : core.holeMl;
  const dryG = asked.weighed === 'moist' ? dryWeightG(core.coreG, core.waterPercent) : core.coreG;
  const stonesG = asked.stones === 'none' ? 0 : core.stoneG;
  const stonesMl = asked.stones === 'jar' ? core.jarMl : stonesG / particleDensityGPerCm3;
  return { volumeMl, dryG, stonesG, stonesMl };
}

/** What is wrong with the cores as measured, if anything: things that no soil can be. */
export function faultOf(asked: Measured): 'none' | 'stones-weigh-all' | 'stones-fill-all' | 'heavier-than-rock' | 'lighter-than-peat' {
  for (const core of asked.cores) {
    const { volumeMl, dryG, stonesG, stonesMl } = partsOf(core, asked);
    if (stonesG >= dryG) return 'stones-weigh-all';
    if (stonesMl >= volumeMl) return 'stones-fill-all';
    const fine = (dryG - stonesG) / (volumeMl - stonesMl);
    // Tighter than this leaves hardly a pore; looser than this is no mineral soil.
    if (fine > 2.3) return 'heavier-than-rock';
    if (fine < 0.2) return 'lighter-than-peat';
  }
  return 'none';
}

/** Every limit of every list that names the texture, each under its list's name. */
const limitsOf = (texture: Texture, meanGPerCm3: number) =>
  lists.flatMap((list) => {
    const { idealBelow, limitsFrom, stopsAbove } = densityLimits(list, texture) ?? {};
    const line = (limit: 'ideal' | 'suffer' | 'stop', limitGPerCm3: number, isPast: boolean) => ({
      list,
      limit,
      limitGPerCm3,
      side: isPast ? ('past' as const) : ('short' as const),
    });
    return [
      ...(idealBelow === undefined ? [] : [line('ideal', idealBelow, meanGPerCm3 >= idealBelow)]),
      ...(limitsFrom === undefined ? [] : [line('suffer', limitsFrom, meanGPerCm3 >= limitsFrom)]),
      ...(stopsAbove === undefined ? [] : [line('stop', stopsAbove, meanGPerCm3 > stopsAbove)]),
    ];
  });

function probeOf({ probe, moisture, pushes }: Pick<Asked, 'probe' | 'moisture' | 'pushes'>) {
  const nothing = { stoppedPercent: 0, medianStopIn: 0, pushesCount: 0 };
  if (probe === 'none') return { ...nothing, probeSays: 'not-pushed' as const };
  if (moisture !== 'sponge') return { ...nothing, probeSays: moisture === 'dry' ? ('too-dry' as const) : ('too-wet' as const) };
  const summary = probeSummary(pushes.map(({ gauge, stopIn }) => (gauge === 'passed' ? stopIn : Number.POSITIVE_INFINITY)));
  return {
    stoppedPercent: summary.stoppedPercent,
    // Where nothing stopped the probe there is no such depth, and none is shown.
    medianStopIn: summary.medianStopIn === undefined ? 0 : summary.medianStopIn,
    pushesCount: pushes.length,
    probeSays: summary.degree,
  };
}

export function compute(asked: Asked) {
  const lines = asked.cores.map((core) => {
    const { volumeMl, dryG, stonesG, stonesMl } = partsOf(core, asked);
    const { wholeGPerCm3, fineGPerCm3, stoneVolumePercent } = coreDensity({ dryG, volumeCm3: volumeMl, stoneG: stonesG, stoneVolumeCm3: stonesMl });
    const solidMl = (dryG - stonesG) / particleDensityGPerCm3;
    return {
      coreG: core.coreG,
      waterPercent: asked.weighed === 'moist' ? core.waterPercent : 0,
      holeMl: asked.volumeFrom === 'hole' ? core.holeMl : 0,
      volumeMl,
      dryG,
      stonesG,
      jarMl: asked.stones === 'jar' ? core.jarMl : 0,
      stonesMl,
      wholeGPerCm3,
      fineGPerCm3,
      stoneVolumePercent,
      solidMl,
      poreMl: volumeMl - stonesMl - solidMl,
    };
  });
  const coresCount = lines.length;
  const totalGPerCm3 = sumOf(lines, (line) => line.fineGPerCm3);
  const fineGPerCm3 = totalGPerCm3 / coresCount;
  const lowGPerCm3 = Math.min(...lines.map((line) => line.fineGPerCm3));
  const highGPerCm3 = Math.max(...lines.map((line) => line.fineGPerCm3));
  const said = lists.flatMap((list) => {
    const standing = densityStanding(list, asked.texture, fineGPerCm3);
    return standing === undefined ? [] : [{ standing, ...densityLimits(list, asked.texture) }];
  });
  const hurts = said.some(({ standing }) => standing === 'limiting' || standing === 'stopping');
  // A list that does not tell from when on roots suffer can't be called as a witness that they don't, unless the soil is as loose as it calls best.
  const holdsAgainst = said.some(
    ({ standing, idealBelow, limitsFrom }) =>
      (standing === 'open' && (limitsFrom !== undefined || idealBelow !== undefined)) || (standing === 'between' && limitsFrom !== undefined),
  );
  const packed =
    hurts && !holdsAgainst
      ? ('packed' as const)
      : hurts
        ? ('lists-differ' as const)
        : said.some(({ standing }) => standing === 'between')
          ? ('between' as const)
          : ('open' as const);
  return {
    packed,
    canMl: canMl(asked),
    lines,
    coresCount,
    totalGPerCm3,
    fineGPerCm3,
    lowGPerCm3,
    highGPerCm3,
    porosityPercent: porosityPercent(fineGPerCm3),
    allMl: sumOf(lines, (line) => line.volumeMl),
    allPoreMl: sumOf(lines, (line) => line.poreMl),
    allSolidMl: sumOf(lines, (line) => line.solidMl),
    allStoneMl: sumOf(lines, (line) => line.stonesMl),
    limits: limitsOf(asked.texture, fineGPerCm3),
    ...probeOf(asked),
  };
}

type Side = SideNamed<'lines'>;
/** How far a gap between the mean densities of two places is to be believed. */
export const densityGap = (here: Side, there: Side): Between =>
  meanGap(here.column('lines', 'fineGPerCm3'), there.column('lines', 'fineGPerCm3'), 'cores');
