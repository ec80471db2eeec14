import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

/** What was seen, as a query, and the class that the sheet gives it. */
const seen = [
  ['too loose to sample, falls through the sieve', 'samples.seen=dry', '0'],
  ['half lost within 5 seconds', 'samples.seen=by-5', '1'],
  ['half lost between 5 and 30 seconds', 'samples.seen=by-30', '2'],
  ['half lost between 30 and 300 seconds', 'samples.seen=by-300', '3'],
  ['under 10 percent left after five dips', 'samples.seen=crumbs', '3'],
  ['10 to 25 percent left', 'samples.seen=some', '4'],
  ['25 to 75 percent left', 'samples.seen=half', '5'],
  ['75 to 100 percent left', 'samples.seen=most', '6'],
] as const;
const apart = { source: 'soil-quality-test-kit-2001', where: 'chapter 9, made-up fragments worked by hand', seen: 'computed' } as const;

// No published test with its samples was found; means, shares and spreads below are arithmetic by hand.
export default defineCases(definition, [
  ...seen.map(
    ([name, query, soilClass]): Case => ({
      name,
      query,
      expect: { 'lines.0.soilClass': soilClass, meanClass: soilClass },
      source: 'herrick-2001',
      where: 'criteria for stability classes, as in a methods sheet',
      seen: 'transcription',
    }),
  ),
  {
    name: 'four samples in classes 6, 6, 4, 4: spread is the square root of 4/3',
    query: 'samples.seen=most,most,some,some',
    expect: { meanClass: '5.00', topClassPercent: '50', spread: '1.1547', holds: 'partly' },
    ...apart,
  },
  {
    name: 'sixteen samples, as many as the guide takes',
    query: 'samples.seen=most,most,half,half,some,most,half,by-300,some,half,most,half,some,half,most,half',
    expect: { meanClass: '5.00', topClassPercent: '31.25', spread: '0.894' },
    ...apart,
  },
  {
    name: 'a summary that calls more than 5 good',
    query: 'samples.seen=most,most,most,half',
    expect: { holds: 'well' },
    source: 'arvalis-slake-test',
    where: 'scores 0 to 6, good above 5; the word is ours',
    seen: 'practice',
  },
  {
    name: 'seven samples a place: t at 12 degrees of freedom',
    query: 'samples.seen=half,some,most,half,some,most,half',
    expect: { studentTimes: '2.179' },
    source: 'nist-sematech-handbook',
    where: 'upper critical values, 12 degrees of freedom, upper tail 0.025',
    seen: 'transcription',
  },
]);
