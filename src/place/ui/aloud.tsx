import { useEffect, useLayoutEffect, useState } from 'preact/hooks';

/** So long behind what happened: whoever goes on by a key hears the next field first, which would cut it off. */
const behindMs = 150;
/** Then it is gone: what it says stands on the page anyway, and nobody shall come upon it twice. */
const staysMs = 4000;
let tell: (words: string) => void = () => undefined;

/** Has words read aloud, once, that everybody else sees: what is wrong with the field that was left, where a part has gone. */
export const say = (words: string): void => tell(words);

/** The region that they are read from. It stands there from the beginning: one that comes with its words is not read everywhere. */
export function Aloud() {
  const [words, setWords] = useState('');
  useEffect(() => {
    let timer = 0;
    tell = (next) => {
      clearTimeout(timer);
      setWords('');
      timer = window.setTimeout(() => {
        setWords(next);
        timer = window.setTimeout(() => setWords(''), staysMs);
      }, behindMs);
    };
    return () => clearTimeout(timer);
  }, []);
  return (
    <p class="unseen" role="status">
      {words}
    </p>
  );
}

/** What is wrong between fields that can be read each: it stands below them, and is read aloud once somebody leaves the one that brought it. */
export function WrongTogether({ words }: { readonly words: string | undefined }) {
  // Before anybody can go on by a key.
  useLayoutEffect(() => {
    if (words === undefined) return undefined;
    const tellOnce = (): void => say(words);
    addEventListener('focusout', tellOnce, { once: true });
    return () => removeEventListener('focusout', tellOnce);
  }, [words]);
  return words === undefined ? null : <p class="problem">{words}</p>;
}
