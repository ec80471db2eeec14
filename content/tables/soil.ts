import { availableWaterByTexture, availableWaterLostToSalt } from '../../calculators/tables/availableWater.ts';
import { contouring } from '../../calculators/tables/contouring.ts';
import { cropCover } from '../../calculators/tables/cropCover.ts';
import { erodibilityByTextureLists } from '../../calculators/tables/erodibility.ts';
import { forageCoefficients } from '../../calculators/tables/forageCoefficients.ts';
import { pastureCover } from '../../calculators/tables/pastureCover.ts';
import { type DensityLimits, rootLimitingDensity } from '../../calculators/tables/rootLimitingDensity.ts';
import { soilFeel } from '../../calculators/tables/soilFeel.ts';
import { soilLossTolerance } from '../../calculators/tables/soilLossTolerance.ts';
import { soilWaterByTexture } from '../../calculators/tables/soilWaterByTexture.ts';
import { entriesOf, named, type Origin, type TableGroup, tableOf, upTo } from './table.ts';

const densities = entriesOf(rootLimitingDensity).flatMap(([list, { source, where, seen, limits }]) =>
  entriesOf<string, DensityLimits>(limits).map(([texture, limit]) => ({ list, texture, limit, source, where, seen })),
);

const canopies = { 'short-brush': 'tall weeds or short brush', 'tall-brush': 'brush or bushes', trees: 'trees without low brush' } as const;
const grounds = { grass: 'grass and litter', weeds: 'weeds with few roots' } as const;
/** The row without a canopy is the same under every height and stands once for each kind of ground. */
const coverRows = entriesOf(canopies).flatMap(([canopy, canopyName], nth) =>
  entriesOf(grounds).flatMap(([ground, groundName]) =>
    pastureCover.factors[canopy][ground]
      .map((factors, index) => {
        const canopyPercent = pastureCover.canopyPercent[index] ?? 0;
        return canopyPercent === 0
          ? { canopyPercent, key: `none-${ground}`, name: `Nothing above; ${groundName}`, factors }
          : { canopyPercent, key: `${canopy}-${canopyPercent}-${ground}`, name: `${canopyPercent} % under ${canopyName}; ${groundName}`, factors };
      })
      .filter(({ canopyPercent }) => canopyPercent > 0 || nth === 0),
  ),
);

const { 'stewart-1975': threeLevels, 'stone-hilborn-2012': twoLevels } = erodibilityByTextureLists;
const [leastOrganic, middleOrganic, mostOrganic] = threeLevels.organicMatterPercent;
interface ErodibilityRow extends Origin {
  readonly texture: string;
  readonly list: string;
  readonly little: number;
  readonly some: number | null;
  readonly much: number;
}
const erodibility: readonly ErodibilityRow[] = [
  ...entriesOf(threeLevels.erodibility).map(([texture, [little, some, much]]) => ({ ...threeLevels, texture, list: 'three', little, some, much })),
  ...entriesOf(twoLevels.erodibility).map(([texture, { below, above }]) => ({
    ...twoLevels,
    texture,
    list: 'two',
    little: below,
    some: null,
    much: above,
  })),
];

const saltRows = availableWaterLostToSalt.conductivityDsPerM.map((conductivity, index) => ({
  conductivity,
  lost: availableWaterLostToSalt.lostPercent[index] ?? null,
}));

