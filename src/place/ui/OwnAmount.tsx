import { useLayoutEffect, useState } from 'preact/hooks';
import { readCell } from '../../../calculators/kit/read.ts';
import { Field } from '../../../calculators/ui/Field.tsx';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { say } from './aloud.tsx';
import type { PlaceField } from './fields/field.ts';

interface OwnAmountProps {
  readonly id: string;
  readonly field: PlaceField;
  readonly system: UnitSystem;
  readonly onKeep: (value: number) => void;
}
/** One number that no button has. What cannot be kept is told at its field. */
export function OwnAmount({ id, field: { cell }, system, onKeep }: OwnAmountProps) {
  const [text, setText] = useState('');
  const [isTold, setTold] = useState(false);
  const goIn = () => document.getElementById(id)?.focus();
  // Whoever asked for it types next.
  useLayoutEffect(goIn, []);
  if (cell.kind !== 'number') return null;
  const read = readCell(cell, text, system);
  const problem = 'problem' in read ? read.problem : undefined;
  const refuse = (): void => {
    setTold(true);
    if (problem !== undefined) say(problem);
  };
  return (
    <form
      class="gate-own"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if ('value' in read && typeof read.value === 'number') onKeep(read.value);
        else {
          // Whoever comes back to the field by the button hears it with the field.
          if (!isTold || document.activeElement?.id === id) refuse();
          goIn();
        }
      }}
    >
      <Field
        id={id}
        cell={cell}
        text={text}
        problem={isTold ? problem : undefined}
        system={system}
        whose={undefined}
        tools={undefined}
        isPlain
        onText={(typed) => {
          setTold(false);
          setText(typed);
        }}
        onLeave={() => {
          if (text === '') setTold(false);
          else if (!isTold) refuse();
        }}
      />
      <button type="submit">Keep it</button>
    </form>
  );
}
