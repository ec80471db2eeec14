import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shownWhen } from '../../kit/shown.ts';
import { ringDepthIn } from '../../math/infiltration/ringTest.ts';
import { isBoundedRatio } from '../../math/infiltration/visitRatio.ts';
import { type Asked, compute, rateGap, usedBoreIn } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';
import { steps } from './steps.ts';

/** A test that can't be judged can't be compared. */
const compares = ({ beside, judged }: Pick<Asked, 'beside'> & { readonly judged: string }): boolean => beside !== 'no' && judged === 'judged';
const isHint = ({ verdict }: { readonly verdict: string }): boolean => verdict === 'perhaps-faster' || verdict === 'perhaps-slower';
/** Up or down alike. */
const changeTimes = ({ ratioTimes }: { readonly ratioTimes: number }): number => Math.max(ratioTimes, 1 / ratioTimes);
const isBounded = ({ ratioTimes, highRatioTimes }: { readonly ratioTimes: number; readonly highRatioTimes: number }): boolean =>
  isBoundedRatio({ ratio: ratioTimes, high: highRatioTimes });
const pouredIn = (values: Pick<Asked, 'boreFrom' | 'boreIn' | 'fillWaterMl' | 'fillDepthIn' | 'waterMl'>): number =>
  ringDepthIn(values.waterMl, usedBoreIn(values));

