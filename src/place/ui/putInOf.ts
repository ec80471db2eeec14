import type { Calculator } from '../../../calculators/kit/define.ts';
import { fromLink } from '../../../calculators/kit/openLink.ts';
import { putInLines, unlikeIn } from '../../../calculators/ui/paper/putIn.ts';
import { otherTexts } from '../../../calculators/ui/sides.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Result } from '../model/result.ts';

/** What was put into a kept result, a line a group of its form, as a handout tells it; of two sides what differs last, each by its name. */
export function putInOf(calculator: Calculator, { link, sides }: Pick<Result, 'link' | 'sides'>, system: UnitSystem): readonly string[] {
  const { form } = fromLink(calculator, link);
  const theirs = otherTexts(calculator, form);
  const unlike = theirs ? unlikeIn(calculator.inputs, form.this, theirs, system) : [];
  const same = putInLines(calculator, form.this, new Set(unlike.map(({ key }) => key)), system);
  const [one, other] = sides ?? ['this', 'that'];
  return [
    ...same.map(({ title, text }) => (title === '' ? text : `${title}: ${text}`)),
    ...unlike.map(({ label, mine, theirs: those }) => `${label.replace(/[?:]$/, '')}: ${one} ${mine}; ${other} ${those}`),
  ];
}
