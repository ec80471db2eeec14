import type { Inputs } from '../kit/inputs.ts';
import { tallyOf } from '../kit/screen.ts';
import type { Texts } from '../kit/state.ts';

/** A count that has begun is whole: what was not seen in it, and so neither tapped nor typed, is none and not missing. */
export function tallied(inputs: Inputs, before: Texts, after: Texts): Texts {
  const begun = new Set(Object.keys(after).flatMap((key) => (after[key] !== before[key] && after[key] !== '' ? (tallyOf(inputs[key]) ?? []) : [])));
  if (begun.size === 0) return after;
  const none = Object.keys(after).filter((key) => after[key] === '' && before[key] === '' && begun.has(tallyOf(inputs[key]) ?? ''));
  return { ...after, ...Object.fromEntries(none.map((key) => [key, '0'])) };
}
