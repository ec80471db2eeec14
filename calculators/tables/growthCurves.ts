/** Growth by month, percent of the year, January first. */
export interface GrowthCurve {
  readonly curve: string;
  readonly name: string;
  readonly percent: readonly [number, number, number, number, number, number, number, number, number, number, number, number];
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

export const growthCurves = [
  {
    curve: 'nd0002',
    name: 'Cool-season grass, North Dakota',
    percent: [0, 0, 0, 5, 40, 35, 10, 5, 5, 0, 0, 0],
    source: 'nrcs-g058cy500nd',
    where: 'Growth curve',
    seen: 'print',
  },
  {
    curve: 'co6707',
    name: 'Warm-season dominant, upland fine, eastern Colorado',
    percent: [0, 0, 0, 3, 20, 45, 20, 10, 2, 0, 0, 0],
    source: 'nrcs-colorado-curves',
    where: 'Upland fine, eastern Colorado, file copy 1338562, p. 50',
    seen: 'transcription',
  },
  {
    curve: 'mlra69-coarse-a',
    name: 'Upland coarse, southeastern Colorado, early',
    percent: [0, 0, 5, 10, 22, 35, 15, 10, 3, 0, 0, 0],
    source: 'nrcs-colorado-curves',
    where: 'Upland coarse, file copy 941936; which name goes with which row is not certain',
    seen: 'transcription',
  },
  {
    curve: 'mlra69-coarse-b',
    name: 'Upland coarse, southeastern Colorado, warm-season',
    percent: [0, 0, 0, 5, 30, 40, 20, 5, 0, 0, 0, 0],
    source: 'nrcs-colorado-curves',
    where: 'Upland coarse, file copy 941936; which name goes with which row is not certain',
    seen: 'transcription',
  },
  {
    curve: 'mlra69-fine-a',
    name: 'Upland fine, southeastern Colorado, warm and cool season',
    percent: [0, 0, 3, 7, 22, 33, 18, 12, 5, 0, 0, 0],
    source: 'nrcs-colorado-curves',
    where: 'Upland fine, file copy 941936',
    seen: 'transcription',
  },
  {
    curve: 'mlra69-fine-b',
    name: 'Upland fine, southeastern Colorado, warm-season',
    percent: [0, 0, 0, 0, 15, 45, 25, 15, 0, 0, 0, 0],
    source: 'nrcs-colorado-curves',
    where: 'Upland fine, file copy 941936',
    seen: 'transcription',
  },
  {
    curve: 'smooth-brome-kansas',
    name: 'Smooth brome with nitrogen, northeast Kansas',
    // The page puts the last tenth in "early fall" and names no month.
    percent: [0, 0, 5, 15, 50, 20, 0, 0, 10, 0, 0, 0],
    source: 'kstate-meadowlark-2024',
    where: 'Perennial forage season of use',
    seen: 'print',
  },
] as const satisfies readonly GrowthCurve[];
