import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { Aloud, say } from '../../place/ui/aloud.tsx';
import type { Data } from '../../place/ui/edit.ts';
import { seenBeside, textOf, valueAt, withTyped, withValue, wrongsIn } from '../draft.ts';
import { sentenceOf } from '../model/sayWrong.ts';
import { begun, goneOn, isOther, type KeptWorks, saved, swapped, type Works, withData } from '../work.ts';
import { Begin, type Beginnings } from './Begin.tsx';
import { Before, OtherValues } from './Kept.tsx';
import type { Filling } from './OfficeFields.tsx';
import { Save } from './Save.tsx';
import { Steps } from './Steps.tsx';
import { useWorks } from './useWorks.ts';

export interface MakeItYoursProps extends Beginnings {
  readonly kept: KeptWorks;
}

const keepsNothing = 'This window keeps nothing. Save the file before you close it.';

/** The whole page: a beginning, eight steps, and the file. */
export function MakeItYours({ kept, ...beginning }: MakeItYoursProps) {
  const { here, today } = beginning;
  const { works, isKept, change } = useWorks(kept);
  const { now, before } = works;
  const data = now?.data;
  // As it stood when this window got it.
  const was = useRef(data);
  // Other work in place of this: its fields forget what was typed into them.
  const [round, setRound] = useState(0);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [tries, setTries] = useState(0);
  const [open, setOpen] = useState<number | undefined>(0);
  const steps = useRef<HTMLHeadingElement>(null);
  const wrongs = useMemo(() => (data === undefined ? [] : wrongsIn(data)), [data]);
  const toSteps = (): void => {
    setTimeout(() => steps.current?.focus());
  };
  const replace = (to: (works: Works) => Works): void => {
    const [, { now: next }] = change(to);
    was.current = next?.data;
    setRound((count) => count + 1);
    setLeft(new Set());
    setTries(0);
    setOpen(0);
    toSteps();
  };
  const begin = (next: Data): void => replace((each) => begun(each, next, here));
  const leave = (path: string): void => setLeft((paths) => new Set([...paths, path]));
  /** A day that went with a value: told aloud once that value is left. */
  const gone = useRef<string>();
  useEffect(() => {
    if (!isKept) say(keepsNothing);
  }, [isKept]);
  const filling: Filling = {
    data,
    wrongs,
    tries,
    today,
    isTold: (path) => tries > 0 || left.has(path),
    put: (path, to) => {
      const [then, next] = change((each) => withData(each, (value) => withTyped(value, path, to, was.current)));
      const seen = seenBeside(path);
      const isGone = ({ now: work }: Works): boolean => seen !== undefined && textOf(valueAt(work?.data, seen)) === '';
      // With a price goes the day on which the old one was seen: it is missing from this moment on.
      if (seen !== undefined && seen !== path && isGone(next) && !isGone(then)) {
        leave(seen);
        gone.current = seen;
      }
    },
    replaceRows: (path, rows) => {
      change((each) => withData(each, (value) => withValue(value, path, rows)));
      setLeft((paths) => new Set([...paths].filter((each) => !each.startsWith(`${path}.`))));
    },
    leave: (path) => {
      leave(path);
      const missing = wrongs.find(({ at }) => at === gone.current);
      gone.current = undefined;
      if (missing && !wrongs.some(({ at }) => at === path)) say(sentenceOf(missing, undefined));
    },
  };
  return (
    <div class="screen">
      <div class="place">
        {!isKept && <p class="place-bar">{keepsNothing}</p>}
        {now && isOther(now, here) && (
          <OtherValues
            data={data}
            here={here}
            // The work was asked about, and is not again when it comes back.
            onTake={() => replace((each) => begun(goneOn(each, here), here, here))}
            onGoOn={() => {
              change((each) => goneOn(each, here));
              toSteps();
            }}
          />
        )}
        {data === undefined ? (
          <Begin {...beginning} put={begin} />
        ) : (
          <details key={round} class="group start-again">
            <summary>
              <span class="group-name">Start again, or open a file</span>
              <span class="group-says">In place of what stands below</span>
              <span class="group-change" />
            </summary>
            <Begin {...beginning} put={begin} />
          </details>
        )}
        {before && <Before data={data} before={before.data} onBack={() => replace(swapped)} />}
        {data !== undefined && (
          <>
            <h2 ref={steps} tabIndex={-1}>
              Eight steps, each may be skipped
            </h2>
            <Steps key={round} filling={filling} open={open} onOpen={setOpen} />
            <Save
              key={now?.begunAs}
              filling={filling}
              onTried={() => setTries((count) => count + 1)}
              onSaved={(office) => change((each) => saved(each, office, here))}
              onGo={setOpen}
            />
          </>
        )}
        <Aloud />
      </div>
    </div>
  );
}
