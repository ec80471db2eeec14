import type { ComponentChildren } from 'preact';

interface Framed {
  readonly id: string;
  readonly help?: string | undefined;
  readonly problem?: string | undefined;
}
/** What tells more of a field, for its control to name. */
export const describedBy = ({ id, help, problem }: Framed): string | undefined =>
  [help === undefined ? '' : `${id}-help`, problem === undefined ? '' : `${id}-problem`].filter(Boolean).join(' ') || undefined;
export const Hint = ({ id, help }: Framed) =>
  help === undefined ? null : (
    <small class="field-hint" id={`${id}-help`}>
      {help}
    </small>
  );
export const Problem = ({ id, problem }: Framed) =>
  problem === undefined ? null : (
    <p class="problem" id={`${id}-problem`}>
      {problem}
    </p>
  );

export interface FieldFrameProps extends Framed {
  readonly label: string;
  /** Said to listeners before the label: which of several. */
  readonly of?: string | undefined;
  /** Of which kind of field it is besides. */
  readonly look?: string;
  readonly children: ComponentChildren;
}
/** A label, the help below it, one control, and what is wrong with it. */
export const FieldFrame = ({ id, label, of, help, problem, look, children }: FieldFrameProps) => (
  <div class={['field', look, problem !== undefined && 'is-wrong'].filter(Boolean).join(' ')}>
    <p class="field-name">
      <label for={id}>
        {of !== undefined && <span class="unseen">{of}: </span>}
        {label}
      </label>
    </p>
    <Hint id={id} help={help} />
    <div class="control">{children}</div>
    <Problem id={id} problem={problem} />
  </div>
);
