import * as v from 'valibot';
import { haySchema } from './hay.ts';
import { herdGroupSchema } from './herdGroup.ts';
import { placeVersion } from './migrations/place.ts';
import { amountSchema, between, countSchema, idSchema, monthDaySchema, monthSchema, nameSchema, recordEntries, typedSchema } from './parts.ts';
import { pastureSchema } from './pasture.ts';
import { pricesSchema } from './prices.ts';
import { soilSchema } from './soil.ts';
import { toolsSchema } from './tools.ts';
import { waterPointSchema } from './waterPoint.ts';
import { curves, fallFlushes, groundWords, rainClasses } from './words.ts';

const listOf = <Each extends v.GenericSchema>(each: Each, most: number) => v.pipe(v.array(each), v.maxLength(most));

/** All that is told once of a place. What is left out offers nothing; only the name must be there. */
export const placeSchema = v.strictObject({
  ...recordEntries,
  v: v.literal(placeVersion),
  name: nameSchema,
  /** Where this place's copy of the pages lies, for links in notes. */
  linkBase: v.optional(v.pipe(v.string(), v.regex(/^https?:\/\/[^\s]+$/), v.maxLength(500))),
  /** To the degree: no place can be told from it. */
  latitudeDeg: v.optional(v.pipe(v.number(), v.integer(), v.minValue(-90), v.maxValue(90))),
  yearRainIn: v.optional(between(0, 500)),
  rainClass: v.optional(v.picklist(rainClasses)),
  rainFactor: v.optional(between(0, 2000)),
  hotF: v.optional(between(-60, 140)),
  /** What one of the main kind eats in a day: the measure of a stock-day. */
  yardstickLbPerDay: v.optional(amountSchema),
  /** Opened as an example, to be thrown away. */
  isDemo: v.optional(v.boolean()),
  groundWord: v.optional(v.picklist(groundWords)),
  season: v.optional(
    v.strictObject({
      turnInDay: v.optional(monthDaySchema),
      endDay: v.optional(monthDaySchema),
      hayFromDay: v.optional(monthDaySchema),
      frostDay: v.optional(monthDaySchema),
    }),
  ),
  growth: v.optional(
    v.strictObject({
      curve: v.optional(v.picklist(curves)),
      startMonth: v.optional(monthSchema),
      bestMonth: v.optional(monthSchema),
      quitMonth: v.optional(monthSchema),
      fallFlush: v.optional(v.picklist(fallFlushes)),
    }),
  ),
  grazing: v.optional(v.strictObject({ stayDays: v.optional(countSchema), herdCount: v.optional(countSchema), restDays: v.optional(countSchema) })),
  soils: listOf(soilSchema, 200),
  pastures: listOf(pastureSchema, 500),
  /** Pastures that were taken away, by which visits and lines of the record still call their ground. */
  pasturesTakenAway: v.optional(listOf(v.strictObject({ id: idSchema, name: nameSchema }), 500)),
  herd: listOf(herdGroupSchema, 100),
  hay: v.optional(haySchema),
  water: listOf(waterPointSchema, 200),
  prices: v.optional(pricesSchema),
  tools: v.optional(toolsSchema),
  /** Median rain of the nearest station by month, January first. */
  stationMonthsIn: v.optional(v.pipe(v.array(between(0, 200)), v.length(12))),
  typed: typedSchema,
});
export type Place = v.InferOutput<typeof placeSchema>;
