import type { Inputs, RowsInput } from '../../../calculators/kit/inputs.ts';
import type { OfferKey } from '../../../calculators/kit/offers.ts';
import { type RowTexts, rowsIn, type Text, type Texts, textIn } from '../../../calculators/kit/state.ts';
import { kindOfWord } from './kindOfWord.ts';

// What a link to which the reader's own result led leaves empty in its rows, because no form of today asks about it: the place may know.

/** What goes with births: when they are, and what one eats before and after. */
const ofBirths: readonly OfferKey[] = ['herd.births', 'herd.birth', 'herd.dryIntake', 'herd.nursingIntake'];

const columnOf = ({ columns }: RowsInput, key: OfferKey): string | undefined =>
  Object.entries(columns).find(([, { offeredBy }]) => offeredBy === key)?.[0];

/**
 * A herd to which a result of today led leaves open whether any are born. Where the place has the same kind, that line has its births as the place does;
 * how many there are and what they weigh stays as it came, and so does what one eats where none are born.
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
      if (row[births] !== '' || mine === undefined) return row;
      const known = mine[births] === 'yes' ? names : [births];
      return { ...row, ...Object.fromEntries(known.map((name) => [name, mine[name] ?? ''])) };
    };
    return [[key, rowsIn(texts[key]).map(withPlace)]];
  });
  return { ...texts, ...Object.fromEntries(changed) };
}
