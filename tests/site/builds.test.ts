import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeOffice } from '../../src/office/model/officeFile.ts';
import { anOffice } from '../office/anOffice.ts';
import { build } from '../support/build.ts';
import { root } from '../support/files.ts';

const buildLimitMs = 240_000;

// Whole builds, twice and for a folder, are compared in tests/release.
describe('a build', () => {
  it('stops at a wrong file of an office, with the sentence that its page says', { timeout: buildLimitMs }, () => {
    const given = join(root, 'node_modules/.cache/tests/wrong-office.css');
    mkdirSync(dirname(given), { recursive: true });
    writeFileSync(given, writeOffice(anOffice).replace('"likelyUsdPerTon": 165', '"likelyUsdPerTon": "abc"'));
    expect(() => build('dist-wrong', { HOLDWATER_OFFICE: given })).toThrow(
      /Line \d+, Hay, likely: “abc” is no number; write dollars a ton, such as 165\./,
    );
    expect(existsSync(join(root, 'dist-wrong'))).toBe(false);
  });
});
