import { useState } from 'preact/hooks';
import type { ChoiceInput } from '../../../calculators/kit/inputs.ts';
import { Field } from '../../../calculators/ui/Field.tsx';
import type { Data } from '../../place/ui/edit.ts';
import { loadAgain } from '../../site/folder.ts';
import { blankDraft } from '../draft.ts';
import { mostLetters } from '../model/office.ts';
import { readOfficeFile } from '../model/officeFile.ts';

export interface Beginnings {
  /** Kinds of country to begin with. */
  readonly countries: readonly { readonly slug: string; readonly name: string }[];
  readonly begin: (slug: string) => Promise<Data>;
  readonly today: string;
  /** The office whose file this copy has. */
  readonly here: Data;
}

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

const startCell = (countries: Beginnings['countries']): ChoiceInput => ({
  kind: 'choice',
  label: 'Start from',
  options: { '': { label: 'Empty forms' }, ...Object.fromEntries(countries.map(({ slug, name }) => [slug, { label: name }])) },
  default: '',
  belongsTo: 'place',
});
/** What the forms are filled with: a kind of country or nothing, the values of this copy, or a file. */
export function Begin({ countries, begin, today, here, put }: Beginnings & { readonly put: (data: Data) => void }) {
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
