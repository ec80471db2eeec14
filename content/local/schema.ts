import * as v from 'valibot';
import { numberToCall } from '../../calculators/kit/helpLines.ts';
import { monthsOnTo } from '../../calculators/units/months.ts';

/** Fewer inches than this between start and stop are no graze, and the rest worked out from them is a few days. */
const leastBiteIn = 2;
/** What is said of values that do not go together. */
export const rules = {
  rangeOrder: 'the low end comes first',
  stop: 'a stop height or pounds to leave',
  bite: `grazing must start at least ${leastBiteIn} inches above where it stops, low end over low end and high over high; with less between them no rest comes out right`,
  monthsSum: 'the twelve months do not sum to 100',
  growth: 'a curve, or what is known in words',
  hayKind: 'the kind of hay stands in crop, and there is one only',
  order: 'the lower one first: low, likely, high, or poor, normal, good, or fast, slow, in that order',
  growthOrder: 'growth starts, is best, quits in that order within 12 months, over New Year if need be; growth in the fall ends after the best month',
  noPrice: 'a price, or none of it',
} as const;

const wordsSchema = v.pipe(v.string(), v.minLength(1));
/** Month and day: `06-30`. */
const monthDay = '(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\\d|30)|02-(?:0[1-9]|[12]\\d))';
const dateSchema = v.pipe(v.string(), v.regex(new RegExp(`^${monthDay}$`), 'a date is written as month and day, 06-30'));
/** A day of the calendar: `2026-09-14`. February may have its 29th in any year. */
export const daySchema = v.pipe(v.string(), v.regex(new RegExp(`^\\d{4}-${monthDay}$`), 'a day of the calendar, 2026-09-14'));
const aboveZeroSchema = v.pipe(v.number(), v.gtValue(0));
const notNegativeSchema = v.pipe(v.number(), v.minValue(0));
const rangeSchema = v.pipe(
  v.tuple([aboveZeroSchema, aboveZeroSchema]),
  v.check(([low, high]) => low <= high, rules.rangeOrder),
);
const monthsOf = <Each extends v.GenericSchema>(each: Each) => v.pipe(v.array(each), v.length(12, 'twelve months, January first'));

/** Where a value comes from: a key of `content/sources`, `common practice` or `from memory`. */
const cited = {
  source: wordsSchema,
  /** Table, page, or how it was worked out. */
  at: v.optional(wordsSchema),
  /** Further sources that it was worked out from, or that say the same. */
  also: v.optional(v.array(wordsSchema)),
};
const noteSchema = v.strictObject({ ...cited, says: wordsSchema });

const isWellAbove = (startIn: number, stopIn: number | undefined): boolean => stopIn !== undefined && startIn - stopIn >= leastBiteIn;

const stubbleRowSchema = v.pipe(
  v.strictObject({
    ...cited,
    forage: wordsSchema,
    /** Height at which grazing may start, inches, low and high. */
    startIn: v.optional(rangeSchema),
    /** Height at which it stops, inches, low and high. */
    stopIn: v.optional(rangeSchema),
    /** What stays on the ground, pounds an acre, where that counts and not a height. */
    leaveLbPerAc: v.optional(rangeSchema),
  }),
  v.check(({ stopIn, leaveLbPerAc }) => stopIn !== undefined || leaveLbPerAc !== undefined, rules.stop),
  v.check(
    ({ startIn, stopIn }) =>
      startIn === undefined || stopIn === undefined || (startIn[0] > stopIn[1] && startIn.every((each, end) => isWellAbove(each, stopIn[end]))),
    rules.bite,
  ),
);

const curveSchema = v.strictObject({
  ...cited,
  name: wordsSchema,
  /** Share of the year's growth in each month, percent, January first. */
  percentByMonth: v.pipe(
    monthsOf(notNegativeSchema),
    // To a millionth, since tenths have no exact sum.
    v.check((months) => Math.abs(months.reduce((sum, each) => sum + each, 0) - 100) < 1e-6, rules.monthsSum),
  ),
});

