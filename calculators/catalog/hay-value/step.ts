// What the steps of the working have in common.
import type { Step } from '../../kit/steps.ts';
import type { Results } from './compute.ts';
import type { Values } from './inputs.ts';

export type All = Values & Results;
export type HayStep = Step<All, Results>;
export const hasSlip = ({ slip }: Pick<Values, 'slip'>): boolean => slip === 'tested';
export const isCompared = ({ against }: Pick<Values, 'against'>): boolean => against !== 'none';
export const isByBale = ({ pricedBy }: Pick<Values, 'pricedBy'>): boolean => pricedBy === 'bale';
export const isByTable = ({ storage }: All): boolean => storage !== 'rind' && storage !== 'known';
export const isDivided = ({ lossConvention }: All): boolean => lossConvention === 'divide';
export const isDry = ({ slipBasis }: All): boolean => slipBasis === 'dry';
export const isByProtein = ({ against }: All): boolean => against === 'protein';
export const onTop = 'the loss put on top, as some sheets do';
