import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** Does it reach past the glass? Then it does not stay in view beside the questions, where its end would never be seen. */
export function useTall(box: RefObject<HTMLElement>): boolean {
  const [isTall, setTall] = useState(false);
  useEffect(() => {
    if (!box.current) return undefined;
    const watch = new ResizeObserver(([seen]) => seen && setTall(seen.contentRect.height > innerHeight));
    watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  return isTall;
}
