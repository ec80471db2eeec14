import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rules } from '../../content/local/schema.ts';
import { longestList, longestWords, mostLetters } from '../../src/office/model/office.ts';
import { readOfficeFile, readOfficeProperty, writeOffice } from '../../src/office/model/officeFile.ts';
import { checkOffice } from '../../src/office/model/sayWrong.ts';
import { anOffice, officeWith } from './anOffice.ts';

const saidOf = (data: unknown): readonly string[] => {
  const checked = checkOffice(data);
  return 'wrongs' in checked ? checked.wrongs.map(({ label, say }) => `${label}: ${say}`) : [];
};
const fileOf = (json: string): string => `:root { --holdwater-office:\n${json}\n}\n`;
const problemsOf = (text: string): readonly string[] => {
  const read = readOfficeFile(text);
  return read.is === 'wrong' ? read.say : [];
};

describe('an office file', () => {
  it('is read as it was written, from the file and from the property', () => {
    const text = writeOffice(anOffice);
    expect(readOfficeFile(text)).toEqual({ is: 'read', office: anOffice });
    const property = text.split('\n').slice(1, -2).join('\n');
    expect(readOfficeProperty(property)).toEqual({ is: 'read', office: anOffice });
    expect(writeOffice(anOffice)).toBe(text);
  });

  it('keeps quotes, brackets, comment signs and escapes in its words', () => {
    const says = 'a "b" \\ {c} [d] /* e */ <!-- f --> </style> ; } \n \u2028 é';
    const office = { ...anOffice, cautions: [{ says, source: 'common practice' }] };
    expect(readOfficeFile(writeOffice(office))).toEqual({ is: 'read', office });
  });

  it('is none while it holds nothing', () => {
    expect(readOfficeFile(fileOf('{}'))).toEqual({ is: 'none' });
    expect(readOfficeProperty('{}')).toEqual({ is: 'none' });
  });

  it('may give as little as a name, its day and somebody near', () => {
    const { head, values, file, v } = anOffice;
    const { name, valuesDay } = head;
    expect(saidOf({ file, v, head: { name, valuesDay }, values: { talkToSomeone: values.talkToSomeone } })).toEqual([]);
  });
});

