// Whom to call when it weighs on somebody. The only place where these numbers stand: guides, calculator pages, paper, notes and search
// take them from here. It imports nothing, for a page fetches it with its script.

export interface HelpLine {
  /** Who answers. */
  readonly who: string;
  /** Number, and how to use it. */
  readonly reach: string;
  /** When somebody answers; with the date of the printing where printings differ. */
  readonly hours?: string | undefined;
  /** Source key, `common practice` or `from memory`. */
  readonly source: string;
  readonly at?: string | undefined;
  readonly also?: readonly string[] | undefined;
}

export const crisisLine: HelpLine = {
  who: '988, the national crisis line',
  reach: 'call or text 988',
  hours: 'day and night, free',
  source: 'farm-progress-help-lines',
  also: ['funkenbusch-988'],
};
export const emergencyLine: HelpLine = { who: 'If a life is in danger now', reach: 'call 911', source: 'common practice' };
/** Its printed hours differ, even in one year; so they stand with their date. */
const farmLine: HelpLine = {
  who: 'A national line for farmers and ranchers',
  reach: '1-800-FARM-AID, 1-800-327-6243',
  hours: 'weekdays from 9 Eastern, to 5 by one list of 2024, to 10 by another',
  source: 'farm-progress-help-lines',
  also: ['maine-farmland-trust-2024'],
};
const farmStressLine: HelpLine = {
  who: 'A farm-stress line for CO, CT, MO, MT, OR, PA, TX, VA, WA and WY (list of 2024)',
  reach: 'call or text 833-897-2474',
  hours: 'day and night',
  source: 'farm-progress-help-lines',
};
/** In the order in which they are shown. */
export const nationalLines: readonly HelpLine[] = [crisisLine, emergencyLine, farmLine, farmStressLine];

const between = '[\\s.\\/()\u2010-\u2014-]{0,3}';
/**
 * A whole number to call, with whatever stands between its digits: ten digits or seven, with or without the 1 before them; with a plus, 7 to 15
 * as the international plan has them (ITU-T E.164 gives at most 15); or one of the lines of three digits. Hours, years and half a number are none.
 */
export const numberToCall = new RegExp(
  `(?<!\\d|\\d[.-])(?:(?:\\+?1${between})?(?:\\(?[2-9]\\d\\d${between})?[2-9]\\d\\d${between}\\d{4}|\\+[2-9](?:${between}\\d){6,14}|[2-9]11|988)(?![.-]?\\d)`,
);
/** What a phone dials of a line; nothing where no whole number stands in it. */
export const dialsOf = (reach: string): string | undefined => numberToCall.exec(reach)?.[0].replace(/[^+\d]/g, '');

/** A line in three pieces, the number apart, so that a phone can dial it; `dials` is the same without what stands between its digits. Throws a RangeError where there is no whole number. */
export function dialed({ who, reach, hours }: HelpLine): {
  readonly before: string;
  readonly number: string;
  readonly dials: string;
  readonly after: string;
} {
  const found = numberToCall.exec(reach);
  if (!found) throw new RangeError(`A line to call needs a number, got “${reach}”`);
  const [number] = found;
  return {
    before: `${who}: ${reach.slice(0, found.index)}`,
    number,
    dials: dialsOf(reach) ?? number,
    after: `${reach.slice(found.index + number.length)}${hours === undefined ? '' : `, ${hours}`}.`,
  };
}

const dials = (line: HelpLine) => ({ text: dialed(line).number, dials: dialed(line).dials });
/** The lines in one sentence, in pieces; a piece that `dials` is a number. For a note, and right under an answer. */
export const shortHelp: readonly { readonly text: string; readonly dials?: string }[] = [
  { text: 'If it weighs on you: call or text ' },
  dials(crisisLine),
  { text: ', day and night; ' },
  dials(farmLine),
  { text: ' for farmers; danger now, ' },
  dials(emergencyLine),
  { text: '.' },
];
export const shortHelpText: string = shortHelp.map(({ text }) => text).join('');
