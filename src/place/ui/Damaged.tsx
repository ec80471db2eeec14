import { useState } from 'preact/hooks';
import { textOfRaw } from '../files/textOfRaw.ts';
import { rawOfAll } from '../store/damaged.ts';
import { startAnew } from '../store/openStore.ts';
import { download } from './download.ts';
import { today } from './today.ts';
import type { View } from './view.ts';

/** The browser cannot open its own store: first what can be saved is saved, and only then, at a person's word, is it taken away. */
export function Damaged(view: View) {
  const [isSaved, setSaved] = useState(false);
  const [fault, setFault] = useState('');
  const save = async (): Promise<void> => {
    download(`holdwater-raw-${today(view)}.json`, textOfRaw(await rawOfAll(localStorage)));
    setSaved(true);
  };
  const anew = async (): Promise<void> => {
    try {
      await startAnew();
      location.reload();
    } catch {
      setFault('This browser would not take it away. Close the other windows of these pages and try again.');
    }
  };
  return (
    <>
      <p>
        <button type="button" onClick={() => void save()}>
          Save what can still be read
        </button>
      </p>
      {isSaved && (
        <p>
          It is among your downloads: whoever looks after these pages may be able to bring it back. To keep figures here again, the damaged store must
          go.{' '}
          <button type="button" onClick={() => void anew()}>
            Start anew
          </button>
        </p>
      )}
      {fault !== '' && (
        <p class="problem" role="alert">
          {fault}
        </p>
      )}
    </>
  );
}
