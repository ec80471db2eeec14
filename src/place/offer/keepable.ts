import type { Calculator } from '../../../calculators/kit/define.ts';
import type { Cell, MonthsInput } from '../../../calculators/kit/inputs.ts';
import { type OfferKey, offers as offerList } from '../../../calculators/kit/offers.ts';
import { readCell, readMonth } from '../../../calculators/kit/read.ts';
import { isShown, monthsIn, rowsIn, type Texts, textIn } from '../../../calculators/kit/state.ts';
import { tellInput, tellRow } from '../../../calculators/kit/summary.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import { convert, type UnitSystem } from '../../../calculators/units/units.ts';
import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';
import type { Soil } from '../model/soil.ts';
import type { WaterPoint } from '../model/waterPoint.ts';
import { textures } from '../model/words.ts';
import { kindOfWord } from './kindOfWord.ts';
import { type Goes, isWhole, type Put, putSoil, puts } from './puts.ts';

/** Something that a form knows and a place could keep. */
export interface Keepable {
  readonly key: string;
  readonly label: string;
  readonly shown: string;
  /** Ground goes to one pasture, which must be named, and a figure of water to one water. */
  readonly of: 'pasture' | 'water' | 'place';
  /** The place already says something else: kept only if it is asked for. */
  readonly replaces: boolean;
  readonly put: Put;
}
interface Known extends Goes {
  readonly calculator: Calculator;
  readonly texts: Texts;
  readonly system: UnitSystem;
  /** Did the reader put it in? What is only an example, or came from the place, is nothing to keep. */
  readonly isOwn: (path: string) => boolean;
  readonly place: Place;
  readonly todayDay: number;
  readonly newId: () => string;
}

/** As precise as anybody types it. */
const digits = 7;
function offeredIn(cell: Cell, key: OfferKey, text: string, system: UnitSystem): number | string | boolean | undefined {
  const reading = readCell(cell, text, system);
  if (!('value' in reading)) return undefined;
  const { value } = reading;
  // In the offer's unit, which is the field's.
  if (cell.kind === 'number' && typeof value === 'number') return Number(value.toPrecision(digits));
  if (cell.kind === 'date' && typeof value === 'number') return offerList[key].kind === 'monthDay' ? isoDay(value).slice(5) : isoDay(value);
  return value;
}

/** A form says a kind and its appetite of today, of the grazing season or of the winter. */
const kindKeys: readonly OfferKey[] = ['herd.kind', 'herd.seasonKind', 'herd.winterKind'];
const intakeKeys: readonly OfferKey[] = ['herd.intake', 'herd.seasonIntake', 'herd.winterIntake'];

/** A group of stock as one thing: its kind must be known, or it cannot be kept. */
function groupsOf(known: Known, name: string): readonly Keepable[] {
  const { calculator, texts, system, isOwn, place, todayDay, newId } = known;
  const input = calculator.inputs[name];
  if (input?.kind !== 'rows') return [];
  return rowsIn(texts[name]).flatMap((row, index): readonly Keepable[] => {
    const of = (key: OfferKey): number | string | boolean | undefined => {
      const found = Object.entries(input.columns).find(([, cell]) => cell.offeredBy === key);
      if (!found || !isShown(found[1], { ...texts, ...row })) return undefined;
      return kindKeys.includes(key) || isOwn(`${name}.${index}.${found[0]}`) ? offeredIn(found[1], key, row[found[0]] ?? '', system) : undefined;
    };
    const anyOf = (keys: readonly OfferKey[]) => keys.map(of).find((value) => value !== undefined);
    const [word, count, weight, intake, birth] = [anyOf(kindKeys), of('herd.count'), of('herd.weight'), anyOf(intakeKeys), of('herd.birth')];
    const told = typeof word === 'string' ? kindOfWord(word) : undefined;
    if (!told || (count === undefined && weight === undefined && birth === undefined)) return [];
    const { kind, stage } = told;
    const before = place.herd.filter((each) => each.kind === kind).at(0);
    const group = {
      ...(before ?? { id: newId(), kind }),
      ...(typeof count === 'number' ? { countHead: count } : {}),
      ...(typeof weight === 'number' ? { weightLb: weight } : {}),
      ...(typeof intake === 'number' ? { ownIntakePercent: intake } : {}),
      ...(typeof birth === 'string' ? { birthsDay: birth } : {}),
      // A form of the winter that is filled in July does not say how they stand in July.
      ...(stage !== undefined && of('herd.winterKind') === undefined && before?.birthsDay === undefined && birth === undefined
        ? { told: { stage, day: isoDay(todayDay) } }
        : {}),
    };
    const put: Put = (to) => ({
      ...to,
      herd: to.herd.some(({ id }) => id === group.id) ? to.herd.map((each) => (each.id === group.id ? group : each)) : [...to.herd, group],
    });
    return [
      { key: `${name}.${index}`, label: input.label, shown: tellRow(input, row, texts, system), of: 'place', replaces: before !== undefined, put },
    ];
  });
}

