import type { Office } from './model/office.ts';
import { type OfficeRead, readOfficeProperty } from './model/officeFile.ts';

let read: OfficeRead | undefined;
/** What the office's file of this page says: read once. */
export function readOffice(): OfficeRead {
  const text = globalThis.holdwaterOffice;
  // Without its script there is no office.
  read ??= text === undefined ? { is: 'none' } : readOfficeProperty(text);
  return read;
}
export function readHere(): Office | undefined {
  const found = readOffice();
  return found.is === 'read' ? found.office : undefined;
}
