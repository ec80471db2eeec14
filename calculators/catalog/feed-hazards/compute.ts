import { asPrinted } from '../../kit/wholes.ts';
import { bandOf, type Reading, readingsOf } from '../../math/hazards/bandOf.ts';
import { dilutionSharePercent } from '../../math/hazards/dilutionSharePercent.ts';
import { forageNitrateReadings, leastSharePercent } from '../../math/hazards/forageNitrateReadings.ts';
import { nitrateDose } from '../../math/hazards/nitrateDose.ts';
import { nitrateAsPpm, nitrateNitrogenPpm } from '../../math/hazards/nitrateNitrogenPpm.ts';
import { strictestPrussicRule } from '../../math/hazards/strictestPrussicRule.ts';
import { saltsFromConductivity, sulfateFromSulfur } from '../../math/hazards/sulfateFromSulfur.ts';
import { highestIntakeGal } from '../../math/stockWater/highestIntakeGal.ts';
import { intakeByWeightGal } from '../../math/stockWater/planningIntakeGal.ts';
import type { Values } from './inputs.ts';
import {
  type FeedThing,
  isFeedNitrate,
  keyOf,
  type Line,
  listsOf,
  type Most,
  mostOf,
  readingOf,
  shareWordOf,
  type Table,
  type Thing,
} from './quantities.ts';

type Animals = 'calves' | 'adult-cattle';

/**
 * A number as it is told, and so held against the lists: whole. Their edges are whole too, so this never reads milder than the digits that are not told:
 * 699.8 ppm stands there as 700 and is read as 700.
 */
export const asTold = (value: number): number => asPrinted(value, 0);

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
export const feedLines = (thing: FeedThing, nitrogenPpm: number, isPregnant: boolean): Line[] => {
  const toldPpm = asTold(nitrogenPpm);
  const isWhole = thing === 'feed' || thing === 'other-feed';
  return forageNitrateReadings(toldPpm, isPregnant).map((reading) =>
    line(thing, 'forage-nitrate', toldPpm, reading, isWhole ? mostOf(reading.mostPercent) : 'not-asked'),
  );
};

const tableOf = {
  'prussic-acid': 'forage-prussic',
  'prussic-as-is': 'forage-prussic-as-is',
  'water-nitrate': 'water-nitrate',
  'water-sulfate': 'water-sulfate',
  'water-salts': 'water-salts',
} as const;
/** The same for anything else. */
export const otherLines = (thing: keyof typeof tableOf, value: number, animals: Animals): Line[] =>
  readingsOf(listsOf(tableOf[thing]), asTold(value), animals).map((reading) => line(thing, tableOf[thing], asTold(value), reading, 'not-asked'));

/** The lowest edge at which any list of nitrate in feed sets a limit or a caution, ppm of nitrate nitrogen. */
export const lowestLimitPpm: number = Math.min(
  ...listsOf('forage-nitrate').flatMap(({ bands }) => bands.filter(({ severity }) => severity > 0).map(({ from }) => from)),
);

/**
 * The most that a row can say, by our order of the lists' words. Of the lists that refuse a feed one says "unless properly mixed", the other no more than
 * that it is high: as long as the strictest still allows a share, and nothing but feed is refused, that is what they say.
 */
function severest(
  lines: readonly Line[],
  hasShare: boolean,
): 'under-every-limit' | 'limited' | 'harm-named' | 'only-mixed' | 'do-not-feed' | 'nothing-tested' {
  // What the crop alone asks for holds all the same.
  if (lines.length === 0) return 'nothing-tested';
  const most = Math.max(...lines.map(({ severity }) => severity));
  if (most < 3) return most === 0 ? 'under-every-limit' : most === 1 ? 'limited' : 'harm-named';
  const isFeedAlone = lines.every(({ severity, thing }) => severity < most || isFeedNitrate(thing));
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

const isMixed = ({ forageNitrate, otherFeed }: Values): boolean => forageNitrate !== 'not-tested' && otherFeed === 'tested';

function feedOf(values: Values) {
  const { forageNitrate, slipUnit, nitratePpmCount, nitratePercent, basis, dryMatterPercent, prussicAcid, prussicPpmCount } = values;
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
    // What nobody tested may be as high as this one.
    otherPpm: isMixed(values) ? values.otherPpmCount : nitrogenPpm,
    ionPpm: nitrateAsPpm(nitrogenPpm, 'no3'),
    potassiumNitratePpm: nitrateAsPpm(nitrogenPpm, 'kno3'),
    // Nothing but the water in the sample stands between the two, the same as for nitrogen.
    prussicPpm: prussicAcid === 'not-tested' ? 0 : isDry ? prussicPpmCount : prussicPpmCount / (dryMatterPercent / 100),
  };
}

type Feeds = ReturnType<typeof feedOf>;

/** A day to plan its water for, as hot as the form of stock water starts with, and a cold one; what K-State's rule of thumb then has for 100 lb. */
const drinkingOn = { summer: { airF: 95, galPerCwt: 1.5 }, winter: { airF: 40, galPerCwt: 0.75 } } as const;
function drunkOf({ animals, waterNitrate, waterFrom, waterGalPerDay, weightLb }: Values): number {
  if (waterNitrate === 'not-tested') return 0;
  if (waterFrom === 'known') return waterGalPerDay;
  const { airF, galPerCwt } = drinkingOn[waterFrom];
  const drinkers = animals === 'sheep-or-goats' ? 'sheep-or-goats' : 'cattle';
  return Math.max(highestIntakeGal(drinkers, weightLb, airF), intakeByWeightGal(weightLb, galPerCwt));
}

