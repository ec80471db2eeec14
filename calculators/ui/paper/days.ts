import type { Calculator, Outcome } from '../../kit/define.ts';
import type { Rows } from '../../kit/quantities.ts';

/** A table of more tells years or weeks; it is no list of days. */
const mostColumns = 7;
/** The table of days that people act by: the one behind the calendar, else the first that names days. */
export function daysOf(calculator: Calculator, outcome: Outcome): string | undefined {
  const named = calculator.results.flatMap(({ of }) => {
    const quantity = calculator.quantities[of];
    if (quantity?.kind !== 'rows' || !outcome.shown.includes(of) || rowsOf(outcome, of).length === 0) return [];
    const shown = quantity.shown ?? Object.keys(quantity.columns);
    const columns = shown.filter((name) => quantity.columns[name]?.kind === 'day');
    return columns.length > 0 && shown.length <= mostColumns ? [{ of, columns }] : [];
  });
  const isCalendar = ({ of, columns }: { readonly of: string; readonly columns: readonly string[] }): boolean =>
    outcome.calendar.length > 0 && columns.some((name) => outcome.calendar.every(({ day }) => rowsOf(outcome, of).some((row) => row[name] === day)));
  return (named.find(isCalendar) ?? named[0])?.of;
}

export function rowsOf(outcome: Outcome | null, name: string): Rows {
  const list = outcome?.computed[name];
  return typeof list === 'object' ? list : [];
}
