interface WordsProps {
  readonly id: string;
  readonly label: string;
  /** Said to listeners before the label: which of several. */
  readonly of?: string;
  readonly help?: string;
  readonly text: string;
  readonly onText: (text: string) => void;
}
/** Several lines of words. */
export const Words = ({ id, label, of, help, text, onText }: WordsProps) => (
  <div class="field words-field">
    <p class="field-name">
      <label for={id}>
        {of !== undefined && <span class="unseen">{of}: </span>}
        {label}
      </label>
    </p>
    {help !== undefined && (
      <small class="field-hint" id={`${id}-help`}>
        {help}
      </small>
    )}
    <div class="control">
      <textarea
        id={id}
        rows={Math.min(12, Math.max(3, text.split('\n').length + 1))}
        maxLength={20_000}
        value={text}
        aria-describedby={help === undefined ? undefined : `${id}-help`}
        onInput={(event) => onText(event.currentTarget.value)}
      />
    </div>
  </div>
);
