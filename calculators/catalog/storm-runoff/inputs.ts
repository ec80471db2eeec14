import { acresByPacing, howGrazed } from '../../asks/ground.ts';
import { ribbons } from '../../asks/textures.ts';
import { choice, grouped, number, rows, type ValuesOf } from '../../kit/inputs.ts';
import { type CropCover, coversJudgedBy, type GrassCover, type RangeCover } from '../../math/runoff/tabledCover.ts';
import { coverClass, tabledCurveNumber } from '../../math/runoff/tabledCurveNumber.ts';
import { soilGroupFromTexture } from '../../math/soilGroup/soilGroupFromTexture.ts';
import type { CoverCondition, SoilGroup } from '../../tables/curveNumbers.ts';

/** Plain words for every row of the three tables. The keys stand in links for ever. */
const covers = {
  ...grouped('Pasture, hay, brush, woods', {
    pasture: 'Pasture or range grass',
    meadow: 'Meadow, not grazed, cut for hay',
    brush: 'Brush with weeds and grass under it',
    'woods-grass': 'Trees over grass, about half and half',
    woods: 'Woods',
    farmstead: 'Farmyard, buildings, lanes',
  } satisfies Readonly<Record<GrassCover, string>>),
  ...grouped('Dry range', {
    herbaceous: 'Dry range: grass, weeds and low brush',
    'oak-aspen': 'Dry range: oak brush or aspen',
    'pinyon-juniper': 'Dry range: pinyon or juniper over grass',
    sagebrush: 'Dry range: sagebrush over grass',
    'desert-shrub': 'Dry range: desert shrub',
  } satisfies Readonly<Record<RangeCover, string>>),
  ...grouped('Cropland', {
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
  } satisfies Readonly<Record<CropCover, string>>),
  own: { label: 'I know the curve number', group: 'Your own' },
};

/** Covers whose condition goes by ground cover and grazing. */
export const byGroundCover = coversJudgedBy('cover-and-grazing', 'cover');

/** What is asked of each kind of ground. */
const ground = {
  areaAc: number('Area', 'A', 'ac', [0.01, 100_000], 40, { usual: 'pastureAc', field: acresByPacing, offeredBy: 'pasture.area' }),
  soilGroup: choice('How the deep soil drains (soil group)', 'b', {
    options: {
      a: { label: 'A: deep, drains fast', short: 'soil group A' },
      b: { label: 'B: drains fairly well', short: 'soil group B' },
      c: { label: 'C: drains slowly', short: 'soil group C' },
      d: { label: 'D: hardly drains, or shallow', short: 'soil group D' },
      ask: { label: 'I don’t know: ask me two questions', short: 'soil group asked' },
    },
    offeredBy: 'pasture.soilGroup',
    help: 'The soil survey gives each soil a letter.',
  }),
  texture: choice('Wet some subsoil and squeeze out a ribbon', 'silt-loam', {
    options: ribbons,
    offeredBy: 'pasture.texture',
    shownWhen: { soilGroup: 'ask' },
    help: 'A stand-in for the survey: the list was made for disturbed soils.',
  }),
  barrier: choice('Rock, hardpan or water within reach of a digging bar?', 'deep', {
    options: { deep: 'Deeper than 40 in, or none', middle: 'Between 20 and 40 in', shallow: 'Within 20 in' },
    shownWhen: { soilGroup: 'ask' },
  }),
  cover: choice('What grows there', 'pasture', {
    options: covers,
    belongsTo: 'management',
    offeredBy: 'pasture.cover',
    help: 'Grass where it is humid is pasture here, whatever you call it. Dry range has its own list.',
  }),
  groundCoverPercent: number('Covered ground', 'G', 'pct', [0, 100], 45, {
    step: 5,
    belongsTo: 'management',
    help: 'Plants and litter together, against bare soil.',
    shownWhen: { cover: byGroundCover },
    offeredBy: 'pasture.groundCover',
    ask: 'Walk a hundred steps. At each one look at the tip of your boot: plant or litter counts one, bare soil counts nothing. The count is the percent.',
  }),
  grazing: choice('How it is grazed', 'heavy', {
    options: howGrazed,
    belongsTo: 'management',
    shownWhen: { cover: byGroundCover },
    offeredBy: 'pasture.grazing',
  }),
  woodsFloor: choice('The woods’ floor', 'some', {
    options: {
      bare: 'Litter gone: grazed hard or often burned',
      some: 'Grazed, not burned, some litter',
      deep: 'Kept from stock; litter and brush cover it',
    },
    belongsTo: 'management',
    shownWhen: { cover: coversJudgedBy('litter') },
  }),
  tilth: choice('Does the field take water well?', 'good', {
    options: { poor: 'Worse than most', good: 'As well as most, or better' },
    belongsTo: 'management',
    shownWhen: { cover: coversJudgedBy('infiltration') },
    help: 'Well: residue on a fifth of the ground or more, grass in the rotation, a rough surface.',
  }),
  curveNumber: number('Curve number', 'CN', 'cn', [30, 98], 79, {
    belongsTo: 'management',
    help: 'For middling wetness, as the tables print it.',
    shownWhen: { cover: 'own' },
  }),
};

