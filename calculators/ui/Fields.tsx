import type { VNode } from 'preact';
import { useRef } from 'preact/hooks';
import type { Cell } from '../kit/inputs.ts';
import { isShown, textIn } from '../kit/state.ts';
import { Field } from './Field.tsx';
import { withFills } from './fills.ts';
import type { SideProps } from './props.ts';

/** A field that says what it said is the same node as before: a key in another costs it nothing. */
function useDrawnOnce() {
  const drawn = useRef(new Map<string, { readonly says: readonly unknown[]; readonly node: VNode }>()).current;
  return (name: string, says: readonly unknown[], draw: () => VNode): VNode => {
    const before = drawn.get(name);
    if (before?.says.every((each, place) => each === says[place])) return before.node;
    const node = draw();
    drawn.set(name, { says, node });
    return node;
  };
}

/** Some of the fields of one side, in the order of their keys; what does not apply is not there. */
export function Fields(props: SideProps) {
  const { id, calculator, texts, problems, system, keys, of, tools, tables, onTexts, onLeave, records } = props;
  const drawnOnce = useDrawnOnce();
  // A field that was drawn a while ago writes into the texts of now.
  const newest = useRef(props);
  newest.current = props;
  const problemOf = (name: string) => problems.find((problem) => problem.at === name)?.say;
  const field = (name: string, input: Cell) => {
    const [text, problem, whose] = [textIn(texts[name]), problemOf(name), props.whoseOf(name)];
    return drawnOnce(name, [text, problem, whose, system, of, tools?.draw, tools?.store], () => (
      <Field
        key={name}
        id={`${id}-${name}`}
        cell={input}
        text={text}
        problem={problem}
        system={system}
        whose={whose}
        {...(of === undefined ? {} : { of })}
        tools={tools}
        onText={(typed) => {
          const now = newest.current;
          now.onTexts(withFills(input, typed, calculator.inputs, { ...now.texts, [name]: typed }), name);
        }}
        onLeave={() => newest.current.onLeave()}
      />
    ));
  };
  return (
    <>
      {keys.map((key) => {
        const [name = key, column] = key.split('.');
        const input = calculator.inputs[name];
        if (!input || !isShown(input, texts)) return null;
        if (input.kind === 'rows') {
          const rows = { ...props, name, input };
          return column === undefined
            ? tables && <tables.RowsField key={key} {...rows} />
            : tables && <tables.ColumnField key={key} {...rows} column={column} />;
        }
        if (input.kind === 'months') return tables && <tables.MonthsField key={key} {...props} name={name} input={input} />;
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
