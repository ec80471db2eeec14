import type { Cell, Input } from '../kit/inputs.ts';
import { defaultText } from '../kit/read.ts';
import type { Text } from '../kit/state.ts';

/** Choosing an option writes the fields that it fills. */
export function withFills<T extends Text>(
  cell: Cell,
  text: string,
  beside: Readonly<Record<string, Input>>,
  before: Readonly<Record<string, T | string>>,
): Record<string, T | string> {
  const filled: Record<string, T | string> = { ...before };
  if (cell.kind !== 'choice' || !Object.hasOwn(cell.options, text)) return filled;
  for (const [name, value] of Object.entries(cell.options[text]?.fills ?? {})) {
    const neighbor = beside[name];
    if (neighbor && neighbor.kind !== 'rows' && neighbor.kind !== 'months' && neighbor.kind !== 'record') filled[name] = defaultText(neighbor, value);
  }
  return filled;
}
