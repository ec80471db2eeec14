/**
 * Heights to start and to stop grazing, and rest between, by forage. Published sets differ: each row says whose it is. `preferred` marks the row
 * that a forage's default is taken from.
 */
export interface ForageHeight {
  readonly forage: string;
  readonly name: string;
  readonly startIn: readonly [low: number, high: number];
  readonly stopIn: readonly [low: number, high: number];
  readonly restDays?: readonly [fast: number, slow: number];
  readonly preferred: boolean;
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

const pocketGuide = {
  preferred: true,
  source: 'uga-wait-to-graze',
  where: 'Table 1, adapted from the Forage Pocket Guide (1999)',
  seen: 'print',
} as const;
const maine = { preferred: false, source: 'umaine-pasture-lesson-1', where: 'Appendix D', seen: 'print' } as const;
const luling = { preferred: false, source: 'luling-foundation', where: 'Start and stop heights', seen: 'print' } as const;
const wisconsin = { preferred: false, source: 'cosgrove-grasses', where: 'Spring grazing', seen: 'print' } as const;
const recalled = { preferred: false, source: 'nc-state-grazing-heights', where: 'Height and rest table', seen: 'memory' } as const;

/** Below this much stubble stock graze the inches of old tall fescue that hold the most toxin: the bottom two to four (lory-fall-nitrogen-2022). */
export const toxicFescueIn = 4;

export const forageHeights = [
  { forage: 'alfalfa', name: 'Alfalfa, grazing types', startIn: [10, 16], stopIn: [2, 4], restDays: [15, 30], ...pocketGuide },
  { forage: 'annual-ryegrass', name: 'Annual ryegrass', startIn: [6, 12], stopIn: [3, 4], restDays: [7, 15], ...pocketGuide },
  { forage: 'bahiagrass', name: 'Bahiagrass', startIn: [6, 10], stopIn: [1, 2], restDays: [10, 20], ...pocketGuide },
  { forage: 'bermudagrass', name: 'Bermudagrass', startIn: [4, 8], stopIn: [1, 2], restDays: [7, 15], ...pocketGuide },
  { forage: 'white-clover', name: 'White clover', startIn: [6, 8], stopIn: [1, 3], restDays: [7, 15], ...pocketGuide },
  { forage: 'other-clovers', name: 'Other clovers', startIn: [8, 10], stopIn: [3, 5], restDays: [10, 20], ...pocketGuide },
  { forage: 'orchardgrass', name: 'Orchardgrass', startIn: [8, 12], stopIn: [3, 6], restDays: [15, 30], ...pocketGuide },
  { forage: 'pearl-millet', name: 'Pearl millet', startIn: [20, 24], stopIn: [8, 12], restDays: [10, 20], ...pocketGuide },
  { forage: 'small-grains', name: 'Small grains', startIn: [8, 12], stopIn: [4, 4], restDays: [7, 15], ...pocketGuide },
  {
    forage: 'sorghum-sudan',
    name: 'Sorghum, sudangrass (start too low for most, by lists for prussic acid)',
    startIn: [20, 24],
    stopIn: [8, 12],
    restDays: [10, 20],
    ...pocketGuide,
  },
  { forage: 'switchgrass', name: 'Switchgrass', startIn: [18, 22], stopIn: [8, 12], restDays: [30, 45], ...pocketGuide },
  // Most old fescue carries the toxin, most of it in the bottom two inches, by a later Missouri page two to four: the pocket guide's 2 is no start.
  {
    forage: 'tall-fescue',
    name: 'Tall fescue that may carry the toxin, Missouri',
    startIn: [8, 10],
    stopIn: [4, 4],
    preferred: true,
    source: 'tate-2020',
    where: 'Heights in the text, for cool-season pasture; they stay above the most toxic inches',
    seen: 'print',
  },
  {
    forage: 'tall-fescue',
    name: 'Tall fescue without the toxin, Missouri',
    startIn: [8, 8],
    stopIn: [3, 3],
    preferred: false,
    source: 'davis-fescue-heights',
    where: 'Kept from 3 to 8 inches',
    seen: 'print',
  },
  {
    forage: 'tall-fescue',
    name: 'Tall fescue, pocket guide (stop too low where it may carry the toxin)',
    startIn: [4, 8],
    stopIn: [2, 3],
    restDays: [15, 30],
    ...pocketGuide,
    preferred: false,
  },
  { forage: 'kentucky-bluegrass', name: 'Kentucky bluegrass, spring', startIn: [6, 6], stopIn: [2, 2], ...wisconsin, preferred: true },
  { forage: 'perennial-ryegrass', name: 'Perennial ryegrass, spring', startIn: [6, 6], stopIn: [2, 2], ...wisconsin, preferred: true },
  { forage: 'smooth-brome', name: 'Smooth brome, spring', startIn: [10, 10], stopIn: [4, 4], ...wisconsin, preferred: true },
  { forage: 'reed-canarygrass', name: 'Reed canarygrass, spring', startIn: [10, 10], stopIn: [4, 4], ...wisconsin, preferred: true },
  { forage: 'orchardgrass', name: 'Orchardgrass, spring', startIn: [10, 10], stopIn: [4, 4], ...wisconsin },
  {
    forage: 'cool-season-mix',
    name: 'Cool-season mix',
    startIn: [8, 10],
    stopIn: [4, 4],
    preferred: true,
    source: 'ohio-state-grazing-2012',
    where: 'Heights in the text',
    seen: 'print',
  },
  {
    forage: 'cool-season-mix',
    name: 'Cool-season pasture, Missouri',
    startIn: [8, 10],
    stopIn: [4, 4],
    preferred: false,
    source: 'tate-2020',
    where: 'Heights in the text',
    seen: 'print',
  },
  { forage: 'tall-cool-season', name: 'Timothy, orchardgrass, brome', startIn: [6, 8], stopIn: [2, 3], ...maine },
  { forage: 'low-cool-season', name: 'Bluegrass, redtop, fine fescue, white clover', startIn: [4, 6], stopIn: [1, 2], ...maine, preferred: true },
  {
    forage: 'fescue-ryegrass-dairy',
    name: 'Fescue and ryegrass, dairy',
    startIn: [5, 8],
    stopIn: [2, 2.5],
    preferred: false,
    source: 'hamilton-2014',
    where: 'Heights in the text',
    seen: 'print',
  },
  { forage: 'native-tall-grass', name: 'Bluestems, indiangrass, switchgrass, eastern gamagrass', startIn: [12, 12], stopIn: [8, 8], ...luling },
  {
    forage: 'native-tall-grass',
    name: 'Native warm-season grasses',
    startIn: [18, 20],
    stopIn: [8, 10],
    preferred: true,
    source: 'uky-native-grass-2020',
    where: 'Heights in the text',
    seen: 'print',
  },
  {
    forage: 'native-tall-grass',
    name: 'Native tall grasses, Tennessee',
    startIn: [30, 32],
    stopIn: [12, 14],
    preferred: false,
    source: 'keyser-2019',
    where: 'Heights in the text',
    seen: 'print',
  },
  { forage: 'sideoats-grama', name: 'Sideoats grama', startIn: [6, 6], stopIn: [4, 4], ...luling, preferred: true },
  { forage: 'blue-grama', name: 'Blue grama', startIn: [5, 5], stopIn: [3, 3], ...luling, preferred: true },
  { forage: 'cordgrass', name: 'Cordgrass', startIn: [8, 8], stopIn: [4, 4], ...luling, preferred: true },
  { forage: 'brownseed-paspalum', name: 'Brownseed paspalum', startIn: [8, 8], stopIn: [6, 6], ...luling, preferred: true },
  { forage: 'bermudagrass', name: 'Bermudagrass, Texas', startIn: [6, 6], stopIn: [3, 3], ...luling },
  { forage: 'bahiagrass', name: 'Bahiagrass, Texas', startIn: [6, 6], stopIn: [3, 3], ...luling },
  { forage: 'kleingrass', name: 'Kleingrass, dallisgrass, introduced bluestem', startIn: [8, 8], stopIn: [6, 6], ...luling, preferred: true },
  { forage: 'big-bluestem', name: 'Big bluestem, indiangrass', startIn: [14, 18], stopIn: [6, 10], restDays: [30, 45], ...recalled },
  { forage: 'eastern-gamagrass', name: 'Eastern gamagrass', startIn: [18, 24], stopIn: [8, 12], restDays: [30, 45], ...recalled },
  { forage: 'little-bluestem', name: 'Little bluestem', startIn: [8, 12], stopIn: [4, 6], restDays: [30, 45], ...recalled },
  { forage: 'old-world-bluestem', name: 'Old World bluestem', startIn: [8, 10], stopIn: [4, 4], restDays: [21, 35], ...recalled },
  { forage: 'crabgrass', name: 'Crabgrass', startIn: [6, 8], stopIn: [3, 3], restDays: [15, 28], ...recalled },
  { forage: 'kentucky-bluegrass', name: 'Kentucky bluegrass', startIn: [4, 6], stopIn: [2, 2], restDays: [10, 40], ...recalled },
  { forage: 'smooth-brome', name: 'Smooth brome, timothy', startIn: [8, 10], stopIn: [4, 4], restDays: [20, 50], ...recalled },
  { forage: 'perennial-ryegrass', name: 'Perennial ryegrass', startIn: [6, 8], stopIn: [2, 3], restDays: [14, 35], ...recalled },
] as const satisfies readonly ForageHeight[];
