import { antecedentTable } from '../../calculators/tables/antecedent.ts';
import {
  agriculturalCovers,
  type Cover,
  type CoverCondition,
  cultivatedCovers,
  type NumbersByGroup,
  rangeCovers,
  type SoilGroup,
} from '../../calculators/tables/curveNumbers.ts';
import { designStorms } from '../../calculators/tables/designStorms.ts';
import { greenAmptTextures } from '../../calculators/tables/greenAmptTextures.ts';
import { infiltrationClasses, permeabilityByTexture, steadyRates } from '../../calculators/tables/infiltrationRates.ts';
import { sheetRoughness } from '../../calculators/tables/peakFlow.ts';
import { conductivityLimits, textureGroups, transmissionLimits } from '../../calculators/tables/soilGroups.ts';
import { entriesOf, named, type Origin, type TableGroup, tableOf } from './table.ts';

interface CoverRow {
  readonly cover: string;
  readonly condition: CoverCondition;
  readonly numbers: NumbersByGroup;
}
const rowsOf = (covers: Readonly<Record<string, Cover>>): readonly CoverRow[] =>
  entriesOf(covers).flatMap(([cover, { conditions }]) =>
    entriesOf<CoverCondition, NumbersByGroup>(conditions).map(([condition, numbers]) => ({ cover, condition, numbers })),
  );
const coverName = ({ cover, condition }: CoverRow): string => (condition === 'only' ? named(cover) : `${named(cover)}, ${condition}`);
const coverKey = ({ cover, condition }: CoverRow): string => (condition === 'only' ? cover : `${cover}-${condition}`);
const groupColumn = (group: SoilGroup) => ({ key: group, label: `Group ${group.toUpperCase()}`, of: ({ numbers }: CoverRow) => numbers[group] });
const groupColumns = (['a', 'b', 'c', 'd'] as const).map(groupColumn);

const cultivatedRows = entriesOf(cultivatedCovers.covers).flatMap(([cover, { treatments }]) =>
  rowsOf(treatments).map((row) => ({ ...row, cover: `${cover}-${row.cover}` })),
);

const groups = ['d', 'c', 'b'] as const;
const groupNames = { d: 'Group D, slowest', c: 'Group C', b: 'Group B (group A is faster)' } as const;

interface RateRow extends Origin {
  readonly soil: string;
  readonly list: string;
  readonly inPerHr: readonly [number | null, number | null];
}
const rates: readonly RateRow[] = [
  ...entriesOf(steadyRates.soils).map(([soil, { inPerHr }]) => ({ ...steadyRates, soil, list: 'steady', inPerHr })),
  ...entriesOf(permeabilityByTexture.soils).map(([soil, inPerHr]) => ({ ...permeabilityByTexture, soil, list: 'permeability', inPerHr })),
];

const classes = infiltrationClasses.classes.map(([name, fromInPerHr], index) => ({
  name,
  fromInPerHr,
  toInPerHr: infiltrationClasses.classes[index + 1]?.[1] ?? null,
}));

