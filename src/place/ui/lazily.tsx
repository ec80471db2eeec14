import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { loadAgain } from '../../site/folder.ts';

type Brought<P> = { readonly is: 'coming' } | { readonly is: 'there'; readonly View: FunctionComponent<P> } | { readonly is: 'failed' };

/** By then what was asked for is drawn. */
const drawnMs = 500;
/** What a tap will ask of a view comes a moment behind it: the tap then waits for nothing, and needs no signal any more. */
export function useBehind(bring: () => Promise<unknown>): void {
  useEffect(() => {
    // What did not come is asked for again at the tap, which says so.
    const timer = setTimeout(() => void bring().catch(() => undefined), drawnMs);
    return () => clearTimeout(timer);
  }, [bring]);
}

interface Lazy<P> extends FunctionComponent<P> {
  /** Fetches it ahead. */
  readonly bring: () => Promise<unknown>;
  readonly isThere: () => boolean;
}
/** A part of the page that is fetched when it is first shown, and stays. The worker keeps it with the page, so it comes without a signal too. */
export function lazily<P extends object>(fetchView: () => Promise<FunctionComponent<P>>): Lazy<P> {
  let brought: Brought<P> = { is: 'coming' };
  const bring = async (): Promise<Brought<P>> => {
    brought = { is: 'there', View: await fetchView() };
    return brought;
  };
  const LazyView = (props: P) => {
    const [now, setNow] = useState(brought);
    useEffect(() => {
      if (now.is !== 'there') bring().then(setNow, () => setNow({ is: 'failed' }));
    }, [now.is]);
    if (now.is === 'there') return <now.View {...props} />;
    return now.is === 'coming' ? null : <p role="alert">This part of the page could not be loaded. {loadAgain()}</p>;
  };
  return Object.assign(LazyView, { bring, isThere: () => brought.is === 'there' });
}
