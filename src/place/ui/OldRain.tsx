import { useState } from 'preact/hooks';
import { understandRecord } from '../../../calculators/kit/record/understandRecord.ts';
import { isoDay, printNumber } from '../../../calculators/units/printQuantity.ts';
import type { RowBody } from '../record/bringLines.ts';
import { rainDays } from '../record/days.ts';
import type { Rows } from './rows.ts';
import type { PlaceView } from './view.ts';

/** As the forms read it that keep it, and as many lines as the largest of them takes. */
const gauge = { label: 'Rain record', unit: 'in', min: 0, max: 60, maxRows: 60_000 } as const;

/** The rain that forms of this browser kept before there was a place: offered to the first place, once. */
export function OldRain({ session, place, rows }: PlaceView & { readonly rows: Rows }) {
  const [text, setText] = useState(() => (place.isDemo === true ? undefined : session.oldRain.read()));
  if (text === undefined) return null;
  const { lines, problem, isMonthly } = understandRecord(gauge, text);
  const have = rainDays(rows.all);
  const adds = lines
    .filter(({ day }) => !have.has(day))
    .map(({ day, amount, days = 1 }): RowBody => ({ is: 'rain', day: isoDay(day), days, amountIn: Math.round(amount * 10_000) / 10_000 }));
  if (problem !== undefined || isMonthly || adds.length === 0) return null;
  const settle = (): void => {
    session.oldRain.settle();
    setText(undefined);
  };
  return (
    <div class="place-bar is-reminder">
      <p>
        A calculator in this browser keeps a rain record: {printNumber(adds.length, 0)} {adds.length === 1 ? 'reading' : 'readings'} that are not
        here. Put them into the record of {place.name}?
      </p>
      <button
        type="button"
        onClick={() => {
          settle();
          void rows.change('The rain of the calculators is in.', adds);
        }}
      >
        Put them in
      </button>{' '}
      <button type="button" class="quiet" onClick={settle}>
        No, leave them there
      </button>
    </div>
  );
}
