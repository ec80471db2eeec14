/**
 * Shares that animals eat. Two kinds that are never combined: `harvestShare` of the whole year's growth (the stubble is already left), and
 * `grazedShare` of what stands above the stubble (only trampling and refusal come off).
 */
export interface HarvestShare {
  readonly system: string;
  readonly percent: readonly [low: number, high: number];
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

export const harvestShare = [
  { system: 'Range, take half and leave half', percent: [25, 25], source: 'white-b5036', where: 'Harvest efficiency', seen: 'print' },
  { system: 'Range, season-long', percent: [25, 25], source: 'sedivec-2014', where: 'Abstract 88179', seen: 'print' },
  { system: 'Range, light stocking', percent: [14, 14], source: 'smart-2010', where: 'Abstract', seen: 'print' },
  { system: 'Range, moderate stocking', percent: [24, 24], source: 'smart-2010', where: 'Abstract', seen: 'print' },
  { system: 'Range, heavy stocking', percent: [38, 38], source: 'smart-2010', where: 'Abstract', seen: 'print' },
  { system: 'Pasture, all systems', percent: [25, 50], source: 'nrcs-g058cy500nd', where: 'Harvest efficiency', seen: 'print' },
  { system: 'Hay', percent: [70, 70], source: 'nrcs-g058cy500nd', where: 'Harvest efficiency', seen: 'print' },
  { system: 'Pasture, continuous', percent: [30, 35], source: 'pace-hay-forage', where: 'Utilization in the text', seen: 'print' },
  { system: 'Pasture, 3 to 4 days', percent: [50, 60], source: 'pace-hay-forage', where: 'Utilization in the text', seen: 'print' },
  { system: 'Pasture, daily', percent: [75, 75], source: 'pace-hay-forage', where: 'Utilization in the text', seen: 'print' },
  { system: 'Pasture, continuous, Georgia', percent: [30, 40], source: 'uga-forage-team-2021', where: 'Utilization in the text', seen: 'print' },
  { system: 'Pasture, continuous, Ontario', percent: [30, 30], source: 'ontario-dry-pasture', where: 'Share wasted, by system', seen: 'print' },
  { system: 'Pasture, rotation, Ontario', percent: [55, 55], source: 'ontario-dry-pasture', where: 'Share wasted, by system', seen: 'print' },
  { system: 'Pasture, strips, Ontario', percent: [70, 70], source: 'ontario-dry-pasture', where: 'Share wasted, by system', seen: 'print' },
  { system: 'Small pastures', percent: [45, 45], source: 'nrcs-528-1-2007', where: 'Assumption of the table', seen: 'transcription' },
] as const satisfies readonly HarvestShare[];

/** Share of the forage above the stubble that is eaten, by days in the paddock. */
export const grazedShareByDays = [
  { days: 1, percent: 80 },
  { days: 2, percent: 75 },
  { days: 3, percent: 75 },
  { days: 4, percent: 70 },
  { days: 5, percent: 65 },
  { days: 6, percent: 60 },
  { days: 7, percent: 60 },
] as const;
export const grazedShareSource = { source: 'penn-state-agronomy-guide', where: 'Table 1.8-9', seen: 'print' } as const;

/** Share eaten where one pasture is grazed without a move until it is gone: what guides print for continuous grazing, the middle between its ends. */
export const grazedUntilGone = { lowPercent: 30, likelyPercent: 35, highPercent: 40 } as const;
export const grazedUntilGoneSource = { source: 'uga-forage-team-2021', where: 'Utilization in the text, continuous grazing', seen: 'print' } as const;

/** Oven-dry forage to leave on range, lb per acre, and where cattle begin to eat less. */
export const rangeStubbleLbPerAc = [
  { range: 'desert', lbPerAc: [250, 250] },
  { range: 'shortgrass', lbPerAc: [300, 500] },
  { range: 'midgrass', lbPerAc: [750, 1000] },
  { range: 'tallgrass', lbPerAc: [1200, 1500] },
] as const;
export const rangeStubbleSource = { source: 'white-b5036', where: 'Residual forage, after Hanselka and others (2001)', seen: 'print' } as const;
export const intakeFallsBelowLbPerAc = 750;
export const intakeFallsSource = {
  source: 'white-b5036',
  where: 'Intake on short forage, after Hanson and Stuth (1988)',
  seen: 'transcription',
} as const;

/** Root growth that stops when leaf is taken, percent: a few days of clipping in boxes, not a season in a pasture. */
export const rootStoppageByRemoval = [
  { removedPercent: 50, stoppedPercent: [0, 5] },
  { removedPercent: 60, stoppedPercent: [50, 50] },
  { removedPercent: 80, stoppedPercent: [100, 100] },
] as const;
export const rootStoppageSource = { source: 'crider-1955', where: 'Technical Bulletin 1102', seen: 'transcription' } as const;
