import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { drawingIn, drawingProblems } from '../../src/guides/drawing.ts';
import { filesBelow, root } from '../support/files.ts';
import { guideTexts } from '../support/guideHeads.ts';

const svg = (inside: string, head = 'viewBox="0 0 390 200"'): string => `<svg xmlns="http://www.w3.org/2000/svg" ${head}>${inside}</svg>`;

describe('a drawing', () => {
  it.each(filesBelow('content/drawings', /\.svg$/))('%s may stand in a page', (path) => {
    expect(drawingProblems(readFileSync(join(root, path), 'utf8'))).toEqual([]);
  });

  it('may use the colours of the page and text that a phone shows', () => {
    const inside = '<path d="M0 9h9" stroke="var(--soil-a)" style="fill: none; stroke: currentColor"/><text x="1" y="20" font-size="15">Sod</text>';
    expect(drawingProblems(svg(inside))).toEqual([]);
    expect(drawingProblems(svg('<text font-size="30">Sod</text>', 'viewBox="0 0 780 400"'))).toEqual([]);
  });

  it.each([
    ['<script>1</script>', 'element'],
    ['<style>*{fill:red}</style>', 'element'],
    ['<image href="x.png"/>', 'element'],
    ['<path id="a" d="M0 0"/>', 'attribute'],
    ['<path onclick="x()" d="M0 0"/>', 'attribute'],
    ['<path fill="#ff0000" d="M0 0"/>', 'colour'],
    ['<path stroke="var(--accent)" d="M0 0"/>', 'colour'],
    ['<path style="fill:red" d="M0 0"/>', 'colour'],
    ['<path clip-path="url(#a)" d="M0 0"/>', 'address'],
    ['<text font-size="12">Sod</text>', 'too small'],
    ['<text style="font-size: 9px">Sod</text>', 'too small'],
  ])('may not hold %s', (inside, problem) => {
    expect(drawingProblems(svg(inside)).join()).toContain(problem);
  });

  it('needs a box and no size of its own', () => {
    expect(drawingProblems(svg('', ''))).toHaveLength(1);
    expect(drawingProblems(svg('', 'viewBox="0 0 390 200" width="390"'))).toHaveLength(1);
    expect(drawingProblems('')).toHaveLength(1);
  });

  it('carries its text into the page', () => {
    expect(drawingIn('ring', `<?xml version="1.0"?>\n<!-- a ring -->${svg('')}`, 'A "ring" in sod')).toBe(
      '<svg class="drawing" role="img" aria-label="A &quot;ring&quot; in sod" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 390 200"></svg>',
    );
    expect(() => drawingIn('ring', undefined, '')).toThrow('no drawing');
    expect(() => drawingIn('ring', svg('<script/>'), '')).toThrow('not allowed');
  });

  it('is used by a guide or a page', () => {
    const pages = filesBelow('src/pages', /\.astro$/).map((path) => readFileSync(join(root, path), 'utf8'));
    const drawn = [...guideTexts.map(({ body }) => body), ...pages].flatMap((body) =>
      [...body.matchAll(/<Drawing\s[^>]*?\bname="([^"]+)"/g)].map((found) => found[1]),
    );
    expect(filesBelow('content/drawings', /\.svg$/).filter((path) => !drawn.includes(path.replace(/^.*\/|\.svg$/g, '')))).toEqual([]);
  });
});
