import { yearOf } from '../../../calculators/units/days.ts';
import { isoDay, printNumber, printQuantity } from '../../../calculators/units/printQuantity.ts';
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
import { cannotBe, daysWords, dayWords, heightWords, rainWords, stockWords } from './recordWords.ts';
import type { Rows } from './rows.ts';
import type { ShownRecord } from './shownRecord.ts';

const RecordLine = lazily<LineShown>(async () => (await import('./RecordLine.tsx')).RecordLine);

/** Lines of the year by what they are, the latest first; each opens to be mended or taken away. */
export function RecordRows(shown: ShownRecord) {
  const { place, rows, year, todayDay, stays, system } = shown;
  const [first] = groundsOf(place);
  const name = (row: { readonly paddockId: string; readonly paddockName?: string | undefined }): string =>
    groundsById(place).get(row.paddockId)?.name ?? row.paddockName ?? 'A paddock that was taken away';
  const day = (row: Row): string => dayWords(dayOfRow(row), todayDay);
  const today = isoDay(todayDay);
  const ofYear = <K extends Row['is']>(is: K) =>
    rowsOf(rows.all, is)
      .filter((row) => yearOf(dayOfRow(row)) === year)
      .toReversed();
  const at = first === undefined ? undefined : { paddockId: first.id, paddockName: first.name };
  const stayBy = new Map(stays.map((stay) => [stay.move.id, stay]));
  const add = (says: string, body: Parameters<Rows['made']>[0] | undefined) => () => body && void rows.change(says, [body]);
  return (
    <>
      <h3>Moves of {year}</h3>
      {ofYear('move').map((move) => {
        const stay = stayBy.get(move.id);
        return (
          <Line
            key={move.id}
            shown={shown}
            row={move}
            title={`${name(move)}, ${day(move)}${stay === undefined || stay.isOpen ? ', there now' : ` to ${dayWords(stay.outDay, todayDay)}`}`}
            says={stay === undefined ? '' : stay.isImpossible ? cannotBe : stayWords(stay)}
          />
        );
      })}
      <Add
        onAdd={add('A move was added.', at && { is: 'move', ...at, herdNumber: 1, inDay: today, stock: [...stockToday(place, 1, todayDay)] })}
        words="Add a move"
        isOff={at === undefined}
      />
      <Fold title="Heights" says={String(ofYear('height').length)} isPrinting={false}>
        {() => (
          <>
            {ofYear('height').map((row) => (
              <Line key={row.id} shown={shown} row={row} title={`${name(row)}, ${day(row)}`} says={heightWords(row.heightIn, system)} />
            ))}
            <Add
              onAdd={add('A height was added.', at && { is: 'height', ...at, day: today, heightIn: 6 })}
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
              <Line key={row.id} shown={shown} row={row} title={`${name(row)}, ${day(row)}`} says={hayWords(row, system)} />
            ))}
            <Add onAdd={add('Hay was added.', at && { is: 'hay', ...at, day: today, baleCount: 1 })} words="Add hay" isOff={at === undefined} />
          </>
        )}
      </Fold>
      <Fold title="Rain" says={String(ofYear('rain').length)} isPrinting={false}>
        {() => (
          <>
            {ofYear('rain').map((row) => (
              <Line
                key={row.id}
                shown={shown}
                row={row}
                title={row.days === 1 ? day(row) : `${daysWords(row.days)} to ${day(row)}`}
                says={rainWords(row, system)}
              />
            ))}
            <Add onAdd={add('A reading was added.', { is: 'rain', day: today, days: 1, amountIn: 0 })} words="Add a reading" />
          </>
        )}
      </Fold>
      <Fold title="Planned moves" says={String(ofYear('plan').length)} isPrinting={false}>
        {() => (
          <>
            {ofYear('plan').map((row) => (
              <Line key={row.id} shown={shown} row={row} title={`${name(row)}, ${day(row)}`} says={`herd ${row.herdNumber}`} />
            ))}
            <Add
              onAdd={add('A planned move was added.', at && { is: 'plan', ...at, herdNumber: 1, inDay: today, outDay: isoDay(todayDay + 4) })}
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
const stayWords = ({ move, days, isOpen, stockDaysPerAc, restDays, hayLb, withHayPerAc }: Stay): string =>
  [
    `${daysWords(days)}${isOpen ? ' so far' : ''}`,
    stockWords(move.stock),
    restDays === undefined ? '' : `after ${daysWords(restDays)} of rest`,
    stockDaysPerAc === undefined ? '' : `${printNumber(stockDaysPerAc, 1)} stock-days an acre`,
    hayLb > 0 && withHayPerAc !== undefined ? `${printNumber(withHayPerAc, 1)} with hay` : '',
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

interface LineProps {
  readonly shown: ShownRecord;
  readonly row: Row;
  readonly title: string;
  readonly says: string;
}
const Line = ({ shown, row, title, says }: LineProps) => (
  <Fold title={title} says={says} isPrinting={false}>
    {() => <RecordLine {...{ shown, row, title }} />}
  </Fold>
);
