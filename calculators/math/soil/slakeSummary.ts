import { deviation, mean } from 'd3-array';
import { need, needThere } from '../need.ts';

/**
 * Sums up a slake test: mean class, share of the fragments in class 6, and their spread s = √(Σ(x − x̄)²/(n − 1)). Keep fragments from under plants and
 * from bare spots apart, and compare only soils of one texture.
 * @param classes - Class of each fragment, whole numbers 0 to 6; at least one
 * @returns Mean class; fragments in class 6, percent; standard deviation of the classes (undefined for a single fragment)
 * @throws RangeError if there is no fragment or a class is outside 0 to 6
 * @source soil-quality-test-kit-2001, chapter 9
 * @example slakeSummary([6, 6, 4, 4]) //=> { meanClass: 5, topClassPercent: 50, spread: 1.1547005383792515 }
 */
export function slakeSummary(classes: readonly number[]): {
  readonly meanClass: number;
  readonly topClassPercent: number;
  readonly spread: number | undefined;
} {
  need('slakeSummary', 'fragments', classes.length, { atLeast: 1 });
  for (const each of classes) need('slakeSummary', 'class', each, { atLeast: 0, atMost: 6, whole: true });
  return {
    meanClass: needThere('slakeSummary', 'mean', mean(classes)),
    topClassPercent: (100 * classes.filter((each) => each === 6).length) / classes.length,
    spread: deviation(classes),
  };
}
