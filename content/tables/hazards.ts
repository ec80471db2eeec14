import { nitrateNitrogenPpm } from '../../calculators/math/hazards/nitrateNitrogenPpm.ts';
import {
  type Band,
  type BandList,
  type DeadlyDose,
  deadlyNitrate,
  forageNitrate,
  foragePrussicAcid,
  foragePrussicAcidAsIs,
  type RationBand,
  waterNitrate,
  waterSalts,
  waterSulfate,
} from '../../calculators/tables/feedHazards.ts';
import { prussicRules } from '../../calculators/tables/prussicRules.ts';
import { type Cell, capitalized, named, type Origin, type TableGroup, tableOf } from './table.ts';

interface Step<B extends Band> extends Origin {
  readonly key: string;
  /** Whose list: the lists stand one under the other, and on a phone the source's column is out of sight. */
  readonly by: string;
  readonly about: string;
  readonly band: B;
  readonly toNext: number | null;
}
const stepsOf = <B extends Band>(lists: readonly BandList<B>[]): readonly Step<B>[] =>
  lists.flatMap(({ list, animals, bands, ...origin }) =>
    bands.map((band, index) => ({
      ...origin,
      key: `${list}-${band.from}`,
      by: list.split('-').map(capitalized).join(' '),
      about: animals === undefined ? '' : ` (${named(animals).toLowerCase()})`,
      band,
      toNext: bands[index + 1]?.from ?? null,
    })),
  );
const spanOf = ({ band, toNext }: Step<Band>): Cell => (toNext === null ? `from ${band.from.toLocaleString('en-US')}` : [band.from, toNext]);
/** What a list lets pass is said in our words, since its own could be read as a clearance. Words that were not read are not quoted. */
const saysOf = ({ by, band, about, seen }: Step<Band>): string => {
  if (band.severity === 0) return `${by}: no limit named at this level${about}`;
  return `${by}: ${seen === 'memory' ? band.printed : `“${band.printed}”`}${about}`;
};
const shareOf = ({ severity }: Band, percent: number | null): Cell => (severity === 0 ? 'no limit named' : percent);
const never = 'No row here is a clearance.';

const toTenths = (value: number): number => Math.round(10 * value) / 10;
/** Grams keep the proportions that parts per million have. */
const nitrogenGPerCwt = ({ gPerCwt, form }: DeadlyDose): number =>
  toTenths(nitrateNitrogenPpm({ amount: gPerCwt, form, unit: 'ppm', basis: 'dry', dryMatterPercent: 100 }));

const crops = {
  sudangrass: 'Sudangrass',
  'sorghum-sudangrass': 'Sorghum-sudangrass',
  sorghum: 'Sorghum, milo, johnsongrass',
  indiangrass: 'Indiangrass',
} as const;
const events = {
  height: 'until it is this tall',
  'killing-frost': 'after a frost that kills it all',
  'light-frost': 'after a frost that leaves part alive',
  'new-shoots-after-frost': 'once new shoots come after a frost',
  'rain-after-drought': 'after rain that ends a drought',
  ensiled: 'in the silo or pile',
} as const;

