// One field of the office file: what it holds, what it is called, and how to say what would be right.

/** What a field holds, and how to say what would be right. */
export interface OfficeField {
  /** Where it stands below its section: `likelyUsdPerTon`, `startIn.0`. */
  readonly at: string;
  readonly label: string;
  readonly kind: 'words' | 'number' | 'monthDay' | 'date' | 'choice' | 'months';
  /** `dollars a ton, such as 165`. */
  readonly right: string;
  readonly help?: string;
  readonly options?: Readonly<Record<string, string>>;
  readonly isLong?: boolean;
  /** A number to call stands in it: what a phone would dial is shown below. */
  readonly isDialed?: boolean;
  /** A day that is likely to be today: one tap fills it in. */
  readonly isToday?: boolean;
}

type More = Omit<Partial<OfficeField>, 'at' | 'label' | 'kind' | 'right'>;
const field =
  (kind: OfficeField['kind']) =>
  (at: string, label: string, right: string, more: More = {}): OfficeField => ({ at, label, kind, right, ...more });
export const words = field('words');
export const number = field('number');
export const monthDay = field('monthDay');
export const date = field('date');
export const months = field('months');
export const choice = (at: string, label: string, options: Readonly<Record<string, string>>, help?: string): OfficeField => ({
  at,
  label,
  kind: 'choice',
  right: `one of the list: ${Object.values(options).join(', ')}`,
  options,
  ...(help === undefined ? {} : { help }),
});

/** `inches` of a number that is told: what it is counted in, without the number such as it might be. */
export const countedIn = ({ kind, right }: OfficeField): string => (kind === 'number' || kind === 'months' ? right.replace(/[,;] .*$/, '') : '');
