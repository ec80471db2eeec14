/** What a rain record is, whatever it is read for: label, unit, and the most that falls in a day. */
export const rainGauge = { label: 'Rain record', belongsTo: 'place', unit: 'in', min: 0, max: 60 } as const;
