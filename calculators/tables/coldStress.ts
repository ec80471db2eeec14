/** Effective temperature (wind counted) below which cattle in fair flesh need more energy, by coat, degrees Fahrenheit. */
export const lowerCriticalTemperatureF = {
  wet: 59,
  'dry-fall': 45,
  'dry-winter': 32,
  'dry-heavy-winter': 18,
} as const;

export const coldStressSource = { source: 'rusche-2020', where: 'Lower critical temperatures for beef cattle', seen: 'print' } as const;
