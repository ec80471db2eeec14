import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawHoles, drawSymbol, drawSymbols } from '../../calculators/kit/drawFormula.ts';
import { evaluate, namesIn, readFormula, toTex } from '../../calculators/kit/formula.ts';
import { expectWithin } from '../support/expectWithin.ts';

const q = String.raw;
const worth = (template: string, values: Readonly<Record<string, number>> = {}): number =>
  evaluate(readFormula(template), (name) => values[name] ?? Number.NaN);

describe('what a template is worth', () => {
  it.each<[string, number]>([
    ['2 + 3 \\times 4', 14],
    ['(2 + 3) \\times 4', 20],
    ['10 - 4 - 3', 3],
    ['48 / 4 / 3', 4],
    ['2 (3 + 1)', 8],
    ['2^3', 8],
    ['2^{1 + 2} \\times 2', 16],
    ['-2^2', -4],
    ['(-2)^2', 4],
    ['4^{-1}', 0.25],
    ['2^{1/2}^2', Number.NaN],
    [q`\frac{1000}{70} - 10`, 1000 / 70 - 10],
    [q`\frac{6}{4} \times 100`, 150],
    [q`\sqrt{16} 2`, 8],
    [q`\ln(\exp(2))`, 2],
    [q`\min(3, 1, 2)`, 1],
    [q`\max(3, 1 + 4)`, 5],
    [q`\pi \times 2`, 2 * Math.PI],
    ['0.5', 0.5],
    ['  1  +  1  ', 2],
  ])('%s', (template, value) => {
    if (Number.isNaN(value)) expect(() => readFormula(template)).toThrow(SyntaxError);
    else expectWithin(worth(template), value, 5e-13);
  });
  it('puts numbers in for names, negative ones too', () => {
    const template = q`\q{a} \q{b} - \q{c}^2`;
    expect(worth(template, { a: -2, b: 3, c: -4 })).toBe(-22);
    expect(namesIn(readFormula(template))).toEqual(['a', 'b', 'c']);
    expect(namesIn(readFormula(q`\frac{\q{a}}{\max(\q{b}, 1)} + \sqrt{(\q{c})} - (-\q{d})`))).toEqual(['a', 'b', 'c', 'd']);
  });
  it('agrees with the language itself on random sums', () => {
    const leaf = fc.integer({ min: 1, max: 99 }).map(String);
    const { sum } = fc.letrec<{ sum: string; part: string }>((tie) => ({
      part: fc.oneof(
        { maxDepth: 3 },
        leaf,
        tie('sum').map((inside) => `(${inside})`),
      ),
      sum: fc.tuple(tie('part'), fc.constantFrom('+', '-', '\\times', '/'), tie('part')).map((parts) => parts.join(' ')),
    }));
    fc.assert(
      fc.property(sum, (template) => {
        const expected: unknown = new Function(`return ${template.replaceAll('\\times', '*')}`)();
        expect(worth(template)).toBe(expected);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

describe('what is refused', () => {
  it.each([
    '',
    '   ',
    '1 +',
    '+ 1',
    '1 2 +',
    '(1',
    '1)',
    'a',
    'rainIn',
    q`\q{}`,
    q`\q{a b}`,
    q`\q{a.b}`,
    q`\q a`,
    q`\frac{1}`,
    q`\frac12`,
    q`\frac{1}{}`,
    q`\sqrt 2`,
    q`\sqrt[3]{8}`,
    q`\sum_{i} \q{a}`,
    q`\ln 2`,
    q`\ln()`,
    q`\max(1,)`,
    q`\min{1}`,
    q`\cdot`,
    q`2 \cdot 3`,
    q`\left(1\right)`,
    '2 * 3',
    '1 = 1',
    '1,200',
    '.5',
    '5.',
    '1e3',
    '2^',
    '2^-1',
    '2^{1',
    '{1}',
    '50%',
    q`\text{a}`,
    q`\href{x}{1}`,
    '2 \\times -3',
    '1 × 2',
  ])('“%s”', (template) => {
    expect(() => readFormula(template)).toThrow(SyntaxError);
  });
});

describe('TeX again', () => {
  it('multiplies numbers with a sign, symbols without', () => {
    const formula = readFormula(q`\q{a} \q{b}`);
    expect(toTex(formula, (name) => name, false)).toBe(q`a \, b`);
    expect(toTex(formula, () => '3', true)).toBe(q`3 \times 3`);
  });
  it('keeps every part', () => {
    const template = q`-\frac{(\q{a} - 2)^{2}}{\sqrt{\q{b}}} \times \max(1, \pi / 3)`;
    expect(toTex(readFormula(template), (name) => name, false)).toBe(
      q`-\dfrac{{\left(a - 2\right)}^{2}}{\sqrt{b}} \times \max\left(1, \pi / 3\right)`,
    );
  });
});

describe('drawing', () => {
  const template = q`\frac{(\q{rainIn} - \q{firstIn})^2}{\q{rainIn} - \q{firstIn} + \sqrt{\q{storageIn}^{\q{power}}}}`;

  it('leaves a hole for each number, in the picture and for those who listen', () => {
    const html = drawHoles(template, (name) => `<${name}>`.slice(1, -1), 'Q = ');
    const holes = (tag: string): readonly string[] =>
      [...html.matchAll(new RegExp(`<${tag}[^>]*data-q="(\\w+)"`, 'g'))].map((found) => found[1] ?? '').sort();
    const expected = [...namesIn(readFormula(template))].sort();
    expect(holes('mn')).toEqual(expected);
    expect(holes('span')).toEqual(expected);
    expect(html).not.toMatch(/8\d{9}/);
    expect(html).not.toContain('<annotation');
    expect(html).not.toMatch(/\\d?frac/);
  });
  it('loses no hole, wherever it stands', () => {
    for (const place of [
      q`\q{a}`,
      q`2^{\q{a}}`,
      q`\frac{1}{\q{a}}`,
      q`\sqrt{\q{a}}`,
      q`-\q{a}`,
      q`\q{a} \q{a}`,
      q`\max(\q{a}, 1)`,
      q`2 \q{a}^2`,
      q`3 \q{a} 4`,
    ]) {
      const html = drawHoles(place, () => '1');
      const count = namesIn(readFormula(place)).length;
      expect(html.match(/<mn data-q="a">1<\/mn>/g), place).toHaveLength(count);
      expect(html.match(/<span class="mord[^"]*" data-q="a">1<\/span>/g), place).toHaveLength(count);
    }
  });
  it('draws symbols without holes, and refuses what KaTeX does not know', () => {
    const html = drawSymbols(q`\frac{1000}{\q{curveNumber}} - 10`, () => 'CN', 'S = ');
    expect(html).toContain('<mfrac>');
    expect(html).not.toContain('data-q');
    expect(drawSymbol('I_a')).toContain('<msub>');
    expect(() => drawSymbol(q`\nosuchthing`)).toThrow();
  });
});
