// Asks for today's date where the clock of the device is doubted. Fetched only there.
import { ClockQuestion } from '../../../calculators/ui/ClockQuestion.tsx';
import { answerKey, clockNow } from '../../scripts/clock.ts';
import { keep } from '../../scripts/kept.ts';
import type { Session } from './session.ts';

const dayMs = 86_400_000;

/** What time it is by the answer that somebody gave, in this window or in a form of it; and what asks for it. */
export function clockAsked(built: string) {
  let clock = clockNow(built);
  const now = (): Date => new Date(Date.now() + ((clock.answeredDay ?? clock.deviceDay) - clock.deviceDay) * dayMs);
  const ClockBar = ({ session }: { readonly session: Session }) => (
    <div class="place-bar notices clock-asked">
      <ClockQuestion
        id="place-today"
        {...clock}
        onAnswer={(day) => {
          keep('sessionStorage', answerKey, String(day - clock.deviceDay));
          clock = { ...clock, answeredDay: day };
          session.tell();
        }}
      />
    </div>
  );
  return { now, ClockBar };
}
