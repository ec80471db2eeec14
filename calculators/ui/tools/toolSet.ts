import { FieldTool } from './FieldTool.tsx';
import type { ToolStore } from './keptTool.ts';
import { MarksTool } from './MarksTool.tsx';
import { TallyGroup } from './TallyGroup.tsx';

/** Handed to a form whose definition names a tool, and fetched for no other: most calculators have none. */
export const toolSet = { FieldTool, MarksTool, TallyGroup };
export interface Tools {
  readonly draw: typeof toolSet;
  /** Not there before the form is live. */
  readonly store: ToolStore | undefined;
}
