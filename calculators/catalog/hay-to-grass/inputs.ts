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
  wetCoatRule: choice({
    label: 'More feed for a wet coat, each degree below 59 °F',
    belongsTo: 'place',
    convention: true,
    default: 'two',
    shownWhen: { isColdCounted: 'yes', coat: 'wet' },
    since: { version: 2, before: 'one' },
    help: 'Universities differ, and two have printed both. The higher figure leads; it is more than a cow can eat on the day, so it must be spread over the days after.',
    options: {
      one: { label: '1 %, as for a dry coat (South Dakota 2020, Oklahoma 2025)' },
      two: { label: '2 % (older advice from Oklahoma, Kansas 2025)' },
    },
  }),
};

export type Values = ValuesOf<typeof inputs>;
