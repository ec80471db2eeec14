import { useState } from 'preact/hooks';

interface StartOverProps {
  /** Names what would be lost: `Throw this count away?` */
  readonly asks: string;
  /** Said to listeners, where two of them stand on a page. */
  readonly of: string;
  readonly isOff: boolean;
  readonly onYes: () => void;
}

/** A glove taps wrong easily, so it asks first. */
export function StartOver({ asks, of, isOff, onYes }: StartOverProps) {
  const [isAsking, setAsking] = useState(false);
  const answer = (isYes: boolean) => {
    setAsking(false);
    if (isYes) onYes();
  };
  return (
    <>
      <button type="button" disabled={isOff} aria-expanded={isAsking} onClick={() => setAsking(!isAsking)}>
        Start over<span class="unseen"> for {of}</span>
      </button>
      {isAsking && (
        <span class="tool-question">
          <span role="status">{asks}</span>
          <button type="button" onClick={() => answer(true)}>
            Yes, start over
          </button>
          <button type="button" onClick={() => answer(false)}>
            No, keep it
          </button>
        </span>
      )}
    </>
  );
}
