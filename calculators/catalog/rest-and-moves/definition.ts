import { defineCalculator } from '../../kit/define.ts';
import { ranged, shown } from '../../kit/shown.ts';
import { byCase, formula, lookup, tabulate, tex, when } from '../../kit/steps.ts';
import { printDay } from '../../units/printQuantity.ts';
import { cautions, isBackTooSoon, type restsNever } from './cautions.ts';
import { compute } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';
import { publishedSteps } from './steps.ts';

/** Paddocks taken as large as the herd needs would always feed it. */
const isMeasured = ({ acresFrom }: { readonly acresFrom: 'known' | 'needed' }): boolean => acresFrom === 'known';
type Asked = Parameters<typeof isMeasured>[0] & Parameters<typeof restsNever>[0];
/** The plan returns only where something has rested. */
const returns = (values: Asked): boolean => isMeasured(values) && values.todayVerdict !== 'none';
/** Too little to tell as a tenth of a day. */
const feedsALittle = ({ backDays }: { readonly backDays: number }): boolean => backDays >= leastToldDays;
const leastToldDays = 0.05;

export default defineCalculator({
  slug: 'rest-and-moves',
  version: 3,
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
  first: [['growthLbPerAcDay', 'firstHeightIn'], 'stopHeightIn', 'ownPaddockAc', 'stayDays', 'startDay'],
  groups: [
    {
      title: 'How growth is known',
      inputs: ['growthFrom', 'secondHeightIn', 'betweenDays'],
      summary: '{growthFrom}, {secondHeightIn} after {betweenDays}',
    },
    {
      title: 'The grass',
      inputs: ['forage', 'startHeightIn', 'densityLbPerAcIn', 'isSouth'],
      summary: '{forage}, grazed from {startHeightIn}, {densityLbPerAcIn}, {isSouth}',
    },
    { title: 'The stock', inputs: ['stock'], summary: '{stock}' },
    {
      title: 'Paddocks and herds',
      inputs: ['paddockCount', 'herdCount', 'acresFrom'],
      summary: 'paddocks: {paddockCount}, herds: {herdCount}, {acresFrom}',
    },
    { title: 'Ways of counting', inputs: ['eatenFrom', 'ownEatenPercent'], summary: 'share eaten {eatenFrom}, {ownEatenPercent}' },
  ],
  handout: ['wholeRestDays', 'neededPaddocks', 'givenRestDays', 'wholeShortDays', 'backDays', 'shortFeedLb'],
  quantities,
  results: [
    { of: 'verdict', said: 'at this growth', when: ({ verdict }) => verdict === 'none-until-rain' },
    ranged('wholeRestDays', ['lowRestDays', 'highRestDays'], {
      when: ({ verdict }) => verdict === 'grows-back',
      says: '{low} to {high} {rangeFrom}',
      short: ({ rangeFrom }) => `{low} to {high} ${rangeFrom === 'memory' ? 'from memory' : 'in published guides'}`,
      said: 'of rest',
      gap: ['less rest', 'more rest'],
    }),
    { of: 'neededPaddocks', when: ({ verdict }) => verdict === 'grows-back', gap: ['fewer paddocks needed there', 'more paddocks needed there'] },
    { of: 'givenRestDays', gap: ['less rest in those paddocks', 'more rest in those paddocks'] },
    { of: 'todayVerdict', when: ({ verdict }) => verdict === 'grows-back' },
    { of: 'wholeShortDays', when: isBackTooSoon },
    { of: 'backLbPerAc', when: ({ todayVerdict }) => todayVerdict !== 'none' },
    { of: 'backVerdict', when: returns },
    { of: 'backDays', when: (values) => returns(values) && feedsALittle(values) },
    { of: 'shortFeedLb', when: (values) => returns(values) && values.backVerdict === 'short' },
    { of: 'fullDays', when: isMeasured },
    { of: 'wholeSlowerStayDays', when: isBackTooSoon },
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
    lookup('grassBackDay', {
      says: 'The first paddock is grazed from the first move for {occupiedDays}, then rests for {wholeRestDays}.',
      onlyWhen: ({ verdict }) => verdict === 'grows-back',
      source: 'our own',
    }),
    formula('wholeShortDays', tex`\max(\q{wholeRestDays} - \q{givenRestDays}, 0)`, { says: 'And in whole days.', onlyWhen: isBackTooSoon }),
    formula('slowerStayDays', tex`\frac{\q{restDays}}{\q{paddockCount} - \q{herdCount}}`, {
      says: 'To get the rest from today’s paddocks each stay would have to be this long.',
      onlyWhen: isBackTooSoon,
    }),
    formula('slowerOccupiedDays', tex`\q{slowerStayDays} \times \q{herdCount}`, {
      says: 'With every herd passing through, stock would then be in a paddock this long without a break.',
      onlyWhen: (values) => isBackTooSoon(values) && values.herdCount > 1,
    }),
    lookup('wholeSlowerStayDays', { says: 'A day begun is counted as a day of the stay.', onlyWhen: isBackTooSoon, source: 'common practice' }),
    formula('wholeSlowerOccupiedDays', tex`\q{wholeSlowerStayDays} \times \q{herdCount}`, {
      says: 'And stock would be in a paddock for so many whole days in a row.',
      onlyWhen: (values) => isBackTooSoon(values) && values.herdCount > 1,
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
    when(
      ({ todayVerdict }) => todayVerdict !== 'none',
      [
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
      ],
    ),
    formula('todayAc', tex`\q{paddockAc} \times \q{paddockCount}`, { says: 'For all of today’s paddocks.' }),
    formula('densityLbPerAc', tex`\frac{\q{stockWeightLb}}{\q{herdCount} \times \q{paddockAc}}`, {
      says: 'Live weight on an acre while one herd is in, if the herds weigh alike.',
      source: 'common practice',
    }),
  ],
  cautions,
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
  note: (values, show) => {
    const { verdict, todayVerdict, backVerdict } = values;
    return verdict === 'none-until-rain'
      ? `Growth is ${show('growthNowLbPerAcDay')}: no rest is long enough until it rains. Stop at ${show('stopHeightIn')}; each stay of ${show('stayDays')} takes about ${show('paddockAc')} of what stands at ${show('startHeightIn')}.`
      : `At ${show('growthNowLbPerAcDay')} of growth a paddock needs about ${show('wholeRestDays')} from ${show('stopHeightIn')} back to ${show('startHeightIn')}: with stays of ${show('stayDays')}, ${show('neededPaddocks')} paddocks of ${show('paddockAc')}; ${todayVerdict === 'none' ? 'as it is now stock are in every paddock, and none rests' : `today’s ${show('paddockCount')} give ${show('givenRestDays')}, ${todayVerdict === 'enough' ? 'which is enough' : `${show('wholeShortDays')} too short`}`}.${returns(values) && backVerdict === 'short' ? ` When the plan returns, ${show('backLbPerAc')} of ${show('regrowLbPerAc')} has grown back: a paddock of ${show('acresAc')} then feeds all the stock for ${feedsALittle(values) ? show('backDays') : 'next to none'} of a stay of ${show('stayDays')}, so have ${show('shortFeedLb')} of other feed ready.` : ''} Go in only where it has grown back; the grass decides.`;
  },
  picture: {
    kind: 'spans',
    rows: 'moves',
    lane: 'paddock',
    from: 'inDay',
    to: 'outDay',
    spanSays: 'grazed',
    gapSays: 'rests',
    hollow: { of: 'goesIn', is: 'not-back', says: 'back in by the plan, but not grown back' },
    mark: { at: 'grassBackDay', says: 'paddock 1 is back: {wholeRestDays}', shownWhen: { verdict: 'grows-back' } },
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
    'seedway-sorghum',
    'agproud-35189',
    'drewnoski-redfearn-2024',
    'hay-forage-311',
    'volesky-bloat-2023',
    'msu-fall-bloat',
    'davis-staggers',
    'anderson-tetany',
    'winter-tetany-drovers',
    'harty-tetany-2020',
    'lory-fall-nitrogen-2022',
    'hamilton-2014',
    'kallenbach-2013',
    'umaine-pasture-lesson-1',
    'cosgrove-grasses',
    'ohio-state-grazing-2012',
    'luling-foundation',
    'uky-native-grass-2020',
    'nc-state-grazing-heights',
    'smith-agr191',
    'sulc-frost-1613',
    'swinker-laminitis-2013',
    'drought-horse-pasture',
    'extension-fescue-mares',
    'oregon-fescue-mares',
  ],
  changes: [
    {
      version: 2,
      say: 'it asks the acres in a paddock, and says what has grown back when the plan returns and what feed is short; days of rest, and of the stay that would give it, are told in whole days, rounded up.',
    },
    { version: 3, say: 'with stock in every paddock it says that none rests, and plans one round. Small acres are told to two figures.' },
  ],
  topic: 'grass',
  order: 30,
  guides: ['resting-grass', 'leaving-stubble', 'laying-out-paddocks', 'turning-out-again'],
});
