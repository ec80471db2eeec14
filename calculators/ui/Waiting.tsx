import type { Inputs } from '../kit/inputs.ts';
import type { Problem } from '../kit/state.ts';

/** The question at a path: of a cell its column’s. */
function labelAt(inputs: Inputs, { at, say }: Problem): string {
  const [key = '', , column = ''] = at.split('.');
  const input = inputs[key];
  return (input?.kind === 'rows' ? input.columns[column]?.label : input?.label) ?? say;
}
/** More than this are counted, not listed. */
const mostListed = 3;

/** In place of the range: what the answer waits for, each a way to its field. */
export function Waiting({
  id,
  inputs,
  problems,
  isBlank,
}: {
  readonly id: string;
  readonly inputs: Inputs;
  readonly problems: readonly Problem[];
  readonly isBlank: (at: string) => boolean;
}) {
  const wanted = problems.filter(({ at }) => isBlank(at));
  const wrong = problems.filter(({ at }) => !isBlank(at));
  const listed = (wrong.length > 0 ? wrong : wanted).slice(0, mostListed);
  const left = problems.length - listed.length;
  return (
    <ul class="waiting">
      {listed.map((problem) => (
        <li key={problem.at}>
          {problem.at === '' ? (
            problem.say
          ) : (
            <a
              href={`#${id}-${problem.at.replaceAll('.', '-')}`}
              onClick={(event) => {
                event.preventDefault();
                const form = event.currentTarget.closest('form');
                void import('./goTo.ts').then(({ goTo }) => goTo(form, id, problem.at)).catch(console.info);
              }}
            >
              {wrong.length > 0 ? problem.say : labelAt(inputs, problem)}
            </a>
          )}
        </li>
      ))}
      {left > 0 && <li>and {left} more</li>}
    </ul>
  );
}
