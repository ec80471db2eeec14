import { caution, defineCalculator } from '../../kit/define.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { ranged, shownWhen } from '../../kit/shown.ts';
import { printNumber } from '../../units/printQuantity.ts';
import { refusals } from './cautions.ts';
import { compute } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';
import { steps } from './steps.ts';

/** Whether two ends would be printed alike: then there is no range to tell. */
const areAlike = (low: number, high: number, digits: number): boolean => printNumber(low, digits) === printNumber(high, digits);
type Ends = Pick<ValuesOf<typeof inputs>, 'layers'> & { readonly low: number; readonly high: number; readonly digits: number };
/** What the range stands for: what was felt, and where texture stands in, how far the published figures lie apart. */
function rangeWords({ layers, low, high, digits }: Ends): string {
  const isTextured = layers.some(({ heldFrom }) => heldFrom === 'texture');
  if (low === high) return 'by what you measured';
  if (areAlike(low, high, digits)) return 'much the same at both ends of what you gave';
  return isTextured
    ? '{low} with the dry end of what you felt and the least of the published figures, {high} with the wet end and the most'
    : '{low} at the dry end of what you felt, {high} at the wet end';
}

/** A layer that is a class or more drier than the one above it. */
const liesDrierBelow = ({ lines }: { readonly lines: readonly { readonly filledPercent: number }[] }): boolean =>
  lines.slice(1).some(({ filledPercent }, index) => filledPercent <= (lines[index]?.filledPercent ?? Number.NEGATIVE_INFINITY) - 20);

