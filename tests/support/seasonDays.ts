import fc from 'fast-check';
import { seededRandom } from '../../calculators/math/weather/seededRandom.ts';
import { type PaddockDay, type PaddockState, seasonDay, stateAtStart } from '../../calculators/season/day.ts';
import { numberAt, SKY, TRACE } from '../../calculators/season/flat.ts';
import { runKernel } from '../../calculators/season/kernel.ts';
import { memoryOf } from '../../calculators/season/memory.ts';
import { planOf } from '../../calculators/season/plan.ts';
import { type Side, type Start, usualStart } from '../../calculators/season/side.ts';
import type { Sky } from '../../calculators/season/sky.ts';
import type { Weather } from '../../calculators/season/weather.ts';
import { between } from './numbers.ts';
import { type PlaceOptions, type Rates, sideOf, skyWith, wholeWeather } from './seasonPlace.ts';

/** The worst that a run of both ways through the season showed. */
export interface Worst {
  /** Water that came from nowhere or went nowhere in one paddock and day, millimeters. */
  readonly waterMm: number;
  readonly matterLbPerAc: number;
  /** Kernel against readable day, over the larger of 1 and the number. */
  readonly apart: number;
  /** Feed that the herd wanted and did not get, over what it wanted. */
  readonly hungry: number;
  /** A state that is not a number, below nothing, or past its limit, in words. */
  readonly outside: readonly string[];
}

/** The sixteen numbers of a paddock's day, in the order of `TRACE`. */
const traced = (state: PaddockState, day: PaddockDay): readonly number[] => [
  state.heldMm,
  state.surfaceMm,
  state.depletionMm,
  state.topMm,
  state.greenLbPerAc,
  state.deadLbPerAc,
  state.litterLbPerAc,
  day.runoffMm,
  day.drainageMm,
  day.evaporationMm,
  day.transpirationMm,
  day.driedMm,
  day.grownLbPerAc,
  day.eatenLbPerAc,
  day.soilLostTonPerAc,
  day.coverShare,
];
const tracedNames = Object.keys(TRACE);
/** Past this much on an acre, such as the waste of hay for a herd far too large, a number has no digits left for a billionth of a pound. */
const fineLbPerAc = 100_000;
const matter = ({ greenLbPerAc, deadLbPerAc, litterLbPerAc }: PaddockState): number => greenLbPerAc + deadLbPerAc + litterLbPerAc;

/** Runs the readable day and the kernel side by side, day by day; `within`: how far apart the two may be. */
export function bothWays(sky: Sky, side: Side, start: Start = usualStart, within = 1e-12): Worst {
  const plan = planOf(sky, side);
  const memory = memoryOf(plan, 1, { start, tracedDays: sky.days });
  runKernel(plan, sky, new Int32Array(sky.days), memory, 0, sky.days);
  const trace = memory.trace;
  const { paddocks: states, herd } = stateAtStart(side, start);
  let [waterMm, matterLbPerAc, apart, hungry] = [0, 0, 0, 0];
  const outside: string[] = [];
  const looksAt = (day: number, index: number, was: PaddockState, result: PaddockDay | undefined): void => {
    const now = states[index];
    const ground = side.paddocks[index];
    if (!now || !ground || !result) throw new RangeError(`no paddock ${index}`);
    const where = `day ${day}, paddock ${index}`;
    const came = numberAt(sky.daily, day * SKY.width + SKY.rain) + numberAt(sky.daily, day * SKY.width + SKY.melt);
    const went = result.runoffMm + result.drainageMm + result.evaporationMm + result.transpirationMm + result.driedMm;
    waterMm = Math.max(waterMm, Math.abs(came - went - (now.heldMm - was.heldMm) + (now.depletionMm - was.depletionMm)));
    const hay = result.cutLbPerAc * side.management.hayKeptShare;
    const gained = result.grownLbPerAc + result.hayWasteLbPerAc - result.rottedLbPerAc - result.eatenLbPerAc - hay;
    const unaccounted = Math.abs(gained - (matter(now) - matter(was)));
    matterLbPerAc = Math.max(matterLbPerAc, unaccounted / Math.max(1, matter(now) / fineLbPerAc));
    for (const [key, value] of Object.entries(now)) if (!(Number.isFinite(value) && value >= 0)) outside.push(`${where}: ${key} ${value}`);
    const isPast = now.depletionMm > ground.availableMm || now.topMm > ground.topAvailableMm || now.surfaceMm > ground.evaporableMm;
    if (isPast || now.topMm > now.depletionMm + 1e-9) outside.push(`${where}: more water missing than there can be`);
    for (const [field, value] of traced(now, result).entries()) {
      const flat = numberAt(trace, (day * plan.paddocks + index) * TRACE.width + field);
      const off = Math.abs(value - flat) / Math.max(1, Math.abs(value));
      if (!(off < within)) outside.push(`${where}: ${tracedNames[field]} is ${value}, flat ${flat}`);
      apart = Math.max(apart, off);
    }
  };
  for (let day = 0; day < sky.days && outside.length === 0; day += 1) {
    const before = structuredClone(states);
    const done = seasonDay(states, herd, plan, sky, day);
    if (numberAt(memory.kept, day) !== herd.keptShare) outside.push(`day ${day}: ${herd.keptShare} kept, flat ${numberAt(memory.kept, day)}`);
    for (const [index, was] of before.entries()) looksAt(day, index, was, done.paddocks[index]);
    hungry = Math.max(hungry, Math.abs(done.eatenLb + done.fedLb - done.demandLb) / Math.max(1, done.demandLb));
  }
  return { waterMm, matterLbPerAc, apart, hungry, outside };
}

