import { useRef, useState } from 'preact/hooks';
import { loadAgain } from '../../site/folder.ts';
import { nameOfFile } from '../files/nameOfFile.ts';
import { asHtml } from '../visit/asHtml.ts';
import { asText } from '../visit/asText.ts';
import { type Audience, outgoing } from '../visit/audience.ts';
import type { Facts } from '../visit/blocks.ts';
import { calendarDays } from '../visit/calendarDays.ts';
import { download } from './download.ts';
import { today } from './today.ts';
import type { PlaceView } from './view.ts';

interface OutProps {
  readonly view: PlaceView;
  readonly facts: Facts;
  readonly audience: Audience | undefined;
  readonly onAudience: (audience: Audience) => void;
}
const audiences = [
  ['producer', 'For the producer'],
  ['office', 'For the office'],
] as const;

/** Whom it is for, what that means, and the ways out. */
export function NoteOut({ view, facts, audience, onAudience }: OutProps) {
  const [told, setTold] = useState('');
  const shown = useRef<HTMLDivElement>(null);
  const note = audience && outgoing(facts, audience);
  const days = note && audience ? calendarDays(facts, audience, note, today(view)) : [];
  const nameFor = (ending: string): string => nameOfFile(`note ${note?.fileWord ?? ''}`, today(view), ending);
  /** Where the browser does not let a page copy, the note stands there selected. */
  const select = (): void => {
    const box = shown.current;
    if (!box || !note) return;
    box.replaceChildren(asHtml(note, document));
    const range = document.createRange();
    range.selectNodeContents(box);
    getSelection()?.removeAllRanges();
    getSelection()?.addRange(range);
    setTold('This browser does not let a page copy. The note is selected below: press copy.');
  };
  const copy = async (): Promise<void> => {
    if (!note) return;
    shown.current?.replaceChildren();
    const typed = (text: string, type: string): Blob => new Blob([text], { type });
    try {
      await navigator.clipboard.write([
        new ClipboardItem({ 'text/html': typed(asHtml(note, document).outerHTML, 'text/html'), 'text/plain': typed(asText(note), 'text/plain') }),
      ]);
      setTold('Copied. Paste it into a message or a document.');
    } catch {
      select();
    }
  };
  const markdown = async (): Promise<void> => {
    if (!note) return;
    const { asMarkdown } = await import('../visit/asMarkdown.ts');
    download(nameFor('md'), asMarkdown(note), 'text/markdown');
  };
  const calendar = async (): Promise<void> => {
    const { calendarFile } = await import('../../../calculators/ui/calendarFile.ts');
    download(nameFor('ics'), calendarFile(`visit-${facts.visit.id}`, days, facts.office?.name), 'text/calendar');
  };
  const failed = (): void => setTold(`This could not be loaded. ${loadAgain()}`);
  return (
    <div class="note-out">
      <fieldset class="chips">
        <legend>Whom is this copy for?</legend>
        {audiences.map(([key, words]) => (
          <button
            type="button"
            key={key}
            aria-pressed={audience === key}
            onClick={() => {
              setTold('');
              shown.current?.replaceChildren();
              onAudience(key);
            }}
          >
            {words}
          </button>
        ))}
      </fieldset>
      {note ? (
        <p class="note-told">
          <b>In it:</b> {note.told.has} <b>Left out:</b> {note.told.leavesOut}.
        </p>
      ) : (
        <p class="none-yet">Choose first; then it can be printed, copied and saved.</p>
      )}
      <p class="note-buttons">
        <button type="button" disabled={!note} onClick={() => print()}>
          Print
        </button>{' '}
        <button type="button" disabled={!note} onClick={() => void copy()}>
          Copy
        </button>{' '}
        <button type="button" disabled={!note} onClick={() => note && download(nameFor('txt'), asText(note), 'text/plain')}>
          Save as plain text
        </button>{' '}
        <button type="button" disabled={!note} onClick={() => void markdown().catch(failed)}>
          Save as Markdown
        </button>{' '}
        <button type="button" disabled={days.length === 0} onClick={() => void calendar().catch(failed)}>
          Dates for a calendar
        </button>
      </p>
      <p role="status">{told}</p>
      <div class="note-selected" ref={shown} />
    </div>
  );
}
