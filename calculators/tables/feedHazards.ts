/**
 * Published classes for what a laboratory slip says. Each class is named as its source prints it; the words are the sources', never a clearance by us.
 * `severity` is our own reading of those words and serves only to put the strictest list first: 0 no limit named, 1 limit or caution, 2 not for some
 * animals or harm named, 3 do not feed or use. A value on an edge belongs to the class above it.
 */
export interface Band {
  readonly from: number;
  readonly printed: string;
  readonly severity: 0 | 1 | 2 | 3;
}

/** Band with the most that the ration may hold of the feed, percent of its dry matter; null where the copy read names none. */
export interface RationBand extends Band {
  readonly mostPercent: number | null;
  readonly mostPregnantPercent: number | null;
}

export interface BandList<B extends Band = Band> {
  readonly list: string;
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
  /** Animals that the list speaks of, where it does not speak of all. */
  readonly animals?: 'calves' | 'adult-cattle';
  readonly bands: readonly B[];
}

/** Nitrate in feed: edges in ppm of nitrate nitrogen (NO3-N) in dry matter. */
export const forageNitrate = [
  {
    list: 'clemson',
    source: 'clemson-nitrate',
    where: 'nitrate nitrogen, dry matter basis',
    seen: 'print',
    bands: [
      { from: 0, printed: 'considered safe to feed under all conditions', severity: 0, mostPercent: 100, mostPregnantPercent: 100 },
      {
        from: 1000,
        printed: 'safe for non-pregnant animals; best limited for pregnant animals',
        severity: 1,
        mostPercent: 100,
        mostPregnantPercent: 50,
      },
      { from: 1500, printed: 'fed safely if limited', severity: 1, mostPercent: 50, mostPregnantPercent: 50 },
      { from: 2000, printed: 'should be limited; not for pregnant animals', severity: 2, mostPercent: 35, mostPregnantPercent: 0 },
      { from: 3500, printed: 'should be limited; not for pregnant animals', severity: 2, mostPercent: 25, mostPregnantPercent: 0 },
      { from: 4000, printed: 'potentially toxic, do not feed', severity: 3, mostPercent: 0, mostPregnantPercent: 0 },
    ],
  },
  {
    list: 'dairyland',
    source: 'dairyland-nitrate',
    where: 'nitrate-nitrogen, 100 percent dry basis',
    seen: 'print',
    bands: [
      { from: 0, printed: 'safe', severity: 0, mostPercent: 100, mostPregnantPercent: 100 },
      {
        from: 1000,
        printed: 'generally safe when fed balanced rations; best limited for pregnant animals',
        severity: 1,
        mostPercent: 100,
        mostPregnantPercent: 50,
      },
      { from: 2000, printed: 'limit amount to less than half of the ration', severity: 1, mostPercent: 50, mostPregnantPercent: 50 },
      { from: 4000, printed: 'potentially toxic, do not feed', severity: 3, mostPercent: 0, mostPregnantPercent: 0 },
    ],
  },
  {
    list: 'servitech',
    source: 'servitech-nitrate',
    where: 'Table 1',
    seen: 'print',
    bands: [
      { from: 0, printed: 'very low', severity: 0, mostPercent: 100, mostPregnantPercent: 100 },
      { from: 700, printed: 'low', severity: 1, mostPercent: 100, mostPregnantPercent: 50 },
      { from: 1400, printed: 'medium', severity: 1, mostPercent: 50, mostPregnantPercent: 25 },
      { from: 2100, printed: 'high', severity: 2, mostPercent: null, mostPregnantPercent: null },
      { from: 2800, printed: 'very high', severity: 2, mostPercent: null, mostPregnantPercent: null },
      { from: 3500, printed: 'extremely high', severity: 3, mostPercent: null, mostPregnantPercent: null },
    ],
  },
  {
    list: 'american-agricultural-laboratory',
    source: 'amaglab-nitrate-mixing',
    where: 'guidelines for feed high in nitrates',
    seen: 'print',
    bands: [
      { from: 0, printed: 'risk is low, no restrictions', severity: 0, mostPercent: 100, mostPregnantPercent: 100 },
      { from: 1500, printed: 'risk is moderate, usually no restrictions', severity: 1, mostPercent: 100, mostPregnantPercent: 100 },
      { from: 2100, printed: 'risk is high, do not feed unless properly mixed', severity: 3, mostPercent: null, mostPregnantPercent: null },
    ],
  },
  {
    list: 'south-dakota',
    source: 'harty-nitrate',
    where: 'levels of nitrate-N in forage; 0.15 and 0.45 percent',
    seen: 'print',
    bands: [
      { from: 0, printed: 'safe', severity: 0, mostPercent: 100, mostPregnantPercent: 100 },
      { from: 1500, printed: 'use caution, may need to dilute', severity: 1, mostPercent: null, mostPregnantPercent: null },
      { from: 4500, printed: 'above the range of caution', severity: 3, mostPercent: null, mostPregnantPercent: null },
    ],
  },
] as const satisfies readonly BandList<RationBand>[];

