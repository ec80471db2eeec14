import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Texts } from '../../../calculators/kit/state.ts';
import { textAt } from '../../../calculators/kit/textAt.ts';
import { dayOf } from '../../../calculators/units/printQuantity.ts';
import { isSinceTurnIn, nextAfter } from './fits.ts';
import type { Mark, Offers } from './offered.ts';

// For forms of a grazing season that are opened outside it.

export const outOfSeason = 'The grazing season of your place is over, or nearly. This looks ahead to the next one, from the day of turn-in.';
/** The next turn-in of the place, for a form that takes only days from the last turn-in to the end of grazing. */
export function nextTurnIn({ inputs }: Pick<Calculator, 'inputs'>, { single }: Offers, todayDay: number): number | undefined {
  const turnIn = single.get('season.turnIn');
  if (!Object.values(inputs).some(isSinceTurnIn) || !single.has('season.end') || turnIn === undefined || !('monthDay' in turnIn)) return undefined;
  return dayOf(nextAfter(turnIn.monthDay, todayDay));
}
/** Where turn-in stands in for today. */
export const turnInAt = (texts: Texts, at: readonly string[]): readonly Mark[] =>
  at.map((each) => ({ at: each, offer: 'season.turnIn', text: textAt(texts, each) ?? '', says: 'turn-in' }));
