import type { Counts } from './copyIndex.ts';

/** How far an edition is on a device: not all of its core, the core, or all of it. */
export type Standing = 'begun' | Opening;
/** How far it must be for its pages to open. */
export type Opening = 'core' | 'whole';

/** How the copy on this device stands. The worker tells it to every open page whenever it changes. */
export interface CopyState {
  readonly kind: 'copy-state';
  /** Being fetched; waiting until somebody asks, because data is to be saved; stopped by a bad line; the disk is full; all here. */
  readonly is: 'coming' | 'waiting' | 'stopped' | 'full' | 'whole';
  readonly standing: Standing;
  /** How far the earlier edition is here that opens until this one can; undefined where none does. */
  readonly older: Opening | undefined;
  readonly kept: Counts;
  readonly of: Counts;
}

/** What a page asks of the worker: to go on with the copy. */
export interface GoOn {
  readonly kind: 'copy-go-on';
  /** The reader's browser is set to save data. */
  readonly savesData: boolean;
  /** Somebody pressed the button: all of it, and now. */
  readonly isAsked: boolean;
}

const kindOf = (data: unknown): unknown => (typeof data === 'object' && data !== null && 'kind' in data ? data.kind : undefined);
export const isCopyState = (data: unknown): data is CopyState => kindOf(data) === 'copy-state';
export const isGoOn = (data: unknown): data is GoOn => kindOf(data) === 'copy-go-on';
