import { describe, expect, it } from 'vitest';
import { calendarFile } from '../../calculators/ui/calendarFile.ts';
import { helpText } from '../../calculators/ui/helpText.ts';
import { linesText, officeSaid } from '../../src/office/said.ts';
import { asText } from '../../src/place/visit/asText.ts';
import { outgoing } from '../../src/place/visit/audience.ts';
import { blocksOf } from '../../src/place/visit/blocks.ts';
import { calendarDays } from '../../src/place/visit/calendarDays.ts';
import { facts } from '../place/aVisit.ts';
import { anOffice } from './anOffice.ts';

const said = officeSaid(anOffice, true);

describe('what an office says of itself', () => {
  it('is its name with its phone, the month of its values, its copy and its lines', () => {
    expect(said).toEqual({
      name: 'Example County office, 555-0100',
      valuesOf: 'Sep 2026',
      copyAt: 'https://office.example/pasture/',
      lines: anOffice.values.talkToSomeone.lines,
      near: 'Your own doctor, a neighbor, the Example County office.',
    });
    expect(linesText(said)).toBe('Example County farm-stress line: call or text 555-0199, weekdays 8 to 5.');
  });
  it('has its lines a line each, in the order in which the office gave them', () => {
    const { talkToSomeone } = anOffice.values;
    const [line] = talkToSomeone.lines;
    if (line === undefined) throw new TypeError('no line');
    const lines = ['Zeta line', line.who, 'Alpha line'].map((who) => ({ ...line, who }));
    expect(linesText({ lines }).split('\n')).toEqual(
      ['Zeta line', 'Example County farm-stress line', 'Alpha line'].map((who) => `${who}: call or text 555-0199, weekdays 8 to 5.`),
    );
    expect(officeSaid({ ...anOffice, values: { ...anOffice.values, talkToSomeone: { ...talkToSomeone, lines } } }, true).lines).toEqual(lines);
  });
  it('is no name of a phone that it does not give, and an address has its last stroke', () => {
    const { phone: _, ...head } = anOffice.head;
    expect(officeSaid({ ...anOffice, head: { ...head, copyAt: 'https://office.example/p' } }, true)).toMatchObject({
      name: 'Example County office',
      copyAt: 'https://office.example/p/',
    });
  });
  it('has no lines where somebody has picked another kind of country', () => {
    const elsewhere = officeSaid(anOffice, false);
    expect([elsewhere.lines, elsewhere.near]).toEqual([[], '']);
    expect(linesText(elsewhere)).toBe('');
  });
});

describe('a note made in the copy of an office', () => {
  it.each(['producer', 'office'] as const)(
    'names it in its head and where a copy is, and its lines before the national ones, for the %s',
    (audience) => {
      const text = asText(outgoing(facts({ office: said }), audience));
      expect(text).toContain('Office: Example County office, 555-0100');
      expect(text).toContain('the copy of Example County office, 555-0100, with its values of Sep 2026');
      expect(text).toContain('a neighbor');
      expect(text.indexOf('555-0199')).toBeGreaterThan(0);
      expect(text.indexOf('555-0199')).toBeLessThan(text.indexOf('988'));
    },
  );
  it('keeps the national lines, whatever the office gives', () => {
    const numbers = (office?: typeof said) =>
      blocksOf(facts(office === undefined ? {} : { office }))
        .filter(({ kind }) => kind === 'talk')
        .flatMap(({ lines }) => lines.flatMap((line) => line.flatMap(({ href }) => href ?? [])));
    expect(numbers(said)).toEqual(['tel:5550199', ...numbers()]);
    expect(numbers().length).toBeGreaterThan(2);
  });
  it('says nothing of one where there is none', () => {
    const text = asText(outgoing(facts(), 'producer'));
    expect(text).not.toContain('Office:');
    expect(text).not.toContain('the copy of');
  });
  it('has the office in each entry of its calendar', () => {
    const of = facts({ office: said });
    const file = calendarFile('visit-v1', calendarDays(of, 'producer', outgoing(of, 'producer'), of.visit.day), of.office?.name).replaceAll(
      /\r?\n[ \t]/g,
      '',
    );
    expect(file.match(/DESCRIPTION:Example County office\\, 555-0100/g)).toHaveLength(3);
  });
});

it('puts the office’s lines before the national ones on paper, and takes none of those away', () => {
  const national = helpText(undefined);
  expect(national).toContain('988');
  expect(helpText('Ours: 555-0199.\nOthers: 555-0188.')).toBe(`Ours: 555-0199. Others: 555-0188. ${national}`);
});
