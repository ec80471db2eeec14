import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from '@playwright/test';
import { strToU8, type Zippable, zipSync } from 'fflate';
import { type Assembled, assembled } from './assembled.ts';
import { openBook } from './print.ts';
import { stylesOf } from './styles.ts';
import { aboutOf, subtitle, title, wholeBook } from './wholeBook.ts';
import { asXhtml } from './xhtml.ts';

const fileOf = (chapter: string): string => `${chapter}.xhtml`;
/** Where a place stands: in its chapter's file. */
const linkTo = (target: string): string => `${fileOf(target.split('--')[0] ?? '')}#${target}`;

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
const document = (heading: string, body: string, more = ''): string =>
  `<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE html>\n<html xmlns="http://www.w3.org/1999/xhtml" xmlns:epub="http://www.idpf.org/2007/ops" lang="en" xml:lang="en"><head><title>${escaped(heading)}</title><link rel="stylesheet" type="text/css" href="book.css"/></head><body>${body}${more}</body></html>`;

const navigation = ({ parts }: Assembled): string =>
  document(
    'Contents',
    `<nav epub:type="toc" id="toc"><h1>Contents</h1><ol>${parts
      .map(
        (part) =>
          `<li><span>${escaped(part.title)}</span><ol>${part.chapters.map(({ id, title: name }) => `<li><a href="${fileOf(id)}">${escaped(name)}</a></li>`).join('')}</ol></li>`,
      )
      .join('')}<li><a href="word-index.xhtml">Index</a></li></ol></nav>`,
  );

function wordIndex({ index, parts }: Assembled): string {
  const titles = new Map(parts.flatMap((part) => part.chapters.map(({ id, title: name }) => [id, name])));
  const link = (target: string): string => `<a href="${linkTo(target)}">${escaped(titles.get(target.split('--')[0] ?? '') ?? '')}</a>`;
  const entries = index.map(({ word, targets }) => `<li>${escaped(word)}: ${targets.map(link).join('; ')}</li>`);
  return document('Index', `<h1>Index</h1><ul class="word-index">${entries.join('')}</ul>`);
}

interface Item {
  readonly id: string;
  readonly file: string;
  readonly type: string;
  readonly properties: readonly string[];
}
const package_ = (items: readonly Item[], identifier: string, built: string): string => `<?xml version="1.0" encoding="utf-8"?>
<package xmlns="http://www.idpf.org/2007/opf" version="3.0" unique-identifier="id" xml:lang="en">
<metadata xmlns:dc="http://purl.org/dc/elements/1.1/">
<dc:identifier id="id">${identifier}</dc:identifier><dc:title>${title}: ${subtitle}</dc:title><dc:language>en-US</dc:language><dc:creator>${title}</dc:creator>
<meta property="dcterms:modified">${built}T00:00:00Z</meta>
<meta property="schema:accessMode">textual</meta><meta property="schema:accessMode">visual</meta><meta property="schema:accessModeSufficient">textual</meta>
<meta property="schema:accessibilityFeature">tableOfContents</meta><meta property="schema:accessibilityFeature">structuralNavigation</meta>
<meta property="schema:accessibilityFeature">alternativeText</meta><meta property="schema:accessibilityFeature">MathML</meta><meta property="schema:accessibilityHazard">none</meta>
</metadata>
<manifest>${items.map(({ id, file, type, properties }) => `<item id="${id}" href="${file}" media-type="${type}"${properties.length > 0 ? ` properties="${properties.join(' ')}"` : ''}/>`).join('\n')}</manifest>
<spine>${items
  .filter(({ type, id }) => type === 'application/xhtml+xml' && id !== 'nav')
  .map(({ id }) => `<itemref idref="${id}"/>`)
  .join('')}</spine>
</package>`;

const container =
  '<?xml version="1.0"?><container version="1.0" xmlns="urn:oasis:names:tc:opendocument:xmlns:container"><rootfiles><rootfile full-path="book/book.opf" media-type="application/oebps-package+xml"/></rootfiles></container>';

/** The book as an EPUB 3 (W3C EPUB 3.3): a chapter a file, formulas as MathML, drawings as they are. The same bytes from the same site. */
export async function epubOf(browser: Browser, dist: string): Promise<Uint8Array> {
  const book = assembled(dist, linkTo, false);
  const page = await openBook(browser, wholeBook(book, stylesOf(dist), ''), dist, '', 'letter');
  const chapters = await asXhtml(page);
  await page.close();
  const front = `<h1>${title}</h1><p>${escaped(subtitle)}</p><p>${book.promise}</p><p>${escaped(aboutOf(book, false))}</p>`;
  const texts = new Map([
    ['front', document(title, front)],
    ...book.parts.flatMap((part) => part.chapters.map(({ id, title: name }) => [id, document(name, chapters.get(id) ?? '')] as const)),
    ['word-index', wordIndex(book)],
  ]);
  const properties = (text: string): readonly string[] => [...(text.includes('<math') ? ['mathml'] : []), ...(text.includes('<svg') ? ['svg'] : [])];
  const items: readonly Item[] = [
    { id: 'nav', file: 'nav.xhtml', type: 'application/xhtml+xml', properties: ['nav'] },
    { id: 'look', file: 'book.css', type: 'text/css', properties: [] },
    ...[...texts].map(([id, text]) => ({ id, file: fileOf(id), type: 'application/xhtml+xml', properties: properties(text) })),
  ];
  const digest = createHash('sha256');
  for (const text of texts.values()) digest.update(text);
  const hex = digest.digest('hex');
  const identifier = `urn:sha256:${hex}`;
  // The zip's own times begin in 1980.
  const at = { mtime: '1980-01-01T12:00:00', level: 9 } as const;
  const inside: Zippable = {
    // The type comes first and as it is, so that a reader finds it without unpacking (EPUB 3.3, section 4.2).
    mimetype: [strToU8('application/epub+zip'), { ...at, level: 0 }],
    'META-INF/container.xml': [strToU8(container), at],
    'book/book.opf': [strToU8(package_(items, identifier, book.built)), at],
    'book/nav.xhtml': [strToU8(navigation(book)), at],
    'book/book.css': [readFileSync(join(import.meta.dirname, 'epub.css')), at],
    ...Object.fromEntries([...texts].map(([id, text]) => [`book/${fileOf(id)}`, [strToU8(text), at] as const])),
  };
  return zipSync(inside);
}
