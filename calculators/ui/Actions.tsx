import { useState } from 'preact/hooks';
import type { Calculator, Outcome } from '../kit/define.ts';
import { leavesRecord } from '../kit/link.ts';
import { noteOf } from '../kit/note.ts';
import { helpText } from './helpText.ts';
import { officeOnPage } from './officeOnPage.ts';

/** What is kept: figures that other forms open with, or the result as it stands. */
export type KeptAs = 'place' | 'result';
export type OnKeep = (below: Element, as: KeptAs) => Promise<void>;

interface ActionsProps {
  readonly calculator: Calculator;
  readonly link: string;
  readonly outcome: Outcome;
  readonly other: Outcome | null;
  readonly titles: readonly [string, string];
  /** What lies between two sides, for the note. */
  readonly between: string;
  /** There once the form is live. Gives nothing where no other device could open it. */
  readonly address?: (link: string) => string | undefined;
  /** Prints once the handout is ready. */
  readonly onPrint?: () => void;
  /** Before every note: which place, pasture and day, and by whom. Never in a link. */
  readonly heading: () => string | undefined;
  /** Offers to keep what stands here, below. */
  readonly onKeep?: OnKeep | undefined;
  /** What to do where the script of a button did not come. */
  readonly loadAgain?: (() => string) | undefined;
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
const noLink = 'These pages are open from a disk, where no other device could follow a link. Send the note, or print the sheet.';
const withoutRecord = 'The record is not in the link: send its file along.';

/** Whose figures they are, and whose copy of these pages worked them out. */
const headed = (heading: string | undefined): string | undefined => linesOf([heading, officeOnPage().office]) || undefined;
const linesOf = (parts: readonly (string | undefined)[]): string => parts.filter((each) => each !== undefined && each !== '').join('\n');
/** What opened under the result is gone to: nobody hears it open below what was tapped. */
function goInto(section: Element): void {
  const head = section.querySelector<HTMLElement>('.keep-place :is(h3, .told)');
  if (!head) return;
  head.tabIndex = -1;
  head.focus();
}
/** What people take along: the link, the note, the sheet, the dates. */
export function Actions({
  calculator,
  link,
  outcome,
  other,
  titles,
  between,
  address,
  onPrint = () => window.print(),
  heading,
  onKeep,
  loadAgain,
}: ActionsProps) {
  // Told of these answers alone: others take it away.
  const [told, setTold] = useState({ words: '', of: link });
  const tell = (words: string) => setTold({ words, of: link });
  const orTell = (did: Promise<void> | undefined) => void did?.catch(() => tell(`This could not be loaded. ${loadAgain?.() ?? ''}`));
  const isLive = address !== undefined;
  const whole = address?.(link);
  const hasRecord = [outcome, other].some((each) => each && leavesRecord(calculator.inputs, each.values));
  const copy = async (text: string, what: string) => {
    try {
      await navigator.clipboard.writeText(text);
      tell(`${what} copied.${hasRecord && whole !== undefined ? ` ${withoutRecord}` : ''}`);
    } catch {
      tell(`This browser does not let a page copy. Mark it here: ${text}`);
    }
  };
  return (
    <div class="actions">
      <p class="actions-row">
        {(!isLive || whole !== undefined) && (
          <button type="button" disabled={!isLive} onClick={() => void copy(whole ?? '', 'Link')}>
            Copy link
          </button>
        )}
        <button
          type="button"
          disabled={!isLive}
          onClick={() =>
            void copy(
              linesOf([
                headed(heading()),
                noteOf({ ...calculator, weighsOnPeople: false }, outcome, other, titles, between),
                calculator.weighsOnPeople ? helpText(officeOnPage().officeLines) : undefined,
                whole,
                whole !== undefined && hasRecord ? withoutRecord : undefined,
              ]),
              'Note',
            )
          }
        >
          Copy note
        </button>
        <button type="button" disabled={!isLive} onClick={onPrint}>
          Print
        </button>
        {keepWords.map(([as, words]) => (
          <button
            type="button"
            key={as}
            disabled={!isLive}
            onClick={({ currentTarget }) => {
              const section = currentTarget.closest('section') ?? currentTarget;
              orTell(onKeep?.(section, as).then(() => goInto(section)));
            }}
          >
            {words}
          </button>
        ))}
        {calculator.hasCalendar && outcome.calendar.length > 0 && (
          <button type="button" disabled={!isLive} onClick={() => orTell(saveCalendar(calculator, outcome, headed(heading())))}>
            Dates for a calendar
          </button>
        )}
      </p>
      {isLive && whole === undefined && <p>{noLink}</p>}
      <p class="told" role="status">
        {told.of === link ? told.words : ''}
      </p>
    </div>
  );
}
