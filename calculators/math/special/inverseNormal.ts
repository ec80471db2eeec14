import { need } from '../need.ts';

type Coefficients = readonly number[];

/** Numerator and denominator of the three rational pieces of algorithm AS 241 (PPND16), constant term first; to the nearest double. */
const center: readonly [Coefficients, Coefficients] = [
  [
    3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987, 67265.7709270087, 33430.57558358813,
    2509.0809287301227,
  ],
  [1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271, 28729.085735721943, 5226.495278852854],
];
const shoulder: readonly [Coefficients, Coefficients] = [
  [
    1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684, 0.2417807251774506, 0.022723844989269184,
    0.0007745450142783414,
  ],
  [
    1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457, 0.0005475938084995345,
    1.0507500716444169e-9,
  ],
];
const tail: readonly [Coefficients, Coefficients] = [
  [
    6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124, 0.0012426609473880784, 2.7115555687434876e-5,
    2.0103343992922881e-7,
  ],
  [
    1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133, 1.8463183175100548e-5, 1.421511758316446e-7,
    2.0442631033899397e-15,
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
