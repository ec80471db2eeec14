import { describe, expect, it } from 'vitest';
import { blocksOf } from '../support/guideBlocks.ts';
import { type GuideText, guideTexts, readGuide } from '../support/guideHeads.ts';
import { type Wanted, wanted } from './cautionList.ts';

/** What stands together: a whole caution, else one paragraph or list item. `<Local of="x" />` reads as `{{Local x}}`. */
function passagesOf(text: string): readonly string[] {
  const named = text.replaceAll(/<Local\s+of="([^"]+)"\s*\/>/g, '{{Local $1}}');
  const cautions = [...named.matchAll(/<Caution[^>]*>[\s\S]*?<\/Caution>/g)].map(([whole]) => whole);
  return [...cautions, ...blocksOf(named.replaceAll(/<Caution[^>]*>[\s\S]*?<\/Caution>/g, '')).map((block) => block.text)];
}

/** The part of a guide in which a caution comes in time: before the calculator that it is about, and before the look back at the end. */
function inTime({ body, head }: GuideText, before: string | undefined): string {
  const lookBack = /^## (?:How to tell|What can go wrong|How you'll know)/m.exec(body)?.index ?? body.length;
  const number = before === undefined ? -1 : body.indexOf(`<Calculator slug="${before}"`);
  return [...head.cautions, body.slice(0, number >= 0 ? Math.min(number, lookBack) : lookBack)].join('\n\n');
}
const saysIt = (guide: GuideText, { says, before }: Wanted): boolean =>
  passagesOf(inTime(guide, before)).some((passage) => says.every((word) => word.test(passage)));

/** What is wrong with a caution in a set of guides, or undefined. */
function lacking(caution: Wanted, guides: readonly GuideText[]): string | undefined {
  const silent = caution.guides.filter((slug) => !guides.some((guide) => guide.slug === slug && saysIt(guide, caution)));
  return silent.length === 0 ? undefined : `not said in time, in one passage: ${caution.name} (${silent.join(', ')})`;
}

describe('cautions', () => {
  it.each(wanted)('$name', (caution) => {
    expect(lacking(caution, guideTexts)).toBeUndefined();
  });
});

describe('the search for cautions', () => {
  const guide = (body: string): GuideText => readGuide('a', `---\ntitle: A\norder: 1\n---\n\n${body}`);
  const caution: Wanted = { name: 'wire', guides: ['a'], says: [/wire/, /storm/], before: 'b' };
  const lacks = (body: string, of = caution) => lacking(of, [guide(body)]);

  it.each([
    ['is nowhere', 'Nothing.'],
    ['is torn apart', 'Mind the wire.\n\nMind the storm.'],
    ['comes after its number', '<Calculator slug="b" />\n\nKeep off wire in a storm.'],
    ['comes with the look back', 'Text.\n\n## What can go wrong\n\n- You touch wire in a storm.'],
  ])('misses one that %s', (_, body) => {
    expect(lacks(body)).toContain('wire');
  });

  it('finds one that stands before its number', () => {
    expect(lacks('<Caution title="Wire">\nKeep off wire.\n\nIn a storm too.\n</Caution>\n\n<Calculator slug="b" />')).toBeUndefined();
    expect(lacks('<Local of="x" />', { name: 'x', guides: ['a'], says: [/\{\{Local x\}\}/] })).toBeUndefined();
  });

  it('misses one whose guide is not there', () => {
    expect(lacking(caution, [])).toContain('wire');
    expect(lacking({ ...caution, guides: ['a', 'c'] }, [guide('Keep off wire in a storm.')])).toContain('(c)');
  });
});
