import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { ChoiceInput } from '../../../calculators/kit/inputs.ts';
import { Field } from '../../../calculators/ui/Field.tsx';
import { download } from '../../place/ui/download.ts';
import type { Data } from '../../place/ui/edit.ts';
import { loadAgain } from '../../site/folder.ts';
import { blankDraft, officeOf, withTyped, withValue, wrongsIn } from '../draft.ts';
import { officeSteps } from '../model/fields.ts';
import { mostLetters } from '../model/office.ts';
import { officeFileName, readOfficeFile, writeOffice } from '../model/officeFile.ts';
import { sentenceOf, type Wrong } from '../model/sayWrong.ts';
import { idOf } from './OfficeFields.tsx';
import { Steps } from './Steps.tsx';

export interface MakeItYoursProps {
  /** Kinds of country to begin with. */
  readonly countries: readonly { readonly slug: string; readonly name: string }[];
  readonly begin: (slug: string) => Promise<Data>;
  readonly today: string;
  /** Work that this browser keeps. `write` says whether it could. */
  readonly kept: { readonly read: () => Data; readonly write: (data: Data) => boolean };
  /** The office whose file this copy has. */
  readonly here: Data;
}
type Put = (data: Data) => void;

function OpenFile({ onOpened }: { readonly onOpened: (data: Data, name: string) => void }) {
  const [wrong, setWrong] = useState<readonly string[]>([]);
  const open = async (input: HTMLInputElement): Promise<void> => {
    const file = input.files?.[0];
    if (file === undefined) return;
    try {
      // A letter may take four bytes.
      const read = file.size > mostLetters * 4 ? readOfficeFile(' '.repeat(mostLetters + 1)) : readOfficeFile(await file.text());
      setWrong(
        read.is === 'wrong' ? read.say : read.is === 'none' ? ['It is the empty file that every copy comes with: no office has filled it in.'] : [],
      );
      if (read.is === 'read') onOpened(JSON.parse(JSON.stringify(read.office)), file.name);
    } catch {
      setWrong(['This device could not read the file.']);
    }
    // The same file can be chosen again.
    input.value = '';
  };
  return (
    <>
      <p class="file-field">
        <label for="open-office">Open an office file</label>
        <input id="open-office" type="file" accept=".css,text/css" onChange={(event) => void open(event.currentTarget)} />
      </p>
      {wrong.length > 0 && (
        <div role="alert">
          <p class="problem">This file cannot be used. Nothing was changed.</p>
          {wrong.map((each) => (
            <p key={each} class="problem">
              {each}
            </p>
          ))}
        </div>
      )}
    </>
  );
}

const startCell = (countries: MakeItYoursProps['countries']): ChoiceInput => ({
  kind: 'choice',
  label: 'Start from',
  options: { '': { label: 'Empty forms' }, ...Object.fromEntries(countries.map(({ slug, name }) => [slug, { label: name }])) },
  default: '',
  belongsTo: 'place',
});
function Begin({ countries, begin, today, here, put }: Omit<MakeItYoursProps, 'kept'> & { readonly put: Put }) {
  const [slug, setSlug] = useState('');
  const [problem, setProblem] = useState('');
  const start = async (): Promise<void> => {
    try {
      setProblem('');
      put(slug === '' ? blankDraft(today) : await begin(slug));
    } catch {
      setProblem(`The values of that kind of country could not be loaded. ${loadAgain()} Or begin with empty forms.`);
    }
  };
  return (
    <div class="new-place">
      <Field
        id="start-from"
        cell={startCell(countries)}
        text={slug}
        problem={undefined}
        system="us"
        whose={undefined}
        tools={undefined}
        isPlain
        onText={setSlug}
        onLeave={() => undefined}
      />
      <p>A kind of country fills the steps with its published values and their sources. What you leave alone stays theirs.</p>
      <button type="button" class="wide-button" onClick={() => void start()}>
        Begin
      </button>
      {problem !== '' && (
        <p class="problem" role="alert">
          {problem}
        </p>
      )}
      {here !== undefined && (
        <p>
          <button type="button" onClick={() => put(here)}>
            Change the values of this copy
          </button>
        </p>
      )}
      <OpenFile onOpened={put} />
    </div>
  );
}

const stepOf = (at: string): number =>
  officeSteps.findIndex(({ sections }) => sections.some((section) => at === section.at || at.startsWith(`${section.at}.`)));
