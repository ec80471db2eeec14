import { choice, type ValuesOf } from '../../kit/inputs.ts';
import { managementInputs } from './managementInputs.ts';
import { placeInputs } from './placeInputs.ts';

export const inputs = {
  ...placeInputs,
  ...managementInputs,
  lossConvention: choice({
    label: 'How losses are put on',
    belongsTo: 'place',
    convention: true,
    default: 'divide',
    help: 'Some sheets multiply the need by one plus the loss. That buys too little.',
    options: { divide: { label: 'Need ÷ (1 − loss)' }, multiply: { label: 'Need × (1 + loss)' } },
  }),
};

export type Values = ValuesOf<typeof inputs>;
