import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Inputs } from '../../calculators/kit/inputs.ts';
import { calculators } from '../support/catalog.ts';
import { root } from '../support/files.ts';

type Filled = Readonly<Record<string, string | number>>;
/** What each option puts into the fields beside it, as it was when somebody last read it. It proves nothing true: it holds it in its place. */
const frozen: Readonly<Record<string, Readonly<Record<string, Filled>>>> = JSON.parse(readFileSync(join(root, 'tests/catalog/fills.json'), 'utf8'));

const choicesOf = (inputs: Inputs) =>
  Object.entries(inputs)
    .flatMap(([key, input]) =>
      input.kind === 'rows' ? Object.entries(input.columns).map(([name, cell]) => [`${key}.${name}`, cell] as const) : [[key, input] as const],
    )
    .flatMap(([path, cell]) => (cell.kind === 'choice' ? [[path, cell.options] as const] : []));

/** How many of the key's words begin a word of the label, as a share. */
function share(label: string, key: string): number {
  const said = label.toLowerCase().split(/[^a-z0-9]+/);
  const words = key.split('-').filter((word) => word.length > 1);
  return words.filter((word) => said.some((each) => each.startsWith(word.slice(0, 5)))).length / Math.max(1, words.length);
}
/** Once more is twice, and 300 seconds are 5 minutes. */
const toldOtherwise = new Set(['rings.pours', 'samples.seen']);

describe.each(calculators)('$slug', ({ slug, inputs }) => {
  it('gives no two options each the label of the other', () => {
    for (const [path, options] of choicesOf(inputs)) {
      const list = Object.entries(options);
      if (toldOtherwise.has(path)) continue;
      for (const [option, { label }] of list) if (label === 'No') expect(option, `${path}: “No”`).toMatch(/^no(ne)?$/);
      for (const [at, [one, { label }]] of list.entries())
        for (const [other, { label: otherLabel }] of list.slice(at + 1)) {
          const asTheyAre = share(label, one) + share(otherLabel, other);
          const exchanged = share(label, other) + share(otherLabel, one);
          expect(asTheyAre, `${path}: “${label}” for ${one}, “${otherLabel}” for ${other}`).toBeGreaterThanOrEqual(exchanged);
        }
    }
  });
  it('fills in what it did', () => {
    const filled = Object.fromEntries(
      choicesOf(inputs).flatMap(([path, options]) =>
        Object.entries(options).flatMap(([option, { fills }]) => (fills ? [[`${path} ${option}`, fills] as const] : [])),
      ),
    );
    expect(filled, 'mend tests/catalog/fills.json in the same commit, with the reason').toEqual(frozen[slug] ?? {});
  });
});
