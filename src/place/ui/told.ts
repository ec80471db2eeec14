import { shownText } from '../../../calculators/ui/fieldText.ts';
import { monthName } from '../../../calculators/units/months.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { isBare, unitIn, units } from '../../../calculators/units/units.ts';
import type { HerdGroup } from '../model/herdGroup.ts';
import type { Place } from '../model/place.ts';
import { type Data, dataAt } from './edit.ts';
import type { PlaceField } from './fields/field.ts';
import { stockFields } from './fields/stock.ts';
import { printed, textIn } from './texts.ts';

const monthDayWords = (text: string): string => {
  const [month = '', day = ''] = text.split('-');
  return `${monthName(Number(month) - 1).slice(0, 3)} ${Number(day)}`;
};
/** A value in words: `16 ha`, `Silt loam`, `Apr 20`. */
export function valueWords({ cell }: PlaceField, value: Data, system: UnitSystem): string {
  if (value === undefined || value === null) return 'nothing';
  if (cell.kind === 'choice') return (typeof value === 'string' && cell.options[value]?.label) || String(value);
  if (cell.kind === 'monthDay' && typeof value === 'string') return monthDayWords(value);
  if (cell.kind !== 'number') return cell.kind === 'yesNo' ? (value === true ? 'yes' : 'no') : String(value);
  return withUnit(shownText(printed(cell, value, system), cell.unit, system), cell.unit, system);
}
function withUnit(text: string, unit: Parameters<typeof unitIn>[1], system: UnitSystem): string {
  const shown = unitIn(system, unit);
  const { print } = units[shown];
  if (isBare(shown) || /[a-z%]/i.test(text)) return text;
  return print.startsWith('$') ? `$${text}${print.slice(1)}` : `${text} ${print}`;
}
/** What was typed there, with its unit; nothing where nothing is told. */
export function saidOf(record: Data, field: PlaceField, system: UnitSystem): string | undefined {
  const text = textIn(record, field, system);
  if (text === '') return undefined;
  const value = dataAt(record, field.at.split('.'));
  if (value === undefined) return `“${text.slice(0, 20)}”`;
  return field.cell.kind === 'number'
    ? withUnit(shownText(text, field.cell.unit, system), field.cell.unit, system)
    : valueWords(field, value, system);
}
/** Several of them in a line. */
export const lineOf = (record: Data, fields: readonly PlaceField[], ats: readonly string[], system: UnitSystem): string =>
  ats
    .flatMap((at) => {
      const field = fields.find((each) => each.at === at);
      const said = field && saidOf(record, field, system);
      return said === undefined ? [] : [said];
    })
    .join(', ');

const kindField = stockFields[0];
export const groupName = ({ name, kind }: Pick<HerdGroup, 'name' | 'kind'>): string =>
  name ?? (kindField === undefined ? kind : valueWords(kindField, kind, 'us'));
const plural = (count: number, one: string, many: string): string => `${count.toLocaleString('en-US')} ${count === 1 ? one : many}`;

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
      place.herd.map((each) => `${each.countHead === undefined ? '' : `${each.countHead.toLocaleString('en-US')} `}${groupName(each).toLowerCase()}`),
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
