import { meanGap } from '../../asks/meanGap.ts';
import type { ValuesOf } from '../../kit/inputs.ts';
import type { Between, SideNamed } from '../../kit/shown.ts';
import { slakeClass } from '../../math/soil/slakeClass.ts';
import { slakeSummary } from '../../math/soil/slakeSummary.ts';
import { studentQuantile } from '../../math/special/studentQuantile.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import type { inputs } from './inputs.ts';

// One time and one share inside each answer's band: the class is the same anywhere in it.
const whatWasSeen = {
  dry: { halfLostSeconds: 0, leftPercent: 0 },
  'by-5': { halfLostSeconds: 3, leftPercent: 0 },
  'by-30': { halfLostSeconds: 15, leftPercent: 0 },
  'by-300': { halfLostSeconds: 120, leftPercent: 0 },
  crumbs: { halfLostSeconds: Infinity, leftPercent: 5 },
  some: { halfLostSeconds: Infinity, leftPercent: 15 },
  half: { halfLostSeconds: Infinity, leftPercent: 50 },
  most: { halfLostSeconds: Infinity, leftPercent: 90 },
} as const;
const confidencePercent = 95;
/** Under so many, one odd crumb decides. Our own. */
export const fewestSamples = 6;
/** Classes are steps: a smaller gap than one is none to go by. Common practice. */
const leastGap = 1;

const one = (is: boolean): number => (is ? 1 : 0);

export function compute({ soil, dried, samples }: ValuesOf<typeof inputs>) {
  const classed = samples.map(({ seen }, index) => ({ number: index + 1, seen, soilClass: slakeClass(whatWasSeen[seen]) }));
  const classes = classed.map(({ soilClass }) => soilClass);
  const { meanClass, topClassPercent, spread = 0 } = slakeSummary(classes);
  const lines = classed.map(({ soilClass, ...sample }) => ({
    ...sample,
    soilClass,
    gapSquare: (soilClass - meanClass) ** 2,
    isTop: one(soilClass === 6),
    isMiddle: one(soilClass === 4 || soilClass === 5),
    isLow: one(soilClass === 3),
    isGone: one(soilClass < 3),
  }));
  const count = classes.length;
  const scatters = count > 1 && spread > 0;
  const studentTimes = count > 1 ? studentQuantile(0.5 + confidencePercent / 200, 2 * count - 2) : 0;
  const holds: 'damp' | 'well' | 'partly' | 'poorly' = dried === 'damp' ? 'damp' : meanClass > 5 ? 'well' : meanClass >= 3 ? 'partly' : 'poorly';
  return {
    holds,
    comparable: soil === 'differs' ? ('no' as const) : ('yes' as const),
    lines,
    count,
    classSum: sumOf(lines, ({ soilClass }) => soilClass),
    gapSum: sumOf(lines, ({ gapSquare }) => gapSquare),
    topCount: sumOf(lines, ({ isTop }) => isTop),
    middleCount: sumOf(lines, ({ isMiddle }) => isMiddle),
    lowCount: sumOf(lines, ({ isLow }) => isLow),
    goneCount: sumOf(lines, ({ isGone }) => isGone),
    meanClass,
    lowestClass: Math.min(...classes),
    highestClass: Math.max(...classes),
    topClassPercent,
    spread,
    studentTimes,
    scatterClasses: scatters ? studentTimes * spread * Math.sqrt(2 / count) : 0,
  };
}

type Side = SideNamed<'holds' | 'comparable' | 'spot' | 'lines' | 'meanClass'>;
/** How far a gap between the mean classes of two places is to be believed. */
export function classGap(here: Side, there: Side): Between {
  const isEither = (name: 'holds' | 'comparable' | 'spot', word: string): boolean => here.word(name) === word || there.word(name) === word;
  const instead = 'Can’t be compared';
  if (isEither('holds', 'damp')) return { instead, because: 'damp crumbs hold together whatever they are worth' };
  if (isEither('comparable', 'no')) return { instead, because: 'the two soils feel different, so it may be texture' };
  if (isEither('spot', 'mixed')) return { instead, because: 'crumbs from plants and bare spots are mixed' };
  const [earlier, later] = [here.column('lines', 'soilClass'), there.column('lines', 'soilClass')];
  const gap = meanGap(earlier, later, 'crumbs');
  if ('unbounded' in gap) return gap;
  if (Math.abs(there.number('meanClass') - here.number('meanClass')) < leastGap) return { ...gap, hint: 'under one class' };
  return Math.min(earlier.length, later.length) < fewestSamples ? { ...gap, hint: 'so few crumbs' } : gap;
}
