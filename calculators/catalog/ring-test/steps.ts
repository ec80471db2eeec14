import { byCase, formula, lookup, tabulate, tex, type Working, when } from '../../kit/steps.ts';
import type { Asked, compute } from './compute.ts';

type Results = ReturnType<typeof compute>;
type Values = Asked & Results;
const compares = ({ beside }: Pick<Asked, 'beside'>): boolean => beside !== 'no';
const compared = (values: Values): boolean => compares(values) && values.verdict !== 'too-few';

export const steps: Working<Values, Results> = [
  byCase('ringIn', {
    says: 'Inside width of the ring.',
    ways: [
      {
        when: ({ boreFrom }) => boreFrom === 'filled',
        formula: tex`\sqrt{\frac{4 \times \q{fillWaterMl}}{\pi \times 2.54^3 \times \q{fillDepthIn}}}`,
        because: 'from the water that filled it; a cubic inch is 2.54³ mL',
      },
      { formula: tex`\q{boreIn}`, because: 'as measured' },
    ],
  }),
  formula('depthIn', tex`\frac{4 \times \q{waterMl}}{\pi \times 2.54^3 \times \q{ringIn}^2}`, {
    says: 'How deep one pouring stands in this ring. 444 mL is an inch only in a ring of 5.87 in.',
    source: 'symbiosis-ring-page, water for an inch',
  }),
  tabulate('lines', {
    says: 'Each ring: its rate at the first pouring and at the last. The last one counts, since dry ground drinks the first faster than it can go on doing.',
    source: 'soil-quality-test-kit-2001, chapter 3 (from memory)',
    formulas: {
      firstInPerHr: [
        { when: ({ pouringsCount }) => pouringsCount === 1, formula: tex`\frac{60 \times (\q{depthIn} - \q{leftIn})}{\q{firstMin}}` },
        { formula: tex`\frac{60 \times \q{depthIn}}{\q{firstMin}}` },
      ],
      ringInPerHr: tex`\frac{60 \times (\q{depthIn} - \q{leftIn})}{\q{lastMin}}`,
      totalIn: tex`\q{pouringsCount} \times \q{depthIn} - \q{leftIn}`,
      logRate: tex`\ln(\q{ringInPerHr})`,
      gapSquare: tex`(\q{logRate} - \frac{\q{logSum}}{\q{ringsCount}})^2`,
    },
    sums: { logSum: 'logRate', gapSum: 'gapSquare' },
  }),
  formula('middleInPerHr', tex`\exp(\frac{\q{logSum}}{\q{ringsCount}})`, {
    says: 'The geometric mean of the rings: multiply their rates together and take the root, the square root for two rings, the cube root for three. Rings differ by factors, and one wild ring would pull a plain average away with it.',
    source: 'our own',
  }),
  formula('inchMin', tex`\frac{60}{\q{middleInPerHr}}`, { says: 'Minutes for an inch at that rate.' }),
  lookup('rateClass', {
    says: 'Its name in the list of soil rates. It names the rate of these rings today, not the soil.',
    source: 'usepa-1981-permeability, classes',
  }),
  formula('pondedIn', tex`\frac{\q{depthIn}}{2}`, { says: 'Water in the ring, on average half of a pouring.' }),
  formula(
    'overLowTimes',
    tex`1 + \frac{\q{pondedIn} + \frac{1}{0.36 \times 2.54}}{0.316 \times \pi \times \q{insertedIn} + 0.184 \times \pi \times \frac{\q{ringIn}}{2}}`,
    {
      says: 'Below a single ring water also spreads sideways, so it reads high. In coarse soil or soil with open cracks by this many times.',
      source: 'reynolds-elrick-1990, steady flow (from memory)',
    },
  ),
  formula(
    'overHighTimes',
    tex`1 + \frac{\q{pondedIn} + \frac{1}{0.04 \times 2.54}}{0.316 \times \pi \times \q{insertedIn} + 0.184 \times \pi \times \frac{\q{ringIn}}{2}}`,
    { says: 'In fine soil without crumbs by this many.', source: 'reynolds-elrick-1990, steady flow (from memory)' },
  ),
  formula('straightLowInPerHr', tex`\frac{\q{middleInPerHr}}{\q{overHighTimes}}`, { says: 'So straight down it may be as little as this.' }),
  formula('straightHighInPerHr', tex`\frac{\q{middleInPerHr}}{\q{overLowTimes}}`, { says: 'And hardly more than this.' }),
  when(compares, [
    tabulate('otherLines', {
      says: 'The rings of the other test, on logarithms too.',
      formulas: { logRate: tex`\ln(\q{thenInPerHr})`, gapSquare: tex`(\q{logRate} - \frac{\q{otherLogSum}}{\q{othersCount}})^2` },
      sums: { otherLogSum: 'logRate', otherGapSum: 'gapSquare' },
    }),
    formula('otherInPerHr', tex`\exp(\frac{\q{otherLogSum}}{\q{othersCount}})`, { says: 'Their geometric mean.' }),
    formula('ratioTimes', tex`\frac{\q{middleInPerHr}}{\q{otherInPerHr}}`, { says: 'This test over the other.' }),
  ]),
  when(compared, [
    formula('spread', tex`\sqrt{\frac{\q{gapSum} + \q{otherGapSum}}{\q{ringsCount} + \q{othersCount} - 2}}`, {
      says: 'How much rings of one test differ, both tests together.',
      source: 'nist-sematech-handbook, two-sample t interval, here on logarithms',
    }),
    lookup('studentTimes', {
      says: 'Student’s t for that many rings, 95 percent. Few rings make it large.',
      source: 'nist-sematech-handbook, table of t',
    }),
    formula(
      'lowRatioTimes',
      tex`\q{ratioTimes} \times \exp(-\q{studentTimes} \times \q{spread} \times \sqrt{\frac{1}{\q{ringsCount}} + \frac{1}{\q{othersCount}}})`,
      { says: 'The true ratio lies between this, 19 times in 20.', source: 'nist-sematech-handbook, two-sample t interval, here on logarithms' },
    ),
    formula(
      'highRatioTimes',
      tex`\q{ratioTimes} \times \exp(\q{studentTimes} \times \q{spread} \times \sqrt{\frac{1}{\q{ringsCount}} + \frac{1}{\q{othersCount}}})`,
      { says: 'And this. If 1 lies between them, it can be chance.' },
    ),
  ]),
  lookup('scatterTimes', {
    onlyWhen: (values) => compares(values) && values.scatterTimes > 0,
    says: 'What chance alone can do with this many rings that vary by 80 percent, as they often do on pasture.',
    source: 'our own, the same interval before there are rings',
  }),
];
