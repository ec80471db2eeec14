import { useEffect, useState } from 'preact/hooks';
import * as v from 'valibot';
import { keep, visitKey } from '../../scripts/kept.ts';
import type { Place } from '../model/place.ts';
import { type Visit, visitSchema } from '../model/visit.ts';
import { resultKind, visitKind } from '../store/visitKinds.ts';
import { isUntouched, newVisit } from '../visit/newVisit.ts';
import { usedForms } from '../visit/usedForms.ts';
import { changed, listed } from './edit.ts';
import { FieldsView } from './FieldView.tsx';
import { groundFields, visitFields } from './fields/visit.ts';
import { formAddress } from './formAddress.ts';
import { useKept, useRecord } from './keptRecords.ts';
import { NextLook } from './NextLook.tsx';
import { Photos } from './Photos.tsx';
import { partsPages } from './partsPages.ts';
import { RecordClashes } from './RecordClashes.tsx';
import { Results } from './Results.tsx';
import { Steps } from './Steps.tsx';
import type { Change } from './session.ts';
import { Troubled } from './Troubled.tsx';
import { PutBack, useTaken } from './taken.tsx';
import { today } from './today.ts';
import { removeVisit } from './Visits.tsx';
import type { PlaceView } from './view.ts';
import { partsIn } from './views.ts';
import { Words } from './Words.tsx';

const isVisit = (value: unknown): value is Visit => v.is(visitSchema, value);

/** `#/visit/ID`; at `#/visit/new` one is begun. */
export function VisitPage(view: PlaceView) {
  const [id = ''] = partsIn(location.hash);
  return id === 'new' ? <NewVisit {...view} /> : <OneVisit key={id} view={view} id={id} />;
}

/** Begins a visit at once: what is chosen in it next is kept like all else. */
function NewVisit(view: PlaceView) {
  const { session, place } = view;
  useEffect(() => {
    const begin = async () => {
      const { records } = await session.store.read(visitKind);
      const own = records.filter(({ placeId }) => placeId === place.id);
      const untouched = own.find((each) => each.day === today(view) && isUntouched(each));
      if (untouched !== undefined) return location.replace(`#/visit/${untouched.id}`);
      const last = own.toSorted((one, other) => other.changedAt.localeCompare(one.changedAt))[0];
      const visit = newVisit(session.newHead(), place.id, today(view), last?.by);
      await session.store.save(visitKind, [{ before: null, after: visit }]);
      location.replace(`#/visit/${visit.id}`);
    };
    void begin();
  }, []);
  return null;
}

function Pastures({
  place,
  visit,
  onChange,
}: {
  readonly place: Place;
  readonly visit: Visit;
  readonly onChange: (changes: readonly Change[]) => void;
}) {
  const tap = (id: string): void => {
    const { pastureIds } = visit;
    onChange([{ path: ['pastureIds'], to: pastureIds.includes(id) ? pastureIds.filter((each) => each !== id) : [...pastureIds, id] }]);
  };
  return (
    <fieldset class="chips">
      <legend>Which pastures</legend>
      {place.pastures.length === 0 && <p class="none-yet">This place has no pastures yet. They are told under “Ground”.</p>}
      {place.pastures.map(({ id, name }) => (
        <button type="button" key={id} aria-pressed={visit.pastureIds.includes(id)} onClick={() => tap(id)}>
          {name}
        </button>
      ))}
    </fieldset>
  );
}

