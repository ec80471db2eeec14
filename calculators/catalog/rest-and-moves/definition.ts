import { caution, defineCalculator, ranged, shown, shownWhen } from '../../kit/define.ts';
import { byCase, formula, lookup, tabulate, tex, when } from '../../kit/steps.ts';
import { printDay } from '../../units/printQuantity.ts';
import { compute, secondBiteDays } from './compute.ts';
import { hasDensity, inputs, isBelowTable } from './inputs.ts';
import { quantities } from './quantities.ts';
import { publishedSteps } from './steps.ts';

/** Paddocks taken as large as the herd needs would always feed it. */
const isMeasured = ({ acresFrom }: { readonly acresFrom: 'known' | 'needed' }): boolean => acresFrom === 'known';
interface Rotation {
  readonly verdict: 'none-until-rain' | 'grows-back';
  readonly todayVerdict: 'enough' | 'short';
  readonly paddockCount: number;
  readonly herdCount: number;
}
const isBackTooSoon = ({ verdict, todayVerdict }: Rotation): boolean => verdict === 'grows-back' && todayVerdict === 'short';
/** With a paddock for each herd and none to rest, no stay however long gives any rest. */
const canGoSlower = (rotation: Rotation): boolean => isBackTooSoon(rotation) && rotation.paddockCount > rotation.herdCount;

