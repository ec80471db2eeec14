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

export const collections = { guides, sources };
