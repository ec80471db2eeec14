import { Fragment } from 'preact';
import { useRef } from 'preact/hooks';
import type { Step } from '../model/visit.ts';
import { newId } from '../store/ids.ts';
import { WrongTogether } from './aloud.tsx';
import { listed } from './edit.ts';
import { FieldsView } from './FieldView.tsx';
import { stepFields } from './fields/visit.ts';
import type { Change } from './session.ts';
import { PutBack, useTaken } from './taken.tsx';
import type { View } from './view.ts';

interface StepsProps {
  readonly view: View;
  readonly steps: readonly Step[];
  /** Of the visit. */
  readonly day: string;
  readonly onChange: (changes: readonly Change[]) => void;
}
/** What was agreed, with an empty one ready: it becomes a step with its first letter. */
export function Steps({ view, steps, day, onChange }: StepsProps) {
  const spare = useRef(newId());
  if (steps.some(({ id }) => id === spare.current)) spare.current = newId();
  const taken = useTaken(
    () => steps,
    (left) => onChange([{ path: ['steps'], to: listed(left) }]),
  );
  const change = (id: string, changes: readonly Change[]): void => {
    const isThere = steps.some((each) => each.id === id);
    if (!isThere && changes.every(({ to }) => to === undefined)) return;
    onChange([...(isThere ? [] : [{ path: ['steps'], to: [...listed(steps), { id }] }]), ...changes]);
  };
  return (
    <ul class="visit-steps">
      {[...steps, { id: spare.current }].map((step: Step, index) => (
        <Fragment key={step.id}>
          {taken.backs(index).map((each) => (
            <li key={each.item.id}>
              <PutBack taken={each} from={taken} />
            </li>
          ))}
          <li>
            <FieldsView
              id={step.id}
              record={step}
              fields={stepFields}
              system={view.system}
              of={`Step ${index + 1}`}
              path={['steps', step.id]}
              onChange={(changes) => change(step.id, changes)}
            />
            <WrongTogether words={step.byDay !== undefined && step.byDay < day ? 'That day comes before the visit. Look at both days.' : undefined} />
            {index < steps.length && (
              <p class="step-ends">
                <label class="place-tick">
                  <input
                    type="checkbox"
                    checked={step.isDone === true}
                    onChange={(event) => onChange([{ path: ['steps', step.id, 'isDone'], to: event.currentTarget.checked || undefined }])}
                  />
                  <span>
                    Done <span class="unseen">step {index + 1}</span>
                  </span>
                </label>
                <button type="button" class="quiet" onClick={() => taken.take(step, `Step ${index + 1}`)}>
                  Take step {index + 1} away
                </button>
              </p>
            )}
          </li>
        </Fragment>
      ))}
    </ul>
  );
}
