import { stockLinesOf } from '../../asks/stock.ts';
import { needThere } from '../../math/need.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { median } from '../../season/fit.ts';
import { yearsFrom } from '../../season/hayYears.ts';
import { barnAnswer, type Count, hayLists, hayToHave, inBlocks } from '../../season/odds.ts';
import { grazingDefaults } from '../../season/parameters.ts';
import { type Fits, sideOn } from '../../season/pasture.ts';
import { runBySteps } from '../../season/run.ts';
import { dayIn } from '../../season/shownDay.ts';
import type { Management, StockRow } from '../../season/side.ts';
import { type HayYear, hayYearsOf } from '../../season/years.ts';
import { dayNumber, hundred, mmPerIn, weeksOf, workedDay } from './drawnYear.ts';
import type { Asked } from './inputs.ts';
import { fitsOf, monthDayOf, placeOf, recordedOf } from './place.ts';

export { fitsOf, hasYears } from './place.ts';

const blocks = [2, 3, 4] as const;
const blockDraws = 200;

/** Nothing where no head would go: the herd is then the same to the last bit. */
function saleOf({ sells, soldPercent, saleDay, saleBelowDays }: Asked): Pick<Management, 'sale'> {
  if (sells === 'never' || soldPercent === 0) return {};
  const belowDays = sells === 'yearly' ? Number.POSITIVE_INFINITY : saleBelowDays;
  return { sale: { on: monthDayOf(saleDay), belowDays, share: soldPercent / hundred } };
}

const managementOf = (asked: Asked): Management => ({
  ...grazingDefaults,
  ...placeOf(asked).haying,
  turnOut: monthDayOf(asked.turnOutDay),
  pull: monthDayOf(asked.pullDay),
  mostDaysIn: asked.stayDays,
  leastRestDays: asked.restDays,
  next: asked.next,
  stubbleLbPerAc: asked.stubbleIn * asked.densityLbPerAcIn,
  whenShort: asked.whenShort,
  pullBelowDays: asked.pullBelowDays,
  feedingLossShare: asked.feedingLossPercent / hundred,
  trampledPerEaten: asked.trampledRatio,
  fullIntakeFromLbPerAc: asked.fullIntakeLbPerAc,
  ...saleOf(asked),
});

/** Each line twice: on grass from turn-out on, and in winter, when it eats another share of that. */
const stockOf = ({ stock, keptPercent, winterPercent }: Asked, { turnOut, pull }: Management): readonly StockRow[] =>
  stock.flatMap(({ countHead, weightLb, intakePercent }): readonly StockRow[] => {
    const head = (countHead * keptPercent) / hundred;
    const winter = { head, weightLb, intakePercent: (intakePercent * winterPercent) / hundred };
    // With one date for both there is no season, and it is winter all year.
    if (turnOut === pull) return [{ ...winter, from: 101, to: 1232 }];
    return [
      { head, weightLb, intakePercent, from: turnOut, to: pull },
      { ...winter, from: pull, to: turnOut },
    ];
  });

/** Yearly sums that say how a management treats its ground: means of the years that count. */
function meansOf(years: readonly HayYear[]) {
  const mean = (of: (year: HayYear) => number): number => sumOf(years, of) / years.length;
  return {
    runoffIn: mean(({ runoffMm }) => runoffMm) / mmPerIn,
    soilLostTonPerAc: mean(({ soilLostTonPerAc }) => soilLostTonPerAc),
    grownLbPerAc: mean(({ grownLbPerAc }) => grownLbPerAc),
    eatenLbPerAc: mean(({ eatenLbPerAc }) => eatenLbPerAc),
    grazedDays: mean(({ grazedDays }) => grazedDays),
    brokenDays: mean(({ stubbleBrokenDays }) => stubbleBrokenDays),
    stressDays: mean(({ stressDays }) => stressDays),
    coverPercent: hundred * mean(({ coverShare }) => coverShare),
    movesCount: mean(({ moves }) => moves),
  };
}

const lineOf = (rule: 'filled' | 'carried', { short, of, lowerShare, upperShare }: Count) => ({
  rule,
  barnShortCount: short,
  barnYearsCount: of,
  barnLowPercent: hundred * lowerShare,
  barnHighPercent: hundred * upperShare,
});

/** Roots of this side; the shallowest that the form takes, where the difference would leave less. */
const rootsOf = ({ rootsIn, rootsMoreIn }: Asked): number => Math.max(3, rootsIn + rootsMoreIn);
/** What the years of weather are made of. */
function weatherOf(asked: Asked, years: readonly HayYear[]) {
  const recorded = recordedOf(asked);
  const leftOutCount = years.filter(({ isCounted }) => !isCounted).length;
  if (!recorded) return { weatherIs: 'made-up' as const, leftOutCount, unreadDays: 0, madeUpTempPercent: 0, bridgedTempPercent: 0 };
  return {
    weatherIs: recorded.laidOutDays * 2 >= recorded.days ? ('months' as const) : ('days' as const),
    leftOutCount,
    unreadDays: recorded.noRainDays,
    madeUpTempPercent: (hundred * recorded.madeUpTemperatureDays) / recorded.days,
    bridgedTempPercent: (hundred * recorded.bridgedTemperatureDays) / recorded.days,
  };
}

