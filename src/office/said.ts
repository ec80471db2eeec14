import { dialed, type HelpLine } from '../../calculators/kit/helpLines.ts';
import { monthName } from '../../calculators/units/months.ts';
import type { Office } from './model/office.ts';

/** What an office says of itself on paper, in notes and in files. */
export interface OfficeSaid {
  /** `Example County office, 555-0100` */
  readonly name: string;
  /** `Sep 2026` */
  readonly valuesOf: string;
  /** Where its copy is, with its last stroke. */
  readonly copyAt?: string;
  /** Whom to call before the national lines; none where somebody has picked another kind of country. */
  readonly lines: readonly HelpLine[];
  /** People close by, in words; empty where somebody has picked another kind of country. */
  readonly near: string;
}

/** Of a day as a file has it, its month: `Sep 2026`. */
export const monthOf = (day: string): string => `${monthName(Number(day.slice(5, 7)) - 1).slice(0, 3)} ${day.slice(0, 4)}`;
export function officeSaid({ head, values: { talkToSomeone } }: Office, isPicked: boolean): OfficeSaid {
  const { name, phone, copyAt, valuesDay } = head;
  return {
    name: [name, phone].filter((each) => each !== undefined).join(', '),
    valuesOf: monthOf(valuesDay),
    ...(copyAt === undefined ? {} : { copyAt: copyAt.replace(/\/?$/, '/') }),
    lines: isPicked ? talkToSomeone.lines : [],
    near: isPicked ? talkToSomeone.near : '',
  };
}
/** Its lines to call in one text, for a note; empty without any. */
export const linesText = ({ lines }: Pick<OfficeSaid, 'lines'>): string =>
  lines
    .map(dialed)
    .map(({ before, number, after }) => `${before}${number}${after}`)
    .join('\n');
