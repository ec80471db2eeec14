import { useEffect, useRef, useState } from 'preact/hooks';
import type { KeptWorks, Works } from '../work.ts';

/** The works as this browser keeps them, in this window and in others, and whether it could. */
export function useWorks(kept: KeptWorks) {
  const [works, setWorks] = useState<Works>(() => kept.read());
  const [isKept, setKept] = useState(true);
  const newest = useRef({ works, isKept });
  const show = (next: Works, could: boolean): void => {
    newest.current = { works: next, isKept: could };
    setWorks(next);
    setKept(could);
  };
  /** As another window may have left them since; unless this one holds what could not be kept, or all that was kept is gone. */
  const latest = (): Works => {
    const found = newest.current.isKept ? kept.read() : {};
    return found.now ? found : newest.current.works;
  };
  useEffect(() => {
    const follow = (): void => show(latest(), newest.current.isKept);
    // A window that was only put aside has heard nothing meanwhile.
    addEventListener('storage', follow);
    addEventListener('pageshow', follow);
    return () => {
      removeEventListener('storage', follow);
      removeEventListener('pageshow', follow);
    };
  }, []);
  useEffect(() => {
    if (isKept || !works.now) return undefined;
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault();
    addEventListener('beforeunload', ask);
    return () => removeEventListener('beforeunload', ask);
  }, [isKept, works.now]);
  return {
    works,
    isKept,
    /** Kept with each key, so that nothing is lost to a page that goes at once. Gives what was there before and after. */
    change: (to: (now: Works) => Works): readonly [Works, Works] => {
      const before = latest();
      const after = to(before);
      show(after, kept.write(after));
      return [before, after];
    },
  };
}
