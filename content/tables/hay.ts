import { baleDensity } from '../../calculators/tables/baleDensity.ts';
import { type FeedCrop, feedCrops } from '../../calculators/tables/feedCrops.ts';
import { feederWaste, wasteByDaysSupply, wasteByDaysSupplySource } from '../../calculators/tables/feederWaste.ts';
import { hayHeat } from '../../calculators/tables/hayHeat.ts';
import { hayStorageLossByMonths, hayStorageLossReported } from '../../calculators/tables/hayStorageLoss.ts';
import { type Cell, named, type TableGroup, tableOf } from './table.ts';

const methods = {
  'ground-uncovered': 'On the ground, no cover',
  'raised-uncovered': 'Off the ground, no cover',
  'ground-covered': 'On the ground, covered',
  'raised-covered': 'Off the ground, covered',
  roof: 'Under a roof',
  barn: 'In a closed barn',
  'net-wrap-outside': 'Net wrap, outside',
  'plastic-wrapped': 'Wrapped in plastic',
} as const;

const waste = feederWaste.flatMap(({ feeder, name, columns }) =>
  columns.map((printed, index) => ({ ...printed, name, key: index === 0 ? feeder : `${feeder}-${index + 1}` })),
);

/** A crop's figures come from several publications: one row for each. */
const figures = [
  { figure: 'inchesPerTon', label: 'water', column: 'water' },
  { figure: 'tonsPerAc', label: 'yield', column: 'yield' },
  { figure: 'daysToGrazing', label: 'days to grazing', column: 'days' },
] as const;
const crops: readonly FeedCrop[] = feedCrops;
const cropRows = crops.flatMap((crop) =>
  figures.flatMap(({ figure, label, column }) => {
    const cited = crop[figure];
    return cited === undefined ? [] : [{ ...cited, key: `${crop.crop}-${column}`, name: `${crop.name}, ${label}`, column }];
  }),
);
const valueIn =
  (wanted: string) =>
  ({ column, value }: (typeof cropRows)[number]): Cell =>
    column === wanted ? value : '';

