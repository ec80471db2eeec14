import { need } from '../need.ts';
import { sampleInterval } from './sampleInterval.ts';

/** So that one count too many cannot fill the memory. */
const mostPlants = 100_000;

/**
 * Share of a grass's weight that was taken, from plants that were each put into a class by eye: u = sum(c k) / n, with c = `takenPercent` of a class,
 * k = `plantsCount` in it, n = all plants; and the interval that holds the share of all such plants 95 times in 100, as far as they differ among
 * themselves. It knows nothing of the eye's own error. One plant tells nothing of the others: its interval is 0 to 100.
 * @param classes - Each class: the share of its weight that such a plant lost, percent, 0 to 100; and the plants in it, whole number, at least 0
 * @returns Share taken, low and high end, percent; spreadPercent: standard deviation among plants, percentage points
 * @throws RangeError if a value is outside its range, or there is no plant or more than 100,000
 * @source schmutz-1963, abstract (mean of classes); missouri-sample-size (interval)
 * @example shareTaken([{ takenPercent: 0, plantsCount: 5 }, { takenPercent: 50, plantsCount: 5 }]).takenPercent //=> 25
 */
export function shareTaken(classes: readonly { readonly takenPercent: number; readonly plantsCount: number }[]): {
  readonly takenPercent: number;
  readonly lowPercent: number;
  readonly highPercent: number;
  readonly spreadPercent: number;
} {
  for (const { takenPercent, plantsCount } of classes) {
    need('shareTaken', 'takenPercent', takenPercent, { atLeast: 0, atMost: 100 });
    need('shareTaken', 'plantsCount', plantsCount, { atLeast: 0, whole: true });
  }
  const count = classes.reduce((sum, { plantsCount }) => sum + plantsCount, 0);
  need('shareTaken', 'plants in all', count, { atLeast: 1, atMost: mostPlants });
  const plants = classes.flatMap(({ takenPercent, plantsCount }) => Array.from({ length: plantsCount }, () => takenPercent));
  const [first = 0] = plants;
  if (plants.length === 1) return { takenPercent: first, lowPercent: 0, highPercent: 100, spreadPercent: 0 };
  const { mean, low, high, variationPercent } = sampleInterval(plants, 95);
  return {
    takenPercent: mean,
    lowPercent: Math.max(0, low),
    highPercent: Math.min(100, high),
    spreadPercent: mean === 0 ? 0 : (variationPercent * mean) / 100,
  };
}
