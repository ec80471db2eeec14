import type { Inputs } from '../kit/inputs.ts';
import type { Problem } from '../kit/state.ts';

const elementId = (id: string, at: string): string => `${id}-${at.replaceAll('.', '-')}`;
/** The field at a path, or what is drawn of its row; of answers to tap the first. */
function nearest(id: string, at: string): HTMLElement | null {
  const found = document.getElementById(elementId(id, at));
  if (!found) return at.includes('.') ? nearest(id, at.slice(0, at.lastIndexOf('.'))) : null;
  return found.matches('fieldset') ? found.querySelector<HTMLElement>('input, select, button') : found;
}
/** What draws a record is fetched when its group opens. */
const [lookMs, mostLooks] = [50, 40];
/** Puts the focus into the field at a path, once what was opened for it is drawn. */
export function goTo(id: string, at: string, looks = 0): void {
  setTimeout(
    () => {
      if (!document.getElementById(elementId(id, at)) && looks < mostLooks) {
        goTo(id, at, looks + 1);
        return;
      }
      const field = nearest(id, at);
      for (let fold = field?.closest('details'); fold; fold = fold.parentElement?.closest('details')) fold.open = true;
      field?.scrollIntoView({ block: 'center' });
      field?.focus({ preventScroll: true });
    },
    looks === 0 ? 0 : lookMs,
  );
}
/** The question at a path: of a cell its column’s. */
function labelAt(inputs: Inputs, { at, say }: Problem): string {
  const [key = '', , column = ''] = at.replace(/^that\./, '').split('.');
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
  onSeek,
}: {
  readonly id: string;
  readonly inputs: Inputs;
  readonly problems: readonly Problem[];
  readonly isBlank: (at: string) => boolean;
  /** Opens what folds around a path, and leads there. */
  readonly onSeek: (at: string) => void;
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
              href={`#${elementId(id, problem.at)}`}
              onClick={(event) => {
                event.preventDefault();
                onSeek(problem.at);
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
