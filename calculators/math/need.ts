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

/**
 * Stops a calculation whose input breaks a rule, so that no NaN ever travels on.
 * @param name - Function that asks, as its callers know it
 * @param parameter - Parameter, with its unit in the name
 * @param value - What was handed in
 * @param rule - Bounds; without any, the value must just be finite
 * @throws RangeError naming function, parameter, rule and value
 */
export function need(name: string, parameter: string, value: number, rule: Rule = {}): void {
  const { atLeast = -Infinity, above = -Infinity, atMost = Infinity, below = Infinity, whole = false } = rule;
  const holds =
    Number.isFinite(value) && value >= atLeast && value > above && value <= atMost && value < below && (!whole || Number.isInteger(value));
  if (!holds) throw new RangeError(`${name} needs ${parameter} ${spoken(rule)}, got ${value}`);
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
