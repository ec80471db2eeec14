import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { NumberInput } from '../../kit/inputs.ts';
import { readCell } from '../../kit/read.ts';
import type { Tally } from '../../kit/tools.ts';
import { type ToolStore, useKept } from './keptTool.ts';
import { StartOver } from './StartOver.tsx';

export interface TallyMember {
  readonly name: string;
  readonly input: NumberInput;
  readonly tool: Tally;
  readonly text: string;
}
interface TallyProps {
  readonly id: string;
  readonly members: readonly [TallyMember, ...TallyMember[]];
  readonly store: ToolStore | undefined;
  readonly hasProblem: boolean;
  /** Counts by name, as texts. */
  readonly onCounts: (counts: Readonly<Record<string, string>>, at: string) => void;
  /** The plain fields. */
  readonly children: ComponentChildren;
}

/** A text that is no count yet counts as none: its field says what is wrong with it. */
const countOf = ({ input, text }: TallyMember): number => {
  const reading = readCell(input, text);
  return 'value' in reading && typeof reading.value === 'number' ? reading.value : 0;
};

/**
 * Big buttons for one group of counts. The order of the taps is kept with the counts that they led to: once these were typed over, or came with another
 * link, the last tap is no longer what would be taken back.
 */
export function TallyTool({ id, members, store, hasProblem, onCounts, children }: TallyProps) {
  const { group, until } = members[0].tool;
  const counts = members.map(countOf);
  const total = counts.reduce((sum, count) => sum + count, 0);
  const [kept, put] = useKept(store, `${id}-${group}`);
  const [lastTap, setLastTap] = useState('');
  // A fault opens the plain fields; mended while somebody types there, it doesn't close them.
  const [isTyped, setTyped] = useState(false);
  const buttons = useRef<HTMLDivElement>(null);
  const [led = '', taps = ''] = (kept ?? '').split('|');
  const isOwn = led === counts.join(' ');
  const order = isOwn && taps !== '' ? taps.split(' ').map(Number) : [];
  // A whole count that nobody tapped here is the example, a link's or the other side's: nothing may be added to it by mistake.
  const isFull = total >= until && !isOwn;
  const write = (now: readonly number[], nowOrder: readonly number[], at: number) => {
    put(`${now.join(' ')}|${nowOrder.join(' ')}`);
    const changed = members.flatMap(({ name }, index) => (now[index] === counts[index] ? [] : [[name, String(now[index])] as const]));
    onCounts(Object.fromEntries(changed), members[at]?.name ?? '');
  };
  const add = (at: number, step: 1 | -1, nowOrder: readonly number[]) => {
    const now = counts.map((count, index) => (index === at ? Math.max(0, count + step) : count));
    setLastTap(`${members[at]?.tool.label ?? ''} ${now[at]}. `);
    write(now, nowOrder, at);
  };
  const begin = (now: readonly number[]) => {
    setLastTap('');
    write(now, [], 0);
    // They can be tapped only after the next drawing.
    setTimeout(() => buttons.current?.querySelector('button')?.focus());
  };
  const startOver = () => begin(counts.map(() => 0));
  const last = order.at(-1);
  return (
    <div class="tool is-tally">
      <details class="field-help">
        <summary>How to count</summary>
        {members.map(({ name, input, tool }) => (
          <p key={name}>
            <b>{tool.label}.</b> {input.help} {input.field}
          </p>
        ))}
      </details>
      {isFull && (
        <div class="tally-full">
          <p>This count is complete: an example, or one that was made before.</p>
          <button type="button" disabled={store === undefined} onClick={startOver}>
            Start my own count
          </button>
          <button type="button" class="quiet" disabled={store === undefined} onClick={() => begin(counts)}>
            Go on with this one
          </button>
        </div>
      )}
      <div class="tally-buttons" ref={buttons}>
        {members.map(({ name, tool }, index) => (
          <button
            key={name}
            type="button"
            disabled={store === undefined || isFull}
            onClick={() => {
              if ('vibrate' in navigator) navigator.vibrate(total + 1 === until ? [300, 100, 300] : 20);
              add(index, 1, [...order, index]);
            }}
          >
            <span>{tool.label}</span> <b>{counts[index]}</b>
          </button>
        ))}
      </div>
      <p class="tally-total" role="status">
        <span class="unseen">{lastTap}</span>
        {total <= until ? `${total} of ${until} ${group}` : `${total} ${group}, ${until} are enough`}
      </p>
      <p class="tally-row">
        <button
          type="button"
          disabled={store === undefined || last === undefined}
          onClick={() => last !== undefined && add(last, -1, order.slice(0, -1))}
        >
          Undo<span class="unseen"> the last tap</span>
        </button>
        <StartOver asks="Set every count to 0?" of={group} isOff={store === undefined || total === 0 || isFull} onYes={startOver} />
      </p>
      <details class="tally-typed" open={isTyped || hasProblem} onToggle={(event) => setTyped(event.currentTarget.open)}>
        <summary>Type the counts</summary>
        {children}
      </details>
    </div>
  );
}
