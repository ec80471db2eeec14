import ICAL from 'ical.js';
import type { Nodes } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { describe, expect, it } from 'vitest';
import { moistureFeels } from '../../src/place/model/visit.ts';
import { putInOf } from '../../src/place/ui/putInOf.ts';
import { asMarkdown, markdownTree } from '../../src/place/visit/asMarkdown.ts';
import { asText } from '../../src/place/visit/asText.ts';
import { outgoing } from '../../src/place/visit/audience.ts';
import { blocksOf, type Facts, groundWords, wetnessInLink } from '../../src/place/visit/blocks.ts';
import { calculatorOf } from '../support/catalog.ts';
import { aNote, aResult, aVisit, facts } from './aVisit.ts';
import { calendar, outputs } from './sentNote.ts';

const ids = (of: Facts): readonly string[] => blocksOf(of).map(({ id }) => id);

describe('a follow-up note', () => {
  it('has its parts in the given order, with the last five that nobody takes out', () => {
    expect(ids(facts())).toEqual([
      'head',
      'seen',
      'result-r1',
      'result-r2',
      'said',
      'agreed',
      'next',
      'cautions',
      'talk',
      'planning',
      'sources',
      'copies',
    ]);
    const asked = aNote({ blocks: blocksOf(facts()).map(({ id }) => ({ id, text: 'gone', isLeftOut: true })) });
    const left = blocksOf(facts({ note: asked })).filter(({ isLeftOut }) => !isLeftOut);
    expect(left.map(({ id }) => id)).toEqual(['head', 'cautions', 'talk', 'planning', 'sources', 'copies']);
    expect(left.flatMap(({ text }) => (text === undefined ? [] : [text]))).toEqual([]);
    for (const audience of ['producer', 'office'] as const) {
      const text = asText(outgoing(facts({ note: asked }), audience));
      for (const kept of ['look again before you act', '988', 'THESE ARE PLANNING FIGURES', 'https://example.org/field/'])
        expect(text, audience).toContain(kept);
    }
  });
  it('says each caution once, whichever results it stood with', () => {
    const [cautions] = blocksOf(facts()).filter(({ kind }) => kind === 'cautions');
    expect(cautions?.lines.map(([run]) => run?.text)).toEqual([
      'Call 811 a few days before you drive a ring.',
      'Look at this week’s prices before you sell.',
    ]);
  });
  it('says which of several grounds a caution is about, and none where it is about all of them', () => {
    const [ring, selling] = facts().results;
    if (ring === undefined || selling === undefined) throw new RangeError('no results');
    const said = (audience: 'producer' | 'office') =>
      outgoing(facts({ results: [ring, { ...selling, pastureIds: ['low'], slug: 'ponding' }] }), audience)
        .blocks.find(({ kind }) => kind === 'cautions')
        ?.lines.map(([run]) => run?.text);
    const both = 'Call 811 a few days before you drive a ring.';
    expect(said('producer')).toEqual([both, 'Low bench: Look at this week’s prices before you sell.']);
    expect(said('office')).toEqual([both, 'pasture 1: Look at this week’s prices before you sell.']);
  });
  it.each([
    ['the producer, where a result is left out', 'producer', aNote({ blocks: [{ id: 'result-r2', isLeftOut: true }] })],
    ['the office, where nobody ticked it', 'office', undefined],
    ['the office, where it was ticked and is left out', 'office', aNote({ blocks: [{ id: 'result-r2', isLeftOut: true, isForOffice: true }] })],
  ] as const)('tells no caution and no source of a result that stays away: %s', (_, audience, note) => {
    const [ring, selling] = facts().results;
    if (ring === undefined || selling === undefined) throw new RangeError('no results');
    const all = facts({ note, results: [ring, { ...selling, sources: ['What feed costs, 2023'] }] });
    for (const text of outputs(all, audience)) for (const gone of ['before you sell', 'What feed costs']) expect(text).not.toContain(gone);
    const text = asText(outgoing(all, audience));
    for (const kept of ['Call 811 a few days before you drive a ring.', 'A soil test guide, 2024']) expect(text).toContain(kept);
    // Where it goes out they do.
    const ticked = { ...all, note: aNote({ blocks: [{ id: 'result-r2', isForOffice: true }] }) };
    for (const there of ['before you sell', 'What feed costs']) expect(asText(outgoing(ticked, audience))).toContain(there);
  });
  it('says that no caution stood with the results only where there are results', () => {
    const said = (of: Facts) =>
      blocksOf(of)
        .find(({ kind }) => kind === 'cautions')
        ?.lines.map(([run]) => run?.text);
    const calm = facts();
    expect(said({ ...calm, results: calm.results.map((each) => ({ ...each, cautions: [] })) })).toEqual([
      'None stood with these results. Ground, stock and weather decide; look again before you act.',
    ]);
    expect(said({ ...calm, results: [] })).toEqual(['Ground, stock and weather decide; look again before you act.']);
  });
  it('moves its parts as somebody put them, the last five too', () => {
    expect(ids(facts({ note: aNote({ order: ['talk', 'agreed'] }) })).slice(0, 4)).toEqual(['talk', 'agreed', 'head', 'seen']);
  });
  it('takes other words and keeps the figures; the words that it came with can be put back', () => {
    const note = aNote({ blocks: [{ id: 'result-r1', text: 'It takes water well.' }] });
    const [block] = blocksOf(facts({ note })).filter(({ id }) => id === 'result-r1');
    expect(block).toMatchObject({ text: 'It takes water well.', cameWith: 'Ring test, moist ground: 1.2 in/hr.' });
    const text = asText(outgoing(facts({ note }), 'producer'));
    expect(text).toContain('It takes water well.');
    expect(text).toContain('Middle rate: 1.2 in/hr, nearer 0.4 to 0.9 in/hr');
    expect(text).toContain('https://example.org/field/calculators/ring-test/?v=2&bore=6in&rings=4min_9min');
  });
  it('says the wetness of the ground once, and where a test was told another', () => {
    const ring = (moisture: string) => [aResult({ link: `v=2&bore=6in&moisture=${moisture}` })];
    const noteOf = (moisture: string) => asText(outgoing(facts({ results: ring(moisture) }), 'producer'));
    expect(noteOf('moist')).toContain('Ground: moist, 3 days since rain, 0.6 in of rain in five days\n');
    // 0.6 in are 15.24 mm, 12 mm 0.4724 in: an inch is 25.4 mm.
    const rained = (system: 'us' | 'si', fiveDayRainIn: number) => groundWords(aVisit({ ground: { fiveDayRainIn } }), system);
    expect([rained('si', 0.6), rained('si', 12 / 25.4), rained('us', 0.6), rained('us', 12 / 25.4)]).toEqual(
      ['15.2 mm', '12 mm', '0.6 in', '0.472 in'].map((each) => `${each} of rain in five days`),
    );
    expect(asText(outgoing(facts({ system: 'si' }), 'producer'))).toContain('Ground: moist, 3 days since rain, 15.2 mm of rain in five days\n');
    expect(noteOf('moist')).not.toContain('this test was told');
    expect(noteOf('wet')).toContain('The visit says that the ground felt moist; this test was told wet ground.');
    const unsaid = facts({ results: ring('wet'), visit: aVisit({ ground: { daysSinceRain: 0 } }) });
    expect(asText(outgoing(unsaid, 'producer'))).not.toContain('this test was told');
    for (const [slug, name] of Object.entries(wetnessInLink)) {
      const input = calculatorOf(slug).inputs[name];
      expect(input?.kind === 'choice' && Object.keys(input.options), slug).toEqual([...moistureFeels]);
    }
  });
  it('names the pastures that a caution is about, where it is not about all of them', () => {
    const caution = (say: string) => ({ lead: say, say, source: 'common practice' });
    const [call, few] = [caution('Call 811 a few days before.'), caution('Fewer than three rings.')];
    const of = (id: string, ground: string, cautions: readonly (typeof call)[]) => aResult({ id, pastureIds: [ground], cautions: [...cautions] });
    const linesOf = (results: readonly ReturnType<typeof of>[]) =>
      blocksOf(facts({ results }))
        .find(({ id }) => id === 'cautions')
        ?.lines.map((line) => line.map(({ text }) => text).join(''));
    expect(linesOf([of('r1', 'high', [call, few]), of('r2', 'low', [call])])).toEqual([call.say, `High bench: ${few.say}`]);
    expect(linesOf([of('r1', 'high', [call, few]), of('r2', 'high', [call])])).toEqual([call.say, few.say]);
  });
  it('says which words of the visit its changed words do not have, and counts them as left out', () => {
    const note = aNote({
      blocks: [
        { id: 'seen', text: 'Good cover on the flat' },
        { id: 'result-r1', text: 'It takes water.' },
      ],
    });
    const same = facts({ note, visit: aVisit({ seen: 'Good cover' }) });
    const later = facts({ note, visit: aVisit({ seen: 'Good cover\nWATCH: nightshade by the trough' }) });
    const seen = (of: Facts) => blocksOf(of).find(({ id }) => id === 'seen');
    expect(seen(same)?.onlyInVisit).toBeUndefined();
    expect(outgoing(same, 'producer').told.leavesOut).toBe('nothing');
    expect(seen(later)?.onlyInVisit).toEqual(['WATCH: nightshade by the trough']);
    for (const audience of ['producer', 'office'] as const)
      expect(outgoing(later, audience).told.leavesOut, audience).toContain('words of the visit that “What we saw” of this note does not have');
  });
  it('says how to open a result where nobody has told where a copy is', () => {
    const text = asText(outgoing(facts({ base: undefined }), 'producer'));
    expect(text).not.toContain('http');
    expect(text).toContain('in any copy of these pages open “Infiltration rate from a ring test”. What was put in stands where this note was made.');
  });
  it('holds what was put in where no link opens it, so that it can be put in again', () => {
    const one = aResult({ slug: 'slake-test', link: 'soil=clayey&spot=bare&samples.seen=most,by-30' });
    const two = aResult({
      id: 'r3',
      slug: 'storm-runoff',
      link: 'rain=3.7in&area=41ac&ground-cover=55pct&that=same&that.ground-cover=85pct',
      sides: ['Bare', 'Rested'],
    });
    const results = [one, two];
    const putIn = new Map(results.map((each) => [each.id, putInOf(calculatorOf(each.slug), each, 'us')]));
    const text = asText(outgoing(facts({ base: undefined, results, putIn }), 'producer'));
    expect(text).toContain('put these figures in again.');
    for (const told of ['Clayey: sticky', 'In bare spots', 'over 3/4 left', 'gone in 30 seconds', '3.7 in', '41 ac']) expect(text).toContain(told);
    expect(text).toMatch(/Put in: .*: Bare 55 %; Rested 85 %/);
    // With a link nobody types them again.
    expect(asText(outgoing(facts({ results, putIn }), 'producer'))).not.toContain('Put in: ');
  });
});