export const hazards: TableGroup = {
  title: 'Feed and water that can harm',
  tables: [
    tableOf({
      slug: 'nitrate-in-feed',
      title: 'Nitrate in feed: what laboratories and universities say',
      says: 'Classes for nitrate nitrogen in dry feed, in the words of each publication, and the most of such feed in a ration where it says so.',
      trap: 'Slips report nitrate, nitrate nitrogen or potassium nitrate. Change yours to ppm of nitrate nitrogen before you read this.',
      caution: `Nitrate kills within hours. ${never} Lists differ: go by the strictest, count the water too, and have a nutritionist or veterinarian set the ration.`,
      searchWords: ['nitrate poisoning', 'NO3-N', 'nitrate test', 'forage test', 'ppm nitrate'],
      file: 'feedHazards',
      calculators: ['feed-hazards'],
      rowsAre: 'The list says',
      entries: stepsOf<RationBand>(forageNitrate),
      key: ({ key }) => key,
      name: saysOf,
      origin: (entry) => entry,
      columns: [
        { key: 'span', label: 'Nitrate nitrogen, dry', unit: 'ppm', of: spanOf },
        { key: 'most', label: 'Most of the ration', unit: '%', of: ({ band }) => shareOf(band, band.mostPercent) },
        { key: 'most-pregnant', label: 'Most, bred stock', unit: '%', of: ({ band }) => shareOf(band, band.mostPregnantPercent) },
      ],
    }),
    tableOf({
      slug: 'deadly-nitrate',
      title: 'Nitrate in a day near the least that kills',
      says: 'What research prints for cattle, in grams for each 100 lb of the animal: in the form each source counts, and as nitrate nitrogen.',
      trap: 'Potassium nitrate, nitrate and nitrate nitrogen are three numbers for one thing. A page that mixes them up is seven times off.',
      caution: `None of these is a ceiling to feed up to: few animals were tried, and feed that is eaten fast kills with less. ${never} Ask a veterinarian.`,
      searchWords: ['lethal dose', 'nitrate poisoning', 'how much nitrate kills a cow', 'potassium nitrate'],
      file: 'feedHazards',
      calculators: ['feed-hazards'],
      rowsAre: 'The source says',
      entries: deadlyNitrate,
      key: ({ key }) => key,
      name: ({ about }) => about,
      origin: (entry) => entry,
      columns: [
        { key: 'as-printed', label: 'In its own form, grams for 100 lb', of: ({ gPerCwt }) => toTenths(gPerCwt) },
        { key: 'nitrogen', label: 'As nitrate nitrogen, grams for 100 lb', of: nitrogenGPerCwt },
      ],
    }),
    tableOf({
      slug: 'nitrate-in-water',
      title: 'Nitrate in stock water: what universities say',
      says: 'Classes for nitrate nitrogen in water, in the words of each publication.',
      trap: 'The lists differ widely. A slip may report nitrate instead of nitrate nitrogen, which is a larger number for the same water.',
      caution: `Nitrate kills within hours, and feed adds to water. ${never} Go by the strictest list and ask a veterinarian.`,
      searchWords: ['nitrate', 'water test', 'well water', 'NO3-N', 'livestock water quality'],
      file: 'feedHazards',
      calculators: ['feed-hazards'],
      rowsAre: 'The list says',
      entries: stepsOf<Band>(waterNitrate),
      key: ({ key }) => key,
      name: saysOf,
      origin: (entry) => entry,
      columns: [{ key: 'span', label: 'Nitrate nitrogen', unit: 'mg/L', of: spanOf }],
    }),
    tableOf({
      slug: 'sulfate-in-water',
      title: 'Sulfate in stock water: what universities say',
      says: 'Classes for sulfate in water, in the words of each publication.',
      trap: 'Ponds get stronger as they dry. A test from spring says little about August. Feed adds sulfur to it.',
      caution: `Sulfate can blind and kill cattle. ${never} Go by the strictest list, test again as the pond drops, and ask a veterinarian.`,
      searchWords: ['sulfate', 'sulfur', 'polio', 'PEM', 'water test', 'livestock water quality'],
      file: 'feedHazards',
      calculators: ['feed-hazards'],
      rowsAre: 'The list says',
      entries: stepsOf<Band>(waterSulfate),
      key: ({ key }) => key,
      name: saysOf,
      origin: (entry) => entry,
      columns: [{ key: 'span', label: 'Sulfate', unit: 'mg/L', of: spanOf }],
    }),
    tableOf({
      slug: 'salts-in-water',
      title: 'Salts in stock water (total dissolved solids)',
      says: 'Classes for all salts together, in the words of each publication.',
      trap: 'Salts are the sum. Water with little salt in all can still hold too much sulfate or nitrate: test for those by name.',
      caution: `${never} Stock that come thirsty to salty water can die of it. Ask a veterinarian before you turn them to doubtful water.`,
      searchWords: ['TDS', 'salinity', 'salty water', 'water test', 'livestock water quality'],
      file: 'feedHazards',
      calculators: ['feed-hazards'],
      rowsAre: 'The list says',
      entries: stepsOf<Band>(waterSalts),
      key: ({ key }) => key,
      name: saysOf,
      origin: (entry) => entry,
      columns: [{ key: 'span', label: 'Dissolved solids', unit: 'mg/L', of: spanOf }],
    }),
    tableOf({
      slug: 'prussic-acid',
      title: 'Prussic acid in forage: what universities say',
      says: 'Classes for prussic acid (HCN) in dry feed, in the words of each publication.',
      trap: 'The poison comes and goes within days, and a sample loses it on the way to the laboratory. Ask if the slip’s figure is dry or as is: one guide draws its line at 500 ppm dry and 200 as is.',
      caution: `Prussic acid kills in minutes. ${never} Keep stock out until the wait is over, and ask a veterinarian.`,
      searchWords: ['HCN', 'cyanide', 'sorghum', 'sudangrass', 'johnsongrass', 'prussic acid test'],
      file: 'feedHazards',
      calculators: ['feed-hazards'],
      rowsAre: 'The list says',
      entries: [...stepsOf<Band>(foragePrussicAcid), ...stepsOf<Band>(foragePrussicAcidAsIs)],
      key: ({ key }) => key,
      name: saysOf,
      origin: (entry) => entry,
      columns: [{ key: 'span', label: 'HCN, dry unless it says as is', unit: 'ppm', of: spanOf }],
    }),
    tableOf({
      slug: 'prussic-waits',
      title: 'Sorghums and indiangrass: heights and waits before stock go in (prussic acid)',
      says: 'The least height, or the least days to keep stock out, that each publication gives.',
      trap: 'Each frost that leaves part of the stand alive starts the count again. New shoots are the worst of it.',
      caution: `Prussic acid kills in minutes. ${never} A wait that is over lowers the risk and does not end it; nitrate stays in the plant all the same.`,
      searchWords: ['frost', 'sorghum', 'sudangrass', 'johnsongrass', 'grazing after frost', 'cyanide', 'HCN'],
      file: 'prussicRules',
      calculators: ['feed-hazards', 'rest-and-moves', 'sown-feed'],
      rowsAre: 'Keep them out of',
      entries: prussicRules,
      key: ({ crop, event, source }) => `${crop}-${event}-${source}`,
      name: ({ crop, event }) => `${crops[crop]}, ${events[event]}`,
      origin: (entry) => entry,
      columns: [
        { key: 'height', label: 'At least', unit: 'in', of: ({ least, unit }) => (unit === 'in' ? least : '') },
        { key: 'wait', label: 'At least', unit: 'days', of: ({ least, unit }) => (unit === 'days' ? least : '') },
      ],
    }),
  ],
};
