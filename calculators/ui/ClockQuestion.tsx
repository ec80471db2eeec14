import { useState } from 'preact/hooks';
import { dayOf, isoDay, printDay } from '../units/printQuantity.ts';

interface ClockQuestionProps {
  readonly id: string;
  readonly deviceDay: number;
  readonly builtDay: number;
  readonly answeredDay?: number;
  readonly onAnswer: (day: number) => void;
}

/** Stands above the dates while the clock is doubted, beside a field for the right day. */
export const clockQuestion = (todayDay: number): string => `This device says ${printDay(todayDay)}. Is that today?`;

/** What is wrong with a day that somebody calls today. A day before the copy was built may be the same hour farther west. */
export function problemOfToday(text: string, builtDay: number): string | undefined {
  const day = dayOf(text);
  if (day === undefined) return 'Put in the whole date of today: month, day and year.';
  return day < builtDay - 1 ? `These pages were made on ${printDay(builtDay)}, so today cannot be ${printDay(day)}. Put in today’s date.` : undefined;
}

/** Asks what day it is, where the device seems to have it wrong; answered, it says by which day the dates go. */
export function ClockQuestion({ id, deviceDay, builtDay, answeredDay, onAnswer }: ClockQuestionProps) {
  const [isAsking, setAsking] = useState(answeredDay === undefined);
  const [text, setText] = useState(isoDay(answeredDay ?? deviceDay));
  const [problem, setProblem] = useState<string | undefined>(undefined);
  if (!isAsking && answeredDay !== undefined)
    return (
      <p role="status">
        Today is {printDay(answeredDay)}, as you said. That holds while this window is open.{' '}
        <button type="button" onClick={() => setAsking(true)}>
          Change it
        </button>
      </p>
    );
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const wrong = problemOfToday(text, builtDay);
        setProblem(wrong);
        const day = dayOf(text);
        if (wrong !== undefined || day === undefined) return;
        setAsking(false);
        onAnswer(day);
      }}
    >
      <p role="status">{clockQuestion(deviceDay)}</p>
      <p class="field-name">
        <label for={id}>Today is</label>
      </p>
      <div class="control">
        <input
          id={id}
          type="date"
          autocomplete="off"
          value={text}
          aria-invalid={problem ? true : undefined}
          aria-describedby={problem ? `${id}-problem` : undefined}
          onInput={({ currentTarget: { value } }) => setText(value)}
        />
      </div>
      {problem && (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
      <button type="submit">Go by this day</button>
    </form>
  );
}
