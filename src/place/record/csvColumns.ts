import { convert, type UnitName, type UnitSystem } from '../../../calculators/units/units.ts';

/** A column of a table: its name says in which unit a bare number in it is. */
interface Column {
  readonly name: string;
  readonly unit: UnitName;
}
/** One amount as it goes out to readers of either system. What a place keeps is in the unit of the first. */
export type ToldMeasure = Readonly<Record<UnitSystem, Column>>;
/** One that is read from either column too: the least and the most, in that unit. */
export type Measure = Readonly<Record<UnitSystem, Column & { readonly within: readonly [least: number, most: number] }>>;

export const area: ToldMeasure = { us: { name: 'acres', unit: 'ac' }, si: { name: 'hectares', unit: 'ha' } };
export const measures = {
  weight: { us: { name: 'weight_lb', unit: 'lb', within: [1, 5000] }, si: { name: 'weight_kg', unit: 'kg', within: [0.4, 2268] } },
  // Height going in and height coming out: the ending is no inch, but where millimeters stand they are named.
  heightIn: { us: { name: 'height_in', unit: 'in', within: [0, 200] }, si: { name: 'height_in_mm', unit: 'mm', within: [0, 5080] } },
  heightOut: { us: { name: 'height_out', unit: 'in', within: [0, 200] }, si: { name: 'height_out_mm', unit: 'mm', within: [0, 5080] } },
  hay: { us: { name: 'hay_lb', unit: 'lb', within: [0, 1e7] }, si: { name: 'hay_kg', unit: 'kg', within: [0, 4_536_000] } },
  eaten: { us: { name: 'lb_day', unit: 'lb/d', within: [0, 1000] }, si: { name: 'kg_day', unit: 'kg/d', within: [0, 454] } },
  rain: { us: { name: 'rain_in', unit: 'in', within: [0, 100] }, si: { name: 'rain_mm', unit: 'mm', within: [0, 2540] } },
} as const satisfies Readonly<Record<string, Measure>>;

export const namesOf = ({ us, si }: ToldMeasure): readonly [string, string] => [us.name, si.name];

/** Digits of a metric unit that a table holds: a hundredth of an inch is 0.254 mm. */
const metricDigits = 4;
/** An amount as a table tells it to that reader: as it is kept, or converted. */
export const told = (value: number, { us, si }: ToldMeasure, system: UnitSystem): number =>
  system === 'us' ? value : Number(convert(value, us.unit, si.unit).toFixed(metricDigits));
/** Two amounts as they are kept that a table in either unit cannot tell apart. */
export const isSameAmount = (one: number, other: number, { us, si }: Measure): boolean =>
  Math.abs(one - other) < convert(10 ** -metricDigits, si.unit, us.unit);
