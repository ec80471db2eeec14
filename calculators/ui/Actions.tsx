import { useEffect, useState } from 'preact/hooks';
import { type Calculator, noteOf, type Outcome } from '../kit/define.ts';

/** What is kept: figures that other forms open with, or the result as it stands. */
export type KeptAs = 'place' | 'result';
export type OnKeep = (below: Element, as: KeptAs) => void;

interface ActionsProps {
  readonly calculator: Calculator;
  readonly link: string;
  readonly outcome: Outcome;
  readonly other: Outcome | null;
  readonly titles: readonly [string, string];
  readonly address?: (link: string) => string;
  /** Prints once the handout is ready. */
  readonly onPrint?: () => void;
  /** Before every note: which place, pasture and day, and by whom. Never in a link. */
  readonly heading: () => string | undefined;
  /** Offers to keep what stands here, below. */
  readonly onKeep?: OnKeep | undefined;
}

async function saveCalendar(calculator: Calculator, outcome: Outcome, heading: string | undefined): Promise<void> {
  const { calendarFile } = await import('./calendarFile.ts');
  const url = URL.createObjectURL(new Blob([calendarFile(calculator.slug, outcome.calendar, heading)], { type: 'text/calendar' }));
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.download = `${calculator.slug}.ics`;
  anchor.click();
  // The browser reads the address after this turn.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

const keepWords = [
  ['place', 'Keep as my place'],
  ['result', 'Keep this result'],
] as const;
const withoutRecord = 'The record is not in the link: send its file along.';

/** What people take along: the link, the note, the sheet, the dates. */
export function Actions({ calculator, link, outcome, other, titles, address, onPrint = () => window.print(), heading, onKeep }: ActionsProps) {
  const [told, setTold] = useState('');
  const whole = address?.(link);
  const hasRecord = Object.values(calculator.inputs).some(({ kind }) => kind === 'record');
  useEffect(() => setTold(''), [link]);
  const copy = async (text: string, what: string) => {
    try {
      await navigator.clipboard.writeText(text);
      setTold(`${what} copied.${hasRecord ? ` ${withoutRecord}` : ''}`);
    } catch {
      setTold(`This browser does not let a page copy. Mark it here: ${text}`);
    }
  };
  return (
    <div class="actions">
      <p class="actions-row">
        <button type="button" disabled={whole === undefined} onClick={() => void copy(whole ?? '', 'Link')}>
          Copy link
        </button>
        <button
          type="button"
          disabled={whole === undefined}
          onClick={() =>
            void copy(
              [...[heading() ?? []].flat(), noteOf(calculator, outcome, other, titles), whole ?? '', ...(hasRecord ? [withoutRecord] : [])].join(
                '\n',
              ),
              'Note',
            )
          }
        >
          Copy note
        </button>
        <button type="button" disabled={whole === undefined} onClick={onPrint}>
          Print
        </button>
        {keepWords.map(([as, words]) => (
          <button
            type="button"
            key={as}
            disabled={whole === undefined}
            onClick={({ currentTarget }) => onKeep?.(currentTarget.closest('section') ?? currentTarget, as)}
          >
            {words}
          </button>
        ))}
        {calculator.hasCalendar && outcome.calendar.length > 0 && (
          <button type="button" disabled={whole === undefined} onClick={() => void saveCalendar(calculator, outcome, heading())}>
            Dates for a calendar
          </button>
        )}
      </p>
      <p class="told" role="status">
        {told}
      </p>
    </div>
  );
}
