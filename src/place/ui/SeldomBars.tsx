import { loadAgain } from '../../site/folder.ts';
import type { Clash } from '../model/parts.ts';
import { lazily } from './lazily.tsx';
import { SaveButton } from './SaveButton.tsx';
import type { PlaceView, View } from './view.ts';

const Clashes = lazily<PlaceView & { readonly clashes: readonly Clash[] }>(async () => (await import('./Clashes.tsx')).Clashes);

/** What is seldom to be told: what other windows and other copies of these pages have done, and that a file is due. Fetched where there is any of it. */
export function SeldomBars(view: View) {
  const { session } = view;
  const { place, trouble } = session;
  return (
    <>
      {trouble === 'gone' && place && (
        <div class="place-bar" role="alert">
          <p>
            <b>{place.name} was thrown away in another window, with its record, visits, notes and photos.</b> This window still holds the place
            itself: what is told under Ground, Stock, Feed, Water, Season and Tools. The rest comes back only from a file that was saved.
          </p>
          <button type="button" onClick={() => void session.keepAfterAll()}>
            Keep the place itself
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
          {place && <SaveButton view={view} place={place} />}
        </div>
      )}
      {(trouble === 'noDemo' || trouble === 'noVisits') && (
        <div class="place-bar" role="alert">
          <p>
            {trouble === 'noDemo'
              ? `The demo place could not be loaded. ${loadAgain()}`
              : `The visits of the demo place could not be loaded; the rest of it is here. ${loadAgain()} Then throw it away and open it anew to have them.`}
          </p>
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
      {place && session.isFileDue() && (
        <div class="place-bar is-reminder">
          <p>Much has changed since {place.name} was last saved as a file.</p>
          <SaveButton view={view} place={place} />{' '}
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
