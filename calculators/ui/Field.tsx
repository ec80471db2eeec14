import type { ComponentChildren } from 'preact';
import type { Cell, ChoiceInput, Option } from '../kit/inputs.ts';
import { unitIn, units } from '../units/units.ts';
import { Doubt } from './Doubt.tsx';
import { keptText, shownText } from './fieldText.ts';
import type { FieldProps } from './props.ts';

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

const describedBy = (id: string, cell: Cell, problem: string | undefined): string | undefined =>
  [cell.help ? `${id}-help` : '', problem ? `${id}-problem` : ''].filter((part) => part !== '').join(' ') || undefined;

function Frame({ children, isGroup, ...field }: FieldProps & { readonly children: ComponentChildren; readonly isGroup?: boolean }) {
  const { id, cell, problem, of } = field;
  const name = (
    <>
      {of && <span class="unseen">{of}: </span>}
      {cell.label}
    </>
  );
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
      {cell.kind === 'number' && cell.usual && <Doubt cell={cell} text={field.text} system={field.system} />}
      {field.tools && <field.tools.draw.FieldTool {...field} store={field.tools.store} />}
      <Help cell={cell} />
    </>
  );
  if (isGroup) {
    return (
      <fieldset class={problem ? 'field is-wrong' : 'field'} aria-describedby={describedBy(id, cell, problem)}>
        <legend>{name}</legend>
        {body}
      </fieldset>
    );
  }
  return (
    <div class={problem ? 'field is-wrong' : 'field'}>
      <label for={id}>{name}</label>
      {body}
    </div>
  );
}

/** Few and short answers stand open to be tapped; long lists fold. */
const isShortList = (options: readonly (readonly [string, Option])[]): boolean =>
  options.length <= 4 && options.every(([, option]) => option.group === undefined && option.label.length <= 34);

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
      <div class="control">
        <select
          id={id}
          autocomplete="off"
          aria-invalid={problem ? true : undefined}
          aria-describedby={describedBy(id, input, problem)}
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

const yesAndNo = [
  ['yes', { label: 'Yes' }],
  ['no', { label: 'No' }],
] as const;

export function Field(props: FieldProps) {
  const { id, cell, text, problem, system, onText, onLeave } = props;
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
              aria-describedby={describedBy(id, cell, problem)}
              onInput={(event) => onText(event.currentTarget.value)}
              onBlur={onLeave}
            />
          </div>
        </Frame>
      );
    case 'number': {
      const shown = units[unitIn(system, cell.unit)];
      return (
        <Frame {...props}>
          <div class="control">
            <input
              id={id}
              type="text"
              inputMode="text"
              autocomplete="off"
              autocapitalize="off"
              spellcheck={false}
              enterkeyhint="next"
              value={shownText(text, cell.unit, system)}
              aria-invalid={problem ? true : undefined}
              aria-describedby={describedBy(id, cell, problem)}
              onInput={(event) => onText(keptText(event.currentTarget.value, cell.unit, system))}
              onBlur={onLeave}
            />
            {shown.print !== '' && (
              <span class="unit">
                <span aria-hidden="true">{shown.print}</span>
                <span class="unseen">{shown.words}</span>
              </span>
            )}
          </div>
        </Frame>
      );
    }
  }
}
