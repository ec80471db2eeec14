import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { attributes, dist, filesOf, textOf } from '../site/builtSite.ts';
import { build } from '../support/build.ts';

const fingerprints = (folder: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    filesOf(folder, /./).map((file) => [
      file,
      createHash('sha256')
        .update(readFileSync(join(folder, file)))
        .digest('hex'),
    ]),
  );

test('a second build gives the same bytes', () => {
  // On the same day, should midnight pass between the two.
  const [day] = attributes(textOf(dist, 'calculators/storm-runoff/index.html'), 'data-built');
  const again = build('dist-again', { SOURCE_DATE_EPOCH: String(Date.parse(`${day}T12:00`) / 1000) });
  expect(fingerprints(again)).toEqual(fingerprints(dist));
});
