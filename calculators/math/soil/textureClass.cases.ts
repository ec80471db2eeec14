import { textureCenters } from '../../tables/textureCenters.ts';
import { type Check, checkList } from '../checks.ts';
import { textureClass } from './textureClass.ts';

type Point = readonly [sandPercent: number, clayPercent: number, printed: string];

const spoken = (sandPercent: number, clayPercent: number): string => textureClass(sandPercent, clayPercent).replaceAll('-', ' ');
const shortNames: Readonly<Record<string, string>> = {
  sand: 'Sa',
  'sandy loam': 'SaLo',
  'silt loam': 'SiLo',
  silt: 'Si',
  'silty clay': 'SiCl',
  clay: 'Cl',
};
const checks = (points: readonly Point[], rest: Pick<Check, 'source' | 'where' | 'seen'>, name = (spokenClass: string) => spokenClass): Check[] =>
  points.map(([sand, clay, printed]) => ({ what: `${sand} % sand, ${clay} % clay`, ours: () => name(spoken(sand, clay)), printed, ...rest }));

const examples: readonly Point[] = [
  [90, 5, 'Sa'],
  [32, 60, 'Cl'],
  [70, 15, 'SaLo'],
  [70, 5, 'SaLo'],
  [20, 25, 'SiLo'],
  [10, 5, 'Si'],
  [10, 25, 'SiLo'],
  [10, 45, 'SiCl'],
  [20, 65, 'Cl'],
  [10, 75, 'Cl'],
  [70, 13, 'SaLo'],
  [10, 47, 'SiCl'],
];
const limits: readonly Point[] = [
  [52, 20, 'loam'],
  [52, 7, 'loam'],
  [45, 27, 'clay loam'],
  [45, 35, 'clay loam'],
  [45, 40, 'clay'],
  [20, 40, 'silty clay'],
  [20, 27, 'silty clay loam'],
  [50, 0, 'silt loam'],
  [20, 0, 'silt'],
  [8, 12, 'silt loam'],
  [85, 10, 'loamy sand'],
  [70, 0, 'sandy loam'],
  [90, 10, 'loamy sand'],
];
const centers = Object.entries(textureCenters.centers).map(
  ([name, { sandPercent, clayPercent }]): Point => [sandPercent, clayPercent, name.replaceAll('-', ' ')],
);

export default checkList('textureClass', [
  ...checks(centers, { source: 'saxton-rawls-2006', where: 'table 3, texture class of its sand and clay', seen: 'transcription' }),
  ...checks(
    examples,
    { source: 'moeys-soiltexture-2018', where: 'twelve example soils', seen: 'transcription' },
    (spokenClass) => shortNames[spokenClass] ?? spokenClass,
  ),
  ...checks(
    [
      [30, 30, 'clay loam'],
      [50, 30, 'sandy clay loam'],
    ],
    { source: 'usda-soil-survey-manual', where: 'examples of reading the triangle', seen: 'transcription' },
  ),
  ...checks(limits, { source: 'ncss-aqp', where: 'R/texture.R, points on the limits worked by hand', seen: 'computed' }),
]);
