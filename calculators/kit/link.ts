import { longestText, readQuantity } from '../units/readQuantity.ts';
import { isBare, units } from '../units/units.ts';
import type { Cell, Input, Inputs, RowsInput } from './inputs.ts';
import { type Form, isShown, monthsIn, rowsIn, type Texts, textIn, withPlaceOf } from './state.ts';

/**
 * A link holds the texts of a form by name and reopens them for ever:
 *   query = name "=" text *( "&" … ) "&v=" version, with "that." before what a second management changes.
 * It knows nothing of right and wrong: whatever was typed comes back as it was typed.
 */
export interface Linked {
  readonly inputs: Inputs;
  readonly version: number;
  readonly changes?: readonly { readonly version: number; readonly say: string }[];
}

/** `rainIn` → `rain`: the unit stands in the text, so the name does without it. */
export function linkName(key: string, input: Input): string {
  const suffix = input.kind === 'number' || input.kind === 'months' ? units[input.unit].suffix : input.kind === 'date' ? 'Day' : '';
  const isWhole = suffix === '' || key.length === suffix.length || !key.endsWith(suffix);
  const bare = isWhole ? key.replace(/^(?:is|has)(?=[A-Z])/, '') : key.slice(0, -suffix.length);
  return bare.replace(/[A-Z]/g, (letter, at: number) => `${at === 0 ? '' : '-'}${letter.toLowerCase()}`);
}

/** Half a character, left by cutting a text short, would throw. */
const encode = (text: string): string => encodeURIComponent(text.toWellFormed()).replaceAll('%2F', '/').replaceAll('%20', '+');

/** Does a link to these texts or values leave a record behind, which travels as a file? */
export const leavesRecord = (inputs: Inputs, beside: Readonly<Record<string, unknown>>): boolean =>
  Object.values(inputs).some((input) => input.kind === 'record' && isShown(input, beside));

/** Numbers lose their thousands commas and get their unit's token; the rest goes as it stands. */
function linkText(cell: Cell | { readonly kind: 'number'; readonly unit: keyof typeof units }, text: string): string {
  const plain = text.trim().slice(0, longestText);
  if (cell.kind !== 'number') return plain;
  const reading = readQuantity(plain, cell.unit);
  if (reading.is !== 'value') return plain;
  // A bare unit that the field does not ask for, ppm for a percent, goes with its number.
  return reading.unit === cell.unit && isBare(cell.unit) ? reading.amount : `${reading.amount}${reading.unit}`;
}
type Wanted = (cell: { readonly belongsTo: 'place' | 'management' }) => boolean;

function* rowPairs(key: string, input: RowsInput, texts: Texts, beside: Texts, wanted: Wanted): Generator<string> {
  const list = rowsIn(texts[key]);
  const others = rowsIn(beside[key]);
  for (const [name, cell] of Object.entries(input.columns)) {
    const shown = list.map(
      (row, index) => isShown(cell, { ...texts, ...row }) || (cell.belongsTo === 'place' && isShown(cell, { ...beside, ...others[index] })),
    );
    if (!wanted(cell) || !shown.includes(true)) continue;
    // A blank that is shown goes as a space: empty means that the column does not apply in that row.
    const cells = list.map((row, index) => (shown[index] === true ? encode(linkText(cell, row[name] ?? '').replaceAll(',', ' ') || ' ') : ''));
    yield `${linkName(key, input)}.${linkName(name, cell)}=${cells.join(',')}`;
  }
}
/** Every shown text of one side. What belongs to the place counts as shown when either side shows it. */
function* pairsOf(inputs: Inputs, texts: Texts, beside: Texts, wanted: Wanted): Generator<string> {
  for (const [key, input] of Object.entries(inputs)) {
    if (input.kind === 'record') continue;
    const isPlace = input.kind === 'rows' || input.belongsTo === 'place';
    if (!isShown(input, texts) && !(isPlace && isShown(input, beside))) continue;
    if (input.kind === 'rows') yield* rowPairs(key, input, texts, beside, wanted);
    else if (!wanted(input)) continue;
    else if (input.kind === 'months') {
      const cell = { kind: 'number', unit: input.unit } as const;
      yield `${linkName(key, input)}=${monthsIn(texts[key])
        .map((text) => encode(linkText(cell, text).replaceAll(',', ' ')))
        .join(',')}`;
    } else yield `${linkName(key, input)}=${encode(linkText(input, textIn(texts[key])))}`;
  }
}

/** The query, without `?`. Names in declared order, the version last: a link never ends in punctuation that a mailer cuts off. */
export function toLink({ inputs, version }: Linked, form: Form): string {
  const that = form.that && withPlaceOf(inputs, form.this, form.that);
  const mine = [...pairsOf(inputs, form.this, that ?? form.this, () => true)];
  if (!that) return [...mine, `v=${version}`].join('&');
  const theirs = [...pairsOf(inputs, that, that, (cell) => cell.belongsTo === 'management')]
    .filter((pair) => !mine.includes(pair))
    .map((pair) => `that.${pair}`);
  return [...mine, ...(theirs.length > 0 ? theirs : ['that=same']), `v=${version}`].join('&');
}
