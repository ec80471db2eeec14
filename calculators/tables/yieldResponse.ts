/** Seasonal yield response factors Ky. The table has none for grass; the handbook says to take 1 where none is known. */
export const yieldResponse = {
  source: 'allen-1998',
  where: 'table 24',
  seen: 'print',
  factors: {
    alfalfa: 1.1,
    maize: 1.25,
    sorghum: 0.9,
    'spring-wheat': 1.15,
    'winter-wheat': 1.05,
    soybean: 0.85,
    sugarbeet: 1.0,
    potato: 1.1,
    sugarcane: 1.2,
    safflower: 0.8,
    sunflower: 0.95,
    cotton: 0.85,
    peas: 1.15,
  },
  whereUnknown: { value: 1, where: 'p. 177' },
} as const;
