import type { NumberInput } from '../../kit/inputs.ts';
import type { UnitSystem } from '../../units/units.ts';
import { clockText, measuredText } from './clock.ts';
import { type ToolStore, useClock } from './keptTool.ts';
import { StartOver } from './StartOver.tsx';

interface StopwatchProps {
  readonly id: string;
  readonly input: NumberInput;
  readonly system: UnitSystem;
  readonly store: ToolStore | undefined;
  readonly onText: (text: string) => void;
}

export function StopwatchTool({ id, input, system, store, onText }: StopwatchProps) {
  const { isRunning, elapsedS, measureS, start, clear } = useClock(store, id);
  const stop = () => {
    onText(measuredText(measureS(), input, system));
    clear();
  };
  return (
    <div class="tool">
      <button type="button" class="tool-main" disabled={store === undefined} onClick={isRunning ? stop : start}>
        {isRunning ? 'Stop' : 'Start the watch'}
        <span class="unseen"> for {input.label}</span>
      </button>
      {isRunning && (
        <>
          <span class="tool-clock" role="timer">
            {clockText(elapsedS)}
          </span>
          <StartOver asks="Begin again from 0:00?" of={input.label} isOff={false} onYes={start} />
        </>
      )}
    </div>
  );
}