/** Nitrate in water: edges in mg/L of nitrate nitrogen (NO3-N). The lists differ tenfold. */
export const waterNitrate = [
  {
    list: 'national-research-council',
    source: 'nrc-nutrients-toxic-1974',
    where: 'nitrate in drinking water of cattle',
    seen: 'memory',
    bands: [
      { from: 0, printed: 'no harm', severity: 0 },
      { from: 10, printed: 'with a feed low in nitrate', severity: 1 },
      { from: 20, printed: 'harm over a long time', severity: 2 },
      { from: 40, printed: 'at risk, deaths possible', severity: 2 },
      { from: 100, printed: 'deaths likely', severity: 3 },
      { from: 200, printed: 'should not be used', severity: 3 },
    ],
  },
  {
    list: 'montana',
    source: 'bauder-1998',
    where: 'basic rule: nitrate and nitrite together',
    seen: 'print',
    bands: [
      { from: 0, printed: 'not over the basic rule', severity: 0 },
      { from: 100, printed: 'should not drink', severity: 3 },
    ],
  },
  {
    list: 'south-dakota',
    source: 'harty-nitrate',
    where: 'levels of nitrate-N in water',
    seen: 'print',
    bands: [
      { from: 0, printed: 'safe', severity: 0 },
      { from: 100, printed: 'use caution, and consider the additive effect with feed', severity: 1 },
      { from: 300, printed: 'potentially toxic', severity: 3 },
    ],
  },
] as const satisfies readonly BandList[];

/** Sulfate in water: edges in mg/L of sulfate (SO4). Feed adds sulfur to it. */
export const waterSulfate = [
  {
    list: 'north-dakota-calves',
    source: 'meehan-water-2023',
    where: 'recommended concentration, calves',
    seen: 'print',
    animals: 'calves',
    bands: [
      { from: 0, printed: 'recommended', severity: 0 },
      { from: 500, printed: 'above the recommended concentration', severity: 1 },
    ],
  },
  {
    list: 'north-dakota-adults',
    source: 'meehan-water-2023',
    where: 'recommended concentration, adult cattle',
    seen: 'print',
    animals: 'adult-cattle',
    bands: [
      { from: 0, printed: 'recommended', severity: 0 },
      { from: 1000, printed: 'above the recommended concentration', severity: 1 },
    ],
  },
  {
    list: 'south-dakota-extension',
    source: 'harty-sulfate-2012',
    where: 'levels of sulfates',
    seen: 'print',
    bands: [
      { from: 0, printed: 'no effect named', severity: 0 },
      { from: 1500, printed: 'could cause temporary diarrhea', severity: 1 },
      { from: 2000, printed: 'will reduce performance', severity: 2 },
      { from: 3000, printed: 'acutely toxic, contributing to polioencephalomalacia', severity: 3 },
    ],
  },
  {
    list: 'south-dakota-c274',
    source: 'german-c274-2008',
    where: 'table of sulfates',
    seen: 'memory',
    bands: [
      { from: 0, printed: 'no harm named', severity: 0 },
      { from: 1500, printed: 'scours', severity: 1 },
      { from: 2500, printed: 'poor, polioencephalomalacia possible', severity: 2 },
      { from: 3500, printed: 'not for pregnant or lactating animals', severity: 2 },
      { from: 4500, printed: 'should not be used', severity: 3 },
    ],
  },
] as const satisfies readonly BandList[];

