import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Input } from '../../../calculators/kit/inputs.ts';
import { type Texts, textIn } from '../../../calculators/kit/state.ts';

/** The form with dates that are told already, such as those of the result that led to it: they neither move nor come from the place, and those that go by them do. */
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
