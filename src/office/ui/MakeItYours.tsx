import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Data } from '../../place/ui/edit.ts';
import { withTyped, withValue, wrongsIn } from '../draft.ts';
import { Begin, type Beginnings } from './Begin.tsx';
import { Save } from './Save.tsx';
import { Steps } from './Steps.tsx';

export interface MakeItYoursProps extends Beginnings {
  /** Work that this browser keeps. `write` says whether it could. */
  readonly kept: { readonly read: () => Data; readonly write: (data: Data) => boolean };
}

/** The whole page: a beginning, eight steps, and the file. */
export function MakeItYours({ kept, ...beginning }: MakeItYoursProps) {
  const [data, setData] = useState<Data>(() => kept.read());
  const newest = useRef(data);
  const [isKept, setKept] = useState(true);
  // Other work in place of this: its fields forget what was typed into them.
  const [round, setRound] = useState(0);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [tries, setTries] = useState(0);
  const [open, setOpen] = useState<number | undefined>(0);
  const [before, setBefore] = useState<Data>(undefined);
  const steps = useRef<HTMLHeadingElement>(null);
  const wrongs = useMemo(() => (data === undefined ? [] : wrongsIn(data)), [data]);
  // Kept with each key, so that nothing is lost to a page that goes at once.
  const change = (next: Data): void => {
    newest.current = next;
    setKept(kept.write(next));
    setData(next);
  };
  useEffect(() => {
    if (isKept || data === undefined) return undefined;
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault();
    addEventListener('beforeunload', ask);
    return () => removeEventListener('beforeunload', ask);
  }, [isKept, data]);
  const replace = (next: Data): void => {
    setBefore(data);
    change(next);
    setRound((count) => count + 1);
    setLeft(new Set());
    setTries(0);
    setOpen(0);
    setTimeout(() => steps.current?.focus());
  };
  const filling = {
    data,
    wrongs,
    tries,
    isTold: (path: string) => tries > 0 || left.has(path),
    put: (path: string, to: Data) => change(withTyped(newest.current, path, to)),
    replaceRows: (path: string, rows: readonly Data[]) => {
      change(withValue(newest.current, path, rows));
      setLeft((now) => new Set([...now].filter((each) => !each.startsWith(`${path}.`))));
      setRound((count) => count + 1);
    },
    leave: (path: string) => setLeft((now) => new Set([...now, path])),
  };
  return (
    <div class="screen">
      <div class="place">
        {!isKept && (
          <p class="place-bar" role="status">
            This window keeps nothing. Save the file before you close it.
          </p>
        )}
        {data === undefined ? (
          <Begin {...beginning} put={replace} />
        ) : (
          <details class="group start-again">
            <summary>
              <span class="group-name">Start again, or open a file</span>
              <span class="group-says">In place of what stands below</span>
              <span class="group-change" />
            </summary>
            <Begin {...beginning} put={replace} />
          </details>
        )}
        {before !== undefined && (
          <p class="part-back" role="status">
            Other values stand below now.{' '}
            <button
              type="button"
              onClick={() => {
                replace(before);
                setBefore(undefined);
              }}
            >
              Put the earlier ones back
            </button>
          </p>
        )}
        {data !== undefined && (
          <>
            <h2 ref={steps} tabIndex={-1}>
              Eight steps, each may be skipped
            </h2>
            <Steps key={round} filling={filling} open={open} onOpen={setOpen} />
            <Save data={data} wrongs={wrongs} onTried={() => setTries((count) => count + 1)} onGo={setOpen} />
          </>
        )}
      </div>
    </div>
  );
}
