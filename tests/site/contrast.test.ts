import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { expectWithin } from '../support/expectWithin.ts';
import { root } from '../support/files.ts';

/** Relative luminance, Web Content Accessibility Guidelines 2.2, definition of the term. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio, same place. */
function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const tokens = readFileSync(join(root, 'src/styles/tokens.css'), 'utf8');
const colours = (css: string): Readonly<Record<string, string>> =>
  Object.fromEntries([...css.matchAll(/--([\w-]+): (#[\da-f]{6});/g)].map(([, name = '', colour = '']) => [name, colour]));
const schemes = {
  light: colours(tokens.slice(0, tokens.indexOf('@media'))),
  dark: colours(tokens.slice(tokens.indexOf('prefers-color-scheme: dark'), tokens.indexOf('@media print'))),
  print: colours(tokens.slice(tokens.indexOf('@media print'))),
};
/** Ours, above the 4.5 that the guidelines ask for: the site is read in sunlight. */
const leastContrast = 6;

describe('the palette', () => {
  it('is measured as the guidelines measure: 21 for black on white, 1 for a colour on itself', () => {
    expectWithin(contrast('#000000', '#ffffff'), 21, 5e-11);
    expect(contrast('#8a6243', '#8a6243')).toBe(1);
  });

  it.each(Object.entries(schemes))('%s: every text colour stands out from every ground', (_, palette) => {
    const pairs = ['ink', 'muted', 'sod', 'rain', 'clay', 'straw'].flatMap((text) => ['paper', 'tint', 'field'].map((ground) => ({ text, ground })));
    const weak = pairs.filter(({ text, ground }) => !(contrast(palette[text] ?? '', palette[ground] ?? '') >= leastContrast));
    expect(weak).toEqual([]);
  });
});
