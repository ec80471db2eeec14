import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runQuery } from '../../calculators/kit/cases.ts';
import { dialed, dialsOf, nationalLines, shortHelp, shortHelpText } from '../../calculators/kit/helpLines.ts';
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
  // How numbers of the North American plan are written (NANP, common practice): the area code in brackets, dots, spaces, with or without its 1.
  it.each([
    ['call (406) 555-0199', '4065550199'],
    ['24 hours: 406.555.0111', '4065550111'],
    ['call 406 555 0199 24 hours', '4065550199'],
    ['call 555-0199 24 hours', '5550199'],
    ['+1 (406) 555-0199, ext. 12', '+14065550199'],
    ['call 1\u2011406\u2013555\u20110199', '14065550199'],
    ['call 4065550199', '4065550199'],
    ['1-800-FARM-AID, 1-800-327-6243', '18003276243'],
    ['+44 20 7946 0958', '+442079460958'],
    ['24/7: call 211', '211'],
    ['call or text 988 or 406-555-0199', '988'],
  ])('dial the whole number of “%s”', (reach, dials) => {
    expect(dialsOf(reach)).toBe(dials);
    expect(dialed({ who: 'Ours', reach, source: 'common practice' }).dials).toBe(dials);
  });
  it.each(['24 hours', 'call 406', 'call 12-34', 'room 555-01', 'since 2019', '1-800-FARM-AID', 'call 406-555-01990', '456-406-555-0199'])(
    'find none in “%s”',
    (reach) => expect(dialsOf(reach)).toBeUndefined(),
  );
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
    expect(shortHelp.flatMap(({ dials }) => dials ?? [])).toEqual(['988', '18003276243', '911']);
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
