import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Counts, countsOf } from '../../copy/copyIndex.ts';
import { builtFiles } from '../builtFiles.ts';
import { copyOf } from './copyOf.ts';

/** Writes the copy for the phone into a built site: packs under `copy/`, and `worker.js`. Says what of it comes first and what it is in all. */
export function writeCopy(root: string): { readonly core: Counts; readonly whole: Counts; readonly packs: number } {
  rmSync(join(root, 'copy'), { recursive: true, force: true });
  const { index, packs, worker } = copyOf(builtFiles(root), (file) => readFileSync(join(root, file)));
  mkdirSync(join(root, 'copy'));
  for (const [file, bytes] of packs) writeFileSync(join(root, file), bytes);
  writeFileSync(join(root, 'worker.js'), worker);
  return { core: countsOf(index.parts.filter(({ stage }) => stage !== 'rest')), whole: countsOf(index.parts), packs: packs.size };
}
