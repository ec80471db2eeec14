import type { ComponentChildren } from 'preact';
import type { Calculator, Outcome } from '../kit/define.ts';
import type { UnitSystem } from '../units/units.ts';
import { Big, type Figure, figureAlone, figureBetween, leadOf, rangeBetween } from './Answer.tsx';
import type { Stamp } from './stamp.ts';

/** The figure that stands large: of one side, or between two. */
export const figureFor = (calculator: Calculator, outcome: Outcome, other: Outcome | null, system: UnitSystem): Figure | undefined =>
  other ? figureBetween({ calculator, outcome, other, system }) : figureAlone({ calculator, outcome, system });

interface AnswerBlockProps {
  readonly calculator: Calculator;
  readonly outcome: Outcome | null;
  readonly other: Outcome | null;
  readonly system: UnitSystem;
  readonly figure: Figure | undefined;
  readonly stamp: Stamp;
  /** Clears the example, or brings it back. */
  readonly action: ComponentChildren;
  /** What stands in place of the range while there is no answer. */
  readonly waiting: ComponentChildren;
}

/** Whose figures, the answer, its range. */
export function AnswerBlock({ calculator, outcome, other, system, figure, stamp, action, waiting }: AnswerBlockProps) {
  const lead = outcome && leadOf(calculator, outcome);
  const range = outcome && (other ? rangeBetween({ calculator, outcome, other, system }) : lead && outcome.shorts[lead.of]);
  return (
    <div class={`answer is-${stamp.is}`}>
      <p class="stamp-line">
        <span class="stamp">{stamp.text}</span> {action}
      </p>
      {/* Changes here are read aloud once: the figure with its range. */}
      <div aria-live="polite" aria-atomic="true">
        <Big figure={figure} />
        {outcome ? range !== undefined && range !== '' && <p class="range">{range}</p> : waiting}
      </div>
    </div>
  );
}
