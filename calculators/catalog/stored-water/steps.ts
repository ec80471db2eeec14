import type { ValuesOf } from '../../kit/inputs.ts';
import type { Step } from '../../kit/steps.ts';
import type { compute } from './compute.ts';
import type { inputs } from './inputs.ts';

type Results = ReturnType<typeof compute>;
type StoredStep = Step<ValuesOf<typeof inputs> & Results, Results>;

const byEquation = ({ organicCount }: { readonly organicCount: string }): boolean => organicCount === 'by-equation';

const layerSteps: readonly StoredStep[] = [
  {
    kind: 'lookup',
    shows: 'organicNowIn',
    onlyWhen: byEquation,
    says: 'A foot of soil of the top layer’s texture, at {organicPercent} of organic matter.',
    source: 'saxton-rawls-2006, eq. 1 to 18',
  },
  {
    kind: 'lookup',
    shows: 'organicThenIn',
    onlyWhen: byEquation,
    says: 'The same at {topOrganicPercent}. Only the difference counts.',
    source: 'saxton-rawls-2006, eq. 1 to 18',
  },
  {
    kind: 'formula',
    shows: 'topAddedIn',
    says: 'What the organic matter adds to a foot of the top layer.',
    source: 'nrcs-awc-1998, organic matter; saxton-rawls-2006',
    ways: [
      { when: byEquation, formula: String.raw`\q{organicNowIn} - \q{organicThenIn}` },
      {
        formula: String.raw`12 \times 0.015 \times (\q{organicPercent} - \q{topOrganicPercent})`,
        because: 'each percent adds 1.5 percent of the soil’s volume',
      },
    ],
  },
  {
    kind: 'rows',
    of: 'lines',
    says: 'Each layer: what a foot of it holds by the soil survey, or by its texture at the middle of the published figures; what roots reach; stones taken off; and how full it is by feel, at the middle of its class.',
    source: 'allen-1998, eq. 82, layer by layer',
    formulas: {
      footIn: String.raw`\q{listedIn} + \q{addedIn}`,
      reachedIn: String.raw`\max(0, \min(\q{thicknessIn}, \q{rootsMostIn} - \q{topIn}))`,
      layerHoldsIn: String.raw`\q{reachedIn} \times \frac{\q{footIn}}{12} \times (1 - \frac{\q{stonesPercent}}{100})`,
      layerHasIn: String.raw`\q{layerHoldsIn} \times \frac{\q{filledPercent}}{100}`,
      addedIn: [{ when: ({ topIn }) => topIn > 0, formula: '0', because: 'only the top layer is counted' }, { formula: String.raw`\q{topAddedIn}` }],
    },
    sums: { holdsIn: 'layerHoldsIn', hasIn: 'layerHasIn' },
  },
  {
    kind: 'formula',
    shows: 'missingIn',
    says: 'What is missing today.',
    ways: [{ formula: String.raw`\q{holdsIn} - \q{hasIn}` }],
  },
  { kind: 'formula', shows: 'fullPercent', says: 'How full it is.', ways: [{ formula: String.raw`\frac{\q{hasIn}}{\q{holdsIn}} \times 100` }] },
];

