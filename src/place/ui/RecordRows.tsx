import { useState } from 'preact/hooks';
import { firstOfMonth, yearOf } from '../../../calculators/units/days.ts';
import { isoDay, printDay, printNumber, printQuantity } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { HayRow, Row } from '../model/row.ts';
import { stockToday } from '../offer/stockToday.ts';
import { dayOfRow, rowsOf } from '../record/days.ts';
import { groundsById, groundsOf } from '../record/grounds.ts';
import { isLoad } from '../record/loads.ts';
import type { Stay } from '../record/stays.ts';
import { lazily } from './lazily.tsx';
import { Fold } from './Part.tsx';
import type { LineShown } from './RecordLine.tsx';
import { cannotBe, daysWords, dayWords, groundUnit, heightWords, rainWords, stayedWords, stockDaysOn } from './recordWords.ts';
import type { Rows } from './rows.ts';
import type { ShownRecord } from './shownRecord.ts';

const RecordLine = lazily<LineShown>(async () => (await import('./RecordLine.tsx')).RecordLine);

/** Lines of the year by what they are, the latest first; each opens to be mended or taken away. */
export function RecordRows(shown: ShownRecord) {
  const { place, rows, year, todayDay, system } = shown;
  // As it was when somebody came to it: until they leave it, a day that is typed moves it nowhere, and takes no key away.
  const [held, setHeld] = useState<Row | undefined>(undefined);
  const [first] = groundsOf(place);
  const grounds = groundsById(place);
  const name = (row: { readonly paddockId: string; readonly paddockName?: string | undefined }): string =>
    grounds.get(row.paddockId)?.name ?? row.paddockName ?? 'A paddock that was taken away';
  const day = (row: Row): string => dayWords(dayOfRow(row), todayDay);
  const stayBy = new Map([...shown.stays, ...shown.ofYear].map((stay) => [stay.move.id, stay]));
  const inYear = new Set(shown.ofYear.map(({ move }) => move.id));
  const lines = rows.all.map((row) => (row.id === held?.id ? held : row));
  const ofYear = <K extends Row['is']>(is: K) =>
    rowsOf(lines, is)
      .filter((row) => row === held || yearOf(dayOfRow(row)) === year || inYear.has(row.id))
      .toReversed()
      .map((row) => (row === held ? (rowsOf(rows.all, is).find(({ id }) => id === row.id) ?? row) : row));
  const line = (row: Row) => ({ shown, row, onCome: () => setHeld(held?.id === row.id ? held : row), onLeave: () => setHeld(undefined) });
  const at = first === undefined ? undefined : { paddockId: first.id, paddockName: first.name };
  const newDay = dayOfNew(rows.all, year, todayDay);
  const where = newDay === todayDay ? '' : ` on ${printDay(newDay)}`;
  const add = (what: string, body: Parameters<Rows['made']>[0] | undefined) => () => body && void rows.change(`${what} was added${where}.`, [body]);
  return (
    <>
      <h3>Moves of {year}</h3>
      {ofYear('move').map((move) => {
        const stay = stayBy.get(move.id);
        return (
          <Line
            key={move.id}
            {...line(move)}
            title={`${name(move)}, ${day(move)}${stay === undefined || stay.isOpen ? ', there now' : ` to ${dayWords(stay.outDay, todayDay)}`}`}
            says={stay === undefined ? '' : stay.isImpossible ? cannotBe : stayWords(stay, year, system)}
          />
        );
      })}
      <Add
        onAdd={add(
          'A move',
          at && {
            is: 'move',
            ...at,
            herdNumber: 1,
            inDay: isoDay(newDay),
            // Long past, they are not there now.
            ...(newDay < todayDay ? { outDay: isoDay(newDay) } : {}),
            stock: [...stockToday(place, 1, newDay)],
          },
        )}
        words="Add a move"
        isOff={at === undefined}
      />
      <Fold title="Heights" says={String(ofYear('height').length)} isPrinting={false}>
        {() => (
          <>
            {ofYear('height').map((row) => (
              <Line key={row.id} {...line(row)} title={`${name(row)}, ${day(row)}`} says={heightWords(row.heightIn, system)} />
            ))}
            <Add
              onAdd={add('A height', at && { is: 'height', ...at, day: isoDay(newDay), heightIn: 6 })}
              words="Add a height"
              isOff={at === undefined}
            />
          </>
        )}
      </Fold>
      <Fold title="Hay fed" says={String(ofYear('hay').length)} isPrinting={false}>
        {() => (
          <>
            {ofYear('hay').map((row) => (
              <Line key={row.id} {...line(row)} title={`${name(row)}, ${day(row)}`} says={hayWords(row, system)} />
            ))}
            <Add onAdd={add('Hay', at && { is: 'hay', ...at, day: isoDay(newDay), baleCount: 1 })} words="Add hay" isOff={at === undefined} />
          </>
        )}
      </Fold>
      <Fold title="Rain" says={String(ofYear('rain').length)} isPrinting={false}>
        {() => (
          <>
            {ofYear('rain').map((row) => (
              <Line
                key={row.id}
                {...line(row)}
                title={row.days === 1 ? day(row) : `${daysWords(row.days)} to ${day(row)}`}
                says={rainWords(row, system)}
              />
            ))}
            <Add onAdd={add('A reading', { is: 'rain', day: isoDay(newDay), days: 1, amountIn: 0 })} words="Add a reading" />
          </>
        )}
      </Fold>
      <Fold title="Planned moves" says={String(ofYear('plan').length)} isPrinting={false}>
        {() => (
          <>
            {ofYear('plan').map((row) => (
              <Line key={row.id} {...line(row)} title={`${name(row)}, ${day(row)}`} says={`herd ${row.herdNumber}`} />
            ))}
            <Add
              onAdd={add('A planned move', at && { is: 'plan', ...at, herdNumber: 1, inDay: isoDay(newDay), outDay: isoDay(newDay + 4) })}
              words="Add a planned move"
              isOff={at === undefined}
            />
          </>
        )}
      </Fold>
    </>
  );
}
/** `1 bale`, `2.5 bales`; of a load its pounds. */
export const hayWords = (hay: Pick<HayRow, 'baleCount' | 'baleLb' | 'moisturePercent'>, system: UnitSystem): string => {
  if (isLoad(hay) && hay.baleLb !== undefined) return `${printQuantity(hay.baleLb, 'lb', 0, system)} dry`;
  const { baleCount } = hay;
  return `${printNumber(baleCount, baleCount % 1 === 0 ? 0 : 1)} ${baleCount === 1 ? 'bale' : 'bales'}`;
};
/** `7 days, 45 cows, 3.7 stock-days an acre`. */
export const stayWords = (
  { move, inDay, splitOff, days, isCut, isOpen, stockDaysPerAc, restDays, hayLb, withHayPerAc }: Stay,
  year: number,
  system: UnitSystem,
): string =>
  [
    `${daysWords(days)}${isCut ? ` of ${year}` : ''}${isOpen ? ' so far' : ''}`,
    stayedWords({ move, inDay, splitOff }),
    restDays === undefined ? '' : `after ${daysWords(restDays)} of rest`,
    stockDaysPerAc === undefined ? '' : `${stockDaysOn(stockDaysPerAc, system)} stock-days ${groundUnit(system)}`,
    hayLb > 0 && withHayPerAc !== undefined ? `${stockDaysOn(withHayPerAc, system)} with hay` : '',
  ]
    .filter(Boolean)
    .join(', ');

