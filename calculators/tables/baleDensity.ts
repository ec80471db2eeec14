/** Density of hay in the bale as fed, lb per cubic foot. Three bales on a scale ticket come before any of these; most people guess high. */
export interface BaleDensity {
  readonly bale: 'round-soft' | 'round-usual' | 'round-tight';
  readonly lbPerFt3: number;
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

export const baleDensity = [
  { bale: 'round-soft', lbPerFt3: 9, source: 'hay-forage-4526', where: 'Bale density in the text', seen: 'print' },
  { bale: 'round-usual', lbPerFt3: 11.21, source: 'banta-2012', where: 'Bale size and weight', seen: 'transcription' },
  { bale: 'round-tight', lbPerFt3: 12, source: 'hay-forage-4526', where: 'Upper end', seen: 'memory' },
] as const satisfies readonly BaleDensity[];
