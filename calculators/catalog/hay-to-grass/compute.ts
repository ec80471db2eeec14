import { rangeEnd } from '../../asks/hay.ts';
import { baleVolumeFt3 } from '../../math/hay/baleVolumeFt3.ts';
import { baleWeightLb } from '../../math/hay/baleWeightLb.ts';
import { coldIncreasePercent } from '../../math/hay/coldIncreasePercent.ts';
import { eatenShare } from '../../math/hay/eatenShare.ts';
import { lossStillToComePercent } from '../../math/hay/lossStillToComePercent.ts';
import { meanMonthsStored } from '../../math/hay/meanMonthsStored.ts';
import { pricePerTonFromBale } from '../../math/hay/pricePerTonFromBale.ts';
import { rindShare } from '../../math/hay/rindShare.ts';
import { storageLossPercent } from '../../math/hay/storageLossPercent.ts';
import { wholeUnits } from '../../math/hay/wholeUnits.ts';
import { lowerCriticalTemperatureF, type WetCoatRule } from '../../tables/coldStress.ts';
import { feederWaste } from '../../tables/feederWaste.ts';
import { countsCold, herdNeed } from './herd.ts';
import type { Values } from './inputs.ts';

const poundsPerTon = 2000;
/** Mean length of a month, days: 365.25 / 12. */
const daysPerMonth = 30.4375;
const betterFeeder = 'cone';
const extraDays = 14;
const otherRule = { one: 'two', two: 'one' } as const satisfies Readonly<Record<WetCoatRule, WetCoatRule>>;

/** Nothing needed is plain 0, never the −0 that rounding up leaves. */
const whole = (amount: number, size: number): number => Math.max(0, wholeUnits(amount, size));

const periodOf = ({ fromDay, toDay }: Values): number => toDay - fromDay;

/** Is there hay on hand? No bales are none, whatever else is said of them. */
export const hasOwn = ({ onHand, ownCount }: Pick<Values, 'onHand' | 'ownCount'>): boolean => onHand !== 'none' && ownCount > 0;

/** Months that the hay on hand stands before it is weighed and until the middle of feeding, where its loss comes from the table. */
export function ownByTable(values: Values) {
  const { onHand, ownStorage, baledDay, weighedDay, fromDay, toDay } = values;
  if (!hasOwn(values) || ownStorage === 'known' || ownStorage === 'rind') return undefined;
  return {
    method: ownStorage,
    weighingMonths: onHand === 'now' ? (weighedDay - baledDay) / daysPerMonth : 0,
    feedingMonths: (fromDay - baledDay + (toDay - fromDay) / 2) / daysPerMonth,
  };
}

/** Hay on hand that the table of losses is not asked about. */
const notStanding = { ownWeighingMonths: 0, ownFeedingMonths: 0, ownLossAtWeighingPercent: 0, ownLossAtFeedingPercent: 0 } as const;

function storageOf(values: Values) {
  const end = rangeEnd[values.yearlyRain];
  const loss = (method: Parameters<typeof storageLossPercent>[0]['method'], months: number) => storageLossPercent({ method, months })[end];
  const { storage, ownStorage } = values;
  const boughtMonths =
    values.storedFrom === 'months'
      ? values.storedMonths
      : meanMonthsStored({ monthsBeforeFeeding: 0, feedingMonths: periodOf(values) / daysPerMonth });
  const own = ownByTable(values);
  const ownStands = own
    ? {
        ownWeighingMonths: own.weighingMonths,
        ownFeedingMonths: own.feedingMonths,
        ownLossAtWeighingPercent: loss(own.method, own.weighingMonths),
        ownLossAtFeedingPercent: loss(own.method, own.feedingMonths),
      }
    : notStanding;
  const ownLossPercent =
    ownStorage === 'known'
      ? values.knownOwnPercent
      : ownStorage === 'rind'
        ? 100 * rindShare({ diameterIn: 12 * values.ownDiameterFt, rindIn: values.rindIn })
        : lossStillToComePercent({
            lossAtWeighingPercent: ownStands.ownLossAtWeighingPercent,
            lossAtFeedingPercent: ownStands.ownLossAtFeedingPercent,
          });
  return {
    boughtMonths,
    lossAt9Percent: storage === 'known' ? 0 : loss(storage, 9),
    lossAt15Percent: storage === 'known' ? 0 : loss(storage, 15),
    storageLossPercent: storage === 'known' ? values.knownStoragePercent : loss(storage, boughtMonths),
    roofLossPercent: loss('roof', boughtMonths),
    ...ownStands,
    ownLossPercent,
  };
}

const wasteOf = (feeder: string): number => {
  const found = feederWaste.find((each) => each.feeder === feeder);
  if (!found) throw new RangeError(`wasteOf needs a feeder of the table, got ${feeder}`);
  return found.likelyPercent;
};

