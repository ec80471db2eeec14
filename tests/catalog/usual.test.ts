import { describe, expect, it } from 'vitest';
import type { CaseList } from '../../calculators/kit/cases.ts';
import { doubtAbout, doubtsIn } from '../../calculators/kit/doubts.ts';
import type { Inputs, NumberInput } from '../../calculators/kit/inputs.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { defaultText, quantityText, readCell } from '../../calculators/kit/read.ts';
import { usual } from '../../calculators/kit/usual.ts';
import { units } from '../../calculators/units/units.ts';
import { calculators, loadFrom } from '../support/catalog.ts';

const numbersOf = (inputs: Inputs): readonly (readonly [string, NumberInput])[] =>
  Object.entries(inputs).flatMap(([name, input]) =>
    input.kind === 'rows' ? numbersOf(input.columns) : input.kind === 'number' ? [[name, input] as const] : [],
  );
const watched = calculators.flatMap(({ slug, inputs }) =>
  numbersOf(inputs).flatMap(([name, input]) => (input.usual === undefined ? [] : [{ slug, name, input, usual: input.usual }])),
);

describe('numbers that look wrong are asked about', () => {
  it('at forty fields and more, with no range that no field has', () => {
    expect(watched.length).toBeGreaterThanOrEqual(40);
    expect(Object.keys(usual).filter((name) => !watched.some((each) => each.usual === name))).toEqual([]);
  });
  it.each(watched)('$slug, $name: just past each limit and not before, and never refused for it', ({ input, usual: name }) => {
    const [below, above] = usual[name];
    expect(name.endsWith(units[input.unit].suffix), 'the name ends in the unit').toBe(true);
    const doubt = (value: number) => doubtAbout(input, value, 'us');
    expect(doubt(input.default), 'the example').toBeUndefined();
    expect(doubt(0), 'a nought is meant').toBeUndefined();
    const limits = [
      { limit: below, past: below * (1 - 1e-3), says: 'seldom below' },
      { limit: above, past: above * (1 + 1e-3), says: 'seldom above' },
    ].filter(({ past }) => past > 0 && past >= input.min && past <= input.max);
    expect(limits.length, 'a limit that somebody can reach').toBeGreaterThan(0);
    for (const { limit, past, says } of limits) {
      expect(doubt(limit)).toBeUndefined();
      expect(doubt(past)).toContain(says);
      expect(doubtAbout(input, past, 'si')).toContain(says);
      if (input.whole !== true) expect(readCell(input, quantityText(past, input.unit))).toHaveProperty('value');
    }
  });
  it('says what is asked, in the reader’s units', () => {
    const storm = numbersOf(calculators.find(({ slug }) => slug === 'storm-runoff')?.inputs ?? {}).find(([name]) => name === 'rainIn')?.[1];
    expect(storm && doubtAbout(storm, 25, 'us')).toBe(
      'Is 25 in right? Rain in the storm: seldom above 12 in. Look at the decimal point and the unit.',
    );
    expect(storm && doubtAbout(storm, 12.01, 'us')).toContain('Is 12.01 in right?');
    // 20 in are 508 mm, 12 in are 304.8 mm, by the definition of the inch; the limit is told to two digits.
    expect(storm && doubtAbout(storm, 20, 'si')).toContain('Is 508 mm right? Rain in the storm: seldom above 300 mm.');
  });
});

/** Examples that put something else than usual into a field, each with why. */
const unusual: readonly string[] = [
  // Silage, in a field for hay.
  'Silage at $30 a ton with 73 % water: a ton of dry matter',
  // One figure for a head that stands for the whole herd.
  '100 cows, 100 calves and 3 bulls for 150 days out of storage alone',
];
describe('the worked examples of publications do not look wrong', () => {
  it.each(calculators)('$slug', async (calculator) => {
    const list = await loadFrom<CaseList>(calculator.slug, 'cases.ts');
    for (const { name, query } of list?.cases ?? []) {
      const { form } = fromLink(calculator, query);
      const doubts = doubtsIn(calculator.inputs, form.this);
      if (unusual.includes(name)) expect(doubts, name).not.toEqual([]);
      else expect(doubts, name).toEqual([]);
    }
  });
});

it('what a choice writes into a field does not look wrong there', () => {
  const walk = (inputs: Inputs): void => {
    for (const input of Object.values(inputs)) {
      if (input.kind === 'rows') walk(input.columns);
      if (input.kind !== 'choice') continue;
      for (const [option, { fills = {} }] of Object.entries(input.options))
        for (const [name, value] of Object.entries(fills)) {
          const filled = inputs[name];
          if (filled?.kind !== 'number' || typeof value !== 'number') continue;
          expect(readCell(filled, defaultText(filled, value)), `${option} ${name}`).toHaveProperty('value');
          expect(doubtAbout(filled, value, 'us'), `${option} ${name}`).toBeUndefined();
        }
    }
  };
  for (const { inputs } of calculators) walk(inputs);
});
