import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asText } from '../../src/place/visit/asText.ts';
import { isForOffice, outgoing } from '../../src/place/visit/audience.ts';
import { calculators } from '../support/catalog.ts';
import { withPasture } from './aPlace.ts';
import { aNote, aResult, aVisit, facts } from './aVisit.ts';
import { calendar, outputs } from './sentNote.ts';

describe('the copy for the office', () => {
  // The guide on follow-up notes tells office and producer the same.
  it('holds soil, cover and runoff as they come, and nothing of money, herd, feed or plans until it is ticked', () => {
    const goes = calculators.flatMap(({ slug }) => (isForOffice({ id: `result-${slug}`, kind: 'result', slug }, facts()) ? [slug] : []));
    expect(goes.toSorted()).toEqual([
      'cover-count',
      'packed-soil',
      'ponding',
      'rain-demonstration',
      'ring-test',
      'slake-test',
      'soil-loss',
      'stored-water',
      'storm-runoff',
    ]);
    const guide = readFileSync(new URL('../../content/guides/writing-follow-up.mdx', import.meta.url), 'utf8');
    for (const told of ['soil, ground cover, runoff and soil water', 'money, the herd, feed or plans for grazing until you tick it'])
      expect(guide).toContain(told);
  });
  const names = ['Tanner', 'Home place', 'Ana', 'Reyes', 'Kit', 'Moss', 'Lou', 'Sandoval', 'Low bench', 'High bench'];
  const everything = aNote({
    placeCode: 'P-17',
    blocks: ['said', 'result-r2', 'result-r1', 'seen', 'agreed', 'next'].map((id) => ({ id, isForOffice: true })),
  });
  it.each(names)('has no “%s” in any output, whatever is ticked', (name) => {
    const all = outputs(facts({ note: everything }), 'office');
    expect(all.filter((text) => new RegExp(`\\b${name}\\b`, 'iu').test(text))).toEqual([]);
    // The same search finds it where it may be.
    expect(outputs(facts(), 'producer').some((text) => new RegExp(`\\b${name}\\b`, 'iu').test(text))).toBe(true);
  });
  it('has no name in words that somebody put in place of others', () => {
    const note = aNote({ blocks: [{ id: 'seen', text: 'Moss’s HIGH BENCH is bare, says ana reyes' }] });
    expect(asText(outgoing(facts({ note }), 'office'))).toContain('Someone’s pasture 2 is bare, says someone');
  });
  it.each([
    [
      'High bench is half bare. Kit says the High bench ran. The Tanner Home place looks better.',
      'Pasture 2 is half bare. Someone says pasture 2 ran. A place looks better.',
    ],
    ['We saw the Tanner Home place.\nLow bench holds.\n- the Moss well is low', 'We saw a place.\nPasture 1 holds.\n- A water point is low'],
    ['It is an old bench; Ana looked at “the Low bench”.', 'It is an old bench; someone looked at “pasture 1”.'],
  ])('reads well where names are replaced: %#', (seen, told) => {
    expect(asText(outgoing(facts({ visit: aVisit({ seen }) }), 'office'))).toContain(`\n${told}\n`);
  });
  it('keeps every number and every word that nobody typed, whatever the paddocks, waters and people are called', () => {
    const of = facts();
    const paddocks = ['1', '2', '3', '4', '5', '6', '7', '8', '9', 'A'].map((name) => ({ id: `p${name}`, name, areaAc: 4 }));
    const place = { ...withPasture(of.place, 'low', { paddocks }), water: [{ id: 'w1', name: 'Well' }] };
    const numbersIn = (text: string): readonly string[] => (text.match(/\d+(?:[.,:]\d+)*/g) ?? []).toSorted();
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 4 }), fc.integer({ min: 1, max: 9 }), (counts, one) => {
        const words = `The bench will heal and mark ${counts.join(', ')} spots; paddock ${one} is done well.`;
        const result = aResult({
          note: `Will Mark 1 yield 2 to ${one} tons/ac? Well over ${counts.join('-')}.`,
          shown: [{ label: `Mark ${one}`, text: `${counts[0]} lb/ac` }],
          sources: [`Will, M. Table ${one}.8-9, Mark Press`],
        });
        const visit = aVisit({
          by: 'Will',
          present: 'Mark',
          pastureIds: [],
          spots: undefined,
          seen: words,
          said: words,
          steps: [{ id: 's1', what: words, who: 'Mark' }],
        });
        const all = { ...of, place, visit, results: [{ ...result, pastureIds: [] }], note: everything };
        const office = asText(outgoing(all, 'office'));
        expect(numbersIn(office.replaceAll('P-17', ''))).toEqual(numbersIn(asText(outgoing(all, 'producer'))));
        for (const kept of [words, result.note, `Mark ${one}: ${counts[0]} lb/ac`, `Table ${one}.8-9, Mark Press`, '1-800-FARM-AID'])
          expect(office).toContain(kept);
      }),
    );
    // A name that is spelled as one is found all the same.
    const told = outgoing({ ...of, place, visit: aVisit({ present: 'Will', seen: 'Here Will saw it.' }) }, 'office');
    expect(asText(told)).toContain('Here someone saw it.');
  });
  it('has no name in what two managements were called', () => {
    const result = aResult({
      sides: ['Moss way', 'Rest'],
      note: 'Moss way: 4 in\nRest: 2 in',
      shown: [{ label: 'Moss way: Rate', text: '4 in/hr' }],
    });
    const text = asText(outgoing(facts({ results: [result], note: everything }), 'office'));
    expect(text).toContain('Someone way: 4 in\nRest: 2 in');
    expect(text).toContain('Someone way: Rate: 4 in/hr');
  });
  it('has tests and no money, nothing that was said, and no who, until they are ticked', () => {
    const text = asText(outgoing(facts(), 'office'));
    expect(text).toContain('Middle rate');
    expect(text).toContain('by Jul 20, 2026');
    for (const each of ['$412', 'cows are home', 'Decide by']) expect(text + calendar(facts(), 'office')).not.toContain(each);
    const ticked = asText(outgoing(facts({ note: everything }), 'office'));
    for (const each of ['$412', 'cows are home', 'P-17', 'pasture 1 and pasture 2']) expect(ticked).toContain(each);
  });
  it('calls a pasture that was taken away since by the name that it had, and the office’s copy by none', () => {
    const of = facts();
    const [low, ...pastures] = of.place.pastures;
    if (!low) throw new RangeError('no pasture');
    const gone = { ...of, place: { ...of.place, pastures, pasturesTakenAway: [{ id: low.id, name: low.name }] } };
    expect(asText(outgoing(gone, 'producer'))).toContain('Pastures: High bench and Low bench');
    const office = asText(outgoing({ ...gone, note: everything }, 'office'));
    expect(office).toContain('Pastures: pasture 1 and a pasture that was taken away');
    expect(office).not.toMatch(/low bench/i);
    // It came back: told once.
    const back = { ...gone, place: { ...gone.place, pastures: of.place.pastures } };
    expect(asText(outgoing(back, 'producer'))).toContain('Pastures: Low bench and High bench');
  });
  it('calls pastures by name where that is ticked', () => {
    const text = asText(outgoing(facts({ note: aNote({ hasPastureNames: true }) }), 'office'));
    expect(text).toContain('Low bench and High bench');
    expect(text).not.toContain('Reyes');
  });
  it('says before it goes what is in it and what is left out', () => {
    const { has, leavesOut } = outgoing(facts(), 'office').told;
    expect(has).toContain('pastures by number');
    expect(leavesOut).toBe('names of people and of the place; pasture 2: Feed or sell; What you said');
  });
});
