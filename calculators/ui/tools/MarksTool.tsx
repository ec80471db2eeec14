import { useEffect, useRef, useState } from 'preact/hooks';
import type { Marks } from '../../kit/tools.ts';
import type { MarksProps } from '../props.ts';
import { callText, clockText, stretchText } from './clock.ts';
import { useClock } from './keptTool.ts';
import { StartOver } from './StartOver.tsx';

/** A phone that locks calls nothing out, so the screen stays on while the clock runs, where the browser can do that. */
function useScreenOn(isOn: boolean): void {
  useEffect(() => {
    if (!isOn || !('wakeLock' in navigator)) return;
    let held: WakeLockSentinel | undefined;
    let isOver = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      try {
        held = await navigator.wakeLock.request('screen');
        if (isOver) await held.release();
      } catch {
        // An empty battery forbids it. What was missed is told afterwards.
      }
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', ask);
      void held?.release();
    };
  }, [isOn]);
}

/** Marks that have been called out already, and the words of the last call. */
function useCall({ atS, says }: Marks, isRunning: boolean, elapsedS: number): string {
  const [call, setCall] = useState('');
  const told = useRef(0);
  const passed = isRunning ? atS.filter((mark) => mark <= elapsedS).length : 0;
  useEffect(() => {
    if (passed > told.current) {
      setCall(callText(atS, says, told.current, elapsedS));
      if ('vibrate' in navigator) navigator.vibrate([400, 150, 400]);
    } else if (passed === 0) setCall('');
    told.current = passed;
  }, [passed]);
  return call;
}

export function MarksTool({ id, tool, store, onMeasured }: MarksProps) {
  const { isRunning, elapsedS, measureS, start, clear } = useClock(store, id);
  const call = useCall(tool, isRunning, elapsedS);
  useScreenOn(isRunning);
  const next = tool.atS.find((mark) => mark > elapsedS);
  const status = (mark: number): string => {
    if (!isRunning) return '';
    if (mark <= elapsedS) return ` (passed ${stretchText(elapsedS - mark)} ago)`;
    return mark === next ? ` (in ${stretchText(Math.ceil(mark - elapsedS))})` : '';
  };
  const stop = () => {
    onMeasured?.(measureS());
    clear();
  };
  return (
    <div class="tool is-marks">
      <p class="tool-name">{tool.label}</p>
      <button type="button" class="tool-main" disabled={store === undefined} onClick={isRunning ? stop : start}>
        {isRunning ? 'Stop' : 'Start the clock'}
        <span class="unseen"> for {tool.label}</span>
      </button>
      {isRunning && (
        <>
          <span class="tool-clock" role="timer">
            {clockText(elapsedS)}
          </span>
          <StartOver asks="Begin again from 0:00?" of={tool.label} isOff={false} onYes={start} />
        </>
      )}
      <p class="tool-call" aria-live="polite">
        {call}
      </p>
      <ol class="tool-marks">
        {tool.atS.map((mark, index) => (
          <li key={mark} class={isRunning && mark === next ? 'is-next' : undefined}>
            <b>{stretchText(mark)}</b>
            {status(mark)}: {tool.says[index]}
          </li>
        ))}
      </ol>
    </div>
  );
}
