import { defineCollection, reference } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

const exampleSchema = z.strictObject({
  /** The calculator. */
  slug: z.string(),
  /** What stands behind the `?` of its link. */
  query: z.string(),
  /** What it shows, in one sentence. */
  says: z.string(),
});

const guides = defineCollection({
  loader: glob({ base: './content/guides', pattern: '**/*.mdx' }),
  schema: z.strictObject({
    title: z.string(),
    /** One or two sentences under the title, in lists and in search results. */
    lead: z.string(),
    /** The question in the reader's words, where a guide answers one. */
    question: z.string().optional(),
    /** Place in the list of guides, low first. */
    order: z.number().int(),
    /** Slugs of calculators that the guide uses or leads to. */
    calculators: z.array(z.string()).default([]),
    /** Sources that the guide rests on beside those that it cites in its text. */
    sources: z.array(reference('sources')).default([]),
    /** Cautions that stand before the text. */
    cautions: z.array(z.string()).default([]),
    /** Ways through the guides (`content/paths.json`) that end with this one, beside those that name it. */
    paths: z.array(z.string()).default([]),
    related: z.array(reference('guides')).default([]),
    /** Other words that people search with. */
    searchWords: z.array(z.string()).default([]),
    /** Worked examples on the demo place, by a name that no other guide uses. */
    examples: z.record(z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/), exampleSchema).default({}),
  }),
});

const sources = defineCollection({
  loader: glob({ base: './content/sources', pattern: '*.json' }),
  schema: z.strictObject({
    kind: z.enum(['report', 'book', 'article', 'page', 'dataset', 'standard']),
    /** People as `Family, G. G.`; bodies by name. */
    authors: z.array(z.string()).min(1),
    year: z.string().regex(/^(\d{4}[a-z]?|n\.d\.)$/),
    title: z.string(),
    /** Journal, series or publisher. */
    container: z.string().optional(),
    pages: z.string().optional(),
    url: z.url().optional(),
    /** Which copy was read. */
    copy: z.string(),
  }),
});

const column = z.strictObject({
  /** Also tells the columns of a table apart; spaces at its end are not shown. */
  name: z.string(),
  /** Of the width of the table. */
  percent: z.number().positive().max(60).optional(),
});
const titled = { title: z.string() };

/** What a recording sheet is put together from, in the order in which it is filled in. */
const sheetPart = z.discriminatedUnion('kind', [
  /** Lines to write on, each so many sixths of the sheet wide. */
  z.strictObject({ kind: z.literal('fields'), fields: z.array(z.strictObject({ label: z.string(), sixths: z.number().min(1).max(6) })).min(1) }),
  z.strictObject({
    kind: z.literal('table'),
    ...titled,
    columns: z.array(column).min(2),
    /** Names of the rows, which stand in the first column, or how many empty ones. */
    rows: z.union([z.array(z.string()).min(1), z.number().int().positive()]),
    height: z.enum(['tight', 'short', 'normal', 'tall', 'box']),
    /** Titles over several columns, with the number of columns. */
    groups: z.array(z.tuple([z.string(), z.number().int().positive()])).default([]),
    /** Cells that hold nothing, by column and number of the row: the 31st of June. */
    blocked: z.array(z.tuple([z.string(), z.number().int().positive()])).default([]),
    /** Rows for sums, below. */
    foot: z.array(z.string()).default([]),
  }),
  /** What a mark means. */
  z.strictObject({
    kind: z.literal('key'),
    ...titled,
    items: z.array(z.strictObject({ mark: z.string(), means: z.string() })).min(1),
    sources: z.array(reference('sources')).default([]),
  }),
  z.strictObject({ kind: z.literal('lines'), ...titled, count: z.number().int().positive() }),
  /** Boxes to tick. */
  z.strictObject({ kind: z.literal('ticks'), ...titled, items: z.array(z.string()).min(1) }),
  z.strictObject({ kind: z.literal('words'), says: z.string() }),
]);

const sheets = defineCollection({
  loader: glob({ base: './content/sheets', pattern: '*.json' }),
  schema: z.strictObject({
    title: z.string(),
    lead: z.string(),
    order: z.number().int(),
    /** Wider than high on paper. */
    landscape: z.boolean().default(false),
    /** Slugs of what uses the numbers. What is not there yet is left out. */
    calculators: z.array(z.string()),
    guides: z.array(z.string()),
    parts: z.array(sheetPart).min(2),
  }),
});

export const collections = { guides, sources, sheets };
