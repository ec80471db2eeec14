import { useState } from 'preact/hooks';
import { dialsOf } from '../../../calculators/kit/helpLines.ts';
import type { ChoiceInput, DateInput } from '../../../calculators/kit/inputs.ts';
import { Doubt } from '../../../calculators/ui/Doubt.tsx';
import { Field } from '../../../calculators/ui/Field.tsx';
import { monthName, shortMonthName } from '../../../calculators/units/months.ts';
import { say } from '../../place/ui/aloud.tsx';
import type { Data } from '../../place/ui/edit.ts';
import { MonthDayView, TextView } from '../../place/ui/FieldView.tsx';
import { Words } from '../../place/ui/Words.tsx';
import { readTyped, textOf, valueAt } from '../draft.ts';
import type { OfficeField } from '../model/field.ts';
import type { Wrong } from '../model/sayWrong.ts';
import { usualCell } from './usualCells.ts';

export interface Filling {
  readonly data: Data;
  readonly wrongs: readonly Wrong[];
  /** What is wrong with a field is said once somebody has left it, or wanted to save. */
  readonly isTold: (path: string) => boolean;
  /** How often somebody wanted to save. */
  readonly tries: number;
  /** As a file has it: 2026-09-14. */
  readonly today: string;
  readonly put: (path: string, to: Data) => void;
  /** Rows with one taken away: those behind it move up, and what was typed into them with them. */
  readonly replaceRows: (path: string, rows: readonly Data[]) => void;
  readonly leave: (path: string) => void;
}
export const idOf = (path: string): string => `office-${path.replaceAll('.', '-')}`;

const choiceCell = ({ label, help, options = {} }: OfficeField): ChoiceInput => ({
  kind: 'choice',
  label,
  options: { '': { label: 'Not told' }, ...Object.fromEntries(Object.entries(options).map(([key, name]) => [key, { label: name }])) },
  default: '',
  belongsTo: 'place',
  ...(help === undefined ? {} : { help }),
});
const dateCell = ({ label }: OfficeField): DateInput => ({ kind: 'date', label, default: '', occurs: 'fixed', belongsTo: 'place' });

interface MakeTodayProps {
  readonly filling: Filling;
  readonly path: string;
  /** Said to listeners: which day. */
  readonly of: string;
  /** Where the focus goes from the button, which goes with its tap. */
  readonly then: string;
}
export function MakeToday({ filling, path, of, then }: MakeTodayProps) {
  return (
    <button
      type="button"
      onClick={() => {
        filling.put(path, filling.today);
        document.getElementById(then)?.focus();
      }}
    >
      Make it today<span class="unseen"> for “{of}”</span>
    </button>
  );
}

interface OneProps {
  readonly field: OfficeField;
  readonly path: string;
  /** Said to listeners before the label: which of several. */
  readonly of: string | undefined;
  readonly filling: Filling;
}
export function OfficeFieldView(one: OneProps) {
  const { field, path, of, filling } = one;
  if (field.kind === 'months') return <MonthsView {...one} />;
  if (!field.isToday) return <OneField {...one} />;
  return (
    <div class="dated">
      <OneField {...one} />
      {textOf(valueAt(filling.data, path)) !== filling.today && (
        <p class="part-add">
          <MakeToday filling={filling} path={path} of={of === undefined ? field.label : `${of}: ${field.label}`} then={idOf(path)} />
        </p>
      )}
    </div>
  );
}
function OneField({ field, path, of, filling }: OneProps) {
  const kept = textOf(valueAt(filling.data, path));
  // As it was typed, as long as it says what is kept: `165.50`, `1,200`.
  const [typed, setTyped] = useState(kept);
  const [isTyping, setTyping] = useState(false);
  const text = textOf(readTyped(field, typed)) === kept ? typed : kept;
  const wrong = filling.wrongs.find(({ at }) => at === path);
  const problem = wrong && !isTyping && filling.isTold(path) ? wrong.say : undefined;
  const shared = {
    id: idOf(path),
    of,
    text,
    problem,
    onText: (next: string) => {
      setTyped(next);
      setTyping(field.kind !== 'choice' && field.kind !== 'date');
      filling.put(path, readTyped(field, next));
    },
    onLeave: () => {
      if (wrong && problem === undefined) say(wrong.say);
      setTyping(false);
      filling.leave(path);
    },
  };
  // A number stands beside its unit, whatever else is said of it.
  const unit = field.kind === 'number' ? [`${field.right.charAt(0).toUpperCase()}${field.right.slice(1)}.`] : [];
  const dials = field.isDialed ? dialsOf(kept) : undefined;
  const dialed = dials === undefined ? [] : [`A tap on it dials ${dials}.`];
  const help = [...unit, ...dialed, ...(field.help === undefined ? [] : [field.help])].join(' ') || undefined;
  const told = { label: field.label, ...(help === undefined ? {} : { help }) };
  if (field.isLong) return <Words {...shared} {...told} isParagraph />;
  if (field.kind === 'monthDay') return <MonthDayView {...shared} cell={{ kind: 'monthDay', ...told }} />;
  if (field.kind === 'number') {
    const usual = usualCell(field);
    const view = <TextView {...shared} cell={{ kind: 'text', isNeeded: false, ...told }} inputMode="decimal" />;
    if (usual === undefined) return view;
    return (
      <div>
        {view}
        <Doubt id={`${shared.id}-doubt`} cell={usual} text={kept} system="us" />
      </div>
    );
  }
  if (field.kind === 'words') return <TextView {...shared} cell={{ kind: 'text', isNeeded: false, ...told }} />;
  const { of: before, ...rest } = shared;
  const cell = field.kind === 'choice' ? choiceCell(field) : dateCell(field);
  return <Field {...rest} {...(before === undefined ? {} : { of: before })} cell={cell} system="us" whose={undefined} tools={undefined} isPlain />;
}

const months = Array.from({ length: 12 }, (_, index) => index);
function MonthsView({ field, path, of, filling }: OneProps) {
  const [wrong] = filling.wrongs.filter(({ at }) => at === path || at.startsWith(`${path}.`));
  const told = filling.isTold(path) ? wrong : undefined;
  const leave = (): void => {
    if (wrong && !told) say(wrong.say);
    filling.leave(path);
  };
  return (
    <fieldset class={`months field${told ? ' is-wrong' : ''}`} id={idOf(path)}>
      <legend>
        {of !== undefined && <span class="unseen">{of}: </span>}
        {field.label} <span class="unit-words">({field.right})</span>
      </legend>
      <div class="month-fields">
        {months.map((index) => (
          <MonthInput key={index} index={index} field={field} path={`${path}.${index}`} filling={filling} onLeave={leave} />
        ))}
      </div>
      {told && <p class="problem">{told.say}</p>}
    </fieldset>
  );
}
interface MonthProps extends Omit<OneProps, 'of'> {
  readonly index: number;
  readonly onLeave: () => void;
}
function MonthInput({ index, field, path, filling, onLeave }: MonthProps) {
  const kept = textOf(valueAt(filling.data, path));
  const [typed, setTyped] = useState(kept);
  return (
    <label class="month">
      <span aria-hidden="true">{shortMonthName(index)}</span>
      <span class="unseen">{monthName(index)}</span>
      <input
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={textOf(readTyped(field, typed)) === kept ? typed : kept}
        onInput={(event) => {
          setTyped(event.currentTarget.value);
          filling.put(path, readTyped(field, event.currentTarget.value));
        }}
        onBlur={onLeave}
      />
    </label>
  );
}
