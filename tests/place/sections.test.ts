import { fromMarkdown } from 'mdast-util-from-markdown';
import { describe, expect, it } from 'vitest';
import { asMarkdown } from '../../src/place/visit/asMarkdown.ts';
import { asText } from '../../src/place/visit/asText.ts';
import { type Audience, outgoing } from '../../src/place/visit/audience.ts';
import { byGround, sectionsOf } from '../../src/place/visit/sections.ts';
import { aPlace } from './aPlace.ts';
import { aNote, aResult, facts } from './aVisit.ts';

const of = (id: string, title: string, ...pastureIds: string[]) => aResult({ id, title, pastureIds });
/** Of two grounds in turn, as somebody works who walks from one to the other and back. */
const results = [of('a', 'Rings', 'high'), of('b', 'Rings', 'low'), of('c', 'Cover', 'high'), of('d', 'Prices'), of('e', 'Cores', 'high')];
const headingsIn = (audience: Audience, more: Parameters<typeof facts>[0] = {}): readonly string[] =>
  fromMarkdown(asMarkdown(outgoing(facts({ results, ...more }), audience))).children.flatMap((node) =>
    node.type === 'heading' && node.depth > 1 ? [`${node.depth} ${node.children.map((each) => ('value' in each ? each.value : '')).join('')}`] : [],
  );

describe('results that share a ground', () => {
  it('stand together, grounds in the order in which they come', () => {
    expect(byGround(aPlace(), results).map(({ names, results: each }) => [names, each.map(({ id }) => id).join('')])).toEqual([
      ['High bench', 'ace'],
      ['Low bench', 'b'],
      ['', 'd'],
    ]);
  });
  it('are named once in a note, and one alone has its ground in its title', () => {
    expect(headingsIn('producer').slice(2, 8)).toEqual(['2 High bench', '3 Rings', '3 Cover', '3 Cores', '2 Low bench: Rings', '2 Prices']);
    expect(asText(outgoing(facts({ results }), 'producer'))).toMatch(/\n\nHIGH BENCH\n\nRings\n[\s\S]*\n\nCover\n[\s\S]*\n\nLOW BENCH: RINGS\n/);
  });
  it('stand by the number of their ground in the office’s copy', () => {
    const headings = headingsIn('office');
    expect(headings).toContain('2 pasture 2');
    expect(headings.join()).not.toMatch(/bench/i);
  });
  it('have their ground in their title where somebody has moved them apart', () => {
    const note = aNote({ order: ['head', 'result-a', 'seen', 'result-c', 'result-e'] });
    expect(headingsIn('producer', { note }).slice(1, 6)).toEqual(['2 High bench: Rings', '2 What we saw', '2 High bench', '3 Cover', '3 Cores']);
  });
});
it('leaves parts without a ground alone', () => {
  expect(sectionsOf([{ title: 'One' }, { title: 'Two' }])).toEqual([{ parts: [{ title: 'One' }] }, { parts: [{ title: 'Two' }] }]);
});
