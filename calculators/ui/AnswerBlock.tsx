import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import type { Calculator, Outcome } from '../kit/define.ts';
import { Big, type Figure, leadOf, sayFigure } from './Answer.tsx';
import { useAloud } from './aloud.ts';
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
  /** Half a number is in the field: its answer is shown, and not read aloud. */
  readonly isTyping: boolean;
}

/** Whose figures, the answer, its range. */
export function AnswerBlock({ calculator, outcome, between, isBoth, figure, stamp, action, waiting, isTyping }: AnswerBlockProps) {
  const lead = outcome && leadOf(calculator, outcome);
  const range = outcome && (isBoth ? between : lead && outcome.shorts[lead.of]);
  const block = useRef<HTMLDivElement>(null);
  const textsOf = (parts: string): readonly string[] =>
    [...(block.current?.closest('form')?.querySelectorAll(parts) ?? [])].map(({ textContent }) => textContent ?? '');
  const aloud = useAloud(isTyping, () => ({
    cautions: textsOf('summary > .bar-lead'),
    answer: outcome ? [figure ? sayFigure(figure) : '', range ?? ''] : [stamp.text, ...textsOf('.waiting > li')],
  }));
  return (
    <div class={`answer is-${stamp.is}`} ref={block}>
      <p class="stamp-line">
        <span class="stamp">{stamp.text}</span> {action}
      </p>
      <Big figure={figure} />
      {outcome ? range !== undefined && range !== '' && <p class="range">{range}</p> : waiting}
      <div class="unseen" role="status">
        {aloud.map((each) => (
          <p key={each}>{each}</p>
        ))}
      </div>
    </div>
  );
}
