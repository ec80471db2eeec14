import { caution, defineCalculator } from '../../kit/define.ts';
import { midSentence } from '../../kit/midSentence.ts';
import { ranged, shown } from '../../kit/shown.ts';
import { compute, hasErodibility } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';
import { canDivide, isFarmed, losesFarmed, steps } from './steps.ts';

/** An inch lost faster than this is told as thickness in one year. */
const leastYears = 1.5;
const topsoilIn = 12;
const farmedAs = {
  'corn-soybeans': 'in corn and soybeans, plowed in spring,',
  'wheat-meadow-corn': 'in wheat, meadow and two years of corn',
  'wheat-fallow': 'in wheat and fallow, plowed in fall,',
  'wheat-stubble': 'in wheat and fallow with the stubble left on top',
  own: 'in a local crop rotation',
  'bare-fallow': 'as bare fallow, which nobody farms,',
} as const;

/** The plots of the older form ran from 3 to 18 percent. Off the board 18 percent is 21.6 in, which division leaves a hair above. */
const isPastPlots = ({ groundSlopePercent }: { readonly groundSlopePercent: number }): boolean => groundSlopePercent > 18 + 1e-9;

export default defineCalculator({
  slug: 'soil-loss',
  version: 1,
  title: 'Soil loss on pasture',
  inputs,
  refusals: [
    {
      at: 'erodibilityList',
      when: ({ soilFrom, texture, erodibilityList }) => soilFrom === 'texture' && !hasErodibility(texture, erodibilityList),
      say: 'This list has no single number for that texture. Choose the other list, or type the soil survey’s own K.',
    },
  ],
  compute,
}).describe({
  question: 'How much soil washes off, next to plowed ground?',
  lead: 'Soil that rain takes off your pasture in a usual year, beside the same ground under a crop rotation. A rough figure: good to a factor of two.',
  searchWords:
    'soil erosion, universal soil loss equation, USLE, RUSLE, tons per acre, topsoil lost, sheet erosion, rill erosion, muddy runoff, plowed ground, T value',
  first: ['groundCoverPercent', ['riseIn', 'slopePercent'], ['stepsCount', 'lengthFt'], ['rainFactorRatio', 'yearRainIn']],
  groups: [
    { title: 'What covers it', inputs: ['coverKind', 'above', 'canopyPercent'], summary: '{coverKind}, {above}, {canopyPercent} under it' },
    {
      title: 'The soil',
      inputs: [
        'soilFrom',
        'soilFactorRatio',
        'texture',
        'organicMatterPercent',
        'densityGPerCm3',
        'toleranceFrom',
        'surveyTonPerAc',
        'rooting',
        'subsoil',
      ],
      summary:
        '{texture}, {organicMatterPercent} organic matter, soil factor {soilFactorRatio}, bears {surveyTonPerAc} a year, roots {rooting}, {subsoil}',
    },
    {
      title: 'Beside plowed ground',
      inputs: ['ploughed', 'ploughedCoverRatio', 'practiceRatio'],
      summary: '{ploughed}, cover factor {ploughedCoverRatio}, practice factor {practiceRatio}',
    },
    { title: 'Truck loads', inputs: ['areaAc', 'truckTon'], summary: '{areaAc}, {truckTon} a load' },
    {
      title: 'Ways of measuring and counting',
      inputs: ['slopeFrom', 'lengthFrom', 'stepFt', 'rainFrom', 'erodibilityList', 'coverBetween', 'slopeBook'],
      summary: '{slopeFrom}, {lengthFrom}, {stepFt} each, {rainFrom}, soil by {erodibilityList}, slope by {slopeBook}',
    },
  ],
  handout: ['lossTonPerAc', 'ploughedTonPerAc', 'timesRatio', 'toleratedTonPerAc', 'standing', 'inchYears'],
  quantities,
  results: [
    ranged('lossSize', ['lowTonPerAc', 'highTonPerAc'], {
      said: 'of soil a year',
      short: ({ highTonPerAc }) => (highTonPerAc < 1 ? 'even at twice the figure' : 'or up to {high}, at twice the figure'),
      when: ({ lossSize }) => lossSize === 'under-one',
      says: ({ highTonPerAc }) =>
        highTonPerAc < 1 ? 'and still under that if it is twice the figure' : 'or as much as {high}, if it is twice the figure',
    }),
    ranged('lossTonPerAc', ['lowTonPerAc', 'highTonPerAc'], {
      said: 'of soil a year',
      gap: ['less leaves that ground', 'more leaves that ground'],
      short: ({ lowTonPerAc }) => (lowTonPerAc < 1 ? 'well under that to {high}' : '{low} to {high}'),
      when: ({ lossSize }) => lossSize === 'whole',
      says: ({ lowTonPerAc }) => (lowTonPerAc < 1 ? 'anything from well under that to {high}' : 'anything from {low} to {high}'),
    }),
    { of: 'otherSize', when: ({ otherSize }) => otherSize === 'under-one' },
    { of: 'otherTonPerAc', when: ({ otherSize }) => otherSize === 'whole' },
    shown('steepnessRatio', 'otherSteepnessRatio'),
    { of: 'ploughedSize', when: ({ ploughedSize }) => ploughedSize === 'under-one' },
    ranged('ploughedTonPerAc', ['ploughedLowTonPerAc', 'ploughedHighTonPerAc'], {
      when: ({ ploughed, ploughedSize }) => ploughed !== 'bare-fallow' && ploughedSize === 'whole',
      says: ({ ploughedLowTonPerAc }) => (ploughedLowTonPerAc < 1 ? 'anything from well under that to {high}' : 'anything from {low} to {high}'),
    }),
    { of: 'fallowTonPerAc', when: ({ ploughed, ploughedSize }) => ploughed === 'bare-fallow' && ploughedSize === 'whole' },
    // Under a ton the figure is too weak to divide by.
    { of: 'timesRatio', when: canDivide },
    shown('toleratedTonPerAc', 'standing'),
    { of: 'ploughedStanding', when: isFarmed },
    ranged('loadsCount', ['lowLoadsCount', 'highLoadsCount'], {
      // A small pasture sends off less than half a load: nothing to count.
      when: ({ lossSize, lowLoadsCount }) => lossSize === 'whole' && lowLoadsCount >= 0.5,
      says: 'anything from {low} to {high}',
    }),
    { of: 'mostLoadsCount', when: ({ lossSize, mostLoadsCount }) => lossSize === 'under-one' && mostLoadsCount >= 0.5 },
    { of: 'ploughedLoadsCount', when: losesFarmed },
    ranged('inchYears', ['fastInchYears', 'slowInchYears'], {
      when: ({ lossSize, inchYears }) => lossSize === 'whole' && inchYears >= leastYears,
      says: 'anything from {low} to {high}',
    }),
    { of: 'oneYearIn', when: ({ inchYears }) => inchYears < leastYears },
    { of: 'ploughedInchYears', when: (values) => losesFarmed(values) && values.ploughedInchYears >= leastYears },
    { of: 'ploughedOneYearIn', when: (values) => losesFarmed(values) && values.ploughedInchYears < leastYears },
    // Past a foot the topsoil is long gone and the figure no longer holds.
    { of: 'thirtyYearsIn', when: ({ lossSize, thirtyYearsIn }) => lossSize === 'whole' && thirtyYearsIn <= topsoilIn },
    { of: 'ploughedThirtyYearsIn', when: (values) => losesFarmed(values) && values.ploughedThirtyYearsIn <= topsoilIn },
    shown('coverRatio', 'otherCoverRatio', 'coverStanding', 'curve'),
  ],
  steps,
  cautions: [
    caution(() => true, {
      lead: 'Wind is not in this figure, and it can take as much as water.',
      say: 'Wind is not in this figure. Where the ground is dry, loose and bare, wind can take as much as water or more, and nothing here counts it. Dust over a fence line or sand against it says that it is going.',
      source: 'common practice',
    }),
    caution(() => true, {
      lead: 'On range it tells too much: go by the comparison, not the figure.',
      say: 'The equation was made on plowed plots. On 132 plots of range its figures were too high, and it did worse than a plain average would have. Go by the comparison more than by the figure.',
      source: 'spaeth-2003, abstract',
    }),
    caution(({ rainFrom }) => rainFrom === 'year-rain', {
      lead: 'The rain factor is a guess: get the local one before you show this.',
      say: 'Last resort: the rain factor was guessed from the rain of a year, by one fit for the whole country. It is poor where rain comes in winter or in a few hard storms. Get the local R before you show this to anybody.',
      source: 'renard-freimund-1994, annual form',
    }),
    caution(({ coverStanding }) => coverStanding === 'like-crops', {
      lead: 'With this little cover it loses soil like some crop fields do: rest it.',
      say: 'With this little cover a pasture loses soil like some crop fields do. It is pasture by name. Rest it until litter and grass cover more than half of the ground.',
      source: 'weiner-matthews-2003, table 11-3',
    }),
    caution(isPastPlots, {
      lead: 'Past 18 percent the two forms part: look at both figures.',
      say: 'This slope is past 18 percent, where the plots behind the older form ended. The plots of the later form are said to end there too. So both forms only reach here, and the steeper it is, the further they part: both figures are shown.',
      source: 'mulengera-2022, introduction; mccool-1987, as later papers report it',
    }),
    caution(({ groundSlopePercent }) => groundSlopePercent < 3, {
      lead: 'Under 3 percent of slope the figure is a reach.',
      say: 'This slope is under 3 percent, where the plots behind the older form began. The figure is a reach.',
      source: 'mulengera-2022, introduction',
    }),
    caution(isPastPlots, {
      lead: 'Tractors, mowers and four-wheelers roll over on slopes like this.',
      life: true,
      say: 'Tractors, mowers and four-wheelers roll over on slopes like this. Walk it, or ask somebody who works such ground before anything is driven, mowed or seeded across it.',
      source: 'common practice',
    }),
    caution(({ runFt }) => runFt > 400, {
      lead: 'Water seldom runs over 400 ft (120 m) before it gathers: walk it again.',
      say: 'Water seldom runs more than about 400 ft (120 m) before it gathers in a draw. Walk it again and stop at the first place where it gathers.',
      source: 'common practice',
    }),
    caution(({ ploughed }) => ploughed === 'bare-fallow', {
      lead: 'Nobody farms bare fallow: choose a rotation of the neighborhood.',
      say: 'Bare fallow is ground tilled and kept without any crop all year. Nobody farms that way; it makes any pasture look good. Choose a rotation of the neighborhood to be fair.',
      source: 'wischmeier-smith-1978, definition of C',
    }),
    caution(({ standing }) => standing === 'over', {
      lead: 'Gullies, dams and waterways are work for an engineer.',
      say: 'Water from such ground carries mud into ponds and creeks. Gullies, dams and waterways are work for the conservation office or an engineer, under local permits.',
      source: 'common practice',
    }),
  ],
  limits: [
    'It counts what water washes off evenly and in small rills. Gullies, cow paths, stream banks, wind and melting snow are not in it.',
    'It is a mean of many years. One hard storm can take more than ten usual years; in a drought the storm that ends it often does.',
    'What washes down and settles at the foot of the same slope counts as lost. It says nothing of how much reaches the creek.',
    'The pasture table is for ground that nobody tilled for three years. Ground tilled or seeded since loses more.',
    'Figures under a ton are not told apart. Two good pastures both say “under 1 ton an acre” (2 tonnes a hectare); look at their ground cover instead.',
    'The tolerance says what the soil is held to bear so that crops go on growing. It is not a goal, and water downstream may need less.',
    'Cover factors of the rotations are middles of published spans. The county’s own figure for a rotation is better.',
  ],
  note: ({ lossSize, ploughed, ploughedSize, rainFrom }, show) => {
    const here = lossSize === 'under-one' ? midSentence(show('lossSize')) : `about ${show('lossTonPerAc')}`;
    const there = ploughedSize === 'under-one' ? midSentence(show('ploughedSize')) : `about ${show('ploughedTonPerAc')}`;
    const guessed = rainFrom === 'year-rain' ? ' The rain factor was guessed from the year’s rain.' : '';
    return `With ${show('groundCoverPercent')} of the ground covered, ${here} of soil washes off this pasture in a usual year; the same ground ${farmedAs[ploughed]} loses ${there}. Both are good to a factor of two, wind and gullies not counted. The soil is said to bear ${show('toleratedTonPerAc')} a year.${guessed}`;
  },
  picture: {
    kind: 'face',
    coverPercent: 'groundCoverPercent',
    loss: { lostIn: 'thirtyYearsIn', inchYears: 'inchYears', plowed: { lostIn: 'ploughedThirtyYearsIn', inchYears: 'ploughedInchYears' } },
  },
  morePictures: [{ kind: 'lines', rows: 'curve', x: 'atCoverPercent', ys: ['pastureTonPerAc', 'cropTonPerAc'] }],
  sources: [
    'wischmeier-smith-1978',
    'renard-1997',
    'mccool-1987',
    'mulengera-2022',
    'scs-agronomy-note-50-1982',
    'colorado-permit-c-81-008',
    'spaeth-2003',
    'stewart-1975',
    'stone-hilborn-2012',
    'renard-freimund-1994',
    'foster-1981',
    'mccormack-young-1981',
    'weiner-matthews-2003',
  ],
  topic: 'rain',
  order: 50,
  guides: ['keeping-soil-home'],
});
