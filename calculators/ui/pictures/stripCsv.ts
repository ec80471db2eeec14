import type { Calculator, Outcome } from '../../kit/define.ts';
import { printColumn } from '../../kit/print.ts';
import { type UnitSystem, unitIn, units } from '../../units/units.ts';

/** A comma or a quote would break the line; a sign of a formula at its head would be run by a spreadsheet. */
const cell = (text: string): string => {
  const plain = /^[=+@\t]/.test(text) ? `'${text}` : text;
  return /[",\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
};

/** Every table among the results, one under the other, each with its name above its head; of two sides with what the side is called. */
export function csvOf({ quantities }: Calculator, { computed, shown }: Outcome, system: UnitSystem, side: string): string {
  return shown
    .flatMap((name) => {
      const [quantity, rows] = [quantities[name], computed[name]];
      if (quantity?.kind !== 'rows' || typeof rows !== 'object') return [];
      const columns = Object.entries(quantity.columns).filter(([column]) => quantity.shown?.includes(column) ?? true);
      const head = columns.map(([, { label, ...each }]) => {
        const unit = each.kind === 'number' ? units[unitIn(system, each.unit)].print : '';
        return cell(unit === '' ? label : `${label} (${unit})`);
      });
      // Digits stand alone: a comma between thousands is another cell to a spreadsheet.
      const printed = columns.map(([column]) =>
        printColumn(rows, quantity, column, system).map((text) => text.replace(/(?<=\d),(?=\d{3})/g, '').replace('−', '-')),
      );
      const lines = rows.map((_, index) => printed.map((texts) => cell(texts[index] ?? '')).join(','));
      return [cell(side === '' ? quantity.label : `${quantity.label}: ${side}`), head.join(','), ...lines, ''];
    })
    .join('\n');
}

export function save(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'text/csv' }));
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.download = name;
  anchor.click();
  // The browser reads the address after this turn.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
