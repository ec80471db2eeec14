import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';
import { byCase, formula, lookup, tabulate, tex, when } from '../../kit/steps.ts';
import { printNumber } from '../../units/printQuantity.ts';
import { compute, leastToldIn } from './compute.ts';
import { inputs, lacksNumber, noGroupA } from './inputs.ts';
import { quantities } from './quantities.ts';

interface Told {
  readonly lowRunoffIn: number;
  readonly highRunoffIn: number;
  readonly sod: string;
  readonly wetness: string;
}
/** The range in words. On thin cover the tables’ figure for dry ground misleads, so it is named and set aside. */
function rangeWords({ lowRunoffIn, highRunoffIn, sod, wetness }: Told): string {
  if (highRunoffIn < leastToldIn) return 'too small for the method if the ground was wet, too';
  if (printNumber(lowRunoffIn, 1) === printNumber(highRunoffIn, 1)) return 'about the same whether the ground was dry or wet';
  if (sod === 'thin' && wetness === 'dry') return '{betweenRunoffIn} if the ground was in between, {high} if wet; on thin cover go by these';
  if (sod === 'thin') return wetness === 'wet' ? '{betweenRunoffIn} if the ground was in between' : '{high} if the ground was wet';
  return lowRunoffIn < leastToldIn
    ? 'too small a storm for the method if the ground was dry, {high} if wet'
    : '{low} if the ground was dry, {high} if wet';
}

const shortRange = (told: Told): string => {
  if (told.sod === 'thin' && told.wetness !== 'wet') return '{high} if the ground was wet';
  if (told.sod === 'thin') return '{betweenRunoffIn} if the ground was in between';
  return told.lowRunoffIn < leastToldIn && told.highRunoffIn >= leastToldIn ? 'next to none if dry, {high} if wet' : rangeWords(told);
};

