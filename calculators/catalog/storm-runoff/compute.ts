import type { ValuesOf } from '../../kit/inputs.ts';
import { antecedentCurveNumber } from '../../math/runoff/antecedentCurveNumber.ts';
import { type AbstractionRatio, initialAbstractionIn } from '../../math/runoff/initialAbstractionIn.ts';
import { retentionIn } from '../../math/runoff/retentionIn.ts';
import { runoffIn } from '../../math/runoff/runoffIn.ts';
import { ratioRetentionIn } from '../../math/runoff/stormRunoffIn.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { inchAcresToGallons } from '../../math/water/waterVolume.ts';
import { type AskedGround, byGroundCover, conditionOf, curveNumberOf, type inputs, soilGroupOf } from './inputs.ts';

type Wetness = 'dry' | 'average' | 'wet';

/** Ground whose runoff goes by its living cover, and how much of that it has. */
const bareUnder50 = ({ cover, groundCoverPercent }: AskedGround): boolean => byGroundCover.includes(cover) && groundCoverPercent < 50;

/** Less than this is told as nothing to a tenth of an inch: the method does not reach it. */
export const leastToldIn = 0.05;

function stormOn(parts: readonly AskedGround[], rainIn: number, wetness: Wetness, abstractionRatio: AbstractionRatio, isOneNumber: boolean) {
  const run = (curveNumber: number) => {
    const storageIn = ratioRetentionIn(curveNumber, abstractionRatio);
    const firstIn = initialAbstractionIn({ retentionIn: storageIn, abstractionRatio });
    return {
      handbookStorageIn: retentionIn(curveNumber),
      storageIn,
      firstIn,
      heldIn: Math.min(rainIn, firstIn),
      partRunoffIn: runoffIn({ rainIn, retentionIn: storageIn, abstractionRatio }),
    };
  };
  const lines = parts.map((part) => {
    const group = soilGroupOf(part);
    const ground = { ...part, soilGroup: group };
    const tabledCurveNumber = curveNumberOf(ground);
    if (tabledCurveNumber === undefined) throw new RangeError(`the table has no number for ${ground.cover} on soil group ${group}`);
    const curveNumber = antecedentCurveNumber(tabledCurveNumber, wetness);
    const result = run(curveNumber);
    return {
      areaAc: part.areaAc,
      group,
      condition: conditionOf(ground),
      tabledCurveNumber,
      curveNumber,
      ...result,
      runoffAcIn: part.areaAc * result.partRunoffIn,
      firstAcIn: part.areaAc * result.firstIn,
      heldAcIn: part.areaAc * result.heldIn,
      numberAcres: part.areaAc * tabledCurveNumber,
    };
  });
  const [first] = lines;
  if (!first) throw new RangeError('a storm needs ground to fall on');
  const totalAc = sumOf(lines, (line) => line.areaAc);
  const totals = {
    totalAc,
    totalRunoffAcIn: sumOf(lines, (line) => line.runoffAcIn),
    totalFirstAcIn: sumOf(lines, (line) => line.firstAcIn),
    totalHeldAcIn: sumOf(lines, (line) => line.heldAcIn),
    totalNumberAcres: sumOf(lines, (line) => line.numberAcres),
  };
  const middleCurveNumber = totals.totalNumberAcres / totalAc;
  const middleWetCurveNumber = antecedentCurveNumber(middleCurveNumber, wetness);
  const middle = run(middleWetCurveNumber);
  return {
    lines,
    // Told of ground that is all of one kind.
    group: first.group,
    condition: first.condition,
    tabledCurveNumber: first.tabledCurveNumber,
    ...totals,
    middleCurveNumber,
    middleWetCurveNumber,
    middleHandbookStorageIn: middle.handbookStorageIn,
    middleStorageIn: middle.storageIn,
    firstIn: isOneNumber ? middle.firstIn : totals.totalFirstAcIn / totalAc,
    heldFirstIn: isOneNumber ? middle.heldIn : totals.totalHeldAcIn / totalAc,
    runoffIn: isOneNumber ? middle.partRunoffIn : totals.totalRunoffAcIn / totalAc,
  };
}

export function compute({ rainIn, wetness, ground, parts, combine, abstraction, ...one }: ValuesOf<typeof inputs>) {
  const grounds = ground === 'one' ? [one] : parts;
  const ratio = abstraction === 'ia-20' ? 0.2 : 0.05;
  const isOneNumber = ground === 'one' || combine === 'by-number';
  const at = (how: Wetness) => stormOn(grounds, rainIn, how, ratio, isOneNumber);
  // Frozen ground is refused before it comes here.
  const storm = at(wetness === 'frozen' ? 'wet' : wetness);
  const isBare = grounds.some(bareUnder50);
  const stayedIn = rainIn - storm.runoffIn;
  const method: 'too-small' | 'rough' | 'usual' = storm.runoffIn < leastToldIn ? 'too-small' : storm.runoffIn < 0.5 ? 'rough' : 'usual';
  return {
    ...storm,
    method,
    sod: isBare ? ('thin' as const) : ('closed' as const),
    lowRunoffIn: at('dry').runoffIn,
    betweenRunoffIn: at('average').runoffIn,
    highRunoffIn: at('wet').runoffIn,
    stayedIn,
    soakedIn: stayedIn - storm.heldFirstIn,
    runoffPercent: (storm.runoffIn / rainIn) * 100,
    runoffGal: inchAcresToGallons(storm.runoffIn * storm.totalAc),
    stayedGal: inchAcresToGallons(stayedIn * storm.totalAc),
    coverPercent: sumOf(grounds, (part) => part.areaAc * part.groundCoverPercent) / storm.totalAc,
  };
}
