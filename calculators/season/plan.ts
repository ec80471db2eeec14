import { pastureCoverFactor } from '../math/erosion/pastureCoverFactor.ts';
import { need } from '../math/need.ts';
import { antecedentCurveNumber } from '../math/runoff/antecedentCurveNumber.ts';
import { FLAG, GROUND, numberAt, ROW, rowAt, rowsOf, wholeAt } from './flat.ts';
import type { Paddock, Side, StockRow } from './side.ts';
import type { Sky } from './sky.ts';
import { isWithin, type MonthDay, wholeYear } from './weather.ts';

/** A management on its ground, made flat for a run over one record. */
export interface Plan {
  readonly side: Side;
  readonly paddocks: number;
  /** The row of each paddock as far as it says what the paddock is. */
  readonly grounds: readonly Float64Array[];
  /** What all stock would eat, day by day, pounds of dry matter. */
  readonly demandLb: Float64Array;
  /** Whether any stock ever eat; ground left alone, as where a growth rate is fitted, has no herd to be asked. */
  readonly hasStock: boolean;
  /** What a cut needs, leaves and loses: by itself, because managements are made in several ways, and the loop would be compiled anew for each. */
  readonly haying: Pick<Side['management'], 'cutWorthLbPerAc' | 'cutLeavesLbPerAc' | 'hayKeptShare'>;
  /** Bits of `FLAG`, day by day. */
  readonly flags: Int32Array;
  /** Curve number of dry and of wet ground by that of average ground. */
  readonly dry: Table;
  readonly wet: Table;
  /** Cover factor by percent of ground cover. */
  readonly factor: Table;
}

/** Values at whole numbers from 0 to 100, and how far it is from each to the next: the tables are straight between whole numbers. */
export interface Table {
  readonly at: Float64Array;
  readonly step: Float64Array;
}
function tableBy(of: (whole: number) => number): Table {
  const at = Float64Array.from({ length: 101 }, (_, whole) => of(whole));
  return { at, step: at.map((value, whole) => (at[whole + 1] ?? value) - value) };
}
type Tables = Pick<Plan, 'dry' | 'wet' | 'factor'>;
let tables: Tables | undefined;
/** The same for every plan. Made for the first: the page of the season imports this and makes none before its first change. */
const tablesOf = (): Tables => {
  tables ??= {
    dry: tableBy((number) => antecedentCurveNumber(number, 'dry')),
    wet: tableBy((number) => antecedentCurveNumber(number, 'wet')),
    factor: tableBy((coverPercent) => pastureCoverFactor({ coverPercent, coverKind: 'grass', canopyPercent: 0, canopyHeight: 'short-brush' })),
  };
  return tables;
};

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
  const [poorMiddle, fairMiddle, goodMiddle] = [poorBelowPercent / 2, (poorBelowPercent + goodAbovePercent) / 2, (goodAbovePercent + 100) / 2];
  return [
    [GROUND.area, paddock.areaAc],
    [GROUND.available, availableMm],
    [GROUND.topAvailable, topAvailableMm],
    [GROUND.belowAvailable, belowAvailableMm],
    [GROUND.evaporable, evaporableMm],
    [GROUND.perSlowing, 1 / (evaporableMm - readilyEvaporableMm)],
    [GROUND.perTop, 1 / topAvailableMm],
    [GROUND.perBelow, belowAvailableMm > 0 ? 1 / belowAvailableMm : 0],
    [GROUND.fair, paddock.fair],
    [GROUND.poorMiddle, poorMiddle],
    [GROUND.fairMiddle, fairMiddle],
    [GROUND.goodMiddle, goodMiddle],
    [GROUND.perPoorer, (paddock.fair - paddock.poor) / (fairMiddle - poorMiddle)],
    [GROUND.perBetter, (paddock.good - paddock.fair) / (goodMiddle - fairMiddle)],
    [GROUND.perCeiling, 1 / paddock.ceilingLbPerAc],
    [GROUND.rate, paddock.ratePerDay],
    [GROUND.bareLoss, paddock.bareLossTonPerAc],
    [GROUND.isMeadow, paddock.isMeadow ? 1 : 0],
    [GROUND.grazedFrom, paddock.grazedFrom ?? neverGrazed],
  ];
}
function groundsOf(paddocks: readonly Paddock[]): readonly Float64Array[] {
  const grounds = rowsOf(new Float64Array(paddocks.length * ROW.width), ROW.width);
  for (const [index, paddock] of paddocks.entries()) for (const [field, value] of groundOf(paddock)) rowAt(grounds, index)[field] = value;
  return grounds;
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
  // The same day of any year asks for the same. Plain loops: what makes an array out of another by a function takes twenty times as long.
  const demandOn = Float64Array.from({ length: wholeYear.to }, (_, date) => eatenLb(stock, date));
  const flagsOn = Int32Array.from({ length: wholeYear.to }, (_, date) => flagsOf(management, date));
  const demandLb = new Float64Array(sky.days);
  const flags = new Int32Array(sky.days);
  for (let day = 0; day < sky.days; day += 1) {
    const date = wholeAt(sky.monthDay, day);
    demandLb[day] = numberAt(demandOn, date);
    flags[day] = wholeAt(flagsOn, date);
  }
  const { cutWorthLbPerAc, cutLeavesLbPerAc, hayKeptShare } = management;
  const haying = { cutWorthLbPerAc, cutLeavesLbPerAc, hayKeptShare };
  const hasStock = demandOn.some((lb) => lb > 0);
  return { side, paddocks: paddocks.length, grounds: groundsOf(paddocks), demandLb, hasStock, haying, flags, ...tablesOf() };
}

/** The same plan with all paddocks at another growth rate: a rate is fitted by running a plan some twenty times, and its days stay as they are. */
export function planAtRate(plan: Plan, ratePerDay: number): Plan {
  const paddocks = plan.side.paddocks.map((paddock) => ({ ...paddock, ratePerDay }));
  return { ...plan, side: { ...plan.side, paddocks }, grounds: groundsOf(paddocks) };
}
