import { shortHelp } from '../kit/helpLines.ts';

/** Whom to call, right under an answer that weighs on people. Tapping a number calls. */
export const ShortHelp = () => (
  <p class="short-help">
    {shortHelp.map(({ text, dials }) =>
      dials === undefined ? (
        text
      ) : (
        <a key={dials} href={`tel:${dials}`}>
          {text}
        </a>
      ),
    )}
  </p>
);
