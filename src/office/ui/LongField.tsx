interface LongFieldProps {
  readonly id: string;
  readonly label: string;
  readonly help: string | undefined;
  /** Said to listeners before the label: which of several. */
  readonly of: string | undefined;
  readonly text: string;
  readonly problem: string | undefined;
  readonly onText: (text: string) => void;
  readonly onLeave: () => void;
}
/** A sentence or two, all of it in sight. */
export function LongField({ id, label, help, of, text, problem, onText, onLeave }: LongFieldProps) {
  const told = [help === undefined ? '' : `${id}-help`, problem === undefined ? '' : `${id}-problem`].filter(Boolean).join(' ');
  return (
    <div class={`field long-field${problem === undefined ? '' : ' is-wrong'}`}>
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
          rows={2}
          value={text}
          aria-invalid={problem === undefined ? undefined : true}
          aria-describedby={told || undefined}
          // One paragraph, as every page shows it.
          onInput={(event) => onText(event.currentTarget.value.replace(/\s*\n\s*/g, ' '))}
          onBlur={onLeave}
        />
      </div>
      {problem !== undefined && (
        <p class="problem" id={`${id}-problem`}>
          {problem}
        </p>
      )}
    </div>
  );
}
