import { useState } from 'preact/hooks';
import { type Cell, sharesRows } from '../kit/inputs.ts';
import { capital } from '../kit/midSentence.ts';
import { isShown, type RowTexts, rowsIn } from '../kit/state.ts';
import { tellRow, tellRows } from '../kit/summary.ts';
import { Field } from './Field.tsx';
import { withFills } from './fills.ts';
import type { RowsProps } from './props.ts';

/** Said at the first row that shows the column, not again at each. */
const withoutHelp = ({ help, field, ask, ...cell }: Cell): Cell => cell;

/** One column of a table as questions of their own, a field a row. */
export function ColumnField({ name, column, input, ...side }: RowsProps & { readonly column: string }) {
  const { id, texts, problems, system, of, tools, onLeave } = side;
  const list = rowsIn(texts[name]);
  const cell = input.columns[column];
  if (!cell) return null;
  return (
    <>
      {list.map((row, index) => {
        if (!isShown(cell, { ...texts, ...row })) return null;
        const at = `${name}.${index}.${column}`;
        const told = tellRow(input, row, texts, system);
        const label = list.length === 1 ? cell.label : `${cell.label}, ${input.rowName} ${index + 1}: ${told}`;
        return (
          <Field
            key={at}
            id={`${id}-${name}-${index}-${column}`}
            cell={{ ...(index === 0 ? cell : withoutHelp(cell)), label }}
            text={row[column] ?? ''}
            problem={problems.find((problem) => problem.at === at)?.say}
            system={system}
            whose={side.whoseOf(at)}
            {...(of === undefined ? {} : { of })}
            tools={tools}
            onText={(text) =>
              side.onTexts(
                {
                  ...texts,
                  [name]: list.map((each, place) => (place === index ? withFills(cell, text, input.columns, { ...each, [column]: text }) : each)),
                },
                at,
              )
            }
            onLeave={onLeave}
          />
        );
      })}
    </>
  );
}

/** The fields of one row. */
function RowFields({ name, input, row, index, list, shown, title, put, ...side }: RowFieldsProps) {
  const { id, texts, problems, system, tools, onLeave } = side;
  return (
    <div class="row-fields">
      {shown.map(([column, cell]) => {
        const at = `${name}.${index}.${column}`;
        return (
          <Field
            key={column}
            id={`${id}-${name}-${index}-${column}`}
            cell={list.slice(0, index).some((before) => isShown(cell, { ...texts, ...before })) ? withoutHelp(cell) : cell}
            text={row[column] ?? ''}
            problem={problems.find((problem) => problem.at === at)?.say}
            system={system}
            whose={side.whoseOf(at)}
            of={title}
            tools={tools}
            isPlain
            onText={(text) =>
              put(
                list.map((each, place) => (place === index ? withFills(cell, text, input.columns, { ...each, [column]: text }) : each)),
                at,
              )
            }
            onLeave={onLeave}
          />
        );
      })}
    </div>
  );
}
interface RowFieldsProps extends RowsProps {
  readonly row: RowTexts;
  readonly index: number;
  readonly list: readonly RowTexts[];
  readonly shown: readonly (readonly [string, Cell])[];
  readonly title: string;
  readonly put: (rows: readonly RowTexts[], at: string) => void;
}

/** So many single fields of a table stand open; more of them fold behind one line. */
const mostOpen = 8;
/** A table: a line a row, which opens to its fields; where a row is one field, that field. */
export function RowsField(props: RowsProps) {
  const { name, input, id, texts, problems, system, of, tools, wantsColumn } = props;
  const [open, setOpen] = useState(-1);
  const [gone, setGone] = useState('');
  const list = rowsIn(texts[name]);
  const columns = Object.entries(input.columns).filter(([column, cell]) => wantsColumn?.(name, column, cell) !== false);
  if (columns.length === 0) return null;
  const mayAdd = props.canAddRows || !sharesRows(input);
  const put = (rows: readonly RowTexts[], at: string) => props.onTexts({ ...texts, [name]: rows }, at);
  const own = problems.find((problem) => problem.at === name)?.say;
  const isWrong = (index: number): boolean => problems.some(({ at }) => at.startsWith(`${name}.${index}.`));
  // Which row it is must be said where its other columns stand elsewhere.
  const isPart = columns.length < Object.keys(input.columns).length;
  const shownIn = (row: RowTexts) => columns.filter(([, cell]) => isShown(cell, { ...texts, ...row }));
  const isLongList = list.length > mostOpen && list.every((row) => shownIn(row).length === 1);
  const isFolded = isLongList && open < 0 && !list.some((_, index) => isWrong(index));
  const lineOf = (told: string, title: string, isOpen: boolean, at: number) => (
    <p class="row-line">
      <span class="row-told">
        {of && <span class="unseen">{of}: </span>}
        {told}
      </span>
      <button type="button" class="quiet" aria-expanded={isOpen} onClick={() => setOpen(isOpen ? -1 : at)}>
        {isOpen ? 'Close' : 'Change'}
        <span class="unseen"> {title}</span>
      </button>
    </p>
  );
  return (
    <fieldset class="rows" id={`${id}-${name}`}>
      <legend>
        {of && <span class="unseen">{of}: </span>}
        {input.label}
      </legend>
      {input.help && <small class="field-hint">{input.help}</small>}
      {input.tool && mayAdd && tools && <tools.draw.MarksTool id={`${id}-${name}`} tool={input.tool} store={tools.store} />}
      {isLongList && <div class="row">{lineOf(tellRows(input, list, texts, system), `all ${list.length}`, !isFolded, 0)}</div>}
      {(isFolded ? [] : list).map((row, index) => {
        const shown = shownIn(row);
        const told = tellRow(input, row, texts, system);
        const title = `${of ? `${of}, ` : ''}${capital(input.rowName)} ${index + 1}`;
        const fields = <RowFields {...props} row={row} index={index} list={list} shown={shown} title={title} put={put} />;
        const takeOut = mayAdd && list.length > 1 && (
          <button
            type="button"
            class="quiet take-out"
            onClick={() => {
              setOpen(isLongList ? 0 : -1);
              setGone(`${title} was taken out. Left: ${list.length - 1}.`);
              put(
                list.filter((_, place) => place !== index),
                name,
              );
            }}
          >
            Take out<span class="unseen"> {title}</span>
          </button>
        );
        if (shown.length === 1)
          return (
            <div class="row is-single" key={index}>
              {isPart && <p class="row-told">{told}</p>}
              {fields}
              {takeOut}
            </div>
          );
        const isOpen = open === index || isWrong(index);
        return (
          <div class="row" key={index}>
            {lineOf(told, title, isOpen, index)}
            {isOpen && (
              <>
                {fields}
                {takeOut}
              </>
            )}
          </div>
        );
      })}
      {own && <p class="problem">{own}</p>}
      <p class="unseen" role="status">
        {gone}
      </p>
      {mayAdd && !isFolded && list.length < input.maxRows && (
        <button
          type="button"
          class="quiet"
          onClick={({ currentTarget }) => {
            setOpen(list.length);
            setGone('');
            put([...list, ...list.slice(-1)], name);
            // It copies the row before: which one this is, its first field says once it is drawn.
            const rows = currentTarget.closest('fieldset');
            setTimeout(() =>
              [...(rows?.querySelectorAll('.row') ?? [])].at(-1)?.querySelector<HTMLElement>('input:not([type=radio]), :checked, select')?.focus(),
            );
          }}
        >
          Add another {input.rowName}
        </button>
      )}
    </fieldset>
  );
}
