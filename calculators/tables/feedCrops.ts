/**
 * Feed crops sown for a gap: water for a ton, yield, days until the first grazing. Yields with irrigation are ceilings; without it the water
 * decides. Several can poison: nitrate, prussic acid, bloat.
 */
export interface FeedCrop {
  readonly crop: string;
  readonly name: string;
  readonly season: 'warm' | 'cool';
  readonly inchesPerTon?: Cited<readonly [low: number, high: number]>;
  readonly tonsPerAc?: Cited<readonly [low: number, high: number]>;
  readonly daysToGrazing?: Cited<readonly [low: number, high: number]>;
}

interface Cited<Value> {
  readonly value: Value;
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

const irrigated = { source: 'anderson-g2183', where: 'Table I, irrigated', seen: 'print' } as const;
const perTon = { source: 'volesky-g2012', where: 'Water-use efficiency, plentiful moisture', seen: 'print' } as const;
const louisiana = { source: 'lsu-summer-annuals', where: 'Days to grazing', seen: 'print' } as const;

export const feedCrops = [
  {
    crop: 'sudangrass',
    name: 'Sudangrass',
    season: 'warm',
    inchesPerTon: { value: [2.5, 3.5], ...perTon },
    tonsPerAc: { value: [4.1, 4.8], ...irrigated },
    daysToGrazing: { value: [35, 40], ...louisiana },
  },
  {
    crop: 'sorghum-sudangrass',
    name: 'Sorghum-sudangrass',
    season: 'warm',
    inchesPerTon: { value: [2.5, 3.5], ...perTon },
    tonsPerAc: { value: [4.2, 5.3], ...irrigated },
    daysToGrazing: { value: [35, 40], ...louisiana },
  },
  { crop: 'forage-sorghum', name: 'Forage sorghum', season: 'warm', tonsPerAc: { value: [4.4, 5.3], ...irrigated } },
  {
    crop: 'pearl-millet',
    name: 'Pearl millet',
    season: 'warm',
    tonsPerAc: { value: [3.8, 4.5], ...irrigated },
    daysToGrazing: { value: [35, 40], ...louisiana },
  },
  {
    crop: 'foxtail-millet',
    name: 'Foxtail millet',
    season: 'warm',
    inchesPerTon: { value: [2.5, 3.5], ...perTon },
    tonsPerAc: { value: [2.8, 3.8], ...irrigated },
  },
  { crop: 'teff', name: 'Teff', season: 'warm', tonsPerAc: { value: [2.6, 3.8], ...irrigated } },
  {
    crop: 'oats-spring',
    name: 'Oats, spring sown',
    season: 'cool',
    inchesPerTon: { value: [4.5, 5.5], ...perTon },
    tonsPerAc: { value: [2.5, 4.0], source: 'unl-spring-annuals-2023', where: 'Yield of spring-planted small grains', seen: 'print' },
  },
  {
    crop: 'oats-fall',
    name: 'Oats or oats with turnips, sown in August',
    season: 'cool',
    tonsPerAc: { value: [1, 2], source: 'drewnoski-double-crop', where: 'Dry matter, sown 10 August to 10 September', seen: 'print' },
    daysToGrazing: { value: [42, 56], source: 'anderson-oats-2014', where: 'Six to eight weeks', seen: 'print' },
  },
  {
    crop: 'turnips',
    name: 'Turnips',
    season: 'cool',
    daysToGrazing: { value: [70, 90], source: 'ball-extending-grazing', where: 'Brassicas', seen: 'transcription' },
  },
] as const satisfies readonly FeedCrop[];

/** Growth that winter triticale made of each inch of water in western Kansas, lb of dry matter per acre. */
export const triticaleLbPerInch = 640;
export const triticaleSource = { source: 'kansas-forage-water', where: 'Abstract', seen: 'print' } as const;
