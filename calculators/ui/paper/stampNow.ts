import type { Calculator } from '../../kit/define.ts';
import type { Change } from '../formProps.ts';
import { ownOf } from '../formState.ts';
import { otherTexts } from '../sides.ts';
import { stampOf } from '../stamp.ts';
import { unlikeIn } from './putIn.ts';

/** Whose figures they are, while any is not the reader's own. */
export function stampNow(calculator: Calculator, change: Change): string {
  const { form, linked, system } = change;
  const touched = ownOf(change);
  const that = otherTexts(calculator, form);
  const unlike = that ? [...new Set(unlikeIn(calculator.inputs, form.this, that, system).map(({ key }) => key))] : [];
  const [both, one] = [
    stampOf(calculator, form.this, { touched, linked, waiting: 0, unlike }),
    stampOf(calculator, form.this, { touched, linked, waiting: 0 }),
  ];
  if (both.is !== 'yours') return both.text;
  return one.is === 'yours' ? '' : one.text;
}
