import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Figure } from './Answer.tsx';
import type { Stamp } from './stamp.ts';

/** On a phone the figure stays at the bottom of the glass while the answer itself is out of sight above. Listeners have the answer, so they skip this one. */
export function InView({
  answer,
  figure,
  stamp,
}: {
  readonly answer: RefObject<HTMLElement>;
  readonly figure: Figure | undefined;
  readonly stamp: Stamp;
}) {
  const [isAway, setAway] = useState(false);
  useEffect(() => {
    const box = answer.current?.querySelector('.answer');
    if (!box) return undefined;
    const watch = new IntersectionObserver(([seen]) => seen && setAway(!seen.isIntersecting && seen.boundingClientRect.top < 0));
    watch.observe(box);
    return () => watch.disconnect();
  }, []);
  return (
    <p class={`in-view${isAway ? ' is-on' : ''}${figure?.isWords === true ? ' is-said' : ''}`} aria-hidden="true">
      <b>{figure ? `${figure.figure} ${figure.unit}` : '–'}</b> <span class="in-view-what">{figure?.what}</span>{' '}
      <span class="in-view-stamp">{stamp.short}</span>
    </p>
  );
}
