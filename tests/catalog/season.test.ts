import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleRain } from '../../calculators/asks/exampleRain.ts';
import season from '../../calculators/catalog/season/definition.ts';
import type { Asked } from '../../calculators/catalog/season/inputs.ts';
import { fitsOf, placeOf } from '../../calculators/catalog/season/place.ts';
import { runQuery } from '../../calculators/kit/cases.ts';
import type { Run } from '../../calculators/kit/define.ts';
import { fetchWhole } from '../../calculators/kit/fetchWhole.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { printName } from '../../calculators/kit/print.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { readForm } from '../../calculators/kit/state.ts';
import { exactBinomialInterval } from '../../calculators/math/special/exactBinomialInterval.ts';
import { sliced } from '../../calculators/ui/long/sliced.ts';
import { calculators } from '../support/catalog.ts';
import { filesBelow, root } from '../support/files.ts';

await fetchWhole(season);

const ran = (query: string) => {
  const run = runTexts(season, fromLink(season, query).form.this);
  if (!('outcome' in run)) throw new Error(run.refusals.map(({ say }) => say).join(' '));
  return run.outcome;
};
const number = (query: string, name: string): number => {
  const value = ran(query).values[name];
  if (typeof value !== 'number') throw new TypeError(`${name} is a number`);
  return value;
};

