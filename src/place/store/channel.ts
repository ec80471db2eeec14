import { type StoreName, storeNames } from './backend.ts';

/** Told to the other windows of this origin: what to read again. */
export interface Told {
  readonly store: StoreName;
  readonly ids: readonly string[];
}
export interface Channel {
  readonly tell: (told: Told) => void;
  readonly close: () => void;
}

const isTold = (value: unknown): value is Told =>
  typeof value === 'object' &&
  value !== null &&
  'store' in value &&
  storeNames.some((each) => each === value.store) &&
  'ids' in value &&
  Array.isArray(value.ids) &&
  value.ids.every((each) => typeof each === 'string');

/** Without it windows do not hear of each other until they read again; nothing is lost by that. */
export function openChannel(hear: (told: Told) => void): Channel {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => {}, close: () => {} };
  const channel = new BroadcastChannel('holdwater');
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (isTold(data)) hear(data);
  };
  return { tell: (told) => channel.postMessage(told), close: () => channel.close() };
}
