/**
 * Animal-unit equivalents and the pounds of an animal unit: published conventions, none of them a constant of nature. Pounds a day come first; a
 * month is a convention on top.
 */
export interface AnimalUnit {
  readonly animal: string;
  readonly name: string;
  readonly animalUnits: number;
}

/** Guide of the National Range and Pasture Handbook: a cow with calf is 1. */
export const animalUnitsHandbook = [
  { animal: 'cow-dry', name: 'Cow, dry', animalUnits: 0.92 },
  { animal: 'cow-with-calf', name: 'Cow with calf', animalUnits: 1.0 },
  { animal: 'bull', name: 'Bull, mature', animalUnits: 1.35 },
  { animal: 'cattle-1-year', name: 'Cattle, 1 year', animalUnits: 0.6 },
  { animal: 'cattle-2-years', name: 'Cattle, 2 years', animalUnits: 0.8 },
  { animal: 'horse', name: 'Horse, mature', animalUnits: 1.25 },
  { animal: 'sheep', name: 'Sheep, mature', animalUnits: 0.2 },
  { animal: 'lamb-1-year', name: 'Lamb, 1 year', animalUnits: 0.15 },
  { animal: 'goat', name: 'Goat, mature', animalUnits: 0.15 },
  { animal: 'kid-1-year', name: 'Kid, 1 year', animalUnits: 0.1 },
  { animal: 'white-tailed-deer', name: 'White-tailed deer', animalUnits: 0.15 },
  { animal: 'mule-deer', name: 'Mule deer, antelope or bighorn', animalUnits: 0.2 },
  { animal: 'elk', name: 'Elk, mature', animalUnits: 0.6 },
  { animal: 'bison', name: 'Bison, mature', animalUnits: 1.0 },
] as const satisfies readonly AnimalUnit[];
export const animalUnitsHandbookSource = { source: 'nrph-2003', where: 'Chapter 6, animal-unit equivalents guide', seen: 'transcription' } as const;

/** Vallentine's set: a dry cow is 1, so a pair is 1.35. */
export const animalUnitsVallentine = [
  { animal: 'cow-dry', name: 'Cow, dry', animalUnits: 1.0 },
  { animal: 'cow-with-calf', name: 'Cow with calf', animalUnits: 1.35 },
  { animal: 'bull', name: 'Bull over 24 months', animalUnits: 1.5 },
  { animal: 'bull-young', name: 'Bull, 18-24 months', animalUnits: 1.15 },
  { animal: 'heifer-bred', name: 'Bred heifer over 18 months', animalUnits: 1.0 },
  { animal: 'yearling-18-24', name: 'Yearling, 18-24 months', animalUnits: 0.9 },
  { animal: 'yearling-15-18', name: 'Yearling, 15-18 months', animalUnits: 0.8 },
  { animal: 'yearling-12-15', name: 'Yearling, 12-15 months', animalUnits: 0.7 },
  { animal: 'calf-weaned', name: 'Calf, weaning to 12 months', animalUnits: 0.6 },
  { animal: 'calf-8-months', name: 'Calf at weaning, 8 months', animalUnits: 0.5 },
] as const satisfies readonly AnimalUnit[];
export const animalUnitsVallentineSource = { source: 'vallentine-1990', where: 'p. 279', seen: 'transcription' } as const;

/** Pounds of dry matter of an animal unit in a day, by convention. `basis`: oven-dry, air-dry, or not said. */
export const animalUnitDay = [
  { convention: 'range-society', lbPerDay: 26, basis: 'oven-dry', source: 'srm-1998', where: 'Animal unit', seen: 'transcription' },
  { convention: 'handbook', lbPerDay: 26, basis: 'not-said', source: 'nrph-2003', where: 'Chapter 6', seen: 'transcription' },
  { convention: 'nebraska', lbPerDay: 26, basis: 'air-dry', source: 'unl-beefwatch-2023', where: 'Animal-unit month', seen: 'print' },
  { convention: 'air-dry-30', lbPerDay: 30, basis: 'air-dry', source: 'ndmc-ranch-plan', where: 'Inventory of the herd', seen: 'print' },
  { convention: 'oregon', lbPerDay: 25, basis: 'not-said', source: 'oregon-state-pasture-capacity', where: 'Animal-unit month', seen: 'print' },
  { convention: 'idaho', lbPerDay: 20, basis: 'not-said', source: 'launchbaugh-carrying-capacity', where: 'Slide on intake', seen: 'print' },
] as const;

/** Days that count as a month, by convention. */
export const monthDays = [
  { convention: 'round', days: 30, source: 'extension-animal-units-2015', where: 'Animal-unit month', seen: 'print' },
  { convention: 'twelfth', days: 30.4, source: 'nrph-2003', where: 'Chapter 6', seen: 'transcription' },
  { convention: 'half', days: 30.5, source: 'nrcs-range-guides', where: 'Range site guides of Montana and the Dakotas', seen: 'memory' },
] as const;
