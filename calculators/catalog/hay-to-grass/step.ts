// What the steps of the working have in common.
import type { Step } from '../../kit/steps.ts';
import { ownByTable, type Results } from './compute.ts';
import type { Values } from './inputs.ts';

export type All = Values & Results;
export type HayStep = Step<All, Results>;
export const isDivided = ({ lossConvention }: All): boolean => lossConvention === 'divide';
export const hasOwn = ({ onHand }: All): boolean => onHand !== 'none';
export const isOwnLooked = (values: All): boolean => ownByTable(values) !== undefined;
/** Only a wet coat has two rules. */
export const isWet = ({ isColdCounted, coat }: All): boolean => isColdCounted && coat === 'wet';
export const buys = ({ buyTon }: All): boolean => buyTon > 0;
/** A saving under a ton is lost in what the trials and the guides do not know. */
export const savesByFeeder = ({ feederSavesTon }: All): boolean => feederSavesTon >= 1;
export const savesByRoof = ({ roofSavesTon }: All): boolean => roofSavesTon >= 1;
