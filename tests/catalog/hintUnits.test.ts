import { expect, it } from 'vitest';
import { yearlyRain } from '../../calculators/asks/hay.ts';
import type { Input, Option } from '../../calculators/kit/inputs.ts';
import { summaryOf } from '../../calculators/kit/summary.ts';
import { convert, isUnit, type UnitName, type UnitSystem, unitIn, units } from '../../calculators/units/units.ts';
import { calculators, fileOf } from '../support/catalog.ts';
import { expectWithin } from '../support/expectWithin.ts';

// A field shows the unit of its reader, and a number typed alone takes it: a bare number in a hint is then typed in the wrong unit.

const names = Object.keys(units).filter((name): name is UnitName => name in units);
const escaped = (text: string): string => text.replace(/[$.*+?^(){}|[\]\\/]/g, '\\$&');
/** One or many: an inch, inches. */
const wordsOf = (of: readonly UnitName[], alsoTyped = true): string =>
  of
    .flatMap((name) => [units[name].print, units[name].words, units[name].words.replace(/s\b/, ''), ...(alsoTyped ? units[name].typed : [])])
    .filter((each) => /\w|%|°/.test(each))
    .toSorted((a, b) => b.length - a.length)
    .map(escaped)
    .join('|');
const number = String.raw`\d[\d,]*(?:\.\d+)?(?: \d\/\d)?`;
const several = `${number}(?:(?:,| to| or| and|, or) ${number})*`;
const measured = (of: readonly UnitName[], alsoTyped = true): RegExp =>
  new RegExp(`(?:${several})[ -](?:${wordsOf(of, alsoTyped)})(?![a-z/])(?! an? (?:acre|inch|cm))`, 'gi');
const partnersOf = (unit: UnitName, system: UnitSystem): readonly UnitName[] =>
  names.filter(
    (name) =>
      units[name].dimension === units[unit].dimension && unitIn(system, name) === name && unitIn(system === 'us' ? 'si' : 'us', name) !== name,
  );
/** What is no amount, or one that everybody counts alike: days, shares, a size such as 4x5, how often something is done, money, a date. */
const alike = new RegExp(
  String.raw`\b\d{4}-\d\d-\d\d|\d+x\d+|\$${number}|(?:${several}) (?:%|percent|days|head|tons of)|(?<![\d.,])0(?![.,]?\d)`,
  'gi',
);

/** Sentences of a hint whose numbers a reader in the other system takes wrongly. */
function bareIn(hint: string, unit: UnitName): readonly string[] {
  const others = measured(
    names.filter((name) => units[name].dimension !== units[unit].dimension),
    false,
  );
  return hint.split(/(?<=[.:?]) (?=[A-Z])/).filter((sentence) => {
    const left = sentence.replace(alike, '').replace(others, '');
    if (!/\d/.test(left)) return false;
    const isNamed = (system: UnitSystem): boolean => measured(partnersOf(unit, system)).test(left);
    // A number in letters, such as “four inches”, stands before a word; “in” alone is none.
    const inLetters = new RegExp(`(?!in\\b)\\b(?:${wordsOf(partnersOf(unit, 'us'))})\\b`, 'i');
    return !isNamed('si') || !(isNamed('us') || inLetters.test(left));
  });
}
const hintsOf = (key: string, input: Input): readonly (readonly [string, UnitName, string])[] => {
  if (input.kind === 'rows') return Object.entries(input.columns).flatMap(([name, cell]) => hintsOf(`${key}.${name}`, cell));
  if (!('unit' in input) || input.kind === 'record' || unitIn('si', input.unit) === input.unit) return [];
  return [input.help, input.field, input.ask].flatMap((hint) => (hint === undefined ? [] : [[key, input.unit, hint] as const]));
};

it('finds a number without its unit', () => {
  expect(bareIn('A good stand holds 200 to 300.', 'lb/ac/in')).toHaveLength(1);
  expect(bareIn('A good stand holds 200 to 300 lb/ac an inch.', 'lb/ac/in')).toHaveLength(1);
  expect(bareIn('A good stand holds 200 to 300 lb/ac an inch (88 to 132 kg/ha a cm).', 'lb/ac/in')).toEqual([]);
  expect(bareIn('Put 0. It has 15 % water after 7 to 10 days.', 'lb')).toEqual([]);
});
it.each(calculators)('$slug names the units of both systems beside the numbers of its hints', ({ slug, inputs }) => {
  const bare = Object.entries(inputs).flatMap(([key, input]) =>
    hintsOf(key, input).flatMap(([at, unit, hint]) => bareIn(hint, unit).map((each) => `${at}: ${each}`)),
  );
  expect(bare, `${fileOf(slug, 'inputs.ts')}: name the unit in both systems, as in “4 inches (100 mm)”`).toEqual([]);
});

