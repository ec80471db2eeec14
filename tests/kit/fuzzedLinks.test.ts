import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Calculator } from '../../calculators/kit/define.ts';
import { linkName, toLink } from '../../calculators/kit/link.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { refusalsIn, runTexts } from '../../calculators/kit/runTexts.ts';
import { calculators } from '../support/catalog.ts';

/** Ten thousand in all. */
const each = Math.ceil(10_000 / calculators.length);
const nasty = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  'javascript:alert(1)',
  '__proto__',
  'constructor',
  '%',
  '%E0%A4%A',
  '\uD800',
  '1e999',
  '-0',
  'NaN',
  '1/0',
  '9'.repeat(400),
  ','.repeat(300),
  '\u0000',
  '\u202e12',
  '16 ha',
  '$95/ton',
  '',
];
const value = fc.oneof(fc.constantFrom(...nasty), fc.string({ maxLength: 40 }), fc.double().map(String), fc.integer().map(String));
function query({ inputs }: Calculator): fc.Arbitrary<string> {
  const names = Object.entries(inputs).flatMap(([key, input]) =>
    input.kind === 'rows'
      ? Object.entries(input.columns).map(([name, cell]) => `${linkName(key, input)}.${linkName(name, cell)}`)
      : [linkName(key, input)],
  );
  const name = fc.oneof(
    { weight: 6, arbitrary: fc.constantFrom(...names) },
    fc.constantFrom(...nasty, 'v', 'that', 'that.that'),
    fc.string({ maxLength: 12 }),
  );
  const pair = fc
    .tuple(fc.constantFrom('', '', 'that.'), name, fc.array(value, { minLength: 1, maxLength: 4 }))
    .map(([side, key, values]) => `${side}${encodeSafely(key)}=${values.map(encodeSafely).join(',')}`);
  return fc.oneof({ weight: 9, arbitrary: fc.array(pair, { maxLength: 12 }).map((pairs) => pairs.join('&')) }, fc.string({ maxLength: 200 }));
}
/** As a browser would, and where it would refuse, as it stands. */
const encodeSafely = (text: string): string => (text.isWellFormed() && text.length % 3 !== 0 ? encodeURIComponent(text) : text);
/** Words that only a programmer understands. */
const programmers = /\b(?:undefined|null|NaN|Infinity)\b|TypeError|RangeError|\[object|=>|cannot read/;

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))('links to %s', (_, calculator) => {
  it('open without a fault whatever stands in them, and stay the texts that they are', () => {
    fc.assert(
      fc.property(query(calculator), (text) => {
        const { form, notices, named } = fromLink(calculator, text);
        for (const name of named) expect(Object.hasOwn(calculator.inputs, name)).toBe(true);
        expect(Object.keys(form.this).toSorted()).toEqual(Object.keys(calculator.inputs).toSorted());
        // What a link says of itself is told in a few plain words; names that nobody knows are cut short.
        for (const notice of notices) {
          expect(notice.length).toBeLessThan(260);
          if (!/^Not known here/.test(notice)) expect(notice).not.toMatch(programmers);
        }
        const run = runTexts(calculator, form.this);
        const said = 'refusals' in run ? run.refusals : [];
        expect(refusalsIn(calculator, form.this)).toEqual(said);
        for (const { say } of said) expect(say.replaceAll(/“[^”]*”/g, '')).not.toMatch(programmers);
        expect(Object.prototype).not.toHaveProperty('alert');
        // The same texts again from the link that they make.
        const link = toLink(calculator, form);
        expect(link).not.toMatch(/[<>"\s]/);
      }),
      { numRuns: each, seed: 12 },
    );
  }, 60_000);
});