describe('years of grass', () => {
  it('never asks a small place for much more hay than the worst year took', () => {
    const { values } = ran('stock.kind=doe&stock.count=4&stock.weight=130&grazed=3&meadow=0');
    const tons = (name: string): number => Number.parseFloat(printName(season, values, name, 'us'));
    expect(tons('hayTon')).toBeGreaterThan(0);
    expect(tons('hayTon')).toBeLessThanOrEqual(tons('mostNeedTon') + 0.1);
    expect(tons('hayTon')).toBeGreaterThanOrEqual(Number(values['hayTon']));
  });

  it('gives two sides that are alike the same to the last bit, whatever was worked out between', () => {
    const { form } = fromLink(season, 'that.paddocks=4');
    const first = runTexts(season, form.this);
    // Other places push the first out of what is kept.
    for (let throwOf = 1; throwOf <= 6; throwOf += 1) runTexts(season, fromLink(season, `throw=${throwOf}`).form.this);
    const second = runTexts(season, form.that ?? {});
    expect(JSON.stringify(second)).toBe(JSON.stringify(first));
  });
  it('moves more hay by a fifth of the stock than by any fence', () => {
    // Stocking before system: Briske and others, 2008; Thurow and others, 1988.
    const usual = number('', 'medianNeedTon');
    const byStock = usual - number('kept=80pct', 'medianNeedTon');
    const byFence = Math.abs(usual - number('paddocks=12&stay=4d&rest=25d&next=most-grass', 'medianNeedTon'));
    expect(byStock).toBeGreaterThan(0.1 * usual);
    expect(byStock).toBeGreaterThan(3 * byFence);
  });
  it('asks for no less hay where more is lost in feeding, and for what a year takes no more of a fuller barn', () => {
    expect(number('feeding-loss=30pct', 'hayTon')).toBeGreaterThan(number('feeding-loss=5pct', 'hayTon'));
    expect(number('short-of-ten=0', 'hayTon')).toBe(number('', 'mostNeedTon'));
    expect(number('barn=230ton', 'filledShortCount')).toBeLessThanOrEqual(number('barn=200ton', 'filledShortCount'));
    expect(number('', 'carriedShortCount')).toBeGreaterThanOrEqual(number('', 'filledShortCount'));
  });
  describe('a sale', () => {
    const onHay =
      'run=6yr&turn-out=2026-04-20&pull=2026-04-20&stock.kind=cow-dry&stock.count=100&stock.weight=1000lb&stock.intake=2pct&winter=100pct&meadow=0ac';
    it('of part of the herd lowers the hay of each year, and the more of it goes the more', () => {
      const years = (query: string) => Object(ran(query).values['years']).map(({ needTon }: { readonly needTon: number }) => needTon);
      const [none, fifth, half]: readonly (readonly number[])[] = ['', 'sells=yearly&sold=20pct', 'sells=yearly&sold=50pct'].map(years);
      expect(none).toHaveLength(29);
      for (const [index, needTon] of (none ?? []).entries()) {
        expect(fifth?.[index]).toBeLessThan(needTon);
        expect(half?.[index]).toBeLessThan(fifth?.[index] ?? 0);
      }
    });
    it('of nothing changes nothing, to the last bit, nor does one that is not asked for', () => {
      // Twice the herd, of which the sale of a dry year would take some.
      const usual = JSON.stringify(ran('kept=200pct').computed);
      expect(number('kept=200pct&sells=dry', 'soldCount')).toBeGreaterThan(0);
      for (const query of ['sells=yearly&sold=0pct', 'sells=dry&sold=0pct&sale-below=365d', 'sells=never&sold=90pct&sale-below=365d'])
        expect(JSON.stringify(ran(`kept=200pct&${query}`).computed), query).toBe(usual);
    });
    it('hangs on the grass of that day if it is to: from no year to every year', () => {
      const soldYears = (days: number) => number(`sells=dry&sale=2026-08-15&sale-below=${days}d`, 'soldCount');
      const counts = [1, 20, 40, 80, 365].map(soldYears);
      expect(counts).toEqual(counts.toSorted((one, other) => one - other));
      expect([counts[0], counts.at(-1)]).toEqual([0, 29]);
      expect(counts.some((count) => count > 0 && count < 29)).toBe(true);
      expect(number('sells=yearly&sale=2026-08-15', 'soldCount')).toBe(29);
    });
    it('is told in the strip of the drawn year, week by week, and on the day worked through', () => {
      const { values } = ran(`${onHay}&sells=yearly&sold=50pct&sale=2026-10-20&shown-year=2&shown=2026-10-20`);
      const fed: readonly number[] = Object(values['weeks']).map(({ weekFedTon }: { readonly weekFedTon: number }) => weekFedTon);
      // 2,000 lb a day, seven days a week; the 27th week begins on October 19, with one such day and six of half.
      expect([fed[0], fed[25], fed[26], fed[27]]).toEqual([7, 7, 4, 3.5]);
      expect([values['dayFullLb'], values['dayKeptRatio'], values['dayWantedLb']]).toEqual([2000, 0.5, 1000]);
    });
  });
  it('tells tons that are enough: a barn filled with what is told is short in no more years than are told', () => {
    for (const query of ['', 'stock.count=60', 'paddocks=4&stay=7d', 'throw=3', 'meadow=0ac', 'run=40yr']) {
      const { values } = ran(query);
      for (const [system, unit] of [
        ['us', 'ton'],
        ['si', 'tonne'],
      ] as const) {
        const [told] = printName(season, values, 'hayTon', system).replaceAll(',', '').split(' ');
        const short = number(`${query}&barn=${told}${unit}`, 'filledShortCount');
        expect(short, `${query}: ${told} ${unit}`).toBeLessThanOrEqual(Number(values['shortCount']));
      }
    }
  });
  it('shows what the order of years does to a carried barn, and lets it narrow no range', () => {
    const { values, ranges } = ran('');
    expect(values['orders']).toEqual(
      [2, 3, 4].map((blockYearsCount) => ({
        blockYearsCount,
        orderMeanCount: expect.any(Number),
        orderLeastCount: expect.any(Number),
        orderMostCount: expect.any(Number),
        orderOfCount: 29,
      })),
    );
    for (const { orderMeanCount: mean, orderLeastCount: least, orderMostCount: most } of Object(values['orders'])) {
      expect(least).toBeLessThan(mean);
      expect(mean).toBeLessThan(most);
    }
    const exact = exactBinomialInterval({ successes: Number(values['carriedShortCount']), trials: 29 });
    expect([values['carriedLowPercent'], values['carriedHighPercent']]).toEqual([100 * exact.lowerShare, 100 * exact.upperShare]);
    expect(ranges['carriedShortCount']).toContain('the true range is wider');
  });
  it('moves what may be off inside the limits of its field, to both sides', () => {
    for (const { of, low, high, isShare } of season.swings ?? []) {
      const input = season.inputs[of];
      if (input?.kind !== 'number') throw new TypeError(`${of} is no number`);
      const usual = isShare ? 1 : input.default;
      expect(low, of).toBeLessThan(usual);
      expect(high, of).toBeGreaterThan(usual);
      if (isShare) continue;
      expect(low, of).toBeGreaterThanOrEqual(input.min);
      expect(high, of).toBeLessThanOrEqual(input.max);
    }
    expect(season.swings?.length).toBeGreaterThan(5);
  });
  it('turns with the seasons in the south', () => {
    const south =
      'latitude=south-35&turn-out=2026-10-20&pull=2026-05-01&first-cut=2026-12-10&second-cut=2026-02-20&month-rain=2.9in,2.5in,3.1in,3.2in,2.9in,2.4in,2.2in,2.1in,3.2in,3.9in,4.9in,4.6in&month-wet=7.6d,6.8d,7.7d,7.6d,8.6d,8.8d,9.1d,8.7d,10.7d,11.2d,11.9d,10.2d';
    const [there, here] = [number(south, 'grownLbPerAc'), number('latitude=north-35', 'grownLbPerAc')];
    expect(Math.abs(there - here) / here).toBeLessThan(0.1);
  });
});

