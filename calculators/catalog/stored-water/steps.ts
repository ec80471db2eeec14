import type { ValuesOf } from '../../kit/inputs.ts';
import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;
type StoredSteps = Working<ValuesOf<typeof inputs> & Results, Results>;

const byEquation = ({ organicCount }: { readonly organicCount: string }): boolean => organicCount === 'by-equation';

const layerSteps: StoredSteps = [
  when(byEquation, [
    lookup('organicNowIn', {
      says: 'A foot of soil of the top layer’s texture, at {organicPercent} of organic matter.',
      source: 'saxton-rawls-2006, eq. 1 to 18',
    }),
    lookup('organicThenIn', { says: 'The same at {topOrganicPercent}. Only the difference counts.', source: 'saxton-rawls-2006, eq. 1 to 18' }),
  ]),
  byCase('topAddedIn', {
    says: 'What the organic matter adds to a foot of the top layer.',
    source: 'nrcs-awc-1998, organic matter; saxton-rawls-2006',
    ways: [
      { when: byEquation, formula: tex`\q{organicNowIn} - \q{organicThenIn}` },
      {
        formula: tex`12 \times 0.015 \times (\q{organicPercent} - \q{topOrganicPercent})`,
        because: 'each percent adds 1.5 percent of the soil’s volume',
      },
    ],
  }),
  tabulate('lines', {
    says: 'Each layer: what a foot of it holds by the soil survey, or by its texture at the middle of the published figures; what roots reach; stones taken off; and how full it is by feel, at the middle of its class.',
    source: 'allen-1998, eq. 82, layer by layer',
    formulas: {
      footIn: tex`\q{listedIn} + \q{addedIn}`,
      reachedIn: tex`\max(0, \min(\q{thicknessIn}, \q{rootsMostIn} - \q{topIn}))`,
      layerHoldsIn: tex`\q{reachedIn} \times \frac{\q{footIn}}{12} \times (1 - \frac{\q{stonesPercent}}{100})`,
      layerHasIn: tex`\q{layerHoldsIn} \times \frac{\q{filledPercent}}{100}`,
      addedIn: [{ when: ({ topIn }) => topIn > 0, formula: '0', because: 'only the top layer is counted' }, { formula: tex`\q{topAddedIn}` }],
    },
    sums: { holdsIn: 'layerHoldsIn', hasIn: 'layerHasIn' },
  }),
  formula('missingIn', tex`\q{holdsIn} - \q{hasIn}`, { says: 'What is missing today.' }),
  formula('fullPercent', tex`\frac{\q{hasIn}}{\q{holdsIn}} \times 100`, { says: 'How full it is.' }),
];

const useSteps: StoredSteps = [
  when(
    ({ useFrom }) => useFrom === 'weather',
    [
      lookup('sunMj', { says: 'Sun above the air in the middle of {month}, {latitude}.', source: 'allen-1998, eq. 21' }),
      formula('highC', tex`(\q{highF} - 32) \times \frac{5}{9}`, { says: 'The equation is in degrees Celsius.' }),
      formula('lowC', tex`(\q{lowF} - 32) \times \frac{5}{9}`, { says: 'The night too.' }),
      formula(
        'referenceMm',
        tex`\max(0, 0.0023 \times (\frac{\q{highC} + \q{lowC}}{2} + 17.8) \times \sqrt{\q{highC} - \q{lowC}} \times 0.408 \times \q{sunMj})`,
        { says: 'What a well-watered short grass uses in such heat.', source: 'allen-1998, eq. 52' },
      ),
      lookup('coefficient', {
        says: 'A pasture against that grass.',
        source: 'allen-1998, table 12, grazing pasture; a good stand at the middle of 0.85 to 1.05',
      }),
    ],
  ),
  byCase('dayUseIn', {
    says: 'Water that the grass uses a day while it has enough.',
    ways: [
      { when: ({ useFrom }) => useFrom === 'known', formula: tex`\q{useInPerDay}` },
      { formula: tex`\frac{\q{coefficient} \times \q{referenceMm}}{25.4} \times \frac{\q{localPercent}}{100}` },
    ],
  }),
  byCase('takenPercent', {
    says: 'The share that grass takes before it slows.',
    source: 'allen-1998, chapter 8 and table 22',
    ways: [
      { when: ({ easyFrom }) => easyFrom === 'own', formula: tex`\q{easyPercent}`, because: 'your own share' },
      {
        formula: tex`\max(10, \min(80, 60 + 4 \times (5 - 25.4 \times \q{dayUseIn})))`,
        because: 'on a thirsty day grass feels the want of water sooner',
      },
    ],
  }),
];

