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
const patience = 120_000;
const read = <T>(slug: string, file: string, none: T): T => {
  const path = join(root, fileOf(slug, file));
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : none;
};

describe.each(calculators)('$slug', (calculator) => {
  const { slug, runs } = calculator;
  // One that runs long takes as long as hundreds of the others.
  const enough = runs === 'long' ? 2 * patience : patience;
  const mend = `missing, or meant to change? \`npm run freeze -- ${slug}\` writes ${fileOf(slug, 'told.json')} anew: read the difference`;
  // One that is not there yet is asked for by name in frozen.test.ts.
  const frozen = read<readonly FrozenLink[]>(slug, 'frozen.json', []);
  const kept = read<Partial<Kept>>(slug, 'told.json', {});

  it.each(frozen.filter(isOneSided))('tells what it did: $query', { timeout: enough }, ({ query }) => {
    expect(toldBy(calculator, query), mend).toEqual(kept.links?.[query]);
  });
  it('tells with each answer what it did', { timeout: enough }, () => {
    expect(turnedBy(calculator), mend).toEqual(kept.turns);
  });
  it('tells with any two answers what it did', { timeout: enough }, () => {
    expect(pairsBy(calculator), mend).toEqual(kept.pairs);
  });
  it('tells over many forms what it did', { timeout: enough }, () => {
    expect(formsBy(calculator), mend).toEqual(kept.forms);
  });
  it('draws what it did', { timeout: enough }, () => {
    expect(drawnBy(calculator), mend).toBe(kept.draws);
  });
});
