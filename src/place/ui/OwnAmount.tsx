import { useLayoutEffect, useState } from 'preact/hooks';
import { readCell } from '../../../calculators/kit/read.ts';
import { Field } from '../../../calculators/ui/Field.tsx';
import type { UnitSystem } from '../../../calculators/units/units.ts';
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
  return (
    <form
      class="gate-own"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if ('value' in read && typeof read.value === 'number') onKeep(read.value);
        else {
          setTold(true);
          goIn();
        }
      }}
    >
      <Field
        id={id}
        cell={cell}
        text={text}
        problem={isTold && 'problem' in read ? read.problem : undefined}
        system={system}
        whose={undefined}
        tools={undefined}
        isPlain
        onText={(typed) => {
          setTold(false);
          setText(typed);
        }}
        onLeave={() => setTold(text !== '')}
      />
      <button type="submit">Keep it</button>
    </form>
  );
}
