import { useState } from 'preact/hooks';
import type { PlainGroup } from '../kit/screen.ts';
import { isShown } from '../kit/state.ts';
import { summaryOf, tellInput } from '../kit/summary.ts';
import { Fields } from './Fields.tsx';
import type { SideProps } from './props.ts';
import { isAllTouched, type Touched } from './touched.ts';

interface GroupProps extends Omit<SideProps, 'keys'> {
  readonly group: PlainGroup;
  readonly touched: Touched;
  readonly origin: string;
}

/** Questions behind one line that tells their answers; they open in place. One with an answer to mend opens itself. */
export function Group({ group, touched, origin, ...side }: GroupProps) {
  const { calculator, texts, system, problems } = side;
  const [isOpen, setOpen] = useState(false);
  const shown = group.inputs.filter((key) => {
    const input = calculator.inputs[key];
    return input !== undefined && isShown(input, texts);
  });
  if (shown.length === 0) return null;
  const { text, missing } = summaryOf(calculator.inputs, group, texts, system);
  const isOwn = shown.every((key) => isAllTouched(calculator.inputs, texts, touched, key));
  const mustOpen = problems.some(({ at }) => shown.includes(at.split('.')[0] ?? ''));
  const showsFields = isOpen || mustOpen;
  return (
    <details class="group" open={showsFields} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span class="group-name">{group.title}</span>
        <span class={isOwn ? 'group-says' : 'group-says is-example'}>
          {missing.length > 0 ? `Still wanted: ${missing.slice(0, 4).join(', ')}` : text}
          {missing.length === 0 && !isOwn && <span class="unseen"> (from the {origin})</span>}
        </span>
        <span class="group-change" aria-hidden="true" />
      </summary>
      {showsFields ? (
        <Fields {...side} keys={shown} />
      ) : (
        <dl class="group-list">
          {shown.map((key) => {
            const input = calculator.inputs[key];
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
      )}
    </details>
  );
}
