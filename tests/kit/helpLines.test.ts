import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import { dialed, nationalLines, shortHelp, shortHelpText } from '../../calculators/kit/helpLines.ts';
import { noteOf } from '../../calculators/kit/note.ts';
import { root } from '../support/files.ts';
import { faultOfWeighing } from '../support/weighing.ts';
import kitchenSink from './kitchenSink.ts';

describe('lines to call', () => {
  it('begin with the crisis line, then the emergency number', () => {
    expect(nationalLines.map((line) => dialed(line).number).slice(0, 2)).toEqual(['988', '911']);
  });
  // Numbers as printed by the sources of the lines; 911 is common practice.
  it('dial what is printed', () => {
    expect(nationalLines.map((line) => dialed(line).number)).toEqual(['988', '911', '1-800-327-6243', '833-897-2474']);
    expect(() => dialed({ who: 'Nobody', reach: 'write a letter', source: 'from memory' })).toThrow(/needs a number/);
  });
  it('say hours only day and night, or with the date of the list', () => {
    for (const { hours } of nationalLines) expect(hours ?? 'day and night').toMatch(/day and night|list of 20\d\d/);
    for (const { who, reach } of nationalLines) if (reach.includes('833')) expect(who).toMatch(/for [A-Z]{2}, .*\(list of 20\d\d\)/);
  });
  it('name their sources', () => {
    for (const key of nationalLines.flatMap(({ source, also = [] }) => [source, ...also]))
      expect(key === 'common practice' || existsSync(join(root, `content/sources/${key}.json`)), key).toBe(true);
  });
  it('stand short in a note, numbers apart', () => {
    expect(shortHelpText).toMatch(/^If it weighs on you: call or text 988, day and night; .*911\.$/);
    expect(shortHelp.flatMap(({ dials }) => dials ?? [])).toEqual(['988', '1-800-327-6243', '911']);
  });
});

describe('a calculation that weighs on people', () => {
  const weighs = { ...kitchenSink, weighsOnPeople: true };
  const outcome = runQuery(kitchenSink, '');

  it('has whom to call in its note, once for two sides', () => {
    expect(noteOf(kitchenSink, outcome)).toBe(outcome.note);
    expect(noteOf(weighs, outcome, outcome).split(shortHelpText)).toHaveLength(2);
  });
  it.each([
    'Sell the open cows first.',
    'Take stock off before the stop height.',
    'Pull stock when the date has passed.',
    'Stop grazing it now.',
    'Wean calves early.',
  ])('must say so: %s', (say) => {
    const telling = { ...kitchenSink, cautions: [{ lead: 'So.', life: false, say, source: 'common practice' }] };
    expect(faultOfWeighing(telling)).toMatch(/needs `weighsOnPeople: true`/);
    expect(faultOfWeighing({ ...telling, weighsOnPeople: true })).toBeUndefined();
  });
  it('need not where nothing is given up', () => {
    expect(faultOfWeighing(kitchenSink)).toBeUndefined();
    expect(faultOfWeighing({ ...kitchenSink, slug: 'herd-intake' })).toMatch(/take it off the list/);
  });
});
