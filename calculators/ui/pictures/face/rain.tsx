import { between, evenly, noise, strokes } from '../noise.ts';
import type { Room } from './labels.ts';

/** Rain that falls in a box, slanting. */
export const slant = (width: number, height: number, count: number, salt: number): string =>
  strokes(count, (index) => {
    const [across, down] = evenly(index);
    const long = 8 + 8 * noise(index, salt);
    return `M${Math.round(across * (width + 12) - 4)} ${Math.round(down * (height - 10))}l${Math.round(-long * 0.28)} ${Math.round(long)}`;
  });

/** Rain that falls beside the curtain: the more, the harder it came. */
export const Streaks = ({ room: { width, sky, salt }, rainIn }: { readonly room: Room; readonly rainIn: number }) => (
  <path class="streaks" d={slant(width, sky - 4, (width * between(0.3, rainIn, 4)) / 18, salt + 60)} />
);
