import { useState } from 'preact/hooks';
import { Field } from '../../../calculators/ui/Field.tsx';
import { monthKeys, months } from '../../../calculators/units/months.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Data } from './edit.ts';
import { describedBy, FieldFrame, Hint, Problem } from './FieldFrame.tsx';
import type { MonthDayCell, PlaceField, TextCell } from './fields/field.ts';
import { usePrinting } from './Part.tsx';
import type { Change } from './session.ts';
import { changesOf, dayPart, isShown, monthPart, problemIn, textIn } from './texts.ts';
import { saidOf } from './told.ts';

interface CellProps<C> {
  readonly id: string;
  readonly cell: C;
  readonly of: string | undefined;
  readonly text: string;
  readonly problem: string | undefined;
  readonly onText: (text: string) => void;
  readonly onLeave: () => void;
}
export const TextView = ({
  id,
  cell: { label, help },
  of,
  text,
  problem,
  onText,
  onLeave,
  inputMode,
}: CellProps<TextCell> & { readonly inputMode?: 'decimal' }) => (
  <FieldFrame {...{ id, label, of, help, problem }}>
    <input
      id={id}
      type="text"
      {...(inputMode && { inputMode })}
      autocomplete="off"
      enterkeyhint="next"
      value={text}
      aria-invalid={problem === undefined ? undefined : true}
      aria-describedby={describedBy({ id, help, problem })}
      onInput={(event) => onText(event.currentTarget.value)}
      onBlur={onLeave}
    />
  </FieldFrame>
);

/** A day of every year: its month from a list, its day typed. Either may come first. */
export function MonthDayView({ id, cell, of, text, problem, onText, onLeave }: CellProps<MonthDayCell>) {
  const [month, day] = [monthPart(text), dayPart(text)];
  const give = (nextMonth: string, nextDay: string): void => {
    const isNumber = /^\d{1,2}$/.test(nextDay);
    onText(nextMonth === '' && nextDay === '' ? '' : `${nextMonth}-${isNumber ? nextDay.padStart(2, '0') : nextDay}`);
  };
  const invalid = problem === undefined ? undefined : true;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset here would take the looks of a question of two answers
    <div
      role="group"
      class={`field${problem === undefined ? '' : ' is-wrong'}`}
      aria-labelledby={`${id}-name`}
      aria-describedby={describedBy({ id, help: cell.help, problem })}
    >
      <p class="field-name" id={`${id}-name`}>
        <span>
          {of !== undefined && <span class="unseen">{of}: </span>}
          {cell.label}
        </span>
      </p>
      <Hint id={id} help={cell.help} />
      <div class="month-day">
        <div class="control">
          <select
            id={`${id}-month`}
            autocomplete="off"
            aria-label={`${cell.label}: month`}
            aria-invalid={invalid}
            onChange={(event) => give(event.currentTarget.value, day)}
            onBlur={onLeave}
          >
            <option value="" selected={month === ''}>
              Month
            </option>
            {monthKeys().map((key, index) => {
              const value = String(index + 1).padStart(2, '0');
              return (
                <option key={key} value={value} selected={value === month}>
                  {months[key]}
                </option>
              );
            })}
          </select>
        </div>
        <div class="control">
          <input
            id={id}
            type="text"
            inputMode="numeric"
            autocomplete="off"
            aria-label={`${cell.label}: day of the month`}
            placeholder="Day"
            value={day}
            aria-invalid={invalid}
            onInput={(event) => give(month, event.currentTarget.value)}
            onBlur={onLeave}
          />
        </div>
      </div>
      <Problem id={id} problem={problem} />
    </div>
  );
}

interface OneProps {
  readonly id: string;
  readonly record: Data;
  readonly field: PlaceField;
  readonly system: UnitSystem;
  /** Said to listeners before the label: which of several it belongs to. */
  readonly of: string | undefined;
  readonly onChange: (changes: readonly Change[]) => void;
}
function FieldView({ id, record, field, system, of, onChange }: OneProps) {
  // A text is wrong once somebody has left it, not while they type it.
  const [isTyping, setTyping] = useState(false);
  const { cell } = field;
  const shared = {
    id,
    of,
    text: textIn(record, field, system),
    problem: isTyping ? undefined : problemIn(record, field, system),
    onText: (text: string) => {
      setTyping(cell.kind !== 'choice' && cell.kind !== 'yesNo');
      onChange(changesOf(field, text, system));
    },
    onLeave: () => setTyping(false),
  };
  if (cell.kind === 'text') return <TextView {...shared} cell={cell} />;
  if (cell.kind === 'monthDay') return <MonthDayView {...shared} cell={cell} />;
  const { of: before, ...rest } = shared;
  return (
    <Field {...rest} {...(before === undefined ? {} : { of: before })} cell={cell} system={system} whose={undefined} tools={undefined} isPlain />
  );
}

export interface FieldsProps {
  readonly id: string;
  readonly record: Data;
  readonly fields: readonly PlaceField[];
  readonly system: UnitSystem;
  readonly of?: string;
  /** Where the record stands in the place. */
  readonly path: readonly string[];
  readonly onChange: (changes: readonly Change[]) => void;
}
/** The fields of one record that have to do with each other now; on paper what they say. */
export function FieldsView({ id, record, fields, system, of, path, onChange }: FieldsProps) {
  const shown = fields.filter((field) => isShown(record, field));
  if (usePrinting())
    return (
      <dl class="told-fields">
        {shown.map((field) => {
          const said = saidOf(record, field, system);
          return said === undefined ? null : (
            <div key={field.at}>
              <dt>{field.cell.label}</dt>
              <dd>{said}</dd>
            </div>
          );
        })}
      </dl>
    );
  return (
    <div class="place-fields">
      {shown.map((field) => (
        <FieldView
          key={field.at}
          id={`${id}-${field.at.replaceAll('.', '-')}`}
          record={record}
          field={field}
          system={system}
          of={of}
          onChange={(changes) => onChange(changes.map((each) => ({ ...each, path: [...path, ...each.path] })))}
        />
      ))}
    </div>
  );
}
