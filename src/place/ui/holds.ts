import { printNumber } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { HerdGroup } from '../model/herdGroup.ts';
import type { Place } from '../model/place.ts';
import { stockFields } from './fields/stock.ts';
import { valueWords } from './told.ts';

const kindField = stockFields[0];
export const groupName = ({ name, kind }: Pick<HerdGroup, 'name' | 'kind'>): string =>
  name ?? (kindField === undefined ? kind : valueWords(kindField, kind, 'us'));
const plural = (count: number, one: string, many: string): string => `${printNumber(count, 0)} ${count === 1 ? one : many}`;

/** What a place holds, a line for each view; nothing where nothing is told. */
export function holds(place: Place, system: UnitSystem): Readonly<Record<string, string | undefined>> {
  const list = (parts: readonly (string | undefined)[]): string | undefined => parts.filter((each) => each !== undefined).join(', ') || undefined;
  const some = (count: number, one: string, many: string): string | undefined => (count === 0 ? undefined : plural(count, one, many));
  const acres = place.pastures.reduce((sum, { areaAc }) => (areaAc === undefined ? sum : sum + areaAc), 0);
  const area = { at: 'areaAc', cell: { kind: 'number', label: '', unit: 'ac', symbol: '', min: 0, max: 0, default: 0, belongsTo: 'place' } } as const;
  return {
    ground: list([
      some(place.pastures.length, 'pasture', 'pastures'),
      acres === 0 ? undefined : valueWords(area, Math.round(acres * 10) / 10, system),
      some(place.soils.length, 'soil', 'soils'),
    ]),
    stock: list(
      place.herd.map(({ name, kind, countHead }) => {
        const called = name ?? (countHead === 1 ? kind : groupName({ name, kind }).toLowerCase());
        return countHead === undefined ? called : `${printNumber(countHead, 0)} ${called}`;
      }),
    ),
    feed: list([place.hay && some(place.hay.stacks.length, 'stack of hay', 'stacks of hay'), place.prices === undefined ? undefined : 'prices']),
    water: some(place.water.length, 'place with water', 'places with water'),
    season: list([
      place.season && 'dates',
      place.growth && 'growth',
      place.grazing && 'grazing',
      place.yearRainIn === undefined ? undefined : 'rain',
    ]),
    tools: place.tools === undefined ? undefined : 'your own tools',
  };
}
