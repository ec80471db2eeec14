import { yearOf } from '../../../calculators/units/days.ts';
import type { MoveRow, Row } from '../model/row.ts';
import { dayOfRow, inDayOf, outDayOf } from '../record/days.ts';
import { groundsById } from '../record/grounds.ts';
import { isLoad } from '../record/loads.ts';
import { alsoThen } from '../record/stays.ts';
import { WrongTogether } from './aloud.tsx';
import { type Data, dataWith } from './edit.ts';
import { FieldsView } from './FieldView.tsx';
import type { PlaceField } from './fields/field.ts';
import { hayFields, heightFields, moveFields, planFields, rainFields, stockLineFields } from './fields/record.ts';
import { yardstickField } from './fields/yardstick.ts';
import { goInto } from './goInto.ts';
import { lazily } from './lazily.tsx';
import type { ClashesProps } from './RecordClashes.tsx';
import { dayWords } from './recordWords.ts';
import type { ShownRecord } from './shownRecord.ts';
import type { PlaceView } from './view.ts';

// Few lines have one.
const RecordClashes = lazily<ClashesProps>(async () => (await import('./RecordClashes.tsx')).RecordClashes);

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
  const fields = fieldsOf(place, row);
  return (
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
      {row.is === 'move' && (
        <>
          <WrongTogether words={doubtOf(shown, row)} />
          <StockLines shown={shown} move={row} />
        </>
      )}
      {row.is === 'plan' && (
        <WrongTogether words={row.outDay < row.inDay ? 'They would go out before they come in. Look at both days.' : undefined} />
      )}
      {yearOf(dayOfRow(row)) !== shown.year && !shown.ofYear.some(({ move }) => move.id === row.id) && (
        <p role="status">This line is of {yearOf(dayOfRow(row))}: once you leave it, it stands there.</p>
      )}
      {row.clash !== undefined && <RecordClashes record={row} fields={fields} system={system} onChange={(changes) => rows.type(row, changes)} />}
      <p class="part-take">
        <button type="button" class="quiet" onClick={() => void rows.remove(row, `${title} was taken away.`)}>
          Take this line away
        </button>
      </p>
    </>
  );
}
/** Days that cannot be, or hardly. */
function doubtOf({ stays, todayDay }: ShownRecord, move: MoveRow): string | undefined {
  const outDay = outDayOf(move);
  if (outDay !== undefined && outDay < inDayOf(move)) return 'They went out before they came in. Look at both days.';
  const isToCome = outDay !== undefined && outDay > todayDay;
  const other = alsoThen(stays, move);
  const there = other && `from ${dayWords(other.inDay, todayDay)} ${other.isOpen ? 'until now' : `to ${dayWords(other.outDay, todayDay)}`}`;
  return (
    [
      isToCome ? 'Out is a day that has not come yet. Until then they count as there.' : '',
      other ? `Herd ${move.herdNumber} was on ${other.name} then, too, ${there}. Both count. Look at the days of both.` : '',
    ]
      .filter(Boolean)
      .join(' ') || undefined
  );
}
/** What a stock-day is counted in. */
export const Yardstick = ({ place, session, system }: PlaceView) => (
  <FieldsView id="record" record={place} fields={[yardstickField]} system={system} path={[]} onChange={(changes) => session.change(changes)} />
);

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
        <button
          type="button"
          onClick={() => {
            put([...lines, { kind: 'cow', countHead: 1 }]);
            goInto(`${move.id}-stock-${lines.length}`);
          }}
        >
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
