import type { Tools } from '../props.ts';
import { FieldTool } from './FieldTool.tsx';
import { MarksTool } from './MarksTool.tsx';
import { TallyGroup } from './TallyGroup.tsx';

/** Handed to a form whose definition names a tool, and fetched for no other: most calculators have none. */
export const toolSet: Tools['draw'] = { FieldTool, MarksTool, TallyGroup };
