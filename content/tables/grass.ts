import { strictestPrussicRule } from '../../calculators/math/hazards/strictestPrussicRule.ts';
import { slopeReduction, slopeSource, waterDistanceReduction, waterDistanceSource } from '../../calculators/tables/accessReduction.ts';
import { airDryByGroupSource, airDryPercentByGroup, airDryPercentUtah, airDryUtahSource } from '../../calculators/tables/dryMatterByStage.ts';
import { forageHeights } from '../../calculators/tables/forageHeights.ts';
import { growthCurves } from '../../calculators/tables/growthCurves.ts';
import { growthTemperatures } from '../../calculators/tables/growthTemperatures.ts';
import {
  grazedShareByDays,
  grazedShareSource,
  harvestShare,
  rangeStubbleLbPerAc,
  rangeStubbleSource,
} from '../../calculators/tables/harvestShare.ts';
import { heightDensity } from '../../calculators/tables/heightDensity.ts';
import { restByGrowth } from '../../calculators/tables/restByGrowth.ts';
import { rootStoppage } from '../../calculators/tables/rootStoppage.ts';
import { standingFeedLossPerMonth, standingFeedLossPerWinter } from '../../calculators/tables/standingFeedLoss.ts';
import { months } from '../../calculators/units/months.ts';
import { named, type Origin, printCell, type TableGroup, tableOf } from './table.ts';

/** A key for each entry: what it is about, with its source where that comes twice, and a number where even that does. */
function keysOf<Entry extends Origin>(entries: readonly Entry[], about: (entry: Entry) => string): (entry: Entry) => string {
  const keys = new Map<Entry, string>();
  const taken = new Set<string>();
  for (const entry of entries) {
    const bySource = `${about(entry)}-${entry.source}`;
    const free = [about(entry), bySource, ...entries.map((_, index) => `${bySource}-${index + 2}`)].find((key) => !taken.has(key)) ?? bySource;
    taken.add(free);
    keys.set(entry, free);
  }
  return (entry) => keys.get(entry) ?? about(entry);
}

/** The row that the calculators take comes first, so that it has the plain key. */
const heights = [...forageHeights].sort((one, other) => Number(other.preferred) - Number(one.preferred));
const byName = [...heights].sort((one, other) => one.name.localeCompare(other.name, 'en'));
const slug = (words: string): string =>
  words
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '');

type GrowthKind = keyof typeof growthTemperatures;
const kindsOfGrass = ['cool-season', 'warm-season'] as const satisfies readonly GrowthKind[];
const corners = {
  startF: 'Growth starts',
  bestFromF: 'Grows best from',
  bestToF: 'Grows best up to',
  stopF: 'Growth stops',
  degreeDayBaseF: 'Degree days count from',
} as const;
const temperatureRows = kindsOfGrass.flatMap((kind) =>
  Object.entries(growthTemperatures[kind]).map(([corner, { value, ...origin }]) => ({ ...origin, kind, corner, value })),
);
const cornerName = (corner: string): string => Object.entries(corners).find(([key]) => key === corner)?.[1] ?? corner;

/** `Slope, 10 to 30 %`: each step begins where the one before it ends. */
const stepsOf = (steps: readonly { readonly upTo: number; readonly reductionPercent: number }[], what: string, unit: string) =>
  steps.map(({ upTo: end, reductionPercent }, index) => {
    const span = printCell([steps[index - 1]?.upTo ?? 0, Number.isFinite(end) ? end : null]);
    return { reductionPercent, key: slug(`${what} ${span}`), name: `${what}, ${span} ${unit}` };
  });
const access = [
  ...stepsOf(slopeReduction, 'Slope', '%').map((step) => ({ ...slopeSource, ...step })),
  ...stepsOf(waterDistanceReduction, 'Water away', 'miles').map((step) => ({ ...waterDistanceSource, ...step })),
];
const firstTest = rootStoppage.removedPercent.map((removed, index) => ({
  removed,
  stopped: rootStoppage.stoppedPercent.map((test) => test[index] ?? null),
}));

const standing = [
  ...standingFeedLossPerMonth.map((each) => ({ ...each, month: each.percentPerMonth, season: each.seasonPercent })),
  ...standingFeedLossPerWinter.map((each) => ({ ...each, month: null, season: each.percent })),
];