/** Any weather: dry or wet, arctic or hot, beginning on any day. */
export const anyWeather = fc
  .record({
    year: fc.integer({ min: 1990, max: 2011 }),
    month: fc.integer({ min: 1, max: 12 }),
    day: fc.integer({ min: 1, max: 28 }),
    days: fc.integer({ min: 1, max: 200 }),
    warmC: between(-8, 28),
    swingC: between(0, 20),
    wetShare: between(0, 1),
    stormMm: between(1, 150),
    seed: fc.integer({ min: 1, max: 1e6 }),
  })
  .map(({ days, warmC, swingC, wetShare, stormMm, seed, ...first }): Weather => {
    const random = seededRandom(seed);
    const minTempC = Float64Array.from({ length: days }, (_, day) => warmC + swingC * Math.sin((2 * Math.PI * day) / 365) - 12 * random());
    return wholeWeather(first, {
      minTempC,
      maxTempC: minTempC.map((low) => low + 20 * random()),
      rainMm: Float64Array.from({ length: days }, () => (random() < wetShare ? stormMm * random() ** 4 : 0)),
    });
  });
const anySky = fc.tuple(anyWeather, between(-60, 60)).map(([weather, latitudeDeg]) => skyWith(weather, { latitudeDeg }));

const date = fc.constantFrom(101, 229, 415, 420, 715, 1001, 1231);
const anyOptions = fc
  .record({
    paddocks: fc.integer({ min: 1, max: 6 }),
    grazedAc: between(5, 500),
    meadowAc: fc.oneof(fc.constant(0), between(1, 80)),
    stockFactor: fc.oneof(fc.constant(0), between(0, 8), between(20, 60)),
    soil: fc.record({ rootsIn: fc.oneof(fc.constant(0), between(0.1, 60)), sandPercent: between(5, 60), clayPercent: between(5, 35) }),
    // 98 is pavement, the most that any table gives.
    poor: between(50, 98),
    better: fc.tuple(between(0, 15), between(0, 15)),
    grass: fc.record({
      leafStoreMm: between(0, 4),
      crownLbPerAc: between(0, 400),
      abstractionRatio: fc.constantFrom(0.2 as const, 0.05 as const),
      baseShare: between(0, 1),
      fullCoefficient: between(0.15, 1.3),
    }),
    fixedCover: fc.option(between(0, 100), { nil: undefined, freq: 4 }),
    management: fc.record({
      turnOut: fc.constantFrom(101, 420, 1001),
      pull: date,
      mostDaysIn: fc.integer({ min: 1, max: 40 }),
      leastRestDays: fc.integer({ min: 0, max: 60 }),
      next: fc.constantFrom('in-order' as const, 'most-grass' as const),
      whenShort: fc.constantFrom('pull' as const, 'stay' as const),
      pullBelowDays: fc.oneof(fc.constant(0), between(1, 60)),
      stubbleLbPerAc: between(0, 1500),
      cutOn: fc.constantFrom([], [610], [610, 820]),
      trampledPerEaten: between(0, 2),
      outOfReachLbPerAc: between(50, 400),
      greenPreference: between(0.5, 6),
      feedingLossShare: between(0, 0.6),
    }),
    sale: fc.option(fc.record({ on: fc.constantFrom(101, 715), belowDays: between(0, 90), share: between(0, 1) }), { nil: undefined, freq: 3 }),
    feedPaddock: fc.constantFrom(undefined, 0),
  })
  .map(
    ({ poor, better: [fairer, best], fixedCover, sale, feedPaddock, grass, management, ...rest }): PlaceOptions => ({
      ...rest,
      numbers: { poor, fair: poor - fairer, good: poor - fairer - best },
      grass: { ...grass, ...(fixedCover === undefined ? {} : { fixedCoverPercent: fixedCover }) },
      management: { ...management, ...(sale ? { sale } : {}), ...(feedPaddock === undefined ? {} : { feedPaddock }) },
    }),
  );
const anyRates = fc.record<Rates>({ grazed: between(0, 0.2), meadow: between(0, 0.2) });
export const anySide = fc.tuple(anyRates, anyOptions).map(([rates, options]) => sideOf(rates, options));
export const anyStart = fc.record<Start>({
  greenLbPerAc: between(0, 2000),
  deadLbPerAc: between(0, 2000),
  litterLbPerAc: between(0, 2000),
  depletedShare: between(0, 1),
});
export const anySeason = fc.record({ sky: anySky, side: anySide, start: anyStart });
