import type { Calculator } from '../../../calculators/kit/define.ts';
import { toLink } from '../../../calculators/kit/link.ts';
import { startTexts } from '../../../calculators/kit/state.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Filled } from './fillTexts.ts';

/** A link with what a place gave a form, for a page that cannot see the place. What stands there as the example has it is not in it, so that the form tells it as the example’s. */
export function givenLink(calculator: Calculator, { texts, marks }: Pick<Filled, 'texts' | 'marks'>, system: UnitSystem): string {
  const given = new Set(marks.map(({ at }) => at.split('.')[0]));
  const example = startTexts(calculator.inputs, system);
  const isOwn = (key: string): boolean => given.has(key) || JSON.stringify(texts[key]) !== JSON.stringify(example[key]);
  const inputs = Object.fromEntries(Object.entries(calculator.inputs).filter(([key]) => isOwn(key)));
  return toLink({ ...calculator, inputs }, { this: texts, that: null });
}
