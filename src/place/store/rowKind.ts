import { readRow } from '../model/readRow.ts';
import type { Row } from '../model/row.ts';
import type { Kind } from './kind.ts';

/** Lines of the record. Apart from the others, so that only what needs the record fetches its schema. */
export const rowKind: Kind<Row> = { store: 'rows', read: readRow };
