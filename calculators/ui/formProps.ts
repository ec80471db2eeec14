import type { FunctionComponent } from 'preact';
import type { Calculator } from '../kit/define.ts';
import type { Texts } from '../kit/state.ts';
import type { UnitSystem } from '../units/units.ts';
import type { BelowProps } from './Below.tsx';
import type { Follow, Held, Opening } from './formState.ts';
import type { PicturesProps, Told } from './LaterPart.tsx';
import type { Parts } from './parts.ts';
import type { AloneProps } from './props.ts';
import type { Records } from './RecordField.tsx';
import type { UseSide } from './sides.ts';
import type { Stamp } from './stamp.ts';
import type { ToolStore } from './tools/keptTool.ts';

/** What a form holds and what came of it, as everything beside the form hears of it. */
export interface Change extends Omit<Held, 'notices' | 'differs' | 'came'>, Told {
  readonly link: string;
  /** Whose figures they are: the one line for screen, paper and what is kept. */
  readonly stamp: Stamp;
}
export interface Reach {
  /** Puts texts into fields, whether they stand open or not, and says of these paths from whose values. */
  readonly fill: (texts: Texts, paths: readonly string[], filled: string) => void;
  readonly open: (opening: Opening) => void;
  /** What `onChange` is told a little later: for when there is no later. */
  readonly now: () => Change;
  /** Fetches what the form can do without at first. */
  readonly bringParts: () => void;
}
/** What a page is built with, and a form in a browser goes without at first. */
export interface BuiltParts extends Pick<PicturesProps, 'Picture'> {
  readonly LaterPart: FunctionComponent<PicturesProps>;
  readonly Below: FunctionComponent<BelowProps>;
}
export interface CalculatorFormProps {
  readonly calculator: Calculator;
  /** Begins every id on the page that is this form's. */
  readonly id: string;
  /** What the first render draws: the default, with answers that may have been worked out ahead. */
  readonly begun?: Texts;
  /** Applied a moment behind the first render, which is always the default, for it must equal the built page. */
  readonly open?: () => Opening | null;
  readonly onChange?: (change: Change) => void;
  /** Asked with every change. */
  readonly follow?: Follow | undefined;
  /** Tells what the picture shows, sooner after a key than `onChange`. */
  readonly onTold?: (told: Told) => void;
  readonly onSystem?: (system: UnitSystem) => void;
  /** Hands out what can be done to the form from outside. */
  readonly onLive?: (reach: Reach) => void;
  /** Those parts that stand open at first; all of them at build. */
  readonly parts?: Parts;
  /** Draws the picture and all results, at build: there they stand in the form’s own place, and a script that comes a little later brings them to life. */
  readonly built?: BuiltParts;
  /** Draws a record, and keeps it, for a definition that asks for one. */
  readonly records?: Records['draw'];
  readonly keepRecord?: Exclude<Records['keep'], undefined>;
  /** Where field tools keep their state. */
  readonly store?: ToolStore;
  /** Computes a side where that takes long. */
  readonly useRan?: UseSide | undefined;
  /** Runs what differs, or what is unsure, one at a time. */
  readonly Alone?: FunctionComponent<AloneProps> | undefined;
}
