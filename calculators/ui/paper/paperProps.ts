import type { Calculator, Outcome } from '../../kit/define.ts';
import type { Change } from '../formProps.ts';
import type { Markup } from '../markup.ts';
import type { DrawPicture } from '../pictures/loadPicture.tsx';

/** What paper is made of. */
export interface PaperProps {
  readonly calculator: Calculator;
  readonly change: Change;
  readonly Picture: DrawPicture | undefined;
  /** The reader's question, as the page asks it. */
  readonly question: string;
  /** The reader’s own: pasture, place and day; and who worked it out. */
  readonly title: string | undefined;
  readonly by: string | undefined;
  /** Of the page, without its numbers. */
  readonly address: string | undefined;
  /** Name and phone of the office whose copy it is. */
  readonly office?: string | undefined;
  /** Whom it says to call, before the national lines. */
  readonly officeLines?: string | undefined;
  /** The drawn steps. */
  readonly working: readonly Markup[];
  /** What the built page holds and its script does not: limits, sources, whom to call. Each goes behind its title. */
  readonly behind: readonly { readonly title: string; readonly list: Element }[];
}

/** One answer, or two to hold against each other. */
export interface Held {
  readonly calculator: Calculator;
  readonly outcome: Outcome;
  readonly other: Outcome | null;
  readonly titles: readonly [string, string];
  readonly system: Change['system'];
}

export const heldOf = ({ calculator, change: { outcome, other, names, system } }: PaperProps): Held | null =>
  outcome && { calculator, outcome, other, titles: [names[0] || 'This', names[1] || 'That'], system };
