import type { ValuesOf } from '../../kit/inputs.ts';
import { designStormStretches } from '../../math/infiltration/designStormShare.ts';
import { greenAmptDepthCm, greenAmptRateCmPerHr, moistureDeficit, type WettingSoil } from '../../math/infiltration/greenAmptDepthCm.ts';
import { type RainStep, stormInfiltration } from '../../math/infiltration/stormInfiltration.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { inchAcresToGallons } from '../../math/water/waterVolume.ts';
import { greenAmptTextures } from '../../tables/greenAmptTextures.ts';
import { exchangedTextures, type inputs, isExchanged, isRibbon } from './inputs.ts';

const cmPerIn = 2.54;

/**
 * How full the pores are by how far a rod goes in, percent. Our own: dry ground holds a fifth or so, ground that has drained for a day or two about
 * two thirds. The result says that they are rough, and the field next to them takes a measured share.
 */
const filledByRodPercent = { stops: 20, inches: 40, foot: 65, mud: 90 } as const;

export type Asked = ValuesOf<typeof inputs>;

function rainOf({ storm, rainIn, hardMin, spells, rainType }: Asked): readonly RainStep[] {
  if (storm === 'day') return designStormStretches(rainType, rainIn * cmPerIn);
  return storm === 'burst'
    ? [{ hours: hardMin / 60, rainCm: rainIn * cmPerIn }]
    : spells.map(({ lastsMin, fellIn }) => ({ hours: lastsMin / 60, rainCm: fellIn * cmPerIn }));
}

function soilOf({ texture, conductivityInPerHr, suctionIn, roomPercent, wetness, filledPercent, ...rest }: Asked) {
  const book = isRibbon(texture)
    ? greenAmptTextures.textures[texture]
    : { conductivityCmPerHr: conductivityInPerHr * cmPerIn, suctionCm: suctionIn * cmPerIn, effectivePorosity: roomPercent / 100 };
  const usedFilledPercent = texture === 'own' ? 0 : wetness === 'known' ? filledPercent : filledByRodPercent[wetness];
  const ringRatio = rest.rings === 'both' ? rest.ringHereInPerHr / rest.ringThereInPerHr : 1;
  return {
    bookCmPerHr: book.conductivityCmPerHr,
    suctionCm: book.suctionCm,
    poreShare: book.effectivePorosity,
    usedFilledPercent,
    ringRatio,
    roomShare: moistureDeficit(book.effectivePorosity, usedFilledPercent / 100),
    conductivityCmPerHr: book.conductivityCmPerHr * ringRatio,
  };
}

/** The other conductivity where two in the table may have changed places. */
const doubtedCmPerHr = (texture: Asked['texture']): number | undefined =>
  isExchanged(texture) ? greenAmptTextures.textures[exchangedTextures[texture]].conductivityCmPerHr : undefined;

/** Rates for the plot at the start, the end and a few moments between of every stretch. */
function curveOf({ rows }: ReturnType<typeof stormInfiltration>, soil: WettingSoil) {
  // Closer together at first, where the rate falls fast.
  const betweenCount = rows.length === 1 ? 8 : 2;
  let atHr = 0;
  let soakedCm = 0;
  return rows.flatMap(({ hours, rainCm, pondedHours, infiltratedCm }) => {
    const rate = rainCm / hours;
    const dryHours = hours - pondedHours;
    const startHr = atHr;
    const startCm = soakedCm + rate * dryHours;
    const wet = Array.from({ length: betweenCount + 2 }, (_, each) => pondedHours * (each / (betweenCount + 1)) ** 1.5);
    const capacity = (afterHours: number): number => {
      const depthCm = greenAmptDepthCm({ hours: afterHours, soil, startCm });
      return depthCm > 0 ? greenAmptRateCmPerHr(depthCm, soil) : rate;
    };
    const points = [
      ...(dryHours > 0 ? [{ atHr: startHr, intake: rate }] : []),
      ...(pondedHours > 0
        ? wet.map((after) => ({ atHr: startHr + dryHours + after, intake: Math.min(rate, capacity(after)) }))
        : [{ atHr: startHr + hours, intake: rate }]),
    ];
    atHr += hours;
    soakedCm += infiltratedCm;
    return points.map((point) => ({
      atHr: point.atHr,
      rainInPerHr: rate / cmPerIn,
      intakeInPerHr: point.intake / cmPerIn,
      lostInPerHr: (rate - point.intake) / cmPerIn,
    }));
  });
}

