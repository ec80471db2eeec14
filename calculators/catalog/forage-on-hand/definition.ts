import { nothingStands, recalledInch, thinGrass, toxicStubble } from '../../asks/cautions.ts';
import { fescueMares, hasHorses } from '../../asks/horses.ts';
import { bloat, canBloat } from '../../asks/lushGrowth.ts';
import { hasLegume, isRecalled } from '../../asks/stand.ts';
import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';

import { toxicFescueIn } from '../../tables/forageHeights.ts';
import { intakeFallsBelowLbPerAc } from '../../tables/harvestShare.ts';
import { refusals } from './cautions.ts';
import { compute } from './compute.ts';
import { inputs, isClipping, isCutHigh, isCutUnsaid } from './inputs.ts';
import { quantities } from './quantities.ts';
import { feedSteps, measureSteps, type Values } from './steps.ts';

export default defineCalculator({ slug: 'forage-on-hand', version: 1, title: 'Forage on hand', inputs, refusals, compute }).describe({
  question: 'How much forage is standing here, and how many days is it?',
  lead: 'Clip and weigh, or measure heights, and get the pounds an acre, the days of grazing with their range, and how many plots it takes to know.',
  searchWords:
    'forage inventory, how much grass do I have, clip and weigh, grazing stick, plate meter, rising plate meter, pasture stick, pounds per acre inch, dry matter per acre, standing crop, how many clippings, grazing days, forage budget',
  first: ['way', ['plots', 'heights', 'plateReadings'], ['clippedTo', 'stubbleHeightIn'], 'areaAc', 'stock'],
  groups: [
    {
      title: 'The frame',
      inputs: ['frame', 'aroundIn', 'acrossIn', 'lengthIn', 'widthIn', 'frameKnownFt2'],
      summary: '{frame}, {aroundIn} round, {acrossIn} across, {lengthIn} by {widthIn}, {frameKnownFt2}',
    },
    {
      title: 'How dry the clippings are',
      inputs: ['dryFrom', 'wetG', 'dryG', 'plateG', 'knownDryPercent', 'grass', 'stage'],
      summary: '{dryFrom}, {wetG} wet, {dryG} dry, plate {plateG}, {knownDryPercent}, {grass}, {stage}',
    },
    {
      title: 'The stick or the plate',
      inputs: ['calibration', 'platePairs', 'densityLbPerAcIn', 'stand', 'condition'],
      summary: '{calibration}, {platePairs}, {densityLbPerAcIn}, {stand}, {condition}',
    },
    {
      title: 'What is left and what is eaten',
      inputs: ['stubbleKind', 'stubbleLbPerAc', 'eatenFrom', 'stayDays', 'ownEatenPercent', 'reachPercent'],
      summary: '{stubbleLbPerAc} left as stubble, {stayDays} in a paddock, {ownEatenPercent} eaten, {reachPercent} of the ground used',
    },
    { title: 'How sure it should be', inputs: ['withinPercent', 'surePercent'], summary: 'within {withinPercent}, {surePercent} of the time' },
  ],
  handout: ['grazingForDays', 'availableLbPerAc', 'eatenLbPerAc', 'demandLbPerDay', 'closePercent', 'neededPlots'],
  quantities,
  results: [
    ranged('grazingForDays', ['lowGrazingDays', 'highGrazingDays'], {
      says: ({ way }) =>
        way === 'height-clips' || way === 'height-stand'
          ? '{low} to {high}: from the thinnest inch and the low heights to the heaviest inch and the high heights'
          : way === 'plate'
            ? '{low} to {high}: from the low readings and the line at its lowest to the high readings and the line at its highest'
            : '{low} to {high}, by how much your places differ; it should hold {surePercent} of the time',
      short: ({ way }) =>
        way === 'clips' || way === 'height-known' ? '{low} to {high}, {surePercent} of the time' : '{low} to {high}, lowest to highest',
      said: 'of grazing',
      gap: ['less grazing', 'more grazing'],
    }),
    ranged('availableLbPerAc', ['lowAvailableLbPerAc', 'highAvailableLbPerAc'], { says: '{low} to {high}' }),
    { of: 'cutHighGrazingDays', when: isCutUnsaid },
    shownWhen((values) => !isCutHigh(values), 'standingLbPerAc', 'stubbleKeptLbPerAc'),
    shown('eatenLbPerAc', 'eatenLb', 'rangeMonths', 'airDryMonths', 'demandLbPerDay', 'closePercent', 'neededPlots'),
    { of: 'usedLbPerAcIn', when: ({ way }) => way === 'height-clips' || way === 'height-stand' },
    shownWhen(({ way }) => way === 'plate', 'plateSlopeLbPerAc', 'lineOffLbPerAc'),
    { of: 'dryPercent', when: ({ way }) => isClipping(way) },
  ],
  steps: [...measureSteps, ...feedSteps],
  cautions: [
    caution(isCutUnsaid, {
      lead: 'Say where you cut: the days can come out twice as many.',
      say: 'You have not said where you cut. It is read as cut at the ground, so the stubble comes off: the fewer days. If you cut at the height that you leave, it is off already. Answer “Where you cut”, for the days can come out twice as many.',
      source: 'umaine-pasture-lesson-1',
    }),
    { when: (values) => values.way === 'height-stand' && values.stand === 'tall-fescue' && hasHorses(values), ...fescueMares },
    {
      when: ({ way, stand, stubbleHeightIn }) => way === 'height-stand' && stand === 'tall-fescue' && stubbleHeightIn < toxicFescueIn,
      ...toxicStubble,
    },
    { when: (values) => values.way === 'height-stand' && hasLegume(values.stand) && canBloat(values), ...bloat },
    caution(({ availableLbPerAc }) => availableLbPerAc === 0, nothingStands),
    caution(({ sampleCount, neededPlots }) => sampleCount < neededPlots, {
      lead: 'Too few places for the closeness you asked. Plan on the low end.',
      say: 'Too few places for the closeness that you asked for. Plan on the low end, or measure more. If a draw and a ridge differ, measure each by itself: that saves you more walking than extra plots would.',
      source: 'missouri-sample-size',
    }),
    ...thinGrass<Values>((values) => !isCutHigh(values) && values.standingLbPerAc < intakeFallsBelowLbPerAc),
    caution(({ way, stand }) => way === 'height-stand' && isRecalled(stand), recalledInch),
    caution(({ way }) => way === 'height-stand', {
      lead: 'A printed figure for an inch can be out by half. Clip three of your own.',
      say: 'A printed figure for an inch can be out by half on your place. Three clips of your own set the stick.',
      source: 'umaine-pasture-lesson-1',
    }),
    caution(({ way }) => way === 'height-clips', {
      lead: 'Cut the three clips at the height you leave, not at the ground.',
      say: 'If you cut the three clips at the ground, the inch comes out too heavy, for the bottom inches hold the most. Cut them at the height you leave.',
      source: 'common practice',
    }),
    caution(
      ({ way, readingLines, pairLines }) => {
        const clipped = pairLines.map((pair) => pair.pairReadingCount);
        return way === 'plate' && readingLines.some(({ readingCount }) => readingCount > Math.max(...clipped) || readingCount < Math.min(...clipped));
      },
      {
        lead: 'Some readings lie outside your clips. Clip where the plate reads like that.',
        say: 'Some readings of the plate lie outside all the clips that set it. There the line is a guess: clip where it reads like that, and put those clips in.',
        source: 'common practice',
      },
    ),
    caution(({ way, dryFrom }) => isClipping(way) && dryFrom === 'dried', {
      lead: 'Dry grass can catch fire in a microwave. Stay with it.',
      life: true,
      say: 'Stay with the microwave while a sample dries and keep a cup of water in it. Dry grass can catch fire.',
      source: 'common practice',
    }),
    caution(({ eatenFrom, stayDays }) => eatenFrom === 'by-stay' && stayDays > 7, {
      lead: 'Past a week in one paddock stock waste more: these days are too many.',
      say: 'The share eaten is read at seven days. In a longer stay stock trample and pass over more, and bite the new leaf a second time, so the days come out too many.',
      source: 'common practice',
    }),
  ],
  limits: [
    'It counts what stands today. Growth adds days, and weather takes some away, while stock graze.',
    'The range tells how much your places differ. It does not know of plots picked by eye, wet bags or a poor scale, and a patchy stand needs more plots than it says.',
    'Appetite guides err by about 15 percent either way, on top of the range shown.',
    'It counts all that is in the bag. Leave out weeds and brush that stock will not eat, and take toxic plants seriously: have a plant that you do not know named before stock go in.',
    'A plate counts only by a line through ten clips of your own or more. Printed equations come from other grass and are not used. The line holds for this grass and this season; set the plate anew when either changes.',
    'It does not tell feed value. Send a sample to a laboratory if stock must gain or nurse on it.',
  ],
  note: (values, show) => {
    const { sampleCount, neededPlots, availableLbPerAc, grazingForDays } = values;
    const cut = isCutUnsaid(values)
      ? `; where it was cut was not said, so read as at the ground (${show('cutHighGrazingDays')} if at the stubble)`
      : '';
    return availableLbPerAc === 0
      ? `On ${show('areaAc')} nothing stands above the stubble (${show('sampleCount')} places measured). Nothing to graze now${cut}.`
      : `About ${show('availableLbPerAc')} stands above the stubble on ${show('areaAc')}. Stock eat ${show('demandLbPerDay')}, so it is ${grazingForDays < 1 ? 'less than a day' : `about ${show('grazingForDays')}`} of grazing (${show('lowGrazingDays')} to ${show('highGrazingDays')}). ${show('sampleCount')} places measured${sampleCount < neededPlots ? `; ${show('neededPlots')} would bring it within ${show('withinPercent')}` : ''}${cut}.`;
  },
  picture: {
    kind: 'spans',
    lanes: [
      { of: 'lowGrazingDays', says: 'at the low end' },
      { of: 'grazingForDays', says: 'as measured' },
      { of: 'highGrazingDays', says: 'at the high end' },
    ],
    spanSays: 'grazed',
    mark: { at: 'grazingForDays', says: 'down to the stubble' },
  },
  wholes: [{ whole: 'standingLbPerAc', parts: ['eatenLbPerAc', 'trampledLbPerAc', 'stubbleKeptLbPerAc'] }],
  sources: [
    'umaine-pasture-lesson-1',
    'volesky-bloat-2023',
    'msu-fall-bloat',
    'penn-state-agronomy-guide',
    'missouri-sample-size',
    'nist-norris',
    'dillard-2016',
    'white-b5036',
    'uky-multispecies',
    'coffey-hale-parasites',
    'swinker-laminitis-2013',
    'rangelands-gateway-matching',
    'county-aum-handout',
    'smith-agr191',
    'nrph-2003',
    'srm-1998',
    'ndmc-ranch-plan',
    'lory-fall-nitrogen-2022',
    'drought-horse-pasture',
    'extension-fescue-mares',
    'oregon-fescue-mares',
  ],
  topic: 'grass',
  order: 10,
  guides: ['measuring-forage'],
});
