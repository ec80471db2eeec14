/** Steps of 1, 2, 2.5 or 5 times a power of ten that cut `low` to `high` into about `count` parts. */
export function niceTicks(low: number, high: number, count: number): readonly number[] {
  const rough = (high - low) / Math.max(1, count);
  if (!(rough > 0) || !Number.isFinite(rough)) return [low];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 2.5, 5].find((each) => each * power >= rough * 0.999) ?? 10);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  // Counted in steps, so that no sum of tenths drifts.
  return Array.from({ length: Math.max(0, last - first) + 1 }, (_, index) => Number(((first + index) * step).toPrecision(12)));
}

/** What is told in wholes has no tick between them, as long as that leaves two. */
export function wholeTicks(ticks: readonly number[]): readonly number[] {
  const wholes = ticks.filter((tick) => Number.isInteger(tick));
  return wholes.length > 1 ? wholes : ticks;
}

const daySteps = [1, 2, 5, 7, 14, 21, 28, 56, 112, 224] as const;
/** Days to name along an axis at least `widthPx` wide, so far apart that their names stand free, the last one with room for its own. */
export function dayTicks(from: number, to: number, widthPx: number): readonly number[] {
  const pxPerDay = widthPx / Math.max(1, to - from);
  const step = daySteps.find((each) => each * pxPerDay >= dayNamePx) ?? Math.ceil(dayNamePx / pxPerDay);
  const count = Math.floor(Math.max(0, (widthPx - dayNamePx) / pxPerDay) / step + 1e-9) + 1;
  return Array.from({ length: count }, (_, index) => Math.ceil(from) + index * step);
}
/** Room for `Sep 28` at 16 px and the space after it. */
const dayNamePx = 62;
/** Where a day's name stands: over its day, or at the edge where half of it would be cut off. */
export function daySpot(x: number, widthPx: number): { readonly x: number; readonly 'text-anchor': 'start' | 'middle' | 'end' } {
  if (x < dayNamePx / 2) return { x: 0, 'text-anchor': 'start' };
  return x > widthPx - dayNamePx / 2 ? { x: widthPx, 'text-anchor': 'end' } : { x, 'text-anchor': 'middle' };
}

/** A day without its weekday and year: `Sep 28`. */
export const dayName = (printed: string): string => printed.replace(/^\w+, (?=\w{3} \d)/, '').replace(/, \d+$/, '');
