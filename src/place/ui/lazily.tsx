import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { loadAgain } from '../../site/folder.ts';

type Brought<P> = { readonly is: 'coming' } | { readonly is: 'there'; readonly View: FunctionComponent<P> } | { readonly is: 'failed' };

/** A part of the page that is fetched when it is first shown, and stays. The worker keeps it with the page, so it comes without a signal too. */
export function lazily<P extends object>(bring: () => Promise<FunctionComponent<P>>): FunctionComponent<P> {
  let brought: Brought<P> = { is: 'coming' };
  return function Lazy(props: P) {
    const [now, setNow] = useState(brought);
    useEffect(() => {
      if (now.is === 'there') return;
      bring().then(
        (View) => {
          brought = { is: 'there', View };
          setNow(brought);
        },
        () => setNow({ is: 'failed' }),
      );
    }, [now.is]);
    if (now.is === 'there') return <now.View {...props} />;
    return now.is === 'coming' ? null : <p role="alert">This part of the page could not be loaded. {loadAgain()}</p>;
  };
}
