import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseFrontmatter } from '@astrojs/markdown-remark';
import * as v from 'valibot';
import { filesBelow, root } from './files.ts';

/** The part of a guide's head that tests ask for; the build checks the rest. */
const headSchema = v.object({
  title: v.string(),
  order: v.number(),
  calculators: v.optional(v.array(v.string()), []),
  sources: v.optional(v.array(v.string()), []),
  cautions: v.optional(v.array(v.string()), []),
  related: v.optional(v.array(v.string()), []),
  paths: v.optional(v.array(v.string()), []),
  examples: v.optional(v.record(v.string(), v.object({ slug: v.string(), query: v.string(), says: v.string() })), {}),
});

export interface GuideText {
  readonly slug: string;
  readonly head: v.InferOutput<typeof headSchema>;
  readonly body: string;
}

export function readGuide(slug: string, text: string): GuideText {
  const { frontmatter, content } = parseFrontmatter(text);
  return { slug, head: v.parse(headSchema, frontmatter), body: content };
}

/** Every guide as it stands in its file. */
export const guideTexts: readonly GuideText[] = filesBelow('content/guides', /\.mdx$/).map((path) =>
  readGuide(basename(path, '.mdx'), readFileSync(join(root, path), 'utf8')),
);
