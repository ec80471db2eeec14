import { useState } from 'preact/hooks';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { type Data, dataWith } from './edit.ts';
import { FieldsView } from './FieldView.tsx';
import type { PlaceField } from './fields/field.ts';
import { problemIn, readText, textIn } from './texts.ts';

interface OwnAmountProps {
  readonly id: string;
  readonly field: PlaceField;
  readonly system: UnitSystem;
  readonly onKeep: (value: number) => void;
}
/** One number that no button has. It is kept once it can be read. */
export function OwnAmount({ id, field, system, onKeep }: OwnAmountProps) {
  const [record, setRecord] = useState<Data>({});
  const keep = (): void => {
    const read = readText(field.cell, textIn(record, field, system), system);
    if ('value' in read && typeof read.value === 'number') onKeep(read.value);
  };
  return (
    <form
      class="gate-own"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <FieldsView id={id} record={record} fields={[field]} system={system} path={[]} onChange={(changes) => setRecord(dataWith(record, changes))} />
      <button type="submit" disabled={problemIn(record, field, system) !== undefined || textIn(record, field, system) === ''}>
        Keep it
      </button>
    </form>
  );
}
