import type { Cell } from '../kit/inputs.ts';
import { isShown, textIn } from '../kit/state.ts';
import { Field } from './Field.tsx';
import { withFills } from './fills.ts';
import { MonthsField } from './MonthsField.tsx';
import type { SideProps } from './props.ts';
import { ColumnField, RowsField } from './RowsField.tsx';

/** Some of the fields of one side, in the order of their keys; what does not apply is not there. */
export function Fields(props: SideProps) {
  const { id, calculator, texts, problems, system, keys, of, tools, onTexts, onLeave, records } = props;
  const problemOf = (name: string) => problems.find((problem) => problem.at === name)?.say;
  const field = (name: string, input: Cell) => (
    <Field
      key={name}
      id={`${id}-${name}`}
      cell={input}
      text={textIn(texts[name])}
      problem={problemOf(name)}
      system={system}
      whose={props.whoseOf(name)}
      {...(of === undefined ? {} : { of })}
      tools={tools}
      onText={(text) => onTexts(withFills(input, text, calculator.inputs, { ...texts, [name]: text }), name)}
      onLeave={onLeave}
    />
  );
  return (
    <>
      {keys.map((key) => {
        const [name = key, column] = key.split('.');
        const input = calculator.inputs[name];
        if (!input || !isShown(input, texts)) return null;
        if (input.kind === 'rows') {
          const rows = { ...props, name, input };
          return column === undefined ? <RowsField key={key} {...rows} /> : <ColumnField key={key} {...rows} column={column} />;
        }
        if (input.kind === 'months') return <MonthsField key={key} {...props} name={name} input={input} />;
        if (input.kind === 'record')
          return (
            records && (
              <records.draw
                key={key}
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
        return <tools.draw.TallyGroup key={key} name={name} side={props} store={tools.store} field={field} />;
      })}
    </>
  );
}
