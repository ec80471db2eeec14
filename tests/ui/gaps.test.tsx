import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { render } from 'preact-render-to-string';
import { beforeAll, describe, expect, it } from 'vitest';
import season from '../../calculators/catalog/season/definition.ts';
import { runQuery } from '../../calculators/kit/cases.ts';
import { fetchWhole } from '../../calculators/kit/fetchWhole.ts';
import { type PlainPicture, picturesOf } from '../../calculators/kit/pictures.ts';
import { Face } from '../../calculators/ui/pictures/face/readWater.tsx';
import { Strip } from '../../calculators/ui/pictures/Strip.tsx';
import { root } from '../support/files.ts';

beforeAll(async () => {
  await fetchWhole(season);
});
const lines = readFileSync(join(root, 'content/place/weather.csv'), 'utf8').trimEnd().split('\n');
const unlisted = '#= unlisted=not-read\n';
/** June of the eighth hay year is not there: its rain nor its heat. */
const withGap = `${unlisted}${lines.filter((line) => !line.startsWith('2003-06')).join('\n')}`;

const ranWith = (rainRecord: string) => runQuery(season, 'weather-from=record&shown-year=8', { rainRecord });
function drawn(rainRecord: string): string {
  const outcome = ranWith(rainRecord);
  const props = { calculator: season, outcome, other: null, titles: ['', ''] as const, system: 'us' as const };
  const pictures: readonly PlainPicture[] = picturesOf(season, outcome.values);
  const strip = pictures.find(({ kind }) => kind === 'strip');
  return strip?.kind === 'strip' ? render(<Strip {...props} picture={strip} Face={Face} id="p" />) : '';
}
/** Corners at which a hatched band begins. */
const bandsIn = (markup: string): readonly string[] => /class="gaps"[^>]* d="([^"]*)"/.exec(markup)?.[1]?.match(/M[\d.]+/g) ?? [];

describe('days that nobody read', () => {
  it('are hatched week by week, said under the strip and told of the chosen week', () => {
    const strip = drawn(withGap);
    const { weeks } = ranWith(withGap).values;
    const filled = Array.isArray(weeks) ? weeks.map((week) => (typeof week === 'object' ? Number(week['weekFilledDays']) : Number.NaN)) : [];
    expect(filled.reduce((sum, days) => sum + days, 0)).toBe(30);
    // June begins 42 days after turn-out, on the first day of a week.
    expect(filled.slice(5, 12)).toEqual([0, 7, 7, 7, 7, 2, 0]);
    // In each of the four lanes, and not behind their names.
    expect(bandsIn(strip)).toHaveLength(5 * 4);
    expect(strip).toContain('<figcaption>Hatched: weeks with days on which nobody read');
    expect(strip).not.toMatch(/NaN|undefined/);
    expect(ranWith(withGap).shown).toContain('weeks');
  });
  it('leave out the hay year in which they lie, and the table of years says why', () => {
    const { values } = ranWith(withGap);
    const years = Array.isArray(values['years']) ? values['years'] : [];
    expect(years.flatMap((year) => (typeof year === 'object' && year['enough'] === 'not-counted' ? [year['yearUnreadDays']] : []))).toEqual([30]);
    expect(values['leftOutCount']).toBe(1);
  });
  it('leave no trace where all was read', () => {
    const strip = drawn(lines.join('\n'));
    expect(strip).toContain('<svg');
    expect(bandsIn(strip)).toEqual([]);
    expect(strip).not.toMatch(/figcaption>Hatched|gap-stripe/);
  });
});
