import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import * as v from 'valibot';
import { views } from './place/ui/views.ts';

/** What is wrong, for whoever wrote the file. */
const said = (issue: v.BaseIssue<unknown>): string => {
  if (issue.type !== 'strict_object') return issue.message;
  return issue.expected === 'never' ? 'is no name that src/content.config.ts knows' : 'is missing';
};
/** Astro's collections ask for a schema of another library: this one passes all on to ours, and what ours says back, with its place. */
const checkedBy = <S extends v.GenericSchema>(schema: S) =>
  z.unknown().transform((data, context): v.InferOutput<S> => {
    const read = v.safeParse(schema, data);
    if (read.success) return read.output;
    for (const issue of read.issues)
      context.addIssue({ code: 'custom', message: said(issue), path: issue.path?.map(({ key }) => String(key)) ?? [] });
    return z.NEVER;
  });

const listOf = <S extends v.GenericSchema>(each: S, message: string) => v.pipe(v.array(each), v.minLength(1, message));
const words = v.optional(v.array(v.string()), []);
const wholeNumber = v.pipe(v.number(), v.integer());
const count = v.pipe(wholeNumber, v.minValue(1));

const exampleSchema = v.strictObject({
  /** The calculator. */
  slug: v.string(),
  /** What stands behind the `?` of its link. */
  query: v.string(),
  /** What it shows, in one sentence. */
  says: v.string(),
});
const exampleName = v.pipe(v.string(), v.regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'a name in small letters, figures and hyphens'));

const guideSchema = v.strictObject({
  title: v.string(),
  /** One or two sentences under the title, in lists and in search results. */
  lead: v.string(),
  /** The question in the reader's words, where a guide answers one. */
  question: v.optional(v.string()),
  /** Place in the list of guides, low first. */
  order: wholeNumber,
  /** Slugs of calculators that the guide uses or leads to. */
  calculators: words,
  /** Keys of sources that the guide rests on beside those that it cites in its text. */
  sources: words,
  /** Cautions that stand before the text. */
  cautions: words,
  /** Ways through the guides (`content/paths.json`) that end with this one, beside those that name it. */
  paths: words,
  /** Slugs of guides to read next. */
  related: words,
  /** Other words that people search with. */
  searchWords: words,
  /** Worked examples on the demo place, by a name that no other guide uses. */
  examples: v.optional(v.record(exampleName, exampleSchema), {}),
});

const sourceSchema = v.strictObject({
  kind: v.picklist(['report', 'book', 'article', 'page', 'dataset', 'standard']),
  /** People as `Family, G. G.`; bodies by name. */
  authors: listOf(v.string(), 'somebody wrote it: a person or a body'),
  year: v.pipe(v.string(), v.regex(/^(\d{4}[a-z]?|n\.d\.)$/, 'a year is written 1986, 1986a or n.d.')),
  title: v.string(),
  /** Journal, series or publisher. */
  container: v.optional(v.string()),
  pages: v.optional(v.string()),
  url: v.optional(v.pipe(v.string(), v.url('an address begins with https://'))),
  /** Which copy was read. */
  copy: v.string(),
});

const column = v.strictObject({
  /** Also tells the columns of a table apart; spaces at its end are not shown. */
  name: v.string(),
  /** Of the width of the table. */
  percent: v.optional(v.pipe(v.number(), v.gtValue(0), v.maxValue(60))),
});
const titled = { title: v.string() };

/** What a recording sheet is put together from, in the order in which it is filled in. */
const sheetPart = v.variant('kind', [
  /** Lines to write on, each so many sixths of the sheet wide. */
  v.strictObject({
    kind: v.literal('fields'),
    fields: listOf(v.strictObject({ label: v.string(), sixths: v.pipe(v.number(), v.minValue(1), v.maxValue(6)) }), 'at least one line to write on'),
  }),
  v.strictObject({
    kind: v.literal('table'),
    ...titled,
    columns: v.pipe(v.array(column), v.minLength(2, 'a table has two columns or more')),
    /** Names of the rows, which stand in the first column, or how many empty ones. */
    rows: v.union([listOf(v.string(), 'names of rows, or how many'), count]),
    height: v.picklist(['tight', 'short', 'normal', 'tall', 'box']),
    /** Titles over several columns, with the number of columns. */
    groups: v.optional(v.array(v.strictTuple([v.string(), count])), []),
    /** Cells that hold nothing, by column and number of the row: the 31st of June. */
    blocked: v.optional(v.array(v.strictTuple([v.string(), count])), []),
    /** Rows for sums, below. */
    foot: words,
  }),
  /** What a mark means. */
  v.strictObject({
    kind: v.literal('key'),
    ...titled,
    items: listOf(v.strictObject({ mark: v.string(), means: v.string() }), 'at least one mark'),
    /** Keys of sources. */
    sources: words,
  }),
  v.strictObject({ kind: v.literal('lines'), ...titled, count }),
  /** Boxes to tick. */
  v.strictObject({ kind: v.literal('ticks'), ...titled, items: listOf(v.string(), 'at least one box') }),
  v.strictObject({ kind: v.literal('words'), says: v.string() }),
]);

const sheetSchema = v.strictObject({
  title: v.string(),
  lead: v.string(),
  order: wholeNumber,
  /** Wider than high on paper. */
  landscape: v.optional(v.boolean(), false),
  /** Slugs of what uses the numbers. What is not there yet is left out. */
  calculators: v.array(v.string()),
  guides: v.array(v.string()),
  /** The view of `/place/` that prints the same sheet with a place's figures in it. */
  atPlace: v.optional(v.picklist(views.map(({ key }) => key))),
  parts: v.pipe(v.array(sheetPart), v.minLength(2, 'a sheet has two parts or more')),
});

export const collections = {
  guides: defineCollection({ loader: glob({ base: './content/guides', pattern: '**/*.mdx' }), schema: checkedBy(guideSchema) }),
  sources: defineCollection({ loader: glob({ base: './content/sources', pattern: '*.json' }), schema: checkedBy(sourceSchema) }),
  sheets: defineCollection({ loader: glob({ base: './content/sheets', pattern: '*.json' }), schema: checkedBy(sheetSchema) }),
};