describe('what is wrong is told in one sentence with its place', () => {
  const hay = 'values.hayPrice';
  const row = 'values.stubble.rows.0';
  it.each<[string, unknown, string]>([
    ['file', 'holdwater-place', ': This is no office file of these pages: its first value must be “file”: “holdwater-office”.'],
    ['v', 2, ': This file was made for another version of these pages. Open it on the page “Make it yours” of the copy that made it.'],
    ['values', undefined, ': The values are missing.'],
    [`${hay}.likelyUsdPerTon`, [], 'Hay, likely: a list is no number; write dollars a ton, such as 165.'],
    [`${hay}.likelyUsdPerTon`, {}, 'Hay, likely: a group of values is no number; write dollars a ton, such as 165.'],
    [`${hay}.seen`, 'x'.repeat(60), `Hay: Seen: “${'x'.repeat(40)}…” cannot be read; write a day, a month or a year, such as 2026-09.`],
    ...['2026-19-45', '2026-13', '2026-00', '2026-02-30', '2026-04-31'].map((seen): [string, unknown, string] => [
      `${hay}.seen`,
      seen,
      `Hay: Seen: “${seen}” cannot be read; write a day, a month or a year, such as 2026-09.`,
    ]),
    ['head.valuesDay', '2026-02-31', 'These values are of: “2026-02-31” cannot be read; write a day of the calendar, such as 2026-09-14.'],
    ['head', undefined, ': The office itself is missing. Its name is the least.'],
    ['head.name', '', 'Name: This is empty; write a name, such as Example County office.'],
    ['head.phone', 'call us', 'Phone: “call us” cannot be read; write a number to call, such as 555-0100.'],
    [
      'head.copyAt',
      'javascript:alert(1)',
      'Web address of your copy: “javascript:alert(1)” cannot be read; write an address that begins with https://.',
    ],
    ['head.valuesDay', '2026-9-1', 'These values are of: “2026-9-1” cannot be read; write a day of the calendar, such as 2026-09-14.'],
    [
      'values.talkToSomeone.near',
      '',
      'Someone near: People close by: This is empty; write people close by, such as your own doctor, a neighbor, your pastor.',
    ],
    [
      'values.talkToSomeone.lines.0.reach',
      'ask around',
      'Line 1: Number, and how to use it: “ask around” cannot be read; write a whole number to call, such as call or text (406) 555-0100.',
    ],
    [
      'values.talkToSomeone.lines.0.reach',
      'day and night: 24',
      'Line 1: Number, and how to use it: “day and night: 24” cannot be read; write a whole number to call, such as call or text (406) 555-0100.',
    ],
    [`${hay}.likelyUsdPerTon`, 'abc', 'Hay, likely: “abc” is no number; write dollars a ton, such as 165.'],
    [`${hay}.likelyUsdPerTon`, 0, 'Hay, likely: “0” is not above zero; write dollars a ton, such as 165.'],
    [`${hay}.likelyUsdPerTon`, undefined, 'Hay, likely: This is missing; write dollars a ton, such as 165.'],
    [`${hay}.likelyUsdPerTon`, 95, 'Hay, likely: 95 is under low (120). Low, likely, high in that order.'],
    [`${hay}.highUsdPerTon`, 150, 'Hay, high: 150 is under likely (165). Low, likely, high in that order.'],
    [
      'values.stockPrices.buyBackLikelyUsd',
      2000,
      'Calves and cows: Cow, bought back, likely: 2000 is under low (2400). Low, likely, high in that order.',
    ],
    [
      `${hay}.crop`,
      'straw',
      'Hay: Kind of hay: “straw” is not in the list; write one of the list: alfalfa, bermudagrass, grass, mixed grass, grain, timothy.',
    ],
    [
      `${hay}.of`,
      'alfalfa, rounds',
      'Hay: Where, and of what: “alfalfa, rounds” names a kind of hay again. The kind stands in its own field, and there is one only.',
    ],
    [`${hay}.seen`, 'last fall', 'Hay: Seen: “last fall” cannot be read; write a day, a month or a year, such as 2026-09.'],
    [`${hay}.source`, undefined, 'Hay: Where it comes from: This is missing; write a publication, or the words common practice.'],
    [`${hay}.ink`, 1, 'Hay: There is no such value in an office file. Take it out, or look at how its name is spelled.'],
    ['values.stockPrices', { of: 'a', seen: '2026', source: 'a' }, 'Calves and cows: No price stands here. Give one, or leave all of it out.'],
    ['values.freight.usdPerLoad', -1, 'Freight for a load: “-1” is under zero; write dollars a load, such as 400.'],
    [`${row}.startIn`, [9, 7], 'Forage 1: Start grazing, low: 9 is over the high end (7). The low end comes first.'],
    [
      `${row}.startIn`,
      [5, 6],
      'Forage 1: Start grazing, low: Grazing must start at least 2 inches above where it stops, low over low and high over high, and start low above stop high. With less no rest comes out right.',
    ],
    [`${row}.stopIn`, undefined, 'Forage 1: Stop, low: Give a height to stop at, or the pounds to leave on the ground.'],
    [`${row}.stopIn`, 4, 'Heights to start and to stop, forage 1: “4” cannot stand here.'],
    [
      'values.growthCurve.curves.0.percentByMonth',
      [0, 0, 5, 17.3, 27.6, 17, 5, 5, 11, 10.1, 0, 0],
      'Curve 1: Percent of the year’s growth: The twelve months add up to 98; 2 are missing.',
    ],
    ['values.growthCurve', { curves: [], markers: [] }, 'Curves of the year’s growth: Give a curve, or leave all of it out.'],
    ['values.rainMonths.inches', [1, 2], 'Rain by month: Rain: Twelve months are needed, January first; these are 2.'],
    ['values.rainMonths.inches.2', 'wet', 'Rain by month: Rain, March: “wet” is no number; write inches, such as 2.4.'],
    ['values.decisionDates.0.date', '30 June', 'Date 1: By: “30 June” cannot be read; write month and day, such as 06-30.'],
    [
      'values.growthMonths.quitMonth',
      'jun',
      'When grass grows: It quits after: The months must come in order: growth starts, is best, quits, at most 12 months, over New Year if need be. With growth in the fall, the last month comes after the best one.',
    ],
    ['values.sowingDates', 'soon', 'Sowing: “soon” cannot stand here.'],
    [
      'words.ground',
      'field',
      'Words: A piece of fenced ground is called: “field” is not in the list; write one of the list: Paddock, Pasture, Trap.',
    ],
    [
      'cautions.0.says',
      'a'.repeat(longestWords + 1),
      `Caution 1: Caution: This text has ${longestWords + 1} letters; at most ${longestWords} can stand here.`,
    ],
    [
      'cautions',
      Array(longestList + 1).fill({ says: 'a', source: 'a' }),
      `Cautions of your own: This list has ${longestList + 1} entries; at most ${longestList} can stand here.`,
    ],
  ])('%s: %j', (path, to, sentence) => {
    expect(saidOf(officeWith(path, to))[0]).toBe(sentence);
  });

  it('has a sentence for each rule of values that do not go together', () => {
    const told = Object.values(rules).filter((rule) => rule !== rules.growth);
    const source = 'common practice';
    const broken = [
      ['values.stubble.rows.0.startIn', [9, 7]],
      ['values.stubble.rows.0', { forage: 'a', source }],
      ['values.stubble.rows.0.startIn', [5, 6]],
      ['values.growthCurve.curves.0.percentByMonth', Array(12).fill(1)],
      ['values.growthMonths.quitMonth', 'may'],
      ['values.hayPrice.of', 'grain'],
      ['values.hayPrice.lowUsdPerTon', 900],
      ['values.stockPrices', { of: 'a', seen: '2026', source }],
    ] as const;
    expect(broken).toHaveLength(told.length);
    for (const [path, to] of broken) expect(saidOf(officeWith(path, to)).join()).not.toMatch(/do not go together|^$/);
  });

  it('with its line', () => {
    const text = writeOffice(anOffice).replace('"likelyUsdPerTon": 165', '"likelyUsdPerTon": "abc"');
    const line = text.split('\n').findIndex((each) => each.includes('"abc"')) + 1;
    const sentence = `Line ${line}, Hay, likely: “abc” is no number; write dollars a ton, such as 165.`;
    expect(problemsOf(text)).toEqual([sentence]);
    expect(readOfficeProperty(text.split('\n').slice(1, -2).join('\n'))).toEqual({ is: 'wrong', say: [sentence] });
  });

  it.each<[string, string, RegExp]>([
    ['JSON that ends too early', fileOf('{ "file": "holdwater-office",\n "v": '), /^Line 3, letter \d+: a value should stand here/],
    ['a comma too many', fileOf('{\n "v": 1,\n}'), /^Line 4, letter 1: a name in quotes should stand here, or there is a comma too many/],
    ['a comma missing', fileOf('{\n "v": 1\n "w": 2}'), /^Line 4, letter 2: a comma is missing before this/],
    ['a colon missing', fileOf('{ "v" 1 }'), /^Line 2, letter 7: a colon is missing/],
    ['quotes that are not closed', fileOf('{ "v": "a\n }'), /^Line 2, letter 8: words in quotes are not closed/],
    ['styles behind it', `${fileOf('{}')}html { display: none }\n`, /^Line 3, letter 1: after the end of the values stands more: “}”/],
    ['a style sheet', 'body { color: red }', /^It is no office file: it must begin with/],
    ['a page', '<!doctype html><script>alert(1)</script>', /^It is no office file/],
    ['no last line', ':root { --holdwater-office:\n{ "v": 1 ', /^Its last line is missing/],
    ['too many letters', fileOf(`{ "a": "${'x'.repeat(mostLetters)}" }`), /^It has more than 512 kB/],
    ['too deep', fileOf(`${'['.repeat(50_000)}${']'.repeat(50_000)}`), /deeper in each other/],
    ['another kind of value', fileOf('[1, 2]'), /^Line 2: This is no office file/],
    ['a prototype', fileOf('{ "__proto__": { "file": "holdwater-office" } }'), /This is no office file/],
  ])('%s', (_, text, sentence) => {
    expect(problemsOf(text)[0]).toMatch(sentence);
  });

  it('missing, or no style sheet at all', () => {
    expect(readOfficeProperty('')).toMatchObject({ is: 'wrong', say: [expect.stringMatching(/^It is missing, or it is no office file/)] });
  });

  it('a few at a time, and how many more', () => {
    const data = officeWith('values.hayPrice', {});
    const said = problemsOf(fileOf(JSON.stringify(data)));
    expect(said).toHaveLength(6);
    expect(said.at(-1)).toMatch(/^\d+ more things are wrong below\.$/);
  });
});