/** Feeds and water of one day together. */
function dayOf(values: Values, { nitrogenPpm, otherPpm }: Feeds, waterNitrogenMgPerL: number) {
  const { weightLb, eatenLbPerDay, sharePercent } = values;
  const drunkGal = drunkOf(values);
  const share = isMixed(values) ? sharePercent / 100 : 1;
  const rationPpm = share * nitrogenPpm + (1 - share) * otherPpm;
  const dose = (feedNitrogenPpm: number) =>
    nitrateDose({ feedLb: eatenLbPerDay, feedNitrogenPpm, waterGal: drunkGal, waterNitrogenMgPerL, weightLb });
  return { drunkGal, rationPpm, ...dose(rationPpm), waterAsFeedPpm: dose(0).asFeedPpm };
}

/** How much of the higher feed the level and the lists leave room for, whichever of the two that is. */
function mixOf({ limitFrom, ownLimitPpmCount, pregnant }: Values, { nitrogenPpm, otherPpm }: Feeds, waterAsFeedPpm: number) {
  const limitPpm = limitFrom === 'own' ? ownLimitPpmCount : lowestLimitPpm;
  const roomPpm = limitPpm - waterAsFeedPpm;
  const [highPpm, lowPpm] = [Math.max(nitrogenPpm, otherPpm), Math.min(nitrogenPpm, otherPpm)];
  const mixSharePercent = roomPpm <= lowPpm ? 0 : highPpm <= roomPpm ? 100 : dilutionSharePercent({ limitPpm: roomPpm, highPpm, lowPpm });
  const most = (ppm: number): number => leastSharePercent(asTold(ppm), pregnant !== 'no');
  // The mix stays under the level, so a share that just comes to it is too much; a hair is taken off, so that a rounding does not count as a percent.
  const underPercent = highPpm < roomPpm ? 100 : Math.max(0, Math.ceil(mixSharePercent - 1e-9) - 1);
  const leadSharePercent = Math.min(underPercent, most(highPpm));
  return {
    limitPpm,
    roomPpm,
    higherFeed: nitrogenPpm >= otherPpm ? 'this' : 'other',
    mixSharePercent,
    listSharePercent: most(nitrogenPpm),
    otherListSharePercent: most(otherPpm),
    leadSharePercent,
    restSharePercent: 100 - leadSharePercent,
    // Where the lists limit the lower feed too, the two may not make up a whole ration.
    hasRoom: mixSharePercent > 0 && 100 - leadSharePercent <= most(lowPpm),
  } as const;
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
  const { forageNitrate, prussicAcid, waterNitrate, waterSulfate, waterSalts, pregnant, animals, basis } = values;
  const feed = feedOf(values);
  const water = waterOf(values);
  const day = dayOf(values, feed, water.waterNitrogenMgPerL);
  const { hasRoom, ...mix } = mixOf(values, feed, day.waterAsFeedPpm);
  const isPregnant = pregnant !== 'no';
  // The lists name no sheep or goats: the stricter of the two kinds of cattle.
  const drinkers = animals === 'adult-cattle' ? 'adult-cattle' : 'calves';
  const hasFeed = forageNitrate !== 'not-tested';
  const hasWater = waterNitrate !== 'not-tested';
  const hasOther = isMixed(values);
  const readings = [
    ...(hasFeed ? feedLines('feed', feed.nitrogenPpm, isPregnant) : []),
    ...(hasFeed && hasWater
      ? feedLines('ration-and-water', day.asFeedPpm, isPregnant)
      : hasOther
        ? feedLines('ration', day.rationPpm, isPregnant)
        : []),
    ...(hasOther ? feedLines('other-feed', feed.otherPpm, isPregnant) : []),
    ...(prussicAcid === 'tested' ? otherLines('prussic-acid', feed.prussicPpm, drinkers) : []),
    // Unless the slip says that its figure is dry, it may be one of the feed as it came, which has a line of its own.
    ...(prussicAcid === 'tested' && basis !== 'dry' ? otherLines('prussic-as-is', values.prussicPpmCount, drinkers) : []),
    ...(hasWater ? otherLines('water-nitrate', water.waterNitrogenMgPerL, drinkers) : []),
    ...(waterSulfate !== 'not-tested' ? otherLines('water-sulfate', water.sulfateMgPerL, drinkers) : []),
    ...(waterSalts !== 'not-tested' ? otherLines('water-salts', water.saltsMgPerL, drinkers) : []),
  ];
  const severityOf = (thing: Thing): number => Math.max(...readings.filter((each) => each.thing === thing).map(({ severity }) => severity));
  const feedReading = hasFeed ? (`feed-${shareWordOf(asTold(feed.nitrogenPpm), isPregnant, severityOf('feed'))}` as const) : 'not-tested';
  const otherReading = hasOther ? (`other-${shareWordOf(asTold(feed.otherPpm), isPregnant, severityOf('other-feed'))}` as const) : 'not-tested';
  const isRefused = severityOf('feed') === 3 || severityOf('other-feed') === 3;
  const { leadSharePercent } = mix;
  const share = !hasRoom ? 'no-room' : leadSharePercent === 0 ? 'under-one' : leadSharePercent === 100 ? 'no-share-named' : 'share';
  const leastPercent = Math.min(mix.listSharePercent, mix.otherListSharePercent, leastSharePercent(asTold(day.asFeedPpm), isPregnant));
  return {
    reading: readingOf(readings, feedReading, otherReading),
    feedReading,
    otherReading,
    verdict: severest(readings, leastPercent > 0),
    ...feed,
    ...water,
    ...day,
    ...mix,
    mixing: !hasOther ? 'not-asked' : isRefused ? 'ask-first' : share,
    readings: readings.map(({ severity: _, isRead: __, ...each }) => each),
    ...rulesOf(values.crop),
  } as const;
}
