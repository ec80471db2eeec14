import type { ComponentChildren } from 'preact';
import type { Cell, ChoiceInput, NumberInput, Option } from '../kit/inputs.ts';
import { unitIn, units } from '../units/units.ts';
import { Doubt } from './Doubt.tsx';
import { keptText, shownText } from './fieldText.ts';
import type { FieldProps } from './props.ts';
import { steppedText } from './step.ts';

/** Help on tap: how to get the number, and the question that stands in for it. */
function Help({ cell }: { readonly cell: Cell }) {
  if (!cell.field && !cell.ask) return null;
  return (
    <details class="field-help">
      <summary>{cell.ask ? 'Don’t know?' : 'How to get it'}</summary>
      {cell.ask && <p>{cell.ask}</p>}
      {cell.field && <p>{cell.field}</p>}
    </details>
  );
}

/** What is heard behind a field's name: its unit, its help, what is doubted of it, what is wrong with it. */
const describedBy = ({ id, cell, problem, system }: FieldProps): string | undefined => {
  const number = cell.kind === 'number' ? cell : undefined;
  const parts = [
    ['unit', number && units[unitIn(system, number.unit)].print],
    ['help', cell.help],
    ['doubt', number?.usual],
    ['problem', problem],
  ] as const;
  return parts.flatMap(([part, isThere]) => (isThere ? `${id}-${part}` : [])).join(' ') || undefined;
};

function Frame({ children, isGroup, ...field }: FieldProps & { readonly children: ComponentChildren; readonly isGroup?: boolean }) {
  const { id, cell, problem, of, whose } = field;
  const name = (
    <>
      {of && <span class="unseen">{of}: </span>}
      {cell.label}
    </>
  );
  const tag = whose !== undefined && <span class="whose">{whose}</span>;
  const isOwn = whose === 'yours' || whose === 'from your place' || typeof whose === 'object';
  const classes = `field${problem ? ' is-wrong' : ''}${isOwn ? ' is-yours' : whose === undefined ? '' : ' is-example'}`;
  const body = (
    <>
      {cell.help && (
        <small class="field-hint" id={`${id}-help`}>
          {cell.help}
        </small>
      )}
      {children}
      {problem && (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
      {cell.kind === 'number' && cell.usual && <Doubt id={`${id}-doubt`} cell={cell} text={field.text} system={field.system} />}
      {field.tools && <field.tools.draw.FieldTool {...field} store={field.tools.store} />}
      <Help cell={cell} />
    </>
  );
  if (isGroup) {
    return (
      <fieldset class={classes} id={id} aria-describedby={describedBy(field)}>
        <legend>
          {name} {tag}
        </legend>
        {body}
      </fieldset>
    );
  }
  return (
    <div class={classes}>
      <p class="field-name">
        <label for={id}>{name}</label> {tag}
      </p>
      {body}
    </div>
  );
}

/** Two short answers stand open to be tapped; longer lists fold. */
const isShortList = (options: readonly (readonly [string, Option])[]): boolean =>
  options.length <= 2 && options.every(([, option]) => option.group === undefined && option.label.length <= 34);

function Select({ input, ...props }: FieldProps & { readonly input: ChoiceInput }) {
  const { id, text, problem, onText, onLeave } = props;
  const options = Object.entries(input.options);
  const groups = [...new Set(options.map(([, option]) => option.group))];
  const list = (group: string | undefined) =>
    options
      .filter(([, option]) => option.group === group)
      .map(([key, option]) => (
        <option key={key} value={key} selected={key === text}>
          {option.label}
        </option>
      ));
  return (
    <Frame {...props}>
      <div class="control is-choice">
        <select
          id={id}
          autocomplete="off"
          aria-invalid={problem ? true : undefined}
          aria-describedby={describedBy(props)}
          onChange={(event) => onText(event.currentTarget.value)}
          onBlur={onLeave}
        >
          {!Object.hasOwn(input.options, text) && (
            <option value={text} selected>
              {text === '' ? 'Choose' : `“${text.slice(0, 20)}” is not in the list`}
            </option>
          )}
          {groups.map((group) => (group === undefined ? list(group) : <optgroup label={group}>{list(group)}</optgroup>))}
        </select>
      </div>
    </Frame>
  );
}

function Radios({ options, ...props }: FieldProps & { readonly options: readonly (readonly [string, Option])[] }) {
  const { id, text, onText, onLeave } = props;
  return (
    <Frame {...props} isGroup>
      <div class="answers-to-tap">
        {options.map(([key, option]) => (
          <label key={key}>
            <input
              type="radio"
              name={id}
              id={`${id}-${key}`}
              value={key}
              autocomplete="off"
              checked={key === text}
              onChange={() => onText(key)}
              onBlur={onLeave}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </Frame>
  );
}

/** Plus and minus beside the number; any text can still be typed: `75 mm`. */
function NumberField({ input, ...props }: FieldProps & { readonly input: NumberInput }) {
  const { id, text, problem, system, of, isPlain, onText, onLeave } = props;
  const shown = units[unitIn(system, input.unit)];
  const value = shownText(text, input.unit, system);
  const isMoney = shown.print.startsWith('$');
  const step = (direction: 1 | -1) =>
    !isPlain && (
      <button
        type="button"
        class="nudge"
        aria-label={`${direction > 0 ? 'More' : 'Less'}: ${of ? `${of}: ` : ''}${input.label}`}
        onClick={() => onText(steppedText(input, text, direction, system))}
      >
        {direction > 0 ? '+' : '−'}
      </button>
    );
  return (
    <Frame {...props}>
      <div class={isPlain ? 'control' : 'control is-stepped'}>
        {step(-1)}
        <span class="typed-in">
          {isMoney && (
            <span class="unit is-before" aria-hidden="true">
              $
            </span>
          )}
          <input
            id={id}
            type="text"
            inputMode="text"
            autocomplete="off"
            autocapitalize="off"
            spellcheck={false}
            enterkeyhint="next"
            size={Math.max(3, value.length)}
            value={value}
            aria-invalid={problem ? true : undefined}
            aria-describedby={describedBy(props)}
            onInput={(event) => onText(keptText(event.currentTarget.value, input.unit, system))}
            onBlur={onLeave}
          />
          {shown.print !== '' && (
            <span class="unit">
              <span aria-hidden="true">{isMoney ? shown.print.slice(1).trim() : shown.print}</span>
              <span class="unseen" id={`${id}-unit`}>
                {shown.words}
              </span>
            </span>
          )}
        </span>
        {step(1)}
      </div>
    </Frame>
  );
}

const yesAndNo = [
  ['yes', { label: 'Yes' }],
  ['no', { label: 'No' }],
] as const;

export function Field(props: FieldProps) {
  const { id, cell, text, problem, onText, onLeave } = props;
  switch (cell.kind) {
    case 'yesNo':
      return <Radios {...props} options={yesAndNo} />;
    case 'choice': {
      const options = Object.entries(cell.options);
      return isShortList(options) ? <Radios {...props} options={options} /> : <Select {...props} input={cell} />;
    }
    case 'date':
      return (
        <Frame {...props}>
          <div class="control">
            <input
              id={id}
              type="date"
              autocomplete="off"
              value={text}
              aria-invalid={problem ? true : undefined}
              aria-describedby={describedBy(props)}
              onInput={(event) => onText(event.currentTarget.value)}
              onBlur={onLeave}
            />
          </div>
        </Frame>
      );
    case 'number':
      return <NumberField {...props} input={cell} />;
  }
}
