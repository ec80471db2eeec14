import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Where `npm run book` leaves the book, and a build looks for it. */
export const handbookFolder = join(process.cwd(), 'handbook');

const names: Readonly<Record<string, string>> = {
  'holdwater-letter.pdf': 'PDF for letter paper',
  'holdwater-a4.pdf': 'PDF for A4 paper',
  'holdwater.epub': 'EPUB for phones and reading tablets',
};
/** One form of the book that a host has made. */
export interface HandbookFile {
  readonly file: string;
  readonly name: string;
  readonly bytes: number;
}
/** The book in the forms that stand in a folder; none where nobody made it. Files of other names are left alone. */
export const handbookIn = (folder: string): readonly HandbookFile[] =>
  (existsSync(folder) ? readdirSync(folder).sort() : []).flatMap((file) => {
    const name = names[file];
    return name === undefined ? [] : [{ file, name, bytes: statSync(join(folder, file)).size }];
  });
