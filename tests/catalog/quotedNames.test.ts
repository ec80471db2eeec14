import { expect, it } from 'vitest';
import { calculators } from '../support/catalog.ts';

// Words of one form send people to another by the name that stands on its page.
const names = calculators.flatMap(({ title, question }) => [title, question]);
const sending = /[Ss]ee “(?<seen>[^”]+)”|“(?<told>[^”]+)” (?:works it out|turns|does that sum|has the list|tells what)/g;
const namedIn = (text: string): readonly string[] =>
  [...text.matchAll(sending)].flatMap(({ groups }) => [groups?.['seen'], groups?.['told']].filter((each) => each !== undefined));
const sent = calculators.flatMap((each) => namedIn(JSON.stringify(each)).map((name) => [each.slug, name] as const));

it('finds the names by which forms send people on', () => {
  expect(sent.length).toBeGreaterThan(6);
  expect(namedIn('See “What nobody made” first. “Another” works it out.')).toEqual(['What nobody made', 'Another']);
});
it.each(sent)('%s sends to “%s”, which is there', (_, name) => {
  expect(names).toContain(name);
});