interface SaveProps {
  readonly data: Data;
  readonly wrongs: readonly Wrong[];
  readonly onTried: () => void;
  readonly onGo: (step: number) => void;
}
function Save({ data, wrongs, onTried, onGo }: SaveProps) {
  const [said, setSaid] = useState<'saved' | 'wrong' | undefined>(undefined);
  const save = (): void => {
    onTried();
    const office = officeOf(data);
    setSaid(office ? 'saved' : 'wrong');
    if (office) download(officeFileName, writeOffice(office), 'text/css');
  };
  const go = (event: Event, at: string): void => {
    event.preventDefault();
    onGo(stepOf(at));
    // Once its step has been drawn.
    setTimeout(() => {
      const target = document.getElementById(idOf(at)) ?? document.getElementById(idOf(at.replace(/\.\d+$/, '')));
      target?.scrollIntoView({ block: 'center' });
      target?.focus();
    }, 50);
  };
  return (
    <section>
      <h2 id="save-office" tabIndex={-1}>
        Save and put it in
      </h2>
      <p>
        <button type="button" class="wide-button" onClick={save}>
          Save the office file
        </button>
      </p>
      <div role="status">
        {said === 'wrong' && wrongs.length > 0 && (
          <>
            <p class="problem">
              Not saved yet: {wrongs.length} {wrongs.length === 1 ? 'thing is' : 'things are'} to mend. All that you typed is still here.
            </p>
            <ul>
              {wrongs.slice(0, 12).map((wrong) => (
                <li key={`${wrong.at} ${wrong.say}`}>
                  <a href={`#${idOf(wrong.at)}`} onClick={(event) => go(event, wrong.at)}>
                    {sentenceOf(wrong, undefined)}
                  </a>
                </li>
              ))}
            </ul>
          </>
        )}
        {said === 'saved' && <p>Saved among your downloads as {officeFileName}.</p>}
      </div>
      <ol>
        <li>
          Look in your downloads for <b>{officeFileName}</b>. Some devices hide endings and show <b>office</b> alone. If there is a number in its
          name, as in <b>office (1)</b>, there was an older one: take the newest, and rename it <b>{officeFileName}</b>.
        </li>
        <li>
          In the folder of your copy, find <b>index.html</b> (or <b>index</b>). Beside it lies an <b>{officeFileName}</b> that is empty. Put yours
          over that one, and say yes when you are asked whether to replace it.
        </li>
        <li>
          Open your copy again, twice where it was open before. At the foot of every page stands “Edition of” and your office. If something is wrong
          with the file, the first page says what, and in which line.
        </li>
      </ol>
      <p>
        The file holds values and words. It cannot run, and nothing else in it is used. If somebody else sends you one, open it on this page before
        you put it in.
      </p>
    </section>
  );
}

/** The whole page: a beginning, eight steps, and the file. */
export function MakeItYours({ kept, ...beginning }: MakeItYoursProps) {
  const [data, setData] = useState<Data>(() => kept.read());
  const newest = useRef(data);
  const [isKept, setKept] = useState(true);
  // Other work in place of this: its fields forget what was typed into them.
  const [round, setRound] = useState(0);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [tries, setTries] = useState(0);
  const [open, setOpen] = useState<number | undefined>(0);
  const [before, setBefore] = useState<Data>(undefined);
  const steps = useRef<HTMLHeadingElement>(null);
  const wrongs = useMemo(() => (data === undefined ? [] : wrongsIn(data)), [data]);
  // Kept with each key, so that nothing is lost to a page that goes at once.
  const change = (next: Data): void => {
    newest.current = next;
    setKept(kept.write(next));
    setData(next);
  };
  useEffect(() => {
    if (isKept || data === undefined) return undefined;
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault();
    addEventListener('beforeunload', ask);
    return () => removeEventListener('beforeunload', ask);
  }, [isKept, data]);
  const replace = (next: Data): void => {
    setBefore(data);
    change(next);
    setRound((count) => count + 1);
    setLeft(new Set());
    setTries(0);
    setOpen(0);
    setTimeout(() => steps.current?.focus());
  };
  const filling = {
    data,
    wrongs,
    tries,
    isTold: (path: string) => tries > 0 || left.has(path),
    put: (path: string, to: Data) => change(withTyped(newest.current, path, to)),
    replaceRows: (path: string, rows: readonly Data[]) => {
      change(withValue(newest.current, path, rows));
      setLeft((now) => new Set([...now].filter((each) => !each.startsWith(`${path}.`))));
      setRound((count) => count + 1);
    },
    leave: (path: string) => setLeft((now) => new Set([...now, path])),
  };
  return (
    <div class="screen">
      <div class="place">
        {!isKept && (
          <p class="place-bar" role="status">
            This window keeps nothing. Save the file before you close it.
          </p>
        )}
        {data === undefined ? (
          <Begin {...beginning} put={replace} />
        ) : (
          <details class="group start-again">
            <summary>
              <span class="group-name">Start again, or open a file</span>
              <span class="group-says">In place of what stands below</span>
              <span class="group-change" />
            </summary>
            <Begin {...beginning} put={replace} />
          </details>
        )}
        {before !== undefined && (
          <p class="part-back" role="status">
            Other values stand below now.{' '}
            <button
              type="button"
              onClick={() => {
                replace(before);
                setBefore(undefined);
              }}
            >
              Put the earlier ones back
            </button>
          </p>
        )}
        {data !== undefined && (
          <>
            <h2 ref={steps} tabIndex={-1}>
              Eight steps, each may be skipped
            </h2>
            <Steps key={round} filling={filling} open={open} onOpen={setOpen} />
            <Save data={data} wrongs={wrongs} onTried={() => setTries((count) => count + 1)} onGo={setOpen} />
          </>
        )}
      </div>
    </div>
  );
}