describe('the copy for the producer', () => {
  it('has all of it', () => {
    const text = asText(outgoing(facts(), 'producer'));
    for (const each of [
      'Tanner Home place',
      'Low bench and High bench',
      'Ana Reyes',
      'Rest it until the Moss cows are home',
      'Kit Moss, by Jul 20, 2026',
      '$412',
      'Sep 1, 2026',
    ])
      expect(text).toContain(each);
  });
});

/** A tree without where it stood in the text. */
function bare(node: Nodes): unknown {
  const { position: _, ...rest } = node;
  const tidy = Object.fromEntries(
    Object.entries(rest).filter(([key, value]) => value !== null && value !== undefined && key !== 'start' && key !== 'children'),
  );
  return 'children' in node ? { ...tidy, children: joined(node.children.map(bare)) } : tidy;
}
/** Words next to words are one. */
function joined(children: readonly unknown[]): readonly unknown[] {
  const all: unknown[] = [];
  for (const each of children) {
    const last = all.at(-1);
    if (isWords(last) && isWords(each)) all.splice(-1, 1, { type: 'text', value: last.value + each.value });
    else all.push(each);
  }
  return all;
}
const isWords = (value: unknown): value is { readonly type: 'text'; readonly value: string } =>
  typeof value === 'object' && value !== null && 'type' in value && value.type === 'text' && 'value' in value && typeof value.value === 'string';

