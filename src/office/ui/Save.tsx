import { useState } from 'preact/hooks';
import { download } from '../../place/ui/download.ts';
import type { Data } from '../../place/ui/edit.ts';
import { officeOf, textOf, valueAt } from '../draft.ts';
import { officeSteps } from '../model/fields.ts';
import { officeFileName, writeOffice } from '../model/officeFile.ts';
import { sentenceOf } from '../model/sayWrong.ts';
import { monthOf } from '../said.ts';
import { type Filling, idOf, MakeToday } from './OfficeFields.tsx';

const valuesDay = 'head.valuesDay';
const stepOf = (at: string): number =>
  officeSteps.findIndex(({ sections }) => sections.some((section) => at === section.at || at.startsWith(`${section.at}.`)));
interface SaveProps {
  readonly filling: Filling;
  readonly onTried: () => void;
  readonly onSaved: (office: Data) => void;
  readonly onGo: (step: number) => void;
}
/** The file, or what is in its way; and where to put it. */
export function Save({ filling, onTried, onSaved, onGo }: SaveProps) {
  const { data, wrongs, today } = filling;
  const [isTried, setTried] = useState(false);
  const [savedText, setSavedText] = useState<string | undefined>(undefined);
  const save = (): void => {
    onTried();
    const office = officeOf(data);
    setTried(office === undefined);
    if (!office) return;
    setSavedText(JSON.stringify(data));
    download(officeFileName, writeOffice(office), 'text/css');
    onSaved(JSON.parse(JSON.stringify(office)));
  };
  const isMissed = isTried && wrongs.length > 0;
  const day = textOf(valueAt(data, valuesDay));
  const isOfOtherMonth = /^\d{4}-\d\d-\d\d$/.test(day) && day.slice(0, 7) !== today.slice(0, 7);
  const go = (event: Event, at: string): void => {
    event.preventDefault();
    onGo(stepOf(at));
    // Once its step has been drawn.
    setTimeout(() => {
      const target = document.getElementById(idOf(at)) ?? document.getElementById(idOf(at.replace(/\.\d+$/, '')));
      target?.scrollIntoView({ block: 'center' });
      (target?.matches('fieldset') ? target.querySelector('input') : target)?.focus();
    }, 50);
  };
  return (
    <section class="office-file">
      <h2 id="save-office" tabIndex={-1}>
        Save and put it in
      </h2>
      {isOfOtherMonth && (
        <p>
          The foot of every page will say “values of {monthOf(day)}”.{' '}
          <MakeToday filling={filling} path={valuesDay} of="These values are of" then="save-office" />
        </p>
      )}
      <p>
        <button type="button" class="wide-button" onClick={save}>
          Save the office file
        </button>
      </p>
      <div role="status">
        {isMissed && (
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
        {savedText !== undefined && !isMissed && (
          <p>
            {savedText === JSON.stringify(data)
              ? `Saved among your downloads as ${officeFileName}.`
              : `Changed since ${officeFileName} was saved. Save it again to have all of it.`}
          </p>
        )}
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
