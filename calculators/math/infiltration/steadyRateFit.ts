import { need } from '../need.ts';

/**
 * Where a slowing ring is heading: the least-squares fit of I = S √t + A t to running sums, as I / √t = S + A √t, with I = `cumulativeIn` and
 * t = `elapsedHours` of each of the `points`. With two points it passes through both. A below 0 means that the pourings don't show a steady rate.
 * @param points - Running depth in inches (above 0) at times in hours (above 0); at least two different times
 * @returns S, the pull of dry soil, inches per root hour, and A, near the steady rate, inches per hour
 * @throws RangeError if a number is not above 0 or all times are the same
 * @source philip-1957, two-term equation (from memory)
 * @example steadyRateFit([{ elapsedHours: 0.25, cumulativeIn: 1 }, { elapsedHours: 1, cumulativeIn: 2.5 }]) //=> { sorptivityInPerRootHr: 1.5, steadyInPerHr: 1 }
 */
export function steadyRateFit(points: readonly { readonly elapsedHours: number; readonly cumulativeIn: number }[]): {
  sorptivityInPerRootHr: number;
  steadyInPerHr: number;
} {
  const scaled = points.map(({ elapsedHours, cumulativeIn }) => {
    need('steadyRateFit', 'elapsedHours', elapsedHours, { above: 0 });
    need('steadyRateFit', 'cumulativeIn', cumulativeIn, { above: 0 });
    return { root: Math.sqrt(elapsedHours), perRoot: cumulativeIn / Math.sqrt(elapsedHours) };
  });
  need('steadyRateFit', 'the number of points', scaled.length, { atLeast: 2 });
  const meanRoot = scaled.reduce((sum, { root }) => sum + root, 0) / scaled.length;
  const meanPerRoot = scaled.reduce((sum, { perRoot }) => sum + perRoot, 0) / scaled.length;
  const spread = scaled.reduce((sum, { root }) => sum + (root - meanRoot) ** 2, 0);
  need('steadyRateFit', 'the spread of elapsedHours', spread, { above: 0 });
  const steadyInPerHr = scaled.reduce((sum, { root, perRoot }) => sum + (root - meanRoot) * (perRoot - meanPerRoot), 0) / spread;
  return { sorptivityInPerRootHr: meanPerRoot - steadyInPerHr * meanRoot, steadyInPerHr };
}
