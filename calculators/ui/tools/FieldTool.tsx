import type { Cell } from '../../kit/inputs.ts';
import type { UnitSystem } from '../../units/units.ts';
import { measuredText } from './clock.ts';
import type { ToolStore } from './keptTool.ts';
import { MarksTool } from './MarksTool.tsx';
import { StopwatchTool } from './StopwatchTool.tsx';

interface FieldToolProps {
  readonly id: string;
  readonly cell: Cell;
  readonly system: UnitSystem;
  readonly store: ToolStore | undefined;
  readonly onText: (text: string) => void;
}

/** The clock that stands beside a field. A tally is drawn for its whole group, elsewhere. */
export function FieldTool({ id, cell, system, store, onText }: FieldToolProps) {
  if (cell.kind === 'number' && cell.tool?.kind === 'stopwatch')
    return <StopwatchTool id={id} input={cell} system={system} store={store} onText={onText} />;
  if ((cell.kind !== 'number' && cell.kind !== 'choice') || cell.tool?.kind !== 'marks') return null;
  const write = cell.kind === 'number' ? { onMeasured: (elapsedS: number) => onText(measuredText(elapsedS, cell, system)) } : {};
  return <MarksTool id={id} tool={cell.tool} store={store} {...write} />;
}