/** Salts in water: edges in mg/L of total dissolved solids. */
export const waterSalts = [
  {
    list: 'montana',
    source: 'montana-livestock-water',
    where: 'table of total dissolved solids',
    seen: 'print',
    bands: [
      { from: 0, printed: 'excellent for all', severity: 0 },
      { from: 1000, printed: 'satisfactory; mild temporary scours', severity: 0 },
      { from: 3000, printed: 'usable; may be refused; poor for poultry', severity: 1 },
      { from: 5000, printed: 'avoid for pregnant and lactating animals; not for poultry', severity: 2 },
      { from: 7000, printed: 'risky; avoid', severity: 2 },
      { from: 10_000, printed: 'do not use', severity: 3 },
    ],
  },
  {
    list: 'north-dakota',
    source: 'meehan-water-2023',
    where: 'total dissolved solids for most classes of grazing livestock',
    seen: 'print',
    bands: [
      { from: 0, printed: 'under the level for most classes', severity: 0 },
      { from: 5000, printed: 'above the level for most classes', severity: 2 },
    ],
  },
] as const satisfies readonly BandList[];

/** Prussic acid in forage: edges in ppm of HCN in dry matter. A field strip that turns means 100 to 200 ppm, which Oregon State calls toxic. */
export const foragePrussicAcid = [
  {
    list: 'kansas',
    source: 'bean-prussic-302',
    where: 'testing for prussic acid, 2: dry basis',
    seen: 'print',
    bands: [
      { from: 0, printed: 'not over 500 ppm dry', severity: 1 },
      { from: 500, printed: 'potentially toxic, not the only source of feed', severity: 2 },
    ],
  },
  {
    list: 'purdue',
    source: 'rhykerd-johnson-prussic',
    where: 'what prussic acid poisoning is; 0.1 percent',
    seen: 'print',
    bands: [
      { from: 0, printed: 'not over 0.1 percent', severity: 1 },
      { from: 1000, printed: 'highly dangerous', severity: 3 },
    ],
  },
  {
    list: 'kansas-nebraska',
    source: 'k-state-unl-prussic',
    where: 'classes by dry matter',
    seen: 'memory',
    bands: [
      { from: 0, printed: 'low', severity: 0 },
      { from: 500, printed: 'caution', severity: 1 },
      { from: 1000, printed: 'do not feed', severity: 3 },
    ],
  },
] as const satisfies readonly BandList[];

/** The same list for a slip that reports the feed as it came: edges in ppm of HCN as is. Either line counts; for hay this one is the lower. */
export const foragePrussicAcidAsIs = [
  {
    list: 'kansas-as-is',
    source: 'bean-prussic-302',
    where: 'testing for prussic acid, 2: as-is basis',
    seen: 'print',
    bands: [
      { from: 0, printed: 'not over 200 ppm as is', severity: 1 },
      { from: 200, printed: 'potentially toxic, not the only source of feed', severity: 2 },
    ],
  },
] as const satisfies readonly BandList[];

/** A printed amount of nitrate near which ruminants die, grams for 100 lb of live weight, counted as the source counts it. */
export interface DeadlyDose {
  readonly key: string;
  readonly about: string;
  readonly gPerCwt: number;
  readonly form: 'no3-n' | 'no3' | 'kno3';
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}
// 0.05 percent of 100 lb.
const researchServiceG = 22.679_618_5;
const researchService = { gPerCwt: researchServiceG, source: 'ars-nitrate-plants', where: 'how it affects livestock', seen: 'print' } as const;
export const deadlyNitrate = [
  {
    key: 'bull-calves',
    about: 'Bull calves, one dose of potassium nitrate: the least deadly one is more than this',
    gPerCwt: 30,
    form: 'kno3',
    source: 'prewitt-merilan',
    where: 'summary',
    seen: 'print',
  },
  { key: 'research-service-salt', about: '0.05 percent of weight, if potassium nitrate is meant', form: 'kno3', ...researchService },
  { key: 'research-service-ion', about: '0.05 percent of weight, if nitrate itself is meant', form: 'no3', ...researchService },
  {
    key: 'dairy-page',
    about: 'A dairy page, 300 milligrams a pound: most likely meant as potassium nitrate, which nobody has proven',
    gPerCwt: 30,
    form: 'no3-n',
    source: 'mahanna-nitrate',
    where: 'second paragraph',
    seen: 'print',
  },
] as const satisfies readonly DeadlyDose[];

/** What those amounts come to, without the last: grams of nitrate nitrogen in a day for 100 lb of live weight. The low end leads. It is no ceiling to feed up to. */
export const deadlyNitrateBand = { leastGPerCwt: 3, mostGPerCwt: 5 } as const;
