import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shownWhen } from '../../kit/shown.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { compute } from './compute.ts';
import { inputs, isExchanged, soilName } from './inputs.ts';
import { quantities } from './quantities.ts';
import { steps } from './steps.ts';

/** Some way over the hardest minute on record, about an inch and a quarter (from memory). */
const hardestEverInPerHr = 100;
/** Less than this is told as 0.0. */
const leastToldIn = 0.05;

const isDoubted = ({ texture }: { readonly texture: string }): boolean => isExchanged(texture);

export default defineCalculator({
  slug: 'ponding',
  version: 1,
  title: 'Time to ponding in a hard rain',
  inputs,
  refusals: [
    {
      at: 'spells',
      when: ({ storm, spells }) => storm === 'spells' && sumOf(spells, ({ fellIn }) => fellIn) < 0.01,
      say: 'No rain fell in any of these spells. Put in what fell in at least one of them.',
    },
    {
      at: 'spells',
      when: ({ storm, spells }) => storm === 'spells' && spells.some(({ lastsMin, fellIn }) => (60 * fellIn) / lastsMin > hardestEverInPerHr),
      say: 'One spell rains harder than any cloud does, over 100 inches an hour. Look again at its minutes and its rain.',
    },
    {
      at: 'hardMin',
      when: ({ storm, rainIn, hardMin }) => storm === 'burst' && (60 * rainIn) / hardMin > hardestEverInPerHr,
      say: 'So much rain in so few minutes is over 100 inches an hour, harder than any cloud rains. Look again at the minutes and at the rain.',
    },
  ],
  compute,
}).describe({
  question: 'When does a hard rain start to pond, and how much of it runs off?',
  lead: 'When water starts to stand on your ground in a burst, how much runs off, and the same storm on another soil or on ground where your own ring tests came out different.',
  searchWords:
    'cloudburst, gully washer, puddles, infiltration rate, rainfall intensity, Green-Ampt, how fast does soil take water, runoff from a thunderstorm, design storm',
  first: [['rainIn', 'spells'], 'hardMin', 'texture', 'wetness'],
  groups: [
    { title: 'How it came', inputs: ['storm', 'rainType'], summary: '{storm}, {rainType}' },
    {
      title: 'The soil by your own tests',
      inputs: ['rings', 'ringHereInPerHr', 'ringThereInPerHr', 'filledPercent', 'conductivityInPerHr', 'suctionIn', 'roomPercent'],
      summary:
        '{rings}, {ringHereInPerHr} here, {ringThereInPerHr} there, pores {filledPercent} full, {conductivityInPerHr} when soaked, {suctionIn} of suction, {roomPercent} room',
    },
  ],
  quantities,
  results: [
    ranged('ponds', ['lowRunoffIn', 'highRunoffIn'], {
      said: 'by the book values',
      short: ({ highRunoffIn }) => (highRunoffIn < leastToldIn ? 'even if it is half as fast' : '{high} if it is half as fast'),
      when: ({ ponds }) => ponds === 'never',
      says: ({ highRunoffIn }) =>
        highRunoffIn < leastToldIn ? 'even if it takes water half as fast as that' : '{high} if it takes water half as fast as that',
    }),
    {
      of: 'pondsAfterMin',
      said: 'until water stands',
      gap: ['sooner on that ground', 'later on that ground'],
      when: ({ ponds, storm }) => ponds === 'stands' && storm !== 'day',
    },
    {
      of: 'pondsAfterHr',
      said: 'until water stands',
      gap: ['sooner on that ground', 'later on that ground'],
      when: ({ ponds, storm }) => ponds === 'stands' && storm === 'day',
    },
    ranged('runoffIn', ['lowRunoffIn', 'highRunoffIn'], {
      when: ({ ponds }) => ponds === 'stands',
      says: '{low} if this ground takes water twice as fast as that, {high} if half as fast',
    }),
    ranged('otherRunoffIn', ['bookCmPerHr', 'otherBookCmPerHr'], {
      when: isDoubted,
      says: 'the table has {low} for this soil when soaked; the other of the two has {high}',
    }),
    { of: 'runoffPercent', when: ({ ponds }) => ponds === 'stands' },
    { of: 'soakedIn' },
    shownWhen(({ ponds }) => ponds === 'stands', 'runoffGal', 'totalStandsMin'),
    { of: 'hardestInPerHr' },
    { of: 'endRateInPerHr', when: ({ ponds }) => ponds === 'stands' },
    { of: 'evenRunoffIn', when: ({ totalMin }) => totalMin <= 1440 },
    { of: 'lines', when: ({ storm }) => storm !== 'burst' },
    { of: 'curve', when: ({ storm }) => storm === 'burst' },
  ],
  steps,
  cautions: [
    caution(() => true, {
      lead: 'Watch from under a roof, and stay out of moving water.',
      life: true,
      say: 'Watch a storm from under a roof or from the truck, off wire fences and away from lone trees. Stay out of moving water; it rises within minutes.',
      source: 'common practice',
    }),
    caution(({ hardestInPerHr }) => hardestInPerHr > 12, {
      lead: 'Harder than nearly any rain: look again at the minutes and the rain.',
      say: 'Over 12 inches an hour is harder than nearly any rain. Look again at the minutes and at the rain.',
      source: 'our own, twice the rate of a very hard burst',
    }),
    caution(({ rings }) => rings === 'both', {
      lead: 'Less than about 5 times between two ring tests can be chance.',
      say: 'Rings side by side differ a lot. With three rings on each ground, a difference of less than about 5 times can be chance. Compare the two in the ring test first.',
      source: 'our own, rings that vary by 80 percent',
    }),
    caution(isDoubted, {
      lead: 'The table may have loam and silt loam the wrong way round.',
      say: 'The table may have loam and silt loam the wrong way round. It gives them 0.13 and 0.26 inches an hour (0.34 and 0.65 cm), when half of the soaked rates in the list its authors printed a year before would be 0.26 and 0.13. All copies agree, so the printed value is used here, and the results show what the other one would give. The doubt is our own; we know of no publication that shares it.',
      source: 'rawls-1982, against rawls-1983',
    }),
    caution(({ runoffIn }) => runoffIn >= 1, {
      lead: 'An inch off every acre can wash out a crossing or a weak dam.',
      life: true,
      say: 'An inch off every acre can wash out a crossing or a weak pond dam. A pond, dam or waterway to catch it is an engineer’s job and needs local permits.',
      source: 'common practice',
    }),
  ],
  limits: [
    'This takes a storm minute by minute. “Runoff from rainfall depth” takes a day’s rain as a whole, by tables made on small watersheds. For one rain the two can differ by several times, because a burst and a day’s rain are not the same thing. Neither measured your ground.',
    'Book values by texture know nothing of grazing, roots, worm holes or hoofs. They say nothing on good or poor pasture. Two managements on one soil come out alike here unless your own ring tests say otherwise.',
    'Bare ground crusts, and a crust can take in far less than its texture says. Cracks and burrows take in far more. Frozen ground and a water table near the top are not covered.',
    'One soil all the way down, the same everywhere. Ground does not drain between spells. What stands in hollows and litter soaks in later; here all that stands runs off, so flat ground loses less than this.',
    'The design storm is a shape for planning, with the hardest rain in the middle of the day. Your storm was another.',
  ],
  note: (values, show) => {
    const how = values.storm === 'day' ? 'over a day, spread like a design storm,' : `in ${show('totalMin')}`;
    const ground = `${soilName(values.texture)}${values.rings === 'both' ? ` that takes water ${show('ringRatio')} times as fast as usual by ring tests` : ''}`;
    const rain = `${show('fellIn')} of rain ${how} on ${ground}`;
    if (values.ponds === 'never') {
      const slower = values.highRunoffIn < leastToldIn ? '' : `; if the ground is half as fast, ${show('highRunoffIn')} runs off`;
      return `${rain}: by usual figures for such soil all of it soaks in${slower}.`;
    }
    const doubt = isDoubted(values) ? `, ${show('otherRunoffIn')} if the table has loam and silt loam the wrong way round` : '';
    const stands = values.pondsAfterMin < 1 ? 'almost at once' : `after about ${show(values.storm === 'day' ? 'pondsAfterHr' : 'pondsAfterMin')}`;
    return `${rain}: water stands ${stands}; about ${show('runoffIn')} runs off (${show('lowRunoffIn')} if the ground is twice as fast, ${show('highRunoffIn')} if half as fast${doubt}), ${show('soakedIn')} soaks in.`;
  },
  wholes: [{ whole: 'fellIn', parts: ['runoffIn', 'soakedIn'] }],
  picture: {
    kind: 'face',
    water: { fellIn: 'fellIn', ranOffIn: 'runoffIn', soakedIn: 'soakedIn', standsAfter: 'pondsAfterMin', roomShare: 'roomShare' },
  },
  morePictures: [
    { kind: 'lines', rows: 'curve', x: 'atHr', ys: ['rainInPerHr', 'intakeInPerHr'], mark: { at: 'pondsAfterHr', says: 'water stands' } },
  ],
  sources: ['rawls-1983', 'rawls-1982', 'mein-larson-1971', 'chow-1988', 'scs-1986-distributions'],
  topic: 'rain',
  order: 30,
  guides: ['letting-water-in', 'where-rain-goes'],
});