/** Layers are one hole: all of them, once somebody has measured how thick each is. */
function layersOf(known: Known, name: string): readonly Keepable[] {
  const { calculator, texts, system, isOwn, pastureId } = known;
  const input = calculator.inputs[name];
  if (input?.kind !== 'rows') return [];
  const rows = rowsIn(texts[name]);
  const layers = rows.flatMap((row, index): NonNullable<Soil['layers']> => {
    const of = (key: OfferKey): number | string | boolean | undefined => {
      const found = Object.entries(input.columns).find(([, cell]) => cell.offeredBy === key);
      if (!found || !isShown(found[1], { ...texts, ...row })) return undefined;
      return key === 'layer.texture' || isOwn(`${name}.${index}.${found[0]}`) ? offeredIn(found[1], key, row[found[0]] ?? '', system) : undefined;
    };
    const [thicknessIn, word, surveyInPerIn, stonesPercent] = [of('layer.thickness'), of('layer.texture'), of('layer.survey'), of('layer.stones')];
    const texture = textures.find((each) => each === word);
    if (typeof thicknessIn !== 'number' || texture === undefined) return [];
    return [
      {
        thicknessIn,
        texture,
        ...(typeof surveyInPerIn === 'number' ? { surveyInPerIn } : {}),
        ...(typeof stonesPercent === 'number' ? { stonesPercent } : {}),
      },
    ];
  });
  if (layers.length === 0 || layers.length < rows.length) return [];
  const shown = rows.map((row) => tellRow(input, row, texts, system)).join('; ');
  return offeredTo(known, { key: name, label: input.label, shown, of: 'pasture', put: (to) => putSoil(to, pastureId, 'layers', layers) });
}
/** The rain of a station is one record: all twelve months, or none. */
function monthsOf(known: Known, name: string, input: MonthsInput): readonly Keepable[] {
  const { texts, system, isOwn } = known;
  if (input.offeredBy !== 'rain.station') return [];
  const months = monthsIn(texts[name]).flatMap((text, index) => {
    const reading = readMonth(input, index, text, system);
    return isOwn(`${name}.${index}`) && 'value' in reading ? [Number(convert(reading.value, input.unit, 'in').toPrecision(digits))] : [];
  });
  if (months.length !== 12) return [];
  const shown = tellInput(input, texts[name], texts, system);
  return offeredTo(known, {
    key: name,
    label: offerList[input.offeredBy].label,
    shown,
    of: 'place',
    put: (to) => ({ ...to, stationMonthsIn: months }),
  });
}
/** Unless the place says the same already, or could not hold it. */
function offeredTo({ place, pastureId, waterId }: Known, found: Omit<Keepable, 'replaces'>): readonly Keepable[] {
  const before =
    found.of === 'pasture' ? withPasture(place, pastureId, 'Pasture') : found.of === 'water' ? withWater(place, waterId, 'Water') : place;
  const next = found.put(before);
  if (!isWhole(next) || JSON.stringify(next) === JSON.stringify(before)) return [];
  return [{ ...found, replaces: isWrittenOver(before, next) }];
}

const subjectOf = (key: OfferKey): Keepable['of'] => (/^pastures?\./.test(key) ? 'pasture' : key.startsWith('water.') ? 'water' : 'place');

/** What a form knows and the place does not: what somebody typed there, in the words of the form. */
export function keepableOf(known: Known): readonly Keepable[] {
  const { calculator, texts, system, isOwn } = known;
  return Object.entries(calculator.inputs).flatMap(([name, input]): readonly Keepable[] => {
    if (!isShown(input, texts)) return [];
    if (input.kind === 'rows') return input.offeredBy === 'herd' ? groupsOf(known, name) : input.offeredBy === 'layers' ? layersOf(known, name) : [];
    if (input.kind === 'months') return monthsOf(known, name, input);
    if (input.kind === 'record' || input.offeredBy === undefined || !isOwn(name)) return [];
    const key = input.offeredBy;
    const value = offeredIn(input, key, textIn(texts[name]), system);
    const put = value === undefined ? undefined : puts(key, value, known);
    if (!put) return [];
    const shown = tellInput(input, texts[name], texts, system);
    return offeredTo(known, { key: name, label: offerList[key].label, shown, of: subjectOf(key), put });
  });
}
/** Whether a figure that was told is another now, or gone. */
const isWrittenOver = (before: unknown, next: unknown): boolean => {
  if (typeof before !== 'object' || before === null) return before !== undefined && before !== next;
  const after = new Map(Object.entries(next ?? {}));
  return Object.entries(before).some(([key, each]) => isWrittenOver(each, after.get(key)));
};

/** The place with this pasture in it. */
export const withPasture = (place: Place, id: string, name: string): Place => {
  if (place.pastures.some((each) => each.id === id)) return place;
  const pasture: Pasture = { id, name, isCounted: true, paddocks: [] };
  return { ...place, pastures: [...place.pastures, pasture] };
};
/** The place with this water in it. */
export const withWater = (place: Place, id: string, name: string): Place => {
  const point: WaterPoint = { id, name };
  return place.water.some((each) => each.id === id) ? place : { ...place, water: [...place.water, point] };
};
