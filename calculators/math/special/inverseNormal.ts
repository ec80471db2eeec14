import { need } from '../need.ts';

type Coefficients = readonly number[];

/** Numerator and denominator of the three rational pieces of algorithm AS 241 (PPND16), constant term first. */
const center: readonly [Coefficients, Coefficients] = [
  [
    3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125, 45921.953931549871457, 67265.770927008700853,
    33430.575583588128105, 2509.0809287301226727,
  ],
  [
    1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867, 39307.89580009271061, 28729.085735721942674,
    5226.495278852854561,
  ],
];
const shoulder: readonly [Coefficients, Coefficients] = [
  [
    1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504, 1.27045825245236838258, 0.24178072517745061177,
    0.0227238449892691845833, 7.7454501427834140764e-4,
  ],
  [
    1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459, 0.0151986665636164571966,
    5.475938084995344946e-4, 1.05075007164441684324e-9,
  ],
];
const tail: readonly [Coefficients, Coefficients] = [
  [
    6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123, 0.026532189526576123093, 0.0012426609473880784386,
    2.71155556874348757815e-5, 2.01033439929228813265e-7,
  ],
  [
    1, 0.59983220655588793769, 0.1369298809227358053, 0.0148753612908506148525, 7.868691311456132591e-4, 1.8463183175100546818e-5,
    1.4215117583164458887e-7, 2.04426310338993978564e-15,
  ],
];

const polynomial = (coefficients: Coefficients, x: number): number => coefficients.reduceRight((sum, each) => sum * x + each, 0);
const ratio = ([top, bottom]: readonly [Coefficients, Coefficients], x: number): number => polynomial(top, x) / polynomial(bottom, x);

/**
 * Standard normal value z with Φ(z) = `probability`, exact to about 1e-16: algorithm AS 241.
 * The shorter rational form that index papers use (Abramowitz and Stegun 26.2.23) is off by up to 0.00045 and is not zero at one half.
 * @param probability - Share of the distribution at or below z; above 0, below 1
 * @returns Standard normal value, no unit
 * @throws RangeError if `probability` is outside its range
 * @source wichura-1988, PPND16
 * @example inverseNormal(0.025) //=> -1.959963984540
 */
export function inverseNormal(probability: number): number {
  need('inverseNormal', 'probability', probability, { above: 0, below: 1 });
  const away = probability - 0.5;
  if (Math.abs(away) <= 0.425) return away * ratio(center, 0.180625 - away * away);
  const radius = Math.sqrt(-Math.log(away < 0 ? probability : 1 - probability));
  const size = radius <= 5 ? ratio(shoulder, radius - 1.6) : ratio(tail, radius - 5);
  return away < 0 ? -size : size;
}
