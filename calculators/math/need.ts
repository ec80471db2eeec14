/** What a parameter must satisfy; `atLeast` and `atMost` include the bound, `above` and `below` do not. */
export interface Rule {
  readonly atLeast?: number;
  readonly above?: number;
  readonly atMost?: number;
  readonly below?: number;
  readonly whole?: boolean;
}

const spoken = ({ atLeast, above, atMost, below, whole }: Rule): string =>
  [
    whole === true ? 'a whole number' : '',
    atLeast !== undefined ? `at least ${atLeast}` : '',
    above !== undefined ? `above ${above}` : '',
    atMost !== undefined ? `at most ${atMost}` : '',
    below !== undefined ? `below ${below}` : '',
  ]
    .filter((part) => part !== '')
    .join(' and ') || 'finite';

const holds = (value: number, key: string, bound: unknown): boolean => {
  if (key === 'whole') return bound !== true || Number.isInteger(value);
  if (typeof bound !== 'number') return bound === undefined;
  // Written so that a bound which is no number is never kept.
  return key === 'atLeast' ? value >= bound : key === 'above' ? value > bound : key === 'atMost' ? value <= bound : value < bound;
};
/** By the keys that a rule has: rules come in so many shapes that each key which may be there would be searched for, which takes five times as long. */
function keeps(value: number, rule: Rule): boolean {
  for (const key in rule) if (!holds(value, key, rule[key as keyof Rule])) return false;
  return true;
}

/**
 * Stops a calculation whose input breaks a rule, so that no NaN ever travels on.
 * @param name - Function that asks, as its callers know it
 * @param parameter - Parameter, with its unit in the name
 * @param value - What was handed in
 * @param rule - Bounds; without any, the value must just be finite
 * @throws RangeError naming function, parameter, rule and value
 */
export function need(name: string, parameter: string, value: number, rule: Rule = {}): void {
  if (!Number.isFinite(value) || !keeps(value, rule)) throw new RangeError(`${name} needs ${parameter} ${spoken(rule)}, got ${value}`);
}

/**
 * What stands at a key or an index that must be there, so that a missing one never becomes a number.
 * @param name - Function that asks, as its callers know it
 * @param what - What was looked for
 * @param found - What was found, if anything
 * @returns The same, known to be there
 * @throws RangeError naming function and what is missing
 */
export function needThere<T>(name: string, what: string | number, found: T | undefined): T {
  if (found === undefined) throw new RangeError(`${name} has no ${what}`);
  return found;
}