export const hay: TableGroup = {
  title: 'Hay and feed',
  tables: [
    tableOf({
      slug: 'hay-storage-loss',
      title: 'What round bales lose in storage, by months kept',
      says: 'Dry matter that is gone before anybody eats it. Low is for tight bales in dry country, high for wet country.',
      trap: 'Weight can stay the same while feed is lost, because rotten hay is wet. What is left is poorer as well.',
      searchWords: ['hay storage loss', 'bale storage', 'round bale waste', 'tarp', 'barn'],
      file: 'hayStorageLoss',
      calculators: ['hay-to-grass', 'hay-value'],
      rowsAre: 'How it is kept',
      entries: hayStorageLossByMonths,
      key: ({ method }) => method,
      name: ({ method }) => methods[method],
      origin: (entry) => entry,
      columns: [
        { key: 'months-9', label: 'Up to 9 months', unit: '%', of: ({ upTo9MonthsPercent }) => upTo9MonthsPercent },
        { key: 'months-18', label: '12 to 18 months', unit: '%', of: ({ at12To18MonthsPercent }) => at12To18MonthsPercent },
      ],
    }),
    tableOf({
      slug: 'hay-storage-reports',
      title: 'What others found that stored hay loses',
      says: 'Storage losses that other publications print, without saying for how many months.',
      trap: 'The same way of storing can lose little or a lot. It depends on rain, drainage and how tight the bale is.',
      searchWords: ['hay storage loss', 'net wrap', 'plastic wrap', 'hay barn', 'tarp'],
      file: 'hayStorageLoss',
      calculators: ['hay-to-grass', 'hay-value'],
      rowsAre: 'How it is kept',
      entries: hayStorageLossReported,
      key: ({ method, source }) => `${method}-${source}`,
      name: ({ method }) => methods[method],
      origin: (entry) => entry,
      columns: [{ key: 'loss', label: 'Dry matter lost', unit: '%', of: ({ percent }) => percent }],
    }),
    tableOf({
      slug: 'hay-heat',
      title: 'What to do as stored hay heats',
      says: 'What a probe in the stack reads, and what to do at that heat. Where two rows name one heat, go by the one that acts or calls for help first.',
      trap: 'A stack that is cool today can be hot next week. Look for six weeks, and in the middle of the stack.',
      caution:
        'Never probe alone, and never walk on a hot stack: it can be burned hollow below you. Lay planks, tie yourself to something, and keep out of the smoke. From 150 °F move no hay until the fire department is there, whatever a row says.',
      searchWords: ['hay fire', 'hot hay', 'hay temperature', 'probe', 'spontaneous combustion', 'barn fire', 'wet hay'],
      file: 'hayHeat',
      calculators: [],
      rowsAre: 'Heat',
      entries: hayHeat,
      key: ({ heat }) => heat,
      name: ({ fromF, toF }) => (fromF === null ? `Up to ${toF} °F` : toF === null ? `${fromF} °F and over` : `${fromF} to ${toF} °F`),
      origin: (entry) => entry,
      columns: [{ key: 'does', label: 'Do this', of: ({ does }) => does }],
    }),
    tableOf({
      slug: 'feeder-waste',
      title: 'Hay wasted at the feeder',
      says: 'The part of the hay put out that stock trample or lie on, by kind of feeder. Each printed figure has a row.',
      trap: 'The trials fed good hay. More is wasted of poor or moldy hay, whatever holds it.',
      searchWords: ['hay feeder', 'hay ring', 'cone feeder', 'feeding loss', 'unroll hay'],
      file: 'feederWaste',
      calculators: ['hay-to-grass', 'hay-value'],
      rowsAre: 'Feeder',
      entries: waste,
      key: ({ key }) => key,
      name: ({ name }) => name,
      origin: (entry) => entry,
      columns: [{ key: 'waste', label: 'Wasted, of what was put out', unit: '%', of: ({ percent }) => percent }],
    }),
    tableOf({
      slug: 'days-of-hay',
      title: 'Hay wasted by how many days’ worth is put out',
      says: 'The more hay is put out at once, the more of it is trampled into the ground.',
      trap: 'The body of the printed table was not seen: these are from memory. Trust the direction more than the figures.',
      searchWords: ['hay waste', 'feeding every day', 'days supply', 'rack', 'ground feeding'],
      file: 'feederWaste',
      calculators: [],
      rowsAre: 'Package',
      entries: wasteByDaysSupply,
      key: (entry) => entry.package,
      name: (entry) => named(entry.package),
      origin: wasteByDaysSupplySource,
      columns: [
        { key: 'rack-1', label: 'Rack, 1 day', unit: '%', of: ({ rackOneDayPercent }) => rackOneDayPercent },
        { key: 'rack-7', label: 'Rack, 7 days', unit: '%', of: ({ rackSevenDaysPercent }) => rackSevenDaysPercent },
        { key: 'ground-1', label: 'Ground, 1 day', unit: '%', of: ({ groundOneDayPercent }) => groundOneDayPercent },
        {
          key: 'ground-7',
          label: 'Ground, 7 days',
          unit: '%',
          of: (entry) => ('groundSevenDaysPercent' in entry ? entry.groundSevenDaysPercent : null),
        },
      ],
    }),
    tableOf({
      slug: 'bale-density',
      title: 'How heavy a bale is for its size (bale density)',
      says: 'Pounds in a cubic foot of a round bale, to guess its weight from a tape measure.',
      trap: 'Most people guess high. Three bales on a scale beat the table, and hay priced by the bale is bought blind.',
      searchWords: ['bale weight', 'round bale', 'pounds per cubic foot', 'how much does a bale weigh'],
      file: 'baleDensity',
      calculators: [],
      rowsAre: 'Bale',
      entries: baleDensity,
      key: ({ bale }) => bale,
      name: ({ bale }) => named(bale),
      origin: (entry) => entry,
      columns: [{ key: 'density', label: 'Hay as fed', unit: 'lb/ft3', of: ({ lbPerFt3 }) => lbPerFt3 }],
    }),
    tableOf({
      slug: 'feed-crops',
      title: 'Feed crops to sow in a gap: water, yield, days to grazing',
      says: 'What quick crops need and what they yield. Water is in inches for each ton of dry feed.',
      trap: 'Without rain after sowing there is no crop. Most of these yields were irrigated, so take them as the most you could get.',
      caution: 'Several of these crops can poison stock: nitrate, prussic acid, bloat. Read about stressed forage before you open the gate.',
      searchWords: ['emergency forage', 'sudangrass', 'sorghum-sudangrass', 'pearl millet', 'oats', 'turnips', 'annual forage', 'cover crop grazing'],
      file: 'feedCrops',
      calculators: ['sown-feed'],
      rowsAre: 'Crop and figure',
      entries: cropRows,
      key: ({ key }) => key,
      name: ({ name }) => name,
      origin: (entry) => entry,
      columns: [
        { key: 'water', label: 'Water for a ton', unit: 'in', of: valueIn('water') },
        { key: 'yield', label: 'Dry matter', unit: 'tons/ac', of: valueIn('yield') },
        { key: 'days', label: 'First grazing after', unit: 'days', of: valueIn('days') },
      ],
    }),
  ],
};
