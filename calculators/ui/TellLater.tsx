import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { toLink } from '../kit/link.ts';
import type { CalculatorFormProps, Change } from './formProps.ts';

/** The picture follows the answer by a frame, so that a slow phone has drawn it before the next key; tables, the working and the link come a little behind it. */
const pictureMs = 16;
const restMs = 90;

/**
 * What may follow a key a little behind: pictures, tables, the link. What the form is opened with comes at once, with the answer itself: nobody shall read the
 * example under it, and the form is drawn once and not three times.
 */
function useLater<T>(value: T, pause: number): T {
  const later = useRef(value);
  const isOpening = useRef(true);
  const [, redraw] = useState({});
  if (isOpening.current && later.current !== value) {
    isOpening.current = false;
    later.current = value;
  }
  useLayoutEffect(() => {
    if (later.current === value) return undefined;
    const timer = setTimeout(() => {
      later.current = value;
      redraw({});
    }, pause);
    return () => clearTimeout(timer);
  }, [value]);
  return later.current;
}

/** Tells those beside a form what has changed in it. It draws nothing and has a place of its own in the form, so that a key draws the form once. */
export function TellLater({ now, calculator, onTold, onChange }: CalculatorFormProps & { readonly now: Omit<Change, 'link'> }) {
  const told = useLater(now, pictureMs);
  const settled = useLater(told, restMs);
  useLayoutEffect(() => onTold?.(told), [told]);
  useLayoutEffect(() => onChange?.({ ...settled, link: toLink(calculator, settled.form) }), [settled]);
  return null;
}
