// Which day a form takes for today: this device's, or the answer that somebody gave while its clock was doubted.
import { isDoubtful } from '../../calculators/kit/clock.ts';
import { localDay } from '../../calculators/units/days.ts';
import { dayOf } from '../../calculators/units/printQuantity.ts';
import { kept } from './kept.ts';

export interface Clock {
  readonly deviceDay: number;
  readonly builtDay: number;
  readonly isDoubted: boolean;
  /** Today, as somebody said it. */
  readonly answeredDay?: number;
}

/** Days from this device's today to the real one. Gone with the window. */
export const answerKey = 'holdwater-today';

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
