import type { ComponentChildren } from 'preact';
import type { Calculator, Outcome } from '../kit/define.ts';
import { Big, type Figure, leadOf } from './Answer.tsx';
import type { Stamp } from './stamp.ts';

interface AnswerBlockProps {
  readonly calculator: Calculator;
  readonly outcome: Outcome | null;
  /** Of two sides the range between them; of one its own stands in its outcome. */
  readonly between: string | undefined;
  readonly isBoth: boolean;
  readonly figure: Figure | undefined;
  readonly stamp: Stamp;
  /** Clears the example, or brings it back. */
  readonly action: ComponentChildren;
  /** What stands in place of the range while there is no answer. */
  readonly waiting: ComponentChildren;
}

/** Whose figures, the answer, its range. */
export function AnswerBlock({ calculator, outcome, between, isBoth, figure, stamp, action, waiting }: AnswerBlockProps) {
  const lead = outcome && leadOf(calculator, outcome);
  const range = outcome && (isBoth ? between : lead && outcome.shorts[lead.of]);
  return (
    <div class={`answer is-${stamp.is}`}>
      <p class="stamp-line">
        <span class="stamp">{stamp.text}</span> {action}
      </p>
      <Big figure={figure} />
      {outcome ? range !== undefined && range !== '' && <p class="range">{range}</p> : waiting}
    </div>
  );
}
