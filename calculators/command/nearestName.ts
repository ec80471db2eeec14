import type { Inputs } from '../kit/inputs.ts';
import { lettersApart } from '../kit/lettersApart.ts';
import { linkName } from '../kit/link.ts';

/** Every name that an input or a column may have, those of a link and former ones, with its label. */
export const namesOf = (inputs: Inputs, head = ''): ReadonlyMap<string, string> =>
  new Map(
    Object.entries(inputs).flatMap(([key, input]): readonly (readonly [string, string])[] => {
      const name = `${head}${linkName(key, input)}`;
      if (input.kind === 'rows') return [...namesOf(input.columns, `${name}.`)];
      return input.kind === 'record'
        ? []
        : [name, ...(input.aliases ?? []).map((alias) => `${head}${alias}`)].map((each) => [each, input.label] as const);
    }),
  );

/** A name without what people change in it: capitals, underscores, a unit in brackets. `groundCover` and `Ground cover (%)` are `ground-cover`. */
const plain = (name: string): string =>
  name
    .replace(/[([].*$/, '')
    .replace(/([a-z])([A-Z])/g, '$1-$2')
    .toLowerCase()
    .replace(/[^a-z0-9.]+/g, '-')
    .replace(/^-+|-+$/g, '');

/**
 * The name that was most likely meant, or nothing where none is near.
 * @param names - Each known name with the label that stands at its field
 */
export function nearestName(typed: string, names: ReadonlyMap<string, string>): string | undefined {
  const asked = plain(typed.slice(0, 60));
  if (asked === '') return undefined;
  const [best] = [...names]
    .map(([name, label]) => {
      const startsAlike = asked.startsWith(`${name}-`) ? 1 : Number.POSITIVE_INFINITY;
      return { name, far: Math.min(startsAlike, lettersApart(asked, name), lettersApart(asked, plain(label))) };
    })
    .sort((one, other) => one.far - other.far);
  return best && best.far <= Math.max(1, asked.length / 3) ? best.name : undefined;
}

/** The same as a question behind a sentence. */
export function didYouMean(typed: string, names: ReadonlyMap<string, string>): string {
  const near = nearestName(typed, names);
  return near === undefined ? '' : ` Did you mean “${near}”?`;
}
