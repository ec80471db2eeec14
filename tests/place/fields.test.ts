import { describe, expect, it } from 'vitest';
import { yearlyRain } from '../../calculators/asks/hay.ts';
import { longestTyped, longestWords } from '../../src/place/model/parts.ts';
import type { Place } from '../../src/place/model/place.ts';
import { type Data, dataAt, dataWith, withChanges } from '../../src/place/ui/edit.ts';
import { boughtFields, priceFields, stackFields } from '../../src/place/ui/fields/feed.ts';
import type { PlaceField } from '../../src/place/ui/fields/field.ts';
import { layerFields, paddockFields, pastureFirst, pastureGroups, soilFields } from '../../src/place/ui/fields/ground.ts';
import { moveFields, rainFields } from '../../src/place/ui/fields/record.ts';
import { seasonGroups } from '../../src/place/ui/fields/season.ts';
import { stockFields } from '../../src/place/ui/fields/stock.ts';
import { toolGroups } from '../../src/place/ui/fields/tools.ts';
import { waterGroups } from '../../src/place/ui/fields/water.ts';
import { changesOf, problemIn, textIn } from '../../src/place/ui/texts.ts';
import { near } from '../support/near.ts';
import { aPlace } from './aPlace.ts';

// The fields of the place page are data: each must be one that a place can hold, with whatever its field lets through.

const all = (groups: readonly { readonly fields: readonly PlaceField[] }[]): readonly PlaceField[] => groups.flatMap(({ fields }) => fields);
const records: readonly { readonly path: readonly string[]; readonly fields: readonly PlaceField[] }[] = [
  { path: ['pastures', 'low'], fields: [...pastureFirst, ...all(pastureGroups)] },
  { path: ['pastures', 'low', 'paddocks', 'a'], fields: paddockFields },
  { path: ['soils', 's1'], fields: soilFields },
  { path: ['soils', 's1', 'layers', 'l1'], fields: layerFields },
  { path: ['herd', 'cows'], fields: stockFields },
  { path: ['hay', 'stacks', 'h1'], fields: stackFields },
  { path: ['water', 'w1'], fields: all(waterGroups) },
  { path: [], fields: [...boughtFields, ...priceFields, ...all(seasonGroups), ...all(toolGroups)] },
];
const start: Place = aPlace({
  pastures: [{ id: 'low', name: 'Low bench', isCounted: true, paddocks: [{ id: 'a', name: 'A' }] }],
  soils: [{ id: 's1', name: 'Bench', layers: [{ id: 'l1' }] }],
  herd: [{ id: 'cows', kind: 'cow' }],
  hay: { stacks: [{ id: 'h1' }] },
  water: [{ id: 'w1', name: 'Pond' }],
});
const fields = records.flatMap(({ path, fields: list }) => list.map((field) => ({ name: `${path[0] ?? 'place'} ${field.at}`, path, field })));
const typed = (place: Place, path: readonly string[], field: PlaceField, text: string, system: 'us' | 'si' = 'us'): Place =>
  withChanges(
    place,
    changesOf(field, text, system).map((each) => ({ ...each, path: [...path, ...each.path] })),
  );
const recordAt = (place: Place, path: readonly string[]): Data => dataAt(place, path);
/** Texts that the field takes: for a number its limits, for a list every word of it. */
function goodTexts({ cell }: PlaceField): readonly string[] {
  if (cell.kind === 'number') return [String(cell.min), String(cell.max), String(cell.default)];
  if (cell.kind === 'choice') return Object.keys(cell.options).filter((word) => word !== '');
  if (cell.kind === 'yesNo') return ['yes', 'no'];
  if (cell.kind === 'date') return ['2026-06-20'];
  return cell.kind === 'monthDay' ? ['02-29', '12-31'] : ['A few words', 'x'.repeat(200)];
}
const wrongTexts: readonly string[] = ['about forty', '16 parsecs', '1,5', '-1e9', '<b>45</b>', `9${'9'.repeat(longestTyped + 50)}`];