/** Weight and price of a bale, as sold. */
function baleOf({ baleFrom, baleLb, widthFt, diameterFt, heightFt, lengthFt, densityLbPerFt3, ...prices }: Values) {
  const volumeFt3 =
    baleFrom === 'round'
      ? baleVolumeFt3({ shape: 'round', diameterFt, widthFt })
      : baleVolumeFt3({ shape: 'rectangular', lengthFt, widthFt, heightFt });
  const boughtBaleLb = baleFrom === 'weighed' ? baleLb : baleWeightLb({ volumeFt3, densityLbPerFt3 });
  const fromTon = (usdPerTon: number) => (usdPerTon * boughtBaleLb) / poundsPerTon;
  const perBaleUsd = prices.pricedBy === 'bale' ? prices.balePriceUsd : fromTon(prices.priceUsdPerTon);
  const isRange = prices.pricedBy === 'range';
  return {
    boughtBaleLb,
    perBaleUsd,
    lowPerBaleUsd: isRange ? fromTon(prices.lowPriceUsdPerTon) : perBaleUsd,
    highPerBaleUsd: isRange ? fromTon(prices.highPriceUsdPerTon) : perBaleUsd,
  };
}

export function compute(values: Values) {
  const { lossConvention: convention, moisturePercent, freightUsdPerLoad, loadCount } = values;
  const periodDays = periodOf(values);
  const isCold = countsCold(values);
  const criticalF = isCold ? lowerCriticalTemperatureF[values.coat] : 0;
  const chillBy = (wetCoatRule: WetCoatRule) =>
    isCold ? coldIncreasePercent({ temperatureF: values.feelsLikeF, coat: values.coat, wetCoatRule }) : 0;
  const spread = (percent: number) => (percent * values.coldDays) / periodDays;
  const chillPercent = chillBy(values.wetCoatRule);
  const coldPercent = spread(chillPercent);
  const otherChillPercent = chillBy(otherRule[values.wetCoatRule]);
  const eats = herdNeed(values, coldPercent);
  const { kinds, dryMatterLb, herdEndLbPerDay } = eats;

  const standingLb = values.beside === 'standing' || values.beside === 'both' ? values.standingLb : 0;
  const dailyLb = values.beside === 'daily' || values.beside === 'both' ? values.otherFeedLbPerDay : 0;
  const besideLb = standingLb + dailyLb * periodDays;

  const stored = storageOf(values);
  const feedingLossPercent = values.feeder === 'known' ? values.knownFeedingPercent : wasteOf(values.feeder);
  const share = ({ water = 0, storage = 0, feeding = 0 }: { readonly water?: number; readonly storage?: number; readonly feeding?: number }) =>
    eatenShare({ moisturePercent: water, storageLossPercent: storage, feedingLossPercent: feeding, convention });
  const storageKeptRatio = share({ storage: stored.storageLossPercent });
  const feedingKeptRatio = share({ feeding: feedingLossPercent });
  const eatenRatio = share({ water: moisturePercent, storage: stored.storageLossPercent, feeding: feedingLossPercent });
  const ownStorageKeptRatio = share({ storage: stored.ownLossPercent });
  const ownEatenRatio = share({ water: moisturePercent, storage: stored.ownLossPercent, feeding: feedingLossPercent });
  const ownTon = hasOwn(values) ? (values.ownCount * values.ownBaleLb) / poundsPerTon : 0;

  /** Hay on hand first, bought hay for the rest; `better` is how much further a better feeder makes each ton go. */
  const supply = (needLb: number, better = 1) => {
    const usedTon = Math.min(ownTon, needLb / (poundsPerTon * ownEatenRatio * better));
    const fromOwnLb = poundsPerTon * usedTon * ownEatenRatio * better;
    const boughtTon = Math.max(needLb - fromOwnLb, 0) / (poundsPerTon * eatenRatio * better);
    return { usedTon, fromOwnLb, boughtTon };
  };
  const { boughtBaleLb, perBaleUsd, lowPerBaleUsd, highPerBaleUsd } = baleOf(values);
  const order = (boughtTon: number, bale: number) => {
    const balesCount = whole(poundsPerTon * boughtTon, boughtBaleLb);
    const loadsCount = whole(balesCount, loadCount);
    return { balesCount, loadsCount, costUsd: balesCount * bale + loadsCount * freightUsdPerLoad };
  };

  const hayEatenLb = Math.max(dryMatterLb - besideLb, 0);
  const { usedTon: ownUsedTon, fromOwnLb: ownEatenLb, boughtTon: buyTon } = supply(hayEatenLb);
  const haveTon = ownUsedTon + buyTon;
  const otherDryMatterLb = herdNeed(values, spread(otherChillPercent)).dryMatterLb;
  const otherSupply = supply(Math.max(otherDryMatterLb - besideLb, 0));
  const { balesCount, loadsCount, costUsd } = order(buyTon, perBaleUsd);
  const fullLoadBalesCount = loadsCount * loadCount;
  const fullLoadsUsd = fullLoadBalesCount * perBaleUsd + loadsCount * freightUsdPerLoad;
  const deliveredUsdPerTon = pricePerTonFromBale({ pricePerBale: perBaleUsd + freightUsdPerLoad / loadCount, baleLb: boughtBaleLb });

  const edge = (end: 'low' | 'high', edgeDryMatterLb: number, edgePerBaleUsd: number) => {
    const needLb = Math.max(edgeDryMatterLb - besideLb, 0);
    const { usedTon, boughtTon } = supply(needLb);
    const edgeOrder = order(boughtTon, edgePerBaleUsd);
    return {
      end,
      edgeDryMatterLb,
      needLb,
      edgeOwnTon: usedTon,
      edgeBuyTon: boughtTon,
      edgeHaveTon: usedTon + boughtTon,
      edgeBalesCount: edgeOrder.balesCount,
      edgeLoadsCount: edgeOrder.loadsCount,
      edgePerBaleUsd,
      edgeCostUsd: edgeOrder.costUsd,
    };
  };
  const low = edge('low', eats.lowDryMatterLb, lowPerBaleUsd);
  const high = edge('high', eats.highDryMatterLb, highPerBaleUsd);

  const eatenTon = hayEatenLb / poundsPerTon;
  const waterTon = (haveTon * moisturePercent) / 100;
  const feedingLostTon = Math.max(eatenTon / feedingKeptRatio - eatenTon, 0);
  const coneLossPercent = wasteOf(betterFeeder);
  const coneKeptRatio = share({ feeding: coneLossPercent });
  const coneTimesRatio = Math.max(coneKeptRatio / feedingKeptRatio, 1);
  const coneBuyTon = supply(hayEatenLb, coneTimesRatio).boughtTon;
  const feederSavesTon = Math.max(buyTon - coneBuyTon, 0);
  const roofKeptRatio = share({ storage: stored.roofLossPercent });
  const roofSavesTon = Math.max(buyTon * (1 - storageKeptRatio / roofKeptRatio), 0);
  const costOfEach = (eachLbPerDay: number) => (costUsd * eachLbPerDay) / dryMatterLb;
  const [first] = kinds;
  if (first === undefined) throw new RangeError('compute needs a kind of stock');
  const firstLbPerDay = first.eachLbPerDay;

  return {
    periodDays,
    criticalF,
    chillPercent,
    coldPercent,
    otherChillPercent,
    otherHaveTon: otherSupply.usedTon + otherSupply.boughtTon,
    ...eats,
    dryMatterTon: dryMatterLb / poundsPerTon,
    besideLb,
    hayEatenLb,
    ...stored,
    feedingLossPercent,
    storageKeptRatio,
    feedingKeptRatio,
    eatenRatio,
    ownStorageKeptRatio,
    ownEatenRatio,
    ownTon,
    ownAtFeedingTon: ownTon * ownStorageKeptRatio,
    ownUsedTon,
    ownEatenLb,
    ownLeftTon: Math.max(ownTon - ownUsedTon, 0),
    buyTon,
    haveTon,
    waterTon,
    eatenTon,
    feedingLostTon,
    storageLostTon: Math.max(haveTon - waterTon - eatenTon - feedingLostTon, 0),
    putOutLbPerDay: hayEatenLb / feedingKeptRatio / (1 - moisturePercent / 100) / periodDays,
    boughtBaleLb,
    balesCount,
    loadsCount,
    perBaleUsd,
    costUsd,
    fullLoadBalesCount,
    fullLoadsUsd,
    deliveredUsdPerTon,
    eatenUsdPerTon: deliveredUsdPerTon / eatenRatio,
    herdUsdPerDay: costUsd / periodDays,
    firstLbPerDay,
    headUsdPerDay: costOfEach(firstLbPerDay),
    kindCosts: kinds.map(({ stock, eachLbPerDay }) => ({ stock, eachLbPerDay, eachUsdPerDay: costOfEach(eachLbPerDay) })),
    edges: [low, high],
    lowHaveTon: low.edgeHaveTon,
    highHaveTon: high.edgeHaveTon,
    lowBuyTon: low.edgeBuyTon,
    highBuyTon: high.edgeBuyTon,
    lowCostUsd: low.edgeCostUsd,
    highCostUsd: high.edgeCostUsd,
    twoWeeksTon: (extraDays * Math.max(herdEndLbPerDay - dailyLb, 0)) / (poundsPerTon * eatenRatio),
    coneLossPercent,
    coneKeptRatio,
    coneTimesRatio,
    coneBuyTon,
    feederSavesTon,
    feederSavesUsd: feederSavesTon * deliveredUsdPerTon,
    roofKeptRatio,
    roofSavesTon,
    roofSavesUsd: roofSavesTon * deliveredUsdPerTon,
  };
}
export type Results = ReturnType<typeof compute>;
