import { useEffect, useState } from 'preact/hooks';
import type { RecordField, RecordFieldProps } from './RecordField.tsx';

/** Draws a record where few who open the form have one: its field is fetched when it is first shown. */
export function LaterRecord(props: RecordFieldProps) {
  const [Field, setField] = useState<typeof RecordField>();
  useEffect(() => {
    void import('./RecordField.tsx').then(({ RecordField }) => setField(() => RecordField)).catch(console.info);
  }, []);
  return Field ? <Field {...props} /> : null;
}