describe.each(fields)('$name', ({ path, field }) => {
  it('keeps what it takes, and shows it as it was typed', () => {
    for (const text of goodTexts(field)) {
      const place = typed(start, path, field, text);
      const record = recordAt(place, path);
      expect(problemIn(record, field, 'us'), text).toBeUndefined();
      expect(dataAt(record, field.at.split('.')), text).toBeDefined();
      expect(textIn(record, field, 'us'), text).toBe(text);
    }
  });

  it('leaves nothing behind when it is emptied', () => {
    const [text = ''] = goodTexts(field);
    const { cell } = field;
    const isAlwaysThere = cell.kind === 'yesNo' || (cell.kind === 'text' && cell.isNeeded) || (cell.kind === 'choice' && !('' in cell.options));
    if (isAlwaysThere) return;
    expect(typed(typed(start, path, field, text), path, field, '')).toEqual(start);
  });

  if (field.cell.kind !== 'number') return;
  it('keeps a wrong text as it was typed, says why, and has no number for it', () => {
    for (const text of wrongTexts) {
      const place = typed(typed(start, path, field, goodTexts(field)[2] ?? ''), path, field, text);
      const record = recordAt(place, path);
      expect(dataAt(record, field.at.split('.')), text).toBeUndefined();
      expect(textIn(record, field, 'us')).toBe(text.slice(0, longestTyped));
      expect(problemIn(record, field, 'us')).toMatch(new RegExp(`^${field.cell.label.replace(/[()]/g, '\\$&')}`));
    }
  });
});

it('holds a size in hectares as it was typed, and as acres for whoever reckons with it', () => {
  const size = pastureFirst.find(({ at }) => at === 'areaAc');
  if (size === undefined) throw new TypeError('no field for a size');
  const path = ['pastures', 'low'];
  const place = typed(start, path, size, '16 ha');
  const record = recordAt(place, path);
  // An international acre is 0.40468564224 ha (NIST Handbook 44, appendix C).
  near(Number(dataAt(record, ['areaAc'])), 16 / 0.40468564224, 5e-9);
  expect(textIn(record, size, 'us')).toBe('16 ha');
  // Changed by somebody else meanwhile: the number counts, and the old text is gone from sight.
  const later = withChanges(place, [{ path: [...path, 'areaAc'], to: 50 }]);
  expect(textIn(recordAt(later, path), size, 'us')).toBe('50\u00a0ac');
});

it('keeps the name that it has while the text says none', () => {
  const [name] = pastureFirst;
  if (name === undefined) throw new TypeError('no field for a name');
  const place = typed(start, ['pastures', 'low'], name, ' ');
  expect(place.pastures[0]?.name).toBe('Low bench');
  expect(problemIn(recordAt(place, ['pastures', 'low']), name, 'us')).toContain('missing');
});

it('says beside the months of growth when they do not follow each other, and nothing of New Year alone', () => {
  const growth = seasonGroups.find(({ title }) => title === 'When the grass grows');
  const said = (more: Place['growth']): string => growth?.problem?.(aPlace({ growth: more })) ?? 'no such rule';
  for (const wrong of [
    { startMonth: 'sep', bestMonth: 'may', quitMonth: 'apr' },
    { startMonth: 'mar', bestMonth: 'feb', quitMonth: 'oct' },
  ] as const)
    expect(said(wrong)).toContain('12 months at most');
  for (const fine of [
    undefined,
    { startMonth: 'apr' },
    { startMonth: 'sep', quitMonth: 'apr' },
    { startMonth: 'mar', bestMonth: 'may', quitMonth: 'oct' },
    // Annual range of California, and summer grass south of the equator.
    { startMonth: 'nov', bestMonth: 'mar', quitMonth: 'may' },
    { startMonth: 'oct', bestMonth: 'dec', quitMonth: 'mar' },
  ] as const)
    expect(said(fine)).toBe('');
});

it('takes month and day in either order, and keeps the half that is there', () => {
  const turnIn = all(seasonGroups).find(({ at }) => at === 'season.turnInDay');
  if (turnIn === undefined) throw new TypeError('no field for turn-in');
  for (const half of ['04-', '-20', '04-31', '13-01']) {
    const place = typed(start, [], turnIn, half);
    expect(place.season).toBeUndefined();
    expect(textIn(recordAt(place, []), turnIn, 'us')).toBe(half);
    expect(problemIn(recordAt(place, []), turnIn, 'us')).toMatch(/^Turn-in:? /);
  }
  expect(typed(start, [], turnIn, '04-4').season).toEqual({ turnInDay: '04-04' });
});

