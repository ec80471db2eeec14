import fc from 'fast-check';
import type { Calculator } from '../../calculators/kit/define.ts';
import type { Cell, Inputs, NumberInput } from '../../calculators/kit/inputs.ts';
import { type Form, monthsIn, type RowTexts, rowsIn, type Text, type Texts, textIn, withPlaceOf } from '../../calculators/kit/state.ts';
import { dayOf, isoDay } from '../../calculators/units/printQuantity.ts';
import { convert, isBare, isUnit, type UnitName, units } from '../../calculators/units/units.ts';

/** A number in plain decimals with all the digits it has: nobody types 1e-7. */
export function plainNumber(value: number): string {
  const text = String(value);
  if (!text.includes('e')) return text;
  const places = Math.min(100, 17 - Math.floor(Math.log10(Math.abs(value))));
  return value.toFixed(Math.max(0, places)).replace(/\.?0+$/, '');
}

type Ranged = Pick<NumberInput, 'unit' | 'min' | 'max' | 'whole'>;
/** Of the bare ones, which stand in a label, only its own: few type ppm where percent is asked. */
const unitsLike = (unit: UnitName): readonly UnitName[] =>
  Object.keys(units)
    .filter(isUnit)
    .filter((name) => units[name].dimension === units[unit].dimension && (name === unit || !isBare(name)));

const share = fc.integer({ min: 0, max: 10_000 }).map((part) => part / 10_000);
const clamp = (value: number, { min, max }: Ranged): number => Math.min(Math.max(value, min), max);
function sizeIn(input: Ranged, usual: number | undefined): fc.Arbitrary<number> {
  const { min, max, whole = false } = input;
  const tidy = (value: number): number => clamp(whole ? Math.round(value) : Number(value.toPrecision(5)), input);
  const low = Math.max(min, Math.min(max, 1) / 1000);
  return fc.oneof(
    { weight: 4, arbitrary: fc.constant(usual ?? min) },
    { weight: 1, arbitrary: fc.constantFrom(min, max) },
    { weight: 4, arbitrary: share.map((at) => tidy(min + at * (max - min))) },
    // Small amounts too, where the range spans several powers of ten.
    { weight: 3, arbitrary: share.map((at) => tidy(low > 0 && max > low ? low * (max / low) ** at : min)) },
    // Near the default: where people are.
    { weight: 3, arbitrary: share.map((at) => tidy((usual ?? min) * (0.3 + 2.2 * at))) },
  );
}

/** The ways in which people type one amount: alone, with any unit of its kind, as a fraction, with a thousands comma. */
export function numberText(input: Ranged, usual?: number): fc.Arbitrary<string> {
  const { unit, min, max, whole = false } = input;
  const own = sizeIn(input, usual).chain((value) =>
    fc.constantFrom(
      plainNumber(value),
      `${plainNumber(value)} ${unit}`,
      `${plainNumber(value)}\u00a0${unit}`,
      value >= 1000 && Number.isInteger(value) ? value.toLocaleString('en-US') : plainNumber(value),
    ),
  );
  const other = fc
    .tuple(sizeIn(input, usual), fc.constantFrom(...unitsLike(unit)))
    .map(([value, shown]) => (shown === unit ? plainNumber(value) : `${plainNumber(convert(value, unit, shown))} ${shown}`));
  const least = Math.max(0, Math.ceil(min));
  const most = Math.min(Math.floor(max) - 1, 100_000);
  if (whole || most < least) return whole ? own : fc.oneof(own, other);
  const fraction = fc
    // Eighths have an end in decimals, so that the same amount can be typed in both unit systems.
    .tuple(fc.integer({ min: least, max: most }), fc.constantFrom('1/2', '1/4', '3/4', '5/8'), fc.boolean())
    .map(([before, part, hasUnit]) => `${before === 0 && min <= 0.25 ? '' : `${before} `}${part}${hasUnit ? ` ${unit}` : ''}`.trim())
    .filter((text) => text.includes(' ') || min <= 0.25);
  return fc.oneof({ weight: 4, arbitrary: own }, { weight: 3, arbitrary: other }, { weight: 1, arbitrary: fraction });
}

