import * as v from 'valibot';

/** A day as it is written everywhere here: year, month, day. */
export const daySchema = v.pipe(v.string(), v.isoDate());
/** Month and day. */
const monthDaySchema = v.pipe(v.string(), v.regex(/^\d\d-\d\d$/));
export const monthSchema = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(12));
const countSchema = v.pipe(v.number(), v.integer(), v.minValue(0));
export const aboveZeroSchema = v.pipe(v.number(), v.gtValue(0));
export const notNegativeSchema = v.pipe(v.number(), v.minValue(0));
const percentSchema = v.pipe(v.number(), v.minValue(0), v.maxValue(100));
/** Short name by which other entries refer to this one. */
const idSchema = v.pipe(v.string(), v.regex(/^[a-z]+(?:-[a-z]+)*$/));
const wordsSchema = v.pipe(v.string(), v.minLength(1));

const soilSchema = v.strictObject({
  /** Short name, by which pastures refer to the soil. */
  id: idSchema,
  /** Where the soil lies, in plain words; never the name of a soil series. */
  name: wordsSchema,
  /** Texture of the plow layer, in the words of the ribbon test. */
  texture: v.picklist(['silt-loam', 'silty-clay']),
  /** Organic matter of the top 6 in, percent of the dry weight. */
  organicMatterPercent: percentSchema,
  /** Depth to what stops roots and water, or to where digging stopped, inches. */
  depthIn: aboveZeroSchema,
  /** What stops them there. */
  depthEndsAt: v.picklist(['not-reached', 'rock', 'water-table']),
  /** Hydrologic soil group: how the deep soil drains, from A (fast) to D (hardly). */
  soilGroup: v.picklist(['a', 'b', 'c', 'd']),
});

/** What grows on a grazed pasture, and how stock use it. */
const grassSchema = v.strictObject({
  /** What grows there, by the keys of the table of heights. */
  forage: v.literal('cool-season-mix'),
  /** The same by the keys of the table of pounds in an inch. */
  stand: v.literal('mixed-pasture'),
  /** How thick it stands. */
  condition: v.literal('good'),
  /** Pounds an acre in an inch of height. */
  densityLbPerAcIn: aboveZeroSchema,
  /** Height when grazing starts, inches. */
  startHeightIn: aboveZeroSchema,
  /** Height at which it stops, inches. */
  stopHeightIn: aboveZeroSchema,
  /** What it grows in a normal year, pounds an acre. */
  normalLbPerAc: aboveZeroSchema,
  /** What it grows in a poor year, pounds an acre. */
  poorLbPerAc: aboveZeroSchema,
  /** Its farthest corner from water, miles. */
  waterDistanceMi: aboveZeroSchema,
  /** Slope, percent. */
  slopePercent: percentSchema,
  /** Share that stock really use, percent. */
  reachPercent: percentSchema,
});

const pastureSchema = v.strictObject({
  /** Short name, by which visits refer to the pasture. */
  id: idSchema,
  /** What the family calls it. */
  name: wordsSchema,
  /** Map area, acres. */
  areaAc: aboveZeroSchema,
  /** `id` of the soil that most of it lies on. */
  soil: idSchema,
  /** What the ground is for. Only `grazed` acres are counted as pasture. */
  use: v.picklist(['grazed', 'hay', 'woods', 'yards']),
  /** What grows there, by the keys of the runoff table. */
  cover: v.picklist(['pasture', 'meadow', 'woods', 'farmstead']),
  /** Ground covered by plants, litter or stones, percent. */
  groundCoverPercent: percentSchema,
  /** How hard it is grazed; `rested` where no stock goes. */
  grazing: v.picklist(['heavy', 'moderate', 'light', 'rested']),
  /** Paddocks that fences make of it; 0 where no stock goes. */
  paddockCount: countSchema,
  /** Only of grazed pastures. */
  grass: v.optional(grassSchema),
});

const birthsSchema = v.strictObject({
  /** Months in which they are born, 1 to 12. */
  months: v.pipe(v.array(monthSchema), v.minLength(1)),
  /** Day by which half are born, month and day. */
  middleDay: monthDaySchema,
});

const herdGroupSchema = v.strictObject({
  /** Kind of stock. */
  stock: v.picklist(['cow', 'bull', 'heifer', 'ewe']),
  /** What they are, in plain words. */
  name: wordsSchema,
  /** How many, head. */
  countHead: countSchema,
  /** Weight of one, pounds. */
  weightLb: aboveZeroSchema,
  /** When they calve or lamb; null if they do not. */
  births: v.nullable(birthsSchema),
});

const stackSchema = v.strictObject({
  /** What hay it is. */
  hay: wordsSchema,
  /** Bales. */
  baleCount: countSchema,
  /** Weight of one as it was baled, pounds, water included. */
  baleLb: aboveZeroSchema,
  /** Water in the hay, percent of the weight as it lies. */
  moisturePercent: percentSchema,
  /** Day it was baled. */
  baledDay: daySchema,
  /** How it is stored. */
  storedAs: v.picklist(['ground-uncovered', 'raised-uncovered', 'ground-covered', 'raised-covered', 'roof', 'barn']),
});

const hayBarnSchema = v.strictObject({
  /** Bales that fit under the roof. */
  roomBaleCount: countSchema,
  /** What lies there. */
  stacks: v.array(stackSchema),
});

