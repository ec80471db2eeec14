import { rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { builtFiles, readText } from './builtFiles.ts';

/** Assets that no built file names: the runtime for islands, which this site does without, is emitted all the same. */
export function dropUnused(root: string): readonly string[] {
  const files = builtFiles(root);
  const texts = files.filter((file) => /\.(html|css|js)$/.test(file)).map((file) => ({ file, text: readText(root, file) }));
  const unused = files.filter(
    (file) => file.startsWith('_astro/') && !texts.some((other) => other.file !== file && other.text.includes(basename(file))),
  );
  for (const file of unused) rmSync(join(root, file));
  // What only an unused file named is unused as well.
  return unused.length === 0 ? unused : [...unused, ...dropUnused(root)];
}
