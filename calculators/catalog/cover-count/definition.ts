import { caution, defineCalculator } from '../../kit/define.ts';
import { amount, word } from '../../kit/quantities.ts';
import { ranged, shown } from '../../kit/shown.ts';
import { byCase, formula, lookup, tabulate, tex, when } from '../../kit/steps.ts';
import { compute, coveredGap } from './compute.ts';
import { inputs } from './inputs.ts';

const percent = (label: string, symbol: string) => amount(label, symbol, 'pct');
const count = (label: string, symbol: string, digits = 0) => amount(label, symbol, 'count', digits);
/** From fewer steps neither a share nor a class is told. */
const isEnough = ({ enough }: { readonly enough: string }): boolean => enough === 'yes';
/** By the notes of table 2-2c; its word for grazing between heavy and light has no class above fair. */
const fairAtBest = 'with about half left it is fair at best: good takes light grazing or rest';
const classes = { poor: 'Poor', fair: 'Fair', good: 'Good' };

export default defineCalculator({
  slug: 'cover-count',
  version: 1,
  title: 'Ground cover from a hundred steps',
  inputs,
  refusals: [
    {
      at: 'bareCount',
      when: ({ plantCount, litterCount, rockCount, bareCount }) => plantCount + litterCount + rockCount + bareCount === 0,
      say: 'Nothing is counted yet. Walk, and tap what lies at the toe of your boot; or type the counts.',
    },
  ],
  compute,
}).describe({
  question: 'How much of the ground is covered?',
  lead: 'Walk a hundred steps, tap what lies at your toe each time, and read how much of the ground is covered and how far the count can be off.',
  searchWords:
    'bare ground, step point, pace transect, boot tip, line transect, residue cover, plant base, basal cover, litter, hydrologic condition, pasture monitoring',
  first: ['plantCount'],
  groups: [{ title: 'The pasture', inputs: ['country', 'grazing'], summary: '{country}, {grazing}' }],
  compares: { as: 'share', movedBy: ['season', 'hands'], points: 'stepsCount', misses: 'bareCount' },
  quantities: {
    coveredPercent: percent('Ground covered: plants, litter and rock', 'G'),
    coveredLowPercent: percent('Covered, low end', 'G_{low}'),
    coveredHighPercent: percent('Covered, high end', 'G_{high}'),
    sodPercent: percent('Plants and litter alone, for storm runoff', 'p'),
    sodLowPercent: percent('Plants and litter, low end', 'p_{low}'),
    sodHighPercent: percent('Plants and litter, high end', 'p_{high}'),
    stepsCount: count('Steps', 'n'),
    enough: word('How much of the ground is covered?', { 'too-few': 'Too few steps to say', yes: 'Counted' }),
    poorBelowPercent: percent('Poor below', 'L_1'),
    goodAbovePercent: percent('Good above', 'L_2'),
    condition: word('Class for storm runoff (hydrologic condition)', classes),
    standing: word('What the count allows', {
      ...classes,
      'poor-or-fair': 'Poor or fair',
      'fair-or-good': 'Fair or good',
      any: 'Poor, fair or good',
    }),
    limitPercent: percent('Nearest class limit', 'L'),
    distancePercent: { ...percent('From it', 'D'), digits: 1 },
    settles: word('Does this count settle the class?', {
      settled: 'Yes',
      'more-steps': 'No: the range holds a class limit',
      'at-limit': 'No, and no count worth walking would: it is too near a class limit',
    }),
    wantedCount: count('Steps in all that would settle it', 'N', -1),
    moreCount: count('More steps that would settle it, about', 'm', -1),
    kinds: {
      kind: 'rows',
      label: 'What the steps met',
      addsUp: ['sharePercent'],
      columns: {
        ground: word('At the toe', { plant: 'Plant base', litter: 'Litter', rock: 'Rock', bare: 'Bare soil' }),
        hitCount: count('Steps', 'k'),
        sharePercent: percent('Share', 'q'),
        fromPercent: percent('From', 'q_{low}'),
        toPercent: percent('To', 'q_{high}'),
      },
    },
  },
  results: [
    ranged('enough', ['coveredLowPercent', 'coveredHighPercent'], {
      said: 'what is covered',
      short: '{low} to {high} may be covered',
      when: ({ enough }) => enough === 'too-few',
      says: ({ stepsCount }) =>
        `${stepsCount === 1 ? 'the one step' : '{coveredPercent} of {stepsCount} steps'} so far met cover; the ground itself may be {low} to {high} covered (95 in 100)`,
    }),
    ranged('coveredPercent', ['coveredLowPercent', 'coveredHighPercent'], {
      said: 'of the ground covered',
      gap: ['less of that ground covered', 'more of that ground covered'],
      between: coveredGap,
      short: '{low} to {high}, 95 times in 100',
      says: ({ stepsCount }) =>
        stepsCount < 100
          ? 'of only {stepsCount} steps; the ground itself may be {low} to {high} covered (95 in 100)'
          : 'of {stepsCount} steps; a count like this can be off that far: {low} to {high} (95 in 100)',
    }),
    ranged('sodPercent', ['sodLowPercent', 'sodHighPercent'], { says: '{low} to {high}; rock sheds rain, so it is left out here' }),
    ranged('condition', ['sodLowPercent', 'sodHighPercent'], {
      when: isEnough,
      says: ({ grazing, settles, poorBelowPercent, goodAbovePercent, sodHighPercent, limitPercent, standing }) => {
        if (grazing === 'heavy') return 'ground grazed hard with no litter is poor, whatever the count';
        if (grazing === 'moderate' && settles === 'settled' && sodHighPercent > goodAbovePercent)
          return `{low} to {high}; ${fairAtBest}, above ${goodAbovePercent} % too`;
        if (settles === 'settled') return `{low} to {high} lies in this class (poor below ${poorBelowPercent} %, good above ${goodAbovePercent} %)`;
        if (standing === 'any') return `{low} to {high} holds both limits, ${poorBelowPercent} and ${goodAbovePercent} %: the class is open`;
        const both = standing === 'poor-or-fair' ? 'poor or fair' : 'fair or good';
        return `{low} to {high} holds the limit at ${limitPercent} %: ${both}; try both on the storm page`;
      },
    }),
    { of: 'settles', when: isEnough },
    // Short of a hundred steps the rule is to go on; a number from so few would be a guess.
    { of: 'moreCount', when: ({ settles, stepsCount, moreCount }) => settles === 'more-steps' && stepsCount >= 100 && moreCount >= 5 },
    shown('stepsCount', 'kinds'),
  ],
  steps: [
    formula('stepsCount', tex`\q{plantCount} + \q{litterCount} + \q{rockCount} + \q{bareCount}`, { says: 'All steps.' }),
    tabulate('kinds', {
      says: 'Each kind as a share of all steps, and how far off chance can put it: from and to by the exact binomial interval.',
      source: 'coulloudon-1999, step-point method',
      formulas: { sharePercent: tex`\frac{100 \q{hitCount}}{\q{stepsCount}}` },
    }),
    formula('coveredPercent', tex`\frac{100 (\q{plantCount} + \q{litterCount} + \q{rockCount})}{\q{stepsCount}}`, {
      says: 'Covered is all that is not bare soil. Rock counts: a drop that strikes it loosens no soil.',
      source: 'coulloudon-1999, ground cover',
    }),
    formula('sodPercent', tex`\frac{100 (\q{plantCount} + \q{litterCount})}{\q{stepsCount}}`, {
      says: 'Plants and litter alone. Rock holds no water back, so the class for storm runoff depends on these.',
      source: 'tr55-1986, notes of table 2-2d',
    }),
    lookup('sodLowPercent', {
      says: 'With true cover of {sodLowPercent}, one count in forty would come out as high as this one.',
      source: 'clopper-pearson-1934, p. 404',
    }),
    lookup('sodHighPercent', { says: 'With {sodHighPercent}, one in forty would come out as low.', source: 'clopper-pearson-1934, p. 404' }),
    lookup('condition', {
      says: 'The class, from plants and litter and from how it is grazed: poor below {poorBelowPercent} or when grazed hard; good above {goodAbovePercent} when grazed lightly or rested; fair between.',
      source: 'tr55-1986, notes of tables 2-2c and 2-2d',
    }),
    when(
      ({ settles }) => settles === 'more-steps',
      [
        byCase('distancePercent', {
          says: 'How far the count is from the nearest class limit.',
          ways: [
            { when: ({ sodPercent, limitPercent }) => sodPercent >= limitPercent, formula: tex`\q{sodPercent} - \q{limitPercent}` },
            { formula: tex`\q{limitPercent} - \q{sodPercent}` },
          ],
        }),
        formula(
          'wantedCount',
          tex`(\frac{1.96 \sqrt{\q{limitPercent} (100 - \q{limitPercent})} + \sqrt{1.96^2 \q{limitPercent} (100 - \q{limitPercent}) + 200 \q{distancePercent}}}{2 \q{distancePercent}})^2`,
          {
            says: 'Steps in all after which the same share would stand clear of that limit. 1.96 stands for 95 in 100.',
            source: 'fleiss-2003, sample size for one proportion (from memory)',
          },
        ),
        formula('moreCount', tex`\max(0, \q{wantedCount} - \q{stepsCount})`, { says: 'Less the steps that are done.' }),
      ],
    ),
  ],
  cautions: [
    caution(({ stepsCount }) => stepsCount < 100, {
      lead: 'Fewer than a hundred steps: keep going, the range is still wide.',
      say: 'Fewer than a hundred steps. Keep going; the range is still wide.',
      source: 'missouri-g1570, 100 points',
    }),
    caution(({ grazing, kinds }) => grazing === 'heavy' && kinds.some(({ ground, sharePercent }) => ground === 'litter' && sharePercent >= 10), {
      lead: 'You met litter, so “grazed hard” may be the wrong answer.',
      say: 'You met litter, but “grazed hard” here means that none is left. If about half of the growth stands, choose that answer; the class may change.',
      source: 'tr55-1986, notes of table 2-2c',
    }),
    caution(() => true, {
      lead: 'Look up at every turn: watching your boots, you won’t see the bull.',
      life: true,
      say: 'Watching your boots, you won’t see the bull. Look up at every turn, and watch for holes and snakes.',
      source: 'common practice',
    }),
  ],
  limits: [
    'The range holds for steps that fall by chance. Ground changes in patches, so a count on one line can be further off; three lines or more come nearer.',
    'Two counts of a hundred steps, of the same ground on the same day, can differ by 14 points by chance. A smaller change between two visits says nothing yet.',
    'Cover changes with the season and the grazing. Compare visits at the same time of year, after the same rest, counted by the same person.',
    'Leaves above bare soil are not counted, though they soften rain. The soil-loss page asks for them apart; the lists for dry range count brush overhead as cover too.',
    'With bunch grass the boot meets large plants too often and small ones too seldom.',
  ],
  note: ({ settles, grazing, stepsCount, enough, condition, sodHighPercent, goodAbovePercent }, show) => {
    const open = settles === 'settled' ? '' : `, not settled by this count (${show('standing').toLowerCase()})`;
    const hard = grazing === 'heavy' ? ', grazed hard' : '';
    const best = grazing === 'moderate' && condition === 'fair' && sodHighPercent > goodAbovePercent ? `; ${fairAtBest}` : '';
    const told = enough === 'yes' ? ` Class for storm runoff${hard}: ${show('condition').toLowerCase()}${open}${best}.` : '';
    const few = enough === 'too-few' ? 'Only ' : '';
    const short = enough === 'too-few' ? ', too few to go by' : '';
    return `${few}${show('stepsCount')} ${stepsCount === 1 ? 'step' : 'steps'}${short}: ${show('plantCount')} on plant bases, ${show('litterCount')} on litter, ${show('rockCount')} on rock, ${show('bareCount')} on bare soil. ${show('coveredPercent')} of these steps met cover; the ground is ${show('coveredLowPercent')} to ${show('coveredHighPercent')} covered (95 in 100).${told}`;
  },
  picture: {
    kind: 'face',
    counts: { plant: 'plantCount', litter: 'litterCount', rock: 'rockCount', bare: 'bareCount', all: 'stepsCount', coveredPercent: 'coveredPercent' },
  },
  sources: ['coulloudon-1999', 'missouri-g1570', 'clopper-pearson-1934', 'tr55-1986', 'fleiss-2003', 'newcombe-1998-difference', 'strauss-neal-1983'],
  topic: 'tailgate',
  order: 40,
  guides: ['reading-a-pasture', 'where-rain-goes'],
});
