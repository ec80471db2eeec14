// Which day a fresh form takes for today: this device's, or the answer that somebody gave while its clock was doubted.
import type { Calculator } from '../../calculators/kit/define.ts';
import { exampleDates, exampleOn, isDoubtful, todayMarks } from '../../calculators/kit/occurs.ts';
import { changeSystem, startTexts, type Texts } from '../../calculators/kit/state.ts';
import type { PlaceMarks, Whose } from '../../calculators/ui/props.ts';
import { localDay } from '../../calculators/units/days.ts';
import { dayOf } from '../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import { keep, kept } from './kept.ts';

export interface Clock {
  readonly deviceDay: number;
  readonly builtDay: number;
  readonly isDoubted: boolean;
  /** Today, as somebody said it. */
  readonly answeredDay?: number;
}

/** Days from this device's today to the real one. Gone with the window. */
const answerKey = 'holdwater-today';

/**
 * What this device's clock says, in a copy that was built on a day. A clock before the last day on which anything was kept is wrong, or was.
 * @throws RangeError if that is no day
 */
export function clockNow(builtIso: string, lastDay?: number): Clock {
  const [deviceDay, builtDay] = [localDay(new Date()), dayOf(builtIso)];
  if (builtDay === undefined) throw new RangeError(`no day: ${builtIso}`);
  const isDoubted = isDoubtful(deviceDay, builtDay) || (lastDay !== undefined && deviceDay < lastDay);
  const behind = kept('sessionStorage', answerKey);
  const behindDays = Number(behind);
  return {
    deviceDay,
    builtDay,
    isDoubted,
    ...(isDoubted && behind !== null && Number.isInteger(behindDays) ? { answeredDay: deviceDay + behindDays } : {}),
  };
}
/** The same clock with the day that somebody said, kept for the other forms of this window. */
export function answered(clock: Clock, day: number): Clock {
  keep('sessionStorage', answerKey, String(day - clock.deviceDay));
  return { ...clock, answeredDay: day };
}

/** A form that nobody has typed in yet. */
export interface Fresh {
  readonly texts: Texts;
  readonly today: ReadonlyMap<string, Whose>;
  readonly notices: readonly string[];
  /** What the open place put in, by path, and what it says. */
  readonly placed?: ReadonlySet<string>;
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
