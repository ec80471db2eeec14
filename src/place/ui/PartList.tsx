import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { newId } from '../store/ids.ts';
import { type Data, listed } from './edit.ts';
import { goInto } from './goInto.ts';
import { Fold, Still } from './Part.tsx';
import type { View } from './view.ts';

interface PartListProps<T extends { readonly id?: string | undefined }> {
  readonly view: View;
  /** Where the list stands in the place. */
  readonly path: readonly string[];
  readonly items: readonly T[];
  readonly name: (item: T, index: number) => string;
  readonly says?: (item: T) => string;
  readonly addWords: string;
  readonly emptyWords?: string;
  readonly make: (id: string) => Data;
  /** What else its fields are drawn from. */
  readonly also?: readonly unknown[];
  readonly draw: (item: T, path: readonly string[], name: string) => ComponentChildren;
}
/** Things of one kind: each folds to a line, can be taken away, and can come back. */
export function PartList<T extends { readonly id?: string | undefined }>(props: PartListProps<T>) {
  const { view, path, items, name, says, addWords, emptyWords, make, also = [], draw } = props;
  const { session, isPrinting, system } = view;
  const added = useRef<string | undefined>(undefined);
  const { undo } = session;
  const add = (): void => {
    const id = newId();
    added.current = id;
    session.change([{ path, to: [...listed(items), make(id)] }]);
    goInto(id);
  };
  return (
    <div class="parts">
      {items.length === 0 && emptyWords !== undefined && <p class="none-yet">{emptyWords}</p>}
      {items.map((item, index) => {
        const called = name(item, index);
        const at = item.id === undefined ? path : [...path, item.id];
        return (
          <Still key={item.id ?? index} from={[item, index, isPrinting, system, ...also]}>
            {() => (
              <Fold title={called} says={says?.(item) ?? ''} isOpenAtFirst={item.id === added.current} isPrinting={isPrinting}>
                {() => (
                  <>
                    {draw(item, at, called)}
                    <p class="part-take">
                      <button type="button" class="quiet" onClick={() => session.takeAway(called, path, index)}>
                        Take {called} away
                      </button>
                    </p>
                  </>
                )}
              </Fold>
            )}
          </Still>
        );
      })}
      {undo !== undefined && undo.path.join('/') === path.join('/') && (
        <p class="part-back" role="status">
          {undo.label} was taken away.{' '}
          <button type="button" onClick={() => session.putBack()}>
            Put it back
          </button>
        </p>
      )}
      <p class="part-add">
        <button type="button" onClick={add}>
          {addWords}
        </button>
      </p>
    </div>
  );
}
