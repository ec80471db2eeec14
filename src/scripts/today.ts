// A fresh form as it stands today.

import { exampleDates, todayMarks } from '../../calculators/kit/clock.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import { exampleOn } from '../../calculators/kit/occurs.ts';
import { changeSystem, startTexts, type Texts } from '../../calculators/kit/state.ts';
import type { PlaceMarks, Whose } from '../../calculators/ui/props.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import type { Clock } from './clock.ts';

/** A form that nobody has typed in yet. */
export interface Fresh {
  readonly texts: Texts;
  readonly today: ReadonlyMap<string, Whose>;
  readonly notices: readonly string[];
  /** What the open place put in, by path, and what it says. */
  readonly placed?: ReadonlySet<string>;
  /** What it left for the reader to fill. */
  readonly blank?: ReadonlySet<string>;
  readonly place?: PlaceMarks;
}
/** The example of a calculator as it stands today. */
export function exampleBy({ deviceDay, answeredDay }: Clock, calculator: Calculator, system: UnitSystem): Fresh {
  const [day, mark] = answeredDay === undefined ? [deviceDay, todayMarks.device] : [answeredDay, todayMarks.answer];
  const { texts, todayAt, isExampleDates } = exampleOn(calculator, startTexts(calculator.inputs), day);
  return {
    texts: system === 'us' ? texts : changeSystem(calculator.inputs, texts, 'us', system),
    today: new Map(todayAt.map((at) => [at, mark])),
    notices: isExampleDates ? [exampleDates] : [],
  };
}