describe('a thousand files', { timeout: 60_000 }, () => {
  const text = writeOffice(anOffice);
  it('with something cut, put in or changed never throw, and never pass with markup made into more than words', () => {
    const pieces = ['}', '{', '"', '\\', '[', ',', ':', 'null', '1e999', '-', '\u0000', '</script>', '/*', '\n', '__proto__', '"constructor":1,'];
    const at = fc.nat(text.length);
    fc.assert(
      fc.property(at, fc.nat(30), fc.oneof(fc.constantFrom(...pieces), fc.string({ unit: 'binary', maxLength: 20 })), (from, length, put) => {
        const read = readOfficeFile(text.slice(0, from) + put + text.slice(from + length));
        expect(['none', 'read', 'wrong']).toContain(read.is);
        if (read.is === 'wrong') for (const say of read.say) expect(say).not.toMatch(/Invalid|Expected|undefined|\[object/);
      }),
      { numRuns: 1000 },
    );
  });
  it('of any values at any place never throw', () => {
    fc.assert(
      fc.property(
        fc.jsonValue({ maxDepth: 4 }),
        fc.constantFrom('head', 'values', 'values.hayPrice', 'values.stubble.rows', 'cautions', 'words'),
        (to, path) => {
          const read = readOfficeFile(fileOf(JSON.stringify(officeWith(path, to))));
          if (read.is === 'wrong') for (const say of read.say) expect(say).not.toMatch(/Invalid|Expected|undefined|\[object/);
        },
      ),
      { numRuns: 1000 },
    );
  });
});