/** Growth in the fall, as forms ask for it. */
const fallFlushes = ['none', 'some', 'much'] as const;

/** Kinds of hay that a price may be of. */
export const hayCrops = ['alfalfa', 'bermudagrass', 'grass', 'mixed grass', 'grain', 'timothy'] as const;

/** Day, month or year on which prices were seen. */
const seenSchema = v.pipe(
  v.string(),
  v.regex(new RegExp(`^\\d{4}(?:-(?:0[1-9]|1[0-2]|${monthDay}))?$`), 'a day, a month or a year: 2026-09-14, 2026-09, 2026'),
);
const monthKeys = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'] as const;
const monthKeySchema = v.picklist(monthKeys);
const priceSchema = v.optional(aboveZeroSchema);
/** Values that nobody knows are passed over. */
const isInOrder = (values: readonly (number | null | undefined)[]): boolean => {
  const known = values.filter((each) => typeof each === 'number');
  return known.every((each, index) => index === 0 || (known[index - 1] ?? each) <= each);
};

const lineSchema = v.strictObject({
  ...cited,
  /** Who answers. */
  who: wordsSchema,
  /** Number, and how to use it. */
  reach: v.pipe(v.string(), v.regex(numberToCall, 'a whole number to call')),
  hours: wordsSchema,
});

