import { need } from '../need.ts';

export type SlakeClass = 0 | 1 | 2 | 3 | 4 | 5 | 6;

/**
 * Class of a dry soil fragment in the slake test, by what was seen: 0 fell through the sieve; half of it lost within 5 s of going under 1, within 30 s 2,
 * within 300 s 3; otherwise by what is left after five dips: under 10 % 3, under 25 % 4, under 75 % 5, more 6. The printed bounds overlap: here 10, 25
 * and 75 % go to the class above; 5, 30 and 300 s to the class below.
 * @param options.halfLostSeconds - When half of the fragment was gone, seconds after going under; 0 or more. 0: it fell through the sieve dry; Infinity: it
 *   held for five minutes
 * @param options.leftPercent - Left on the sieve after five dips, percent; 0 to 100; not looked at if half was lost within five minutes
 * @returns Class, 0 (falls apart) to 6 (stays whole)
 * @throws RangeError if a number is outside its range
 * @source herrick-2001, stability classes; soil-quality-test-kit-2001, chapter 9
 * @example slakeClass({ halfLostSeconds: 12, leftPercent: 0 }) //=> 2
 * @example slakeClass({ halfLostSeconds: Infinity, leftPercent: 80 }) //=> 6
 */
export function slakeClass({ halfLostSeconds, leftPercent }: { readonly halfLostSeconds: number; readonly leftPercent: number }): SlakeClass {
  if (halfLostSeconds !== Infinity) need('slakeClass', 'halfLostSeconds', halfLostSeconds, { atLeast: 0 });
  need('slakeClass', 'leftPercent', leftPercent, { atLeast: 0, atMost: 100 });
  if (halfLostSeconds === 0) return 0;
  if (halfLostSeconds <= 5) return 1;
  if (halfLostSeconds <= 30) return 2;
  if (halfLostSeconds <= 300 || leftPercent < 10) return 3;
  if (leftPercent < 25) return 4;
  return leftPercent < 75 ? 5 : 6;
}