export default defineCalculator({
  slug: 'ring-test',
  version: 2,
  title: 'Infiltration rate from a ring test',
  inputs,
  refusals: [
    {
      at: 'fillWaterMl',
      when: (values) => values.boreFrom === 'filled' && (usedBoreIn(values) < 2 || usedBoreIn(values) > 48),
      say: 'By this water and depth the ring would be under 2 inches or over 4 feet wide. Look again at both; a quart is 946 mL.',
    },
    {
      at: 'waterMl',
      when: (values) => pouredIn(values) < 0.1 || pouredIn(values) > 12,
      say: 'In this ring that much water stands less than a tenth of an inch or more than a foot deep. About an inch is right: 444 mL in a 6-inch ring.',
    },
    {
      at: 'rings',
      when: (values) => values.rings.some(({ end, leftIn }) => end === 'left' && leftIn > 0.99 * pouredIn(values)),
      say: 'In one ring as much water is left as was poured. Measure what is left, or wait longer.',
    },
  ],
  compute,
}).describe({
  question: 'How fast does this soil take water?',
  lead: 'Drive a ring, pour an inch, time it, and pour again. The rate of the second pouring, how far a single ring can be trusted, and whether a change is more than chance.',
  searchWords:
    'infiltration test, infiltrometer, ring infiltration, single ring, inches per hour, water intake, how fast does water soak in, percolation, stopwatch, soil demonstration',
  first: ['rings', ['boreIn', 'fillWaterMl'], 'moisture', 'site'],
  groups: [
    {
      title: 'The ring and the water',
      inputs: ['boreFrom', 'fillDepthIn', 'insertedIn', 'waterMl'],
      summary: '{insertedIn} deep in the soil, {waterMl} a pouring, filled to {fillDepthIn}',
    },
    { title: 'An earlier visit or another place', inputs: ['beside', 'others', 'alike'], summary: '{beside}, rings of {others}, {alike}' },
  ],
  quantities,
  compares: {
    as: 'ratio',
    movedBy: ['wetness', 'season', 'hands'],
    rows: 'lines',
    column: 'ringInPerHr',
    middle: 'middleInPerHr',
    alike: ['boreIn', 'fillWaterMl', 'fillDepthIn', 'insertedIn', 'waterMl', 'rings.pours', 'moisture'],
    bars: {
      judged: {
        'first-only': 'only the first pouring was timed, on dry ground',
        cracks: 'water ran down cracks',
        burrow: 'water ran into a burrow',
        leak: 'water got out beside a ring',
        frozen: 'the ground was frozen',
        standing: 'water stood on the ground already',
      },
    },
  },
  results: [
    { of: 'judged', said: 'for this test', when: ({ judged }) => judged !== 'judged' },
    ranged('middleInPerHr', ['straightLowInPerHr', 'straightHighInPerHr'], {
      said: 'goes into this ground',
      gap: ['less goes into that ground', 'more goes into that ground'],
      between: rateGap,
      short: 'nearer {low} to {high}',
      says: 'a ring reads high; straight down it is more like {low} (fine soil) to {high} (coarse)',
    }),
    shownWhen(({ ringsCount }) => ringsCount > 1, 'slowestInPerHr', 'fastestInPerHr'),
    { of: 'inchMin' },
    { of: 'rateClass', when: ({ judged }) => judged === 'judged' },
    { of: 'depthIn' },
    { of: 'verdict', when: compares },
    ranged('ratioTimes', ['lowRatioTimes', 'highRatioTimes'], {
      when: compares,
      says: (values) =>
        values.verdict === 'too-few'
          ? 'too few rings for a range'
          : isBounded(values)
            ? '{low} to {high}, 19 times in 20'
            : 'these rings scatter too much to bound it',
    }),
    { of: 'otherInPerHr', when: compares },
    // Rings that differ more than usual can leave a change open that lies past the usual scatter: that figure would only confuse.
    {
      of: 'scatterTimes',
      when: (values) => compares(values) && values.scatterTimes > 0 && (values.verdict !== 'chance' || changeTimes(values) <= values.scatterTimes),
    },
    { of: 'lines' },
    { of: 'byPouring', when: ({ byPouring }) => byPouring.length > 1 },
  ],
  steps,
  cautions: [
    caution(() => true, {
      lead: 'Call 811 days before you drive a ring, so buried lines get marked.',
      life: true,
      say: 'Wear safety glasses when you hammer a ring in, lay a board across it, and keep fingers off the rim. Call 811 a few working days before you drive or auger anything, so buried lines get marked; lines of your own to tanks and outbuildings are not. Carry water in small jugs: five gallons (19 L) weigh over 40 pounds (19 kg).',
      source: 'common practice',
    }),
    caution(({ judged }) => judged === 'first-only', {
      lead: 'Pour the same again and time that: the first inch goes in too fast.',
      say: 'Dry ground drinks the first inch much faster than it can go on doing. Pour the same again into the same rings and time that; until then the rate that it gives is too high.',
      source: 'symbiosis-ring-page, second inch',
    }),
    caution(({ site }) => site === 'cracks' || site === 'burrow' || site === 'leak', {
      lead: 'Water ran down a hole: move the ring to whole ground and start over.',
      say: 'Water that runs down a hole only tells you about the hole. Pull the ring, move it a few steps to whole ground, firm the soil along its inside edge, and start over.',
      source: 'common practice',
    }),
    caution(({ site }) => site === 'frozen' || site === 'standing', {
      lead: 'Come back when the ground has thawed and drained.',
      say: 'Frozen or flooded ground takes water at another rate than it does in the season. Come back when it has thawed and drained.',
      source: 'common practice',
    }),
    caution(({ depthIn }) => depthIn < 0.5 || depthIn > 2, {
      lead: 'One pouring is far from an inch deep: compare only at this depth.',
      say: 'One pouring stands far from an inch deep in this ring. Deeper water drives itself in faster. Compare only with tests at this same depth.',
      source: 'common practice',
    }),
    caution(({ rings, judged }) => judged === 'judged' && rings.some(({ pours }) => pours === 'once'), {
      lead: 'A ring was poured only once; a second pouring tells more.',
      say: 'A ring was poured only once. On moist ground that will do, if every ring of every visit was poured once; a second pouring tells more.',
      source: 'symbiosis-ring-page, second inch',
    }),
    caution((values) => compares(values) && isHint(values), {
      lead: 'These rings agree unusually well: take the change as a hint.',
      say: 'These rings agree better than rings on pasture mostly do, which makes a change look surer than it is. Take it as a hint until another visit shows it too.',
      source: 'our own, rings that vary by 80 percent',
    }),
    caution(({ moisture }) => moisture === 'wet', {
      lead: 'Wet ground reads slow: compare it only with ground as wet.',
      say: 'Wet ground reads slow. Compare it only with another test on ground as wet as this.',
      source: 'common practice',
    }),
    caution(({ ringsCount }) => ringsCount < 3, {
      lead: 'Fewer than three rings: one alone can mislead by three times or more.',
      say: 'Fewer than three rings. Rings side by side often differ by two or three times; one alone can mislead by more.',
      source: 'common practice',
    }),
    caution((values) => compares(values) && !values.alike, {
      lead: 'The two tests were not made alike: the change may come from that.',
      say: 'The two tests were made in another season, on ground of another moisture or by other hands. A difference may come from that alone, whatever the range says.',
      source: 'common practice',
    }),
  ],
  limits: [
    'It tells you about the few square inches under these rings today. It does not tell the soil group (A to D) and must not be used to choose one.',
    'A single ring reads about 1.3 to 3 times high, more on tight clay. That does not spoil a comparison with the same ring at the same depth.',
    'The ring cuts roots and cracks, pours without the blow of raindrops, and keeps water from running off. A crust that sheds rain can look fine in a ring.',
    'Soil moisture, the season and the person pouring change the rate as much as management does. Write them down each time.',
  ],
  note: (values, show) => {
    // The unit stands behind the rate before or after it; once is enough.
    const number = (name: 'slowestInPerHr' | 'fastestInPerHr' | 'straightLowInPerHr'): string => show(name).replace(/ .*$/, '');
    const many =
      values.ringsCount > 1
        ? `geometric mean of ${show('ringsCount')} rings ${show('middleInPerHr')} (${number('slowestInPerHr')} to ${number('fastestInPerHr')})`
        : `one ring ${show('middleInPerHr')}`;
    const down = `${number('straightLowInPerHr')} to ${show('straightHighInPerHr')}`;
    const soil = { dry: 'dry ground', moist: 'moist ground', wet: 'wet ground' }[values.moisture];
    const onceCount = values.rings.filter(({ pours }) => pours === 'once').length;
    const once = onceCount === 0 ? '' : onceCount === values.rings.length ? ', first pouring only' : ', some rings by their first pouring only';
    const [, yet = '', why = ''] = /^(?:No|Not (yet)): (.*)$/.exec(show('judged')) ?? [];
    const judged = values.judged === 'judged' ? '' : ` It can’t be judged${yet && ' yet'}: ${why}.`;
    const other = values.beside === 'visit' ? 'the earlier visit' : 'the other place';
    const sure = 'more than chance';
    const hint = `a hint, no more: two such tests of one ground can come out ${show('scatterTimes')} times apart by chance`;
    const chance = {
      'too-few': 'too few rings to tell chance',
      chance: 'can be chance',
      faster: sure,
      slower: sure,
      'perhaps-faster': hint,
      'perhaps-slower': hint,
    }[values.verdict];
    const bounds = isBounded(values) ? `${show('lowRatioTimes')} to ${show('highRatioTimes')}` : 'these rings scatter too much to bound it';
    const range = values.verdict === 'too-few' ? '' : ` (${bounds})`;
    const unlike = values.alike ? '' : ', and season, moisture or hands were not the same';
    const compared = compares(values) ? ` ${show('ratioTimes')} times as fast as ${other}${range}: ${chance}${unlike}.` : '';
    return `Ring test on ${soil}${once}: ${many}; a ring reads high, straight down it is about ${down}.${judged}${compared}`;
  },
  picture: { kind: 'face', ring: { acrossIn: 'ringIn', insertedIn: 'insertedIn', waterIn: 'depthIn', inchMin: 'inchMin', rate: 'middleInPerHr' } },
  morePictures: [{ kind: 'lines', rows: 'byPouring', x: 'pouring', ys: ['fastInPerHr', 'middlingInPerHr', 'slowInPerHr'] }],
  changes: [
    {
      version: 2,
      say: 'A change that these rings show but that rings on pasture often show by scatter alone is now called “perhaps”. It was called “yes” beside a line that called it scatter.',
    },
  ],
  sources: [
    'soil-quality-test-kit-2001',
    'symbiosis-ring-page',
    'usepa-1981-permeability',
    'reynolds-elrick-1990',
    'elrick-reynolds-1992',
    'nist-sematech-handbook',
  ],
  topic: 'tailgate',
  order: 10,
  guides: ['letting-water-in', 'showing-soil-to-a-crowd'],
});