/** The values of one kind of country. A value that nobody knows is null; the page then says "fill yours". */
export const countrySchema = v.strictObject({
  name: wordsSchema,
  /** Where it lies and what grows there, so that people find their own. */
  where: wordsSchema,
  /** Shown in every guide about hard decisions. It cannot be left out. */
  talkToSomeone: v.strictObject({
    /** The office's own; they stand before the national ones. Those stand in `calculators/kit/helpLines.ts`, for every country. */
    lines: v.array(lineSchema),
    /** People close by, in words. */
    near: wordsSchema,
  }),
  stubble: v.strictObject({ rows: v.pipe(v.array(stubbleRowSchema), v.minLength(1)), note: v.optional(noteSchema) }),
  yields: v.pipe(
    v.strictObject({
      ...cited,
      /** What was measured, where, and whether the water is in it. */
      of: wordsSchema,
      /** Each of the three only where somebody measured or rated such years; the ends of a range or the mean of one year are no kinds of years. */
      poorLbPerAc: v.nullable(aboveZeroSchema),
      normalLbPerAc: v.nullable(aboveZeroSchema),
      goodLbPerAc: v.nullable(aboveZeroSchema),
      notes: v.optional(v.array(noteSchema)),
    }),
    v.check(({ poorLbPerAc, normalLbPerAc, goodLbPerAc }) => isInOrder([poorLbPerAc, normalLbPerAc, goodLbPerAc]), rules.order),
  ),
  growthCurve: v.pipe(
    v.strictObject({
      /** The first one fills a form. */
      curves: v.array(curveSchema),
      /** What is known in words where nobody printed a curve. */
      markers: v.array(noteSchema),
    }),
    v.check(({ curves, markers }) => curves.length + markers.length > 0, rules.growth),
  ),
  restDays: v.pipe(
    v.strictObject({
      ...cited,
      /** Rest in fast growth, days. */
      fastDays: v.nullable(aboveZeroSchema),
      /** Rest in slow growth, days. */
      slowDays: v.nullable(aboveZeroSchema),
      says: wordsSchema,
    }),
    v.check(({ fastDays, slowDays }) => isInOrder([fastDays, slowDays]), rules.order),
  ),
  decisionDates: v.pipe(v.array(v.strictObject({ ...cited, date: dateSchema, says: wordsSchema })), v.minLength(1)),
  sowingDates: v.array(v.strictObject({ ...cited, crop: wordsSchema, from: dateSchema, by: dateSchema, says: v.optional(wordsSchema) })),
  hayPrice: v.pipe(
    v.strictObject({
      ...cited,
      /** One kind of hay: low, likely and high are grades of it, never another kind. */
      crop: v.picklist(hayCrops, `one kind of hay: ${hayCrops.join(', ')}`),
      /** Where it was sold, how it was baled, and which grades the three prices are. */
      of: v.pipe(
        wordsSchema,
        v.check((words) => !hayCrops.some((crop) => words.toLowerCase().includes(crop)), rules.hayKind),
      ),
      lowUsdPerTon: v.nullable(aboveZeroSchema),
      likelyUsdPerTon: aboveZeroSchema,
      highUsdPerTon: v.nullable(aboveZeroSchema),
      seen: seenSchema,
    }),
    v.check(({ lowUsdPerTon, likelyUsdPerTon, highUsdPerTon }) => isInOrder([lowUsdPerTon, likelyUsdPerTon, highUsdPerTon]), rules.order),
  ),
  /** Null until somebody copies the normals of a station that is named. */
  rainMonths: v.nullable(
    v.strictObject({
      ...cited,
      station: wordsSchema,
      /** A form for triggers takes medians alone, one for a year's rain takes normals. Untold they are normals. */
      are: v.optional(v.picklist(['normals', 'medians'])),
      inches: monthsOf(notNegativeSchema),
    }),
  ),
  /** Null in months without growth. */
  waterUse: v.strictObject({ ...cited, of: wordsSchema, inPerDay: monthsOf(v.nullable(notNegativeSchema)) }),
  /** Rain factor of the soil-loss equation, US units. */
  erosivity: v.pipe(
    v.strictObject({ ...cited, low: v.nullable(aboveZeroSchema), likely: aboveZeroSchema, high: v.nullable(aboveZeroSchema), says: wordsSchema }),
    v.check(({ low, likely, high }) => isInOrder([low, likely, high]), rules.order),
  ),
  /** What stock sells for, and what it costs to buy cows back. No country has it until somebody saw prices there. */
  stockPrices: v.optional(
    v.pipe(
      v.strictObject({
        ...cited,
        /** Where they were seen, and of which stock. */
        of: wordsSchema,
        calfEarlyUsdPerCwt: priceSchema,
        calfUsualUsdPerCwt: priceSchema,
        cowSaleUsd: priceSchema,
        buyBackLowUsd: priceSchema,
        buyBackLikelyUsd: priceSchema,
        buyBackHighUsd: priceSchema,
        seen: seenSchema,
      }),
      v.check(({ source, at, also, of, seen, ...prices }) => Object.values(prices).some((each) => each !== undefined), rules.noPrice),
      v.check(({ buyBackLowUsd, buyBackLikelyUsd, buyBackHighUsd }) => isInOrder([buyBackLowUsd, buyBackLikelyUsd, buyBackHighUsd]), rules.order),
    ),
  ),
  /** What a load of hay costs to haul. */
  freight: v.optional(v.strictObject({ ...cited, of: wordsSchema, usdPerLoad: notNegativeSchema, seen: seenSchema })),
  interest: v.optional(v.strictObject({ ...cited, of: wordsSchema, percent: notNegativeSchema, seen: seenSchema })),
  /** When grass grows, as forms ask for it. */
  growthMonths: v.optional(
    v.pipe(
      v.strictObject({
        ...cited,
        of: wordsSchema,
        startMonth: monthKeySchema,
        bestMonth: monthKeySchema,
        quitMonth: monthKeySchema,
        fallFlush: v.picklist(fallFlushes),
      }),
      v.check(({ startMonth, bestMonth, quitMonth, fallFlush }) => {
        const [best, quit] = [monthsOnTo(startMonth, bestMonth), monthsOnTo(startMonth, quitMonth)];
        return fallFlush === 'none' ? best <= quit : best < quit;
      }, rules.growthOrder),
    ),
  ),
  /** First killing frost. */
  frost: v.optional(v.strictObject({ ...cited, of: wordsSchema, firstDay: dateSchema })),
});
export type CountryValues = v.InferOutput<typeof countrySchema>;
export type Note = v.InferOutput<typeof noteSchema>;

/** Which value goes into which field: keys of a calculator's inputs, each with the path of a value in a country's file. */
export const fieldsSchema = v.record(wordsSchema, v.record(wordsSchema, wordsSchema));
