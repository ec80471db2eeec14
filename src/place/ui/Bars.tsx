import type { Clash } from '../model/parts.ts';
import { stateWords } from '../store/storageState.ts';
import { lazily } from './lazily.tsx';
import type { PlaceView, View } from './view.ts';

const Clashes = lazily<PlaceView & { readonly clashes: readonly Clash[] }>(async () => (await import('./Clashes.tsx')).Clashes);

const Damaged = lazily<View>(async () => (await import('./Damaged.tsx')).Damaged);

/** What must be known before anything else: whether it is kept, whose it is, what two windows have done. */
export function Bars(view: View) {
  const { session } = view;
  const { place, state, trouble } = session;
  const words = stateWords(state);
  const save = place && (
    <button type="button" onClick={() => void import('./saveFile.ts').then(({ saveFile }) => saveFile(view, [place]))}>
      Save the file
    </button>
  );
  return (
    <>
      {words !== undefined && (
        <div class="place-bar" role="alert">
          <p>
            <b>{words}</b>
          </p>
          {save}
          {state.is === 'memory' && state.why === 'damaged' && <Damaged {...view} />}
        </div>
      )}
      {trouble === 'gone' && place && (
        <div class="place-bar" role="alert">
          <p>
            <b>{place.name} was thrown away in another window.</b> What you see here is no longer kept.
          </p>
          <button type="button" onClick={() => void session.keepAfterAll()}>
            Keep it after all
          </button>
        </div>
      )}
      {(trouble === 'newer' || trouble === 'damaged') && (
        <div class="place-bar" role="alert">
          <p>
            <b>
              {trouble === 'newer' ? 'A newer copy of these pages has changed this place.' : 'What lies on the device for this place cannot be read.'}
            </b>{' '}
            Your changes here are not kept, and nothing there was written over. Save the file, then load the page again.
          </p>
          {save}
        </div>
      )}
      {session.newer.length > 0 && (
        <div class="place-bar">
          <p>
            {session.newer.length === 1 ? 'A place' : `${session.newer.length} places`} here, made by a newer copy of these pages, cannot be opened by
            this one. <a href="#/files">Save it as a file</a>.
          </p>
        </div>
      )}
      {session.aside.length > 0 && (
        <div class="place-bar">
          <p>
            Something that was kept cannot be read any more and was set aside. The rest is here. <a href="#/files">See what it is</a>.
          </p>
        </div>
      )}
      {place?.isDemo === true && (
        <p class="demo-line">
          <b>Demo place: invented. Nothing here is yours.</b>{' '}
          <button type="button" onClick={() => void session.throwAway()}>
            Throw it away
          </button>
        </p>
      )}
      {place && state.is === 'kept' && session.backups.isDue(place, session.now, session.changedBeside) && (
        <div class="place-bar is-reminder">
          <p>Much has changed since {place.name} was last saved as a file.</p>
          {save}{' '}
          <button
            type="button"
            class="quiet"
            onClick={() => {
              session.backups.later(place.id, session.now);
              session.forgetUndo();
            }}
          >
            Later
          </button>
        </div>
      )}
      {place?.clash !== undefined && <Clashes {...view} place={place} clashes={place.clash} />}
    </>
  );
}
