import { needThere } from '../math/need.ts';
import { numberAt, SUM, wholeAt, YEAR } from './flat.ts';
import { daysWithoutRain, mostDaysWithoutRain } from './hayYears.ts';
import { sumAt } from './memory.ts';
import type { Outcome } from './run.ts';
import type { MonthDay, Weather } from './weather.ts';

/** The first hay years still remember a made-up start. */
const rememberingYears = 3;
const lbPerTon = 2000;

/** One hay year of one management. Of the ground: means over the grazed acres, meadows left out. */
export interface HayYear {
  /** The calendar year in which it begins. */
  readonly year: number;
  readonly daysWithoutRain: number;
  /** Enough of its rain was read. */
  readonly isCounted: boolean;
  readonly remembersStart: boolean;
  /** Hay out of the barn, eaten and wasted; how much of it while stock could have been grazing; and own hay made. Tons. */
  readonly needTons: number;
  readonly needInSeasonTons: number;
  readonly cropTons: number;
  /** Days' worth of feed that stock grazed. */
  readonly grazedDays: number;
  readonly moves: number;
  /** The day on which stock came off for the season by the rule; nothing: they did not. */
  readonly pulledOn: MonthDay | undefined;
  /** The day on which a share of the stock was sold; nothing: none was. */
  readonly soldOn: MonthDay | undefined;
  /** Days on which the stubble was broken, over all paddocks. */
  readonly stubbleBrokenDays: number;
  readonly runoffMm: number;
  readonly drainageMm: number;
  readonly evaporationMm: number;
  readonly transpirationMm: number;
  readonly driedMm: number;
  readonly stressDays: number;
  readonly grownLbPerAc: number;
  readonly eatenLbPerAc: number;
  readonly trampledLbPerAc: number;
  readonly peakLbPerAc: number;
  readonly soilLostTonPerAc: number;
  readonly coverShare: number;
}

/** Mean of one sum over the grazed acres of a period; over all acres where every paddock is a meadow. */
export function overGrazed({ plan, memory }: Outcome, period: number, field: number): number {
  const { paddocks } = plan.side;
  const isAnyGrazed = paddocks.some(({ isMeadow }) => !isMeadow);
  let sum = 0;
  let area = 0;
  for (const [index, { isMeadow, areaAc }] of paddocks.entries()) {
    if (isMeadow && isAnyGrazed) continue;
    sum += areaAc * numberAt(memory.sums, sumAt(plan, period, index, field));
    area += areaAc;
  }
  return sum / area;
}

/** A sum of the whole side in a period. */
export const ofPeriod = ({ memory }: Outcome, period: number, field: number): number => numberAt(memory.years, period * YEAR.width + field);

/** All whole hay years of a run, in order. */
export function hayYearsOf(outcome: Outcome, weather: Weather): readonly HayYear[] {
  const { plan, periods, memory } = outcome;
  const dry = daysWithoutRain(weather, periods);
  return periods.whole.map((period, index): HayYear => {
    const side = (field: number): number => ofPeriod(outcome, period, field);
    const ground = (field: number): number => overGrazed(outcome, period, field);
    const withoutRain = needThere('hayYearsOf', `period ${period}`, dry[period]);
    const dateOf = (field: number): MonthDay | undefined => (side(field) === 0 ? undefined : side(field));
    let stubbleBrokenDays = 0;
    for (let paddock = 0; paddock < plan.paddocks; paddock += 1) {
      stubbleBrokenDays += numberAt(memory.sums, sumAt(plan, period, paddock, SUM.stubbleBroken));
    }
    return {
      year: wholeAt(weather.year, needThere('hayYearsOf', `first day of ${period}`, periods.firstDays[index])),
      daysWithoutRain: withoutRain,
      isCounted: withoutRain <= mostDaysWithoutRain,
      remembersStart: index < rememberingYears,
      needTons: side(YEAR.fromBarn) / lbPerTon,
      needInSeasonTons: side(YEAR.fromBarnInSeason) / lbPerTon,
      cropTons: side(YEAR.made) / lbPerTon,
      grazedDays: side(YEAR.grazedDays),
      moves: side(YEAR.moves),
      pulledOn: dateOf(YEAR.pulledOn),
      soldOn: dateOf(YEAR.soldOn),
      stubbleBrokenDays,
      runoffMm: ground(SUM.runoff),
      drainageMm: ground(SUM.drainage),
      evaporationMm: ground(SUM.evaporation),
      transpirationMm: ground(SUM.transpiration),
      driedMm: ground(SUM.dried),
      stressDays: ground(SUM.stressDays),
      grownLbPerAc: ground(SUM.grown),
      eatenLbPerAc: ground(SUM.eaten),
      trampledLbPerAc: ground(SUM.trampled),
      peakLbPerAc: ground(SUM.peak),
      soilLostTonPerAc: ground(SUM.soilLost),
      coverShare: ground(SUM.cover) / side(YEAR.days),
    };
  });
}
