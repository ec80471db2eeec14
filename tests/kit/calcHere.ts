// The command, run as a person runs it, and files for it to read.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { root } from '../support/files.ts';

/** Gone when the tests of a file are through. */
export function ownFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'calc-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  return folder;
}
export function calc(...args: string[]): { readonly out: string; readonly err: string; readonly status: number | null } {
  const { stdout, stderr, status } = spawnSync(process.execPath, ['calculators/command.ts', ...args], { cwd: root, encoding: 'utf8' });
  return { out: stdout, err: stderr, status };
}
export const wideBytes = (text: string): Buffer => Buffer.from(`\ufeff${text}`, 'utf16le');
export const tablesIn =
  (folder: string) =>
  (name: string, text: string | Buffer): string => {
    const path = join(folder, name);
    writeFileSync(path, text);
    return path;
  };
