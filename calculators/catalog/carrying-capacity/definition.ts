import { hardOne } from '../../asks/cautions.ts';
import { type CurveAnswers, curveOutOfOrder, grownPercentBy, growthBegins, isCurveInOrder, isOneGrowth, twoGrowths } from '../../asks/growthCurve.ts';
import { caution, defineCalculator } from '../../kit/define.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';
import { intakeFallsBelowLbPerAc } from '../../tables/harvestShare.ts';
import { sameDayIn, yearOf } from '../../units/days.ts';
import { withCommas } from '../../units/printQuantity.ts';
import { compute } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';
import { steps } from './steps.ts';

interface ByShare {
  readonly sharePercent: number;
  readonly shareNormalHead: number;
  readonly shareGoHead: number;
}
/** Where less counts, a guess at the rest decides the head count. */
const leastReachPercent = 100 / 3;
/** The list of thin stands was made with cattle; sheep and goats bite closer. */
const isCattle = ({ kind }: { readonly kind: string }): boolean => !/^(?:ewe|doe|horse)/.test(kind);
/** Pastures on which cattle go short in a poor year. */
const thinCount = ({ herd, pastures, yieldFrom }: Pick<ValuesOf<typeof inputs>, 'herd' | 'pastures' | 'yieldFrom'>): number =>
  yieldFrom === 'survey' && herd.some(isCattle) ? pastures.filter(({ poorLbPerAc }) => poorLbPerAc < intakeFallsBelowLbPerAc).length : 0;
/** Rounded, eight tenths of a cow would read as one that the place carries. */
const isPartOfOne = (head: number): boolean => head > 0 && head < 1;
const headOr = (head: number, shown: string): string => (isPartOfOne(head) ? 'less than one head' : shown);
/** `23 to 68 by the share eaten, 25 to 55 %`: the head count goes up and down with a share that nobody weighs. */
function shareRange(shares: readonly ByShare[], headOf: (line: ByShare) => number, before: string): string {
  const [less, more] = [shares[0], shares.at(-1)];
  if (less === undefined || more === undefined) return '';
  const heads = [Math.round(headOf(less)), Math.round(headOf(more))] as const;
  if (heads[0] === heads[1]) return '';
  return `${before}${withCommas(`${heads[0]}`)} to ${withCommas(`${heads[1]}`)} by the share eaten, ${Math.round(less.sharePercent)} to ${Math.round(more.sharePercent)} %`;
}

/** All that the season lives on has grown before turn-in. */
const isAllPast = (values: CurveAnswers & { readonly fromDay: number; readonly toDay: number }): boolean => {
  const beginDay = growthBegins(values, values.toDay);
  return grownPercentBy(values, beginDay, values.fromDay) === grownPercentBy(values, beginDay, values.toDay);
};

