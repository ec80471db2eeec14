import { type Outcome, type RunOptions, runBySteps } from './run.ts';
import type { Side } from './side.ts';
import type { Sky } from './sky.ts';
import type { Weather } from './weather.ts';
import { type HayYear, hayYearsOf } from './years.ts';

/** Two managements through the same weather. */
export interface Compared {
  readonly first: readonly HayYear[];
  readonly second: readonly HayYear[];
  readonly outcomes: readonly [first: Outcome, second: Outcome];
}

/**
 * Runs two managements over one record, yielding the share that is done. Hay years are those of the first side's turn-out for both, so that year stands
 * beside year. Two sides that are alike differ by exactly nothing, because both run the same operations on the same numbers.
 */
export function* compareBySteps(weather: Weather, sky: Sky, first: Side, second: Side, options: RunOptions = {}): Generator<number, Compared> {
  const together = { from: first.management.turnOut, ...options };
  function* half(side: Side, done: number): Generator<number, Outcome> {
    const steps = runBySteps(sky, side, together);
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
      yield done + step.value / 2;
    }
  }
  const one = yield* half(first, 0);
  const other = yield* half(second, 0.5);
  return { first: hayYearsOf(one, weather), second: hayYearsOf(other, weather), outcomes: [one, other] };
}

export function compare(weather: Weather, sky: Sky, first: Side, second: Side, options?: RunOptions): Compared {
  const steps = compareBySteps(weather, sky, first, second, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** What can be changed alone, all else as on the first side. */
export const channels = ['stocking', 'rest', 'stubble', 'runoff', 'roots', 'hay-losses', 'feeding-place', 'dates'] as const;
export type Channel = (typeof channels)[number];

/**
 * The first side with one thing of the second: for the table “nothing but this changed”. The lines of that table need not add up to the whole. For `rest` the
 * paddocks are the second side's, on the roots of the first; for `roots` the other way round, and there is nothing to show where the two have not the same
 * number of paddocks: the first paddock's water then stands for all. With `runoff` at its fixed cover the side's own cover no longer matters to runoff.
 */
export function onlyThis(first: Side, second: Side, channel: Channel): Side {
  const { management } = first;
  const other = second.management;
  switch (channel) {
    case 'stocking':
      return { ...first, stock: second.stock };
    case 'rest': {
      const { mostDaysIn, leastRestDays, next } = other;
      return { ...first, paddocks: withWaterOf(second, first), management: { ...management, mostDaysIn, leastRestDays, next } };
    }
    case 'stubble':
      return { ...first, management: { ...management, stubbleLbPerAc: other.stubbleLbPerAc, whenShort: other.whenShort } };
    case 'runoff':
      return { ...first, grass: { ...first.grass, ...fixedCover(second) } };
    case 'roots':
      return { ...first, paddocks: withWaterOf(first, second) };
    case 'hay-losses':
      return { ...first, management: { ...management, feedingLossShare: other.feedingLossShare } };
    case 'feeding-place': {
      const { feedPaddock, ...rest } = management;
      return { ...first, management: { ...rest, ...(other.feedPaddock === undefined ? {} : { feedPaddock: other.feedPaddock }) } };
    }
    case 'dates':
      return { ...first, management: { ...management, turnOut: other.turnOut, pull: other.pull } };
  }
}

const fixedCover = ({ grass }: Side): { readonly fixedCoverPercent?: number } =>
  grass.fixedCoverPercent === undefined ? {} : { fixedCoverPercent: grass.fixedCoverPercent };

/** The paddocks of one side with the root zone of the other's first paddock. */
function withWaterOf({ paddocks }: Side, { paddocks: others }: Side): Side['paddocks'] {
  const [water] = others;
  if (water === undefined) return paddocks;
  const { availableMm, topAvailableMm } = water;
  return paddocks.map((paddock) => ({ ...paddock, availableMm, topAvailableMm }));
}
