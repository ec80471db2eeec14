/** Effective temperature (wind counted) below which cattle in fair flesh need more energy, by coat, degrees Fahrenheit. */
export const lowerCriticalTemperatureF = { wet: 59, 'dry-fall': 45, 'dry-winter': 32, 'dry-heavy-winter': 18 } as const;

export const coldStressSource = { source: 'rusche-2020', where: 'Lower critical temperatures for beef cattle', seen: 'print' } as const;

/** More energy for each degree Fahrenheit below that temperature, percent, where the coat is dry. All sources agree. */
export const dryCoatPercentPerF = 1;

/** The same where the coat is wet. Sources differ, and two universities have printed both. */
export const wetCoatRules = [
  {
    rule: 'one',
    percentPerF: 1,
    says: 'the same for a wet coat as for a dry one',
    source: 'rusche-2020',
    where: 'General rule, and 15 F wet',
    seen: 'print',
  },
  {
    rule: 'one',
    percentPerF: 1,
    says: 'one percent below the critical temperature of any coat',
    source: 'beck-cold-2025',
    where: 'Consider the cow',
    seen: 'print',
  },
  {
    rule: 'two',
    percentPerF: 2,
    says: 'twice as much for a wet coat, and all of it cannot be fed',
    source: 'selk-wet-coat',
    where: 'Wet hair coat',
    seen: 'print',
  },
  { rule: 'two', percentPerF: 2, says: 'twice as much for a wet coat', source: 'oklahoma-cold-feeding', where: 'Wet hair coat', seen: 'print' },
  { rule: 'two', percentPerF: 2, says: 'twice as much for a wet coat', source: 'kansas-cold-2025', where: 'Energy needs by coat', seen: 'print' },
] as const;
export type WetCoatRule = (typeof wetCoatRules)[number]['rule'];
