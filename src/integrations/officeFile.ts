import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { officeFileName, readOfficeFile } from '../office/model/officeFile.ts';

/** An office's own file, for a build to put in: `HOLDWATER_OFFICE` names it. */
const given = process.env['HOLDWATER_OFFICE'];

/**
 * The text of the office's file, if the build was given one.
 * @throws Error in the sentences that the page says of it
 */
export function officeForBuild(path: string | undefined = given): string | undefined {
  if (path === undefined || path === '') return undefined;
  const text = readFileSync(resolve(path), 'utf8');
  const read = readOfficeFile(text);
  if (read.is === 'wrong') throw new Error(`${path} cannot be used.\n${read.say.map((each) => `  ${each}`).join('\n')}`);
  return text;
}
/** Puts it where the empty one stands. */
export function putOffice(root: string, text: string | undefined): void {
  if (text !== undefined) writeFileSync(join(root, officeFileName), text);
}
