import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import type { Result } from '../model/result.ts';
import type { Visit } from '../model/visit.ts';
import { firstFigures } from '../visit/firstFigures.ts';
import { byGround } from '../visit/sections.ts';
import { dayWords } from '../visit/visitWords.ts';
import { formAddress } from './formAddress.ts';
import { lazily } from './lazily.tsx';
import { partsPages } from './partsPages.ts';
import type { FormName, PlaceView } from './view.ts';

const Since = lazily<{ readonly result: Result; readonly view: PlaceView }>(async () => (await import('./Since.tsx')).Since);

interface ResultsProps {
  readonly view: PlaceView;
  readonly visit: Visit;
  readonly results: readonly Result[];
  /** Slugs of the forms that come first where one is added. */
  readonly used: readonly string[];
  /** Before a form is opened: what it opens with, and at which address. */
  readonly onOpen: (slug: string, href: string) => Promise<string>;
  readonly onTakeAway: (id: string) => void;
}
interface OneProps {
  readonly view: PlaceView;
  readonly result: Result;
  /** The name of its ground stands above it. */
  readonly isUnder: boolean;
  readonly onTakeAway: () => void;
}
function One({ view, result, isUnder, onTakeAway }: OneProps) {
  const { slug, title, link, note, keptDay, version, hasRecord } = result;
  const form = view.forms.find((each) => each.slug === slug);
  return (
    <li>
      {isUnder ? <h5>{title}</h5> : <h4>{title}</h4>}
      {result.stamp !== undefined && (
        <p>
          <b>{result.stamp}</b>
        </p>
      )}
      <p>{note}</p>
      <dl class="told-fields">
        {firstFigures(result).map(({ label, text, range }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>
              {text}
              {range !== undefined && <small> {range}</small>}
            </dd>
          </div>
        ))}
      </dl>
      <p>
        Kept {dayWords(keptDay)}. {hasRecord && 'Its record is not in the link: these figures are what is kept. '}
        {form === undefined ? (
          'This copy of the pages has no such calculator: its words are kept, and it cannot be opened here.'
        ) : (
          <a href={formAddress(slug, link)}>Open it as it stood</a>
        )}{' '}
        <button type="button" class="quiet" onClick={onTakeAway}>
          Take it away <span class="unseen">{title}</span>
        </button>
      </p>
      {form !== undefined && form.version !== version && <Since result={result} view={view} />}
    </li>
  );
}

/** Those that are used first, then all others as they stand. */
function inOrder(forms: readonly FormName[], used: readonly string[]): readonly FormName[] {
  const at = ({ slug }: FormName): number => (used.includes(slug) ? used.indexOf(slug) : used.length);
  return forms.toSorted((one, other) => at(one) - at(other));
}

/** What was worked out in a visit, and the way to more. */
export function Results({ view, visit, results, used, onOpen, onTakeAway }: ResultsProps) {
  const [isAdding, setAdding] = useState(false);
  const forms = inOrder(view.forms, used);
  const inVisit = visit.results.flatMap(({ id }) => results.find((each) => each.id === id) ?? []);
  return (
    <>
      <h3>Worked out</h3>
      {inVisit.length === 0 && <p class="none-yet">Nothing yet.</p>}
      {byGround(view.place, inVisit).map(({ names, results: ofGround }) => (
        <Fragment key={names}>
          {names !== '' && <h4>{names}</h4>}
          <ul class="coming">
            {ofGround.map((result) => (
              <One key={result.id} view={view} result={result} isUnder={names !== ''} onTakeAway={() => onTakeAway(result.id)} />
            ))}
          </ul>
        </Fragment>
      ))}
      <p class="part-add">
        <button type="button" aria-expanded={isAdding} onClick={() => setAdding(!isAdding)}>
          Add a calculation
        </button>
      </p>
      {isAdding && partsPages() && (
        <p>
          From a folder, Firefox can bring no result back into a visit. A calculator opens with the figures of this place: copy its note, or print its
          sheet.
        </p>
      )}
      {isAdding && (
        <ul class="form-names">
          {forms.map(({ slug, title }) => (
            <li key={slug}>
              <a
                href={formAddress(slug)}
                onClick={(event) => {
                  event.preventDefault();
                  const { href } = event.currentTarget;
                  void onOpen(slug, href).then((address) => location.assign(address));
                }}
              >
                {title}
              </a>
            </li>
          ))}
          <li>
            <a href={`#/link/${visit.id}`}>A link that somebody sent</a>
          </li>
        </ul>
      )}
    </>
  );
}
