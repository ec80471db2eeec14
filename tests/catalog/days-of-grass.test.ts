import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/days-of-grass/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { isoDay } from '../../calculators/units/printQuantity.ts';
import { expectWithin } from '../support/expectWithin.ts';

const clipped =
  'today=2026-07-01&until=2026-08-15&area=25ac&height=7in&stop-height=3in&density-from=own&density=300lb/ac/in&eaten-from=own&own-eaten=60pct&stock.kind=cow-nursing&stock.count=40&stock.weight=1250lb&stock.intake=2.5pct&can-go=30';
const mixed =
  'today=2026-06-20&until=2026-09-01&area=60ac&reach=80pct&height=8.5in&stop-height=4in&stand=mixed-pasture&condition=good&eaten-from=own&own-eaten=60pct&stock.kind=cow-nursing,bull&stock.count=45,2&stock.weight=1250lb,1900lb&stock.intake=2.5pct,2pct&growth=10lb/ac/d&can-go=20';
const thin =
  'today=2026-07-01&until=2026-07-20&area=30ac&height=6in&stop-height=4in&stand=mixed-pasture&condition=good&eaten-from=own&own-eaten=65pct&stock.kind=cow-nursing&stock.count=60&stock.weight=1200lb&stock.intake=2.5pct&growth=5lb/ac/d&can-go=10';
const dayAt = (query: string, name: string): string => isoDay(Number(runQuery(definition, query).values[name]));
const rowsAt = (query: string): readonly Readonly<Record<string, unknown>>[] => {
  const rows = runQuery(definition, query).values['goingOn'];
  return Array.isArray(rows) ? rows.map((row: number | object) => ({ ...(typeof row === 'object' ? row : {}) })) : [];
};

describe('days of grass, worked by hand', () => {
  it.each([
    ['25 acres, clips of one’s own', clipped, ['2026-07-11', '2026-07-15', '2026-07-20']],
    ['60 acres by the list', mixed, ['2026-07-09', '2026-07-19', '2026-08-04']],
    ['30 acres, nearly over', thin, ['2026-07-04', '2026-07-07', '2026-07-11']],
  ])('%s: the day to plan on, the likely one, the best one', (_, query, days) => {
    expect(['lowOffDay', 'offDay', 'highOffDay'].map((name) => dayAt(query, name))).toEqual(days);
  });
  it('leads with the day, and tells its range beside it', () => {
    const { shown, shorts, ranges } = runQuery(definition, clipped);
    expect(shown[0]).toBe('offDay');
    expect(shorts['offDay']).toBe('plan on Jul 11, 2026; at best Jul 20, 2026');
    expect(ranges['wholeDays']).toBe('10 to 19 days');
  });
  it('names the last day on which those that can go are enough', () => {
    expect(dayAt(clipped, 'sellByDay')).toBe('2026-07-05');
    expect(runQuery(definition, clipped).shown).toContain('sellByDay');
  });
  it('says how many too few can go where even today is too late', () => {
    for (const [query, missing] of [
      [mixed, 3],
      [thin, 28],
    ] as const) {
      const { shown, values } = runQuery(definition, query);
      expect(shown).toContain('missingHead');
      expect(shown).not.toContain('sellByDay');
      expect(values['missingHead']).toBe(missing);
    }
  });
  it('lets no more leave than there are, and says so', () => {
    const twoOnTwo = runQuery(definition, 'stock.count=2&can-go=10&area=2ac');
    expect(twoOnTwo.note).toContain('2 head would have to leave today, and none would stay; 2 head are enough until');
    expect(twoOnTwo.cautions.map(({ lead }) => lead)).toContain('More head could leave, by what you gave, than there are: all are counted.');
    const one = runQuery(definition, 'stock.count=1&can-go=10&area=1ac');
    expect(one.note).toContain('1 head would have to leave today, and none would stay; 1 head is enough until');
    expect(runQuery(definition, 'can-go=1').note).toContain('1 head that can go is too few even today');
    // What could go beyond the herd moves no day: none is sold twice.
    expect(dayAt('can-go=400', 'sellByDay')).toBe(dayAt('can-go=40', 'sellByDay'));
  });
  it('tells later days only while there is grass', () => {
    expect(rowsAt(clipped).map(({ goHead }) => goHead)).toEqual([28, 33, 40]);
    expect(rowsAt(thin).map(({ goHead }) => goHead)).toEqual([38]);
    expect(rowsAt(clipped).map(({ share }) => share)).toEqual(['some', 'some', 'all']);
  });
  it('asks for others too where the kind that eats most is not enough', () => {
    // 20 cows of 31.25 lb and 90 ewes of 6.4 lb: 1,201 lb a day, 38.4 cows; 7,000 lb is 224 cow-days: 38.4 - 224 / 60 = 34.7 have to go.
    const query =
      'today=2026-07-01&until=2026-08-30&area=10ac&height=7in&stop-height=3in&density-from=own&density=250lb/ac/in&eaten-from=own&own-eaten=70pct&stock.kind=cow-nursing,ewe-nursing&stock.count=20,90&stock.weight=1250lb,160lb&stock.intake=2.5pct,4pct';
    const { shown, values, note } = runQuery(definition, query);
    expect(values['goTodayHead']).toBe(35);
    expect(values['mainKind']).toBe('cow-nursing');
    expect(shown).toContain('mainHead');
    expect(note).toContain('and more');
  });
});