export const rain: TableGroup = {
  title: 'Rain and runoff',
  tables: [
    tableOf({
      slug: 'curve-numbers-pasture',
      title: 'Curve numbers of pasture, meadow and woods',
      says: 'How readily ground sheds rain, on a scale that ends at 100. Find your cover and how good it is, then go across to your soil group.',
      trap: `They are for average moisture and a whole field, not for one spot. Poor is under ${agriculturalCovers.poorBelowPercent} percent of the ground covered, good is over ${agriculturalCovers.goodAbovePercent} and lightly grazed.`,
      searchWords: ['CN', 'runoff curve number', 'pasture runoff', 'TR-55', 'SCS curve number'],
      file: 'curveNumbers',
      calculators: ['storm-runoff'],
      rowsAre: 'Cover and condition',
      entries: rowsOf(agriculturalCovers.covers),
      key: coverKey,
      name: coverName,
      origin: agriculturalCovers,
      columns: groupColumns,
    }),
    tableOf({
      slug: 'curve-numbers-range',
      title: 'Curve numbers of dry range',
      says: 'How readily range in dry country sheds rain, on a scale that ends at 100.',
      trap: `The classes differ from those for pasture: poor is under ${rangeCovers.poorBelowPercent} percent of the ground covered, good is over ${rangeCovers.goodAbovePercent}. Litter counts as cover. Only desert shrub has numbers for soil group A.`,
      searchWords: ['CN', 'rangeland runoff', 'sagebrush', 'arid range', 'desert shrub', 'pinyon juniper'],
      file: 'curveNumbers',
      calculators: ['storm-runoff'],
      rowsAre: 'Cover and condition',
      entries: rowsOf(rangeCovers.covers),
      key: coverKey,
      name: coverName,
      origin: rangeCovers,
      columns: groupColumns,
    }),
    tableOf({
      slug: 'curve-numbers-crops',
      title: 'Curve numbers of crop ground',
      says: 'How readily tilled ground sheds rain, to compare with pasture.',
      trap: 'A row with residue counts only if residue lies on some of the ground all year. Good is about how the soil takes water, not about the yield.',
      searchWords: ['CN', 'cropland runoff', 'row crops', 'small grain', 'fallow', 'contoured', 'terraced'],
      file: 'curveNumbers',
      calculators: ['storm-runoff'],
      rowsAre: 'Crop, how it is worked, condition',
      entries: cultivatedRows,
      key: coverKey,
      name: coverName,
      origin: cultivatedCovers,
      columns: groupColumns,
    }),
    tableOf({
      slug: 'antecedent-moisture',
      title: 'Curve numbers for dry and wet ground (antecedent moisture)',
      says: 'Turns a curve number for average ground into one for ground that was dry, or wet, before the storm.',
      trap: 'The two ends are the spread seen between storms. They are not a soil test: most storms fall in between.',
      searchWords: ['antecedent runoff condition', 'ARC', 'AMC', 'dry ground runoff', 'wet ground runoff'],
      file: 'antecedent',
      calculators: ['storm-runoff'],
      rowsAre: 'Curve number, average ground',
      entries: antecedentTable.rows,
      key: ([average]) => String(average),
      name: ([average]) => String(average),
      origin: antecedentTable,
      columns: [
        { key: 'dry', label: 'Dry ground (I)', of: ([, dry]) => dry },
        { key: 'wet', label: 'Wet ground (III)', of: ([, , wet]) => wet },
      ],
    }),
    tableOf({
      slug: 'soil-groups',
      title: 'Hydrologic soil group by texture',
      says: 'A to D, from soil that takes water fast to soil that takes it slowly. Use it when you have no soil survey.',
      trap: 'It was made for disturbed soil. Trust the soil survey of your field before it: judged by how fast it takes water, sandy loam is mostly not A.',
      searchWords: ['hydrologic group', 'soil group A B C D', 'HSG', 'texture'],
      file: 'soilGroups',
      calculators: ['storm-runoff'],
      rowsAre: 'Texture',
      entries: entriesOf(textureGroups.groups),
      key: ([texture]) => texture,
      name: ([texture]) => named(texture),
      origin: textureGroups,
      columns: [{ key: 'group', label: 'Soil group', of: ([, group]) => group.toUpperCase() }],
    }),
    tableOf({
      slug: 'soil-group-limits',
      title: 'Hydrologic soil group by how fast water gets through',
      says: 'The fastest rate that still belongs to each group, by the 1986 list and by the newer one.',
      trap: 'The two lists measure different things and differ widely. Never mix them.',
      searchWords: ['saturated conductivity', 'ksat', 'transmission rate', 'hydrologic group limits'],
      file: 'soilGroups',
      calculators: ['storm-runoff'],
      rowsAre: 'Group',
      entries: [
        ...groups.map((group) => ({
          key: `${group}-1986`,
          name: groupNames[group],
          ...transmissionLimits,
          rate: transmissionLimits.inPerHr[group],
          shallow: null,
          deep: null,
        })),
        ...groups.map((group) => ({
          key: group,
          name: groupNames[group],
          ...conductivityLimits,
          rate: null,
          shallow: conductivityLimits.shallowUmPerS[group],
          deep: conductivityLimits.deepUmPerS[group],
        })),
      ],
      key: ({ key }) => key,
      name: ({ name }) => name,
      origin: (entry) => entry,
      columns: [
        { key: 'rate', label: 'Rate of 1986, up to', unit: 'in/h', of: ({ rate }) => rate },
        { key: 'shallow', label: 'Barrier or water within reach, up to', unit: 'um/s', of: ({ shallow }) => shallow },
        { key: 'deep', label: 'Deep soil, up to', unit: 'um/s', of: ({ deep }) => deep },
      ],
    }),
    tableOf({
      slug: 'design-storms',
      title: 'How a day’s rain is spread over the day (design storms)',
      says: 'The share of a 24-hour rain that has fallen by each hour, for the four storm types of the Soil Conservation Service.',
      trap: 'These are storms for design, with the hard burst in the middle. Your storm had its own shape.',
      searchWords: ['storm type I IA II III', 'rainfall distribution', '24-hour storm', 'mass curve'],
      file: 'designStorms',
      calculators: ['ponding'],
      rowsAre: 'Hours since it began',
      entries: designStorms.rows,
      key: ([hour]) => String(hour),
      name: ([hour]) => String(hour),
      origin: designStorms,
      columns: [
        { key: 'i', label: 'Type I', of: ([, share]) => share },
        { key: 'ia', label: 'Type IA', of: ([, , share]) => share },
        { key: 'ii', label: 'Type II', of: ([, , , share]) => share },
        { key: 'iii', label: 'Type III', of: ([, , , , share]) => share },
      ],
    }),
    tableOf({
      slug: 'green-ampt',
      title: 'How soils take up rain, by texture (Green-Ampt values)',
      says: 'Pore space, the pull of dry soil, and how fast water moves, for working out when rain begins to stand on the ground.',
      trap: 'They come from cores of many soils and know nothing of grazing, crusts or worms. Trust your own ring test before them. Two values of the print are in doubt: the pore space of clay loam, and loam against silt loam.',
      searchWords: ['Green and Ampt', 'infiltration parameters', 'suction head', 'hydraulic conductivity', 'effective porosity'],
      file: 'greenAmptTextures',
      calculators: ['ponding'],
      rowsAre: 'Texture',
      entries: entriesOf(greenAmptTextures.textures),
      key: ([texture]) => texture,
      name: ([texture]) => named(texture),
      origin: greenAmptTextures,
      columns: [
        { key: 'porosity', label: 'Pores, share of the soil', of: ([, { porosity }]) => porosity },
        { key: 'effective', label: 'Pores that fill', of: ([, { effectivePorosity }]) => effectivePorosity },
        { key: 'suction', label: 'Suction', unit: 'cm', of: ([, { suctionCm }]) => suctionCm },
        { key: 'conductivity', label: 'Conductivity', unit: 'cm/h', of: ([, { conductivityCmPerHr }]) => conductivityCmPerHr },
      ],
    }),
    tableOf({
      slug: 'infiltration-classes',
      title: 'Slow or fast water intake (infiltration classes)',
      says: 'The words that soil surveys use for how fast wet soil takes water. Set your ring test beside them.',
      trap: 'Take the last, steady readings. The first inch into dry soil always goes in fast.',
      searchWords: ['permeability class', 'ring test', 'infiltration rate', 'inches per hour'],
      file: 'infiltrationRates',
      calculators: ['ring-test'],
      rowsAre: 'Class',
      entries: classes,
      key: ({ name }) => name,
      name: ({ name }) => named(name),
      origin: infiltrationClasses,
      columns: [{ key: 'rate', label: 'Steady rate', unit: 'in/h', of: ({ fromInPerHr, toInPerHr }) => [fromInPerHr, toInPerHr] }],
    }),
    tableOf({
      slug: 'infiltration-rates',
      title: 'Steady water intake by soil',
      says: 'What wet soil of each kind goes on taking in once it is soaked, by two published lists.',
      trap: 'The lists overlap and differ. Cover and hoof traffic change the rate more than texture does.',
      searchWords: ['infiltration rate', 'permeability', 'ring test', 'soaks in'],
      file: 'infiltrationRates',
      calculators: ['ring-test'],
      rowsAre: 'Soil',
      entries: rates,
      key: ({ soil, list }) => `${soil}-${list}`,
      name: ({ soil }) => named(soil),
      origin: (entry) => entry,
      columns: [{ key: 'rate', label: 'Rate', unit: 'in/h', of: ({ inPerHr }) => inPerHr }],
    }),
    tableOf({
      slug: 'sheet-roughness',
      title: 'How grass and stubble slow running water (Manning’s n)',
      says: 'Roughness for the thin sheet of water at the top of a slope. The higher, the slower the water.',
      trap: 'For sheet flow only. In a ditch or creek the numbers are far lower.',
      searchWords: ['roughness coefficient', 'sheet flow', 'overland flow', 'mannings n'],
      file: 'peakFlow',
      calculators: [],
      rowsAre: 'Surface',
      entries: entriesOf(sheetRoughness.surfaces),
      key: ([surface]) => surface,
      name: ([surface]) => named(surface),
      origin: sheetRoughness,
      columns: [{ key: 'roughness', label: 'Roughness n', of: ([, roughness]) => roughness }],
    }),
  ],
};
