import { ribbons } from '../../asks/textures.ts';
import { choice, number, rows } from '../../kit/inputs.ts';
import { conditionClass, type Grazing } from '../../math/runoff/conditionClass.ts';
import { soilGroupFromTexture } from '../../math/soilGroup/soilGroupFromTexture.ts';
import {
  agriculturalCovers,
  type Cover,
  type CoverCondition,
  type CoverTable,
  cultivatedCovers,
  rangeCovers,
  type SoilGroup,
} from '../../tables/curveNumbers.ts';
import type { Texture } from '../../tables/soilGroups.ts';

export interface Ground {
  readonly soilGroup: SoilGroup;
  readonly cover: CoverKey;
  readonly groundCoverPercent: number;
  readonly grazing: Grazing;
  readonly woodsFloor: 'bare' | 'some' | 'deep';
  readonly tilth: 'poor' | 'good';
  readonly curveNumber: number;
}
export interface AskedGround extends Omit<Ground, 'soilGroup'> {
  readonly areaAc: number;
  readonly soilGroup: SoilGroup | 'ask';
  readonly texture: Texture;
  readonly barrier: 'deep' | 'middle' | 'shallow';
}
// One depth inside each of the rule's three bands.
const barrierDepthIn = { deep: 60, middle: 30, shallow: 10 } as const;
export const soilGroupOf = ({ soilGroup, texture, barrier }: Pick<AskedGround, 'soilGroup' | 'texture' | 'barrier'>): SoilGroup =>
  soilGroup === 'ask' ? soilGroupFromTexture(texture, barrierDepthIn[barrier]) : soilGroup;

/**
 * The condition class of the cover's own table. The notes for brush and dry range name ground cover alone;
 * ground that is grazed hard with no litter left is poor here under them too, as the pasture's note has it.
 */
export function conditionOf(ground: Ground): CoverCondition {
  if (ground.cover === 'own') return 'only';
  const { cover, cutPoints } = tabledRow(ground.cover);
  switch (cover.conditionFrom) {
    case 'none':
      return 'only';
    case 'litter':
      return ({ bare: 'poor', some: 'fair', deep: 'good' } as const)[ground.woodsFloor];
    case 'infiltration':
      return ground.tilth;
    default:
      return cutPoints ? conditionClass({ ...cutPoints, groundCoverPercent: ground.groundCoverPercent, grazing: ground.grazing }) : 'only';
  }
}

export const noGroupA =
  'The dry-range list has no number for group A ground, except under desert shrub. Choose B, C or D, or give a curve number of your own.';

/** The dry-range table leaves group A empty. */
export const lacksNumber = (ground: Ground): boolean => ground.cover !== 'own' && !hasNumber(ground.cover, conditionOf(ground), ground.soilGroup);

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

const areaAc = number('Area', 'A', 'ac', [0.01, 100_000], 40, {
  usual: 'pastureAc',
  field: 'A map with a scale, or pace the fence lines: length times width in yards, divided by 4,840, is acres.',
});
const soilGroup = choice('How the deep soil drains (soil group)', 'b', {
  options: {
    a: { label: 'A: deep, drains fast', short: 'soil group A' },
    b: { label: 'B: drains fairly well', short: 'soil group B' },
    c: { label: 'C: drains slowly', short: 'soil group C' },
    d: { label: 'D: hardly drains, or shallow', short: 'soil group D' },
    ask: { label: 'I don’t know: ask me two questions', short: 'soil group asked' },
  },
  help: 'The soil survey gives each soil a letter.',
});
const texture = choice('Wet some subsoil and squeeze out a ribbon', 'silt-loam', {
  options: ribbons,
  shownWhen: { soilGroup: 'ask' },
  help: 'A stand-in for the survey: the list was made for disturbed soils.',
});
const barrier = choice('Rock, hardpan or water within reach of a digging bar?', 'deep', {
  options: { deep: 'Deeper than 40 in, or none', middle: 'Between 20 and 40 in', shallow: 'Within 20 in' },
  shownWhen: { soilGroup: 'ask' },
});
const cover = choice('What grows there', 'pasture', {
  options: coverOptions,
  belongsTo: 'management',
  help: 'Grass where it is humid is pasture here, whatever you call it. Dry range has its own list.',
});
const groundCoverPercent = number('Covered ground', 'G', 'pct', [0, 100], 45, {
  step: 5,
  belongsTo: 'management',
  help: 'Plants and litter together, against bare soil.',
  shownWhen: { cover: byGroundCover },
  ask: 'Walk a hundred steps. At each one look at the tip of your boot: plant or litter counts one, bare soil counts nothing. The count is the percent.',
});
const grazing = choice('How it is grazed', 'heavy', {
  options: {
    heavy: 'Hard: little left, no litter on the ground',
    moderate: 'About half is left',
    light: 'Lightly or now and then; most is left',
    rested: 'Rested, not grazed now',
  },
  belongsTo: 'management',
  shownWhen: { cover: byGroundCover },
});
const woodsFloor = choice('The woods’ floor', 'some', {
  options: {
    bare: 'Litter gone: grazed hard or often burned',
    some: 'Grazed, not burned, some litter',
    deep: 'Kept from stock; litter and brush cover it',
  },
  belongsTo: 'management',
  shownWhen: { cover: byLitter },
});
const tilth = choice('Does the field take water well?', 'good', {
  options: { poor: 'Worse than most', good: 'As well as most, or better' },
  belongsTo: 'management',
  shownWhen: { cover: byTilth },
  help: 'Well: residue on a fifth of the ground or more, grass in the rotation, a rough surface.',
});
const curveNumber = number('Curve number', 'CN', 'cn', [30, 98], 79, {
  belongsTo: 'management',
  help: 'For middling wetness, as the tables print it.',
  shownWhen: { cover: 'own' },
});
const whenOne = <T extends { readonly shownWhen?: Readonly<Record<string, string | readonly string[]>> }>(input: T) => ({
  ...input,
  shownWhen: { ...input.shownWhen, ground: 'one' },
});

