import { beforeSale, hardOne, nothingStands, recalledInch, thinGrass, toxicStubble } from '../../asks/cautions.ts';
import { fescueMares, hasHorses, isSugary } from '../../asks/horses.ts';
import { bloat, canBloat, isInMilk, isStaggersSeason, staggers } from '../../asks/lushGrowth.ts';
import { hasLegume, isCoolGrass, isRecalled } from '../../asks/stand.ts';
import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown } from '../../kit/shown.ts';
import { toxicFescueIn } from '../../tables/forageHeights.ts';
import { intakeFallsBelowLbPerAc } from '../../tables/harvestShare.ts';
import { printDay } from '../../units/printQuantity.ts';
import { compute, longestDays } from './compute.ts';
import { inputs } from './inputs.ts';
import { leadsTo } from './leadsTo.ts';
import { quantities } from './quantities.ts';
import { canSellEnough, isAllAndMore, isShort, leavesAll, runsOut, steps, type Values } from './steps.ts';

/** Past about this many days in one pasture stock bite the new leaf. */
const secondBiteDays = 7;

/** What the high end says where no day stands there. */
const atBest = ({ highNetLbPerDay, highWholeDays }: Values): string | undefined =>
  highNetLbPerDay <= 0 ? 'growth keeps up' : highWholeDays >= longestDays ? 'a year or more' : undefined;
const isFescue = ({ densityFrom, stand }: Values): boolean => densityFrom === 'list' && stand === 'tall-fescue';
const isSame = ({ lowWholeDays, highWholeDays }: Values): boolean => lowWholeDays === highWholeDays;

