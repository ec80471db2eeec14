import type { Inputs } from '../kit/inputs.ts';
import { capital } from '../kit/midSentence.ts';
import type { Problem } from '../kit/state.ts';

/** What is said of the question at a path, of a cell with its row: what is wrong there, else only its name. */
function sayAt(inputs: Inputs, { at, say }: Problem, isWrong: boolean): string {
  const [key = '', row, column] = at.split('.');
  const input = inputs[key];
  if (input?.kind !== 'rows' || column === undefined) return isWrong ? say : (input?.label ?? say);
  return `${capital(input.rowName)} ${Number(row) + 1}, ${isWrong ? say : input.columns[column]?.label}`;
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
              {sayAt(inputs, problem, wrong.length > 0)}
            </a>
          )}
        </li>
      ))}
      {left > 0 && <li>and {left} more</li>}
    </ul>
  );
}
