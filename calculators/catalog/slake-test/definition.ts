import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown } from '../../kit/shown.ts';
import { formula, lookup, tabulate, tex, when } from '../../kit/steps.ts';
import { classGap, compute, fewestSamples } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';

const spots = { plants: 'from under plants', bare: 'from bare spots', mixed: 'from under plants and bare spots' } as const;

export default defineCalculator({ slug: 'slake-test', version: 1, title: 'Slake test: does soil hold together in water', inputs, compute }).describe({
  question: 'Does it hold together?',
  lead: 'Lower dry crumbs of soil into water and answer what you see. Each gets its class; then the mean, the share that stayed whole, and two places side by side.',
  searchWords:
    'slaking, aggregate stability, soil stability class, soil crumbs in water, crusting, clod test, soil structure, sieve and dip, soil health demonstration, healthy soil',
  first: ['samples', 'soil', 'spot', 'dried'],
  quantities,
  compares: {
    as: 'mean',
    // Air-dry crumbs are alike wet whatever the ground was that day.
    movedBy: ['season', 'hands'],
    rows: 'lines',
    column: 'soilClass',
    middle: 'meanClass',
    same: {
      soil: 'the soil did not feel the same on the two days, so texture and care can’t be told apart',
      spot: 'one day’s crumbs are from under plants, the other’s from bare spots',
    },
    bars: {
      dried: { damp: 'the crumbs were not air-dry, and damp ones hold together in water whatever they are worth' },
      soil: { differs: 'two places that feel different stood together, so texture and care can’t be told apart' },
      spot: { mixed: 'crumbs from under plants and from bare spots were mixed, so the mean depends on how many there were of each' },
    },
  },
  results: [
    { of: 'holds', said: 'by the slake test' },
    ranged('meanClass', ['lowestClass', 'highestClass'], {
      gap: ['classes lower on that side', 'classes higher on that side'],
      between: classGap,
      says: 'the samples ran from {low} to {high}',
    }),
    { of: 'comparable', when: ({ comparable }) => comparable === 'no' },
    { of: 'topClassPercent' },
    { of: 'spread', when: ({ count }) => count > 1 },
    { of: 'scatterClasses', when: ({ scatterClasses }) => scatterClasses > 0 },
    shown('count', 'lines'),
  ],
  steps: [
    tabulate('lines', {
      says: 'The class of each sample by what was seen. Before it was wet 0; half gone by 5 seconds 1, by 30 seconds 2, by 5 minutes 3; if it held, by what five dips left: under a tenth 3, under a quarter 4, under three quarters 5, more 6.',
      source: 'herrick-2001, stability classes',
      formulas: { gapSquare: tex`(\q{soilClass} - \q{meanClass})^2` },
      sums: { classSum: 'soilClass', gapSum: 'gapSquare', topCount: 'isTop', middleCount: 'isMiddle', lowCount: 'isLow', goneCount: 'isGone' },
    }),
    formula('meanClass', tex`\frac{\q{classSum}}{\q{count}}`, { says: 'Their mean.', source: 'soil-quality-test-kit-2001, chapter 9 (from memory)' }),
    lookup('holds', {
      says: 'Over 5 counts as good. Under 3, the usual piece is gone within five minutes; that line is our own. Damp samples are not judged.',
      source: 'arvalis-slake-test, good above 5',
    }),
    formula('topClassPercent', tex`100 \times \frac{\q{topCount}}{\q{count}}`, {
      says: 'Samples in class 6, of all. Two places with one mean can differ in this.',
      source: 'soil-quality-test-kit-2001, chapter 9 (from memory)',
    }),
    formula('spread', tex`\sqrt{\frac{\q{gapSum}}{\q{count} - 1}}`, {
      onlyWhen: ({ count }) => count > 1,
      says: 'How far the samples stand from their mean, on the whole.',
      source: 'common practice',
    }),
    when(
      ({ scatterClasses }) => scatterClasses > 0,
      [
        lookup('studentTimes', {
          says: 'Student’s t, 95 percent, for two places with this many samples each.',
          source: 'nist-sematech-handbook, table of t',
        }),
        formula('scatterClasses', tex`\q{studentTimes} \times \q{spread} \times \sqrt{\frac{2}{\q{count}}}`, {
          says: 'What two places with as many samples and as much spread can differ by chance.',
          source: 'nist-sematech-handbook, two-sample t interval',
        }),
      ],
    ),
  ],
  cautions: [
    caution(() => true, {
      lead: 'In front of people use clear plastic, not glass.',
      say: 'In front of people use clear plastic, not glass. Keep water off cords and off the floor where people walk.',
      source: 'common practice',
    }),
    caution(({ dried }) => dried === 'damp', {
      lead: 'Dry them first: damp crumbs flatter the soil.',
      say: 'Dry them first. Damp crumbs hold together in water even where dry ones burst, so this would flatter the soil.',
      source: 'herrick-2001, air-dry samples',
    }),
    caution(({ soil }) => soil === 'differs', {
      lead: 'The two places feel different: compare each with itself, a year later.',
      say: 'The two places differ in texture, so the classes say as much about sand and clay as about how the ground was treated. Compare each place with itself, a year later.',
      source: 'arvalis-slake-test, compare within one field',
    }),
    caution(({ soil }) => soil === 'sandy', {
      lead: 'Sandy soil may never reach class 6, however well it is kept.',
      say: 'Sandy soil has little to bind it and may never reach class 6, however well it is kept.',
      source: 'arvalis-slake-test, sandy soils',
    }),
    caution(({ spot }) => spot === 'mixed', {
      lead: 'Run the samples from plants and from bare spots as two places.',
      say: 'Samples from under plants and from bare spots are mixed here, so the mean depends on how many you took of each. Run them as two places.',
      source: 'common practice',
    }),
    caution(({ count }) => count < fewestSamples, {
      lead: 'Fewer than six samples: one odd crumb moves the mean.',
      say: 'Fewer than six samples. One odd crumb moves the mean by more than a season of care does.',
      source: 'our own',
    }),
  ],
  limits: [
    'It looks at crumbs from the top inch. It says how well they stand up to water, not how fast water goes in or how much soil it carries off.',
    'Half gone is judged by eye. Have one person judge all samples, without knowing which place they are from.',
    'Soil moisture through the season, frost and time since tillage change the class. Compare tests of one season.',
    'Clay that swells can fall apart although it is well kept, and lime or iron can bind soil that is not.',
    'The classes are steps, not inches: a mean of 4 is not twice a mean of 2.',
  ],
  note: ({ spot, holds, comparable, count, lowestClass, highestClass }, show) => {
    const says = {
      damp: 'can’t be judged, the samples were damp',
      well: 'holds together well',
      partly: 'holds for a while and then gives way',
      poorly: 'falls apart',
    }[holds];
    const alike = comparable === 'no' ? ' The two places differ in texture, so they can’t be set side by side.' : '';
    const few = count < fewestSamples && holds !== 'damp' ? ' So few samples give no more than a hint.' : '';
    const classes =
      lowestClass === highestClass ? `all of class ${show('lowestClass')}` : `samples ${show('lowestClass')} to ${show('highestClass')}`;
    return `Slake test, ${show('count')} ${count === 1 ? 'sample' : 'samples'} ${spots[spot]}: mean class ${show('meanClass')} on a scale from 0 (falls apart) to 6 (stays whole), ${count === 1 ? '' : `${classes}, `}${show('topClassPercent')} in the top class: ${says}.${few}${alike}`;
  },
  picture: {
    kind: 'shares',
    whole: 'count',
    parts: [
      { of: 'topCount', tone: 'kept', says: 'stayed whole' },
      { of: 'middleCount', tone: 'lines', says: 'gave way in dips' },
      { of: 'lowCount', tone: 'dots', says: 'gone in 5 minutes, or left little' },
      { of: 'goneCount', tone: 'lost', says: 'gone in 30 seconds' },
    ],
  },
  sources: ['herrick-2001', 'soil-quality-test-kit-2001', 'arvalis-slake-test', 'nist-sematech-handbook'],
  topic: 'tailgate',
  order: 20,
  guides: ['testing-if-soil-holds-together', 'showing-soil-to-a-crowd'],
});
