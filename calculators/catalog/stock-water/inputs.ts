import type { ValuesOf } from '../../kit/inputs.ts';
import { managementInputs } from './managementInputs.ts';
import { placeInputs } from './placeInputs.ts';
import { herd } from './stock.ts';

export const inputs = { herd, ...placeInputs, ...managementInputs };

export type Values = ValuesOf<typeof inputs>;