export default defineCalculator({
  slug: 'stored-water',
  version: 1,
  title: 'Soil water in the root zone and how long it lasts',
  inputs,
  refusals,
  compute,
}).describe({
  question: 'How long can the grass live on what the ground holds?',
  lead: 'How many inches of water the ground holds in reach of roots, how much is there today, and how many days of growing that is, with and without a rain.',
  searchWords:
    'available water capacity, AWC, water holding capacity, days until wilting, soil moisture by feel, field capacity, wilting point, root depth, how long until grass quits growing, how deep do roots go',
  first: ['rootsMostIn', 'layers.feel', ['useInPerDay', 'month']],
  groups: [
    { title: 'The layers', inputs: ['layers'], summary: '{layers}' },
    {
      title: 'Roots and organic matter',
      inputs: ['rootsDeepestIn', 'organicPercent', 'topOrganicPercent'],
      summary: 'deepest root at {rootsDeepestIn}, {organicPercent} organic matter, {topOrganicPercent} in the survey’s figure',
    },
    {
      title: 'What the grass uses',
      inputs: ['useFrom', 'latitude', 'highF', 'lowF', 'stand', 'localPercent', 'growthPercent'],
      summary: '{useFrom}, {latitude}, {highF} by day, {lowF} by night, {stand}, {localPercent} of that, growth down to {growthPercent}',
    },
    { title: 'A rain', inputs: ['rainIn', 'lostPercent'], summary: '{rainIn} today, {lostPercent} never goes in' },
    {
      title: 'Ways of counting',
      inputs: ['easyFrom', 'easyPercent', 'organicCount'],
      summary: 'easy share {easyFrom}, {easyPercent}, organic matter {organicCount}',
    },
  ],
  handout: ['stressDays', 'growthDays', 'hasIn', 'holdsIn', 'missingIn', 'wetGrowthDays'],
  quantities,
  results: [
    { of: 'standing', said: 'on this ground', when: ({ standing }) => standing === 'short' },
    ranged('stressDays', ['lowStressDays', 'highStressDays'], {
      said: 'until grass slows',
      gap: ['sooner on that ground', 'later on that ground'],
      short: ({ lowStressDays, highStressDays }) =>
        areAlike(lowStressDays, 0, 0) && !areAlike(highStressDays, 0, 0)
          ? 'none at the dry end, {high} at the wet'
          : lowStressDays === highStressDays
            ? 'by what you measured'
            : areAlike(lowStressDays, highStressDays, 0)
              ? 'much the same at both ends'
              : '{low} at the dry end, {high} at the wet',
      when: ({ standing }) => standing === 'growing',
      says: ({ layers, lowStressDays, highStressDays }) =>
        areAlike(lowStressDays, 0, 0) && !areAlike(highStressDays, 0, 0)
          ? 'it may be slowing now if the ground is at the dry end of what you felt; {high} at the wet end'
          : rangeWords({ layers, low: lowStressDays, high: highStressDays, digits: 0 }),
    }),
    ranged('growthDays', ['lowGrowthDays', 'highGrowthDays'], {
      says: ({ layers, lowGrowthDays, highGrowthDays }) => rangeWords({ layers, low: lowGrowthDays, high: highGrowthDays, digits: 0 }),
    }),
    ranged('hasIn', ['lowHasIn', 'highHasIn'], {
      says: ({ layers, lowHasIn, highHasIn }) => rangeWords({ layers, low: lowHasIn, high: highHasIn, digits: 1 }),
    }),
    { of: 'holdsIn' },
    ranged('missingIn', ['lowMissingIn', 'highMissingIn'], {
      says: ({ lowMissingIn, highMissingIn }) =>
        lowMissingIn === highMissingIn
          ? 'by what you measured'
          : areAlike(lowMissingIn, highMissingIn, 1)
            ? 'much the same at both ends of what you gave'
            : '{low} to {high} by what you gave',
    }),
    shownWhen(({ rainIn }) => rainIn > 0, 'wetStressDays', 'wetGrowthDays'),
    { of: 'drainedIn', when: ({ drainedIn }) => drainedIn > 0 },
    shownWhen(({ deeperRootsIn, rootsMostIn }) => deeperRootsIn > rootsMostIn, 'deeperStressDays', 'deeperGrowthDays'),
    { of: 'deepestGrowthDays', when: ({ deepestRootsIn, rootsMostIn }) => deepestRootsIn > rootsMostIn },
    { of: 'otherHoldsIn', when: ({ organicPercent, topOrganicPercent }) => organicPercent !== topOrganicPercent },
    { of: 'dayUseIn', when: ({ useFrom }) => useFrom === 'weather' },
    { of: 'lines' },
  ],
  steps,
  cautions: [
    caution(() => true, {
      lead: 'Before you dig, have buried lines marked.',
      life: true,
      say: 'Before you dig, have buried lines marked; the call is free in most places. Keep stock away from an open hole and fill it the same day.',
      source: 'common practice',
    }),
    caution(({ standing }) => standing === 'short', {
      lead: 'Grass is short of water already: leave more stubble, or rest it.',
      say: 'This grass is short of water already. Every bite taken now is paid for later: leave more stubble, or rest it, until it has rained and grown back.',
      source: 'common practice',
    }),
    caution(liesDrierBelow, {
      lead: 'A layer is drier than the one above it: count no gain from its depth.',
      say: 'A layer is drier than the one above it. The sums take the whole root zone as one bucket, so roots that reach into dry ground can seem to shorten the days. They don’t: read it as no gain from depth until water gets down there.',
      source: 'our own',
    }),
    caution(({ layers }) => layers.some(({ heldFrom }) => heldFrom === 'texture'), {
      lead: 'Texture stands in for the survey: look that up before you count on it.',
      say: 'Texture stands in for the soil survey in a layer. The published figures for one texture differ by a third or more; the range shows it. Look up the survey for your soil before you count on the days.',
      source: 'ucdavis-drought-awc',
    }),
    caution(({ layers }) => layers.some(({ heldFrom, stonesPercent }) => heldFrom === 'survey' && stonesPercent > 0), {
      lead: 'Most surveys have taken stones off already: then put them at 0.',
      say: 'Stones are taken off the survey’s figure here. Most surveys have taken them off already; then put stones at 0, or the ground looks thirstier than it is.',
      source: 'nrcs-awc-1998, rock fragments',
    }),
    caution(({ rootsMostIn, rootsDeepestIn }) => rootsDeepestIn > 4 * rootsMostIn, {
      lead: 'Most roots end far above the deepest: look for a packed layer there.',
      say: 'Most roots end far above the deepest one. Look for a packed layer where they stop: roots that turn sideways, soil that breaks into plates.',
      source: 'common practice',
    }),
  ],
  limits: [
    'There is no “days until wilting”. Grass slows as the ground dries and never takes the last of it. The days until it slows, and until it hardly grows, are what can be counted.',
    'The root zone is one bucket here. A small rain on dry ground wets only the top inches; roots find it there sooner than these days say, and sun and wind take it back sooner too.',
    'Days hold for weather like the day’s use you gave. A week of hot wind takes half again as much.',
    'It does not count water that creeps up from below. Above a water table the grass lasts longer.',
    'Organic matter is counted in the top layer alone, and published figures for it differ five times over. Deeper roots were not found to follow from grazing in most long trials: dig, do not guess.',
    'It says nothing of which plants live. Some go to sleep and wake; some die.',
  ],
  note: ({ standing, rainIn, lowGrowthDays, highGrowthDays }, show) => {
    const zone = `Roots ${show('rootsMostIn')} deep: the ground holds ${show('holdsIn')} of water when full and has ${show('hasIn')} today.`;
    const range = areAlike(lowGrowthDays, highGrowthDays, 0) ? '' : ` (${show('lowGrowthDays').replace(/ days?$/, '')} to ${show('highGrowthDays')})`;
    const low = `growth is down to ${show('growthPercent')} in about ${show('growthDays')}${range}`;
    const dry =
      standing === 'short'
        ? `Grass is short of water now; without rain ${low}.`
        : `Without rain grass slows in about ${show('stressDays')}, and ${low}.`;
    return rainIn > 0 ? `${zone} ${dry} ${show('rainIn')} of rain today would make that ${show('wetGrowthDays')}.` : `${zone} ${dry}`;
  },
  picture: {
    kind: 'face',
    layers: {
      rows: 'lines',
      top: 'topIn',
      thickness: 'thicknessIn',
      filledPercent: 'filledPercent',
      mostRoots: 'rootsMostIn',
      deepestRoot: 'rootsDeepestIn',
      holds: 'holdsIn',
      has: 'hasIn',
      missing: 'missingIn',
    },
  },
  sources: [
    'allen-1998',
    'nrcs-feel-loam',
    'nrcs-feel-clay',
    'nrcs-feel-montana',
    'ucdavis-drought-awc',
    'nrcs-awc-1998',
    'saxton-rawls-2006',
    'utah-pasture-water',
    'precisionag-irrigation-tutorial',
  ],
  topic: 'rain',
  order: 40,
  guides: ['growing-roots', 'where-rain-goes'],
});
