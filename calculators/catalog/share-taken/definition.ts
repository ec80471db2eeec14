import { caution, defineCalculator } from '../../kit/define.ts';
import { amount, table, word } from '../../kit/quantities.ts';
import { ranged, shown } from '../../kit/shown.ts';
import { formula, lookup, tabulate, tex, when } from '../../kit/steps.ts';
import { compute, fewestPlants, takenGap } from './compute.ts';
import { inputs } from './inputs.ts';

const percent = (label: string, symbol: string) => amount(label, symbol, 'pct');
const count = (label: string, symbol: string, digits = 0) => amount(label, symbol, 'count', digits);
/** Among so many ruined plants a mean says little. Our own. */
const manyHardPercent = 25;

export default defineCalculator({
  slug: 'share-taken',
  version: 1,
  title: 'Share of the grass that was taken',
  inputs,
  refusals: [
    {
      at: 'noneCount',
      when: ({ noneCount, tenCount, thirtyCount, fiftyCount, seventyCount, ninetyCount }) =>
        noneCount + tenCount + thirtyCount + fiftyCount + seventyCount + ninetyCount === 0,
      say: 'No plant is counted yet. Walk, and tap how hard the nearest plant was bitten; or type the counts.',
    },
  ],
  compute,
}).describe({
  question: 'How much of the grass did they take?',
  lead: 'Sort the plants of one grass by how hard each was bitten. You get the share of its weight that is gone, how far the count can be off, and how many head-days would have been right.',
  searchWords:
    'utilization, percent use, grazed class, key species, key area, take half leave half, degree of use, grazing intensity, how much was eaten, permit monitoring, bitten plants, count grazed plants, percent of the grass used',
  first: ['noneCount', 'wantedPercent'],
  groups: [{ title: 'Head-days', inputs: ['knowsHeadDays', 'headDaysCount'], summary: '{knowsHeadDays}, {#headDaysCount} grazed' }],
  quantities: {
    enough: word('How much was taken?', { 'too-few': 'Too few plants to say', yes: 'Counted' }),
    takenPercent: percent('Share of the weight that was taken', 'u'),
    lowPercent: percent('Taken, low end', 'u_{low}'),
    highPercent: percent('Taken, high end', 'u_{high}'),
    stands: word('Against what you wanted', { under: 'No more than you wanted', open: 'This count can’t tell', over: 'More than you wanted' }),
    plantsCount: count('Plants', 'n'),
    productSum: count('Classes times plants, added up', 'S'),
    gapSum: count('Squared gaps, added up', 'G'),
    lines: table('Plants by class', ['classPercent', 'inClassCount', 'product'], {
      classPercent: percent('Taken of each', 'c'),
      inClassCount: count('Plants', 'k'),
      product: count('Class times plants', 'c k'),
      gaps: count('Plants times squared gap', 'g'),
    }),
    spreadPercent: { ...percent('Spread among plants (standard deviation)', 's'), digits: 1 },
    studentTimes: count('Student’s t', 't', 2),
    offPercent: { ...percent('The count can be off by', 'E'), digits: 1 },
    bittenPercent: percent('Plants that were bitten at all', 'b'),
    hardCount: count('Seven tenths gone or more', 'n_{70}'),
    lightCount: count('Bitten, less than half gone', 'n_{10}'),
    hardPercent: percent('Plants with seven tenths gone or more', 'h'),
    totalCount: count('Head-days that would have taken what you wanted, about', 'D', -1),
    leftCount: count('Head-days still to graze, about', 'D_{left}', -1),
    overCount: count('Head-days too many, about', 'D_{over}', -1),
  },
  results: [
    ranged('enough', ['lowPercent', 'highPercent'], {
      said: 'of this grass',
      short: '{low} to {high} may be gone',
      when: ({ enough }) => enough === 'too-few',
      says: ({ plantsCount }) =>
        plantsCount === 1
          ? 'the one plant so far lost {takenPercent}; it tells nothing of the others'
          : '{plantsCount} plants so far lost {takenPercent} on the whole; all of this grass may have lost {low} to {high} (95 in 100)',
    }),
    ranged('takenPercent', ['lowPercent', 'highPercent'], {
      said: 'of its weight taken',
      gap: ['less of its weight was taken', 'more of its weight was taken'],
      between: takenGap,
      short: '{low} to {high}, 95 times in 100',
      says: ({ plantsCount }) =>
        plantsCount === 1
          ? 'of one plant, which tells nothing of the others: {low} to {high}'
          : 'of {plantsCount} plants; a count like this can be off that far: {low} to {high} (95 in 100). Two people’s eyes can differ by ten points more',
    }),
    ranged('stands', ['lowPercent', 'highPercent'], {
      says: ({ stands, wantedPercent }) =>
        stands === 'open' ? `${wantedPercent} % lies within {low} to {high}` : `you wanted ${wantedPercent} % at most; this is {low} to {high}`,
    }),
    { of: 'hardPercent' },
    { of: 'bittenPercent' },
    { of: 'totalCount', when: ({ totalCount }) => totalCount > 0 },
    { of: 'leftCount', when: ({ leftCount }) => leftCount >= 5 },
    { of: 'overCount', when: ({ overCount }) => overCount >= 5 },
    shown('plantsCount', 'lines'),
  ],
  steps: [
    tabulate('lines', {
      says: 'Each class times the plants in it.',
      source: 'schmutz-1963, abstract',
      formulas: { product: tex`\q{classPercent} \times \q{inClassCount}`, gaps: tex`\q{inClassCount} (\q{classPercent} - \q{takenPercent})^2` },
      sums: { plantsCount: 'inClassCount', productSum: 'product', gapSum: 'gaps' },
    }),
    formula('takenPercent', tex`\frac{\q{productSum}}{\q{plantsCount}}`, {
      says: 'Their sum over all plants: the share that such a plant lost on the average.',
      source: 'schmutz-1963, abstract',
    }),
    when(
      ({ plantsCount }) => plantsCount > 1,
      [
        formula('spreadPercent', tex`\sqrt{\frac{\q{gapSum}}{\q{plantsCount} - 1}}`, {
          says: 'How far plants stand from that average, on the whole.',
          source: 'missouri-sample-size, standard deviation',
        }),
        lookup('studentTimes', { says: 'Student’s t for {plantsCount} plants, 95 percent.', source: 'nist-sematech-handbook, table of t' }),
        formula('offPercent', tex`\frac{\q{studentTimes} \times \q{spreadPercent}}{\sqrt{\q{plantsCount}}}`, {
          says: 'How far the average of so many plants can be off by chance.',
          source: 'missouri-sample-size, error for a given number of samples',
        }),
        formula('lowPercent', tex`\max(0, \q{takenPercent} - \q{offPercent})`, { says: 'The low end.' }),
        formula('highPercent', tex`\min(100, \q{takenPercent} + \q{offPercent})`, { says: 'The high end.' }),
      ],
    ),
    when(
      ({ plantsCount }) => plantsCount === 1,
      [
        lookup('lowPercent', { says: 'One plant tells nothing of the others, so the low end is nothing taken.', source: 'our own' }),
        lookup('highPercent', { says: 'And the high end is all of it.', source: 'our own' }),
      ],
    ),
    lookup('stands', {
      says: 'Over what you wanted only if the low end is; no more than it only if the high end is not. Between, the count can’t tell.',
      source: 'our own',
    }),
    formula('hardPercent', tex`\frac{100 (\q{seventyCount} + \q{ninetyCount})}{\q{plantsCount}}`, {
      says: 'Plants that lost seven tenths or more, of all.',
    }),
    formula('bittenPercent', tex`\frac{100 (\q{plantsCount} - \q{noneCount})}{\q{plantsCount}}`, { says: 'Plants with any bite, of all.' }),
    when(
      ({ totalCount }) => totalCount > 0,
      [
        formula('totalCount', tex`\frac{\q{headDaysCount} \times \q{wantedPercent}}{\q{takenPercent}}`, {
          says: 'If each head-day takes as much as the last did. It is rough: stock take the best first.',
          source: 'schmutz-1963, abstract',
        }),
        formula('leftCount', tex`\max(0, \q{totalCount} - \q{headDaysCount})`, { says: 'Less those that were grazed.' }),
        formula('overCount', tex`\max(0, \q{headDaysCount} - \q{totalCount})`, { says: 'Or how many there were too many.' }),
      ],
    ),
  ],
  cautions: [
    caution(({ stands }) => stands === 'over', {
      lead: 'More is gone than you wanted: let it grow back before the next bite.',
      say: 'More of this grass is gone than you wanted, even at the low end of the range. Let it grow back to the height where grazing starts before it is grazed again. In a drought that may be next year.',
      source: 'common practice',
    }),
    caution(({ plantsCount }) => plantsCount < fewestPlants, {
      lead: 'Fewer than twenty plants: keep going, the range is still wide.',
      say: 'Fewer than twenty plants. The method was printed with 20, 25, 50 or 100; keep going.',
      source: 'schmutz-1963, abstract',
    }),
    caution(({ hardPercent, stands }) => hardPercent >= manyHardPercent && stands !== 'over', {
      lead: 'A quarter or more of the plants are bitten hard. The average hides it.',
      say: 'A quarter or more of the plants lost seven tenths of their weight or over. Untouched plants and ruined ones make a fair average and a sick pasture. Look at where they stand.',
      source: 'our own',
    }),
    caution(({ wantedPercent }) => wantedPercent > 50, {
      lead: 'More than half is over the old rule for range.',
      say: '“Take half and leave half” is the old rule for range, and in a drought half is the most and not the goal. Some tame grass stands more. Look up the stubble that yours needs.',
      source: 'common practice',
    }),
    caution(() => true, {
      lead: 'Look up at every turn: with your eyes on plants you won’t see the bull.',
      life: true,
      say: 'With your eyes on plants you won’t see the bull, nor the cow with a young calf. Look up at every turn, and watch for holes and snakes.',
      source: 'common practice',
    }),
  ],
  limits: [
    'Classes are judged by eye and mean weight, not height. Clip and weigh some plants before you count; compare photo guides with your own plants, and don’t trust them in a poor growth year.',
    'It speaks for one grass on the line that you walked. The pasture has others, and ground near water is always bitten harder.',
    'If grass grows back after the bite, the share looks smaller than it was. Count when stock leave.',
    'Taken is not eaten: part of what is missing was trampled.',
    'One percent at the end of a season says nothing of when it was taken, nor of how long the plants rested. Set days grazed and days of rest beside it.',
    'A lease or a permit may name its own method and its own limit. Then those count.',
  ],
  note: ({ stands, enough, plantsCount, totalCount, leftCount, overCount }, show) => {
    const few = enough === 'too-few' ? ' So few plants give no more than a hint.' : '';
    const against = { under: 'no more than wanted', open: 'this count can’t tell if that is over', over: 'more than wanted' }[stands];
    const more =
      leftCount >= 5
        ? `, some ${show('leftCount')} more than were grazed`
        : overCount >= 5
          ? `, some ${show('overCount')} fewer than were grazed`
          : '';
    const days = totalCount > 0 ? ` Some ${show('totalCount')} head-days would have taken what was wanted${more}; that is rough.` : '';
    // One plant tells nothing of the others, so nothing is set against what was wanted.
    if (plantsCount === 1) return `One plant of one grass: ${show('takenPercent')} of its weight was taken. It tells nothing of the others.${days}`;
    return `${show('plantsCount')} plants of one grass: ${show('takenPercent')} of its weight was taken (${show('lowPercent')} to ${show('highPercent')}, 95 in 100, and the eye’s own error), ${show('hardPercent')} of the plants seven tenths or more. Wanted at most: ${show('wantedPercent')}; ${against}.${few}${days}`;
  },
  picture: {
    kind: 'shares',
    whole: 'plantsCount',
    parts: [
      { of: 'noneCount', tone: 'kept', says: 'not bitten' },
      { of: 'lightCount', tone: 'lines', says: 'bitten, less than half gone' },
      { of: 'fiftyCount', tone: 'dots', says: 'about half gone' },
      { of: 'hardCount', tone: 'lost', says: 'seven tenths gone or more' },
    ],
  },
  sources: [
    'schmutz-1963',
    'missouri-sample-size',
    'nist-sematech-handbook',
    'landscape-toolbox-grazed-class',
    'laycock-1972',
    'hudson-utilization-2017',
  ],
  topic: 'grass',
  order: 15,
  guides: ['telling-how-much-was-taken'],
});
