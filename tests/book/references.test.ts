import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'node-html-parser';
import { describe, expect, it } from 'vitest';
import type { Chapter } from '../../book/contents.ts';
import { leadLinks, targetOf } from '../../book/references.ts';
import { handbookIn } from '../../src/site/handbook.ts';

const here: Chapter = { kind: 'guide', id: 'guides-resting-grass', address: '/guides/resting-grass/', title: 'Rest' };
const chapters = new Set([here.id, 'calculators-hay-value', 'sources', 'glossary']);

describe('where a link leads to in the book', () => {
  it('finds chapters, places in them, and sums by hand whatever the link puts in', () => {
    expect(targetOf('/guides/resting-grass/', here, chapters)).toBe('guides-resting-grass');
    expect(targetOf('/guides/resting-grass/#how-long', here, chapters)).toBe('guides-resting-grass--how-long');
    expect(targetOf('#how-long', here, chapters)).toBe('guides-resting-grass--how-long');
    expect(targetOf('/calculators/hay-value/?price=90&v=1', here, chapters)).toBe('calculators-hay-value');
    expect(targetOf('/calculators/hay-value/working/', here, chapters)).toBe('calculators-hay-value');
    expect(targetOf('/sources/', here, chapters)).toBe('sources');
    expect(targetOf('/sources/p/#pratt-1994', here, chapters)).toBe('sources--pratt-1994');
    expect(targetOf('/place/', here, chapters)).toBeUndefined();
  });

  it('gives each link room for its page, but not where the alphabet leads, and says what is only on the site', () => {
    const main = parse(
      `<main><h2 id="how-long">How long</h2><p><a href="/calculators/hay-value/?a=1">price it</a> <a href="/sources/p/#pratt-1994">Pratt</a>
      <a href="/place/">your place</a> <a href="https://example.org/a<b">out</a></p></main>`,
    );
    const targets = leadLinks(main, here, chapters, (target) => `#${target}`, true);
    expect(targets).toEqual(['calculators-hay-value', 'sources--pratt-1994']);
    expect(main.querySelectorAll('[data-page-of]').map((each) => each.getAttribute('data-page-of'))).toEqual(['calculators-hay-value']);
    expect(main.querySelector('h2')?.id).toBe('guides-resting-grass--how-long');
    expect(main.text).toContain('your place (on the site)');
    expect(main.innerHTML).toContain('href="https://example.org/a%3Cb"');
    const asFiles = parse('<main><a href="#how-long">below</a></main>');
    leadLinks(asFiles, here, chapters, (target) => `file#${target}`, false);
    expect(asFiles.innerHTML).toContain('<a href="file#guides-resting-grass--how-long">below</a></main>');
  });
});

it('links only the forms of the book that a host has made', () => {
  const folder = mkdtempSync(join(tmpdir(), 'handbook-'));
  expect(handbookIn(join(folder, 'none'))).toEqual([]);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'holdwater.epub'), 'abc');
  writeFileSync(join(folder, 'notes.txt'), 'abc');
  expect(handbookIn(folder)).toEqual([{ file: 'holdwater.epub', name: 'EPUB for phones and reading tablets', bytes: 3 }]);
});
