import { useEffect, useRef, useState } from 'preact/hooks';

interface Thing {
  readonly id: string;
}
interface Taken<T extends Thing> {
  readonly item: T;
  readonly index: number;
  readonly label: string;
}
/** A list from which things are taken away and can come back for as long as its view is open. */
export interface TakenFrom<T extends Thing> {
  readonly take: (item: T, label: string) => void;
  /** What stands in place of those that were taken away before this one. */
  readonly backs: (index: number) => readonly Taken<T>[];
  readonly putBack: (taken: Taken<T>) => void;
}
/** `list` is as it stands when it is called; `forget` hears on leaving of each that did not come back. */
export function useTaken<T extends Thing>(
  list: () => readonly T[],
  onList: (list: readonly T[]) => void,
  forget?: (id: string) => void,
): TakenFrom<T> {
  const [taken, setTaken] = useState<readonly Taken<T>[]>([]);
  const gone = () => taken.filter(({ item }) => !list().some(({ id }) => id === item.id));
  const left = useRef(gone);
  left.current = gone;
  useEffect(
    () => () => {
      for (const { item } of left.current()) forget?.(item.id);
    },
    [],
  );
  return {
    take: (item, label) => {
      const now = list();
      setTaken([...gone(), { item, label, index: now.findIndex(({ id }) => id === item.id) }]);
      onList(now.filter(({ id }) => id !== item.id));
    },
    backs: (index) => gone().filter((each) => Math.min(each.index, list().length) === index),
    putBack: ({ item, index }) => onList(list().toSpliced(index, 0, item)),
  };
}

/** Where something stood that was taken away. */
export const PutBack = <T extends Thing>({ taken, from }: { readonly taken: Taken<T>; readonly from: TakenFrom<T> }) => (
  <p class="part-back" role="status">
    {taken.label} was taken away.{' '}
    <button type="button" onClick={() => from.putBack(taken)}>
      Put it back
    </button>
  </p>
);