describe('days of grass, where no day can be named', () => {
  it('says that growth keeps up, and names no number of days', () => {
    const { shown, note } = runQuery(
      definition,
      'area=40ac&height=8in&stop-height=4in&eaten-from=own&own-eaten=60pct&stock.kind=cow-dry&stock.count=30&stock.weight=1200lb&stock.intake=2.5pct&growth=40lb/ac/d',
    );
    expect(shown).toEqual(['verdict', 'demandLbPerDay', 'availableLbPerAc']);
    expect(note).not.toMatch(/\d+ days?\b/);
  });
  it.each(['height=3.5in', 'height=2in', 'height=3.5in&growth=300lb/ac/d'])('says to move today at or under the height that is left: %s', (query) => {
    const { shown, note, cautions } = runQuery(definition, query);
    expect(shown).toEqual(['verdict', 'demandLbPerDay', 'availableLbPerAc']);
    expect(note).toContain('nothing to graze');
    expect(cautions.map(({ lead }) => lead)).toContain('Nothing stands above the stubble. Wait, feed, or take stock elsewhere.');
  });
  it('says at best that growth keeps up, where it does at the high end alone', () => {
    // 1,250 lb a day; growth of 80 x 40 x 0.35 = 1,120 likely, 1,280 at the high end, over 1,250 x 0.83 = 1,037.5.
    const { shorts } = runQuery(definition, 'growth=80lb/ac/d&until=2026-08-30');
    expect(shorts['offDay']).toMatch(/^plan on .*; at best growth keeps up$/);
  });
  it('tells no tenth of a day anywhere', () => {
    for (const query of ['', clipped, mixed, thin, 'area=43ac&height=6.3in', 'height=4in', 'area=900ac']) {
      const { note, ranges } = runQuery(definition, query);
      expect([note, ...Object.values(ranges)].join(' ')).not.toMatch(/\d\.\d+ days?\b/);
    }
    for (const [name, quantity] of Object.entries(definition.quantities))
      for (const each of quantity.kind === 'rows' ? Object.values(quantity.columns) : [quantity])
        if (each.kind === 'number' && each.unit === 'd') expect(each.digits, name).toBe(0);
  });
});

describe('the appetite at both ends', () => {
  const eat = (kind: string) => `${clipped}&stock.kind=${kind}&stock.count=100&stock.weight=100lb&stock.intake=4pct`;
  it.each([
    // Grown cattle swing by what trials found (Gross, abstract); does from 2 percent (Schoenian) to 4.5 (Texas) about 4 (Luling); horses from 1.5 to 3 (Texas) about 2.
    ['cow-dry', 468, 332],
    ['bull', 468, 332],
    ['other', 468, 332],
    ['doe', 450, 200],
    ['horse', 600, 300],
    // Ewes at rest from 1.5 (Semler) to 4 (Schoenian) about 2.
    ['ewe-dry', 800, 300],
  ])('goes by the guides for %s', (kind, most, least) => {
    const ends = ['rangeEnds.0.endDemandLbPerDay', 'rangeEnds.1.endDemandLbPerDay'].map((path) =>
      Number(resultAt(runQuery(definition, eat(kind)), path)),
    );
    expectWithin(ends[0] ?? Number.NaN, most, 1e-6);
    expectWithin(ends[1] ?? Number.NaN, least, 1e-6);
  });
});
