import { need } from '../math/need.ts';
import { antecedentCurveNumber } from '../math/runoff/antecedentCurveNumber.ts';
import { pastureCover } from '../tables/pastureCover.ts';
import { FLAG, GROUND } from './flat.ts';
import type { Paddock, Side, StockRow } from './side.ts';
import type { Sky } from './sky.ts';
import { isWithin, type MonthDay } from './weather.ts';

/** A management on its ground, made flat for a run over one record. */
export interface Plan {
  readonly side: Side;
  readonly paddocks: number;
  /** `GROUND.width` numbers a paddock. */
  readonly ground: Float64Array;
  /** What all stock would eat, day by day, pounds of dry matter. */
  readonly demandLb: Float64Array;
  /** Bits of `FLAG`, day by day. */
  readonly flags: Int32Array;
  /** Curve number of dry and of wet ground at each whole number for average ground. */
  readonly dry: Float64Array;
  readonly wet: Float64Array;
  /** Columns of the table of cover factors: ground cover, and the factor there without canopy. */
  readonly factorPercent: Float64Array;
  readonly factor: Float64Array;
}

/** The one line of the antecedent table, and one past its end so that the last number has a neighbor. */
const wholeNumbers = Array.from({ length: 102 }, (_, number) => Math.min(100, number));
const dry = Float64Array.from(wholeNumbers, (number) => antecedentCurveNumber(number, 'dry'));
const wet = Float64Array.from(wholeNumbers, (number) => antecedentCurveNumber(number, 'wet'));
const factorPercent = Float64Array.from(pastureCover.coverPercent);
const factor = Float64Array.from(pastureCover.factors['short-brush'].grass[0]);

function groundOf(paddock: Paddock): readonly (readonly [field: number, value: number])[] {
  const { availableMm, topAvailableMm, evaporableMm, readilyEvaporableMm, poorBelowPercent, goodAbovePercent } = paddock;
  need('planOf', 'areaAc', paddock.areaAc, { above: 0 });
  need('planOf', 'topAvailableMm', topAvailableMm, { above: 0 });
  need('planOf', 'availableMm', availableMm, { atLeast: topAvailableMm });
  need('planOf', 'readilyEvaporableMm', readilyEvaporableMm, { atLeast: 0, below: evaporableMm });
  need('planOf', 'ceilingLbPerAc', paddock.ceilingLbPerAc, { above: 0 });
  need('planOf', 'ratePerDay', paddock.ratePerDay, { atLeast: 0, atMost: 1 });
  need('planOf', 'bareLossTonPerAc', paddock.bareLossTonPerAc, { atLeast: 0 });
  const belowAvailableMm = availableMm - topAvailableMm;
  return [
    [GROUND.area, paddock.areaAc],
    [GROUND.available, availableMm],
    [GROUND.topAvailable, topAvailableMm],
    [GROUND.belowAvailable, belowAvailableMm],
    [GROUND.evaporable, evaporableMm],
    [GROUND.perSlowing, 1 / (evaporableMm - readilyEvaporableMm)],
    [GROUND.perTop, 1 / topAvailableMm],
    [GROUND.perBelow, belowAvailableMm > 0 ? 1 / belowAvailableMm : 0],
    [GROUND.poor, paddock.poor],
    [GROUND.fair, paddock.fair],
    [GROUND.good, paddock.good],
    [GROUND.poorMiddle, poorBelowPercent / 2],
    [GROUND.fairMiddle, (poorBelowPercent + goodAbovePercent) / 2],
    [GROUND.goodMiddle, (goodAbovePercent + 100) / 2],
    [GROUND.perCeiling, 1 / paddock.ceilingLbPerAc],
    [GROUND.rate, paddock.ratePerDay],
    [GROUND.bareLoss, paddock.bareLossTonPerAc],
    [GROUND.isMeadow, paddock.isMeadow ? 1 : 0],
    [GROUND.grazedFrom, paddock.grazedFrom ?? neverGrazed],
  ];
}
/** No day of the calendar. */
export const neverGrazed: MonthDay = 0;

const eatenLb = (stock: readonly StockRow[], day: MonthDay): number =>
  stock.reduce(
    (sum, { head, weightLb, intakePercent, from, to }) => sum + (isWithin(day, from, to) ? (head * weightLb * intakePercent) / 100 : 0),
    0,
  );

function flagsOf({ turnOut, pull, cutOn, sale }: Side['management'], day: MonthDay): number {
  const inSeason = isWithin(day, turnOut, pull) ? FLAG.inSeason : 0;
  const turnsOut = day === turnOut ? FLAG.turnOut : 0;
  const cuts = cutOn.includes(day) ? FLAG.cut : 0;
  return inSeason | turnsOut | cuts | (day === sale?.on ? FLAG.sell : 0);
}

export function planOf(sky: Sky, side: Side): Plan {
  const { paddocks, stock, management } = side;
  need('planOf', 'paddocks', paddocks.length, { atLeast: 1 });
  need('planOf', 'feedingLossShare', management.feedingLossShare, { atLeast: 0, below: 1 });
  need('planOf', 'cutWorthLbPerAc', management.cutWorthLbPerAc, { atLeast: management.cutLeavesLbPerAc });
  need('planOf', 'stubbleLbPerAc', management.stubbleLbPerAc, { atLeast: 0 });
  if (management.feedPaddock !== undefined)
    need('planOf', 'feedPaddock', management.feedPaddock, { atLeast: 0, below: paddocks.length, whole: true });
  // A hay year must begin in every year.
  if (management.turnOut === 229) throw new RangeError('planOf needs turnOut on a day that every year has, got 29 February');
  const ground = new Float64Array(paddocks.length * GROUND.width);
  for (const [index, paddock] of paddocks.entries()) for (const [field, value] of groundOf(paddock)) ground[index * GROUND.width + field] = value;
  // The same day of any year asks for the same.
  const demandOn = new Map<MonthDay, number>();
  const flagsOn = new Map<MonthDay, number>();
  const remembered = (known: Map<MonthDay, number>, day: MonthDay, of: (day: MonthDay) => number): number => {
    const value = known.get(day) ?? of(day);
    known.set(day, value);
    return value;
  };
  return {
    side,
    paddocks: paddocks.length,
    ground,
    demandLb: Float64Array.from(sky.monthDay, (day) => remembered(demandOn, day, (each) => eatenLb(stock, each))),
    flags: sky.monthDay.map((day) => remembered(flagsOn, day, (each) => flagsOf(management, each))),
    dry,
    wet,
    factorPercent,
    factor,
  };
}
