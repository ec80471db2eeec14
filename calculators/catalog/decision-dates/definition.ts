import { beforeSale, hardOne } from '../../asks/cautions.ts';
import { faultsAt } from '../../asks/faults.ts';
import { curveOutOfOrder, isCurveInOrder, twoGrowths } from '../../asks/growthCurve.ts';
import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';
import { printDay, printNumber, roundedTo } from '../../units/printQuantity.ts';
import { compute, faultOf } from './compute.ts';
import { inputs, stepWords } from './inputs.ts';
import { quantities } from './quantities.ts';
import { working } from './steps.ts';

const isCounted = ({ rainFrom }: { readonly rainFrom: string }): boolean => rainFrom === 'record';
const isBegun = ({ rainSays }: { readonly rainSays: string }): boolean => rainSays !== 'not-begun';
const isPast = ({ ahead }: { readonly ahead: string }): boolean => ahead === 'past';

/** A rain gauge is read to hundredths of an inch: a share of normal rain is known no finer than this. */
const finestDigits = 2;
/**
 * How rain stands to the trigger where whole percents would put it on the other side or onto it: `just under`, with as many digits as show it.
 * Nothing where whole percents tell it as it is.
 */
function justBy({
  rainSays,
  soFarPercent,
  triggerPercent,
}: {
  readonly rainSays: string;
  readonly soFarPercent: number;
  readonly triggerPercent: number;
}) {
  const tells = (digits: number): boolean => {
    const told = roundedTo(soFarPercent, digits);
    return rainSays === 'under' ? told < triggerPercent : told > triggerPercent;
  };
  if ((rainSays !== 'under' && rainSays !== 'over') || tells(0)) return undefined;
  const digits = [1, finestDigits].find(tells);
  return digits === undefined
    ? { side: 'right at', told: `${triggerPercent}` }
    : { side: `just ${rainSays}`, told: printNumber(soFarPercent, digits) };
}

