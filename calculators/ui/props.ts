import type { ComponentChildren, FunctionComponent } from 'preact';
import type { Calculator } from '../kit/define.ts';
import type { Cell, MonthsInput, RecordInput } from '../kit/inputs.ts';
import type { Problem, Texts } from '../kit/state.ts';
import type { Marks } from '../kit/tools.ts';
import type { UnitSystem } from '../units/units.ts';
import type { Records } from './RecordField.tsx';
import type { ToolStore } from './tools/keptTool.ts';

// What the parts of a form hand to each other. A tally draws fields and a field draws tools, so neither can own these types.

export interface FieldProps {
  readonly id: string;
  readonly cell: Cell;
  readonly text: string;
  readonly problem: string | undefined;
  readonly system: UnitSystem;
  /** Said before the label to listeners only, where two fields of one name stand on a page: `Part 2`. */
  readonly of?: string;
  readonly tools: Tools | undefined;
  readonly onText: (text: string) => void;
  readonly onLeave: () => void;
}

export interface SideProps {
  readonly id: string;
  readonly calculator: Calculator;
  readonly texts: Texts;
  readonly problems: readonly Problem[];
  readonly system: UnitSystem;
  /** Which inputs belong here; the others are drawn elsewhere. */
  readonly wants: (input: Cell | MonthsInput | RecordInput) => boolean;
  /** `Other management` before each label, to listeners. */
  readonly of?: string;
  readonly canAddRows: boolean;
  /** Tables with columns of the place and of the management: whole here, only the columns that belong here, or not here. */
  readonly sharedRows?: 'whole' | 'apart' | 'none';
  readonly tools: Tools | undefined;
  readonly onTexts: (texts: Texts, at: string) => void;
  readonly onLeave: () => void;
  readonly records: Records | undefined;
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