describe('a line of the record', () => {
  const moved: Data = { inDay: '2027-05-11', outDay: '2027-05-21', word: 'left the fescue' };
  const ofMove = (at: string): PlaceField => {
    const found = moveFields([{ id: 'low', name: 'Low bench' }]).find((each) => each.at === at);
    if (found === undefined) throw new TypeError(`no field for ${at}`);
    return found;
  };
  const typedIn = (at: string, text: string): Data => dataWith(moved, changesOf(ofMove(at), text, 'us'));
  it('keeps its day while the text is of a year that nothing is of, as each is on the way to 2027', () => {
    for (const at of ['inDay', 'outDay'])
      for (const year of ['0002', '0020', '0202', '1899', '2200']) {
        const line = typedIn(at, `${year}-05-12`);
        expect(dataAt(line, [at])).toBe(dataAt(moved, [at]));
        expect(textIn(line, ofMove(at), 'us')).toBe(`${year}-05-12`);
        expect(problemIn(line, ofMove(at), 'us')).toContain('must be a day of the calendar, from 1900 to 2199.');
      }
    for (const iso of ['1900-01-01', '2026-05-12', '2199-12-31']) {
      expect(dataAt(typedIn('inDay', iso), ['inDay'])).toBe(iso);
      expect(problemIn(typedIn('inDay', iso), ofMove('inDay'), 'us')).toBeUndefined();
    }
    expect(dataAt(typedIn('outDay', ''), ['outDay'])).toBeUndefined();
  });
  it('holds as many words as its schema does', () => {
    for (const text of ['x'.repeat(201), 'x'.repeat(longestTyped + 1), 'x'.repeat(longestWords)]) {
      const line = typedIn('word', text);
      expect(dataAt(line, ['word'])).toBe(text);
      expect(problemIn(line, ofMove('word'), 'us')).toBeUndefined();
    }
    expect(dataAt(typedIn('word', 'x'.repeat(longestWords + 1)), ['word'])).toBe('left the fescue');
  });
});

it('keeps the name that nobody needs while the text is too long for one', () => {
  const name = stockFields.find(({ at }) => at === 'name');
  if (name === undefined) throw new TypeError('no field for a name');
  const place = typed(typed(start, ['herd', 'cows'], name, 'Red cows'), ['herd', 'cows'], name, 'x'.repeat(201));
  expect(place.herd[0]?.name).toBe('Red cows');
  expect(problemIn(recordAt(place, ['herd', 'cows']), name, 'us')).toContain('at most 200 letters. These are 201.');
});

it('is no trace where a line of rain does not tell, with nothing wrong in it', () => {
  const line = { day: '2026-05-04', days: 1, amountIn: 0.5 };
  expect(rainFields.map((field) => problemIn(line, field, 'us'))).toEqual(rainFields.map(() => undefined));
  const trace = rainFields.find(({ at }) => at === 'isTrace');
  expect(trace && [textIn(line, trace, 'us'), textIn({ ...line, isTrace: true }, trace, 'us')]).toEqual(['no', 'yes']);
});

// An inch is 25.4 mm: 635 and 1,016, told to five as the classes themselves are to five inches.
it('the class of a year’s rain is told in both units, by the place and by forms alike', () => {
  const cell = all(seasonGroups).find(({ at }) => at === 'rainClass')?.cell;
  const labels = cell?.kind === 'choice' ? Object.entries(cell.options).flatMap(([key, { label }]) => (key === '' ? [] : [label])) : [];
  expect(labels).toEqual(Object.values(yearlyRain().options).map(({ label }) => label));
  for (const label of labels) {
    const [inches = '', millimeters = ''] = label.split(' in (');
    const numbers = (text: string): readonly number[] => (text.match(/\d[\d,]*/g) ?? []).map((each) => Number(each.replace(',', '')));
    expect(numbers(millimeters), label).toEqual(numbers(inches).map((each) => Math.round((each * 25.4) / 5) * 5));
    expect(numbers(inches).length, label).toBeGreaterThan(0);
  }
});