describe('the years of a rain record', () => {
  const days = readFileSync(join(root, 'content/place/weather.csv'), 'utf8');
  const withRecord = (query: string, rainRecord: string) => runQuery(season, `weather-from=record&${query}`, { rainRecord }).values;
  it('need about the same hay by the month as by the day, and are told apart', () => {
    // The example's record is those very days, added up by month: the hay of a year hangs on its months, the runoff on its days.
    const [byDay, byMonth] = [withRecord('', days), withRecord('', exampleRain)];
    expect([byDay['weatherIs'], byMonth['weatherIs'], byDay['yearsCount'], byMonth['yearsCount']]).toEqual(['days', 'months', 29, 29]);
    expect(Math.abs(Number(byMonth['medianNeedTon']) / Number(byDay['medianNeedTon']) - 1)).toBeLessThan(0.03);
    expect(Math.abs(Number(byMonth['runoffIn']) / Number(byDay['runoffIn']) - 1)).toBeLessThan(0.15);
    expect(byDay['runoffIn']).not.toBe(byMonth['runoffIn']);
  });
  it('begin on the days of the record, and answer to the gauge, not to the usual months', () => {
    const { years } = withRecord('', exampleRain);
    expect(Array.isArray(years) && years[0]).toMatchObject({ startDay: Date.UTC(1996, 3, 20) / 86_400_000 });
    const halved = exampleRain.replace(/\d+\.\d+/g, (inches) => (Number(inches) * 0.6).toFixed(2));
    expect(Number(withRecord('', halved)['runoffIn'])).toBeLessThan(0.5 * Number(withRecord('', exampleRain)['runoffIn']));
  });
  it('are as good as made-up ones to both sides: alike, they give the same to the last bit', () => {
    const first = JSON.stringify(withRecord('', exampleRain));
    withRecord('throw=3', exampleRain);
    withRecord('latitude=north-35', exampleRain);
    expect(JSON.stringify(withRecord('', exampleRain))).toBe(first);
  });
  it('leave years with unread rain out, and say how many', () => {
    const lines = days.split('\n');
    const gap = `#= unlisted=not-read\n${lines.filter((line) => !line.startsWith('2003-06') && !line.startsWith('2010-08-1')).join('\n')}`;
    expect(withRecord('', gap)).toMatchObject({ leftOutCount: 2, yearsCount: 27, unreadDays: 40, bound: 'cannot' });
  });
  it('take the highs and lows beside the rain, and make them up without', () => {
    const bare = days
      .split('\n')
      .map((line) => line.split(',').slice(0, 2).join(','))
      .join('\n');
    const hotter = days.replace(/,(-?\d+),(-?\d+)$/gm, (_, high, low) => `,${Number(high) + 8},${Number(low)}`);
    expect(days.split('\n')[0]).toBe('day,rainIn,highF,lowF');
    const [own, without, hot] = [withRecord('', days), withRecord('', bare), withRecord('', hotter)];
    expect([own['madeUpTempPercent'], without['madeUpTempPercent'], own['bridgedTempPercent']]).toEqual([0, 100, 0]);
    // Growth is fitted to the usual yield either way, so heat shows in thirst.
    expect(Number(hot['stressDays'])).toBeGreaterThan(1.1 * Number(own['stressDays']));
    expect(Math.abs(Number(without['medianNeedTon']) / Number(own['medianNeedTon']) - 1)).toBeLessThan(0.03);
  });
  it('draw any year of a long record, and the last where fewer are there', () => {
    const long = ['year,Jan (in),Feb,Mar,Apr,May,Jun,Jul,Aug,Sep,Oct,Nov,Dec'];
    for (let year = 1900; year < 2000; year += 1) long.push(`${year},2,2,3,4,5,4.5,3,2.5,3,3,3,2.5`);
    const drawn = (query: string) => {
      const { weeks } = withRecord(query, long.join('\n'));
      const first = Array.isArray(weeks) ? weeks[0] : undefined;
      return typeof first === 'object' ? new Date(Number(first['weekDay']) * 86_400_000).getUTCFullYear() : undefined;
    };
    expect([drawn('shown-year=90'), drawn('shown-year=200')]).toEqual([1989, 1998]);
  });
});

