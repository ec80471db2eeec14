import { ribbons } from '../../asks/textures.ts';
import { choice, number, rows } from '../../kit/inputs.ts';

export type RibbonTexture = keyof typeof ribbons;

export const isRibbon = (texture: string): texture is RibbonTexture => Object.hasOwn(ribbons, texture);
/** What a line of text calls it: the words after the colon. */
export const soilName = (texture: RibbonTexture | 'own'): string => (texture === 'own' ? 'the soil as measured' : ribbons[texture].short);

/**
 * Loam and silt loam may have changed places in the list of 1983: its other conductivities are a third to two thirds of the saturated ones printed a year
 * before, and these two are a quarter of it and nearly all of it; exchanged, each is half. 0.34 and 0.65 cm per hour are what every copy prints, so they
 * stand, and readers are told of the doubt. The inference is our own.
 */
export const exchangedTextures = { loam: 'silt-loam', 'silt-loam': 'loam' } as const;
/** The two soils whose rates may have changed places in the table. */
export const isExchanged = (texture: string): texture is keyof typeof exchangedTextures => Object.hasOwn(exchangedTextures, texture);

const byTexture = Object.keys(ribbons);

export const inputs = {
  storm: choice('How did it come?', 'burst', {
    options: {
      burst: { label: 'One hard stretch', short: 'one hard stretch' },
      spells: { label: 'Several spells, one after the other', short: 'several spells' },
      day: { label: 'I only have the day’s rain: spread it like a usual storm', short: 'a day’s rain, spread' },
    },
    help: 'How hard it rains counts for more than how much.',
  }),
  rainIn: number('Rain', 'P', 'in', [0.05, 30], 2, {
    step: 0.25,
    help: 'For one hard stretch: what fell in that stretch, not in the whole day.',
    field: 'Read a straight-sided can when the hard part stops, and again when it is all over.',
    shownWhen: { storm: ['burst', 'day'] },
  }),
  hardMin: number('Minutes that the hard part lasted', 't_{rain}', 'min', [2, 1440], 60, {
    step: 5,
    ask: 'How many minutes was the hard part? From the first roar on the roof until it let up.',
    shownWhen: { storm: 'burst' },
  }),
  spells: rows({
    label: 'Spells of rain, in order',
    rowName: 'spell',
    each: '{fellIn} over {lastsMin}',
    help: 'A pause is a spell with no rain. The ground does not drain in it here.',
    maxRows: 12,
    shownWhen: { storm: 'spells' },
    columns: { lastsMin: number('Lasted', 't', 'min', [2, 1440], 20), fellIn: number('Fell', 'P', 'in', [0, 20], 0.5) },
    default: [
      { lastsMin: 30, fellIn: 0.2 },
      { lastsMin: 20, fellIn: 1.2 },
      { lastsMin: 40, fellIn: 0.6 },
    ],
  }),
  rainType: choice('Where you are', 'ii', {
    options: {
      ii: { label: 'Most of the United States (type II)', short: 'type II storms' },
      iii: { label: 'Gulf and Atlantic coast (type III)', short: 'type III storms' },
      i: { label: 'Pacific side, drier (type I)', short: 'type I storms' },
      ia: { label: 'Pacific side, long soft winter rain (type IA)', short: 'type IA storms' },
    },
    help: 'Sets how the day’s rain is spread over its hours (24-hour distribution).',
    shownWhen: { storm: 'day' },
  }),
  texture: choice('Wet some of the soil and squeeze out a ribbon', 'silt-loam', {
    options: { ...ribbons, own: 'I have the soil’s own numbers from a measurement' },
    belongsTo: 'management',
    help: 'Take it from the top few inches. The tightest layer near the top decides.',
    offeredBy: 'pasture.texture',
  }),
  conductivityInPerHr: number('Rate when soaked (conductivity behind the wetting front)', 'K_{own}', 'in/hr', [0.005, 10], 0.25, {
    belongsTo: 'management',
    shownWhen: { texture: 'own' },
  }),
  suctionIn: number('Suction at the wetting front', '\\psi_{own}', 'in', [0.5, 60], 6.5, { belongsTo: 'management', shownWhen: { texture: 'own' } }),
  roomPercent: number('Room for water, share of the soil’s volume', 'r', 'pct', [1, 60], 25, {
    belongsTo: 'management',
    shownWhen: { texture: 'own' },
  }),
  wetness: choice('How far did a rod go in before the rain?', 'inches', {
    options: {
      stops: 'It stopped in the top 2 in: dry',
      inches: 'A few inches: moist on top',
      foot: 'A foot or more: moist',
      mud: 'It sank in: soaked',
      known: 'I know how full the pores were',
    },
    belongsTo: 'management',
    help: 'Push a smooth rod, pencil-thick, by hand. It stops where the soil is dry.',
    shownWhen: { texture: byTexture },
  }),
  filledPercent: number('Pores filled before the rain', 's_e', 'pct', [0, 95], 40, {
    belongsTo: 'management',
    help: 'Of the pores that water can fill (effective saturation).',
    shownWhen: { texture: byTexture, wetness: 'known' },
  }),
  rings: choice('Have you run ring tests here and on other ground?', 'none', {
    options: {
      none: { label: 'No: take the book value', short: 'the book value' },
      both: { label: 'Yes: change it by my own two tests', short: 'my own ring tests' },
    },
    belongsTo: 'management',
    help: 'Book values know nothing of grazing. Only your own two ring tests can tell this ground from that.',
  }),
  ringHereInPerHr: number('Ring test on this ground', 'q_{here}', 'in/hr', [0.02, 60], 1, {
    belongsTo: 'management',
    help: 'Second pouring, the geometric mean of three rings or more, as “Infiltration rate from a ring test” gives it.',
    shownWhen: { rings: 'both' },
  }),
  ringThereInPerHr: number('Ring test on the ground that you leave at the book value', 'q_{there}', 'in/hr', [0.02, 60], 1, {
    belongsTo: 'management',
    field: 'Same soil, same day, same ring, same depth of water.',
    shownWhen: { rings: 'both' },
  }),
};
