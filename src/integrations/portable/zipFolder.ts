import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Zippable, zipSync } from 'fflate';
import { builtFiles } from '../builtFiles.ts';

/** Unix, as a zip says by what rules the bits of its files are meant. */
const unix = 3;
const bits = (file: string): number => (/\.(?:sh|command)$/.test(file) ? 0o100755 : 0o100644);

/** All files below `root` in one zip, inside a folder `name`. The same files and the same day (`2026-11-29`) give the same bytes. */
export function zipFolder(root: string, name: string, day: string): Uint8Array {
  // A zip keeps local time: noon of that day wherever it is made.
  const mtime = new Date(`${day}T12:00:00`);
  const entries: Zippable = Object.fromEntries(
    builtFiles(root).map((file) => [`${name}/${file}`, [readFileSync(join(root, file)), { os: unix, attrs: bits(file) * 2 ** 16, mtime }]]),
  );
  return zipSync(entries, { level: 9 });
}
