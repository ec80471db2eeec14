import { countries } from './local.ts';

const talks = countries.map(({ slug, values: { talkToSomeone } }) => ({ slug, ...talkToSomeone }));
const nearWords = [...new Set(talks.map(({ near }) => near))];

/** The people close by, where every country says it in the same words. */
export const sharedNear: string | undefined = nearWords.length === 1 ? nearWords[0] : undefined;
/** What goes with one country only. */
export const ownLines = talks.map(({ slug, near, lines }) => ({ slug, lines, near: sharedNear === undefined ? near : undefined }));
/** Whether anything of it depends on the country that was picked. */
export const talkDiffers: boolean = ownLines.some(({ lines, near }) => lines.length > 0 || near !== undefined);
