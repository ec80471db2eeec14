import type { ComponentChildren, FunctionComponent, VNode } from 'preact';
import type { Calculator, Outcome } from '../kit/define.ts';
import type { Cell, MonthsInput, RowsInput } from '../kit/inputs.ts';
import type { Problem, Texts } from '../kit/state.ts';
import type { Marks } from '../kit/tools.ts';
import type { UnitSystem } from '../units/units.ts';
import type { Records } from './RecordField.tsx';
import type { ToolStore } from './tools/keptTool.ts';

/** What tells results of one side or of two. */
export interface Sides {
  readonly calculator: Calculator;
  readonly outcome: Outcome;
  readonly other: Outcome | null;
  /** What the sides are called: `This`, `That`, or as their owner calls them. */
  readonly titles: readonly [string, string];
  readonly system: UnitSystem;
}

// What the parts of a form hand to each other. A tally draws fields and a field draws tools, so neither can own these types.

/** Whose an answer is, as a word at its label. */
export type Whose =
  | 'example'
  | 'yours'
  | 'from the link'
  | 'from this side'
  | 'today, by this device'
  | 'today, as you said'
  | 'from your place'
  | 'from the demo place';
/** The same, or more than a word, where the reader's place says more: then the answer is their own. */
export type Told = Whose | VNode;

/** What the reader's place, which is open, says of a form. Worked out from texts and place; links and `compute` know nothing of it. */
export interface PlaceMarks {
  /** The invented place: nothing of it is anybody's own. */
  readonly isDemo: boolean;
  /** `High bench, Two Bench place, Jun 20, 2026`: for paper and copied notes, never in a link. */
  readonly title: string;
  /** The form as the place fills it in these units: what stands so goes with a change of units. */
  readonly textsIn: (system: UnitSystem) => Texts;
  /** Nothing where the place does not tell. `put` writes texts into the form. */
  readonly toldAt: (path: string, texts: Texts, system: UnitSystem, put: (texts: Texts) => void) => Told | undefined;
}

export interface FieldProps {
  readonly id: string;
  readonly cell: Cell;
  readonly text: string;
  readonly problem: string | undefined;
  readonly system: UnitSystem;
  readonly whose: Told | undefined;
  /** Said before the label to listeners only, where two fields of one name stand on a page: `Part 2`. */
  readonly of?: string;
  readonly tools: Tools | undefined;
  /** Without plus and minus: one of several in a row. */
  readonly isPlain?: boolean;
  readonly onText: (text: string) => void;
  readonly onLeave: () => void;
}

export interface SideProps {
  readonly id: string;
  readonly calculator: Calculator;
  readonly texts: Texts;
  readonly problems: readonly Problem[];
  readonly system: UnitSystem;
  /** Which inputs are drawn here, in this order: `herd` is a table, `layers.feel` one column of it, a field a row. */
  readonly keys: readonly string[];
  /** Which columns of a table, where not all. */
  readonly wantsColumn?: (key: string, name: string, cell: Cell) => boolean;
  readonly whoseOf: (path: string) => Told | undefined;
  /** `That side`, or its name, before each label, to listeners. */
  readonly of?: string;
  readonly canAddRows: boolean;
  readonly tools: Tools | undefined;
  readonly tables: Tables | undefined;
  readonly onTexts: (texts: Texts, at: string) => void;
  readonly onLeave: () => void;
  readonly records: Records | undefined;
}

export interface RowsProps extends SideProps {
  readonly name: string;
  readonly input: RowsInput;
}
/** What draws inputs of many fields. Most forms ask such things only in groups that are closed at first. */
export interface Tables {
  readonly RowsField: FunctionComponent<RowsProps>;
  readonly ColumnField: FunctionComponent<RowsProps & { readonly column: string }>;
  readonly MonthsField: FunctionComponent<SideProps & { readonly name: string; readonly input: MonthsInput }>;
}

/** The tools that inputs can name, as a form is handed them. */
export interface Tools {
  readonly draw: {
    readonly FieldTool: FunctionComponent<FieldToolProps>;
    readonly MarksTool: FunctionComponent<MarksProps>;
    readonly TallyGroup: FunctionComponent<TallyGroupProps>;
  };
  /** Not there before the form is live. */
  readonly store: ToolStore | undefined;
}
export interface FieldToolProps {
  readonly id: string;
  readonly cell: Cell;
  readonly of?: string;
  readonly system: UnitSystem;
  readonly store: ToolStore | undefined;
  readonly onText: (text: string) => void;
}
export interface MarksProps {
  readonly id: string;
  readonly tool: Marks;
  readonly store: ToolStore | undefined;
  /** Takes what was measured, where there is a number to take it. */
  readonly onMeasured?: (elapsedS: number) => void;
}
export interface TallyGroupProps {
  readonly name: string;
  readonly side: SideProps;
  readonly store: ToolStore | undefined;
  /** Draws a plain field of this side. */
  readonly field: (name: string, input: Cell) => ComponentChildren;
}

/** Both sides as they are typed, for what runs each difference alone. */
export interface AloneProps {
  readonly calculator: Calculator;
  readonly mine: Texts;
  readonly theirs: Texts | null;
  readonly system: UnitSystem;
}
