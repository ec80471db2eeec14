import type { FieldToolProps } from '../props.ts';
import { measuredText } from './clock.ts';
import { MarksTool } from './MarksTool.tsx';
import { StopwatchTool } from './StopwatchTool.tsx';

/** The clock that stands beside a field. A tally is drawn for its whole group, elsewhere. */
export function FieldTool({ id, cell, of, system, store, onText }: FieldToolProps) {
  if (cell.kind === 'number' && cell.tool?.kind === 'stopwatch')
    return <StopwatchTool id={id} input={cell} of={of} system={system} store={store} onText={onText} />;
  if ((cell.kind !== 'number' && cell.kind !== 'choice') || cell.tool?.kind !== 'marks') return null;
  const write = cell.kind === 'number' ? { onMeasured: (elapsedS: number) => onText(measuredText(elapsedS, cell, system)) } : {};
  return <MarksTool id={id} tool={cell.tool} store={store} {...write} />;
}
