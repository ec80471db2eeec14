import type { HelpLine } from '../content/local/schema.ts';
import { countries } from './local.ts';

const lineText = ({ who, reach, hours }: HelpLine): string => `${who}: ${reach}, ${hours}.`;

/** A line in three pieces, the number apart, so that a phone can dial it. */
export function dialled(line: HelpLine): { readonly before: string; readonly number: string; readonly after: string } {
  const number = /\d[\d-]+\d/.exec(line.reach)?.[0] ?? '';
  const [before = '', ...after] = line.reach.split(number);
  return { before: `${line.who}: ${before}`, number, after: `${after.join(number)}, ${line.hours}.` };
}

const talks = countries.map(({ slug, values: { talkToSomeone: talk } }) => ({ slug, near: talk.near, lines: [talk.national, ...talk.others] }));
const isEverywhere = (line: HelpLine): boolean => talks.every(({ lines }) => lines.some((each) => lineText(each) === lineText(line)));
const nearWords = [...new Set(talks.map(({ near }) => near))];

/** Lines that every kind of country has: they stand once, whatever was picked. */
export const sharedLines: readonly HelpLine[] = (talks[0]?.lines ?? []).filter(isEverywhere);
/** The people close by, where every country says it in the same words. */
export const sharedNear: string | undefined = nearWords.length === 1 ? nearWords[0] : undefined;
/** What goes with one country only. */
export const ownLines = talks.map(({ slug, near, lines }) => ({
  slug,
  lines: lines.filter((line) => !isEverywhere(line)),
  near: sharedNear === undefined ? near : undefined,
}));
/** Whether anything of it hangs on the country that was picked. */
export const talkDiffers: boolean = ownLines.some(({ lines, near }) => lines.length > 0 || near !== undefined);