describe('Markdown', () => {
  it.each([
    ['as it comes', facts()],
    ['with words that look like marks', facts({ visit: aVisit({ seen: '# no heading\n- no *list* [x](y) <b>\n1. one_two_', said: '***' }) })],
  ])('reads back as the same tree, %s', (_, of) => {
    for (const audience of ['producer', 'office'] as const) {
      const note = outgoing(of, audience);
      expect(bare(fromMarkdown(asMarkdown(note)))).toEqual(bare(markdownTree(note)));
    }
  });
});

describe('the calendar', () => {
  it('passes a strict reader, with steps, the next look and the days of results', () => {
    const read = new ICAL.Component(ICAL.parse(calendar(facts(), 'producer')));
    const events = read.getAllSubcomponents('vevent').map((each) => new ICAL.Event(each));
    expect(events.map(({ summary, startDate }) => [summary, startDate.toString()])).toEqual([
      ['Rest High bench; Reyes looks in (Kit Moss)', '2026-07-20'],
      ['Next look: Tanner Home place', '2026-09-01'],
      ['Decide by', '2026-07-15'],
    ]);
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(3);
  });
  it('has no step and no next look before the visit itself', () => {
    const [step] = aVisit().steps;
    const visit = aVisit({ steps: step ? [{ ...step, byDay: '2025-07-20' }] : [], nextDay: '2025-09-01' });
    expect(calendar(facts({ visit }), 'producer').match(/SUMMARY.*/g)).toEqual([expect.stringContaining('Decide by')]);
  });
  it('has no day of a result that is past, none of a step that is done, and none that was past when the note was made', () => {
    const titles = (of: Facts, today?: string): readonly string[] => calendar(of, 'producer', today).match(/SUMMARY:[^\r]*/g) ?? [];
    const [step] = aVisit().steps;
    const visit = aVisit({ steps: step ? [{ ...step, isDone: true }] : [], nextDay: undefined });
    const days = ['2026-06-17', '2026-06-20', '2026-07-15'].map((day) => ({ day, title: `Look on ${day}`, text: 'Look.' }));
    const of = facts({ visit, results: [aResult({ days })] });
    expect(titles(of)).toEqual(['SUMMARY:Look on 2026-06-20', 'SUMMARY:Look on 2026-07-15']);
    expect(titles(of, '2026-07-01')).toEqual(['SUMMARY:Look on 2026-07-15']);
  });
  it('keeps an entry’s identity when another goes', () => {
    const uids = (of: Facts): readonly string[] => calendar(of, 'producer').match(/UID:.*/g) ?? [];
    const fewer = facts({ visit: aVisit({ steps: [] }) });
    expect(uids(facts())).toEqual(expect.arrayContaining([...uids(fewer)]));
  });
  it('has no days of what was left out', () => {
    const note = aNote({
      blocks: [
        { id: 'result-r2', isLeftOut: true },
        { id: 'next', isLeftOut: true },
      ],
    });
    expect(calendar(facts({ note }), 'producer').match(/SUMMARY/g)).toHaveLength(1);
  });
});
