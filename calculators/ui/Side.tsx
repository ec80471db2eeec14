import { type Cell, type Input, type MonthsInput, type RowsInput, sharesRows } from '../kit/inputs.ts';
import { defaultText } from '../kit/read.ts';
import { isShown, monthsIn, type RowTexts, rowsIn, type Text, textIn } from '../kit/state.ts';
import { shortMonthName } from '../units/months.ts';
import { unitIn, units } from '../units/units.ts';
import { Field } from './Field.tsx';
import { keptText, shownText } from './fieldText.ts';
import type { SideProps } from './props.ts';

/** Choosing an option writes the fields that it fills. */
function withFills<T extends Text>(
  cell: Cell,
  text: string,
  beside: Readonly<Record<string, Input>>,
  before: Readonly<Record<string, T | string>>,
): Record<string, T | string> {
  const filled: Record<string, T | string> = { ...before };
  if (cell.kind !== 'choice' || !Object.hasOwn(cell.options, text)) return filled;
  for (const [name, value] of Object.entries(cell.options[text]?.fills ?? {})) {
    const neighbour = beside[name];
    if (neighbour && neighbour.kind !== 'rows' && neighbour.kind !== 'months' && neighbour.kind !== 'record')
      filled[name] = defaultText(neighbour, value);
  }
  return filled;
}

/** Said at the first row that shows the column, not again at each. */
const withoutHelp = ({ help, field, ask, ...cell }: Cell): Cell => cell;

function Rows({ name, input, ...side }: SideProps & { readonly name: string; readonly input: RowsInput }) {
  const { id, texts, problems, system, of, tools, onLeave, sharedRows = 'apart' } = side;
  const list = rowsIn(texts[name]);
  const columns = Object.entries(input.columns);
  const isShared = sharesRows(input);
  if (isShared && sharedRows === 'none') return null;
  const wants = (cell: Cell): boolean => (isShared && sharedRows === 'whole') || side.wants(cell);
  if (!columns.some(([, cell]) => wants(cell))) return null;
  const [firstName, first] = columns[0] ?? [];
  // Where the column that tells rows apart stands elsewhere, its answer goes with the number.
  const nameOfRow = (row: RowTexts): string => {
    if (firstName === undefined || first?.kind !== 'choice' || wants(first)) return '';
    const label = first.options[row[firstName] ?? '']?.label;
    return label === undefined ? '' : `: ${label}`;
  };
  const mayAdd = side.canAddRows || !isShared;
  const put = (rows: readonly RowTexts[], at: string) => side.onTexts({ ...texts, [name]: rows }, at);
  const own = problems.find((problem) => problem.at === name)?.say;
  return (
    <fieldset class="rows">
      <legend>{input.label}</legend>
      {input.help && <small class="field-hint">{input.help}</small>}
      {input.tool && mayAdd && tools && <tools.draw.MarksTool id={`${id}-${name}`} tool={input.tool} store={tools.store} />}
      {list.map((row, index) => {
        const title = `${input.rowName[0]?.toUpperCase()}${input.rowName.slice(1)} ${index + 1}${nameOfRow(row)}`;
        const shown = columns.filter(([, cell]) => wants(cell) && isShown(cell, { ...texts, ...row }));
        return (
          <fieldset class={shown.length === 1 ? 'row is-single' : 'row'} key={index}>
            <legend class="row-title">
              {of && <span class="unseen">{of}: </span>}
              {title}
            </legend>
            {mayAdd && list.length > 1 && (
              <button
                type="button"
                class="quiet take-out"
                onClick={() =>
                  put(
                    list.filter((_, place) => place !== index),
                    name,
                  )
                }
              >
                Take out<span class="unseen"> {title}</span>
              </button>
            )}
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
                    of={of ? `${of}, ${title}` : title}
                    tools={tools}
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
          </fieldset>
        );
      })}
      {own && <p class="problem">{own}</p>}
      {mayAdd && list.length < input.maxRows && (
        <button type="button" class="quiet" onClick={() => put([...list, ...list.slice(-1)], name)}>
          Add another {input.rowName}
        </button>
      )}
    </fieldset>
  );
}

function Months({ name, input, ...side }: SideProps & { readonly name: string; readonly input: MonthsInput }) {
  const { id, texts, problems, system, onTexts, onLeave } = side;
  const list = monthsIn(texts[name]);
  const shown = unitIn(system, input.unit);
  return (
    <fieldset class="months">
      <legend>
        {input.label} {units[shown].print !== '' && <span class="muted">({units[shown].words})</span>}
      </legend>
      {input.help && <small class="field-hint">{input.help}</small>}
      <div class="month-fields">
        {list.map((text, index) => {
          const at = `${name}.${index}`;
          const problem = problems.find((each) => each.at === at)?.say;
          const month = shortMonthName(index);
          return (
            <div class={problem ? 'month is-wrong' : 'month'} key={month}>
              <label for={`${id}-${name}-${index}`}>{month}</label>
              <input
                id={`${id}-${name}-${index}`}
                type="text"
                autocomplete="off"
                value={shownText(text, input.unit, system)}
                aria-invalid={problem ? true : undefined}
                aria-describedby={problem ? `${id}-${name}-${index}-problem` : undefined}
                onInput={(event) => {
                  const next = keptText(event.currentTarget.value, input.unit, system);
                  onTexts({ ...texts, [name]: list.map((each, place) => (place === index ? next : each)) }, at);
                }}
                onBlur={onLeave}
              />
              {problem && (
                <p class="problem" id={`${id}-${name}-${index}-problem`}>
                  {problem}
                </p>
              )}
            </div>
          );
        })}
      </div>
    </fieldset>
  );
}

/** The fields of one side, in declared order; what does not apply is not there. */
export function Side(props: SideProps) {
  const { id, calculator, texts, problems, system, wants, of, tools, onTexts, onLeave, records } = props;
  const problemOf = (name: string) => problems.find((problem) => problem.at === name)?.say;
  const field = (name: string, input: Cell) => (
    <Field
      key={name}
      id={`${id}-${name}`}
      cell={input}
      text={textIn(texts[name])}
      problem={problemOf(name)}
      system={system}
      {...(of === undefined ? {} : { of })}
      tools={tools}
      onText={(text) => onTexts(withFills(input, text, calculator.inputs, { ...texts, [name]: text }), name)}
      onLeave={onLeave}
    />
  );
  return (
    <>
      {Object.entries(calculator.inputs)
        .filter(([, input]) => isShown(input, texts))
        .map(([name, input]) => {
          if (input.kind === 'rows') return <Rows key={name} {...props} name={name} input={input} />;
          if (!wants(input)) return null;
          if (input.kind === 'months') return <Months key={name} {...props} name={name} input={input} />;
          if (input.kind === 'record')
            return (
              records && (
                <records.draw
                  key={name}
                  id={`${id}-${name}`}
                  input={input}
                  text={textIn(texts[name])}
                  problem={problemOf(name)}
                  system={system}
                  onText={(text) => onTexts({ ...texts, [name]: text }, name)}
                  onLeave={onLeave}
                  keep={records.keep && ((text) => records.keep?.(name, text) ?? false)}
                />
              )
            );
          if (!tools || input.kind !== 'number' || input.tool?.kind !== 'tally') return field(name, input);
          return <tools.draw.TallyGroup key={name} name={name} side={props} store={tools.store} field={field} />;
        })}
    </>
  );
}
