import { checkList } from '../checks.ts';
import { gammaFitLikelihood, gammaFitThom } from './gammaFitThom.ts';

/** January rain at Ithaca, New York, 1933 to 1982, inches. */
const ithaca = `
  .44 1.18 2.69 2.08 3.66 1.72 2.82 .72 1.46 1.30
  1.35 .54 2.74 1.13 2.50 1.72 2.27 2.82 1.98 2.44
  2.53 2.00 1.12 2.13 1.36 4.90 2.94 1.75 1.69 1.88
  1.31 1.76 2.17 2.38 1.16 1.39 1.36 1.03 1.11 1.35
  1.44 1.84 1.69 3.00 1.36 6.37 4.55 .52 .87 1.51
`
  .trim()
  .split(/\s+/)
  .map(Number);

const thom = () => gammaFitThom(ithaca);
const exact = () => gammaFitLikelihood(ithaca);

export default checkList('gammaFitThom', [
  { what: 'Ithaca, January: shape', ours: () => thom().shape, printed: '3.76', source: 'wilks-2006', where: 'section 4.6', seen: 'memory' },
  { what: 'Ithaca, January: scale, in', ours: () => thom().scale, printed: '0.52', source: 'wilks-2006', where: 'section 4.6', seen: 'memory' },
  {
    what: 'Ithaca, January: mean of the fit, in',
    ours: () => thom().shape * thom().scale,
    printed: '1.96',
    source: 'wilks-2006',
    where: 'table A.2',
    seen: 'memory',
  },
  {
    what: 'Ithaca, January: shape by Thom, all digits',
    ours: () => thom().shape,
    printed: '3.7649732495',
    source: 'mpmath',
    where: "Thom's formula on the table's 50 values",
    seen: 'computed',
  },
  {
    what: 'Ithaca, January: scale by Thom, all digits',
    ours: () => thom().scale,
    printed: '.5207473918',
    source: 'mpmath',
    where: "Thom's formula on the table's 50 values",
    seen: 'computed',
  },
  {
    what: 'Ithaca, January: shape by maximum likelihood',
    ours: () => exact().shape,
    printed: '3.7639261490',
    source: 'mpmath',
    where: 'root of the likelihood equation',
    seen: 'computed',
  },
  {
    what: 'Ithaca, January: scale by maximum likelihood',
    ours: () => exact().scale,
    printed: '.5208922605',
    source: 'mpmath',
    where: 'root of the likelihood equation',
    seen: 'computed',
  },
]);
