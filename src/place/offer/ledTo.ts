import type { Input, Inputs, RowsInput } from '../../../calculators/kit/inputs.ts';
import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { type RowTexts, rowsIn, type Text, type Texts, textIn } from '../../../calculators/kit/state.ts';
import { kindOfWord } from './kindOfWord.ts';

// What a link to which the reader's own result led says only because no form asked: the place knows better.

/** Does it say that there is no hay? No form that leads on asks about that. */
export const saysNoHay = (input: Input | undefined, text: Text | undefined): boolean =>
  input?.kind === 'choice' && input.offeredBy === 'hay.onHand' && text === 'none';

/** What goes with births: when they are, and what one eats before and after. */
const ofBirths: readonly OfferKey[] = ['herd.births', 'herd.birth', 'herd.dryIntake', 'herd.nursingIntake'];

const columnOf = ({ columns }: RowsInput, key: OfferKey): string | undefined =>
  Object.entries(columns).find(([, { offeredBy }]) => offeredBy === key)?.[0];

/**
 * A herd to which a result of today led says no births, for no form of today asks about them. Where the place has births of the same kind, that line has
 * them as the place does; how many there are and what they weigh stays as it came.
 */
export function ledBirths(inputs: Inputs, texts: Texts, placed: Texts): Texts {
  const changed = Object.entries(inputs).flatMap(([key, input]): (readonly [string, Text])[] => {
    if (input.kind !== 'rows' || input.offeredBy !== 'herd') return [];
    const [births, kind] = [columnOf(input, 'herd.births'), columnOf(input, 'herd.kind')];
    if (births === undefined || kind === undefined) return [];
    const kindIn = (row: RowTexts): string | undefined => kindOfWord(textIn(row[kind]))?.kind;
    const names = ofBirths.flatMap((each) => columnOf(input, each) ?? []);
    const withPlace = (row: RowTexts): RowTexts => {
      const mine = rowsIn(placed[key]).find((each) => kindIn(each) !== undefined && kindIn(each) === kindIn(row));
      if (row[births] !== 'no' || mine?.[births] !== 'yes') return row;
      return { ...row, ...Object.fromEntries(names.map((name) => [name, mine[name] ?? ''])) };
    };
    return [[key, rowsIn(texts[key]).map(withPlace)]];
  });
  return { ...texts, ...Object.fromEntries(changed) };
}
