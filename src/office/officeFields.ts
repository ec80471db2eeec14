import fields from '../../content/local/fields.json';
import { fieldsOf, type LocalFields } from '../local/fieldValues.ts';
import { readHere } from './readHere.ts';

/** What the office's values put into forms. */
export function officeFields(): LocalFields | undefined {
  const office = readHere();
  return office && fieldsOf(office.head.name, office.values, fields, (source) => source);
}