const useSteps: readonly StoredStep[] = [
  {
    kind: 'lookup',
    shows: 'sunMj',
    onlyWhen: ({ useFrom }) => useFrom === 'weather',
    says: 'Sun above the air in the middle of {month}, {latitude}.',
    source: 'allen-1998, eq. 21',
  },
  {
    kind: 'formula',
    shows: 'highC',
    onlyWhen: ({ useFrom }) => useFrom === 'weather',
    says: 'The equation is in degrees Celsius.',
    ways: [{ formula: String.raw`(\q{highF} - 32) \times \frac{5}{9}` }],
  },
  {
    kind: 'formula',
    shows: 'lowC',
    onlyWhen: ({ useFrom }) => useFrom === 'weather',
    says: 'The night too.',
    ways: [{ formula: String.raw`(\q{lowF} - 32) \times \frac{5}{9}` }],
  },
  {
    kind: 'formula',
    shows: 'referenceMm',
    onlyWhen: ({ useFrom }) => useFrom === 'weather',
    says: 'What a well-watered short grass uses in such heat.',
    source: 'allen-1998, eq. 52',
    ways: [
      {
        formula: String.raw`\max(0, 0.0023 \times (\frac{\q{highC} + \q{lowC}}{2} + 17.8) \times \sqrt{\q{highC} - \q{lowC}} \times 0.408 \times \q{sunMj})`,
      },
    ],
  },
  {
    kind: 'lookup',
    shows: 'coefficient',
    onlyWhen: ({ useFrom }) => useFrom === 'weather',
    says: 'A pasture against that grass.',
    source: 'allen-1998, table 12, grazing pasture; a good stand at the middle of 0.85 to 1.05',
  },
  {
    kind: 'formula',
    shows: 'dayUseIn',
    says: 'Water that the grass uses a day while it has enough.',
    ways: [
      { when: ({ useFrom }) => useFrom === 'known', formula: String.raw`\q{useInPerDay}` },
      { formula: String.raw`\frac{\q{coefficient} \times \q{referenceMm}}{25.4} \times \frac{\q{localPercent}}{100}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'takenPercent',
    says: 'The share that grass takes before it slows.',
    source: 'allen-1998, chapter 8 and table 22',
    ways: [
      { when: ({ easyFrom }) => easyFrom === 'own', formula: String.raw`\q{easyPercent}`, because: 'your own share' },
      {
        formula: String.raw`\max(10, \min(80, 60 + 4 \times (5 - 25.4 \times \q{dayUseIn})))`,
        because: 'on a thirsty day grass feels the want of water sooner',
      },
    ],
  },
];

const daySteps: readonly StoredStep[] = [
  {
    kind: 'formula',
    shows: 'easyIn',
    says: 'That share, in inches.',
    source: 'allen-1998, eq. 83',
    ways: [{ formula: String.raw`\frac{\q{takenPercent}}{100} \times \q{holdsIn}` }],
  },
  {
    kind: 'formula',
    shows: 'easyLeftIn',
    says: 'What is left of it today.',
    ways: [{ formula: String.raw`\max(0, \q{easyIn} - \q{missingIn})` }],
  },
  {
    kind: 'formula',
    shows: 'slowLeftIn',
    says: 'The rest is held tight; grass gets it slowly.',
    ways: [{ formula: String.raw`\q{hasIn} - \q{easyLeftIn}` }],
  },
  {
    kind: 'check',
    says: 'Nothing is lost: easy, slow and missing are all that the root zone holds.',
    left: String.raw`\q{easyLeftIn} + \q{slowLeftIn} + \q{missingIn}`,
    right: String.raw`\q{holdsIn}`,
    because: 'each inch is counted once',
  },
  {
    kind: 'formula',
    shows: 'stressDays',
    says: 'Days until grass slows, with no rain.',
    source: 'allen-1998, eq. 83 to 85',
    ways: [
      { when: ({ standing }) => standing === 'short', formula: '0', because: 'it is short of water already' },
      { formula: String.raw`\frac{\q{easyIn} - \q{missingIn}}{\q{dayUseIn}}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'shareTodayPercent',
    says: 'Growth that the water allows today, against full growth.',
    source: 'allen-1998, eq. 84',
    ways: [{ formula: String.raw`100 \times \min(1, \frac{\q{holdsIn} - \q{missingIn}}{\q{holdsIn} - \q{easyIn}})` }],
  },
  {
    kind: 'formula',
    shows: 'slowDays',
    says: 'From there on grass uses less each day, so that the ground is never quite empty. How fast it slows.',
    ways: [{ formula: String.raw`\frac{\q{holdsIn} - \q{easyIn}}{\q{dayUseIn}}` }],
  },
  {
    kind: 'formula',
    shows: 'growthDays',
    says: 'Days until growth is down to {growthPercent} of what it would be, with no rain.',
    source: 'allen-1998, eq. 84 and 85, integrated over time',
    ways: [
      { when: ({ shareTodayPercent, growthPercent }) => shareTodayPercent <= growthPercent, formula: '0', because: 'it is there already' },
      { formula: String.raw`\q{stressDays} + \q{slowDays} \times \ln(\frac{\q{shareTodayPercent}}{\q{growthPercent}})` },
    ],
  },
  {
    kind: 'lookup',
    shows: 'lowStressDays',
    says: 'The same sums at the dry end of what you felt and, where texture stands in, with the least of the published figures.',
    source: 'nrcs-feel-loam, classes; ucdavis-drought-awc, available water by texture',
  },
  {
    kind: 'lookup',
    shows: 'highStressDays',
    says: 'And at the wet end, with the most.',
    source: 'nrcs-feel-loam, classes; ucdavis-drought-awc, available water by texture',
  },
];

const rainSteps: readonly StoredStep[] = [
  {
    kind: 'formula',
    shows: 'soakedIn',
    says: 'Of a rain that falls today, what goes in.',
    ways: [{ formula: String.raw`\q{rainIn} \times (1 - \frac{\q{lostPercent}}{100})` }],
  },
  {
    kind: 'formula',
    shows: 'keptIn',
    says: 'No more of it stays than is missing.',
    ways: [{ formula: String.raw`\min(\q{soakedIn}, \q{missingIn})` }],
  },
  { kind: 'formula', shows: 'drainedIn', says: 'The rest goes below the roots.', ways: [{ formula: String.raw`\q{soakedIn} - \q{keptIn}` }] },
  {
    kind: 'check',
    says: 'All of the rain is somewhere.',
    left: String.raw`\q{keptIn} + \q{drainedIn} + \q{rainIn} \times \frac{\q{lostPercent}}{100}`,
    right: String.raw`\q{rainIn}`,
    because: 'what stays, what drains and what never went in make up the rain',
  },
  { kind: 'formula', shows: 'wetMissingIn', says: 'Missing after the rain.', ways: [{ formula: String.raw`\q{missingIn} - \q{keptIn}` }] },
  {
    kind: 'formula',
    shows: 'wetStressDays',
    says: 'Days until grass slows, with that rain.',
    ways: [
      { when: ({ wetMissingIn, easyIn }) => wetMissingIn >= easyIn, formula: '0', because: 'it stays short of water' },
      { formula: String.raw`\frac{\q{easyIn} - \q{wetMissingIn}}{\q{dayUseIn}}` },
    ],
  },
  {
    kind: 'formula',
    shows: 'wetSharePercent',
    says: 'Growth that the water allows after it.',
    ways: [{ formula: String.raw`100 \times \min(1, \frac{\q{holdsIn} - \q{wetMissingIn}}{\q{holdsIn} - \q{easyIn}})` }],
  },
  {
    kind: 'formula',
    shows: 'wetGrowthDays',
    says: 'Days until growth is down to {growthPercent}, with that rain.',
    ways: [
      { when: ({ wetSharePercent, growthPercent }) => wetSharePercent <= growthPercent, formula: '0', because: 'it stays below that' },
      { formula: String.raw`\q{wetStressDays} + \q{slowDays} \times \ln(\frac{\q{wetSharePercent}}{\q{growthPercent}})` },
    ],
  },
];

const depthSteps: readonly StoredStep[] = [
  {
    kind: 'lookup',
    shows: 'deeperStressDays',
    says: 'The first sums over again with roots down to {deeperRootsIn}, the new ground as full as you felt it.',
    source: 'allen-1998, eq. 82 to 85',
  },
  {
    kind: 'lookup',
    shows: 'deepestGrowthDays',
    says: 'And as if all roots went down to {deepestRootsIn}, which they don’t: the very most.',
    source: 'allen-1998, eq. 82 to 85',
  },
];

export const steps: readonly StoredStep[] = [...layerSteps, ...useSteps, ...daySteps, ...rainSteps, ...depthSteps];
