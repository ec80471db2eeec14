import { useEffect, useRef, useState } from 'preact/hooks';

/** What can be read aloud of an answer, a line each. */
interface Aloud {
  readonly cautions: readonly string[];
  readonly answer: readonly string[];
}
/** Long enough to be taken up by what reads aloud. Then it is gone: nobody shall find the answer twice. */
const staysMs = 5000;

/** The lines that are new since they were last read aloud, once nobody types; of an answer all. What stood there at first is no news. */
export function newLines(before: Aloud | undefined, now: Aloud): readonly string[] {
  if (!before) return [];
  const answer = now.answer.join() === before.answer.join() ? [] : now.answer;
  return [...now.cautions.filter((each) => !before.cautions.includes(each)), ...answer].filter((each) => each !== '');
}
export function useAloud(isTyping: boolean, told: () => Aloud): readonly string[] {
  const [lines, setLines] = useState<readonly string[]>([]);
  const before = useRef<Aloud>();
  useEffect(() => {
    if (isTyping) return;
    const now = told();
    const fresh = newLines(before.current, now);
    before.current = now;
    if (fresh.length > 0) setLines(fresh);
  });
  useEffect(() => {
    const timer = lines.length > 0 ? setTimeout(() => setLines([]), staysMs) : 0;
    return () => clearTimeout(timer);
  }, [lines]);
  return lines;
}