const leastIn = (crop: Parameters<typeof strictestPrussicRule>[0]): number => strictestPrussicRule(crop, 'height').least;

export const grass: TableGroup = {
  title: 'Grass and rest',
  tables: [
    tableOf({
      slug: 'forage-heights',
      title: 'When to start and stop grazing, by grass (grazing heights)',
      says: 'How tall grass should be when stock go in, how much to leave, and the rest that it needs in between.',
      trap: 'Measure leaves, not seed heads, and stop at the height of the best grass, not of what they leave. In drought leave more.',
      caution: `Sorghum and sudangrass can kill by prussic acid at the heights printed here. By the strictest lists keep stock off sudangrass under ${leastIn('sudangrass')} inches, sorghum and johnsongrass under ${leastIn('sorghum')}, sorghum-sudangrass under ${leastIn('sorghum-sudangrass')}, indiangrass under ${leastIn('indiangrass')}, and off all of them while wilted, frosted or shooting anew, however tall. Horses do not go on sorghums at all.`,
      searchWords: ['turn-in height', 'take-off height', 'stubble height', 'stop height', 'residual height', 'grazing height'],
      file: 'forageHeights',
      calculators: ['rest-and-moves'],
      rowsAre: 'What grows there',
      entries: byName,
      key: keysOf(heights, ({ forage }) => forage),
      name: ({ name }) => name,
      origin: (entry) => entry,
      columns: [
        { key: 'start', label: 'Start', unit: 'in', of: ({ startIn }) => startIn },
        { key: 'stop', label: 'Stop', unit: 'in', of: ({ stopIn }) => stopIn },
        { key: 'rest', label: 'Rest, fast to slow growth', unit: 'days', of: (entry) => ('restDays' in entry ? entry.restDays : null) },
      ],
    }),
    tableOf({
      slug: 'height-density',
      title: 'Pounds in an inch of grass (forage density)',
      says: 'Dry matter in each inch of height on an acre, to turn a ruler’s reading into pounds.',
      trap: 'Printed values differ widely for grass that looks alike. Three clips from your own stand beat all of them.',
      searchWords: ['pounds per acre-inch', 'grazing stick', 'pasture ruler', 'dry matter per inch'],
      file: 'heightDensity',
      calculators: ['days-of-grass', 'forage-on-hand', 'rest-and-moves'],
      rowsAre: 'Stand',
      entries: heightDensity,
      key: keysOf(heightDensity, ({ stand, condition }) => `${stand}-${condition}`),
      name: ({ name, condition }) => (condition === 'average' ? name : `${name}, ${condition} stand`),
      origin: (entry) => entry,
      columns: [{ key: 'density', label: 'Dry matter', unit: 'lb/ac in', of: ({ lbPerAcreInch }) => lbPerAcreInch }],
    }),
    tableOf({
      slug: 'dry-matter-by-stage',
      title: 'How much of green grass is dry matter, by stage',
      says: 'What is left of fresh clippings once they are air-dry. Use it if you can’t dry the sample.',
      trap: 'Rain, dew and drought change it. Drying a sample of your own takes a few minutes and beats this table.',
      searchWords: ['percent dry matter', 'air-dry', 'moisture of grass', 'clip and weigh'],
      file: 'dryMatterByStage',
      calculators: ['forage-on-hand'],
      rowsAre: 'Grass',
      entries: airDryPercentByGroup,
      key: ({ group }) => group,
      name: ({ name }) => name,
      origin: airDryByGroupSource,
      columns: [
        { key: 'before-heading', label: 'Before heads show', unit: '%', of: ({ beforeHeading }) => beforeHeading },
        { key: 'headed', label: 'Headed out', unit: '%', of: ({ headed }) => headed },
        { key: 'seed-ripe', label: 'Seed ripe', unit: '%', of: ({ seedRipe }) => seedRipe },
        { key: 'leaves-dry', label: 'Leaves dry', unit: '%', of: ({ leavesDry }) => leavesDry },
        { key: 'dormant', label: 'Dormant', unit: '%', of: ({ dormant }) => dormant },
      ],
    }),
    tableOf({
      slug: 'dry-matter-range-grasses',
      title: 'How much of green range grass is dry matter, by kind',
      says: 'What is left of fresh clippings of western grasses once they are air-dry.',
      trap: 'They were clipped in Utah, so trust your own dried sample before them.',
      searchWords: ['bluebunch wheatgrass', 'cheatgrass', 'crested wheatgrass', 'air-dry', 'percent dry matter'],
      file: 'dryMatterByStage',
      calculators: ['forage-on-hand'],
      rowsAre: 'Grass',
      entries: airDryPercentUtah,
      key: ({ species }) => species,
      name: ({ name }) => name,
      origin: airDryUtahSource,
      columns: [
        { key: 'to-flowering', label: 'Up to flowering', unit: '%', of: ({ toFlowering }) => toFlowering },
        { key: 'full-bloom', label: 'Full bloom', unit: '%', of: ({ fullBloom }) => fullBloom },
        { key: 'seed-shed', label: 'Seed shed', unit: '%', of: ({ seedShed }) => seedShed },
      ],
    }),
    tableOf({
      slug: 'growth-curves',
      title: 'When the year’s grass grows (growth curves)',
      says: 'The percent of a year’s growth that each month brings.',
      trap: 'They are for an ordinary year. In a drought, what did not grow in its month mostly does not come later.',
      searchWords: ['seasonal growth', 'growth by month', 'forage distribution', 'growing season'],
      file: 'growthCurves',
      calculators: ['decision-dates', 'carrying-capacity'],
      rowsAre: 'Grass and place',
      entries: growthCurves,
      key: ({ curve }) => curve,
      name: ({ name }) => name,
      origin: (entry) => entry,
      columns: Object.entries(months).map(([month, name], index) => ({
        key: month,
        label: name.slice(0, 3),
        of: ({ percent }: (typeof growthCurves)[number]) => percent[index] ?? null,
      })),
    }),
    tableOf({
      slug: 'growth-temperatures',
      title: 'Temperatures at which grass grows',
      says: 'Daily mean temperatures between which cool-season and warm-season grass grow.',
      trap: 'Publications differ by several degrees. Without water no temperature makes grass grow.',
      searchWords: ['cool-season', 'warm-season', 'growing degree days', 'base temperature'],
      file: 'growthTemperatures',
      calculators: ['season'],
      rowsAre: 'Grass and what happens',
      entries: temperatureRows,
      key: ({ kind, corner }) => `${kind}-${slug(cornerName(corner))}`,
      name: ({ kind, corner }) => `${named(kind)}: ${cornerName(corner).toLowerCase()}`,
      origin: (entry) => entry,
      columns: [{ key: 'temperature', label: 'Daily mean', unit: '°F', of: ({ value }) => value }],
    }),
    tableOf({
      slug: 'rest-by-growth',
      title: 'Days of rest by speed of growth (recovery period)',
      says: 'How long published guides rest grass when it grows fast, at a normal pace, and slowly.',
      trap: 'Go by height, because the calendar does not regrow grass. In drought it can take far longer than the longest row.',
      searchWords: ['rest period', 'recovery days', 'rotation length', 'regrowth'],
      file: 'restByGrowth',
      calculators: ['rest-and-moves'],
      rowsAre: 'Place, growth',
      entries: restByGrowth,
      key: keysOf(restByGrowth, ({ place, growth }) => `${slug(place)}-${growth}`),
      name: ({ place, growth }) => `${place}, ${growth} growth`,
      origin: (entry) => entry,
      columns: [{ key: 'rest', label: 'Rest', unit: 'days', of: ({ restDays }) => restDays }],
    }),
    tableOf({
      slug: 'root-stoppage',
      title: 'Roots that stop when leaves are taken',
      says: 'How many roots had stopped growing some days after one clipping, in four tests on three grasses.',
      trap: 'The figures copied everywhere are from the first test alone. The tests ran for days in boxes, not for a season in a pasture, and say nothing about how deep roots reach.',
      searchWords: ['root growth stoppage', 'take half leave half', 'overgrazing roots', 'clipping'],
      file: 'rootStoppage',
      calculators: [],
      rowsAre: 'Top growth taken, %',
      entries: firstTest,
      key: ({ removed }) => String(removed),
      name: ({ removed }) => String(removed),
      origin: rootStoppage,
      columns: rootStoppage.stoppedPercent.map((_, index) => ({
        key: `test-${index + 1}`,
        label: `Roots stopped, test ${index + 1}`,
        unit: '%',
        of: ({ stopped }: (typeof firstTest)[number]) => stopped[index] ?? null,
      })),
    }),
    tableOf({
      slug: 'range-stubble',
      title: 'Stubble to leave on range (residual forage)',
      says: 'Oven-dry feed that should still stand when stock leave range, in pounds an acre.',
      trap: 'It is what is left at the end of the season over the whole pasture, not what is left near water.',
      searchWords: ['residual dry matter', 'RDM', 'stubble', 'leave half', 'shortgrass', 'tallgrass'],
      file: 'harvestShare',
      calculators: [],
      rowsAre: 'Range',
      entries: rangeStubbleLbPerAc,
      key: ({ range }) => range,
      name: ({ range }) => named(range),
      origin: rangeStubbleSource,
      columns: [{ key: 'stubble', label: 'Leave', unit: 'lb/ac', of: ({ lbPerAc }) => lbPerAc }],
    }),
    tableOf({
      slug: 'harvest-share',
      title: 'Share of the year’s growth that stock eat (harvest efficiency)',
      says: 'What stock swallow out of all that grows in a year. Stubble, and what is trampled and fouled, are already taken off.',
      trap: 'Do not take half and then take this as well: the half that is left is already counted.',
      searchWords: ['harvest efficiency', 'utilization', 'take half leave half', 'grazing efficiency'],
      file: 'harvestShare',
      calculators: ['carrying-capacity'],
      rowsAre: 'Land and system',
      entries: harvestShare,
      key: ({ system }) => slug(system),
      name: ({ system }) => system,
      origin: (entry) => entry,
      columns: [{ key: 'share', label: 'Eaten, of the year’s growth', unit: '%', of: ({ percent }) => percent }],
    }),
    tableOf({
      slug: 'grazed-share',
      title: 'Share of the grass above the stubble that is eaten, by days in a paddock',
      says: 'The longer stock stay, the more they trample and foul.',
      trap: 'It is a share of what stands above the stop height, not of all the grass. Never multiply it by the share of the year’s growth.',
      searchWords: ['utilization', 'days in paddock', 'trampling', 'grazing efficiency', 'stay length'],
      file: 'harvestShare',
      calculators: ['forage-on-hand', 'rest-and-moves', 'days-of-grass'],
      rowsAre: 'Days in the paddock',
      entries: grazedShareByDays,
      key: ({ days }) => String(days),
      name: ({ days }) => String(days),
      origin: grazedShareSource,
      columns: [{ key: 'share', label: 'Eaten, above the stubble', unit: '%', of: ({ percent }) => percent }],
    }),
    tableOf({
      slug: 'access',
      title: 'Grass that cattle don’t reach (slope and distance to water)',
      says: 'How much to take off the feed of ground that is steep or far from water.',
      trap: 'Each line is for the ground that lies there, not for a whole pasture by its farthest corner. A cow that has learned the hill does better, and one in the heat does worse. Look at where the dung lies.',
      searchWords: ['slope reduction', 'distance to water', 'usable forage', 'grazing distribution', 'stocking rate reduction'],
      file: 'accessReduction',
      calculators: ['carrying-capacity'],
      rowsAre: 'Ground',
      entries: access,
      key: ({ key }) => key,
      name: ({ name }) => name,
      origin: (entry) => entry,
      columns: [{ key: 'reduction', label: 'Take off', unit: '%', of: ({ reductionPercent }) => reductionPercent }],
    }),
    tableOf({
      slug: 'standing-feed-loss',
      title: 'What dry standing feed loses to weather',
      says: 'Feed that rain, wind and rot take once growth has stopped.',
      trap: 'Protein goes faster than weight, so there may be plenty left to eat with little feed value in it.',
      searchWords: ['stockpiled forage', 'standing hay', 'weathering loss', 'winter pasture', 'deferred grass'],
      file: 'standingFeedLoss',
      calculators: ['standing-feed'],
      rowsAre: 'Feed',
      entries: standing,
      key: ({ feed }) => slug(feed),
      name: ({ feed }) => feed,
      origin: (entry) => entry,
      columns: [
        { key: 'month', label: 'Lost each month, of the peak', unit: '%', of: ({ month }) => month },
        { key: 'season', label: 'Lost in the season', unit: '%', of: ({ season }) => season },
      ],
    }),
  ],
};
