import { dayOf } from '../../../calculators/units/printQuantity.ts';
import { rowMigrations } from './migrations/row.ts';
import { type Read, readAs } from './readRecord.ts';
import { type Row, rowSchema, rowVersion } from './row.ts';

/** Days of a row that no calendar has. The schema, which is published, only knows their shape. */
function noDayIn(row: Row): string | undefined {
  const days = 'inDay' in row ? { 'in day': row.inDay, 'out day': row.outDay } : { day: row.day };
  return Object.entries(days).find(([, day]) => day !== undefined && dayOf(day) === undefined)?.[0];
}

/** A row of the record as any edition wrote it. */
export function readRow(raw: unknown): Read<Row> {
  const otherwise = 'It does not have the shape of a line of the record.';
  const read = readAs({ schema: rowSchema, migrations: rowMigrations, version: rowVersion, otherwise }, raw);
  const wrong = read.is === 'read' ? noDayIn(read.value) : undefined;
  return wrong === undefined ? read : { is: 'damaged', why: `What stands at “${wrong}” cannot be used.` };
}
