import type { ValuesOf } from '../../kit/inputs.ts';
import { managementInputs } from './managementInputs.ts';
import { pipeInputs } from './pipeInputs.ts';
import { placeInputs } from './placeInputs.ts';
import { herd } from './stock.ts';

export const inputs = { herd, ...placeInputs, ...managementInputs, ...pipeInputs };

export type Values = ValuesOf<typeof inputs>;
