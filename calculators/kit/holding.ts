import type { Calculator } from './define.ts';
import type { Input } from './inputs.ts';
import { type Texts, textIn } from './state.ts';

/** The form with dates that are told already, by the reader or by the result that led to it: they neither move nor come from a place, and those that go by them do. */
export const holding = (calculator: Calculator, told: Texts): Calculator => ({
  ...calculator,
  inputs: Object.fromEntries(
    Object.entries(calculator.inputs).map(([key, input]): [string, Input] => {
      if (input.kind !== 'date' || told[key] === undefined) return [key, input];
      const { offeredBy, ...held } = input;
      return [key, { ...held, occurs: 'fixed', default: textIn(told[key]) }];
    }),
  ),
});