export default defineCalculator({
  slug: 'storm-runoff',
  version: 1,
  title: 'Runoff from rainfall depth',
  inputs,
  refusals: [
    {
      at: 'wetness',
      when: ({ wetness }) => wetness === 'frozen',
      say: 'This method does not reach frozen or snow-covered ground: nearly all of the rain can run off there. Choose how wet unfrozen ground was.',
    },
    { at: 'soilGroup', when: ({ ground, ...one }) => ground === 'one' && lacksNumber(one), say: noGroupA },
  ],
  compute,
}).describe({
  question: 'How much of that rain ran off?',
  lead: 'How much of a storm leaves your ground, and how much would have stayed under other cover. Your own rain, your own acres.',
  searchWords:
    'curve number, how much rain soaked in, gully washer, flash flood, overland flow, sheet flow, rain lost, how much water ran off my pasture, hydrologic soil group',
  first: ['rainIn', 'groundCoverPercent', 'grazing', 'wetness'],
  groups: [
    {
      title: 'The ground',
      inputs: ['ground', 'areaAc', 'parts', 'soilGroup', 'texture', 'barrier', 'cover', 'woodsFloor', 'tilth', 'curveNumber'],
      summary: '{areaAc}, {ground}, {soilGroup}, {parts}',
    },
    { title: 'Ways of counting', inputs: ['combine', 'abstraction'], summary: 'used up first: {abstraction}' },
  ],
  handout: ['runoffIn', 'stayedIn', 'runoffGal', 'firstIn', 'soakedIn', 'stayedGal'],
  quantities,
  results: [
    ranged('method', ['lowRunoffIn', 'highRunoffIn'], {
      said: 'by this method',
      when: ({ method }) => method === 'too-small',
      says: ({ highRunoffIn }) => (highRunoffIn < leastToldIn ? 'even if the ground was wet' : '{high} if the ground was wet'),
    }),
    ranged('runoffIn', ['lowRunoffIn', 'highRunoffIn'], {
      said: 'ran off',
      gap: ['less ran off that ground', 'more ran off that ground'],
      when: ({ method }) => method !== 'too-small',
      says: rangeWords,
      short: shortRange,
    }),
    { of: 'betweenRunoffIn', when: ({ sod, wetness, betweenRunoffIn }) => sod === 'thin' && wetness !== 'average' && betweenRunoffIn >= leastToldIn },
    { of: 'stayedIn' },
    shownWhen(({ method }) => method !== 'too-small', 'runoffPercent', 'runoffGal'),
    shown('stayedGal', 'firstIn'),
    { of: 'soakedIn', when: ({ method }) => method !== 'too-small' },
    shownWhen(({ ground }) => ground === 'parts', 'middleCurveNumber', 'lines'),
  ],
  steps: [
    tabulate('lines', {
      onlyWhen: ({ ground }) => ground === 'parts',
      says: 'Each part: its class and curve number from the table, the number moved to how wet the ground was, then what it can hold, what is used up first, and what runs off.',
      source: 'tr55-1986, eq. 2-1 to 2-4',
      formulas: {
        handbookStorageIn: tex`\frac{1000}{\q{curveNumber}} - 10`,
        storageIn: [
          {
            when: ({ abstraction }) => abstraction === 'ia-20',
            formula: tex`\q{handbookStorageIn}`,
            because: 'the handbooks’ convention takes it as it is',
          },
          { formula: tex`1.33 \times \q{handbookStorageIn}^{1.15}`, because: 'moved to the 0.05 convention; holds in inches only' },
        ],
        firstIn: [
          { when: ({ abstraction }) => abstraction === 'ia-20', formula: tex`0.2 \times \q{storageIn}` },
          { formula: tex`0.05 \times \q{storageIn}` },
        ],
        heldIn: tex`\min(\q{rainIn}, \q{firstIn})`,
        partRunoffIn: [
          { when: ({ rainIn, firstIn }) => rainIn <= firstIn, formula: '0', because: 'the rain is used up before any runs' },
          { formula: tex`\frac{(\q{rainIn} - \q{firstIn})^2}{\q{rainIn} - \q{firstIn} + \q{storageIn}}` },
        ],
        runoffAcIn: tex`\q{areaAc} \times \q{partRunoffIn}`,
        firstAcIn: tex`\q{areaAc} \times \q{firstIn}`,
        heldAcIn: tex`\q{areaAc} \times \q{heldIn}`,
        numberAcres: tex`\q{areaAc} \times \q{tabledCurveNumber}`,
      },
      sums: {
        totalAc: 'areaAc',
        totalRunoffAcIn: 'runoffAcIn',
        totalFirstAcIn: 'firstAcIn',
        totalHeldAcIn: 'heldAcIn',
        totalNumberAcres: 'numberAcres',
      },
    }),
    when(
      ({ ground }) => ground === 'one',
      [
        lookup('condition', {
          says: 'The class of the table, from the cover and how it is grazed. Soil group {group}.',
          source: 'tr55-1986, notes of tables 2-2b to 2-2d',
        }),
        lookup('tabledCurveNumber', { says: 'The curve number for that: the higher, the more runs off.', source: 'tr55-1986, tables 2-2b to 2-2d' }),
      ],
    ),
    formula('middleCurveNumber', tex`\frac{\q{totalNumberAcres}}{\q{totalAc}}`, {
      onlyWhen: ({ ground, combine }) => ground === 'parts' && combine === 'by-number',
      says: 'One curve number for all parts, each counted by its acres.',
      source: 'tr55-1986, example 2-1',
    }),
    when(
      ({ ground, combine }) => ground === 'one' || combine === 'by-number',
      [
        lookup('middleWetCurveNumber', { says: 'The number for how wet the ground was: {wetness}.', source: 'nrcs-neh630-10-2004, table 10-1' }),
        formula('middleHandbookStorageIn', tex`\frac{1000}{\q{middleWetCurveNumber}} - 10`, {
          says: 'What such ground can hold.',
          source: 'tr55-1986, eq. 2-4',
        }),
        byCase('middleStorageIn', {
          says: 'In the convention that was chosen.',
          source: 'hawkins-2002, conversion of S',
          ways: [
            { when: ({ abstraction }) => abstraction === 'ia-20', formula: tex`\q{middleHandbookStorageIn}` },
            { formula: tex`1.33 \times \q{middleHandbookStorageIn}^{1.15}` },
          ],
        }),
      ],
    ),
    byCase('firstIn', {
      says: 'Rain used up before any runs: it wets leaves and litter, fills hollows, soaks in at first.',
      source: 'tr55-1986, eq. 2-2',
      ways: [
        { when: ({ ground, combine }) => ground === 'parts' && combine === 'by-runoff', formula: tex`\frac{\q{totalFirstAcIn}}{\q{totalAc}}` },
        { when: ({ abstraction }) => abstraction === 'ia-20', formula: tex`0.2 \times \q{middleStorageIn}` },
        { formula: tex`0.05 \times \q{middleStorageIn}` },
      ],
    }),
    byCase('heldFirstIn', {
      says: 'As much of that as this rain could fill.',
      ways: [
        { when: ({ ground, combine }) => ground === 'parts' && combine === 'by-runoff', formula: tex`\frac{\q{totalHeldAcIn}}{\q{totalAc}}` },
        { formula: tex`\min(\q{rainIn}, \q{firstIn})` },
      ],
    }),
    byCase('runoffIn', {
      says: 'What runs off, as a depth over all the ground.',
      source: 'tr55-1986, eq. 2-1',
      ways: [
        {
          when: ({ ground, combine }) => ground === 'parts' && combine === 'by-runoff',
          formula: tex`\frac{\q{totalRunoffAcIn}}{\q{totalAc}}`,
          because: 'each part run by itself, then counted by its acres',
        },
        { when: ({ rainIn, firstIn }) => rainIn <= firstIn, formula: '0', because: 'the rain is used up before any runs' },
        { formula: tex`\frac{(\q{rainIn} - \q{firstIn})^2}{\q{rainIn} - \q{firstIn} + \q{middleStorageIn}}`, because: 'one number for all parts' },
      ],
    }),
    lookup('lowRunoffIn', { says: 'The same sums with the ground dry before the storm.', source: 'nrcs-neh630-10-2004, table 10-1' }),
    lookup('betweenRunoffIn', { onlyWhen: ({ sod }) => sod === 'thin', says: 'And in between.', source: 'nrcs-neh630-10-2004, table 10-1' }),
    lookup('highRunoffIn', { says: 'The same sums with the ground wet before the storm.', source: 'nrcs-neh630-10-2004, table 10-1' }),
    formula('runoffPercent', tex`\frac{\q{runoffIn}}{\q{rainIn}} \times 100`, { says: 'As a share of the rain.' }),
    formula('stayedIn', tex`\q{rainIn} - \q{runoffIn}`, { says: 'The rest stayed: rain in is runoff out and what is left.' }),
    formula('soakedIn', tex`\q{stayedIn} - \q{heldFirstIn}`, { says: 'Of that, past what is used up first.' }),
    formula('runoffGal', tex`\q{runoffIn} \times \q{totalAc} \times \frac{3630 \times 1728}{231}`, {
      says: 'In gallons: an inch on an acre is 3,630 cubic feet, a cubic foot 1,728 cubic inches, a gallon 231 of them.',
      source: 'common practice',
    }),
    formula('stayedGal', tex`\q{stayedIn} \times \q{totalAc} \times \frac{3630 \times 1728}{231}`, { says: 'And what stayed, by volume.' }),
  ],
  cautions: [
    caution(({ sod }) => sod === 'thin', {
      lead: 'Less than half of this ground is covered.',
      say: 'Less than half of this ground is covered. Bare ground crusts, and a dry crust sheds rain instead of drinking it. Do not count on the dry figure here; go by the one in between and the wet one.',
      source: 'common practice',
    }),
    caution(({ lines }) => lines.some((line) => line.tabledCurveNumber < 40), {
      lead: 'The method is unsure on ground that takes water this well.',
      say: 'One of these grounds has a curve number under 40. The handbook calls the method unsure there; look at the figure as “little”.',
      source: 'tr55-1986, limits',
    }),
    caution(({ runoffIn }) => runoffIn >= 1, {
      lead: 'This much runoff fills a draw in minutes. Keep people and stock out of it.',
      life: true,
      say: 'Runoff like this can fill a draw within minutes and wash out a crossing. Keep people, stock and machines out of moving water: turn around, even where it looks shallow, and never drive through it. A pond, dam or waterway to catch it is an engineer’s job and needs local permits.',
      source: 'common practice',
    }),
  ],
  limits: [
    'It takes the storm, or the day’s rain, as a whole. The same rain in one hard burst runs off far more than the same rain in a day; this cannot tell them apart. “Time to ponding in a hard rain” takes a burst minute by minute, so for one rain the two can differ by several times. Neither measured your ground.',
    'The numbers come from handbook tables made on many small watersheds. Nobody measured yours. Two storms of one depth on one field can differ by more than two managements do.',
    'Under half an inch of runoff the handbook itself calls the method rough. “Too small for this method” does not mean that nothing ran.',
    'The tables are coarse: three classes of cover. Ground that just passes into the next class has hardly changed.',
    'Curve numbers under 30 are run as 30. Frozen ground, snow and paved ground are not covered.',
  ],
  note: ({ method, lowRunoffIn, betweenRunoffIn, highRunoffIn, ground, sod, wetness }, show) => {
    const between = betweenRunoffIn < leastToldIn ? 'next to none' : show('betweenRunoffIn');
    if (sod === 'thin' && wetness === 'dry' && highRunoffIn >= leastToldIn)
      return `Of ${show('rainIn')} of rain ${between} to ${show('highRunoffIn')} ran off ground so thinly covered; the tables’ ${show('runoffIn')} for dry ground is too little where it crusts.`;
    if (method === 'too-small') {
      const wet = highRunoffIn < leastToldIn ? '' : `; if it was wet before, up to ${show('highRunoffIn')} ran off`;
      return `${show('rainIn')} of rain: too small a storm for the curve-number method on this ground${wet}.`;
    }
    const low = lowRunoffIn < leastToldIn ? 'next to none' : show('lowRunoffIn');
    const thin = wetness === 'wet' ? `${between} if it was only moist before` : `${show('highRunoffIn')} if it was wet before`;
    const range = sod === 'thin' ? `${thin}; the cover is thin` : `${low} if the ground was dry before, ${show('highRunoffIn')} if wet`;
    const area = ground === 'one' ? show('areaAc') : show('totalAc');
    return `Of ${show('rainIn')} of rain about ${show('runoffIn')} ran off (${range}), ${show('runoffGal')} from ${area}; ${show('stayedIn')} stayed.`;
  },
  wholes: [
    { whole: 'rainIn', parts: ['runoffIn', 'stayedIn'] },
    { whole: 'stayedIn', parts: ['heldFirstIn', 'soakedIn'] },
  ],
  picture: {
    kind: 'face',
    coverPercent: 'coverPercent',
    water: { fellIn: 'rainIn', ranOffIn: 'runoffIn', heldIn: 'heldFirstIn', soakedIn: 'soakedIn' },
  },
  sources: ['tr55-1986', 'nrcs-neh630-10-2004', 'hawkins-2002', 'nrcs-neh630-07-2009'],
  topic: 'rain',
  order: 20,
  guides: ['where-rain-goes'],
});
