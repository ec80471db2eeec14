import { describe, expect, it } from 'vitest';
import { guideTexts } from '../support/guideHeads.ts';
import { unsourcedIn } from '../support/unsourcedNumbers.ts';

describe('numbers in the guides', () => {
  it.each(guideTexts)('$slug says where each comes from', ({ body, head }) => {
    expect([...unsourcedIn(body), ...head.cautions.flatMap(unsourcedIn)]).toEqual([]);
  });
});

const rate = 'It grows 3 inches a day.';

describe('the search for numbers without a source', () => {
  it.each([
    ['a digit', rate],
    ['a number word with a unit', 'Wait two weeks before you turn out.'],
    ['a part of a unit', 'Half an inch is enough.'],
    ['a list item', '- Look at it.\n- Leave 4 inches.'],
    ['a caution', '<Caution title="Wire">\nKeep it 30 feet away.\n</Caution>'],
    ['a row of a table', '| Grass | Inches |\n| --- | --- |\n| Fescue | 4 |'],
    ['a row whose source cell is empty', '| Grass | Inches | Source |\n| --- | --- | --- |\n| Fescue | 4 | |'],
    ['a figure of a table without its source', 'Stop at <Tabled of="a" row="b" column="c" isBare /> inches.'],
    ['a citation in the next paragraph only', `${rate}\n\nSo it is <Cite key="a" />.`],
    ['a citation above a list that it does not lead into', `It grows <Cite key="a" />.\n\n- ${rate}`],
    ['a link to another guide', `${rate} See [resting](/guides/resting-grass/).`],
  ])('finds %s', (_, text) => {
    expect(unsourcedIn(text)).toHaveLength(1);
  });

  it.each([
    ['a citation beside it', '3 inches <Cite key="a" at="Table 2" /> a day.'],
    ['common practice', '3 inches a day (common practice).'],
    ['memory', 'A third of an inch a day (from memory).'],
    ['a computed figure', 'After 5 days it is <Computed name="a" of="b" />.'],
    ['a figure of a table', 'Stop after 5 days or at <Tabled of="a" row="b" column="c" />.'],
    ['a calculator', 'Put 3 inches into [the sum](/calculators/storm-runoff/?rain=3in).'],
    ['a source column', '| Grass | Inches | Source |\n| --- | --- | --- |\n| Fescue | 4 | <Cite key="a" /> |'],
    ['a caption that cites', 'What hay loses <Cite key="a" />:\n\n| How | Percent |\n| --- | --- |\n| Barn | 5 |'],
    ['a cited sentence that leads into a list', 'What hay loses <Cite key="a" />:\n\n- In a barn 5 percent.'],
  ])('lets pass %s', (_, text) => {
    expect(unsourcedIn(text)).toEqual([]);
  });

  it.each([
    ['steps that are counted', '1. Walk a hundred steps.\n2. Do step 1 again.'],
    ['one or two', 'Give it one or two weeks, or one day.'],
    ['a year', 'Nobody had seen that since 1934.'],
    ['things that are no measure', 'Set out two cans and count three gates.'],
    ['the address of a link', 'Read [the guide](/guides/a-2/).'],
  ])('lets pass %s', (_, text) => {
    expect(unsourcedIn(text)).toEqual([]);
  });
});
