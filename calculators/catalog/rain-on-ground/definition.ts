import { caution, defineCalculator } from '../../kit/define.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import { ranged, shown } from '../../kit/shown.ts';
import { byCase, formula, tabulate, tex } from '../../kit/steps.ts';
import { compute } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';

type Drunk = Pick<ValuesOf<typeof inputs>, 'stock'> & { readonly stockDays: number; readonly highStockDays: number };
/** A figure of one's own is in both ends, and no list asks for it. */
function drinkRange({ stock, stockDays, highStockDays }: Drunk): string {
  const isOwn = stock.map(({ kind }) => kind === 'other');
  if (isOwn.every(Boolean)) return 'by your own figure a head';
  if (stockDays === highStockDays) return 'all by one figure a head';
  const own = isOwn.some(Boolean) ? '; your own figures are the same in both' : '';
  return highStockDays / stockDays < 1.05
    ? `the published lists differ by less than 5 percent${own}`
    : `{low} by the published list that asks for most, {high} by the one that asks for least${own}`;
}

export default defineCalculator({ slug: 'rain-on-ground', version: 3, title: 'Gallons from rain on an acre or a roof', inputs, compute }).describe({
  question: 'How much water is this rain on my ground?',
  lead: 'Inches of rain turned into gallons on your acres or your roof, then into tank-fulls and days of water for your stock.',
  searchWords:
    'acre-inch, 27,154 gallons, inch of rain on an acre, roof catchment, barn roof water, rainwater harvesting, rain barrel, cistern, how many gallons in an inch of rain, tons of water',
  first: [['rainIn', 'firstCanIn'], 'surface', ['areaAc', 'lengthFt', 'longPacesCount', 'roofLengthFt']],
  groups: [
    {
      title: 'How it was measured',
      inputs: ['rainFrom', 'secondCanIn', 'widthFt', 'shortPacesCount', 'paceFt', 'roofWidthFt', 'caughtPercent'],
      summary:
        '{rainFrom}, {secondCanIn} in the second, {widthFt} the other way, {#shortPacesCount} paces the other way, {paceFt} a pace, {roofWidthFt} wide, {caughtPercent} caught',
    },
    {
      title: 'The tank',
      inputs: ['tankFrom', 'tankGal', 'tankAcrossFt', 'tankLengthFt', 'tankWidthFt', 'tankDepthFt'],
      summary: '{tankGal}, {tankAcrossFt} across, {tankLengthFt} long, {tankWidthFt} wide, {tankDepthFt} deep',
    },
    { title: 'The stock', inputs: ['stock', 'airF'], summary: '{stock}, {airF} at the hottest' },
  ],
  quantities,
  results: [
    { of: 'waterGal', said: 'of rain fell there', gap: ['less fell there', 'more fell there'] },
    { of: 'caughtGal', when: ({ surface }) => surface === 'roof' },
    { of: 'tankCount' },
    ranged('stockDays', ['stockDays', 'highStockDays'], { says: drinkRange }),
    { of: 'waterTon' },
    { of: 'surfaceAc', when: ({ surface }) => surface === 'sides' || surface === 'paces' },
    shown('herdGalPerDay', 'otherRains'),
  ],
  steps: [
    byCase('depthIn', {
      says: 'The rain.',
      source: 'common practice',
      ways: [
        { when: ({ rainFrom }) => rainFrom === 'gauge', formula: tex`\q{rainIn}` },
        { formula: tex`\frac{\q{firstCanIn} + \q{secondCanIn}}{2}`, because: 'the mean of two cans beats one' },
      ],
    }),
    byCase('surfaceAc', {
      says: 'The area as the rain sees it, from above. An acre is 43,560 square feet.',
      source: 'common practice',
      ways: [
        { when: ({ surface }) => surface === 'acres', formula: tex`\q{areaAc}` },
        { when: ({ surface }) => surface === 'sides', formula: tex`\frac{\q{lengthFt} \times \q{widthFt}}{43560}` },
        {
          when: ({ surface }) => surface === 'paces',
          formula: tex`\frac{\q{longPacesCount} \times \q{paceFt} \times \q{shortPacesCount} \times \q{paceFt}}{43560}`,
        },
        { formula: tex`\frac{\q{roofLengthFt} \times \q{roofWidthFt}}{43560}`, because: 'a roof counts by what it covers, not by its slope' },
      ],
    }),
    formula('waterFt3', tex`\q{depthIn} \times \q{surfaceAc} \times 3630`, {
      says: 'An inch on an acre is a twelfth of 43,560, 3,630 cubic feet.',
      source: 'freedictionary-acre-inch, acre-inch',
    }),
    formula('waterGal', tex`\q{waterFt3} \times \frac{1728}{231}`, {
      says: 'A cubic foot has 1,728 cubic inches, a gallon 231.',
      source: 'common practice',
    }),
    formula('waterTon', tex`\frac{\q{waterFt3} \times 3.048^3}{0.45359237 \times 2000}`, {
      says: 'Its weight: a foot is 3.048 decimeters, a liter of water weighs a kilogram, a pound is 0.45359237 of one, a ton 2,000 lb.',
      source: 'common practice',
    }),
    byCase('usablePercent', {
      says: 'The share that is counted below.',
      ways: [
        {
          when: ({ surface }) => surface !== 'roof',
          formula: '100',
          because: 'on ground all of it is counted, to show its size; nobody can catch it all',
        },
        { formula: tex`\q{caughtPercent}`, because: 'off a roof, what reaches the tank' },
      ],
    }),
    formula('caughtGal', tex`\q{waterGal} \times \frac{\q{usablePercent}}{100}`, { says: 'In gallons.' }),
    formula('lostGal', tex`\q{waterGal} - \q{caughtGal}`, {
      onlyWhen: ({ surface }) => surface === 'roof',
      says: 'What wets the roof, splashes over, or is let go.',
    }),
    byCase('fullTankGal', {
      says: 'One tank-full.',
      source: 'weathers-1913, water tanks',
      ways: [
        { when: ({ tankFrom }) => tankFrom === 'known', formula: tex`\q{tankGal}` },
        {
          when: ({ tankFrom }) => tankFrom === 'round',
          formula: tex`\frac{\pi}{4} \times \q{tankAcrossFt}^2 \times \q{tankDepthFt} \times \frac{1728}{231}`,
        },
        { formula: tex`\q{tankLengthFt} \times \q{tankWidthFt} \times \q{tankDepthFt} \times \frac{1728}{231}` },
      ],
    }),
    formula('tankCount', tex`\frac{\q{caughtGal}}{\q{fullTankGal}}`, { says: 'In tank-fulls.' }),
    tabulate('drinkers', {
      says: 'What the stock drink when the day reaches {airF}: head times what one drinks. Printed lists disagree, so the plan takes the highest of them, and never less for a hotter day; where no list goes by heat, half as much again from 80 °F on (common practice).',
      source: 'gould-fs1090, and the other lists named under sources',
      formulas: { allGalPerDay: tex`\q{countHead} \times \q{headGalPerDay}`, leastAllGalPerDay: tex`\q{countHead} \times \q{leastHeadGalPerDay}` },
      sums: { herdGalPerDay: 'allGalPerDay', leastHerdGalPerDay: 'leastAllGalPerDay' },
    }),
    formula('stockDays', tex`\frac{\q{caughtGal}}{\q{herdGalPerDay}}`, { says: 'How many days that waters them.' }),
    formula('highStockDays', tex`\frac{\q{caughtGal}}{\q{leastHerdGalPerDay}}`, { says: 'And if they drink no more than the lowest list says.' }),
    tabulate('otherRains', {
      says: 'The same for other rains.',
      formulas: { fallGal: tex`\q{fallIn} \times \q{surfaceAc} \times 3630 \times \frac{1728}{231} \times \frac{\q{usablePercent}}{100}` },
    }),
  ],
  cautions: [
    caution(({ surface }) => surface !== 'roof', {
      lead: 'This is what fell, not what you have: no tank or pond catches it all.',
      say: 'This is what fell, not what you have. On ground it soaks in, dries off or runs away. The tank-fulls and the days show how much it is; no tank or pond catches it all.',
      source: 'common practice',
    }),
    caution(({ surface }) => surface === 'roof', {
      lead: 'Test roof water before people drink it, and let the first rain go.',
      say: 'Roof water carries droppings, dust and whatever the roof is made of. Let the first of each rain go, and do not catch water for drinking off lead, treated wood or old asbestos sheets. Test it before people drink it. Never join it to a house or town line without an air gap; ask who licenses plumbing where you are.',
      source: 'common practice',
    }),
    caution(({ surface }) => surface === 'roof', {
      lead: 'Never climb into a closed tank or cistern, not even to pull one out.',
      life: true,
      say: 'Never climb into a cistern or a closed tank, not even to pull somebody out. The air in it can knock a person down at once, and most who die in such places went in to rescue another. Call 911 from outside. Cleaning and repair inside are for people trained and equipped for confined spaces.',
      source: 'niosh-86-110, summary',
    }),
    caution(({ surface }) => surface === 'roof', {
      lead: 'Stand the tank on firm, level ground, with a lid that locks.',
      life: true,
      say: 'Water weighs more than 8 lb a gallon (1 kg a liter). Stand a tank on firm, level ground, keep children out of it with a lid that locks, and take care on the ladder at the gutter.',
      source: 'common practice',
    }),
    caution(({ surface, stockDays }) => surface === 'roof' && stockDays < 3, {
      lead: 'Less than three days of water: never make it their only supply.',
      life: true,
      say: 'This is less than three days of water for these stock, the reserve that is asked for in case a pump or a line breaks. Do not move them to it as their only water.',
      source: 'klausmeyer-watering, third paragraph',
    }),
    caution(
      ({ rainFrom, firstCanIn, secondCanIn }) =>
        rainFrom === 'two-cans' && Math.abs(firstCanIn - secondCanIn) > 0.1 * Math.max(firstCanIn, secondCanIn),
      {
        lead: 'The two cans differ by more than a tenth: look before you use the mean.',
        say: 'The two cans differ by more than a tenth. One of them may stand under a tree, lean, or have sides that are not straight. Look before you use the mean.',
        source: 'common practice',
      },
    ),
  ],
  limits: [
    'One gauge tells the rain at one post. A summer storm can leave twice as much a mile off.',
    'It does not say how much soaks in or runs off. “Runoff from rainfall depth” does.',
    'The shares for a roof are a common figure, not a measurement of your gutters. A tank that is full already catches nothing.',
    'Drinking varies with the feed, the salt and the wind as well as the heat. Watch your own trough for a day.',
    'The water of a pond or tank also dries off and leaks; days here count drinking only.',
  ],
  note: ({ surface, caughtGal }, show) => {
    if (surface !== 'roof')
      return `${show('depthIn')} of rain on ${show(surface === 'acres' ? 'areaAc' : 'surfaceAc')} is ${show('waterGal')}, as much as ${show('tankCount')} tank-fulls or ${show('stockDays')} of stock water.`;
    return caughtGal < 1
      ? `${show('depthIn')} of rain on this roof brings less than a gallon to the tank.`
      : `${show('depthIn')} of rain on this roof is ${show('waterGal')}, ${show('caughtGal')} of it in the tank: ${show('tankCount')} tank-fulls, ${show('stockDays')} of water for the stock.`;
  },
  picture: { kind: 'face', shownWhen: { surface: ['acres', 'sides', 'paces'] }, lies: { depth: 'depthIn', amount: 'waterGal' } },
  morePictures: [
    {
      kind: 'shares',
      shownWhen: { surface: 'roof' },
      whole: 'waterGal',
      parts: [
        { of: 'caughtGal', tone: 'water' },
        { of: 'lostGal', tone: 'lost' },
      ],
    },
    { kind: 'lines', rows: 'otherRains', x: 'fallIn', ys: ['fallGal'] },
  ],
  sources: [
    'freedictionary-acre-inch',
    'math-central-roof-2006',
    'mother-earth-news-roof-rain',
    'gould-fs1090',
    'beef-summer-water',
    'k-state-watering-handbook',
    'sigler-mt202209ag-2022',
    'noble-water-1999',
    'burbrink-2022',
    'mwps14-new-hampshire',
    'german-c274-2008',
    'pennington-2014',
    'weathers-1913',
    'klausmeyer-watering',
    'niosh-86-110',
  ],
  changes: [
    { version: 2, say: 'On days under 70 °F stock drink the most that lists for such days have. Before, a list that begins at 70 °F was asked too.' },
    {
      version: 3,
      say: 'Sheep, goats, horses and llamas, for which no list goes by heat, are counted with half as much again from 80 °F (27 °C) on. A nursing doe never drinks less than a plain goat.',
    },
  ],
  topic: 'rain',
  order: 10,
  guides: ['where-rain-goes', 'keeping-a-rain-record'],
});
