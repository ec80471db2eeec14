/**
 * Water that stock drink, US gallons a head a day. Printed tables fall again at the hottest end and disagree by a third there, so a plan
 * takes the running maximum over the temperature and the highest list: `planningIntakeGal` does both.
 */
export type DrinkingAnimal =
  | 'cow-nursing'
  | 'cow-dry'
  | 'bull'
  | 'heifer-pregnant-750'
  | 'calf-500'
  | 'growing-400'
  | 'growing-600'
  | 'growing-800'
  | 'finishing-600'
  | 'finishing-800'
  | 'finishing-1000'
  | 'finishing-1200'
  | 'ewe'
  | 'ewe-nursing'
  | 'goat'
  | 'goat-nursing'
  | 'horse'
  | 'draft-horse'
  | 'llama';

export interface HeatList {
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
  /** Air temperatures of the columns, degrees Fahrenheit, rising. */
  readonly airF: readonly number[];
  /** Gallons a head a day at those temperatures; fewer where the list stops early. */
  readonly gal: Partial<Readonly<Record<DrinkingAnimal, readonly number[]>>>;
}

export const intakeByHeat = [
  {
    source: 'gould-fs1090',
    where: 'water intake by temperature, after Guyer',
    seen: 'transcription',
    airF: [36, 40, 50, 64, 73, 78, 88, 90],
    gal: {
      'cow-nursing': [11.0, 11.5, 12.5, 15.5, 17.0, 17.5, 16.5, 16.5],
      'cow-dry': [6.0, 6.0, 6.5, 8.0, 9.0, 10.0, 14.0, 14.5],
      bull: [7.0, 8.0, 8.6, 10.5, 12.0, 13.0, 18.0, 19.0],
      'growing-400': [3.5, 4.0, 4.5, 5.5, 6.0, 6.5, 9.0, 9.5],
      'growing-600': [5.0, 5.5, 6.0, 7.0, 8.0, 8.5, 12.0, 13.0],
      'growing-800': [6.0, 6.5, 7.0, 8.5, 9.5, 10.0, 14.0, 15.0],
      'finishing-600': [5.5, 6.0, 6.5, 8.0, 9.0, 9.5, 14.0, 14.5],
      'finishing-800': [7.0, 7.5, 8.0, 9.5, 11.0, 12.0, 17.0, 17.5],
      'finishing-1000': [8.5, 9.0, 9.5, 11.0, 13.0, 14.0, 20.0, 20.5],
      'finishing-1200': [9.5, 10.0, 10.5, 12.5, 14.5, 16.0, 22.5, 23.0],
    },
  },
  {
    source: 'beef-summer-water',
    where: 'daily water intake in gallons',
    seen: 'print',
    airF: [70, 80, 90],
    gal: {
      'calf-500': [6.5, 7.4, 10.6],
      'growing-800': [9.3, 10.6, 14],
      'finishing-800': [10.8, 12.3, 16.5],
      'heifer-pregnant-750': [9, 10.3, 14.6],
      'cow-dry': [10.8, 12.4, 17.6],
      'cow-nursing': [16.3, 17.9, 21.6],
      bull: [12.7, 14.6, 19.5],
    },
  },
  {
    source: 'k-state-watering-handbook',
    where: 'Table 1',
    seen: 'print',
    airF: [40, 60, 80],
    gal: { 'cow-nursing': [11.4, 14.5, 17.9], 'cow-dry': [6.0, 7.4] },
  },
  {
    source: 'sigler-mt202209ag-2022',
    where: 'livestock water needs, cow of 1,300 lb, dry or giving 15 lb of milk',
    seen: 'print',
    airF: [40, 90],
    gal: { 'cow-dry': [9.2, 14.3], 'cow-nursing': [12.2, 17.4] },
  },
] as const satisfies readonly HeatList[];

/** A rule of thumb in place of a table: so much at one temperature, so much more for each degree, up to the last degree that it names. */
export const intakeByDegree = {
  source: 'noble-water-1999',
  where: 'fourth paragraph; the middle of 5 to 7 gallons at 50 degrees',
  seen: 'print',
  animal: 'cow-nursing',
  fromF: 50,
  gal: 6,
  galPerDegree: 0.4,
  toF: 95,
} as const;

