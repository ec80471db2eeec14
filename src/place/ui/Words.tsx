import { describedBy, FieldFrame, type FieldFrameProps } from './FieldFrame.tsx';

interface WordsProps extends Omit<FieldFrameProps, 'look' | 'children'> {
  readonly text: string;
  /** A sentence or two, all of it in sight: one paragraph, as every page shows it. */
  readonly isParagraph?: boolean;
  readonly onText: (text: string) => void;
  readonly onLeave?: () => void;
}
/** Several lines of words. */
export const Words = ({ text, isParagraph = false, onText, onLeave, ...frame }: WordsProps) => (
  <FieldFrame {...frame} look={isParagraph ? 'long-field' : 'words-field'}>
    <textarea
      id={frame.id}
      rows={isParagraph ? 2 : Math.min(12, Math.max(3, text.split('\n').length + 1))}
      {...(isParagraph ? {} : { maxLength: 20_000 })}
      value={text}
      aria-invalid={frame.problem === undefined ? undefined : true}
      aria-describedby={describedBy(frame)}
      onInput={({ currentTarget: { value } }) => onText(isParagraph ? value.replace(/\s*\n\s*/g, ' ') : value)}
      onBlur={onLeave}
    />
  </FieldFrame>
);
