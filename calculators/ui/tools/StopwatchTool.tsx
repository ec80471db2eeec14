import { useState } from 'preact/hooks';
import type { NumberInput } from '../../kit/inputs.ts';
import type { UnitSystem } from '../../units/units.ts';
import { clockText, measuredText, takenText } from './clock.ts';
import { type ToolStore, useClock } from './keptTool.ts';
import { StartOver } from './StartOver.tsx';

interface StopwatchProps {
  readonly id: string;
  readonly input: NumberInput;
  /** Which row it belongs to, or which side. */
  readonly of: string | undefined;
  readonly system: UnitSystem;
  readonly store: ToolStore | undefined;
  readonly onText: (text: string) => void;
}

export function StopwatchTool({ id, input, of, system, store, onText }: StopwatchProps) {
  const { isRunning, elapsedS, measureS, start, clear } = useClock(store, id);
  const [told, setTold] = useState('');
  const name = `${of ? `${of}: ` : ''}${input.label}`;
  const stop = () => {
    const takenS = measureS();
    onText(measuredText(takenS, input, system));
    setTold(`Stopped at ${takenText(takenS)}`);
    clear();
  };
  const begin = () => {
    setTold('');
    start();
  };
  return (
    <div class="tool">
      <button type="button" class="tool-main" disabled={store === undefined} onClick={isRunning ? stop : begin}>
        {isRunning ? 'Stop' : 'Start the watch'}
        <span class="unseen"> for {name}</span>
      </button>
      {isRunning && (
        <>
          <span class="tool-clock" role="timer">
            {clockText(elapsedS)}
          </span>
          <StartOver asks="Begin again from 0:00?" of={name} isOff={false} onYes={start} />
        </>
      )}
      <span class="unseen" role="status">
        {told}
      </span>
    </div>
  );
}
