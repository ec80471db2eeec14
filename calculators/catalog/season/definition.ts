import { caution } from '../../kit/define.ts';
import { defineLong } from '../../kit/defineLong.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';
import { type Asked, inputs, weatherKeys } from './inputs.ts';
import { quantities } from './quantities.ts';
import { steps } from './steps.ts';

/** Nights are colder than days, and the hottest month is hotter than the coldest. */
const isInOrder = ({ coldHighF, coldLowF, hotHighF, hotLowF }: Asked): boolean =>
  coldLowF < coldHighF && hotLowF < hotHighF && coldHighF < hotHighF && coldLowF < hotLowF;

/** What stands of a usual year with the quarter eaten that is usual on range. */
const leftOnRange = 0.75;

export default defineLong({
  slug: 'season',
  version: 1,
  title: 'Years of grass, and the hay they take',
  inputs,
  refusals: [
    {
      at: 'coldLowF',
      when: ({ coldLowF, coldHighF }) => coldLowF >= coldHighF,
      say: 'In the coldest month the night must be colder than the day. Put the usual low below the usual high.',
    },
    {
      at: 'hotLowF',
      when: ({ hotLowF, hotHighF }) => hotLowF >= hotHighF,
      say: 'In the hottest month the night must be colder than the day. Put the usual low below the usual high.',
    },
    {
      at: 'hotHighF',
      when: ({ coldHighF, hotHighF }) => coldHighF >= hotHighF,
      say: 'The days of the hottest month must be hotter than those of the coldest.',
    },
    {
      at: 'coldLowF',
      when: ({ coldLowF, hotLowF }) => coldLowF >= hotLowF,
      say: 'The nights of the coldest month must be colder than those of the hottest.',
    },
    {
      at: 'rainRecord',
      when: (asked, { hasYears }) => isInOrder(asked) && !hasYears(asked),
      say: 'This record holds fewer than six hay years, from turn-out to turn-out, with no more than three days of unread rain in each. Put a longer one in, or let the years be made up.',
    },
    {
      at: 'usualForageLbPerAc',
      when: (asked, { hasYears, fitsOf }) => isInOrder(asked) && hasYears(asked) && fitsOf(asked).kind === 'yield-too-high',
      say: 'This yield does not go with this rain, soil and season: no growth makes so much there. Look at the yield, the months and how deep roots go.',
    },
    {
      at: 'usualHayTonPerAc',
      when: (asked, { hasYears, fitsOf }) => isInOrder(asked) && hasYears(asked) && fitsOf(asked).kind === 'hay-too-high',
      say: 'So much hay does not go with this rain, soil and these cutting days: no growth makes it there. Look at the yield, the days and the months.',
    },
  ],
  engine: () => import('./compute.ts'),
}).describe({
  question: 'How much hay should stand in the barn each fall?',
  lead: 'Your herd, grass, soil and rules through thirty years of weather, day by day: how often the hay would have run short, and what became of grass and ground. Not a forecast: what your rules would have done in these years.',
  searchWords:
    'how much hay to keep on hand, hay reserve, odds of running out of hay, one year in ten, rotational grazing compared, continuous against rotational, stocking rate simulation, rest period, stubble height, grazing model, long-term carrying capacity, drought reserve, carryover hay',
  first: ['texture', 'usualForageLbPerAc', 'stock', 'paddocksCount', 'stayDays'],
  groups: [
    {
      title: 'Rest and stubble',
      inputs: ['restDays', 'stubbleIn', 'whenShort', 'next', 'pullBelowDays'],
      summary: '{restDays} of rest, {stubbleIn} of stubble, {whenShort}, {next}, off below {pullBelowDays} of grass',
    },
    { title: 'Turn-out, first day on hay', inputs: ['turnOutDay', 'pullDay'], summary: 'out {turnOutDay}, on hay {pullDay}' },
    {
      title: 'The barn',
      inputs: ['barnTon', 'mostBoughtTon', 'shortOfTenCount', 'carriedPercent', 'feedingLossPercent', 'moisturePercent'],
      summary: '{barnTon} meant to stand there, {mostBoughtTon} at most bought, {feedingLossPercent} lost in feeding, {moisturePercent} water',
    },
    { title: 'The weather', inputs: weatherKeys, summary: '{weatherFrom}, {rainRecord}, {runYears} of them, {latitude}, throw {#throwCount}' },
    {
      title: 'Ground and hay meadow',
      inputs: [
        'grazedAc',
        'meadowAc',
        'usualHayTonPerAc',
        'firstCutDay',
        'secondCutDay',
        'grazesMeadow',
        'grass',
        'organicPercent',
        'rootsIn',
        'rootsMoreIn',
        'densityLbPerAcIn',
        'rainFactorRatio',
        'slopePercent',
        'slopeLengthFt',
      ],
      summary: '{grazedAc} grazed, {meadowAc} of hay at {usualHayTonPerAc}, {grass}, roots to {rootsIn}, {slopePercent} slope',
    },
    {
      title: 'The herd over the year',
      inputs: ['keptPercent', 'winterPercent', 'sells', 'soldPercent', 'saleDay', 'saleBelowDays'],
      summary: '{keptPercent} of the herd kept, {sells}, {winterPercent} eaten in winter',
    },
    {
      title: 'What the science takes',
      inputs: ['referenceRatio', 'trampledRatio', 'fullIntakeLbPerAc', 'weatheredPercent', 'crownLbPerAc', 'ceilingRatio', 'abstraction'],
      summary: '{#trampledRatio} trampled for each pound eaten, {weatheredPercent} of dead grass falls in a month',
    },
    { title: 'What is drawn and worked through', inputs: ['shownYearCount', 'shownDay'], summary: 'hay year {#shownYearCount}, {shownDay}' },
  ],
  handout: ['hayTon', 'shortCount', 'filledShortCount', 'carriedShortCount', 'cropTon', 'grazedDays'],
  quantities,
  results: [
    ranged('hayTon', ['medianNeedTon', 'mostNeedTon'], {
      says: 'half of the years took more than {low}, the worst {high}',
      same: 'every year took about {low}',
      short: 'half took over {low}, the worst {high}',
      said: 'to have each fall',
      gap: ['less hay on that side', 'more hay on that side'],
    }),
    ranged('shortCount', ['lowPercent', 'highPercent'], {
      says: 'of the hay years; the chance in any year may then be {low} to {high}',
      same: 'the chance in any year may then be {low}',
    }),
    shownWhen(({ weatherFrom }) => weatherFrom === 'record', 'weatherIs', 'leftOutCount', 'unreadDays', 'madeUpTempPercent', 'bridgedTempPercent'),
    shown('yearsCount', 'bound', 'medianNeedTon', 'seasonNeedTon', 'cropTon', 'filledShortCount'),
    ranged('carriedShortCount', ['carriedLowPercent', 'carriedHighPercent'], {
      says: '{low} to {high} a year; years of a carried barn lean on one another, so the true range is wider',
      same: '{low} a year; years of a carried barn lean on one another, so the true range is wider',
    }),
    shownWhen(({ sells }) => sells !== 'never', 'soldCount'),
    shown('grazedDays', 'movesCount', 'grownLbPerAc', 'eatenLbPerAc', 'stressDays', 'brokenDays', 'coverPercent', 'runoffIn', 'soilLostTonPerAc'),
    shown('barns', 'orders', 'years', 'weeks'),
  ],
  picture: {
    kind: 'strip',
    rows: 'weeks',
    x: 'weekDay',
    lanes: [
      { of: 'weekRainIn', as: 'bars' },
      { of: 'weekFilledPercent', as: 'curve' },
      { of: 'weekStandingLbPerAc', as: 'curve' },
      { of: 'weekFedTon', as: 'bars' },
    ],
    gaps: {
      of: 'weekFilledDays',
      above: 0,
      says: 'Hatched: weeks with days on which nobody read the rain or the temperature. What stands there is a stand-in.',
    },
    face: {
      kind: 'face',
      coverPercent: 'weekCoverPercent',
      layers: {
        rows: 'weeks',
        top: 'weekTopIn',
        thickness: 'weekDepthIn',
        filledPercent: 'weekFilledPercent',
        mostRoots: 'weekDepthIn',
        deepestRoot: 'weekDepthIn',
        holds: 'rootsHoldIn',
        has: 'weekHasIn',
        missing: 'weekMissingIn',
      },
    },
  },
  morePictures: [
    {
      kind: 'lines',
      rows: 'years',
      x: 'yearCount',
      ys: ['needTon', 'haveTon'],
      says: ['hay fed', 'your barn'],
      rowMarks: [
        { of: 'enough', is: 'short', as: 'wedge', says: 'years in which the barn was not enough' },
        { of: 'enough', is: 'not-counted', as: 'cross', says: 'years not counted, for want of rain readings' },
      ],
    },
  ],
  steps,
  // How far each may honestly be off: what people know best swings most.
  swings: [
    { of: 'keptPercent', low: 0.8, high: 1.2, isShare: true },
    { of: 'feedingLossPercent', low: 5, high: 30 },
    { of: 'usualForageLbPerAc', low: 0.8, high: 1.2, isShare: true },
    { of: 'winterPercent', low: 0.9, high: 1.1, isShare: true },
    { of: 'stubbleIn', low: 0.7, high: 1.5, isShare: true },
    { of: 'trampledRatio', low: 0.25, high: 1 },
    { of: 'weatheredPercent', low: 4, high: 10 },
    { of: 'crownLbPerAc', low: 75, high: 300 },
    { of: 'ceilingRatio', low: 1.25, high: 2.5 },
    { of: 'fullIntakeLbPerAc', low: 400, high: 1200 },
    { of: 'referenceRatio', low: 0.85, high: 1.15 },
    { of: 'rootsIn', low: 12, high: 36 },
  ],
  cautions: [
    caution(() => true, {
      lead: 'Stocking rate first: few things move the hay as much as the herd.',
      say: 'Try “stock kept” at 80 and at 120 percent before you compare fences. By the demo place a fifth fewer stock took about a fifth less hay. Rest and stubble moved a middle year by a few tons, and a dry one by more, either way.',
      source: 'briske-2008',
    }),
    caution(({ usualForageLbPerAc, fullIntakeLbPerAc }) => leftOnRange * usualForageLbPerAc < fullIntakeLbPerAc, {
      lead: 'On so thin a stand this counts hay that range stock may never need.',
      say: 'A usual year here, with a quarter of it eaten, stands lower than “Stock eat their fill down to” says. So the form takes it that they go hungry on grass, and feeds hay for the rest. If yours hold their flesh on such ground, set that number lower, under “What the science takes”. If you cannot tell, do not go by this hay.',
      source: 'white-b5036',
    }),
    caution(({ sells }) => sells !== 'never', {
      lead: 'A sale looks free here: it only shows the hay that it spares.',
      say: 'What the sold stock bring, what their like would cost at the next turn-out, and the calves not born of cows that went are left out. Cows kept for breeding take years to raise. “Keep and feed, or sell and buy back” works the money.',
      source: 'our own',
    }),
    caution(({ bound }) => bound === 'cannot', {
      lead: 'So few hay years cannot bound a need of one year in ten.',
      say: 'With no short year at all in fewer than 29 years, the chance of one could still be above one in ten. Read the range of the chance, not the count alone.',
      source: 'clopper-pearson-1934',
    }),
    caution(({ leftOutCount }) => leftOutCount > 0, {
      lead: 'Some hay years lack readings of rain and are not counted.',
      say: 'More than three days of their rain were not read. If the gauge stood unread in dry times, these odds are too kind. Ask a station near by for those days.',
      source: 'our own',
    }),
    caution(({ weatherIs }) => weatherIs === 'months', {
      lead: 'The record’s totals are laid on made-up days.',
      say: 'The rain of each month is its own, but on which days it fell is drawn from your usual months. Runoff and soil loss hang on single storms and can be off either way. A daily record tells more.',
      source: 'our own',
    }),
    caution(({ weatherIs, madeUpTempPercent }) => weatherIs !== 'made-up' && madeUpTempPercent >= 50, {
      lead: 'Temperatures are made up: a hot drought was worse than this shows.',
      say: 'The rain is the record’s own, but heat and frost follow your usual months. Droughts are often hotter than usual and take more water, so the worst years here are too kind.',
      source: 'our own',
    }),
    caution(({ weatherIs }) => weatherIs === 'made-up', {
      lead: 'Made-up years hold no long droughts: these odds are too kind.',
      say: 'Each day here is drawn from the usual of its month. True droughts last, and come in runs of years. Keep more than this says.',
      source: 'richardson-1984',
    }),
  ],
  limits: [
    'It is not a forecast. It says what your rules would have done in these years of weather.',
    'Your yield was put in, and growth fitted to it, so it cannot prove what your ground grows.',
    'Treading, packed soil and bare feeding ground are left out: it makes hard use look milder than it is, most of all where hay is fed.',
    'Thinned stands, weeds and slow recovery are left out: lasting harm is understated, and a rested stand gains more in life than here.',
    'Runoff is uncalibrated and likely high on good sod. A day’s rain is one storm, so cloudbursts are understated.',
    'Frozen ground and rain on snow are left out: winter runoff is understated.',
    'Nitrogen, clover and kinds of grass are left out: wet years are overstated on poor ground.',
    'Big paddocks look too evenly grazed: distance to water, and what stock pass over, are left out.',
    'Cold is left out: a bad winter takes 5 to 10 percent more hay.',
    'Days of thirst are no score. A bare paddock wants less water, and has fewer of them. Read them beside what grew.',
    'A long gap in a record is bridged with made-up rain, so that the years after it don’t begin on a drought that nobody saw. A hay year with more than three unread days is not counted.',
    'Springs, creeks and bottoms that water themselves grow better than here.',
  ],
  note: ({ shortCount, yearsCount }, show) =>
    `With ${show('hayTon')} in the barn each fall these rules would have run short in ${shortCount} of ${yearsCount} hay years. Own hay made in a middle year: ${show('cropTon')}; fed: ${show('medianNeedTon')}. Grazed ${show('grazedDays')} a year, ${show('runoffIn')} ran off. Not a forecast.`,
  sources: [
    'allen-1998',
    'noy-meir-1975',
    'jouven-2006',
    'gregory-1982',
    'tr55-1986',
    'hawkins-2002',
    'thurow-1987',
    'white-b5036',
    'larsen-2021',
    'saxton-rawls-2006',
    'richardson-1984',
    'geng-1986',
    'briske-2008',
    'clopper-pearson-1934',
    'kunsch-1989',
  ],
  topic: 'ahead',
  order: 20,
  guides: ['trying-a-year'],
});
