import { copyFileSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { handbookFolder, handbookIn } from '../site/handbook.ts';

/** Puts the book beside the pages, where a host has made it. */
export function putHandbook(root: string): void {
  const files = handbookIn(handbookFolder);
  if (files.length > 0) mkdirSync(join(root, 'handbook'), { recursive: true });
  for (const { file } of files) copyFileSync(join(handbookFolder, file), join(root, 'handbook', file));
}
