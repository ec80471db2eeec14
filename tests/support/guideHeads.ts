import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseFrontmatter } from '@astrojs/markdown-remark';
import * as v from 'valibot';
import { filesBelow, root } from './files.ts';

/** The part of a guide's head that tests ask for; the build checks the rest. */
const headSchema = v.object({
  title: v.string(),
  order: v.number(),
  examples: v.optional(v.record(v.string(), v.object({ slug: v.string(), query: v.string(), says: v.string() })), {}),
});

export interface GuideText {
  readonly slug: string;
  readonly head: v.InferOutput<typeof headSchema>;
  readonly body: string;
}

/** Every guide as it stands in its file. */
export const guideTexts: readonly GuideText[] = filesBelow('content/guides', /\.mdx$/).map((path) => {
  const { frontmatter, content } = parseFrontmatter(readFileSync(join(root, path), 'utf8'));
  return { slug: basename(path, '.mdx'), head: v.parse(headSchema, frontmatter), body: content };
});
