// Asks for today's date above a form whose device has a doubtful clock. Fetched only there.
import { render } from 'preact';
import { ClockQuestion } from '../../calculators/ui/ClockQuestion.tsx';
import type { Change } from '../../calculators/ui/formProps.ts';
import type { Opening } from '../../calculators/ui/formState.ts';
import { answerKey, type Clock } from './clock.ts';
import { keep } from './kept.ts';
import type { Dates } from './today.ts';

interface Asking {
  readonly root: Element;
  readonly id: string;
  readonly clock: Clock;
  readonly dates: Dates;
  readonly latest: () => Change | undefined;
  readonly open: (opening: Opening) => void;
}

/** The same clock with the day that somebody said, kept for the other forms of this window. */
function answered(clock: Clock, day: number): Clock {
  keep('sessionStorage', answerKey, String(day - clock.deviceDay));
  return { ...clock, answeredDay: day };
}

/** Once it is answered, the dates that nobody typed move to go with that day. */
export function askToday({ root, id, clock, dates, latest, open }: Asking): void {
  const box = document.createElement('div');
  box.className = 'notices clock-asked';
  root.before(box);
  const draw = (now: Clock) => {
    const answer = (day: number) => {
      const change = latest();
      if (!change) return;
      const then = answered(now, day);
      const opening = dates.answered(then, change);
      if (opening) open(opening);
      draw(then);
    };
    render(<ClockQuestion id={`${id}-today`} {...now} onAnswer={answer} />, box);
  };
  draw(clock);
}
