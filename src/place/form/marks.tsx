import type { VNode } from 'preact';

interface Otherwise {
  readonly isDemo: boolean;
  readonly shown: string;
  readonly address: string;
  readonly use: () => void;
}
/** Beside a field that holds something else than the place. */
export const otherwise = ({ isDemo, shown, address, use }: Otherwise): VNode => (
  <>
    yours{' '}
    <span class="place-says">
      {isDemo ? 'the demo place' : 'your place'}: {shown} ·{' '}
      <button type="button" class="quiet" onClick={use}>
        use it
      </button>{' '}
      · <a href={address}>change it at my place</a>
    </span>
  </>
);
/** The mark of what came from there, with what must be told beside it: `from your place, slip of Jun 3, 2026`. */
export const fromPlace = (says: string | undefined): VNode => <span class="from-place">from your place{says !== undefined && `, ${says}`}</span>;