const rainGaugeSchema = v.strictObject({
  /** What kind of gauge it is. */
  kind: wordsSchema,
  /** Hour at which it is read, 0 to 23, clock of the place. */
  readAtHour: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(23)),
  /** File of its daily record. */
  recordFile: v.literal('weather.csv'),
});

const pouringSchema = v.strictObject({
  /** Water poured, milliliters. */
  volumeMl: aboveZeroSchema,
  /** Until it was gone, minutes. */
  minutes: aboveZeroSchema,
});

const ringSchema = v.strictObject({
  /** Inside diameter of the ring, inches. */
  boreIn: aboveZeroSchema,
  /** Pourings in order; the last one leads. */
  pourings: v.pipe(v.array(pouringSchema), v.minLength(1)),
});

const slakeSampleSchema = v.strictObject({
  /** Picked from under a plant or from a bare spot. */
  from: v.picklist(['plant', 'bare']),
  /** When half of the fragment was gone, seconds after going under; null if it held for five minutes. */
  halfLostSeconds: v.nullable(notNegativeSchema),
  /** Left on the sieve after five dips, percent; 0 if it fell apart before the dips. */
  leftPercent: percentSchema,
  /** Class that was written down, 0 (falls apart) to 6 (stays whole). */
  slakeClass: v.picklist([0, 1, 2, 3, 4, 5, 6]),
});

const coverCountSchema = v.strictObject({
  /** Points on a living plant. */
  plantCount: countSchema,
  /** Points on litter. */
  litterCount: countSchema,
  /** Points on a stone. */
  stoneCount: countSchema,
  /** Points on bare soil. */
  bareCount: countSchema,
});

const rootsSchema = v.strictObject({
  /** Depth that most roots reach, inches. */
  mostIn: aboveZeroSchema,
  /** Depth of the deepest root seen, inches. */
  deepestIn: aboveZeroSchema,
});

const visitSiteSchema = v.strictObject({
  /** `id` of the pasture. */
  pasture: idSchema,
  /** How a handful of soil felt before the rings went in. */
  moistureFeel: v.picklist(['dry', 'slightly-moist', 'moist', 'wet']),
  /** Ring tests, at spots some paces apart. */
  rings: v.pipe(v.array(ringSchema), v.minLength(1)),
  /** Soil fragments put in water. */
  slakeSamples: v.pipe(v.array(slakeSampleSchema), v.minLength(1)),
  /** Step-point count of what covers the ground. */
  cover: coverCountSchema,
  /** What a shovel hole showed. */
  roots: rootsSchema,
});

const visitSchema = v.strictObject({
  /** Day of the visit. */
  day: daySchema,
  /** Who poured and counted, by role: another hand can move a result. */
  testedBy: wordsSchema,
  /** Days since the gauge last showed rain; 1 means that it rained the day before. */
  daysSinceRain: v.pipe(v.number(), v.integer(), v.minValue(1)),
  /** Rain of the five days before, inches. */
  fiveDayRainIn: notNegativeSchema,
  /** What was done at each pasture. */
  sites: v.pipe(v.array(visitSiteSchema), v.minLength(1)),
});

/** The demo place: everything in it is invented. */
export const placeSchema = v.strictObject({
  /** Name of the place. */
  name: wordsSchema,
  /** Says that it is invented; shown wherever the place is. */
  invented: v.pipe(v.string(), v.includes('invented')),
  /** Day on which things stand as told here. */
  asOfDay: daySchema,
  /** All of it, acres; the pastures sum to this. */
  areaAc: aboveZeroSchema,
  /** Latitude, degrees north. */
  latitudeDeg: v.pipe(v.number(), v.minValue(-66), v.maxValue(66)),
  /** Height above the sea, feet. */
  elevationFt: v.number(),
  /** How the ground lies. */
  lieOfTheLand: wordsSchema,
  /** Forage that grazed acres grow in a usual year, air-dry, pounds an acre. */
  usualForageLbPerAc: aboveZeroSchema,
  /** Hay that the meadow makes in a usual year, as baled, tons an acre. */
  usualHayTonPerAc: aboveZeroSchema,
  /** Days of every year on which stock go onto grass and off it, hay begins, and frost first kills. */
  season: v.strictObject({ turnInDay: monthDaySchema, endDay: monthDaySchema, hayFromDay: monthDaySchema, frostDay: monthDaySchema }),
  /** When the grass grows. */
  growth: v.strictObject({ startMonth: v.literal('mar'), bestMonth: v.literal('may'), quitMonth: v.literal('oct'), fallFlush: v.literal('some') }),
  /** Soils, each once. */
  soils: v.array(soilSchema),
  /** Every piece of the place. */
  pastures: v.array(pastureSchema),
  /** Stock, by kind. */
  herd: v.array(herdGroupSchema),
  /** Hay on hand. */
  hayBarn: hayBarnSchema,
  /** Where rain is measured. */
  rainGauge: rainGaugeSchema,
  /** Field visits, oldest first. */
  visits: v.array(visitSchema),
});
export type Place = v.InferOutput<typeof placeSchema>;
export type Pasture = Place['pastures'][number];

const exampleSchema = v.strictObject({
  /** Slug of the calculator. */
  slug: idSchema,
  /** Query of the link, without its question mark. */
  query: wordsSchema,
  /** What it shows, in one plain sentence. */
  says: wordsSchema,
});

/** Worked examples by name. */
export const examplesSchema = v.record(idSchema, exampleSchema);
export type Example = v.InferOutput<typeof exampleSchema>;
