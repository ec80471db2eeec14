import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { calculators, type FrozenLink, fileOf } from '../support/catalog.ts';
import { root } from '../support/files.ts';
import { type Counts, drawnBy, formsBy, isOneSided, pairsBy, type Told, type Turned, toldBy, turnedBy } from '../support/told.ts';

/**
 * Beside the results of frozen links: what else the page shows and says with them, and what another answer to each question adds and takes away, alone and
 * together with one more, and how often each thing stands in 120 forms filled in at random, the same every time. Like the links it proves nothing true: it holds it in its place.
 */
interface Kept {
  readonly links: Readonly<Record<string, Told>>;
  readonly turns: Readonly<Record<string, Turned>>;
  readonly pairs: Counts;
  readonly forms: Counts;
  readonly draws: string;
}
/** A few hundred runs, also on a busy machine. */
const patience = 30_000;
const kept: Readonly<Record<string, Kept>> = JSON.parse(readFileSync(join(root, 'tests/catalog/told.json'), 'utf8'));

describe.each(calculators)('$slug', (calculator) => {
  const { slug } = calculator;
  const mend = `meant to change? \`npm run freeze -- ${slug}\` writes it anew into tests/catalog/told.json: read the difference`;
  // One that is not there yet is asked for by name in frozen.test.ts.
  const path = join(root, fileOf(slug, 'frozen.json'));
  const frozen: readonly FrozenLink[] = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : [];

  it.each(frozen.filter(isOneSided))('tells what it did: $query', { timeout: patience }, ({ query }) => {
    expect(toldBy(calculator, query), mend).toEqual(kept[slug]?.links[query]);
  });
  it('tells with each answer what it did', { timeout: patience }, () => {
    expect(turnedBy(calculator), mend).toEqual(kept[slug]?.turns);
  });
  it('tells with any two answers what it did', { timeout: patience }, () => {
    expect(pairsBy(calculator), mend).toEqual(kept[slug]?.pairs);
  });
  it('tells over many forms what it did', { timeout: patience }, () => {
    expect(formsBy(calculator), mend).toEqual(kept[slug]?.forms);
  });
  it('draws what it did', { timeout: patience }, () => {
    expect(drawnBy(calculator), mend).toBe(kept[slug]?.draws);
  });
});