function cellText(cell: Cell): fc.Arbitrary<string> {
  switch (cell.kind) {
    case 'number':
      return numberText(cell, cell.default);
    case 'choice':
      return fc.oneof({ weight: 1, arbitrary: fc.constant(cell.default) }, { weight: 3, arbitrary: fc.constantFrom(...Object.keys(cell.options)) });
    case 'yesNo':
      return fc.constantFrom('yes', 'no');
    case 'date': {
      const usual = dayOf(cell.default) ?? 0;
      return fc.oneof(
        { weight: 2, arbitrary: fc.constant(cell.default) },
        { weight: 2, arbitrary: fc.integer({ min: -60, max: 60 }).map((by) => isoDay(usual + by)) },
        { weight: 1, arbitrary: fc.integer({ min: -800, max: 800 }).map((by) => isoDay(usual + by)) },
      );
    }
  }
}
const recordOf = <T>(of: Readonly<Record<string, fc.Arbitrary<T>>>): fc.Arbitrary<Readonly<Record<string, T>>> => {
  const keys = Object.keys(of);
  return fc
    .tuple(...Object.values(of))
    .map((texts) => Object.fromEntries(keys.flatMap((key, at) => (texts[at] === undefined ? [] : [[key, texts[at]]]))));
};
const mapValues = <T, U>(of: Readonly<Record<string, T>>, to: (value: T) => U): Readonly<Record<string, U>> =>
  Object.fromEntries(Object.entries(of).map(([key, value]) => [key, to(value)]));

/** Texts that a person could have typed, every one inside its limits. */
export const textsOf = (inputs: Inputs): fc.Arbitrary<Texts> =>
  recordOf<Text>(
    mapValues(inputs, (input): fc.Arbitrary<Text> => {
      switch (input.kind) {
        case 'rows':
          return fc.array<RowTexts>(recordOf(mapValues(input.columns, cellText)), { minLength: 1, maxLength: Math.min(6, input.maxRows) });
        case 'months':
          return fc.tuple(...input.default.map((usual) => numberText(input, usual)));
        case 'record':
          return fc.oneof(
            fc.constant(input.default),
            fc.array(sizeIn(input, undefined), { minLength: 1, maxLength: Math.min(8, input.maxRows) }).map((amounts) =>
              // With the unit in the head: without it, large amounts are asked about.
              [`day, rain (${input.unit})`, ...amounts.map((amount, day) => `${isoDay(20_500 + 9 * day)}, ${plainNumber(amount)}`)].join('\n'),
            ),
          );
        default:
          return cellText(input);
      }
    }),
  );

/** A form with or without a second management on the same place. */
export const formsOf = ({ inputs }: Calculator): fc.Arbitrary<Form> =>
  fc
    .tuple(textsOf(inputs), textsOf(inputs), fc.constantFrom('alone', 'same', 'other'))
    .map(([first, own, that]) => ({ this: first, that: that === 'alone' ? null : that === 'same' ? first : withPlaceOf(inputs, first, own) }));

/** Every number among the texts, rewritten. */
export function rewriteNumbers(inputs: Inputs, texts: Texts, rewrite: (text: string, input: Ranged) => string): Texts {
  const cell = (input: Cell, text: string): string => (input.kind === 'number' ? rewrite(text, input) : text);
  return Object.fromEntries(
    Object.entries(texts).map(([key, text]): [string, Text] => {
      const input = inputs[key];
      if (!input) return [key, text];
      switch (input.kind) {
        case 'record':
          return [key, text];
        case 'months':
          return [key, monthsIn(text).map((each) => rewrite(each, input))];
        case 'rows': {
          const columns = new Map(Object.entries(input.columns));
          const row = (texts: RowTexts): RowTexts =>
            Object.fromEntries(
              Object.entries(texts).map(([name, each]) => {
                const column = columns.get(name);
                return [name, column ? cell(column, each) : each];
              }),
            );
          return [key, rowsIn(text).map(row)];
        }
        default:
          return [key, cell(input, textIn(text))];
      }
    }),
  );
}