/** One management through all years, a year at a time: yields the share that is done. */
export function* computeBySteps(asked: Asked) {
  const place = placeOf(asked);
  const fits = fitsOf(asked);
  if (fits.kind !== 'fits') throw new RangeError('a yield that does not fit is refused before');
  const management = managementOf(asked);
  const { outcome, drawn } = yield* runFor(asked, fits, management);
  const { sky } = fits;
  const all = hayYearsOf(outcome, place.weather);
  const counted = all.filter(({ isCounted }) => isCounted);
  // Hay is told with the water that it holds in the barn.
  const asFedShare = 1 - asked.moisturePercent / hundred;
  const lists = hayLists(all);
  const { barnTons, count } = hayToHave(lists, asked.shortOfTenCount);
  const barn = {
    barnTons: asked.barnTon * asFedShare,
    mostBoughtTons: asked.mostBoughtTon * asFedShare,
    carriedShare: asked.carriedPercent / hundred,
  };
  const own = barnAnswer(lists, barn);
  const medianNeedDryTon = median(lists.needTons);
  const mostNeedDryTon = Math.max(...lists.needTons);
  const day = dayIn(outcome, sky, drawn, monthDayOf(asked.shownDay));
  const worked = workedDay(outcome, sky, day, asked, management);
  const fedLb = Math.max(0, worked.dayWantedLb - worked.dayEatenLb);
  return {
    ...weatherOf(asked, all),
    hayDryTon: barnTons,
    hayTon: barnTons / asFedShare,
    shortCount: count.short,
    yearsCount: count.of,
    lowPercent: hundred * count.lowerShare,
    highPercent: hundred * count.upperShare,
    bound: own.canBoundOneInTen ? ('bounds' as const) : ('cannot' as const),
    medianNeedTon: medianNeedDryTon / asFedShare,
    mostNeedTon: mostNeedDryTon / asFedShare,
    seasonNeedTon: median(counted.map(({ needInSeasonTons }) => needInSeasonTons)) / asFedShare,
    cropTon: median(lists.cropTons) / asFedShare,
    barns: [lineOf('filled', own.filled), lineOf('carried', own.carried)],
    orders: blocks.map((blockYears) => {
      const { meanShort, leastShort, mostShort, of } = inBlocks(lists, barn, { blockYears, draws: blockDraws, seed: asked.throwCount });
      return { blockYearsCount: blockYears, orderMeanCount: meanShort, orderLeastCount: leastShort, orderMostCount: mostShort, orderOfCount: of };
    }),
    filledShortCount: own.filled.short,
    carriedShortCount: own.carried.short,
    carriedLowPercent: hundred * own.carried.lowerShare,
    carriedHighPercent: hundred * own.carried.upperShare,
    ...meansOf(counted),
    soldCount: counted.filter(({ soldOn }) => soldOn !== undefined).length,
    stockLines: stockLinesOf(asked.stock),
    herdLbPerDay: sumOf(stockLinesOf(asked.stock), ({ lineLbPerDay }) => lineLbPerDay),
    stubbleLbPerAc: management.stubbleLbPerAc,
    years: all.map((year, index) => ({
      startDay: dayNumber(sky, needThere('years', 'first day', outcome.periods.firstDays[index])),
      yearCount: index + 1,
      needTon: year.needTons / asFedShare,
      haveTon: asked.barnTon,
      yearCropTon: year.cropTons / asFedShare,
      enough: !year.isCounted ? ('not-counted' as const) : year.needTons > barn.barnTons ? ('short' as const) : ('enough' as const),
      yearGrownLbPerAc: year.grownLbPerAc,
      yearGrazedDays: year.grazedDays,
      yearBrokenDays: year.stubbleBrokenDays,
      yearRunoffIn: year.runoffMm / mmPerIn,
      yearSoilTonPerAc: year.soilLostTonPerAc,
      yearUnreadDays: year.daysWithoutRain,
      start: year.remembersStart ? ('made-up' as const) : ('worn-off' as const),
    })),
    weeks: weeksOf(outcome, { sky, weather: place.weather }, drawn, rootsOf(asked), worked.rootsHoldIn),
    ...worked,
    fedLb,
    outOfBarnLb: fedLb / (1 - management.feedingLossShare),
  };
}

/** The run, with the days of the year that is drawn kept, and the evening before it. */
function* runFor(asked: Asked, fits: Fits, management: Management) {
  const { sky } = fits;
  const side = sideOn(placeOf(asked), fits, {
    paddocks: asked.paddocksCount,
    rootsIn: rootsOf(asked),
    stock: stockOf(asked, management),
    management,
  });
  const { firstDays } = yearsFrom(sky, management.turnOut);
  const drawn = Math.min(asked.shownYearCount, firstDays.length) - 1;
  const first = needThere('runFor', 'hay year', firstDays[drawn]);
  const outcome = yield* runBySteps(sky, side, { tracedFrom: Math.max(0, first - 1), tracedDays: 368 });
  return { outcome, drawn };
}

/** The same at one go. */
export function compute(asked: Asked) {
  const steps = computeBySteps(asked);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
