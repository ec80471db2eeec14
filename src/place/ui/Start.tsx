import { useState } from 'preact/hooks';
import type { Place } from '../model/place.ts';
import { say } from './aloud.tsx';
import { FieldsView } from './FieldView.tsx';
import { text } from './fields/field.ts';
import { holds } from './holds.ts';
import type { View } from './view.ts';
import { views } from './views.ts';

const nameMissing = 'Type a name first, such as Home place.';
const nameField = text('name', 'Its name', { isNeeded: true, help: 'As you call it. It goes onto notes and paper, and never into a link.' });

function NewPlace({ view, isFirst }: { readonly view: View; readonly isFirst: boolean }) {
  const [name, setName] = useState('');
  const [isMissing, setMissing] = useState(false);
  const start = (): void => {
    const isEmpty = name.trim() === '';
    setMissing(isEmpty);
    if (isEmpty) {
      say(nameMissing);
      return;
    }
    setName('');
    const from = location.hash;
    void view.session.begins(view.session.blank(name.trim().slice(0, 200))).then(() => {
      // Whoever has gone on meanwhile stays there.
      if (location.hash === from) location.hash = '#/ground';
    });
  };
  return (
    <form
      class="new-place"
      onSubmit={(event) => {
        event.preventDefault();
        start();
      }}
    >
      <div class={`field${isMissing ? ' is-wrong' : ''}`}>
        <p class="field-name">
          <label for="new-place">{isFirst ? 'What do you call your place?' : 'Another place: its name'}</label>
        </p>
        <div class="control">
          <input
            id="new-place"
            type="text"
            autocomplete="off"
            maxLength={200}
            value={name}
            aria-invalid={isMissing || undefined}
            aria-describedby={isMissing ? 'new-place-problem' : undefined}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </div>
        {isMissing && (
          <p class="problem" id="new-place-problem">
            {nameMissing}
          </p>
        )}
      </div>
      <button type="submit" class={isFirst ? 'wide-button' : undefined}>
        {isFirst ? 'Start it' : 'Start another place'}
      </button>
    </form>
  );
}

function ThrowAway({ view, place }: { readonly view: View; readonly place: Place }) {
  const [isAsking, setAsking] = useState(false);
  if (!isAsking)
    return (
      <button type="button" class="quiet" onClick={() => setAsking(true)}>
        Throw {place.name} away
      </button>
    );
  return (
    <div class="sure" role="alert">
      <p>
        <b>Throw away {place.name} with all that is in it?</b> Nobody can bring it back but from a file that was saved.
      </p>
      <button type="button" onClick={() => void view.session.throwAway()}>
        Throw it away
      </button>{' '}
      <button type="button" onClick={() => setAsking(false)}>
        Keep it
      </button>
    </div>
  );
}

function OpenPlace({ view, place }: { readonly view: View; readonly place: Place }) {
  const { session, system } = view;
  const held = holds(place, system);
  return (
    <>
      <FieldsView id="place" record={place} fields={[nameField]} system={system} path={[]} onChange={(changes) => session.change(changes)} />
      <p>
        <a class="big-link" href="#/visit/new">
          New visit
        </a>
      </p>
      <ul class="holds">
        {views
          .filter(({ isOfPlace }) => isOfPlace)
          .map((each) => (
            <li key={each.key}>
              <a href={`#/${each.key}`}>{each.title}</a> <span>{'says' in each ? each.says : (held[each.key] ?? 'nothing yet')}</span>
            </li>
          ))}
      </ul>
      {place.isDemo !== true && <ThrowAway key={place.id} view={view} place={place} />}
    </>
  );
}

const openDemo = ({ session, edition }: View): void =>
  void import('./openDemo.ts').then(
    (demo) => demo.openDemo(session, edition),
    () => session.say('noDemo'),
  );

export function Start(view: View) {
  const { session } = view;
  const { place, places } = session;
  const others = places.filter(({ id }) => id !== place?.id);
  if (place === undefined && places.length === 0)
    return (
      <>
        <p class="nothing-kept">
          <b>Nothing is kept here.</b> Tell your figures once, and forms open with them. You can fill in as much or as little as you like, in any
          order.
        </p>
        <NewPlace view={view} isFirst />
        <p>
          Did you save a file, on this device or another? <a href="#/files">Open a file</a>. Did somebody send you a calculation?{' '}
          <a href="#/link">Open a link</a>. Only looking?{' '}
          <button type="button" class="quiet" onClick={() => openDemo(view)}>
            Open the demo place
          </button>
        </p>
      </>
    );
  return (
    <>
      {place && <OpenPlace view={view} place={place} />}
      <h3>Places on this device</h3>
      <ul class="kept-places">
        {place && (
          <li>
            <b>{place.name}</b> <span>is open</span>
          </li>
        )}
        {others.map(({ id, name, isDemo }) => (
          <li key={id}>
            <b>{name}</b> <span>{isDemo === true ? 'invented' : ''}</span>
            <button type="button" onClick={() => void session.open(id)}>
              Open <span class="unseen">{name}</span>
            </button>
          </li>
        ))}
      </ul>
      <NewPlace view={view} isFirst={false} />
      <p>
        Did somebody send you a calculation? <a href="#/link">Open a link</a>.
      </p>
      {!places.some(({ isDemo }) => isDemo === true) && (
        <p>
          <button type="button" class="quiet" onClick={() => openDemo(view)}>
            Open the demo place
          </button>
        </p>
      )}
    </>
  );
}
