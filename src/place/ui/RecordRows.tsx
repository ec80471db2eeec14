import type { ComponentChildren } from 'preact';
import { yearOf } from '../../../calculators/units/days.ts';
import { isoDay, printNumber } from '../../../calculators/units/printQuantity.ts';
import type { MoveRow, Row } from '../model/row.ts';
import { stockToday } from '../offer/stockToday.ts';
import { dayOfRow, rowsOf } from '../record/days.ts';
import { groundsById, groundsOf } from '../record/grounds.ts';
import type { Stay } from '../record/stays.ts';
import { type Data, dataWith } from './edit.ts';
import { FieldsView } from './FieldView.tsx';
import type { PlaceField } from './fields/field.ts';
import { hayFields, heightFields, moveFields, planFields, rainFields, stockLineFields } from './fields/record.ts';
import { Fold } from './Part.tsx';
import { daysWords, dayWords, heightWords, rainWords, stockWords } from './recordWords.ts';
import type { Rows } from './rows.ts';
import type { ShownRecord } from './shownRecord.ts';

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
            fields={moveFields(withOwn(place, move))}
            title={`${name(move)}, ${day(move)}${stay === undefined || stay.isOpen ? ', there now' : ` to ${dayWords(stay.outDay, todayDay)}`}`}
            says={stay === undefined ? '' : stayWords(stay)}
          >
            {move.outDay !== undefined && move.outDay < move.inDay && <p class="problem">They went out before they came in. Look at both days.</p>}
            <StockLines shown={shown} move={move} />
          </Line>
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
              <Line
                key={row.id}
                shown={shown}
                row={row}
                fields={heightFields(withOwn(place, row))}
                title={`${name(row)}, ${day(row)}`}
                says={heightWords(row.heightIn, system)}
              />
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
              <Line
                key={row.id}
                shown={shown}
                row={row}
                fields={hayFields(withOwn(place, row))}
                title={`${name(row)}, ${day(row)}`}
                says={`${printNumber(row.baleCount, row.baleCount % 1 === 0 ? 0 : 1)} bales`}
              />
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
                fields={rainFields}
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
              <Line
                key={row.id}
                shown={shown}
                row={row}
                fields={planFields(withOwn(place, row))}
                title={`${name(row)}, ${day(row)}`}
                says={`herd ${row.herdNumber}`}
              />
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
/** Paddocks to choose from, with the line's own where it was taken away. */
function withOwn(place: ShownRecord['place'], { paddockId, paddockName }: { readonly paddockId: string; readonly paddockName?: string | undefined }) {
  const all = [...groundsById(place).values()];
  return all.some(({ id }) => id === paddockId) ? all : [...all, { id: paddockId, name: paddockName ?? 'A paddock that was taken away' }];
}
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
  readonly fields: readonly PlaceField[];
  readonly title: string;
  readonly says: string;
  readonly children?: ComponentChildren;
}
function Line({ shown, row, fields, title, says, children }: LineProps) {
  const { rows, system } = shown;
  return (
    <Fold title={title} says={says} isPrinting={false}>
      {() => (
        <>
          <FieldsView
            id={row.id}
            record={asData(row)}
            fields={fields}
            system={system}
            of={title}
            path={[]}
            onChange={(changes) => rows.type(row, changes)}
          />
          {children}
          {row.clash !== undefined && <ClashLine rows={rows} row={row} />}
          <p class="part-take">
            <button type="button" class="quiet" onClick={() => void rows.remove(row, `${title} was taken away.`)}>
              Take this line away
            </button>
          </p>
        </>
      )}
    </Fold>
  );
}
/** Two windows changed one field: what the other has is told, and either can stand. */
function ClashLine({ rows, row }: { readonly rows: Rows; readonly row: Row }) {
  const [first] = row.clash ?? [];
  if (first === undefined) return null;
  const left = (row.clash ?? []).slice(1).map((each) => ({ ...each }));
  const rest = { path: ['clash'], to: left.length === 0 ? undefined : left };
  const other: Data = first.other === null ? undefined : JSON.parse(first.other);
  return (
    <p class="problem">
      Changed in two windows: {first.path.replaceAll('/', ', ')} is “{first.other ?? 'nothing'}” in the other ({first.otherBy}).{' '}
      <button type="button" onClick={() => rows.type(row, [rest])}>
        Leave it
      </button>{' '}
      <button type="button" onClick={() => rows.type(row, [{ path: first.path.split('/'), to: other }, rest])}>
        Take the other
      </button>
    </p>
  );
}

/** What grazed there, as it was copied on the day. */
function StockLines({ shown, move }: { readonly shown: ShownRecord; readonly move: MoveRow }) {
  const { rows, system } = shown;
  const put = (stock: readonly Data[]): void => rows.type(move, [{ path: ['stock'], to: stock }]);
  const lines = move.stock.map(asData);
  return (
    <>
      {lines.map((line, index) => (
        <FieldsView
          key={String(index)}
          id={`${move.id}-stock-${index}`}
          record={line}
          fields={stockLineFields}
          system={system}
          of={`Stock, line ${index + 1}`}
          path={[]}
          onChange={(changes) => put(lines.map((each, at) => (at === index ? dataWith(each, changes) : each)))}
        />
      ))}
      <p class="part-add">
        <button type="button" onClick={() => put([...lines, { kind: 'cow', countHead: 1 }])}>
          Add a kind of stock
        </button>{' '}
        {lines.length > 0 && (
          <button type="button" class="quiet" onClick={() => put(lines.slice(0, -1))}>
            Take the last kind away
          </button>
        )}
      </p>
    </>
  );
}
/** As the plain data that a line is made of. */
function asData(record: object): Data {
  const data: Data = JSON.parse(JSON.stringify(record));
  return data;
}