export const soil: TableGroup = {
  title: 'Soil and its water',
  tables: [
    tableOf({
      slug: 'available-water',
      title: 'Water a soil holds for plants, by texture (available water)',
      says: 'Inches of water that roots can draw from each foot of soil, once it has drained.',
      trap: 'For soil without stones. Take off the share that is rock, and count only as deep as roots really go.',
      searchWords: ['AWC', 'available water capacity', 'water holding', 'inches per foot'],
      file: 'availableWater',
      calculators: ['stored-water', 'sown-feed'],
      rowsAre: 'Texture',
      entries: entriesOf(availableWaterByTexture.inPerFt),
      key: ([texture]) => texture,
      name: ([texture]) => named(texture),
      origin: availableWaterByTexture,
      columns: [{ key: 'water', label: 'Water for plants', unit: 'in/ft', of: ([, { low, high }]) => [low, high] }],
    }),
    tableOf({
      slug: 'salt-and-water',
      title: 'Water that salt keeps from plants',
      says: 'How much of the available water a salty soil holds back, by the conductivity that a soil laboratory reports.',
      trap: 'It is for the saturation extract (ECe). Many slips give a 1 to 1 or 1 to 2 mix, which reads lower.',
      searchWords: ['salinity', 'saline soil', 'EC', 'conductivity', 'dS/m', 'mmho'],
      file: 'availableWater',
      calculators: ['stored-water'],
      rowsAre: 'Conductivity, dS/m',
      entries: saltRows,
      key: ({ conductivity }) => String(conductivity),
      name: ({ conductivity }) => String(conductivity),
      origin: availableWaterLostToSalt,
      columns: [{ key: 'lost', label: 'Available water lost', unit: '%', of: ({ lost }) => lost }],
    }),
    tableOf({
      slug: 'soil-water-limits',
      title: 'Full and dry: water in the soil by texture (field capacity and wilting point)',
      says: 'The share of the soil that is water after it has drained, and when plants can draw no more.',
      trap: 'Clay holds a lot of water and gives up little of it. The list has no sandy clay loam, clay loam or sandy clay.',
      searchWords: ['field capacity', 'permanent wilting point', 'soil moisture', 'evaporation from bare soil'],
      file: 'soilWaterByTexture',
      calculators: ['season'],
      rowsAre: 'Texture',
      entries: entriesOf(soilWaterByTexture.textures),
      key: ([texture]) => texture,
      name: ([texture]) => named(texture),
      origin: soilWaterByTexture,
      columns: [
        { key: 'full', label: 'Field capacity, share', of: ([, { fieldCapacityShare }]) => fieldCapacityShare },
        { key: 'dry', label: 'Wilting point, share', of: ([, { wiltingPointShare }]) => wiltingPointShare },
        { key: 'evaporable', label: 'Evaporates from the top', unit: 'mm', of: ([, { evaporableMm }]) => evaporableMm },
      ],
    }),
    tableOf({
      slug: 'soil-feel',
      title: 'How full the soil is, by feel',
      says: 'Squeeze a handful from each depth where roots are. The feel tells how much of the available water is there.',
      trap: 'Dig, because after a shower the top says nothing about what is below.',
      searchWords: ['feel and appearance', 'soil moisture by hand', 'ball test', 'squeeze test'],
      file: 'soilFeel',
      calculators: ['stored-water'],
      rowsAre: 'Feel',
      entries: entriesOf(soilFeel.filledPercent),
      key: ([feel]) => feel,
      name: ([feel]) => named(feel),
      origin: soilFeel,
      columns: [{ key: 'filled', label: 'Of the available water', unit: '%', of: ([, { low, high }]) => [low, high] }],
    }),
    tableOf({
      slug: 'root-limiting-density',
      title: 'How packed is too packed (root-limiting bulk density)',
      says: 'Dry weight of a known volume of soil at which roots begin to suffer, or stop, for each texture. Four lists stand side by side.',
      trap: 'The lists differ, and each stands under its own source. Take stones out of weight and volume first, and dig to see if roots turn aside.',
      searchWords: ['compaction', 'bulk density', 'hardpan', 'packed soil', 'roots stop'],
      file: 'rootLimitingDensity',
      calculators: ['packed-soil'],
      rowsAre: 'Texture',
      entries: densities,
      key: ({ list, texture }) => `${texture}-${list}`,
      name: ({ texture }) => named(texture),
      origin: (entry) => entry,
      columns: [
        { key: 'ideal', label: 'Good for roots below', unit: 'g/cm3', of: ({ limit }) => limit.idealBelow ?? null },
        { key: 'limits', label: 'May suffer from', unit: 'g/cm3', of: ({ limit }) => limit.limitsFrom ?? null },
        { key: 'stops', label: 'Kept out above', unit: 'g/cm3', of: ({ limit }) => limit.stopsAbove ?? null },
      ],
    }),
    tableOf({
      slug: 'pasture-cover-factors',
      title: 'How cover keeps soil in place (C factors of pasture and range)',
      says: 'Soil lost beside clean-tilled fallow on the same slope, which counts as 1. Go across by how much of the ground is covered.',
      trap: `For land that has long been out of tillage. Bare ground in it counts ${pastureCover.factors.trees.grass[0][0]} here, not 1.`,
      searchWords: ['C factor', 'cover management factor', 'USLE', 'ground cover', 'erosion'],
      file: 'pastureCover',
      calculators: ['soil-loss'],
      rowsAre: 'What stands above, and what the ground cover is',
      entries: coverRows,
      key: ({ key }) => key,
      name: ({ name }) => name,
      origin: pastureCover,
      columns: pastureCover.coverPercent.map((percent, index) => ({
        key: String(percent),
        label: percent === 95 ? '95 % covered or more' : `${percent} % covered`,
        of: ({ factors }: (typeof coverRows)[number]) => factors[index] ?? null,
      })),
    }),
    tableOf({
      slug: 'crop-cover-factors',
      title: 'Cover factors of crops (C factors)',
      says: 'Soil lost over a year under a crop, beside clean-tilled fallow, which counts as 1.',
      trap: 'A rotation as it is farmed near you has a factor of its own, so ask for it before you compare.',
      searchWords: ['C factor', 'corn', 'soybeans', 'wheat fallow', 'no-till', 'erosion'],
      file: 'cropCover',
      calculators: ['soil-loss'],
      rowsAre: 'Crop and how it is grown',
      entries: entriesOf(cropCover),
      key: ([crop]) => crop,
      name: ([crop]) => named(crop),
      origin: ([, entry]) => entry,
      columns: [{ key: 'factor', label: 'Cover factor', of: ([, { low, high }]) => [low, high] }],
    }),
    tableOf({
      slug: 'erodibility',
      title: 'How easily a soil washes away, by texture (erodibility K)',
      says: 'Soil lost for each unit of the rain’s force, in the US units of the soil loss equation.',
      trap: 'The soil survey prints a K for your soil: take that. Never mix it with the metric K, which is a smaller number for the same soil.',
      searchWords: ['K factor', 'soil erodibility', 'USLE', 'erosion'],
      file: 'erodibility',
      calculators: ['soil-loss'],
      rowsAre: 'Texture',
      entries: erodibility,
      key: ({ texture, list }) => `${texture}-${list}`,
      name: ({ texture }) => named(texture),
      origin: (entry) => entry,
      columns: [
        { key: 'little', label: `Little organic matter (${leastOrganic} %, or under 2 %)`, of: ({ little }) => little },
        { key: 'some', label: `${middleOrganic} %`, of: ({ some }) => some },
        { key: 'much', label: `Much (${mostOrganic} %, or over 2 %)`, of: ({ much }) => much },
      ],
    }),
    tableOf({
      slug: 'contouring',
      title: 'Working across the slope (P factors)',
      says: 'What is left of the soil loss when ground is worked on the contour or in strips, and the longest slope it holds for.',
      trap: 'On longer slopes or with wider strips the factor does not hold. Ground steeper than the last row gets none.',
      searchWords: ['P factor', 'contour farming', 'contour strips', 'support practice'],
      file: 'contouring',
      calculators: [],
      rowsAre: 'Slope up to, %',
      entries: contouring.rows,
      key: ({ toSlopePercent }) => String(toSlopePercent),
      name: ({ toSlopePercent }) => String(toSlopePercent),
      origin: contouring,
      columns: [
        { key: 'contour', label: 'On the contour', of: ({ contourFactor }) => contourFactor },
        { key: 'length', label: 'Longest slope', unit: 'ft', of: ({ lengthLimitFt }) => lengthLimitFt },
        { key: 'strip', label: 'In strips', of: ({ stripFactor }) => stripFactor },
        { key: 'width', label: 'Widest strip', unit: 'ft', of: ({ stripWidthFt }) => stripWidthFt },
      ],
    }),
    tableOf({
      slug: 'soil-loss-tolerance',
      title: 'How much soil loss planners put up with (tolerance T)',
      says: 'Tons an acre in a year, by how deep roots can go and whether the subsoil can be made into good ground again.',
      trap: 'It is a line for planning. Soil forms far more slowly than this, so the less you lose, the better.',
      searchWords: ['T value', 'tolerable soil loss', 'T factor', 'erosion limit'],
      file: 'soilLossTolerance',
      calculators: ['soil-loss'],
      rowsAre: 'Roots can go down to, in',
      entries: soilLossTolerance.rows,
      key: ({ toRootingDepthIn }) => (Number.isFinite(toRootingDepthIn) ? String(toRootingDepthIn) : 'deeper'),
      name: ({ toRootingDepthIn }) => String(upTo(toRootingDepthIn)),
      origin: soilLossTolerance,
      columns: [
        { key: 'renewable', label: 'Subsoil can be improved', unit: 'tons/ac', of: ({ renewable }) => renewable },
        { key: 'non-renewable', label: 'Subsoil cannot', unit: 'tons/ac', of: ({ nonRenewable }) => nonRenewable },
      ],
    }),
    tableOf({
      slug: 'forage-water-use',
      title: 'How much water forage uses (crop coefficients)',
      says: 'Water use as a share of that of the reference grass that weather stations report, with how deep roots reach.',
      trap: 'They hold while water is plentiful. In drought plants slow down and use less.',
      searchWords: ['Kc', 'crop coefficient', 'evapotranspiration', 'ET', 'root depth', 'water use'],
      file: 'forageCoefficients',
      calculators: [],
      rowsAre: 'Forage',
      entries: forageCoefficients.rows,
      key: ({ forage }) => forage,
      name: ({ name }) => name,
      origin: forageCoefficients,
      columns: [
        { key: 'initial', label: 'At first', of: ({ initial }) => initial },
        { key: 'middle', label: 'Full grown', of: ({ middle }) => middle },
        { key: 'end', label: 'At the end', of: ({ end }) => end },
        { key: 'depletion', label: 'Share of the water used before it slows', of: ({ depletionFraction }) => depletionFraction },
      ],
    }),
  ],
};
