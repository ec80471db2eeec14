/** A rule for grazing or feeding sorghums and indiangrass: a height to reach, inches, or a wait, days. */
export interface PrussicRule {
  readonly crop: 'sudangrass' | 'sorghum-sudangrass' | 'sorghum' | 'indiangrass';
  readonly event: 'height' | 'killing-frost' | 'light-frost' | 'new-shoots-after-frost' | 'rain-after-drought' | 'ensiled';
  readonly least: number;
  readonly unit: 'in' | 'days';
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

const nebraska = { source: 'drewnoski-redfearn-2024', where: 'to minimize risk', seen: 'print' } as const;
const wisconsin = { source: 'agproud-35189', where: 'heights and waits', seen: 'print' } as const;
const texas = { source: 'hay-forage-311', where: 'heights and waits', seen: 'print' } as const;
const seedway = { source: 'seedway-sorghum', where: 'heights and ensiling', seen: 'print' } as const;

const ohio = { source: 'sulc-frost-1613', where: 'indiangrass, less than 8 inches', seen: 'print' } as const;

export const prussicRules = [
  { crop: 'sudangrass', event: 'height', least: 18, unit: 'in', ...nebraska },
  { crop: 'sudangrass', event: 'height', least: 18, unit: 'in', ...wisconsin },
  { crop: 'sudangrass', event: 'height', least: 20, unit: 'in', ...seedway },
  { crop: 'sorghum-sudangrass', event: 'height', least: 24, unit: 'in', ...nebraska },
  { crop: 'sorghum-sudangrass', event: 'height', least: 30, unit: 'in', ...wisconsin },
  { crop: 'sorghum-sudangrass', event: 'height', least: 30, unit: 'in', ...seedway },
  { crop: 'sorghum', event: 'height', least: 24, unit: 'in', ...nebraska },
  { crop: 'sorghum', event: 'height', least: 24, unit: 'in', ...texas },
  { crop: 'indiangrass', event: 'height', least: 8, unit: 'in', ...ohio },
  { crop: 'sudangrass', event: 'killing-frost', least: 7, unit: 'days', ...nebraska },
  { crop: 'sorghum-sudangrass', event: 'killing-frost', least: 7, unit: 'days', ...nebraska },
  { crop: 'sorghum', event: 'killing-frost', least: 7, unit: 'days', ...nebraska },
  // Ten days to two weeks where the frost found it shorter than its grazing height; a taller stand is let go sooner there.
  { crop: 'sudangrass', event: 'killing-frost', least: 14, unit: 'days', ...wisconsin },
  { crop: 'sorghum-sudangrass', event: 'killing-frost', least: 14, unit: 'days', ...wisconsin },
  { crop: 'sorghum', event: 'killing-frost', least: 14, unit: 'days', ...wisconsin },
  // Each freeze that leaves part of the stand alive starts the count again.
  { crop: 'sudangrass', event: 'light-frost', least: 14, unit: 'days', ...wisconsin },
  { crop: 'sorghum-sudangrass', event: 'light-frost', least: 14, unit: 'days', ...wisconsin },
  { crop: 'sorghum', event: 'light-frost', least: 14, unit: 'days', ...wisconsin },
  { crop: 'sudangrass', event: 'new-shoots-after-frost', least: 14, unit: 'days', ...wisconsin },
  { crop: 'sorghum-sudangrass', event: 'new-shoots-after-frost', least: 14, unit: 'days', ...wisconsin },
  { crop: 'sorghum', event: 'new-shoots-after-frost', least: 14, unit: 'days', ...wisconsin },
  { crop: 'sudangrass', event: 'rain-after-drought', least: 14, unit: 'days', ...texas },
  { crop: 'sorghum-sudangrass', event: 'rain-after-drought', least: 14, unit: 'days', ...texas },
  { crop: 'sorghum', event: 'rain-after-drought', least: 14, unit: 'days', ...texas },
  { crop: 'sudangrass', event: 'ensiled', least: 56, unit: 'days', ...seedway },
  { crop: 'sorghum-sudangrass', event: 'ensiled', least: 56, unit: 'days', ...seedway },
  { crop: 'sorghum', event: 'ensiled', least: 56, unit: 'days', ...seedway },
] as const satisfies readonly PrussicRule[];
