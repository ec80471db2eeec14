import {
  agriculturalCovers,
  type Cover,
  type CoverCondition,
  type CoverTable,
  cultivatedCovers,
  rangeCovers,
  type SoilGroup,
} from '../../tables/curveNumbers.ts';

/** Plain words for every row of the three tables. The keys stand in links for ever. */
const grassAndWoods = {
  pasture: 'Pasture or range grass',
  meadow: 'Meadow, not grazed, cut for hay',
  brush: 'Brush with weeds and grass under it',
  'woods-grass': 'Trees over grass, about half and half',
  woods: 'Woods',
  farmstead: 'Farmyard, buildings, lanes',
} as const;
const dryRange = {
  herbaceous: 'Dry range: grass, weeds and low brush',
  'oak-aspen': 'Dry range: oak brush or aspen',
  'pinyon-juniper': 'Dry range: pinyon or juniper over grass',
  sagebrush: 'Dry range: sagebrush over grass',
  'desert-shrub': 'Dry range: desert shrub',
} as const;
const crops = {
  'fallow-bare': 'Fallow, bare',
  'fallow-residue': 'Fallow with residue left',
  'row-crops-straight-row': 'Row crop, straight rows',
  'row-crops-straight-row-residue': 'Row crop, straight rows, residue left',
  'row-crops-contoured': 'Row crop on the contour',
  'row-crops-contoured-residue': 'Row crop on the contour, residue left',
  'row-crops-contoured-terraced': 'Row crop, contour and terraces',
  'row-crops-contoured-terraced-residue': 'Row crop, contour and terraces, residue left',
  'small-grain-straight-row': 'Small grain, straight rows',
  'small-grain-straight-row-residue': 'Small grain, straight rows, residue left',
  'small-grain-contoured': 'Small grain on the contour',
  'small-grain-contoured-residue': 'Small grain on the contour, residue left',
  'small-grain-contoured-terraced': 'Small grain, contour and terraces',
  'small-grain-contoured-terraced-residue': 'Small grain, contour and terraces, residue left',
  'close-seeded-straight-row': 'Close-seeded legumes or rotation meadow, straight rows',
  'close-seeded-contoured': 'Close-seeded legumes or rotation meadow on the contour',
  'close-seeded-contoured-terraced': 'Close-seeded legumes or rotation meadow, contour and terraces',
} as const;

type GrassKey = keyof typeof grassAndWoods;
type RangeKey = keyof typeof dryRange;
type CropKey = keyof typeof crops;
export type TabledCover = GrassKey | RangeKey | CropKey;
export type CoverKey = TabledCover | 'own';

const grouped = <K extends string>(labels: Readonly<Record<K, string>>, group: string): Record<K, { label: string; group: string }> => {
  const options: Partial<Record<K, { label: string; group: string }>> = {};
  for (const key of keysOf(labels)) options[key] = { label: labels[key], group };
  return isWhole(labels, options) ? options : fail();
};
const keysOf = <K extends string>(labels: Readonly<Record<K, string>>): K[] =>
  Object.keys(labels).filter((key): key is K => Object.hasOwn(labels, key));
const isWhole = <K extends string, V>(labels: Readonly<Record<K, string>>, options: Partial<Record<K, V>>): options is Record<K, V> =>
  keysOf(labels).every((key) => Object.hasOwn(options, key));
const fail = (): never => {
  throw new RangeError('covers needs a label for every option');
};

export const coverOptions = {
  ...grouped(grassAndWoods, 'Pasture, hay, brush, woods'),
  ...grouped(dryRange, 'Dry range'),
  ...grouped(crops, 'Cropland'),
  own: { label: 'I know the curve number', group: 'Your own' },
};

const isIn = <K extends string>(labels: Readonly<Record<K, string>>, key: string): key is K => Object.hasOwn(labels, key);

/** A crop's key holds crop and treatment: `row-crops-contoured`. */
function cropCover(key: CropKey): Cover {
  for (const [crop, { treatments }] of Object.entries(cultivatedCovers.covers)) {
    const found = Object.entries<Cover>(treatments).find(([treatment]) => `${crop}-${treatment}` === key);
    if (found) return found[1];
  }
  throw new RangeError(`covers needs a crop of the table, got ${key}`);
}

export interface TabledRow {
  readonly cover: Cover;
  /** Absent for crops: their condition does not go by ground cover. */
  readonly cutPoints: Pick<CoverTable, 'poorBelowPercent' | 'goodAbovePercent'> | undefined;
}
/** The row of the table that a cover stands for. */
export function tabledRow(key: TabledCover): TabledRow {
  if (isIn(grassAndWoods, key)) return { cover: agriculturalCovers.covers[key], cutPoints: agriculturalCovers };
  if (isIn(dryRange, key)) return { cover: rangeCovers.covers[key], cutPoints: rangeCovers };
  return { cover: cropCover(key), cutPoints: undefined };
}

/** Is there a number for this cover on this soil at all? */
export const hasNumber = (key: TabledCover, condition: CoverCondition, group: SoilGroup): boolean =>
  typeof tabledRow(key).cover.conditions[condition]?.[group] === 'number';

const keysWhere = (from: readonly Cover['conditionFrom'][]): TabledCover[] =>
  [...keysOf(grassAndWoods), ...keysOf(dryRange), ...keysOf(crops)].filter((key) => from.includes(tabledRow(key).cover.conditionFrom));
/** Covers whose condition is judged by ground cover and grazing, by the woods' floor, by the field's tilth. */
export const byGroundCover = keysWhere(['cover-and-grazing', 'cover']);
export const byLitter = keysWhere(['litter']);
export const byTilth = keysWhere(['infiltration']);
