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
