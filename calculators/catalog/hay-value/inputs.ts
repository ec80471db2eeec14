import type { ValuesOf } from '../../kit/inputs.ts';
import { lossInputs } from './lossInputs.ts';
import { offerInputs } from './offerInputs.ts';

export const inputs = { ...offerInputs, ...lossInputs };

export type Values = ValuesOf<typeof inputs>;
