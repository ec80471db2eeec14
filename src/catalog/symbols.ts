import type { Calculator } from '../../calculators/kit/define.ts';

/** TeX symbols of a calculator's inputs and results; inside a table its own columns come first. A formula that names something without a symbol fails the build. */
export function symbolsOf(calculator: Calculator): (name: string, table?: string) => string {
  return (name, table) => {
    const quantity = table === undefined ? undefined : calculator.quantities[table];
    const column = quantity?.kind === 'rows' ? quantity.columns[name] : undefined;
    const found = column ?? calculator.quantities[name] ?? calculator.inputs[name];
    if (!found || !('symbol' in found)) throw new Error(`${calculator.slug}: "${name}" has no symbol`);
    return found.symbol;
  };
}