export const inputs = {
  rainIn: number('Rain in the storm', 'P', 'in', [0.01, 30], 3, {
    usual: 'stormIn',
    step: 0.25,
    help: 'One storm, or one day of rain.',
    field: 'Two straight-sided cans well away from trees and walls, read at the same hour. Take their mean. Two cans beat a guess.',
  }),
  wetness: choice('How wet the ground was before', 'average', {
    options: {
      dry: 'Dry: no rain worth naming for a week or more',
      average: 'In between',
      wet: 'Wet: good rains in the five days before',
      frozen: 'Frozen, or under snow',
    },
    help: 'Both managements get the same. The range under the answer always shows dry to wet.',
  }),
  ground: choice('The pasture is', 'one', {
    options: { one: { label: 'One kind of ground', short: 'one kind of ground' }, parts: { label: 'Several parts', short: 'several parts' } },
  }),
  areaAc: whenOne(areaAc),
  soilGroup: whenOne(soilGroup),
  texture: whenOne(texture),
  barrier: whenOne(barrier),
  cover: whenOne(cover),
  groundCoverPercent: whenOne(groundCoverPercent),
  grazing: whenOne(grazing),
  woodsFloor: whenOne(woodsFloor),
  tilth: whenOne(tilth),
  curveNumber: whenOne(curveNumber),
  parts: rows({
    label: 'Parts of the pasture',
    rowName: 'part',
    each: '{areaAc}',
    help: 'A part is ground of one soil under one cover.',
    maxRows: 12,
    shownWhen: { ground: 'parts' },
    columns: { areaAc, soilGroup, texture, barrier, cover, groundCoverPercent, grazing, woodsFloor, tilth, curveNumber },
    refusals: [{ at: 'soilGroup', when: (part) => lacksNumber({ ...part, soilGroup: soilGroupOf(part) }), say: noGroupA }],
    default: [
      {
        areaAc: 120,
        soilGroup: 'b',
        texture: 'silt-loam',
        barrier: 'deep',
        cover: 'pasture',
        groundCoverPercent: 45,
        grazing: 'heavy',
        woodsFloor: 'some',
        tilth: 'good',
        curveNumber: 79,
      },
      {
        areaAc: 35,
        soilGroup: 'd',
        texture: 'silty-clay',
        barrier: 'deep',
        cover: 'pasture',
        groundCoverPercent: 70,
        grazing: 'moderate',
        woodsFloor: 'some',
        tilth: 'good',
        curveNumber: 79,
      },
    ],
  }),
  combine: choice('Parts are put together by', 'by-runoff', {
    options: { 'by-runoff': 'each part’s own runoff', 'by-number': 'one area-weighted curve number' },
    convention: true,
    shownWhen: { ground: 'parts' },
    help: 'Each part run by itself gives more runoff from mixed ground than one middle number does.',
  }),
  abstraction: choice('Rain used up before any runs', 'ia-20', {
    options: {
      'ia-20': { label: '0.2 S, as in the handbooks', short: '0.2 S, the handbooks’' },
      'ia-05': { label: '0.05 S, as later measured', short: '0.05 S, as measured' },
    },
    convention: true,
    help: 'The handbooks’ tables stand on 0.2 of what the ground can hold (S). Plots measured later fit 0.05 better.',
  }),
};