function OneVisit({ view, id }: { readonly view: PlaceView; readonly id: string }) {
  const { session, system, place } = view;
  const work = useRecord(session, visitKind, id);
  const resultIds = work.is === 'there' ? work.value.results.map((each) => each.id) : [];
  const results = useKept(session, resultKind, () => true, resultIds);
  const visits = useKept(session, visitKind, ({ placeId }) => placeId === place.id);
  const [isAsking, setAsking] = useState(false);
  const taken = useTaken(
    () => (work.is === 'there' ? work.now().results : []),
    (left) => onChange([{ path: ['results'], to: listed(left) }]),
    (each) => void session.store.remove(resultKind, each),
  );
  const onChange = (changes: readonly Change[]): void => {
    // A visit always has a day: emptied, the field keeps the one that it had.
    const fitting = changes.filter(({ path, to }) => !(path.join() === 'day' && to === undefined));
    if (fitting.length > 0 && work.is === 'there') work.set(changed(isVisit, work.now(), fitting));
  };
  if (work.is === 'coming') return null;
  if (work.is === 'none' || work.value.placeId !== place.id)
    return (
      <p>
        This visit is not kept here, or belongs to another place. <a href="#/visits">All visits of {place.name}</a>.
      </p>
    );
  const visit = work.value;
  const shared = { record: visit, system, path: [], onChange };
  const words = (at: 'seen' | 'said', label: string, help: string) => (
    <Words
      id={`visit-${at}`}
      label={label}
      help={help}
      text={visit[at] ?? ''}
      onText={(text) => onChange([{ path: [at], to: text === '' ? undefined : text }])}
    />
  );
  return (
    <div class="visit">
      <Troubled trouble={work.trouble} what="This visit" />
      <RecordClashes record={visit} onChange={onChange} />
      <Pastures place={place} visit={visit} onChange={onChange} />
      <Results
        view={view}
        visit={visit}
        results={results ?? []}
        used={usedForms(visit, visits ?? [])}
        onOpen={async (slug, href) => {
          keep('sessionStorage', visitKey, visit.id);
          keep('sessionStorage', `holdwater-chosen:${new URL(formAddress(slug)).pathname}#${slug}`, visit.pastureIds.join(','));
          await session.flush();
          if (!partsPages()) return href;
          return (await import('./givenAddress.ts')).givenAddress(view, slug, href, visit.pastureIds).catch(() => href);
        }}
        onTakeAway={(resultId) => {
          const item = visit.results.find((each) => each.id === resultId);
          if (item) taken.take(item, item.title);
        }}
      />
      {visit.results
        .map((_, index) => index)
        .concat(visit.results.length)
        .flatMap(taken.backs)
        .map((each) => (
          <PutBack key={each.item.id} taken={each} from={taken} />
        ))}
      <p>
        <a class="big-link" href={`#/note/${visit.id}`}>
          Write the note
        </a>
      </p>
      <h3>Day and people</h3>
      <FieldsView id="visit" fields={visitFields} {...shared} />
      <h3>The ground that day</h3>
      <FieldsView id="visit" fields={groundFields} {...shared} />
      <label class="place-tick">
        <input
          type="checkbox"
          checked={visit.ground?.isFrozen === true}
          onChange={(event) => onChange([{ path: ['ground', 'isFrozen'], to: event.currentTarget.checked || undefined }])}
        />
        <span>The ground was frozen</span>
      </label>
      <h3>Seen and said</h3>
      {words('seen', 'What we saw', 'Start with what is good.')}
      {words('said', 'What you said', 'In their words, not yours.')}
      <Photos view={view} visit={visit} now={work.now} onChange={onChange} />
      <h3>What we agreed</h3>
      <Steps view={view} steps={visit.steps} day={visit.day} onChange={onChange} />
      <NextLook id="visit" record={visit} system={system} onChange={onChange} />
      {isAsking ? (
        <div class="sure" role="alert">
          <p>
            <b>Take this visit away with its calculations and its note?</b> Nobody can bring it back but from a file that was saved.
          </p>
          <button
            type="button"
            onClick={() =>
              void removeVisit(view, visit).then(() => {
                location.hash = '#/visits';
              })
            }
          >
            Take it away
          </button>{' '}
          <button type="button" onClick={() => setAsking(false)}>
            Keep it
          </button>
        </div>
      ) : (
        <p class="part-take">
          <button type="button" class="quiet" onClick={() => setAsking(true)}>
            Take this visit away
          </button>
        </p>
      )}
    </div>
  );
}
