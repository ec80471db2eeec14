import type { MoveRow, Row } from '../model/row.ts';
import { inDayOf, outDayOf } from '../record/days.ts';
import { groundsById } from '../record/grounds.ts';
import { isLoad } from '../record/loads.ts';
import { alsoThen } from '../record/stays.ts';
import { type Data, dataWith } from './edit.ts';
import { FieldsView } from './FieldView.tsx';
import type { PlaceField } from './fields/field.ts';
import { hayFields, heightFields, moveFields, planFields, rainFields, stockLineFields } from './fields/record.ts';
import { yardstickField } from './fields/yardstick.ts';
import { dayWords } from './recordWords.ts';
import type { Rows } from './rows.ts';
import type { ShownRecord } from './shownRecord.ts';
import type { PlaceView } from './view.ts';

/** Paddocks to choose from, with the line's own where it was taken away. */
function withOwn(place: ShownRecord['place'], { paddockId, paddockName }: { readonly paddockId: string; readonly paddockName?: string | undefined }) {
  const all = [...groundsById(place).values()];
  return all.some(({ id }) => id === paddockId) ? all : [...all, { id: paddockId, name: paddockName ?? 'A paddock that was taken away' }];
}
function fieldsOf(place: ShownRecord['place'], row: Row): readonly PlaceField[] {
  switch (row.is) {
    case 'move':
      return moveFields(withOwn(place, row));
    case 'height':
      return heightFields(withOwn(place, row));
    case 'hay':
      return hayFields(withOwn(place, row), isLoad(row));
    case 'plan':
      return planFields(withOwn(place, row));
    case 'rain':
      return rainFields;
  }
}

export interface LineShown {
  readonly shown: ShownRecord;
  readonly row: Row;
  readonly title: string;
}
/** One line of the record, opened: its fields, and the way to take it out. */
export function RecordLine({ shown, row, title }: LineShown) {
  const { place, rows, system } = shown;
  return (
    <>
      <FieldsView
        id={row.id}
        record={asData(row)}
        fields={fieldsOf(place, row)}
        system={system}
        of={title}
        path={[]}
        onChange={(changes) => rows.type(row, changes)}
      />
      {row.is === 'move' && (
        <>
          <DayDoubts shown={shown} move={row} />
          <StockLines shown={shown} move={row} />
        </>
      )}
      {row.clash !== undefined && <ClashLine rows={rows} row={row} />}
      <p class="part-take">
        <button type="button" class="quiet" onClick={() => void rows.remove(row, `${title} was taken away.`)}>
          Take this line away
        </button>
      </p>
    </>
  );
}
/** Days that cannot be, or hardly. */
function DayDoubts({ shown: { stays, todayDay }, move }: { readonly shown: ShownRecord; readonly move: MoveRow }) {
  const outDay = outDayOf(move);
  if (outDay !== undefined && outDay < inDayOf(move)) return <p class="problem">They went out before they came in. Look at both days.</p>;
  const other = alsoThen(stays, move);
  return (
    <>
      {outDay !== undefined && outDay > todayDay && <p class="problem">Out is a day that has not come yet. Until then they count as there.</p>}
      {other !== undefined && (
        <p class="problem">
          Herd {move.herdNumber} was on {other.name} then, too, from {dayWords(other.inDay, todayDay)}{' '}
          {other.isOpen ? 'until now' : `to ${dayWords(other.outDay, todayDay)}`}. Both count. Look at the days of both.
        </p>
      )}
    </>
  );
}
/** What a stock-day is counted in. */
export const Yardstick = ({ place, session, system }: PlaceView) => (
  <FieldsView id="record" record={place} fields={[yardstickField]} system={system} path={[]} onChange={(changes) => session.change(changes)} />
);

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