export type AskedGround = ValuesOf<typeof ground>;
type Ground = Omit<AskedGround, 'soilGroup'> & { readonly soilGroup: SoilGroup };
// One depth inside each of the rule's three bands.
const barrierDepthIn = { deep: 60, middle: 30, shallow: 10 } as const;
export const soilGroupOf = ({ soilGroup, texture, barrier }: Pick<AskedGround, 'soilGroup' | 'texture' | 'barrier'>): SoilGroup =>
  soilGroup === 'ask' ? soilGroupFromTexture(texture, barrierDepthIn[barrier]) : soilGroup;
export const conditionOf = ({ cover, ...ground }: Ground): CoverCondition => (cover === 'own' ? 'only' : coverClass({ ...ground, cover }));
/** For average wetness; undefined where the table is empty, as dry range is for group A. */
export const curveNumberOf = (ground: Ground): number | undefined =>
  ground.cover === 'own' ? ground.curveNumber : tabledCurveNumber(ground.cover, conditionOf(ground), ground.soilGroup);

export const noGroupA =
  'The dry-range list has no number for group A ground, except under desert shrub. Choose B, C or D, or give a curve number of your own.';
export const lacksNumber = (asked: AskedGround): boolean => curveNumberOf({ ...asked, soilGroup: soilGroupOf(asked) }) === undefined;

const usualGround = { barrier: 'deep', cover: 'pasture', woodsFloor: 'some', tilth: 'good', curveNumber: 79 } as const;
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
    offeredBy: 'pastures.ground',
  }),
  areaAc: whenOne(ground.areaAc),
  soilGroup: whenOne(ground.soilGroup),
  texture: whenOne(ground.texture),
  barrier: whenOne(ground.barrier),
  cover: whenOne(ground.cover),
  groundCoverPercent: whenOne(ground.groundCoverPercent),
  grazing: whenOne(ground.grazing),
  woodsFloor: whenOne(ground.woodsFloor),
  tilth: whenOne(ground.tilth),
  curveNumber: whenOne(ground.curveNumber),
  parts: rows({
    label: 'Parts of the pasture',
    rowName: 'part',
    each: '{areaAc} on {soilGroup}',
    help: 'A part is ground of one soil under one cover.',
    maxRows: 12,
    shownWhen: { ground: 'parts' },
    offeredBy: 'pastures',
    columns: ground,
    refusals: [{ at: 'soilGroup', when: lacksNumber, say: noGroupA }],
    default: [
      { ...usualGround, areaAc: 120, soilGroup: 'b', texture: 'silt-loam', groundCoverPercent: 45, grazing: 'heavy' },
      { ...usualGround, areaAc: 35, soilGroup: 'd', texture: 'silty-clay', groundCoverPercent: 70, grazing: 'moderate' },
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