export default defineCalculator({
  slug: 'rest-and-moves',
  version: 2,
  title: 'Rest-period length',
  inputs,
  refusals: [
    {
      at: 'stopHeightIn',
      when: ({ startHeightIn, stopHeightIn }) => stopHeightIn >= startHeightIn,
      say: 'The stubble must be lower than the height when grazing starts, or there is nothing to graze. Lower the stubble or raise the start.',
    },
    {
      at: 'paddockCount',
      when: ({ paddockCount, herdCount }) => paddockCount < herdCount,
      say: 'There are more herds than paddocks. Give at least one paddock to each herd; for any rest, one more than that.',
    },
  ],
  compute,
}).describe({
  question: 'How long must each paddock rest, and when do I look at the next one?',
  lead: 'Rest-period length from the growth that must come back, how many paddocks that takes, and the days to go and look. When nothing grows it says so.',
  searchWords:
    'rotational grazing, rest days, recovery period, how many paddocks, paddock size, stock density, grazing calendar, pasture rotation schedule, traps, when to move cattle',
  quantities,
  results: [
    { of: 'verdict', when: ({ verdict }) => verdict === 'none-until-rain' },
    ranged('wholeRestDays', ['lowRestDays', 'highRestDays'], {
      when: ({ verdict }) => verdict === 'grows-back',
      says: '{low} to {high} {rangeFrom}',
    }),
    { of: 'neededPaddocks', when: ({ verdict }) => verdict === 'grows-back' },
    { of: 'givenRestDays' },
    { of: 'todayVerdict', when: ({ verdict }) => verdict === 'grows-back' },
    { of: 'wholeShortDays', when: isBackTooSoon },
    { of: 'backLbPerAc' },
    shownWhen(isMeasured, 'backVerdict', 'backDays'),
    { of: 'shortFeedLb', when: (values) => isMeasured(values) && values.backVerdict === 'short' },
    { of: 'fullDays', when: isMeasured },
    { of: 'wholeSlowerStayDays', when: canGoSlower },
    shown('paddockAc', 'todayAc', 'demandLbPerDay', 'densityLbPerAc', 'restingPercent', 'moves'),
  ],
  steps: [
    byCase('growthNowLbPerAcDay', {
      says: 'How fast it grows now.',
      source: 'common practice',
      ways: [
        { when: ({ growthFrom }) => growthFrom === 'known', formula: tex`\q{growthLbPerAcDay}` },
        {
          when: ({ firstHeightIn, secondHeightIn }) => secondHeightIn <= firstHeightIn,
          formula: '0',
          because: 'it stood no taller on the second day, so nothing grew',
        },
        { formula: tex`\frac{(\q{secondHeightIn} - \q{firstHeightIn}) \times \q{densityLbPerAcIn}}{\q{betweenDays}}` },
      ],
    }),
    formula('regrowLbPerAc', tex`(\q{startHeightIn} - \q{stopHeightIn}) \times \q{densityLbPerAcIn}`, {
      says: 'What must come back: from the stubble left to the height when grazing starts.',
      source: 'umaine-pasture-lesson-1, appendix D',
    }),
    formula('restDays', tex`\frac{\q{regrowLbPerAc}}{\q{growthNowLbPerAcDay}}`, {
      says: 'The days that takes at this growth.',
      onlyWhen: ({ verdict }) => verdict === 'grows-back',
      source: 'common practice',
    }),
    lookup('verdict', {
      says: 'With no growth, or so little that it would take a year, there is nothing to divide by. No rest is long enough until it rains.',
      onlyWhen: ({ verdict }) => verdict === 'none-until-rain',
      source: 'common practice',
    }),
    ...publishedSteps,
    when(
      ({ verdict }) => verdict === 'grows-back',
      [
        formula('exactPaddocks', tex`\frac{\q{restDays}}{\q{stayDays}} + \q{herdCount}`, {
          says: 'Paddocks for that rest: enough to rest in turn, and one for each herd to stand in.',
          source: 'penn-state-four-steps, step 3',
        }),
        lookup('neededPaddocks', { says: 'Rounded up to whole paddocks.', source: 'penn-state-four-steps, step 3' }),
      ],
    ),
    formula('givenRestDays', tex`(\q{paddockCount} - \q{herdCount}) \times \q{stayDays}`, {
      says: 'The same rule turned round: the rest that today’s paddocks give.',
      source: 'penn-state-four-steps, step 3',
    }),
    formula('shortDays', tex`\q{restDays} - \q{givenRestDays}`, { says: 'How much that is too short.', onlyWhen: isBackTooSoon }),
    lookup('wholeRestDays', {
      says: 'A day begun is counted as a day of rest.',
      onlyWhen: ({ verdict }) => verdict === 'grows-back',
      source: 'common practice',
    }),
    formula('wholeShortDays', tex`\max(\q{wholeRestDays} - \q{givenRestDays}, 0)`, { says: 'And in whole days.', onlyWhen: isBackTooSoon }),
    formula('slowerStayDays', tex`\frac{\q{restDays}}{\q{paddockCount} - \q{herdCount}}`, {
      says: 'To get the rest from today’s paddocks each stay would have to be this long.',
      onlyWhen: canGoSlower,
    }),
    formula('slowerOccupiedDays', tex`\q{slowerStayDays} \times \q{herdCount}`, {
      says: 'With every herd passing through, stock would then be in a paddock this long without a break.',
      onlyWhen: (values) => canGoSlower(values) && values.herdCount > 1,
    }),
    lookup('wholeSlowerStayDays', { says: 'A day begun is counted as a day of the stay.', onlyWhen: canGoSlower, source: 'common practice' }),
    formula('wholeSlowerOccupiedDays', tex`\q{wholeSlowerStayDays} \times \q{herdCount}`, {
      says: 'And stock would be in a paddock for so many whole days in a row.',
      onlyWhen: (values) => canGoSlower(values) && values.herdCount > 1,
    }),
    formula('restingPercent', tex`\frac{\q{paddockCount} - \q{herdCount}}{\q{paddockCount}} \times 100`, {
      says: 'Paddocks at rest on any day.',
      source: 'shelton-rest',
    }),
    formula('occupiedDays', tex`\q{stayDays} \times \q{herdCount}`, { says: 'Days in a row that a paddock has stock in it.' }),
    tabulate('stockLines', {
      says: 'What the stock weigh and what they eat in a day.',
      formulas: {
        lineWeightLb: tex`\q{countHead} \times \q{weightLb}`,
        lineLbPerDay: tex`\frac{\q{countHead} \times \q{weightLb} \times \q{intakePercent}}{100}`,
      },
      sums: { stockWeightLb: 'lineWeightLb', demandLbPerDay: 'lineLbPerDay' },
    }),
    lookup('eatenPercent', {
      says: 'Share eaten of what stands above the stubble, for {occupiedDays} in a paddock. The table ends at seven days.',
      onlyWhen: ({ eatenFrom }) => eatenFrom === 'by-stay',
      source: 'penn-state-agronomy-guide, table 1.8-9',
    }),
    formula('eatenPercent', tex`\q{ownEatenPercent}`, {
      says: 'Share eaten of what stands above the stubble, as you gave it.',
      onlyWhen: ({ eatenFrom }) => eatenFrom === 'own',
    }),
    formula('paddockAc', tex`\frac{\q{demandLbPerDay} \times \q{stayDays}}{\q{regrowLbPerAc} \times \q{eatenPercent} / 100}`, {
      says: 'Acres that feed all the stock for one stay.',
      source: 'penn-state-agronomy-guide, table 1.8-9',
    }),
    byCase('acresAc', {
      says: 'Acres that one paddock really has.',
      ways: [
        { when: isMeasured, formula: tex`\q{ownPaddockAc}` },
        { formula: tex`\q{paddockAc}`, because: 'taken as large as they need' },
      ],
    }),
    formula('fullFeedLb', tex`\q{acresAc} \times \q{regrowLbPerAc} \times \frac{\q{eatenPercent}}{100}`, {
      says: 'What a paddock at its full height gives them.',
      source: 'penn-state-agronomy-guide, table 1.8-9',
    }),
    formula('fullDays', tex`\frac{\q{fullFeedLb}}{\q{demandLbPerDay}}`, {
      says: 'How long that feeds all the stock.',
      source: 'umaine-pasture-lesson-1, appendix D',
    }),
    formula('backLbPerAc', tex`\min(\q{growthNowLbPerAcDay} \times \q{givenRestDays}, \q{regrowLbPerAc})`, {
      says: 'What has grown back when the plan brings stock back, and never more than must come back.',
      source: 'common practice',
    }),
    formula('backFeedLb', tex`\q{acresAc} \times \q{backLbPerAc} \times \frac{\q{eatenPercent}}{100}`, { says: 'What they get of it, at most.' }),
    formula('backDays', tex`\frac{\q{backFeedLb}}{\q{demandLbPerDay}}`, {
      says: 'How long that feeds all the stock.',
      source: 'umaine-pasture-lesson-1, appendix D',
    }),
    formula('stayNeedLb', tex`\q{demandLbPerDay} \times \q{stayDays}`, { says: 'What all the stock eat in one stay.' }),
    formula('shortFeedLb', tex`\max(\q{stayNeedLb} - \q{backFeedLb}, 0)`, { says: 'So much must come from somewhere else.' }),
    formula('todayAc', tex`\q{paddockAc} \times \q{paddockCount}`, { says: 'For all of today’s paddocks.' }),
    formula('densityLbPerAc', tex`\frac{\q{stockWeightLb}}{\q{herdCount} \times \q{paddockAc}}`, {
      says: 'Live weight on an acre while one herd is in, if the herds weigh alike.',
      source: 'common practice',
    }),
  ],
  cautions: [
    caution(isBackTooSoon, {
      say: 'This plan is back before the grass is. Go in only where a paddock has grown back to its height. Where it has not, wait: feed hay on one lot that you can spare, or take stock off. Each round that comes too early leaves less leaf to grow from.',
      source: 'common practice',
    }),
    caution(({ verdict }) => verdict === 'none-until-rain', {
      say: 'Nothing is growing, so going round again takes the last leaf that the plants have to grow from. The calendar shows one pass over what stands. After it, feed hay on one lot that you can spare, or take stock off, until rain has brought the grass back to height.',
      source: 'common practice',
    }),
    caution(({ occupiedDays }) => occupiedDays > secondBiteDays, {
      say: 'Stock are in one paddock for more than about seven days. They then bite the new leaf of plants that they grazed on the first days, and the rest has not even begun. Shorten the stay.',
      source: 'common practice',
    }),
    caution((values) => isBackTooSoon(values) && (values.paddockCount === values.herdCount || values.wholeSlowerOccupiedDays > secondBiteDays), {
      say: 'Too few paddocks for this rest. Going slower round the ones you have makes each stay longer, past the seven days or so after which stock take a second bite. Split paddocks, run the herds as one, or take stock off.',
      source: 'common practice',
    }),
    caution(({ verdict, restDays, givenRestDays }) => verdict === 'grows-back' && givenRestDays > 2 * restDays, {
      say: 'This round is more than twice as long as the grass needs now. It will run to stem. Go round faster, or shut some paddocks for hay or for standing feed.',
      source: 'common practice',
    }),
    caution(({ forage, stopHeightIn }) => isBelowTable(forage, stopHeightIn), {
      say: 'This stubble is lower than the table goes for this forage. Growth from so short a stubble is slower than the growth that you measured on taller grass, and more ground lies bare.',
      source: 'common practice',
    }),
    caution(({ forage }) => forage !== 'own' && !hasDensity(forage), {
      say: 'No table here gives the pounds in an inch for this forage. If you have not clipped your own, the figure in that field is left over from another forage.',
      source: 'common practice',
    }),
    caution(({ forage }) => forage === 'alfalfa' || forage === 'white-clover' || forage === 'other-clovers', {
      say: 'Alfalfa and clover can bloat cattle and sheep. Never turn in hungry stock, nor onto wet or very young growth; fill them with dry hay first and watch them. Ask your veterinarian about bloat blocks.',
      source: 'common practice',
    }),
    caution(({ forage }) => forage === 'sorghum-sudan' || forage === 'pearl-millet' || forage === 'small-grains', {
      say: 'Drought can leave nitrate in these crops, and sorghum and sudangrass can hold prussic acid in young, wilted, frosted or new growth after rain. Have a laboratory test it before stock go in. Horses should not graze sorghum or sudangrass.',
      source: 'common practice',
    }),
    caution(isBackTooSoon, {
      say: 'New paddocks mean electric wire. Use a proper fence energizer, keep wire away from power lines and dry grass, put up signs where people pass, and see that each paddock has water.',
      source: 'common practice',
    }),
  ],
  limits: [
    'It takes today’s growth as if it went on. In a drought growth falls week by week and the rest gets longer; measure again every week or two.',
    'Growth just after grazing is slower than in the middle of the rest. The real rest is longer if the stubble was short.',
    'The calendar is a plan for looking, not for moving. Go and look at the paddock; the grass decides. Skip one that is not ready, and take one early that runs ahead.',
    'A ruler errs. If the grass rose an inch between your two heights and you misread by half an inch, the rest is out by half. Measure at twenty stakes, or wait longer between.',
    'It takes all paddocks alike in size and growth. Creek bottom and bench seldom are: run each by itself.',
    'Published ranges come from other places and mostly from fair rain. Appetite guides err by about 15 percent either way.',
    'The seven days are a rule of thumb. In fast growth the second bite comes sooner, in slow growth later.',
  ],
  weighsOnPeople: true,
  note: ({ verdict, todayVerdict, givenRestDays, acresFrom, backVerdict }, show) =>
    verdict === 'none-until-rain'
      ? `Growth is ${show('growthNowLbPerAcDay')}: no rest is long enough until it rains. Stop at ${show('stopHeightIn')}; each stay of ${show('stayDays')} takes about ${show('paddockAc')} of what stands at ${show('startHeightIn')}.`
      : `At ${show('growthNowLbPerAcDay')} of growth a paddock needs about ${show('wholeRestDays')} from ${show('stopHeightIn')} back to ${show('startHeightIn')}. With stays of ${show('stayDays')} that is ${show('neededPaddocks')} paddocks of ${show('paddockAc')}; ${givenRestDays === 0 ? 'as it is now, no paddock ever rests' : `today’s ${show('paddockCount')} give ${show('givenRestDays')}, ${todayVerdict === 'enough' ? 'which is enough' : `${show('wholeShortDays')} too short`}`}.${acresFrom === 'known' && backVerdict === 'short' ? ` When the plan returns, ${show('backLbPerAc')} of ${show('regrowLbPerAc')} has grown back: a paddock of ${show('acresAc')} then feeds all the stock for ${show('backDays')} of a stay of ${show('stayDays')}. Have ${show('shortFeedLb')} of other feed ready.` : ''} Go in only where it has grown back; the grass decides.`,
  picture: {
    kind: 'spans',
    rows: 'moves',
    lane: 'paddock',
    from: 'inDay',
    to: 'outDay',
    spanSays: 'grazed',
    gapSays: 'rests',
    hollow: { of: 'goesIn', is: 'not-back', says: 'back in by the plan, but not grown back' },
  },
  calendar: {
    rows: 'moves',
    day: 'lookDay',
    title: ({ paddock, goesIn }) =>
      goesIn === 'ready' ? `Look at paddock ${paddock}` : `Look at paddock ${paddock}: go in only if it has grown back`,
    text: ({ paddock, herd, inDay, outDay, goesIn }) =>
      `Is paddock ${paddock} at the height to graze? ${herd === 1 ? 'Planned in' : `Herd ${herd} follows in`} on ${printDay(inDay, true)}, out on ${printDay(outDay, true)}${goesIn === 'ready' ? '' : ', only if it has grown back'}.${goesIn === 'not-back' ? ' At the growth this plan was made with, it will not have.' : ''} The grass decides. Not ready: wait, or skip it.`,
  },
  sources: [
    'penn-state-four-steps',
    'penn-state-agronomy-guide',
    'uga-wait-to-graze',
    'shelton-rest',
    'schriefer-rest',
    'rayburn-1992',
    'hamilton-2014',
    'kallenbach-2013',
    'umaine-pasture-lesson-1',
    'cosgrove-grasses',
    'ohio-state-grazing-2012',
    'luling-foundation',
    'uky-native-grass-2020',
    'nc-state-grazing-heights',
    'smith-agr191',
  ],
  changes: [
    {
      version: 2,
      say: 'it asks the acres in a paddock, and says what has grown back when the plan returns and what feed is short; days of rest, and of the stay that would give it, are told in whole days, rounded up.',
    },
  ],
  topic: 'grass',
  order: 30,
  guides: ['resting-grass', 'leaving-stubble', 'laying-out-paddocks', 'turning-out-again'],
});
