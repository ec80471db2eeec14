import { keptText, shownText } from '../../../calculators/ui/fieldText.ts';
import { monthName, shortMonthName } from '../../../calculators/units/months.ts';
import { type UnitSystem, unitIn, units } from '../../../calculators/units/units.ts';
import type { Place } from '../model/place.ts';
import { say } from './aloud.tsx';
import { type Data, dataAt } from './edit.ts';
import { stationField } from './fields/season.ts';
import type { Change } from './session.ts';
import { printed, readText } from './texts.ts';
import type { PlaceView } from './view.ts';

const at = stationField.at;
const cell = stationField.cell;
const indexes = Array.from({ length: 12 }, (_, index) => index);

const valueAt = (place: Place, index: number): Data => dataAt({ months: place.stationMonthsIn?.[index] }, ['months']);
const textAt = (place: Place, index: number, system: UnitSystem): string =>
  place.typed?.[`${at}.${index}`] ?? printed(cell, valueAt(place, index), system);
/** What typing one month changes. The eleven others stay as they are kept, whatever units they are shown in. */
export function monthChanges(place: Place, index: number, text: string, system: UnitSystem): readonly Change[] {
  const next = indexes.map((month) => (month === index ? text : textAt(place, month, 'us')));
  const readings = next.map((each) => readText(cell, each, system));
  const values = readings.flatMap((each) => ('value' in each && each.value !== undefined ? [each.value] : []));
  const isWhole = values.length === 12;
  const typed = next.map((each, month): Change => {
    const isPlain = isWhole && printed(cell, values[month], 'us') === each;
    return { path: ['typed', `${at}.${month}`], to: isPlain || each === '' ? undefined : each };
  });
  const list: Data = isWhole ? values : undefined;
  return [{ path: [at], to: list }, ...typed];
}

/** Twelve amounts that are a record only once all of them are there; until then each stays as it was typed. */
export function StationMonths({ place, session, system, isPrinting }: PlaceView) {
  if (cell.kind !== 'number') return null;
  const texts = indexes.map((index) => textAt(place, index, system));
  const put = (index: number, text: string): void => session.change(monthChanges(place, index, text, system));
  const wrongs = texts.map((text, index) => {
    const read = readText(cell, text, system);
    return 'problem' in read ? `${monthName(index)}: ${read.problem}` : undefined;
  });
  const wrong = wrongs.find((each) => each !== undefined);
  const missing = texts.filter((text) => text === '').length;
  if (isPrinting && missing === 12) return null;
  return (
    <fieldset class="months field">
      <legend>
        Median rain of the nearest station <span class="unit-words">({units[unitIn(system, cell.unit)].words})</span>
      </legend>
      <div class="month-fields">
        {texts.map((text, index) => (
          <label key={monthName(index)} class="month">
            <span aria-hidden="true">{shortMonthName(index)}</span>
            <span class="unseen">{monthName(index)}</span>
            <input
              type="text"
              inputMode="decimal"
              autocomplete="off"
              value={shownText(text, cell.unit, system)}
              onInput={(event) => put(index, keptText(event.currentTarget.value, cell.unit, system))}
              onBlur={() => wrongs[index] !== undefined && say(wrongs[index])}
            />
          </label>
        ))}
      </div>
      {wrong !== undefined && <p class="problem">{wrong}</p>}
      {missing > 0 && missing < 12 && <p class="field-hint">{missing} to go. Forms use them once all twelve are there.</p>}
    </fieldset>
  );
}
