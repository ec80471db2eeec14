import { choice, number, rows } from '../../kit/inputs.ts';
import { soilGroupOf } from './compute.ts';
import { byGroundCover, byLitter, byTilth, coverOptions } from './covers.ts';
import { lacksNumber, noGroupA } from './refusals.ts';

const areaAc = number({
  label: 'Area',
  symbol: 'A',
  belongsTo: 'place',
  unit: 'ac',
  min: 0.01,
  max: 100_000,
  usual: 'pastureAc',
  default: 40,
  field: 'A map with a scale, or pace the fence lines: length times width in yards, divided by 4,840, is acres.',
});
const soilGroup = choice({
  label: 'How the deep soil drains (soil group)',
  belongsTo: 'place',
  default: 'b',
  help: 'The soil survey gives each soil a letter.',
  options: {
    a: { label: 'A: deep, drains fast' },
    b: { label: 'B: drains fairly well' },
    c: { label: 'C: drains slowly' },
    d: { label: 'D: hardly drains, or shallow' },
    ask: { label: 'I don’t know: ask me two questions' },
  },
});
const texture = choice({
  label: 'Wet some subsoil and squeeze out a ribbon',
  belongsTo: 'place',
  default: 'silt-loam',
  shownWhen: { soilGroup: 'ask' },
  help: 'A stand-in for the survey: the list was made for disturbed soils.',
  options: {
    sand: { label: 'No ribbon, gritty, falls apart: sand' },
    'loamy-sand': { label: 'Hardly a ribbon, gritty: loamy sand' },
    'sandy-loam': { label: 'Ribbon under 1 in, gritty: sandy loam' },
    loam: { label: 'Ribbon under 1 in, a little gritty: loam' },
    'silt-loam': { label: 'Ribbon under 1 in, smooth like flour: silt loam' },
    'sandy-clay-loam': { label: 'Ribbon 1 to 2 in, gritty: sandy clay loam' },
    'clay-loam': { label: 'Ribbon 1 to 2 in, a little gritty: clay loam' },
    'silty-clay-loam': { label: 'Ribbon 1 to 2 in, smooth: silty clay loam' },
    'sandy-clay': { label: 'Ribbon over 2 in, gritty: sandy clay' },
    'silty-clay': { label: 'Ribbon over 2 in, smooth: silty clay' },
    clay: { label: 'Ribbon over 2 in, neither: clay' },
  },
});
const barrier = choice({
  label: 'Rock, hardpan or water within reach of a digging bar?',
  belongsTo: 'place',
  default: 'deep',
  shownWhen: { soilGroup: 'ask' },
  options: { deep: { label: 'Deeper than 40 in, or none' }, middle: { label: 'Between 20 and 40 in' }, shallow: { label: 'Within 20 in' } },
});
const cover = choice({
  label: 'What grows there',
  belongsTo: 'management',
  default: 'pasture',
  help: 'Grass where it is humid is pasture here, whatever you call it. Dry range has its own list.',
  options: coverOptions,
});
const groundCoverPercent = number({
  label: 'Covered ground',
  symbol: 'G',
  belongsTo: 'management',
  unit: 'pct',
  min: 0,
  max: 100,
  default: 45,
  help: 'Plants and litter together, against bare soil.',
  shownWhen: { cover: byGroundCover },
  ask: 'Walk a hundred steps. At each one look at the tip of your boot: plant or litter counts one, bare soil counts nothing. The count is the percent.',
});
const grazing = choice({
  label: 'How it is grazed',
  belongsTo: 'management',
  default: 'heavy',
  shownWhen: { cover: byGroundCover },
  options: {
    heavy: { label: 'Hard: little left, no litter on the ground' },
    moderate: { label: 'About half is left' },
    light: { label: 'Lightly or now and then; most is left' },
    rested: { label: 'Rested, not grazed now' },
  },
});
const woodsFloor = choice({
  label: 'The woods’ floor',
  belongsTo: 'management',
  default: 'some',
  shownWhen: { cover: byLitter },
  options: {
    bare: { label: 'Litter gone: grazed hard or often burned' },
    some: { label: 'Grazed, not burned, some litter' },
    deep: { label: 'Kept from stock; litter and brush cover it' },
  },
});
const tilth = choice({
  label: 'Does the field take water well?',
  belongsTo: 'management',
  default: 'good',
  shownWhen: { cover: byTilth },
  help: 'Well: residue on a fifth of the ground or more, grass in the rotation, a rough surface.',
  options: { poor: { label: 'Worse than most' }, good: { label: 'As well as most, or better' } },
});
const curveNumber = number({
  label: 'Curve number',
  symbol: 'CN',
  belongsTo: 'management',
  unit: 'cn',
  min: 30,
  max: 98,
  default: 79,
  help: 'For middling wetness, as the tables print it.',
  shownWhen: { cover: 'own' },
});
const whenOne = <T extends { readonly shownWhen?: Readonly<Record<string, string | readonly string[]>> }>(input: T) => ({
  ...input,
  shownWhen: { ...input.shownWhen, ground: 'one' },
});

export const inputs = {
  rainIn: number({
    label: 'Rain in the storm',
    symbol: 'P',
    belongsTo: 'place',
    unit: 'in',
    min: 0.01,
    max: 30,
    usual: 'stormIn',
    default: 3,
    help: 'One storm, or one day of rain.',
    field: 'Two straight-sided cans well away from trees and walls, read at the same hour. Take their mean. Two cans beat a guess.',
  }),
  wetness: choice({
    label: 'How wet the ground was before',
    belongsTo: 'place',
    default: 'average',
    help: 'Both managements get the same. The range under the answer always shows dry to wet.',
    options: {
      dry: { label: 'Dry: no rain worth naming for a week or more' },
      average: { label: 'In between' },
      wet: { label: 'Wet: good rains in the five days before' },
      frozen: { label: 'Frozen, or under snow' },
    },
  }),
  ground: choice({
    label: 'The pasture is',
    belongsTo: 'place',
    default: 'one',
    options: { one: { label: 'One kind of ground' }, parts: { label: 'Several parts' } },
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
  combine: choice({
    label: 'Parts are put together by',
    belongsTo: 'place',
    convention: true,
    default: 'by-runoff',
    shownWhen: { ground: 'parts' },
    help: 'Each part run by itself gives more runoff from mixed ground than one middle number does.',
    options: { 'by-runoff': { label: 'each part’s own runoff' }, 'by-number': { label: 'one area-weighted curve number' } },
  }),
  abstraction: choice({
    label: 'Rain used up before any runs',
    belongsTo: 'place',
    convention: true,
    default: 'ia-20',
    help: 'The handbooks’ tables stand on 0.2 of what the ground can hold (S). Plots measured later fit 0.05 better.',
    options: { 'ia-20': { label: '0.2 S, as in the handbooks' }, 'ia-05': { label: '0.05 S, as later measured' } },
  }),
};
