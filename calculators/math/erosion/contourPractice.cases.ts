import { checkList, tableChecks } from '../checks.ts';
import { contourPractice } from './contourPractice.ts';

const best = (factor: 'contourFactor' | 'stripFactor'): number =>
  Math.min(...Array.from({ length: 25 }, (_, index) => contourPractice(index + 1)[factor]));

export default checkList('contourPractice', [
  ...tableChecks({
    columns: ['width'],
    text: `
      1  130
      2  130
      3  100
      8  100
      9  80
      16 80
      17 60
      20 60
      21 50
      25 50`,
    what: (slope) => `${slope} % slope: widest strip, ft`,
    ours: (slope) => contourPractice(Number(slope)).stripWidthFt,
    source: 'ctic-strip-cropping',
    where: 'table of maximum widths',
    seen: 'print',
  }),
  {
    what: '6 % slope in contour strips: P',
    ours: () => contourPractice(6).stripFactor,
    printed: '0.25',
    source: 'weiner-matthews-2003',
    where: 'example 11.1, P from table 11-4',
    seen: 'transcription',
  },
  {
    what: 'most that contour strips take off, percent',
    ours: () => 100 * (1 - best('stripFactor')),
    printed: '75',
    source: 'illinois-60-ways',
    where: 'page 17, up to 75 percent',
    seen: 'print',
  },
]);
