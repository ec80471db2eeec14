import { stateWords } from '../store/storageState.ts';
import { lazily } from './lazily.tsx';
import { SaveButton } from './SaveButton.tsx';
import type { View } from './view.ts';

const SeldomBars = lazily<View>(async () => (await import('./SeldomBars.tsx')).SeldomBars);
const Damaged = lazily<View>(async () => (await import('./Damaged.tsx')).Damaged);

/** What must be known before anything else: whether it is kept, whose it is, what two windows have done. */
export function Bars(view: View) {
  const { session } = view;
  const { place, state, trouble } = session;
  const words = stateWords(state);
  const isAnySeldom =
    trouble !== undefined || session.newer.length > 0 || session.aside.length > 0 || place?.clash !== undefined || session.isFileDue();
  return (
    <>
      {words !== undefined && (
        <div class="place-bar" role="alert">
          <p>
            <b>{words}</b> {state.is === 'full' && <a href="#/files">What photos take</a>}
          </p>
          {place && <SaveButton view={view} place={place} />}
          {state.is === 'memory' && state.why === 'damaged' && <Damaged {...view} />}
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
      {isAnySeldom && <SeldomBars {...view} />}
    </>
  );
}