describe('places that are kept for the other management and the next key', () => {
  const asked = readForm(season.inputs, fromLink(season, 'run=60yr').form.this).values as Asked;
  it('makes the days of other ground under the same weather once', () => {
    const loam = placeOf({ ...asked, texture: 'silt-loam' });
    expect(placeOf({ ...asked, texture: 'sand' }).weather).toBe(loam.weather);
    expect(placeOf({ ...asked, throwCount: asked.throwCount + 1 }).weather).not.toBe(loam.weather);
    const skyOf = (change: Partial<typeof asked>) => {
      const fits = fitsOf({ ...asked, ...change });
      return fits.kind === 'fits' && fits.sky;
    };
    expect(skyOf({ texture: 'silt-loam' })).toBe(skyOf({ organicPercent: 1 }));
    expect(skyOf({ grass: 'warm' })).not.toEqual(skyOf({ grass: 'cool' }));
  });
  it('are the last four of sixty years', () => {
    const places = [1, 2, 3, 4].map((throwCount) => placeOf({ ...asked, throwCount }));
    expect([1, 2, 3, 4].map((throwCount) => placeOf({ ...asked, throwCount }) === places[throwCount - 1])).toEqual([true, true, true, true]);
    placeOf({ ...asked, throwCount: 5 });
    expect(placeOf({ ...asked, throwCount: 2 })).toBe(places[1]);
    expect(placeOf({ ...asked, throwCount: 1 })).not.toBe(places[0]);
  });
  it('are no more than one of a record of centuries, which takes as much room as all of them', () => {
    const first = Date.UTC(1600, 0, 1) / 86_400_000;
    const rainRecord = Array.from({ length: 300 * 365 }, (_, at) => ({ day: first + at, amount: 0.1 }));
    const long = { ...asked, weatherFrom: 'record' as const, rainRecord };
    const [short, centuries] = [placeOf({ ...asked, throwCount: 7 }), placeOf(long)];
    expect(placeOf(long)).toBe(centuries);
    expect(placeOf({ ...asked, throwCount: 7 })).not.toBe(short);
    expect(placeOf(long)).not.toBe(centuries);
  });
});

describe('a calculator that runs long', () => {
  const { values } = readForm(season.inputs, fromLink(season, 'run=6yr').form.this);
  it('gives by steps what it gives at once, and goes forward', () => {
    const steps = season.runBySteps?.(values, 'us');
    if (!steps) throw new Error('the season runs by steps');
    const shares: number[] = [];
    let step = steps.next();
    for (; !step.done; step = steps.next()) shares.push(step.value);
    expect(JSON.stringify(step.value)).toBe(JSON.stringify(season.run(values, 'us')));
    expect(shares.length).toBeGreaterThan(5);
    expect(shares).toEqual(shares.toSorted((one, other) => one - other));
  });
  function* counting(): Generator<number, Run> {
    for (let share = 0; share < 10; share += 1) yield share / 10;
    return { refusals: [] };
  }
  it('gives others their turn between its slices, and stops where it is told to', async () => {
    let pauses = 0;
    const told: number[] = [];
    const slicing = {
      sliceMs: 0,
      pause: async () => {
        pauses += 1;
      },
      onShare: (share: number) => {
        told.push(share);
      },
    };
    expect(await sliced(counting(), { ...slicing, isStopped: () => false })).toEqual({ refusals: [] });
    expect(pauses).toBe(10);
    expect(told.at(-1)).toBe(0.9);
    pauses = 0;
    expect(await sliced(counting(), { ...slicing, isStopped: () => pauses === 3 })).toBeUndefined();
    expect(pauses).toBe(3);
  });
  it('is known to the worker', () => {
    const worker = readFileSync(join(root, 'src/scripts/longWorker.ts'), 'utf8');
    for (const { slug } of calculators.filter(({ runs }) => runs === 'long')) expect(worker).toContain(`catalog/${slug}/definition.ts`);
  });
  it('keeps its engine to itself', () => {
    const users = filesBelow('calculators', /\.tsx?$/).filter((path) => /from '(?:\.\.\/)+season\//.test(readFileSync(join(root, path), 'utf8')));
    expect(users.filter((path) => !path.startsWith('calculators/catalog/season/'))).toEqual([]);
  });
});