/** Labels of numbers whose unit changes with the reader, in a form or among the results, tables too. */
const labelsOf = (numbers: Readonly<Record<string, object>>): readonly string[] =>
  Object.values(numbers).flatMap((each) => {
    if ('columns' in each) return labelsOf(each.columns as Readonly<Record<string, object>>);
    if (!('unit' in each && 'label' in each)) return [];
    const [unit, label] = [each.unit as UnitName, String(each.label)];
    return unitIn('si', unit) === unit ? [] : [label];
  });
/** Tons there are in both; and the figure that a stick is set by goes by “pounds in an inch” in guides, cautions and publications. */
const ours = /\b(?:acres?|pounds?(?! in an inch)|lb|(?<!pounds in an )inch(?:es)?|f[eo][eo]t|gallons?|miles?|°F)\b/i;
it.each(calculators)('$slug names no unit in a label that stands beside another one for metric readers', ({ slug, inputs, quantities }) => {
  const wrong = [...labelsOf(inputs), ...labelsOf(quantities)].filter((label) => ours.test(label) && !/\d (?:kg|ha|m|mm|L|°C)\b/.test(label));
  expect(wrong, `${fileOf(slug, 'inputs.ts')} or quantities.ts: name what it is, the unit stands beside it`).toEqual([]);
});

/** A height or a heat named in numbers, as a caution of life says it. */
const heightOrHeat = /\d+ (?:inch(?:es)?|°F)\b(?! \()/;
it.each(calculators)('$slug names heights and heats that can kill in both systems', ({ slug, cautions }) => {
  const texts = cautions.filter(({ life }) => life === true).flatMap(({ lead, say }) => [lead, say].filter((each) => typeof each === 'string'));
  const wrong = texts.filter((text) => heightOrHeat.test(text.replace(/\d+ to (?=\d)/g, '')));
  expect(wrong, `${fileOf(slug, 'cautions.ts')} or definition.ts: add the metric figure in brackets`).toEqual([]);
});

const wordsOfShort = (short: Option['short']): readonly string[] => (short === undefined ? [] : typeof short === 'string' ? [short] : short);
/** Options whose few words tell an amount, with what a metric reader is told instead. */
const optionsOf = (inputs: Readonly<Record<string, Input>>): readonly Option[] =>
  Object.values(inputs).flatMap((input) =>
    input.kind === 'rows' ? optionsOf(input.columns) : input.kind === 'choice' ? Object.values<Option>(input.options) : [],
  );
const amounts = (text: string, of: string): readonly (readonly [number, string])[] =>
  [...text.matchAll(new RegExp(`([\\d,.]+)(?: to ([\\d,.]+))? (${of})\\b`, 'g'))].flatMap(([, one = '', other, unit = '']) =>
    [one, ...(other === undefined ? [] : [other])].map((each) => [Number(each.replaceAll(',', '')), unit] as const),
  );
it.each(calculators)('$slug tells the amounts of an option in a line in the reader’s units too', ({ slug, inputs }) => {
  for (const { short, shortMetric } of optionsOf(inputs)) {
    const metric = wordsOfShort(shortMetric);
    for (const [at, words] of wordsOfShort(short).entries()) {
      const ours = amounts(words, 'in|ft|lb');
      const theirs = amounts(metric[at] ?? '', 'mm|m|kg');
      expect(theirs.length, `“${words}” of ${fileOf(slug, 'inputs.ts')} needs a shortMetric`).toBe(ours.length);
      for (const [index, [amount, unit]] of ours.entries()) {
        const [told = Number.NaN, inUnit = ''] = theirs[index] ?? [];
        if (!isUnit(unit) || !isUnit(inUnit)) throw new RangeError(words);
        // Told round: within two in a hundred.
        expectWithin(told / convert(amount, unit, inUnit), 1, 0.02);
      }
    }
  }
});
it('tells the class of rain in a line in millimeters to who reads in metric', () => {
  const rain = { yearlyRain: yearlyRain() };
  const line = (text: string, system: UnitSystem) =>
    summaryOf(rain, { title: 'G', inputs: ['yearlyRain'], summary: 'at {yearlyRain}' }, { yearlyRain: text }, system).text;
  // An inch is 25.4 mm: 25 in are 635 mm and 40 in 1,016.
  expect(['dry', 'middle', 'wet'].map((each) => line(each, 'si'))).toEqual([
    'at under 635 mm of rain',
    'at 635 to 1,015 mm of rain',
    'at over 1,015 mm of rain',
  ]);
  expect(line('wet', 'us')).toBe('at over 40 in of rain');
});
