import { amount, day, table, word } from '../../kit/quantities.ts';
import { stepWords } from './inputs.ts';

const percent = (label: string, symbol: string) => amount(label, symbol, 'pct');
const inches = (label: string, symbol: string, digits = 1) => amount(label, symbol, 'in', digits);
const days = (label: string, symbol: string, digits = 0) => amount(label, symbol, 'd', digits);
const count = (label: string, symbol: string) => amount(label, symbol, 'count');
const step = (label: string) => word(label, stepWords);

export const quantities = {
  nextDay: day('Next date to decide'),
  ahead: word('Dates to decide by', { ahead: 'Ahead of you', past: 'All dates are past' }),
  nextStep: step('If it is too dry by then'),
  sinceDay: day('Rain is counted from'),
  yearsCount: count('Whole seasons in the record', 'N'),
  seasonNormalIn: inches('Normal rain from then to the last day of grazing', 'S'),
  normalSoFarIn: inches('Normal rain by today', 'N_0'),
  soFarPercent: percent('Rain so far, of normal', 'p'),
  soFarTriggerIn: inches('Too dry by today means under', 'T_0', 2),
  rainSays: word('The rain so far', {
    under: 'is under the trigger: measure the grass now',
    over: 'is over the trigger',
    'not-begun': 'is not counted yet: it begins on the day below',
    'too-early': 'can’t tell yet: none is usual by today',
  }),
  likeCount: count('Years with as little rain or less by today', 'n_0'),
  likeCaughtCount: count('Of those, years that caught up by the end', 'k_0'),
  likeLowPercent: percent('Share that catches up, at least', 'q_l'),
  likeHighPercent: percent('Share that catches up, at most', 'q_h'),
  endPercent: percent('Growth that comes by the last day of grazing', 'c_e'),
  dryPercent: percent('Grass of a season whose rain stays at the trigger, share of normal', 'y'),
  otherDryPercent: percent('Grass of such a season by the other rule', 'y_o'),
  dryShortDays: days('Feed short, if rain stays at the trigger to the end', 'L'),
  dates: table('Act when rain and feed are both below', ['day', 'grownPercent', 'triggerIn', 'needDays', 'cageLbPerAc'], {
    day: day('Date'),
    grownPercent: percent('Growth past', 'c'),
    normalIn: inches('Normal rain by then', 'N'),
    triggerIn: inches('Rain below', 'T'),
    cageLbPerAc: amount('Caged spot below', 'G', 'lb/ac', -2),
    leftDays: days('Days to the last one', 't'),
    comesPercent: percent('Growth still to come', 'r'),
    needDays: days('Feed below', 'H'),
    bestPercent: percent('Year’s grass at best', 'b'),
    bestShortDays: days('Feed short at best', 'L_b'),
  }),
  best: table('So dry by then, and all normal after', {
    bestDay: day('Date'),
    bestYearPercent: percent('Year’s grass at best', 'b'),
    bestYearDays: days('Feed short at best', 'L_b'),
  }),
  odds: table('So dry by then: what the record says', {
    oddsDay: day('Date'),
    dryCount: count('Years as dry by then', 'n'),
    dryCaughtCount: count('Of those, caught up', 'k'),
    madeUpCount: count('Of all, rain enough after it', 'm'),
    atBestDays: days('Feed short at best', 'L_b'),
  }),
  totalSaveLbPerDay: amount('All steps spare a day', 'A', 'lb/d'),
  remainLbPerDay: amount('Those that stay eat a day', 'D_r', 'lb/d'),
  plan: table('The steps and what they gain', ['planDay', 'step', 'goHead', 'gainDays', 'weekDays'], {
    planDay: day('Date'),
    step: step('Step'),
    goHead: amount('Head', 'n', 'head'),
    spareLbPerDay: amount('Each spares a day', 'e', 'lb/d', 1),
    boughtTon: amount('Hay', 'h', 'ton', 1),
    planLeftDays: days('Days to the last one', 't'),
    saveLbPerDay: amount('Spared a day', 'a', 'lb/d'),
    savedLb: amount('Spared in all', 'a_t', 'lb', -2),
    gainDays: days('Feed gained', 'g'),
    weekDays: days('A week of waiting costs', 'w', 1),
    countedFromDay: day('Rain counted from'),
    underIn: inches('Rain below', 'T'),
    underDays: days('Feed below', 'H'),
  }),
  gainedDays: days('All steps, each on its date, gain', 'g_t'),
  weekLostDays: days('Each week that all of them wait costs', 'w_t', 1),
  stillShortDays: days('Feed still short after them, if rain stays at the trigger', 'L_s'),
  season: table('The season in a normal year', {
    monthDay: day('By the end of'),
    grassPercent: percent('Growth past', 'c'),
    rainPercent: percent('Rain past', 'R'),
  }),
} as const;
