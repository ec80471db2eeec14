import { MonthsField } from './MonthsField.tsx';
import type { Tables } from './props.ts';
import { ColumnField, RowsField } from './RowsField.tsx';

/** Handed to a form that asks for a table at once; to any other when it is live. */
export const tables: Tables = { RowsField, ColumnField, MonthsField };
