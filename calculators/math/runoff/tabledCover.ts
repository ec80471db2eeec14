import { agriculturalCovers, type Cover, type CoverTable, cultivatedCovers, rangeCovers } from '../../tables/curveNumbers.ts';

type Crops = typeof cultivatedCovers.covers;
export type GrassCover = keyof typeof agriculturalCovers.covers;
export type RangeCover = keyof typeof rangeCovers.covers;
/** Crop and treatment: `row-crops-contoured`. */
export type CropCover = { readonly [C in keyof Crops]: `${C}-${keyof Crops[C]['treatments'] & string}` }[keyof Crops];
export type TabledCover = GrassCover | RangeCover | CropCover;

export interface CoverRow {
  readonly cover: Cover;
  /** Absent for crops: their condition does not go by ground cover. */
  readonly cutPoints?: Pick<CoverTable, 'poorBelowPercent' | 'goodAbovePercent'>;
}
const rows: ReadonlyMap<string, CoverRow> = new Map([
  ...[agriculturalCovers, rangeCovers].flatMap((table) =>
    Object.entries<Cover>(table.covers).map(([key, cover]): [string, CoverRow] => [key, { cover, cutPoints: table }]),
  ),
  ...Object.entries(cultivatedCovers.covers).flatMap(([crop, { treatments }]) =>
    Object.entries<Cover>(treatments).map(([treatment, cover]): [string, CoverRow] => [`${crop}-${treatment}`, { cover }]),
  ),
]);

/**
 * The row of the three curve-number tables that a cover stands for.
 * @param key - Cover: pasture, hay, brush and woods, dry range, or a crop with its treatment
 * @returns The row, with the cut-points of its table where ground cover judges it
 * @throws RangeError if no table has such a cover
 * @source tr55-1986, tables 2-2b to 2-2d
 * @example tabledCover('meadow').cover.conditions.only.b //=> 58
 */
export function tabledCover(key: TabledCover): CoverRow {
  const row = rows.get(key);
  if (row === undefined) throw new RangeError(`tabledCover needs a cover of the tables, got ${key}`);
  return row;
}

/**
 * Covers whose condition is judged in one of these ways.
 * @param from - Ways to judge it, as the tables' notes have them
 * @returns Their names, in the order of the tables
 * @source tr55-1986, notes of tables 2-2b to 2-2d
 * @example coversJudgedBy('litter') //=> ['woods']
 */
export function coversJudgedBy(...from: readonly Cover['conditionFrom'][]): readonly string[] {
  return [...rows].filter(([, { cover }]) => from.includes(cover.conditionFrom)).map(([key]) => key);
}
