import type { FunctionComponent } from 'preact';
import { useState } from 'preact/hooks';
import type { RecordInput } from '../kit/inputs.ts';
import { answered, splitAnswers, withBody } from '../kit/record/answers.ts';
import { largestText } from '../kit/record/limits.ts';
import { printNumber } from '../units/printQuantity.ts';
import type { UnitSystem } from '../units/units.ts';
import { RecordUnderstood } from './RecordUnderstood.tsx';
import { type FileText, textOfFile } from './textOfFile.ts';

/** Handed to a form that asks for a record, and fetched for no other. */
export interface Records {
  readonly draw: FunctionComponent<RecordFieldProps>;
  /** Keeps a record for the next visit, or forgets what was kept and says that it could not; an empty text forgets it. Not there before the form is live. */
  readonly keep: ((name: string, text: string) => boolean) | undefined;
}
export interface RecordFieldProps {
  readonly id: string;
  readonly input: RecordInput;
  readonly text: string;
  readonly problem: string | undefined;
  readonly system: UnitSystem;
  readonly onText: (text: string) => void;
  readonly onLeave: () => void;
  /** Keeps the text for the next visit, or says that it could not; then the one before is forgotten too. Empty: forget it. */
  readonly keep: ((text: string) => boolean) | undefined;
}

const tooLarge = (what: string): string => `${what} is too large for a rain record: ${largestText / 1e6} MB is the most.`;

/** A longer text is told, not shown: a field with thousands of lines makes each key slow. */
const longestShown = 20_000;

/** A long list of days, pasted, typed or read from a file, and what was understood of it. */
export function RecordField({ id, input, text, problem, system, onText, onLeave, keep }: RecordFieldProps) {
  const [file, setFile] = useState<{ readonly name: string; readonly is: 'reading' | 'read' } | null>(null);
  const [fault, setFault] = useState('');
  const [isKept, setKept] = useState(true);
  const [isOver, setOver] = useState(false);
  const isExample = text === input.default;
  const { body } = splitAnswers(text);
  const isLong = body.length > longestShown && !isExample;
  const say = fault || problem;
  const put = (next: string) => {
    setFault('');
    // Read before it is kept: what cannot be read must not come back at every visit. The form takes this very reading.
    input.read(next);
    onText(next);
    setKept(keep?.(next === input.default ? '' : next) ?? true);
  };
  const putWhole = (whole: string) => {
    if (whole.length > largestText) return setFault(tooLarge('This text'));
    put(withBody(text, whole, true, system));
    onLeave();
  };
  const take = async (found: File | undefined) => {
    if (!found) return;
    if (found.size > largestText) return setFault(tooLarge(`“${found.name}”`));
    setFile({ name: found.name, is: 'reading' });
    const got: FileText = await textOfFile(found);
    // A turn of the screen, so that the word of it is seen before a long text is gone through.
    await new Promise((done) => setTimeout(done, 20));
    setFile({ name: found.name, is: 'read' });
    if ('problem' in got) setFault(got.problem);
    else putWhole(got.text);
  };
  const describedBy = `${id}-help${say ? ` ${id}-problem` : ''}`;
  const lines = isLong ? body.trimEnd().split('\n').length : 0;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping a file is one way of three; the button below does the same by keyboard
    <div
      class={`field record${say ? ' is-wrong' : ''}${isOver ? ' is-over' : ''}`}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        const dropped = event.dataTransfer?.files[0];
        if (dropped) void take(dropped);
        else putWhole(event.dataTransfer?.getData('text/plain') ?? '');
      }}
    >
      <label for={isLong ? `${id}-file` : id}>{input.label}</label>
      <small class="field-hint" id={`${id}-help`}>
        {input.help}
      </small>
      {isLong ? (
        <p class="record-long">
          {lines === 1 ? 'One long line' : `${printNumber(lines, 0)} lines`}
          {file ? ` from “${file.name}”` : ''}, too much to show here.
        </p>
      ) : (
        <textarea
          id={id}
          rows={7}
          autocomplete="off"
          spellcheck={false}
          value={isExample ? '' : body}
          aria-invalid={say ? true : undefined}
          aria-describedby={describedBy}
          onInput={(event) => put(withBody(text, event.currentTarget.value, isExample, system))}
          onPaste={(event) => {
            const pasted = event.clipboardData?.getData('text/plain') ?? '';
            if (pasted.length <= longestShown) return;
            event.preventDefault();
            setFile(null);
            putWhole(pasted);
          }}
          onBlur={onLeave}
        />
      )}
      <div class="record-actions">
        <label class="file">
          <span>Or read a file: choose one, or drop it here</span>
          <input
            id={`${id}-file`}
            type="file"
            accept=".csv,.txt,.tsv,.dat,text/csv,text/plain,text/tab-separated-values"
            aria-describedby={describedBy}
            onChange={(event) => {
              const field = event.currentTarget;
              // Emptied, so that the same file, mended, can be chosen again.
              void take(field.files?.[0]).then(() => {
                field.value = '';
              });
            }}
          />
        </label>
        {!isExample && (
          <button
            type="button"
            class="quiet"
            onClick={() => {
              setFile(null);
              put(input.default);
              onLeave();
            }}
          >
            Take this record out
          </button>
        )}
      </div>
      <p class="told" role="status">
        {file?.is === 'reading' ? `Reading “${file.name}” …` : ''}
        {!isKept &&
          'This browser cannot keep a record of this size, and keeps no older one: it is gone when the page is loaded again. Keep the file.'}
      </p>
      {say && (
        <p class="problem" id={`${id}-problem`}>
          {say}
        </p>
      )}
      {!isExample && body.trim() !== '' && (
        <RecordUnderstood
          id={id}
          input={input}
          understood={input.read(text)}
          system={system}
          onAnswer={(name, value) => {
            put(answered(text, name, value));
            onLeave();
          }}
        />
      )}
      <small class="field-hint">
        {isExample && 'As long as this is empty, the example’s record is used. '}
        {keep && !isExample && isKept && 'The record stays in this browser until you take it out. '}Nothing of it leaves this device, and no link
        carries it.
      </small>
      {(input.field || input.ask) && (
        <details class="field-help">
          <summary>{input.ask ? 'Don’t know?' : 'How to get it'}</summary>
          {input.ask && <p>{input.ask}</p>}
          {input.field && <p>{input.field}</p>}
        </details>
      )}
    </div>
  );
}
