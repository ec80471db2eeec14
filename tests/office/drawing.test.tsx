import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import render from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { readCountry } from '../../content/local/readCountry.ts';
import { allParts, localKeys } from '../../src/local/localParts.ts';
import { officeSections } from '../../src/office/model/fields.ts';
import { HelpLine } from '../../src/office/ui/HelpLine.tsx';
import { LocalParts } from '../../src/office/ui/LocalParts.tsx';
import { type Filling, OfficeFieldView } from '../../src/office/ui/OfficeFields.tsx';
import { root } from '../support/files.ts';
import { anOffice } from './anOffice.ts';

const drawn = (values: Parameters<typeof allParts>[0]): string =>
  render(
    <LocalParts parts={allParts(values).flatMap(({ parts }) => parts)} nameSource={(source) => ({ text: source, address: `/sources/#${source}` })} />,
  );

it('draws every value that an office gives, each with its source', () => {
  const html = drawn(anOffice.values);
  const says = [
    '120',
    '165',
    '210',
    '310',
    '270',
    '1,900',
    '2,400',
    '2,800',
    '3,300',
    '450',
    '8.5',
    '7 to 9',
    '3 to 4.5',
    '2,100',
    '4,300',
    '17.3',
    '21',
    '45',
  ];
  for (const each of [...says, '0.21', '2.9', '220', 'median inches', '15\u00a0June', '10\u00a0August', '12\u00a0October', 'best in June'])
    expect(html).toContain(each);
  expect(html).toContain('<a href="/sources/#common practice">common practice</a>');
});

it('draws nothing of what nobody gave', () => {
  expect(allParts({})).toEqual([]);
  for (const [key, { parts }] of Object.entries(localKeys)) expect(parts({}), key).toEqual([]);
});

it('draws no price of stock for a shipped country, where none was read', () => {
  for (const file of readdirSync(join(root, 'content/local')).filter((each) => each.endsWith('.json') && each !== 'fields.json')) {
    const values = readCountry(file, JSON.parse(readFileSync(join(root, 'content/local', file), 'utf8')), () => true);
    expect(allParts(values).map(({ key }) => key)).toEqual(Object.keys(localKeys).filter((key) => key !== 'other-prices'));
  }
});

it('makes a line’s number one that a phone can dial', () => {
  const [line] = anOffice.values.talkToSomeone.lines;
  if (!line) throw new Error('no line');
  expect(render(<HelpLine line={line} nameSource={(text) => ({ text })} />)).toContain(
    'weekdays 8 to 5. <span class="line-source"><span class="source-note">common practice</span></span>',
  );
  expect(render(<HelpLine line={line} nameSource={undefined} />)).toBe(
    'Example County farm-stress line: call or text <a href="tel:5550199">555-0199</a>, weekdays 8 to 5.',
  );
});
it.each([
  ['24 hours: (406) 555-0199', 'A tap on it dials 4065550199.'],
  ['24 hours', undefined],
])('shows at the field what a phone would dial of “%s”', (reach, told) => {
  const field = officeSections.flatMap(({ fields }) => fields).find(({ at }) => at === 'reach');
  if (!field) throw new Error('no field for a number to call');
  const nothing = (): void => undefined;
  const filling: Filling = {
    data: { values: { reach } },
    wrongs: [],
    isTold: () => false,
    tries: 0,
    today: '2026-09-14',
    put: nothing,
    replaceRows: nothing,
    leave: nothing,
  };
  const html = render(<OfficeFieldView field={field} path="values.reach" of={undefined} filling={filling} />);
  expect(/A tap on it dials [^<]*/.exec(html)?.[0]).toBe(told);
});