export default defineCalculator({
  slug: 'days-of-grass',
  version: 2,
  title: 'Days of grass left',
  inputs,
  refusals: [
    {
      at: 'untilDay',
      when: ({ todayDay, untilDay }) => untilDay <= todayDay,
      say: 'The day to which it must last must come after today. Put in a later day.',
    },
    {
      at: 'untilDay',
      when: ({ todayDay, untilDay }) => untilDay - todayDay > longestDays,
      say: 'That day is more than a year away. Choose a day within a year from today.',
    },
  ],
  compute,
}).describe({
  question: 'How many days of grass are left, and when must I move or sell?',
  lead: 'From a height and a head count: the day to be off this grass, with its range, and how many would have to leave for the rest to last until the day that you need.',
  searchWords:
    'running out of grass, out of grass, when to pull cattle off, when to destock, how many head to sell, days of grazing left, grazing days, pasture running out, how long will the grass last, move or sell, days cows can live on a pasture',
  first: ['areaAc', 'heightIn', 'stopHeightIn', 'stock.countHead', 'untilDay'],
  groups: [
    { title: 'The stock', inputs: ['stock'], summary: '{stock}' },
    {
      title: 'The grass',
      inputs: ['densityFrom', 'stand', 'condition', 'densityLbPerAcIn', 'reachPercent', 'growthLbPerAcDay'],
      summary: '{stand}, {condition}, {densityLbPerAcIn}, {reachPercent} of the ground used, growth {growthLbPerAcDay}',
    },
    { title: 'How long they stay', inputs: ['eatenFrom', 'ownEatenPercent'], summary: '{eatenFrom}, {ownEatenPercent} eaten' },
    { title: 'Today, and who could go', inputs: ['todayDay', 'canGoHead', 'isSouth'], summary: '{todayDay}, {canGoHead} could leave, {isSouth}' },
  ],
  handout: ['offDay', 'wholeDays', 'wholeShortDays', 'goTodayHead', 'sellByDay', 'demandLbPerDay'],
  quantities,
  results: [
    { of: 'verdict', said: 'on this grass', when: (values) => !runsOut(values) },
    ranged('offDay', ['lowWholeDays', 'highWholeDays'], {
      when: runsOut,
      says: (values) => (isSame(values) ? 'at both ends of the range' : `plan on {lowOffDay}; at best ${atBest(values) ?? '{highOffDay}'}`),
      short: (values) =>
        isSame(values)
          ? 'at both ends of the range'
          : `plan on ${printDay(values.lowOffDay)}; at best ${atBest(values) ?? printDay(values.highOffDay)}`,
      said: 'to be off it',
    }),
    ranged('wholeDays', ['lowWholeDays', 'highWholeDays'], {
      when: runsOut,
      says: (values) => (atBest(values) === undefined ? '{low} to {high}' : `{low}, or at best ${atBest(values)}`),
      said: 'of grass left',
      gap: ['fewer of grass', 'more of grass'],
    }),
    { of: 'wholeShortDays', when: isShort },
    { of: 'spareDays', when: ({ verdict }) => verdict === 'lasts' },
    { of: 'goTodayHead', when: (values) => isShort(values) && !isAllAndMore(values) },
    { of: 'mainHead', when: (values) => isShort(values) && isAllAndMore(values) },
    { of: 'goingOn', when: isShort },
    { of: 'sellByDay', when: canSellEnough },
    { of: 'missingHead', when: (values) => isShort(values) && !canSellEnough(values) },
    shown('demandLbPerDay', 'availableLbPerAc'),
  ],
  steps,
  cautions: [
    caution(({ verdict }) => verdict === 'nothing', nothingStands),
    ...thinGrass<Values>(({ heightIn, usedLbPerAcIn }) => heightIn * usedLbPerAcIn < intakeFallsBelowLbPerAc, undefined, isSugary),
    { when: (values) => isFescue(values) && hasHorses(values), ...fescueMares },
    { when: (values) => isFescue(values) && values.stopHeightIn < toxicFescueIn, ...toxicStubble },
    { when: (values) => values.densityFrom === 'list' && hasLegume(values.stand) && canBloat(values), ...bloat },
    {
      // Growth does not tell: people are told to put 0 in a drought, and lush grass may stand there all the same.
      when: (values) =>
        values.densityFrom === 'list' && isCoolGrass(values.stand) && isInMilk(values) && isStaggersSeason(values.todayDay, values.isSouth),
      ...staggers,
    },
    caution(({ growthLbPerAcDay }) => growthLbPerAcDay > 0, {
      lead: 'You count on growth. In a drought it can stop within a week.',
      say: 'You count on growth. In a drought it can stop within a week, and then the days run out sooner than this says. Put 0 as well, and plan on what comes out.',
      source: 'common practice',
    }),
    caution(({ eatenFrom, wholeDays, verdict }) => eatenFrom !== 'week' && runsOut({ verdict }) && wholeDays > secondBiteDays, {
      lead: 'Past a week in one pasture they bite the new leaf, and it costs you later.',
      say: 'Past about seven days in one pasture stock go back to what has just come up. They waste more, and the plants pay for it with slower growth. If you can, give it to them in parts.',
      source: 'common practice',
    }),
    caution(({ densityFrom, stand }) => densityFrom === 'list' && isRecalled(stand), recalledInch),
    caution(leavesAll, {
      lead: 'More head could leave, by what you gave, than there are: all are counted.',
      say: 'More head could leave, by what you gave, than there are on this grass. All of them are counted, and no more. Put in how many of them could go.',
      source: 'common practice',
    }),
    caution(isShort, beforeSale),
    { when: isShort, ...hardOne },
  ],
  limits: [
    'It goes by one height for all of the ground. If a draw and a ridge differ, do them one by one and add the days.',
    'It counts no rain, and no second bite: what grows back after they have been through is not there before it has rested.',
    'A printed figure for an inch can be out by half on your place. Three clips of your own set the stick.',
    'For stock that stay until it is gone, guides print the share of all that a pasture grows. Here it is put on what stands above the stubble, which errs toward fewer days.',
    'Heads that must leave are counted in the kind that eats most. Others eat less, so more of them would have to go.',
    'Printed appetites of sheep, goats and horses lie far apart, so with them the range is wide. Hay weighed for a week tells yours.',
    'It does not tell feed value. Old, brown grass may last and still not carry a cow that nurses.',
  ],
  weighsOnPeople: true,
  note: (values, show) => {
    const { verdict, lowWholeDays } = values;
    const ground = `${show('areaAc')} at ${show('heightIn')}, left at ${show('stopHeightIn')}`;
    if (verdict === 'nothing') return `${ground}: nothing to graze. They move today.`;
    if (verdict === 'keeps-up')
      return `${ground}: growth of ${show('growthLbPerAcDay')} keeps up with ${show('demandLbPerDay')} as long as it lasts.`;
    if (verdict === 'year') return `${ground}: more than a year of grass for ${show('demandLbPerDay')}.`;
    const days = values.wholeDays < 1 ? 'less than a day of grass' : `about ${show('wholeDays')} of grass`;
    const range = isSame(values) ? '' : ` (plan on ${show('lowOffDay')}; at best ${atBest(values) ?? show('highOffDay')})`;
    const off = `${ground}: ${days} at ${show('demandLbPerDay')}. Off it by ${show('offDay')}${range}.`;
    if (verdict === 'lasts') return `${off} It lasts until ${show('untilDay')}${lowWholeDays < values.untilDays ? ', but not at the low end' : ''}.`;
    const go = isAllAndMore(values) ? `all ${show('mainHead')} of the kind that eats most, and more,` : show('goTodayHead');
    const rest = values.goTodayHead < values.herdHead ? ' for the rest to last' : ', and none would stay';
    const are = values.leaveHead === 1 ? 'is' : 'are';
    const sell = canSellEnough(values)
      ? `${show('leaveHead')} ${are} enough until ${show('sellByDay')}`
      : `${show('leaveHead')} that can go ${are} too few even today`;
    return `${off} That is ${show('wholeShortDays')} short of ${show('untilDay')}: ${go} would have to leave today${rest}; ${sell}.`;
  },
  picture: {
    kind: 'lines',
    shownWhen: { verdict: ['short', 'lasts'] },
    rows: 'dayByDay',
    x: 'leftDay',
    ys: ['leftLb', 'lowLeftLb', 'highLeftLb'],
    says: ['likely', 'plan on', 'at best'],
    mark: { at: 'offDay', says: 'off by {offDay}' },
  },
  leadsTo,
  sources: [
    'umaine-pasture-lesson-1',
    'volesky-bloat-2023',
    'msu-fall-bloat',
    'davis-staggers',
    'anderson-tetany',
    'winter-tetany-drovers',
    'harty-tetany-2020',
    'penn-state-agronomy-guide',
    'uga-forage-team-2021',
    'gross-intake',
    'mullenix-2022',
    'schoenian-intake',
    'luling-foundation',
    'texas-animal-units',
    'rangelands-gateway-matching',
    'white-b5036',
    'uky-multispecies',
    'coffey-hale-parasites',
    'swinker-laminitis-2013',
    'drought-horse-pasture',
    'extension-fescue-mares',
    'oregon-fescue-mares',
    'lory-fall-nitrogen-2022',
  ],
  changes: [
    {
      version: 2,
      say: 'The range takes the appetite of each kind by its own guides: 17 % either way for grown cattle, the least and the most that guides print for other kinds. Before, all kinds took the 17 % of cows.',
    },
  ],
  topic: 'grass',
  order: 5,
  guides: ['pulling-stock-early', 'measuring-forage'],
});