const daySteps: StoredSteps = [
  formula('easyIn', tex`\frac{\q{takenPercent}}{100} \times \q{holdsIn}`, { says: 'That share, in inches.', source: 'allen-1998, eq. 83' }),
  formula('easyLeftIn', tex`\max(0, \q{easyIn} - \q{missingIn})`, { says: 'What is left of it today.' }),
  formula('slowLeftIn', tex`\q{hasIn} - \q{easyLeftIn}`, { says: 'The rest is held tight; grass gets it slowly.' }),
  {
    kind: 'check',
    says: 'Nothing is lost: easy, slow and missing are all that the root zone holds.',
    left: tex`\q{easyLeftIn} + \q{slowLeftIn} + \q{missingIn}`,
    right: tex`\q{holdsIn}`,
    because: 'each inch is counted once',
  },
  byCase('stressDays', {
    says: 'Days until grass slows, with no rain.',
    source: 'allen-1998, eq. 83 to 85',
    ways: [
      { when: ({ standing }) => standing === 'short', formula: '0', because: 'it is short of water already' },
      { formula: tex`\frac{\q{easyIn} - \q{missingIn}}{\q{dayUseIn}}` },
    ],
  }),
  formula('shareTodayPercent', tex`100 \times \min(1, \frac{\q{holdsIn} - \q{missingIn}}{\q{holdsIn} - \q{easyIn}})`, {
    says: 'Growth that the water allows today, against full growth.',
    source: 'allen-1998, eq. 84',
  }),
  formula('slowDays', tex`\frac{\q{holdsIn} - \q{easyIn}}{\q{dayUseIn}}`, {
    says: 'From there on grass uses less each day, so that the ground is never quite empty. How fast it slows.',
  }),
  byCase('growthDays', {
    says: 'Days until growth is down to {growthPercent} of what it would be, with no rain.',
    source: 'allen-1998, eq. 84 and 85, integrated over time',
    ways: [
      { when: ({ shareTodayPercent, growthPercent }) => shareTodayPercent <= growthPercent, formula: '0', because: 'it is there already' },
      { formula: tex`\q{stressDays} + \q{slowDays} \times \ln(\frac{\q{shareTodayPercent}}{\q{growthPercent}})` },
    ],
  }),
  lookup('lowStressDays', {
    says: 'The same sums at the dry end of what you felt and, where texture stands in, with the least of the published figures.',
    source: 'nrcs-feel-loam, classes; ucdavis-drought-awc, available water by texture',
  }),
  lookup('highStressDays', {
    says: 'And at the wet end, with the most.',
    source: 'nrcs-feel-loam, classes; ucdavis-drought-awc, available water by texture',
  }),
];

const rainSteps: StoredSteps = [
  formula('soakedIn', tex`\q{rainIn} \times (1 - \frac{\q{lostPercent}}{100})`, { says: 'Of a rain that falls today, what goes in.' }),
  formula('keptIn', tex`\min(\q{soakedIn}, \q{missingIn})`, { says: 'No more of it stays than is missing.' }),
  formula('drainedIn', tex`\q{soakedIn} - \q{keptIn}`, { says: 'The rest goes below the roots.' }),
  {
    kind: 'check',
    says: 'All of the rain is somewhere.',
    left: tex`\q{keptIn} + \q{drainedIn} + \q{rainIn} \times \frac{\q{lostPercent}}{100}`,
    right: tex`\q{rainIn}`,
    because: 'what stays, what drains and what never went in make up the rain',
  },
  formula('wetMissingIn', tex`\q{missingIn} - \q{keptIn}`, { says: 'Missing after the rain.' }),
  byCase('wetStressDays', {
    says: 'Days until grass slows, with that rain.',
    ways: [
      { when: ({ wetMissingIn, easyIn }) => wetMissingIn >= easyIn, formula: '0', because: 'it stays short of water' },
      { formula: tex`\frac{\q{easyIn} - \q{wetMissingIn}}{\q{dayUseIn}}` },
    ],
  }),
  formula('wetSharePercent', tex`100 \times \min(1, \frac{\q{holdsIn} - \q{wetMissingIn}}{\q{holdsIn} - \q{easyIn}})`, {
    says: 'Growth that the water allows after it.',
  }),
  byCase('wetGrowthDays', {
    says: 'Days until growth is down to {growthPercent}, with that rain.',
    ways: [
      { when: ({ wetSharePercent, growthPercent }) => wetSharePercent <= growthPercent, formula: '0', because: 'it stays below that' },
      { formula: tex`\q{wetStressDays} + \q{slowDays} \times \ln(\frac{\q{wetSharePercent}}{\q{growthPercent}})` },
    ],
  }),
];

const depthSteps: StoredSteps = [
  lookup('deeperStressDays', {
    says: 'The first sums over again with roots down to {deeperRootsIn}, the new ground as full as you felt it.',
    source: 'allen-1998, eq. 82 to 85',
  }),
  lookup('deepestGrowthDays', {
    says: 'And as if all roots went down to {deepestRootsIn}, which they don’t: the very most.',
    source: 'allen-1998, eq. 82 to 85',
  }),
];

export const steps: StoredSteps = [...layerSteps, ...useSteps, ...daySteps, ...rainSteps, ...depthSteps];
