import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { startTexts } from '../../calculators/kit/state.ts';
import { RowsResults } from '../../calculators/ui/RowsResults.tsx';
import { runSide } from '../../calculators/ui/sides.ts';
import { calculators } from '../support/catalog.ts';

const drawn = calculators.map((calculator) => {
  const { outcome } = runSide(calculator, startTexts(calculator.inputs), 'us');
  if (!outcome) throw new RangeError(`${calculator.slug} does not compute`);
  const html = render(<RowsResults calculator={calculator} outcome={outcome} other={null} titles={['', '']} system="us" />);
  return [calculator.slug, [...html.matchAll(/<tbody>(.*?)<\/tbody>/gs)].flatMap(([, body = '']) => body.split('</tr>').slice(0, -1))] as const;
});

// https://www.w3.org/WAI/tutorials/tables/two-headers/: a cell is told by the heads of its row and of its column.
describe('a table of results', () => {
  it.each(drawn.filter(([, rows]) => rows.length > 0))('begins each row with its head: %s', (_, rows) => {
    for (const row of rows) expect(row).toMatch(/^<tr><th scope="row" class="row-name[^"]*">[^<]+<\/th>(?:<td[^>]*>[^<]*<\/td>)+$/);
  });
  it('is drawn by many calculators', () => {
    expect(drawn.filter(([, rows]) => rows.length > 0).length).toBeGreaterThan(9);
  });
});
