// What the licenses of others ask for: to be named, with their words, where their work is handed on.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as v from 'valibot';
import { shippedPackages } from './shippedPackages.ts';

export interface License {
  readonly name: string;
  readonly version: string;
  /** As SPDX writes it. */
  readonly license: string;
  readonly text: string;
}

const description = v.object({
  version: v.string(),
  license: v.string(),
  author: v.optional(
    v.union([
      v.string(),
      v.pipe(
        v.object({ name: v.string() }),
        v.transform(({ name }) => name),
      ),
    ]),
  ),
});

/**
 * A package as it is installed, with the text of its license, or with what its description says where it brings no text along.
 * @throws Error where it says no license, or no text and no author either
 */
export function licenseOf(name: string, packages = 'node_modules'): License {
  const folder = join(packages, name);
  const { version, license, author } = v.parse(description, JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')));
  const file = readdirSync(folder).find((each) => /^(?:licen[cs]e|copying)(?:\.(?:md|txt))?$/i.test(each));
  if (file !== undefined) return { name, version, license, text: readFileSync(join(folder, file), 'utf8').trim() };
  if (author === undefined) throw new Error(`${name} names neither its license's text nor its author`);
  return { name, version, license, text: `${name} brings no text of its license. Its description says: ${license}, by ${author}.` };
}
export const shippedLicenses = (): readonly License[] => shippedPackages.map((name) => licenseOf(name));
