import { useMemo, useState } from 'preact/hooks';
import { type Input, type Inputs, isRecord } from '../kit/inputs.ts';
import { hidesBehind, isTable, type PlainGroup } from '../kit/screen.ts';
import { isShown, type Text, textIn } from '../kit/state.ts';
import { namesIn, stillWanted, summaryOf, tellInput } from '../kit/summary.ts';
import { Fields } from './Fields.tsx';
import type { SideProps } from './props.ts';
import { isAllTouched, type Touched } from './touched.ts';

interface GroupProps extends Omit<SideProps, 'keys'> {
  readonly group: PlainGroup;
  readonly touched: Touched;
  readonly origin: string;
  /** Something in the form is still wanted: by its names what is wanted finds its group. */
  readonly isWanting: boolean;
}

/** A text; of a record what is understood of it, which may come later than the text. */
const readingOf = (input: Input | undefined, text: Text | undefined): unknown =>
  input !== undefined && isRecord(input) ? input.read(textIn(text)) : text;

/** Every answer that the line of a group, or its list, is made of. */
function toldOf(inputs: Inputs, { inputs: keys, summary = '' }: PlainGroup): readonly string[] {
  const told = [...keys, ...namesIn(summary)];
  return told.flatMap((key) => [key, ...(inputs[key] ? hidesBehind(inputs[key]) : [])]);
}

/** Questions behind one line that tells their answers; they open in place. One with an answer to mend opens itself. A key elsewhere costs it nothing. */
export function Group({ group, touched, origin, isWanting, ...side }: GroupProps) {
  const { calculator, texts, system, problems, tables } = side;
  const { inputs } = calculator;
  const [isOpen, setOpen] = useState(false);
  const shown = group.inputs.filter((key) => {
    const input = inputs[key];
    return input !== undefined && isShown(input, texts);
  });
  const isOwn = shown.every((key) => isAllTouched(inputs, texts, touched, key));
  const mustOpen = problems.some(({ at }) => shown.includes(at.split('.')[0] ?? ''));
  const isAsked = isOpen || mustOpen;
  // What draws a table may still be on its way: until then its list stays.
  const showsFields = isAsked && (tables !== undefined || !shown.some((key) => isTable(inputs[key])));
  const answers = [calculator, group.title, system, ...toldOf(inputs, group).map((key) => readingOf(inputs[key], texts[key]))];
  const line = useMemo(() => {
    const { text, missing } = summaryOf(inputs, group, texts, system);
    return (
      <summary>
        <span class="group-name">{group.title}</span>
        <span class={isOwn ? 'group-says' : 'group-says is-example'}>
          {missing.length > 0 ? stillWanted(missing) : text}
          {missing.length === 0 && !isOwn && <span class="unseen"> (from the {origin})</span>}
        </span>
        <span class="group-change" aria-hidden="true" />
      </summary>
    );
  }, [isOwn, origin, ...answers]);
  const list = useMemo(
    () =>
      !showsFields && (
        <dl class="group-list">
          {shown.map((key) => {
            const input = inputs[key];
            return (
              input && (
                <div key={key}>
                  <dt>{input.label}</dt>
                  <dd>{tellInput(input, texts[key], texts, system)}</dd>
                </div>
              )
            );
          })}
        </dl>
      ),
    [showsFields, ...answers],
  );
  if (shown.length === 0) return null;
  return (
    <details class="group" open={isAsked} data-asks={isWanting ? shown.join(' ') : undefined} onToggle={(event) => setOpen(event.currentTarget.open)}>
      {line}
      {showsFields ? <Fields {...side} keys={shown} /> : list}
    </details>
  );
}
