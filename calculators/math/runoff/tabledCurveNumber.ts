import type { CoverCondition, SoilGroup } from '../../tables/curveNumbers.ts';
import { need } from '../need.ts';
import { conditionClass, type Grazing } from './conditionClass.ts';
import { type TabledCover, tabledCover } from './tabledCover.ts';

/**
 * Condition class of a cover by its own table. The notes for brush and dry range name ground cover alone; ground that is grazed hard with no litter
 * left is poor here under them too, as the pasture's note has it.
 * @param options.cover - Cover, as the tables have it
 * @param options.groundCoverPercent - Ground covered by plants and litter, percent; 0 to 100; counts for pasture, brush and range
 * @param options.grazing - How it is grazed; counts for the same
 * @param options.woodsFloor - Litter of woods: gone, some, or deep; counts for woods
 * @param options.tilth - Whether crop ground takes water worse than most or as well; counts for crops
 * @returns Class; `only` where the table has no classes
 * @throws RangeError if no table has such a cover, or if a parameter is outside its range
 * @source tr55-1986, notes of tables 2-2b to 2-2d
 * @example coverClass({ cover: 'woods', groundCoverPercent: 0, grazing: 'rested', woodsFloor: 'deep', tilth: 'good' }) //=> 'good'
 */
export function coverClass({
  cover,
  groundCoverPercent,
  grazing,
  woodsFloor,
  tilth,
}: {
  readonly cover: TabledCover;
  readonly groundCoverPercent: number;
  readonly grazing: Grazing;
  readonly woodsFloor: 'bare' | 'some' | 'deep';
  readonly tilth: 'poor' | 'good';
}): CoverCondition {
  need('coverClass', 'groundCoverPercent', groundCoverPercent, { atLeast: 0, atMost: 100 });
  const row = tabledCover(cover);
  switch (row.cover.conditionFrom) {
    case 'none':
      return 'only';
    case 'litter':
      return ({ bare: 'poor', some: 'fair', deep: 'good' } as const)[woodsFloor];
    case 'infiltration':
      return tilth;
    default:
      return row.cutPoints ? conditionClass({ ...row.cutPoints, groundCoverPercent, grazing }) : 'only';
  }
}

/**
 * Curve number of a cover in the tables, for average wetness and an initial abstraction of 0.2 S.
 * @param cover - Cover, as the tables have it
 * @param condition - Its class
 * @param soilGroup - Hydrologic soil group
 * @returns Curve number, no unit; undefined where the table has none: dry range on group A ground, except under desert shrub
 * @throws RangeError if no table has such a cover
 * @source tr55-1986, tables 2-2b to 2-2d
 * @example tabledCurveNumber('pasture', 'fair', 'b') //=> 69
 */
export function tabledCurveNumber(cover: TabledCover, condition: CoverCondition, soilGroup: SoilGroup): number | undefined {
  return tabledCover(cover).cover.conditions[condition]?.[soilGroup] ?? undefined;
}
