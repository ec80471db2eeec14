import { bandOf, type Reading, readingsOf } from '../../math/hazards/bandOf.ts';
import { dilutionSharePercent } from '../../math/hazards/dilutionSharePercent.ts';
import { forageNitrateReadings, leastSharePercent } from '../../math/hazards/forageNitrateReadings.ts';
import { nitrateDose } from '../../math/hazards/nitrateDose.ts';
import { nitrateAsPpm, nitrateNitrogenPpm } from '../../math/hazards/nitrateNitrogenPpm.ts';
import { strictestPrussicRule } from '../../math/hazards/strictestPrussicRule.ts';
import { saltsFromConductivity, sulfateFromSulfur } from '../../math/hazards/sulfateFromSulfur.ts';
import { intakeByWeightGal } from '../../math/stockWater/planningIntakeGal.ts';
import type { Values } from './inputs.ts';
import { feedReadingOf, keyOf, type Line, listsOf, type Most, mostOf, type ReadingWord, readingOf, type Table, type Thing } from './quantities.ts';

type Animals = 'calves' | 'adult-cattle';

function line(thing: Thing, table: Table, valuePpm: number, { list, severity }: Pick<Reading, 'list' | 'severity'>, most: Most): Line {
  const found = listsOf(table).find((each) => each.list === list);
  if (found === undefined) throw new RangeError(`lists needs a list of its tables, got ${list}`);
  const { from } = bandOf(found.bands, valuePpm);
  return {
    thing,
    list: `${list}-${found.seen}`,
    says: keyOf(table, list, from),
    most,
    valuePpm,
    edgePpm: from,
    severity,
    isRead: found.seen !== 'memory',
  };
}

/** What every list says of nitrate in feed, the strictest first. */
export const feedLines = (thing: 'feed' | 'feed-and-water', nitrogenPpm: number, isPregnant: boolean): Line[] =>
  forageNitrateReadings(nitrogenPpm, isPregnant).map((reading) =>
    line(thing, 'forage-nitrate', nitrogenPpm, reading, thing === 'feed' ? mostOf(reading.mostPercent) : 'not-asked'),
  );

const tableOf = {
  'prussic-acid': 'forage-prussic',
  'prussic-as-is': 'forage-prussic-as-is',
  'water-nitrate': 'water-nitrate',
  'water-sulfate': 'water-sulfate',
  'water-salts': 'water-salts',
} as const;
/** The same for anything else. */
export const otherLines = (thing: keyof typeof tableOf, value: number, animals: Animals): Line[] =>
  readingsOf(listsOf(tableOf[thing]), value, animals).map((reading) => line(thing, tableOf[thing], value, reading, 'not-asked'));

/** The lowest edge at which any list of nitrate in feed sets a limit or a caution, ppm of nitrate nitrogen. */
export const lowestLimitPpm: number = Math.min(
  ...listsOf('forage-nitrate').flatMap(({ bands }) => bands.filter(({ severity }) => severity > 0).map(({ from }) => from)),
);

/**
 * The most that a row can say, by our order of the lists' words. Of the lists that refuse a feed one says "unless properly mixed", the other no more than
 * that it is high: as long as the strictest still allows a share, and nothing but the feed is refused, that is what they say.
 */
function severest(
  lines: readonly Line[],
  hasShare: boolean,
): 'under-every-limit' | 'limited' | 'harm-named' | 'only-mixed' | 'do-not-feed' | 'nothing-tested' {
  // What the crop alone asks for holds all the same.
  if (lines.length === 0) return 'nothing-tested';
  const most = Math.max(...lines.map(({ severity }) => severity));
  if (most < 3) return most === 0 ? 'under-every-limit' : most === 1 ? 'limited' : 'harm-named';
  const isFeedAlone = lines.every(({ severity, thing }) => severity < most || thing === 'feed' || thing === 'feed-and-water');
  return hasShare && isFeedAlone ? 'only-mixed' : 'do-not-feed';
}

