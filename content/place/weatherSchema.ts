import * as v from 'valibot';
import { aboveZeroSchema, daySchema, monthSchema, notNegativeSchema } from './schema.ts';

const chanceSchema = v.pipe(v.number(), v.minValue(0), v.maxValue(1));

const monthSettingsSchema = v.strictObject({
  /** Month of the year, 1 to 12. */
  month: monthSchema,
  /** Chance of a wet day after a dry one. */
  wetAfterDryChance: chanceSchema,
  /** Chance of a wet day after a wet one. */
  wetAfterWetChance: chanceSchema,
  /** Gamma shape of a wet day's rain, no unit. */
  amountShape: aboveZeroSchema,
  /** Gamma scale of a wet day's rain, inches; shape times scale is the mean wet day. */
  amountScaleIn: aboveZeroSchema,
  /** Standard deviation of the day's high about the curve of the year, degrees Fahrenheit. */
  highSpreadF: aboveZeroSchema,
  /** Standard deviation of the day's low about the curve of the year, degrees Fahrenheit. */
  lowSpreadF: aboveZeroSchema,
});

const temperatureSettingsSchema = v.strictObject({
  /** Mean of the highs over the year, degrees Fahrenheit. */
  highMeanF: v.number(),
  /** How far the curve of the highs swings above and below that, degrees Fahrenheit. */
  highSwingF: aboveZeroSchema,
  /** Mean of the lows over the year, degrees Fahrenheit. */
  lowMeanF: v.number(),
  /** How far the curve of the lows swings above and below that, degrees Fahrenheit. */
  lowSwingF: aboveZeroSchema,
  /** Day of the year at the top of both curves. */
  warmestDayOfYear: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(366)),
  /** Correlation of one day's departure with the next day's. */
  dayToDayCorrelation: chanceSchema,
  /** Correlation of the high's departure with the low's on the same day. */
  highToLowCorrelation: chanceSchema,
  /** How much lower the high of a wet day is than that of a dry one, degrees Fahrenheit. */
  wetDayHighDropF: notNegativeSchema,
  /** How much higher the low of a wet day is, degrees Fahrenheit: cloud keeps the night warm. */
  wetDayLowRiseF: notNegativeSchema,
  /** The low stays at least this far under the high, degrees Fahrenheit. */
  leastDailyRangeF: aboveZeroSchema,
});

/** What the made-up weather is made from. */
export const weatherSettingsSchema = v.strictObject({
  /** Says that the numbers are invented, and for what country. */
  note: v.pipe(v.string(), v.regex(/invented/i)),
  /** Seed of the random numbers. */
  seed: v.pipe(v.number(), v.integer(), v.minValue(1)),
  /** First day of the record. */
  firstDay: daySchema,
  /** Last day of the record. */
  lastDay: daySchema,
  /** High and low. */
  temperature: temperatureSettingsSchema,
  /** January to December. */
  months: v.pipe(v.array(monthSettingsSchema), v.length(12)),
});
export type WeatherSettings = v.InferOutput<typeof weatherSettingsSchema>;

/** A day of the gauge's record. */
export const weatherDaySchema = v.strictObject({
  /** Day on which the gauge was read. */
  day: daySchema,
  /** Rain, and snow melted, inches. */
  rainIn: notNegativeSchema,
  /** Highest temperature, degrees Fahrenheit. */
  highF: v.number(),
  /** Lowest temperature, degrees Fahrenheit. */
  lowF: v.number(),
});
export type WeatherDay = v.InferOutput<typeof weatherDaySchema>;
