import type { CaseList } from '../calculators/kit/cases.ts';
import { type Check, type CheckList, failing } from '../calculators/math/checks.ts';

const mathLists = import.meta.glob<{ default: CheckList }>('../calculators/math/**/*.cases.ts', { eager: true });
const catalogLists = import.meta.glob<{ default: CaseList }>('../calculators/catalog/*/cases.ts', { eager: true });

/** A value from outside with what it checks: a function of the math package or a calculator. */
export interface CheckOf {
  readonly of: string;
  readonly check: Check;
}

/** Every value that the tests hold against our own, those of the functions first. */
export const allChecks = (): readonly CheckOf[] => [
  ...Object.values(mathLists).flatMap(({ default: { of, checks } }) => checks.map((check) => ({ of, check }))),
  ...Object.values(catalogLists).flatMap(({ default: { slug, checks } }) => checks.map((check) => ({ of: slug, check }))),
];

/** Read in the source itself or in somebody's copy of it; only these count as values from outside. */
export const isFromOutside = ({ check }: CheckOf): boolean => check.seen === 'print' || check.seen === 'transcription';

export const isPassing = ({ check }: CheckOf): boolean => failing(check) === undefined;

/** Our value with two digits more than the source prints, so that the rounding can be seen. */
export const ourValue = ({ check }: CheckOf): string => {
  const ours = check.ours();
  if (typeof ours === 'string') return ours;
  if (/e/i.test(check.printed)) return ours.toPrecision(6);
  const decimals = check.printed.split('.')[1]?.length ?? 0;
  return ours.toLocaleString('en-US', { minimumFractionDigits: 0, maximumFractionDigits: Math.min(decimals + 2, 12) });
};

/** How a value was come by, in words for people. */
export const seenInWords: Readonly<Record<Check['seen'], string>> = {
  print: 'read in the source',
  transcription: 'read in a copy',
  practice: 'common practice',
  memory: 'from memory',
  computed: 'worked again by another route',
};