export function compute(asked: Asked) {
  const steps = rainOf(asked);
  const ground = soilOf(asked);
  const soil: WettingSoil = { conductivityCmPerHr: ground.conductivityCmPerHr, suctionCm: ground.suctionCm, moistureDeficit: ground.roomShare };
  const storm = stormInfiltration({ steps, soil });
  const lostAt = (times: number) => stormInfiltration({ steps, soil: { ...soil, conductivityCmPerHr: times * soil.conductivityCmPerHr } }).runoffCm;
  const otherBookCmPerHr = doubtedCmPerHr(asked.texture) ?? ground.bookCmPerHr;
  let startCm = 0;
  let startMin = 0;
  const lines = storm.rows.map(({ hours, rainCm, infiltratedCm, runoffCm, pondedHours }) => {
    const minutes = 60 * hours;
    const standsMin = 60 * pondedHours;
    const rateCmPerHr = rainCm / hours;
    const dryMin = minutes - standsMin;
    const line = {
      fromMin: startMin,
      lastsMin: minutes,
      rainCm,
      rateCmPerHr,
      rateInPerHr: rateCmPerHr / cmPerIn,
      startCm,
      dryMin,
      standsMin,
      whenPondedCm: startCm + (rateCmPerHr * dryMin) / 60,
      afterCm: startCm + infiltratedCm,
      infiltratedCm,
      infiltratedIn: infiltratedCm / cmPerIn,
      runoffCm,
      runoffIn: runoffCm / cmPerIn,
    };
    startCm += infiltratedCm;
    startMin += minutes;
    const goalCm = line.whenPondedCm + (soil.conductivityCmPerHr * standsMin) / 60;
    // The depth that was found must bring the other side of the equation to the same number; the working shows that it does.
    return { ...line, goalCm, balanceCm: goalCm };
  });
  const first = lines.find(({ standsMin }) => standsMin > 0);
  const { fromMin: beforeMin, dryMin: firstDryMin } = first ?? { fromMin: 0, dryMin: 0 };
  const pondsAfterMin = beforeMin + firstDryMin;
  const totalRainCm = sumOf(lines, (line) => line.rainCm);
  const totalRunoffCm = sumOf(lines, (line) => line.runoffCm);
  const totalSoakedCm = sumOf(lines, (line) => line.infiltratedCm);
  const endRateCmPerHr = greenAmptRateCmPerHr(totalSoakedCm, soil);
  const evenCm = stormInfiltration({ steps: [{ hours: 24, rainCm: totalRainCm }], soil }).runoffCm;
  return {
    ponds: first ? ('stands' as const) : ('never' as const),
    ...ground,
    pullCm: ground.suctionCm * ground.roomShare,
    lines,
    totalMin: startMin,
    totalRainCm,
    totalRunoffCm,
    totalSoakedCm,
    totalStandsMin: sumOf(lines, (line) => line.standsMin),
    beforeMin,
    firstDryMin,
    pondsAfterMin,
    pondsAfterHr: pondsAfterMin / 60,
    fellIn: totalRainCm / cmPerIn,
    runoffIn: totalRunoffCm / cmPerIn,
    soakedIn: totalSoakedCm / cmPerIn,
    lowRunoffIn: lostAt(2) / cmPerIn,
    highRunoffIn: lostAt(0.5) / cmPerIn,
    otherBookCmPerHr,
    otherRunoffIn: lostAt(otherBookCmPerHr / ground.bookCmPerHr) / cmPerIn,
    runoffPercent: (100 * totalRunoffCm) / totalRainCm,
    runoffGal: inchAcresToGallons(totalRunoffCm / cmPerIn),
    evenRunoffIn: evenCm / cmPerIn,
    endRateCmPerHr,
    endRateInPerHr: endRateCmPerHr / cmPerIn,
    hardestInPerHr: Math.max(...lines.map((line) => line.rateInPerHr)),
    curve: curveOf(storm, soil),
  };
}
