/** Whether what is typed here will be there tomorrow. */
export type StorageState =
  | { readonly is: 'kept' }
  /** The device has no room: what is held is in this window and in the journal. */
  | { readonly is: 'full' }
  /** From the first moment: this window keeps nothing. */
  | { readonly is: 'memory'; readonly why: WhyMemory };
export type WhyMemory =
  /** No storage, or the browser does not let us, as in a private window. */
  | 'refused'
  /** No answer in time. */
  | 'silent'
  /** Made by a newer copy of these pages. */
  | 'newer'
  /** The browser cannot read its own store. */
  | 'damaged'
  /** Taken away while the page was open. */
  | 'lost'
  /** Somebody chose to work from the file. */
  | 'chosen';

/** What a person is told of it. */
export const stateWords = (state: StorageState): string | undefined => {
  if (state.is === 'kept') return undefined;
  if (state.is === 'full') return 'This device is full. Save the file now.';
  if (state.why === 'damaged')
    return 'This window keeps nothing. Save the file before you close it. What was kept here is damaged and cannot be opened; nothing there was changed.';
  return state.why === 'newer'
    ? 'What is kept here was made by a newer copy of these pages. This window keeps nothing. Save the file before you close it.'
    : 'This window keeps nothing. Save the file before you close it.';
};

const nameOf = (error: unknown): string => (typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '');
export const isFull = (error: unknown): boolean => nameOf(error) === 'QuotaExceededError';
export const whyRefused = (error: unknown): WhyMemory => {
  if (nameOf(error) === 'VersionError') return 'newer';
  return nameOf(error) === 'UnknownError' ? 'damaged' : 'refused';
};

export interface Room {
  /** Whether the browser promised not to clear it by itself. */
  readonly isPersisted: boolean;
  readonly usedBytes?: number;
  readonly roomBytes?: number;
}
type Manager = Partial<Pick<StorageManager, 'persist' | 'persisted' | 'estimate'>>;
/** How much lies there, and whether it stays. Asks once for the promise if told to: after the first place of one's own is kept. */
export async function roomOf(storage: Manager | undefined, isAsking: boolean): Promise<Room> {
  try {
    const isPersisted = (await storage?.persisted?.()) === true || (isAsking && (await storage?.persist?.()) === true);
    const { usage, quota } = (await storage?.estimate?.()) ?? {};
    return { isPersisted, ...(usage === undefined ? {} : { usedBytes: usage }), ...(quota === undefined ? {} : { roomBytes: quota }) };
  } catch {
    return { isPersisted: false };
  }
}
