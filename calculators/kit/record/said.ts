import type { UnitName } from '../../units/units.ts';

/** What an input that asks for a record says of it: limits of one day, in its unit. */
export interface RecordLimits {
  readonly label: string;
  readonly unit: UnitName;
  readonly min: number;
  readonly max: number;
  readonly maxRows: number;
  /** Highs and lows beside the rain are used too. */
  readonly takesTemperatures?: true;
}
/** Something about a record that its text does not settle, or that a person may settle otherwise. */
export interface Question {
  readonly name: string;
  readonly ask: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  /** What holds now; empty while the record cannot be read without an answer. */
  readonly answer: string;
}
/** What one step of the reading has to say. */
export interface Said {
  readonly questions: readonly Question[];
  /** Each thing that was taken in some way. */
  readonly told: readonly string[];
  /** Why no result may come from this text. */
  readonly problem: string | undefined;
}
export const nothingSaid: Said = { questions: [], told: [], problem: undefined };

/** As much of a cell as a message holds. */
export const short = (text: string): string => text.trim().slice(0, 20);
