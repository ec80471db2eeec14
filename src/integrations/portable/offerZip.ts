import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { megabytes } from '../../copy/copyWords.ts';
import { readText } from '../builtFiles.ts';

/** The page that offers the zip, and what stands on it until there is one. */
const page = 'from-a-folder/index.html';
const told: Readonly<Record<string, (zip: Uint8Array) => string>> = {
  ZIP_SIZE: (zip) => megabytes(zip.length),
  ZIP_CHECKSUM: (zip) => createHash('sha256').update(zip).digest('hex'),
};

/**
 * Puts the zip of the folder into the built site, and its size and checksum onto the page that offers it. The folder itself has no such line.
 * @throws Error where the page has no place for them
 */
export function offerZip(root: string, zip: Uint8Array): void {
  writeFileSync(join(root, 'portable.zip'), zip);
  const html = Object.entries(told).reduce(
    (text, [mark, say]) => {
      if (!text.includes(mark)) throw new Error(`${page} has no ${mark}`);
      return text.replace(mark, say(zip));
    },
    readText(root, page),
  );
  writeFileSync(join(root, page), html);
}