export default defineCalculator({
  slug: 'decision-dates',
  version: 3,
  title: 'Drought trigger dates: rain, grass and what to do',
  inputs,
  refusals: [
    ...faultsAt('endDay', faultOf, {
      'too-far': 'The day until which the grass must last is 12 months or more from today. A season has at most 12 months.',
      ended: 'The grazing ends today or before. Put in the day until which the grass must last.',
    }),
    ...faultsAt('steps', faultOf, {
      'after-end': 'One date falls on the last day of grazing or after it. Move it before that day.',
      'too-early':
        'One date lies 12 months or more before the last day of grazing. A season has at most 12 months: move it, or change the day above.',
      'two-growths': twoGrowths,
    }),
    { ...curveOutOfOrder, when: (values) => !isCurveInOrder(values) },
    ...faultsAt('rainRecord', faultOf, {
      'no-record':
        'This record holds fewer than three whole seasons between the month that you count from and the last day of grazing. Put in more years, or choose the medians of the nearest station.',
    }),
    ...faultsAt('steps', faultOf, {
      'no-herd-left': 'These steps spare nearly all that the herd eats, or more. Check the head counts, and that no animal is counted twice.',
    }),
  ],
  compute,
}).describe({
  question: 'By which date must I decide, and what do I do when?',
  lead: 'Write the dates down before it is dry. For each one: how much of the year’s growth is past, how little rain and grass is too little, how often the season still came right, and how much feed the step gains. One page for the fridge door.',
  searchWords:
    'critical dates, drought plan, trigger date, when to destock, when to sell cows in a drought, decision date, target date, percent of normal rain, wean early, fridge door',
  first: ['todayDay', 'rainSoFarIn', 'triggerPercent', 'feedDays', 'steps'],
  groups: [
    {
      title: 'The season',
      inputs: ['endDay', 'curve', 'startMonth', 'bestMonth', 'quitMonth', 'fallFlush'],
      summary: 'until {endDay}, {curve}, {startMonth} to {quitMonth}, best in {bestMonth}, {fallFlush}',
    },
    {
      title: 'The grass and the herd',
      inputs: ['grassLbPerAc', 'herdLbPerDay'],
      summary: 'a normal year grows {grassLbPerAc}, the herd eats {herdLbPerDay}',
    },
    {
      title: 'Rain that is normal here',
      inputs: ['rainFrom', 'rainRecord', 'stationIn', 'sinceMonth'],
      summary: '{rainRecord}, {stationIn}, counted from {sinceMonth}',
    },
    { title: 'Ways of counting', inputs: ['response'], summary: 'grass goes with rain {response}' },
  ],
  handout: ['nextDay', 'nextStep', 'rainSays', 'soFarPercent', 'gainedDays', 'dryShortDays'],
  quantities,
  results: [
    { of: 'ahead', said: 'in this plan', when: isPast },
    { of: 'nextDay', said: 'to decide by', when: (values) => !isPast(values) },
    { of: 'nextStep', when: (values) => !isPast(values) },
    ranged('rainSays', ['soFarPercent', 'soFarPercent'], {
      says: (values) => {
        const just = justBy(values);
        return just === undefined ? '' : `${just.side} it: ${just.told} % of normal, and the trigger is {triggerPercent}`;
      },
    }),
    shownWhen(({ rainSays }) => rainSays !== 'too-early' && rainSays !== 'not-begun', 'soFarPercent', 'soFarTriggerIn'),
    { of: 'sinceDay' },
    { of: 'likeCount', when: (values) => isCounted(values) && isBegun(values) },
    ranged('likeCaughtCount', ['likeLowPercent', 'likeHighPercent'], {
      when: (values) => isCounted(values) && isBegun(values),
      says: ({ likeCount }) =>
        likeCount === 0 ? 'no year stood as badly: the record cannot say' : 'so few years leave room for anything from {low} to {high}',
    }),
    { of: 'yearsCount', when: isCounted },
    shown('gainedDays', 'weekLostDays', 'dryShortDays', 'stillShortDays', 'dryPercent', 'otherDryPercent', 'season', 'dates', 'plan'),
    { of: 'odds', when: isCounted },
    { of: 'best', when: (values) => !isCounted(values) },
  ],
  steps: working,
  cautions: [
    caution(({ rainSays, ahead }) => rainSays === 'under' && ahead === 'ahead', {
      lead: 'Rain alone is half of the answer. Measure the grass before you act.',
      say: 'Rain alone is half of the answer. Measure the grass before you act. Both short: do the step. One short: look again in two weeks.',
      source: 'common practice',
    }),
    caution(isPast, {
      lead: 'Every date of this plan is past. Put in new ones, the next sale day first.',
      say: 'Every date of this plan is past. What has not been done yet gains less each week. Put in new dates, the next sale day first.',
      source: 'common practice',
    }),
    caution(({ yearsCount, rainFrom }) => rainFrom === 'record' && yearsCount < 30, {
      lead: 'The record is short of 30 years: it counts those years and no more.',
      say: 'The record is short of 30 years. Its counts tell about those years and no more.',
      source: 'wmo-1090-2012',
    }),
    caution((values) => !isCounted(values), {
      lead: 'Medians give a normal, not a record: no years can be counted from them.',
      say: 'Medians of the months give a normal, not a record. Added up they come near the median of the season, but seldom match it. No years can be counted from them.',
      source: 'common practice',
    }),
    caution(({ dates }) => dates.some(({ grownPercent }) => grownPercent > 90), {
      lead: 'One date comes when nine tenths of the growth is past. Decide earlier.',
      say: 'One date comes when nine tenths of the year’s growth is past. Rain after that can’t bring the grass back, so decide earlier.',
      source: 'ndsu-precipitation-2020',
    }),
    caution(({ steps }) => steps.some(({ step }) => step === 'wean-early'), {
      lead: 'Calves under three months need more than hay and grass once weaned.',
      say: 'Calves under about three months need more than hay and grass once weaned. Plan their feed, water, shade and shots with a veterinarian or a nutritionist ahead of the day.',
      source: 'common practice',
    }),
    caution(({ steps }) => steps.some(({ step }) => step === 'pull-off' || step === 'buy-hay'), {
      lead: 'Hungry stock can die of new feed or nitrate. Go slowly, test the hay.',
      life: true,
      say: 'Bring hungry stock onto new feed slowly, and have drought-stressed hay tested for nitrate before you feed it. A pen needs water for the hottest day.',
      source: 'common practice',
    }),
    caution(({ steps }) => steps.some(({ step }) => step.startsWith('sell')), beforeSale),
    { when: ({ rainSays }) => rainSays === 'under', ...hardOne },
  ],
  limits: [
    'It counts past years. It is no forecast, and a record holds few years as dry as the one that worries you.',
    'Caught up means that the season’s whole rain reached its usual amount. Rain that comes after the growth fills ponds and next year’s soil, not this year’s stubble.',
    'Grass is taken to follow rain from one year to the next, and never past a normal year. A pasture grazed hard last year makes less than its rain would give.',
    'The growth curve from four answers stood within 5 points in a hundred of printed ones by July 1 where that was tried; over New Year none was.',
    'Feed standing is for all your stock together, on grass that they can reach with water. “Forage on hand” turns heights or clips into days.',
    'Growth is counted from the month in which it starts last before the last day of grazing, over New Year too. Two growths are two plans.',
    'It does not know prices. “Feed or sell?” does that sum.',
    'An animal weaned on one date and sold on another is counted twice. Put it on one line.',
  ],
  weighsOnPeople: true,
  note: (values, show) => {
    const { rainSays, likeCount, likeCaughtCount, ahead, nextStep } = values;
    const just = justBy(values);
    const next =
      ahead === 'ahead'
        ? nextStep === 'look'
          ? `Next date ${show('nextDay')}: ${show('nextStep').toLowerCase()}.`
          : `Next date ${show('nextDay')}: ${show('nextStep').toLowerCase()} if both rain and grass are short.`
        : 'All dates of the plan are past.';
    const rain =
      rainSays === 'not-begun'
        ? `Rain is counted from ${show('sinceDay')} on`
        : rainSays === 'too-early'
          ? 'No rain is usual by today'
          : just === undefined
            ? `Rain since ${show('sinceDay')} is ${show('soFarPercent')} of normal, ${rainSays} the trigger`
            : `Rain since ${show('sinceDay')} is ${just.told} % of normal, ${just.side} the trigger of ${show('triggerPercent')}`;
    const years =
      isCounted(values) && isBegun(values) && rainSays !== 'over'
        ? likeCount === 0
          ? `; none of ${show('yearsCount')} seasons on record had so little by today`
          : `; of ${show('yearsCount')} seasons on record ${likeCount} had as little or less by today; ${likeCaughtCount === 0 ? 'none' : likeCaughtCount} of them caught up`
        : '';
    const steps =
      ahead === 'ahead'
        ? `The steps, each on its date, gain ${show('gainedDays')} of feed; each week that all of them wait costs ${show('weekLostDays')}`
        : `Done on their dates the steps would have gained ${show('gainedDays')} of feed`;
    return `${next} ${rain}${years}. ${steps}; a season whose rain stays at ${show('triggerPercent')} of normal is ${show('dryShortDays')} of feed short.`;
  },
  picture: {
    kind: 'spans',
    shownWhen: { ahead: 'ahead' },
    rows: 'plan',
    lane: 'step',
    from: { of: 'todayDay' },
    to: 'planDay',
    told: 'planDay',
    spanSays: 'days ahead',
    gapSays: '',
    mark: { at: 'nextDay', says: 'decide next' },
  },
  calendar: {
    rows: 'plan',
    day: 'planDay',
    title: ({ step }) => (step === 'look' ? stepWords.look : `Decide: ${stepWords[step].toLowerCase()}`),
    text: ({ step, countedFromDay, underIn, underDays }) => {
      const marks = `rain since ${printDay(countedFromDay)} below ${underIn.toFixed(1)} in, and grass standing for the whole herd below ${Math.round(underDays)} days`;
      return step === 'look'
        ? `Measure both, and write them down. These are short: ${marks}. If both are, get ready for the next step of the plan.`
        : `Do it if both are short: ${marks}. If only one is short, look again in two weeks.`;
    },
  },
  sources: [
    'ndsu-precipitation-2020',
    'newport-critical-rainfall-dates-2018',
    'anderson-g1705-2007',
    'wiles-2011',
    'ndmc-ranch-plan',
    'nrcs-g058cy500nd',
    'nrcs-colorado-curves',
    'kstate-meadowlark-2024',
    'sneva-hyder-1962',
    'clopper-pearson-1934',
    'jaeger-early-weaning',
  ],
  changes: [
    {
      version: 2,
      say: 'the season may run over New Year. A plan that ends before growth starts anew counts the growth before as past, where it counted none as grown.',
    },
    {
      version: 3,
      say: 'a fresh form, and “Sell ewes and lambs” chosen from the list, takes 6.4 lb a day as spared by each, what a ewe with lambs eats, no longer 3.5, about what a dry one eats.',
    },
  ],
  topic: 'ahead',
  order: 10,
  guides: ['deciding-in-time', 'pulling-stock-early', 'stocking-for-the-dry-year'],
});