/** Water's nitrate, sulfate and salts in the units of the lists. What the slip leaves open is read the strictest way. */
function waterOf(values: Values) {
  const { waterNitrate, slipNitrateMgPerL, waterSulfate, slipSulfateMgPerL, waterSalts, slipSaltsMgPerL, conductivityCount } = values;
  const asNitrogen = (form: 'no3-n' | 'no3') =>
    nitrateNitrogenPpm({ amount: slipNitrateMgPerL, form, unit: 'ppm', basis: 'dry', dryMatterPercent: 100 });
  return {
    waterNitrogenMgPerL: waterNitrate === 'not-tested' ? 0 : asNitrogen(waterNitrate === 'no3' ? 'no3' : 'no3-n'),
    sulfateMgPerL: waterSulfate === 'not-tested' ? 0 : waterSulfate === 'so4' ? slipSulfateMgPerL : sulfateFromSulfur(slipSulfateMgPerL),
    saltsMgPerL: waterSalts === 'not-tested' ? 0 : waterSalts === 'conductivity' ? saltsFromConductivity(conductivityCount) : slipSaltsMgPerL,
  };
}

function feedOf({ forageNitrate, slipUnit, nitratePpmCount, nitratePercent, basis, dryMatterPercent, prussicAcid, prussicPpmCount }: Values) {
  const form = forageNitrate === 'not-said' || forageNitrate === 'not-tested' ? 'no3-n' : forageNitrate;
  const amount = slipUnit === 'ppm' ? nitratePpmCount : nitratePercent;
  const slip = (of: 'dry' | 'as-fed') => nitrateNitrogenPpm({ amount, form, unit: slipUnit, basis: of, dryMatterPercent });
  const isDry = basis === 'dry';
  const isTested = forageNitrate !== 'not-tested';
  const nitrogenPpm = isTested ? slip(isDry ? 'dry' : 'as-fed') : 0;
  return {
    slipPpm: !isTested ? 0 : slipUnit === 'ppm' ? nitratePpmCount : nitratePercent * 10_000,
    slipNitrogenPpm: isTested ? slip('dry') : 0,
    nitrogenPpm,
    ionPpm: nitrateAsPpm(nitrogenPpm, 'no3'),
    potassiumNitratePpm: nitrateAsPpm(nitrogenPpm, 'kno3'),
    // Nothing but the water in the sample stands between the two, the same as for nitrogen.
    prussicPpm: prussicAcid === 'not-tested' ? 0 : isDry ? prussicPpmCount : prussicPpmCount / (dryMatterPercent / 100),
  };
}

/** Feed and water of one day together, and how much of the high feed a level leaves room for. */
function dayOf(values: Values, nitrogenPpm: number, waterNitrogenMgPerL: number) {
  const {
    forageNitrate,
    weightLb,
    eatenLbPerDay,
    otherFeed,
    sharePercent,
    otherPpmCount,
    waterNitrate,
    waterFrom,
    waterGalPerDay,
    limitFrom,
    ownLimitPpmCount,
  } = values;
  const drunkGal =
    waterNitrate === 'not-tested' ? 0 : waterFrom === 'known' ? waterGalPerDay : intakeByWeightGal(weightLb, waterFrom === 'summer' ? 1.5 : 0.75);
  const isMixed = forageNitrate !== 'not-tested' && otherFeed === 'tested';
  const rationPpm = isMixed ? (sharePercent / 100) * nitrogenPpm + (1 - sharePercent / 100) * otherPpmCount : nitrogenPpm;
  const dose = (feedNitrogenPpm: number) =>
    nitrateDose({ feedLb: eatenLbPerDay, feedNitrogenPpm, waterGal: drunkGal, waterNitrogenMgPerL, weightLb });
  const waterAsFeedPpm = dose(0).asFeedPpm;
  const limitPpm = limitFrom === 'own' ? ownLimitPpmCount : lowestLimitPpm;
  const roomPpm = limitPpm - waterAsFeedPpm;
  const mixSharePercent =
    roomPpm <= otherPpmCount
      ? 0
      : nitrogenPpm <= roomPpm
        ? 100
        : dilutionSharePercent({ limitPpm: roomPpm, highPpm: nitrogenPpm, lowPpm: otherPpmCount });
  return { drunkGal, rationPpm, ...dose(rationPpm), waterAsFeedPpm, limitPpm, roomPpm, mixSharePercent };
}