export interface PrintedRange {
  readonly animal: DrinkingAnimal;
  readonly lowGal: number;
  readonly highGal: number;
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

const handbook = { source: 'mwps14-new-hampshire', where: 'drinking water needs of farm animals', seen: 'transcription' } as const;
const purdue = { source: 'burbrink-2022', where: 'water needs in winter', seen: 'print' } as const;
const dakota = { source: 'german-c274-2008', where: 'Table 1', seen: 'print' } as const;

/** Animals for which no table by temperature was found: a plan takes the high end. */
export const intakeRanges = [
  { animal: 'ewe', lowGal: 0.75, highGal: 1.5, source: 'pennington-2014', where: 'ewes of 150 lb', seen: 'print' },
  { animal: 'ewe', lowGal: 2, highGal: 2, ...handbook },
  { animal: 'ewe-nursing', lowGal: 3, highGal: 3, ...purdue },
  { animal: 'goat', lowGal: 2, highGal: 4, ...handbook },
  { animal: 'goat-nursing', lowGal: 3, highGal: 3, ...purdue },
  { animal: 'horse', lowGal: 10, highGal: 12, ...purdue },
  { animal: 'horse', lowGal: 12, highGal: 12, ...handbook },
  { animal: 'horse', lowGal: 8, highGal: 12, ...dakota },
  { animal: 'draft-horse', lowGal: 15, highGal: 20, ...purdue },
  { animal: 'llama', lowGal: 3, highGal: 5, ...handbook },
] as const satisfies readonly PrintedRange[];

/**
 * Animals for which no list goes by heat drink so many times that figure from so hot a day on. Half as much again is common practice; in North Carolina sheep and
 * goats usually drink 40 percent more in summer than in winter (ncce-wayne-water-2017).
 */
export const unlistedHeat = { fromF: 80, times: 1.5, source: 'ncce-wayne-water-2017', where: 'second paragraph', seen: 'print' } as const;

/** The plain animal beside the nursing one: a list that asks more for it asks no less for one in milk. */
export const plainOf: Partial<Readonly<Record<DrinkingAnimal, DrinkingAnimal>>> = { 'ewe-nursing': 'ewe', 'goat-nursing': 'goat' };

/** How stock come to water, and what the trough must then hold and let in. */
export const troughRules = {
  source: 'ohioline-anr12-2003',
  where: 'the water trough or tank',
  seen: 'print',
  /** Beyond this many feet they come as a herd. From 600 to 900 ft and nearer they come one by one. */
  herdBeyondFt: 1000,
  oneByOneWithinFt: 900,
  spaceFtPerHead: 2,
  herd: { tankPercentOfDay: 25, atOncePercent: [5, 10], refillHours: 1 },
  oneByOne: { atOncePercent: [2, 4], dayHours: 4 },
} as const;

/** Days of water to keep in case of a broken pump or line. */
export const reserveDays = { days: 3, source: 'klausmeyer-watering', where: 'third paragraph', seen: 'print' } as const;

/** Inside diameters of common pipe, inches, by nominal size. Sizes of polyethylene pipe rated by its inside are the same as Schedule 40. */
export const pipeInsideIn = { '3/4': 0.824, '1': 1.049, '1-1/4': 1.38, '1-1/2': 1.61, '2': 2.067, '3': 3.068 } as const;
export const pipeInsideSource = { source: 'astm-d2239', where: 'dimensions', seen: 'memory' } as const;

/** Hazen-Williams roughness coefficients of pipe. */
export const pipeRoughness = [
  { pipe: 'polyethylene', coefficient: 140, source: 'engineering-toolbox-hazen-williams', where: 'example', seen: 'print' },
  { pipe: 'pvc', coefficient: 150, source: 'illinois-77-906-exhibit-i', where: 'exhibit I', seen: 'transcription' },
  { pipe: 'old-steel', coefficient: 100, source: 'law-supply-friction-2003', where: 'chart for steel pipe', seen: 'print' },
] as const;
