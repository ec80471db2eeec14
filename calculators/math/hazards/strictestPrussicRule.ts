import { type PrussicRule, prussicRules } from '../../tables/prussicRules.ts';

/**
 * Strictest published rule for grazing or feeding a sorghum: the tallest height or the longest wait.
 * @param crop - 'sudangrass', 'sorghum-sudangrass' or 'sorghum'
 * @param event - 'height', 'killing-frost', 'light-frost', 'new-shoots-after-frost', 'rain-after-drought' or 'ensiled'
 * @returns The rule: least height, inches, or wait, days, and its source
 * @throws RangeError if no rule for the two is in the table
 * @source our own, the strictest leads
 * @example strictestPrussicRule('sorghum-sudangrass', 'height').least //=> 30
 */
export function strictestPrussicRule(crop: PrussicRule['crop'], event: PrussicRule['event']): PrussicRule {
  const rules: readonly PrussicRule[] = prussicRules;
  const strictest = rules
    .filter((rule) => rule.crop === crop && rule.event === event)
    .reduce<PrussicRule | undefined>((strict, rule) => (strict !== undefined && strict.least >= rule.least ? strict : rule), undefined);
  if (strictest === undefined) throw new RangeError(`strictestPrussicRule needs a crop and an event of its table, got ${crop}, ${event}`);
  return strictest;
}
