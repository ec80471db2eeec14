import type { Change } from '../../../calculators/ui/formProps.ts';

/** A form as it stood, with the pastures that were chosen above it. */
export interface Stood {
  readonly change: Change;
  readonly chosen: readonly string[];
}

/** As far back as anybody goes. */
export const mostSteps = 50;

const words = ({ change: { form, system, names }, chosen }: Stood): string => JSON.stringify([form, system, names, chosen]);
const isSame = (one: Stood, other: Stood): boolean =>
  (one.change.form === other.change.form &&
    one.change.system === other.change.system &&
    one.change.names === other.change.names &&
    one.chosen === other.chosen) ||
  words(one) === words(other);

/**
 * The steps of one form, while its window is open. A step is what a person has finished: a field left, a row added or taken away, an offer used, a side
 * set beside. Who tells when is the caller; what has changed nothing is no step.
 */
export class Steps {
  private readonly behind: Stood[] = [];
  private now: Stood;
  constructor(start: Stood) {
    this.now = start;
  }
  get count(): number {
    return this.behind.length;
  }
  /** Says whether it was one. */
  take(next: Stood): boolean {
    if (isSame(this.now, next)) return false;
    this.behind.push(this.now);
    if (this.behind.length > mostSteps) this.behind.shift();
    this.now = next;
    return true;
  }
  /** One step back; nothing where there is none. What was typed since the last step and not left yet is a step of its own. */
  back(next: Stood): Stood | undefined {
    this.take(next);
    const to = this.behind.pop();
    if (to !== undefined) this.now = to;
    return to;
  }
}

/** In the words of the form, what lies between two states of it. */
export function changedIn(calculator: { readonly inputs: Readonly<Record<string, { readonly label: string }>> }, from: Stood, to: Stood): string {
  if (from.change.system !== to.change.system) return 'the units';
  if ((from.change.form.that === null) !== (to.change.form.that === null)) return 'the other side';
  const differs = (side: 'this' | 'that', key: string): boolean =>
    JSON.stringify(from.change.form[side]?.[key]) !== JSON.stringify(to.change.form[side]?.[key]);
  const labels = Object.entries(calculator.inputs).flatMap(([key, { label }]) => (differs('this', key) || differs('that', key) ? [label] : []));
  const [first, second] = labels;
  if (first === undefined) return from.chosen.join() === to.chosen.join() ? 'the names of the sides' : 'the choice of pasture';
  if (second === undefined) return first;
  return labels.length === 2 ? `${first}, and ${second}` : `${first}, and ${labels.length - 1} more`;
}
