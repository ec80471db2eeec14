import { choice, number, rows } from '../../kit/inputs.ts';
import { soilGroupOf } from './compute.ts';
import { byGroundCover, byLitter, byTilth, coverOptions } from './covers.ts';
import { lacksNumber, noGroupA } from './refusals.ts';

const areaAc = number('Area', 'A', 'ac', [0.01, 100_000], 40, {
  usual: 'pastureAc',
  field: 'A map with a scale, or pace the fence lines: length times width in yards, divided by 4,840, is acres.',
});
const soilGroup = choice('How the deep soil drains (soil group)', 'b', {
  options: {
    a: 'A: deep, drains fast',
    b: 'B: drains fairly well',
    c: 'C: drains slowly',
    d: 'D: hardly drains, or shallow',
    ask: 'I don’t know: ask me two questions',
  },
  help: 'The soil survey gives each soil a letter.',
});
const texture = choice('Wet some subsoil and squeeze out a ribbon', 'silt-loam', {
  options: {
    sand: 'No ribbon, gritty, falls apart: sand',
    'loamy-sand': 'Hardly a ribbon, gritty: loamy sand',
    'sandy-loam': 'Ribbon under 1 in, gritty: sandy loam',
    loam: 'Ribbon under 1 in, a little gritty: loam',
    'silt-loam': 'Ribbon under 1 in, smooth like flour: silt loam',
    'sandy-clay-loam': 'Ribbon 1 to 2 in, gritty: sandy clay loam',
    'clay-loam': 'Ribbon 1 to 2 in, a little gritty: clay loam',
    'silty-clay-loam': 'Ribbon 1 to 2 in, smooth: silty clay loam',
    'sandy-clay': 'Ribbon over 2 in, gritty: sandy clay',
    'silty-clay': 'Ribbon over 2 in, smooth: silty clay',
    clay: 'Ribbon over 2 in, neither: clay',
  },
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
  ground: choice('The pasture is', 'one', { options: { one: 'One kind of ground', parts: 'Several parts' } }),
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
    options: { 'ia-20': '0.2 S, as in the handbooks', 'ia-05': '0.05 S, as later measured' },
    convention: true,
    help: 'The handbooks’ tables stand on 0.2 of what the ground can hold (S). Plots measured later fit 0.05 better.',
  }),
};
