import { need, needThere } from '../need.ts';

/** One input that could be otherwise: its key, its likely value, and the ends to try. */
export interface Swung<K extends string> {
  readonly input: K;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/**
 * What an answer depends on most: each input in turn is put to its low and its high end while the others stay likely; the widest swing comes first,
 * ties in the order given. It says nothing of inputs that go wrong together.
 * @param compute - The answer, a number, from a function that gives the value of an input
 * @param inputs - Inputs with low, likely and high; low at most likely, likely at most high
 * @returns Inputs with the answer at the low and at the high end, and the swing between them, widest first
 * @throws RangeError if the ends of an input are out of order, `compute` asks for an input that is not in the list, or an answer is not a finite number
 * @source our own, since a range for each input says more than one answer
 * @example oneAtATimeSwings((value) => value('a') + 10 * value('b'), [{ input: 'a', low: 0, likely: 1, high: 2 }, { input: 'b', low: 0, likely: 1, high: 2 }])[0].swing //=> 20
 */
export function oneAtATimeSwings<K extends string>(
  compute: (value: (input: K) => number) => number,
  inputs: readonly Swung<K>[],
): { readonly input: K; readonly atLow: number; readonly atHigh: number; readonly swing: number }[] {
  const likelyOf = new Map(inputs.map(({ input, likely }) => [input, likely]));
  const answer = (moved: K, to: number): number => {
    const result = compute((input) => (input === moved ? to : needThere('oneAtATimeSwings', `input ${input}`, likelyOf.get(input))));
    need('oneAtATimeSwings', `the answer with ${moved} at ${to}`, result);
    return result;
  };
  return inputs
    .map(({ input, low, likely, high }) => {
      need('oneAtATimeSwings', `likely ${input}`, likely, { atLeast: low });
      need('oneAtATimeSwings', `high ${input}`, high, { atLeast: likely });
      const atLow = answer(input, low);
      const atHigh = answer(input, high);
      return { input, atLow, atHigh, swing: Math.abs(atHigh - atLow) };
    })
    .sort((one, other) => other.swing - one.swing);
}