const rulesOf = (crop: Values['crop']) => {
  // No waits of indiangrass's own were found: those of sorghum stand in.
  const of = (event: Parameters<typeof strictestPrussicRule>[1]) => (crop === 'indiangrass' && event !== 'height' ? 'sorghum' : crop);
  const least = (event: Parameters<typeof strictestPrussicRule>[1]) => {
    const like = of(event);
    return like === 'other' ? 0 : strictestPrussicRule(like, event).least;
  };
  return {
    leastHeightIn: least('height'),
    killingFrostDays: least('killing-frost'),
    lightFrostDays: least('light-frost'),
    afterDroughtDays: least('rain-after-drought'),
    ensiledDays: least('ensiled'),
  };
};

export function compute(values: Values) {
  const { forageNitrate, otherFeed, prussicAcid, waterNitrate, waterSulfate, waterSalts, pregnant, animals, basis } = values;
  const feed = feedOf(values);
  const water = waterOf(values);
  const day = dayOf(values, feed.nitrogenPpm, water.waterNitrogenMgPerL);
  const isPregnant = pregnant !== 'no';
  // The lists name no sheep or goats: the stricter of the two kinds of cattle.
  const drinkers = animals === 'adult-cattle' ? 'adult-cattle' : 'calves';
  const hasFeed = forageNitrate !== 'not-tested';
  const readings = [
    ...(hasFeed ? feedLines('feed', feed.nitrogenPpm, isPregnant) : []),
    ...(hasFeed && waterNitrate !== 'not-tested' ? feedLines('feed-and-water', day.asFeedPpm, isPregnant) : []),
    ...(prussicAcid === 'tested' ? otherLines('prussic-acid', feed.prussicPpm, drinkers) : []),
    // Unless the slip says that its figure is dry, it may be one of the feed as it came, which has a line of its own.
    ...(prussicAcid === 'tested' && basis !== 'dry' ? otherLines('prussic-as-is', values.prussicPpmCount, drinkers) : []),
    ...(waterNitrate !== 'not-tested' ? otherLines('water-nitrate', water.waterNitrogenMgPerL, drinkers) : []),
    ...(waterSulfate !== 'not-tested' ? otherLines('water-sulfate', water.sulfateMgPerL, drinkers) : []),
    ...(waterSalts !== 'not-tested' ? otherLines('water-salts', water.saltsMgPerL, drinkers) : []),
  ];
  const ofFeed = readings.filter(({ thing }) => thing === 'feed');
  const feedReading: ReadingWord = hasFeed
    ? feedReadingOf(feed.nitrogenPpm, isPregnant, Math.max(...ofFeed.map(({ severity }) => severity)))
    : 'not-tested';
  const listSharePercent = leastSharePercent(feed.nitrogenPpm, isPregnant);
  const leadSharePercent = Math.min(day.mixSharePercent, listSharePercent);
  const isRefused = ofFeed.some(({ severity }) => severity === 3);
  const isMixed = hasFeed && otherFeed === 'tested';
  const share = leadSharePercent === 0 ? 'no-room' : leadSharePercent === 100 ? 'no-share-named' : 'share';
  const mixing = !isMixed ? 'not-asked' : isRefused ? 'ask-first' : share;
  return {
    reading: readingOf(readings, feedReading),
    feedReading,
    verdict: severest(readings, Math.min(listSharePercent, leastSharePercent(day.asFeedPpm, isPregnant)) > 0),
    ...feed,
    ...water,
    ...day,
    listSharePercent,
    leadSharePercent,
    restSharePercent: 100 - leadSharePercent,
    mixing,
    readings: readings.map(({ severity: _, isRead: __, ...each }) => each),
    ...rulesOf(values.crop),
  } as const;
}
