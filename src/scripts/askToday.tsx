// Asks for today's date above a form whose device has a doubtful clock. Fetched only there.
import { render } from 'preact';
import { ClockQuestion } from '../../calculators/ui/ClockQuestion.tsx';
import { answerKey, type Clock } from './clock.ts';
import { keep } from './kept.ts';

interface Asking {
  readonly root: Element;
  readonly id: string;
  readonly clock: Clock;
  readonly answered: (clock: Clock) => void;
}

/** The same clock with the day that somebody said, kept for the other forms of this window. */
function withAnswer(clock: Clock, day: number): Clock {
  keep('sessionStorage', answerKey, String(day - clock.deviceDay));
  return { ...clock, answeredDay: day };
}

/** Once it is answered, the dates that nobody typed move to go with that day. */
export function askToday({ root, id, clock, answered }: Asking): void {
  const box = document.createElement('div');
  box.className = 'notices clock-asked';
  root.before(box);
  const draw = (now: Clock) => {
    const answer = (day: number) => {
      const then = withAnswer(now, day);
      answered(then);
      draw(then);
    };
    render(<ClockQuestion id={`${id}-today`} {...now} onAnswer={answer} />, box);
  };
  draw(clock);
}
