import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { filesBelow, root } from '../support/files.ts';

/** The parts that a sheet can be wrong in; the build checks the rest. */
const partSchema = v.object({
  kind: v.string(),
  title: v.optional(v.string()),
  fields: v.optional(v.array(v.object({ label: v.string(), sixths: v.number() })), []),
  columns: v.optional(v.array(v.object({ name: v.string(), percent: v.optional(v.number(), 0) })), []),
  groups: v.optional(v.array(v.tuple([v.string(), v.number()])), []),
  rows: v.optional(v.union([v.number(), v.array(v.string())]), 0),
  blocked: v.optional(v.array(v.tuple([v.string(), v.number()])), []),
});
const sheetSchema = v.object({ title: v.string(), parts: v.array(partSchema), calculators: v.array(v.string()), guides: v.array(v.string()) });

const sheets = filesBelow('content/sheets', /\.json$/).map((path) => ({
  slug: basename(path, '.json'),
  ...v.parse(sheetSchema, JSON.parse(readFileSync(join(root, path), 'utf8'))),
}));

it.each([
  ...['rain-gauge-year', 'slake-test', 'ring-test', 'forage-clips', 'cover-count', 'grazing-record', 'pasture-walk', 'demonstration'],
  ...['hay-inventory', 'water-stakes', 'body-condition', 'cull-list', 'drought-plan'],
])('there is a sheet %s, which guides lead to', (slug) => {
  expect(sheets.map((sheet) => sheet.slug)).toContain(slug);
});

describe.each(sheets)('the sheet $slug', ({ parts, calculators, guides }) => {
  const fields = parts.flatMap((part) => part.fields);

  it('asks where, when and who, and for nobody’s client', () => {
    const labels = fields.map(({ label }) => label).join('\n');
    expect(labels).toMatch(/field|pasture|place|stands at|herd/i);
    expect(labels).toMatch(/date|year|season/i);
    expect(labels).toMatch(/who|read by/i);
    expect(labels).not.toMatch(/client|owner|producer|address|phone|e-?mail|coordinates/i);
  });

  it('asks for rain or weather', () => {
    const asked = [...fields.map(({ label }) => label), ...parts.flatMap(({ columns }) => columns.map(({ name }) => name))].join('\n');
    expect(asked).toMatch(/rain|weather|snow|gauge/i);
  });

  it('has columns that can be told apart and fit the table', () => {
    for (const { columns, groups, blocked, rows } of parts.filter(({ kind }) => kind === 'table')) {
      expect(new Set(columns.map(({ name }) => name)).size).toBe(columns.length);
      expect(columns.reduce((sum, { percent }) => sum + percent, 0)).toBeLessThanOrEqual(100);
      if (groups.length > 0) expect(groups.reduce((sum, [, span]) => sum + span, 0)).toBe(columns.length);
      for (const [name, row] of blocked) {
        expect(columns.map((column) => column.name)).toContain(name);
        expect(row).toBeLessThanOrEqual(typeof rows === 'number' ? rows : rows.length);
      }
    }
  });

  it('leads on', () => {
    expect(calculators.length + guides.length).toBeGreaterThan(1);
  });
});

it('the sheet of water stakes asks how far down the water is on the marks, as the form of stock water does, and no stretch of bank', () => {
  // What empties a pond is told by a fall of its level, and a bank of any slope makes another stretch of it: the guide’s drawing measures on the stake.
  const [readings] = sheets.filter(({ slug }) => slug === 'water-stakes').flatMap(({ parts }) => parts.filter(({ kind }) => kind === 'table'));
  expect(readings?.title).toMatch(/water on the marks of the stake/);
  expect(readings?.columns.map(({ name }) => name).slice(0, 3)).toEqual(['Date', 'Water is down, in', 'Fell since last week, in']);
});
