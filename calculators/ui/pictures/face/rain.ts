import { evenly, noise, strokes } from '../noise.ts';

/** Rain that falls in a box, slanting. */
export const slant = (width: number, height: number, count: number, salt: number): string =>
  strokes(count, (index) => {
    const [across, down] = evenly(index);
    const long = 8 + 8 * noise(index, salt);
    return `M${Math.round(across * (width + 12) - 4)} ${Math.round(down * (height - 10))}l${Math.round(-long * 0.28)} ${Math.round(long)}`;
  });