const Add = ({ words, onAdd, isOff = false }: { readonly words: string; readonly onAdd: () => void; readonly isOff?: boolean }) => (
  <p class="part-add">
    <button type="button" disabled={isOff} onClick={onAdd}>
      {words}
    </button>
  </p>
);

/** The day of a line that is added to a year: today, else the last of that year that has a line, or its day next to this year. */
export function dayOfNew(all: readonly Row[], year: number, todayDay: number): number {
  if (year === yearOf(todayDay)) return todayDay;
  const days = all.flatMap((row) => (row.is !== 'plan' && yearOf(dayOfRow(row)) === year ? dayOfRow(row) : []));
  if (days.length > 0) return Math.max(...days);
  return year < yearOf(todayDay) ? firstOfMonth(0, year + 1) - 1 : firstOfMonth(0, year);
}
interface LineProps {
  readonly shown: ShownRecord;
  readonly row: Row;
  readonly title: string;
  readonly says: string;
  readonly onCome: () => void;
  readonly onLeave: () => void;
}
const Line = ({ shown, row, title, says, onCome, onLeave }: LineProps) => (
  <div
    onFocusIn={onCome}
    onFocusOut={({ currentTarget, relatedTarget }) => {
      // Another window in front leaves the focus where it is.
      const next = relatedTarget ?? document.activeElement;
      if (!(next instanceof Node && currentTarget.contains(next))) onLeave();
    }}
  >
    <Fold title={title} says={says} isPrinting={false}>
      {() => <RecordLine {...{ shown, row, title }} />}
    </Fold>
  </div>
);