export default defineCalculator({
  slug: 'carrying-capacity',
  version: 5,
  title: 'Carrying capacity in a dry year',
  inputs,
  refusals: [
    {
      at: 'toDay',
      when: ({ fromDay, toDay }) => toDay <= fromDay || toDay >= sameDayIn(fromDay, yearOf(fromDay) + 1),
      say: 'The last day must come after turn-in, and a season has at most 12 months.',
    },
    {
      at: 'todayDay',
      when: ({ fromDay, toDay, todayDay }) => todayDay < fromDay || todayDay >= toDay,
      say: 'Today must lie between turn-in and the last day. To look ahead, take the day of turn-in as today.',
    },
    {
      at: 'goDay',
      when: ({ toDay, todayDay, goDay }) => goDay < todayDay || goDay >= toDay,
      say: 'The day by which they could go must lie from today to before the last day.',
    },
    { ...curveOutOfOrder, when: (values) => !isCurveInOrder(values) },
    { at: 'toDay', when: (values) => isCurveInOrder(values) && !isOneGrowth(values, values.fromDay, values.toDay), say: twoGrowths },
  ],
  compute,
}).describe({
  question: 'How many head does the place carry, and how many must go?',
  lead: 'What your pastures feed in a normal and a poor year, on the acres that stock really use. Then this year: how many head must go by a day, and what waiting does to that number.',
  searchWords:
    'stocking rate, destocking, destock, how many cows per acre, animal unit months, harvest efficiency, utilization, take half leave half, overstocked, sell cows drought, forage balance, monthly forage balance',
  first: ['herd', 'soFarPercent', 'restPercent', 'goDay', 'todayDay'],
  groups: [
    {
      title: 'The pastures',
      inputs: ['yieldFrom', 'pastures', 'usualEatenLbPerDay', 'poorPercent'],
      summary: '{pastures}, {usualEatenLbPerDay} eaten by each, a poor year {poorPercent}',
    },
    {
      title: 'The season',
      inputs: ['fromDay', 'toDay', 'curve', 'startMonth', 'bestMonth', 'quitMonth', 'fallFlush'],
      summary: '{fromDay} to {toDay}, {curve}, {startMonth} to {quitMonth}, best in {bestMonth}, {fallFlush}',
    },
    {
      title: 'The share that is eaten',
      inputs: ['land', 'harvestPercent', 'gonePercent', 'eatenOfGonePercent', 'grazedPercent'],
      summary: '{land}, {harvestPercent} eaten, {gonePercent} gone, {eatenOfGonePercent} of that eaten, {grazedPercent} eaten above the stubble',
    },
    { title: 'Ways of counting', inputs: ['yieldMeans', 'yieldBasis', 'reachFrom'], summary: '{yieldMeans}, {yieldBasis}, {reachFrom}' },
  ],
  handout: ['goHead', 'nowGoHead', 'normalHead', 'nowHead', 'balanceLb', 'outDay'],
  quantities,
  results: [
    { of: 'verdict', said: 'by these numbers', when: ({ verdict }) => verdict !== 'some-go' },
    ranged('goHead', ['lowGoHead', 'highGoHead'], {
      says: ({ highGoHead, firstHead, shares }) =>
        `{low} if the rest of the season grows as usual, ${highGoHead === firstHead && firstHead > 1 ? 'all {high}' : '{high}'} if nothing more grows${shareRange(shares, ({ shareGoHead }) => shareGoHead, '; ')}`,
      short: '{low} with usual growth, {high} with none',
      said: 'must go',
      gap: ['fewer must go', 'more must go'],
      // Too late, all of the first kind is where the count stops, and not how many are enough.
      when: ({ verdict }) => verdict !== 'too-late',
    }),
    {
      of: 'nowGoHead',
      when: ({ waitDays, goHead, leftLb, othersLbPerDay, leftDays }) => waitDays > 0 && goHead > 0 && leftLb >= othersLbPerDay * leftDays,
    },
    ranged('normalHead', ['poorHead', 'normalHead'], {
      says: ({ normalHead, poorHead, shares }) =>
        `${isPartOfOne(normalHead) ? 'less than one head, and less still' : headOr(poorHead, '{low}')} in a poor year${shareRange(shares, ({ shareNormalHead }) => shareNormalHead, '; in a normal one ')}`,
    }),
    { of: 'otherBasisHead', when: ({ yieldFrom }) => yieldFrom === 'survey' },
    shown('nowHead', 'balanceLb'),
    { of: 'outDay', when: ({ lastsDays, leftDays }) => lastsDays < leftDays },
    { of: 'shares', when: ({ yieldFrom }) => yieldFrom === 'survey' },
    shown('years', 'monthLines', 'delays'),
    shownWhen(({ yieldFrom }) => yieldFrom === 'survey', 'eatenPercent', 'usableAc', 'grounds'),
    { of: 'usualYears', when: ({ yieldFrom }) => yieldFrom === 'stock-days' },
  ],
  steps,
  cautions: [
    caution(isAllPast, {
      lead: 'Nothing grows from turn-in on: this counts grass that still stands uneaten.',
      say: 'By this curve nothing grows between turn-in and the last day. It counts the growth before as if nobody had grazed it and no weather had taken any. “Standing feed” counts what is really left.',
      source: 'common practice',
    }),
    caution(({ leftLb }) => leftLb === 0, {
      lead: 'By these numbers the herd has eaten its share. Look at the stubble.',
      say: 'By these numbers the herd has already eaten its share. Look at the stubble. If more stands than this says, the growth so far was set too low. If not, each day from now comes out of next year’s grass.',
      source: 'common practice',
    }),
    caution(({ verdict }) => verdict === 'too-late', {
      lead: 'Too late for this kind alone. Go sooner, or have hay ready.',
      life: true,
      say: 'By that day it is too late for this kind alone. Go sooner, take other kinds as well, or have hay bought and a lot ready to feed it on before the grass ends.',
      source: 'common practice',
    }),
    caution(({ goHead }) => goHead > 0, {
      lead: 'Before you sell: check drug withdrawal, and who can stand the haul.',
      say: 'Before you sell, check that no drug still has its withdrawal time to run. Thin, lame or heavy-bellied animals may not stand the haul; ask your veterinarian. Load in the cool of the day with water before and after.',
      source: 'common practice',
    }),
    { when: ({ goHead }) => goHead > 0, ...hardOne },
    caution((values) => thinCount(values) === 1, {
      lead: 'In a poor year one pasture is too thin for cattle. Leave it out or rest it.',
      say: 'On one of the pastures a poor year makes less than 750 lb an acre (840 kg/ha). On so thin a stand cattle begin to eat less in a day. Leave it out, or rest it.',
      source: 'white-b5036',
    }),
    caution((values) => thinCount(values) > 1, {
      lead: 'In a poor year more than one pasture is too thin for cattle. Plan on fewer.',
      say: 'On more than one of the pastures a poor year makes less than 750 lb an acre (840 kg/ha). On so thin a stand cattle begin to eat less in a day. Do not count on those in a poor year: plan on fewer head, or on feed.',
      source: 'white-b5036',
    }),
    caution(({ pastures, yieldFrom }) => yieldFrom === 'survey' && pastures.some(({ normalLbPerAc, poorLbPerAc }) => poorLbPerAc > normalLbPerAc), {
      lead: 'One pasture makes more in the poor year than the normal. Swapped?',
      say: 'On one of the pastures the poor year makes more than the normal one. Look whether the two are swapped.',
      source: 'common practice',
    }),
    caution(({ reaches }) => reaches.some(({ reachPercent }) => reachPercent < leastReachPercent), {
      lead: 'Less than a third of some pasture counts. Walk it before you go by this.',
      say: 'On one pasture or more, less than a third of the ground counts, by distance from water and slope. The ground near water is then grazed hardest, and the far grass feeds nobody. Look where dung lies and grass is bitten, and give your own share. Water farther out makes more of it count.',
      source: 'our own',
    }),
    caution(({ eatenPercent, yieldMeans, yieldFrom }) => yieldFrom === 'survey' && yieldMeans !== 'above-stubble' && eatenPercent > 25, {
      lead: 'The share eaten decides this count. In a drought go by the lower share.',
      say: 'The share eaten decides this count more than anything else. On range 25 % is the usual figure; higher shares come from pasture with rain, and no trial here shows that grass stands them in a drought. Go by the lower share.',
      source: 'white-b5036',
    }),
    caution(({ eatenPercent, yieldMeans, yieldFrom }) => yieldFrom === 'survey' && yieldMeans !== 'above-stubble' && eatenPercent > 50, {
      lead: 'More than half eaten takes moves every few days, a good stand and rain.',
      say: 'More than half of the whole growth eaten takes moves every few days, a good stand and rain. On range 25 % is the usual figure.',
      source: 'white-b5036',
    }),
    caution(({ kinds, yieldFrom, reachFrom }) => yieldFrom === 'survey' && reachFrom === 'guide' && !kinds.every(isCattle), {
      lead: 'Distance and slope are counted as for cattle, not sheep, goats or horses.',
      say: 'Distance and slope are counted as for cattle. Sheep and goats climb steeper ground, and horses walk farther.',
      source: 'common practice',
    }),
  ],
  limits: [
    'Growth is counted from the month in which it starts last before the last day, over New Year too. Weeks in which nothing grows take feed from what stands: it weathers, and this takes nothing off for that.',
    'It takes all stock to share all the pastures. A pasture that only the ewes use needs a run of its own.',
    'Yields from a soil survey are for a site in fair shape. Worn ground may make half. Clip your own, or trust what you ran.',
    'It takes the herd as it is now to have grazed since turn-in, and each animal to eat the same all along. Calves and lambs eat more every week, so leave some to spare.',
    'In the balance by month a minus tells that the herd is then ahead of the grass: it bites into the stubble, though later growth may make the sum good. Growth from before turn-in stands in the first month.',
    'Nobody knows what will still grow. Decide on the range, set a day to look again, and write both down.',
    'The growth curve from four answers stood within 5 points in a hundred of printed ones by July 1 where that was tried; over New Year none was. Your county’s own curve is better.',
    'Appetite guides err by 14 to 17 % either way, and so does every head count built on them.',
    'It counts grass, not water. Dry ponds empty a pasture before the grass does.',
    'It does not say which ones go, nor at what price. Usual order: cows without a calf, then heifers not yet in production, then the old and unsound.',
  ],
  weighsOnPeople: true,
  note: ({ verdict, firstHead, normalHead, poorHead, waitDays, lastsDays, leftDays, shares }, show) => {
    const bySharePart = shareRange(shares, ({ shareNormalHead }) => shareNormalHead, ' (');
    const byShare = bySharePart === '' ? '' : `${bySharePart})`;
    const carries = `Counted in the first kind (${show('firstKind').toLowerCase()}), a normal year carries ${headOr(normalHead, `about ${show('normalHead')}`)}${byShare}, a poor one ${headOr(poorHead, show('poorHead'))}; there ${firstHead === 1 ? 'is' : 'are'} ${show('firstHead')}.`;
    const ends =
      lastsDays === 0
        ? ' By this count the share to be eaten is gone already.'
        : lastsDays < leftDays
          ? ` If none go, the grazing ends about ${show('outDay')}, before ${show('toDay')}.`
          : '';
    const range = `(${show('lowGoHead')} if the rest grows as usual, ${show('highGoHead')} if nothing more grows)`;
    if (verdict === 'all-stay') return `${carries} As the year looks, none need to go ${range}.${ends}`;
    if (verdict === 'too-late') return `${carries}${ends} By ${show('goDay')} it is too late to make the grass last by that kind alone.`;
    const now = waitDays > 0 ? `; gone today it would be ${show('nowGoHead')}` : '';
    return `${carries}${ends} To make it last, ${show('goHead')} must go by ${show('goDay')} ${range}${now}.`;
  },
  picture: {
    kind: 'lines',
    rows: 'delays',
    x: 'delayDay',
    ys: ['delayHead', 'dryHead'],
    says: ['as the year looks now', 'if nothing more grows'],
    you: { at: 'goDay', value: 'goHead' },
  },
  sources: [
    'white-b5036',
    'rangelands-gateway-matching',
    'holechek-1988',
    'umaine-pasture-lesson-5',
    'smart-2010',
    'nrcs-g058cy500nd',
    'pace-hay-forage',
    'penn-state-agronomy-guide',
    'nrcs-colorado-curves',
    'kstate-meadowlark-2024',
    'hibberd-thrift-1992',
    'luling-foundation',
    'mullenix-2022',
    'gross-intake',
  ],
  changes: [
    { version: 2, say: 'it says how far the head count moves with the share eaten, and asks what land it is.' },
    {
      version: 3,
      say: 'a fresh form takes 35 % as eaten of pasture grazed all season, the middle of what guides print, where it took 40 %, the most that any of them prints.',
    },
    {
      version: 4,
      say: 'a fresh form, and a bull that is chosen from the list, takes 2 % of his weight as eaten in a day, as every other form has it, no longer 2.2 %.',
    },
    {
      version: 5,
      say: 'a pasture that reaches more than a mile from water is counted ring by ring around the water, no longer all of it by its farthest point.',
    },
  ],
  topic: 'grass',
  order: 20,
  guides: ['stocking-for-the-dry-year', 'choosing-who-goes', 'keeping-a-grazing-record', 'leased-and-permitted-ground'],
});
