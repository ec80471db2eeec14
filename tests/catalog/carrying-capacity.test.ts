import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import definition from '../../calculators/catalog/carrying-capacity/definition.ts';
import { inputs } from '../../calculators/catalog/carrying-capacity/inputs.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { commonGrazer } from '../../calculators/math/herd/likelyIntakePercent.ts';
import { dayMs } from '../../calculators/units/days.ts';
import { isoDay } from '../../calculators/units/printQuantity.ts';
import { expectWithin } from '../support/expectWithin.ts';

const run = (query: string) => runQuery(definition, query);
const numberAt = (query: string, path: string): number => Number(resultAt(run(query), path));
const percent = fc.integer({ min: 0, max: 100 });
/** Days after June 20, the default today. */
const wait = fc.integer({ min: 0, max: 130 });
const june20 = Date.UTC(2026, 5, 20) / dayMs;
const close = (one: number, other: number): void => expect(Math.abs(one - other)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other)));

describe('carrying-capacity', () => {
  test('parts thousands of head wherever they are told', () => {
    const { note, ranges } = run('herd.kind=cow-nursing&herd.count=1500&herd.weight=1250&pastures.area=60000&pastures.normal=900&pastures.poor=400');
    for (const said of [note, ...Object.values(ranges)]) expect(said.replaceAll(/\b20\d\d\b/g, '')).not.toMatch(/\d{4}/);
    expect(note).toMatch(/\d,\d{3} to \d,\d{3} by the share eaten/);
  });

  test('swings the share eaten fifteen points both ways, never under 5 nor over 90', () => {
    const sharesAt = (harvest: number): readonly unknown[] => {
      const { shares } = run(`yield-from=survey&harvest=${harvest}pct`).values;
      return Array.isArray(shares) ? shares.map((row) => row['sharePercent']) : [];
    };
    expect(sharesAt(10)).toEqual([5, 10, 25]);
    expect(sharesAt(40)).toEqual([25, 40, 55]);
    expect(sharesAt(80)).toEqual([65, 80, 90]);
  });
  // Appetites of the guides: hibberd-thrift-1992 for cows, semler-sheep and nrc-small-ruminants-2007 for ewes.
  test('one kind stands for another by what they eat: a dry flock and its cows carry the same', () => {
    const eatsLb = (kind: 'cow-nursing' | 'ewe-dry' | 'ewe-nursing'): number => {
      const { weightLb, intakePercent } = commonGrazer(kind);
      return (weightLb * intakePercent) / 100;
    };
    expectWithin(eatsLb('cow-nursing') / eatsLb('ewe-dry'), 10, 0.5);
    expectWithin(eatsLb('cow-nursing') / eatsLb('ewe-nursing'), 5, 0.5);
    expect(inputs.pastures.columns.usualHead.help).toContain('ten dry ewes, or five with lambs');
    expect(inputs.usualEatenLbPerDay.help).toContain(`a dry ewe of 160 lb (73 kg) about ${eatsLb('ewe-dry')} lb`);
    const carried = (usual: string): number =>
      numberAt(
        `yield-from=stock-days&herd.kind=ewe-dry&herd.count=250&herd.weight=160lb&herd.intake=2pct&pastures.lasted=160d&${usual}`,
        'normalHead',
      );
    const [flock, asCows] = [carried('pastures.usual=250&usual-eaten=3.2lb/d'), carried('pastures.usual=25&usual-eaten=31lb/d')];
    expectWithin(asCows / flock, 1, 0.05);
  });
  test('feeds nobody with what grows after the last day', () => {
    // By North Dakota's curve 5, 40 and 35 % of the year have grown by the end of June.
    const on = 'yield-from=survey&curve=nd0002&from=2026-04-20&today=2026-05-10&go=2026-05-10';
    for (const path of ['years.0.supplyLb', 'years.1.supplyLb'])
      close(numberAt(`${on}&to=2026-06-30`, path) / numberAt(`${on}&to=2026-12-31`, path), 0.8);
  });
  test('waiting never makes fewer go', () => {
    fc.assert(
      fc.property(wait, wait, percent, percent, (one, other, soFar, rest) => {
        const go = (days: number) => numberAt(`so-far=${soFar}pct&rest=${rest}pct&go=${isoDay(june20 + days)}`, 'exactGoHead');
        expect(go(Math.max(one, other))).toBeGreaterThanOrEqual(go(Math.min(one, other)) - 1e-9);
      }),
    );
  });

  test('more growth never makes more go, and the range holds the answer', () => {
    fc.assert(
      fc.property(percent, percent, percent, percent, (one, other, before, after) => {
        const dry = `so-far=${Math.min(one, other)}pct&rest=${Math.min(before, after)}pct`;
        const wet = `so-far=${Math.max(one, other)}pct&rest=${Math.max(before, after)}pct`;
        expect(numberAt(wet, 'exactGoHead')).toBeLessThanOrEqual(numberAt(dry, 'exactGoHead') + 1e-9);
        for (const query of [dry, wet]) {
          expect(numberAt(query, 'lowGoHead')).toBeLessThanOrEqual(numberAt(query, 'goHead'));
          expect(numberAt(query, 'highGoHead')).toBeGreaterThanOrEqual(numberAt(query, 'goHead'));
        }
      }),
    );
  });

  test('when that many go on that day, what is left feeds the rest to the end', () => {
    fc.assert(
      fc.property(wait, percent, percent, (days, soFar, rest) => {
        const { values } = run(`so-far=${soFar}pct&rest=${rest}pct&go=${isoDay(june20 + days)}`);
        if (values['verdict'] !== 'some-go') return;
        const at = (name: string): number => Number(values[name]);
        const stay = at('firstHead') - at('exactGoHead');
        const eaten = at('herdLbPerDay') * at('waitDays') + (at('othersLbPerDay') + stay * at('firstLbPerDay')) * (at('leftDays') - at('waitDays'));
        close(eaten, at('leftLb'));
      }),
    );
  });

  test('the same share gives the same feed, however it is told, and is taken once', () => {
    const told = numberAt('yield-means=eaten-of-growth&harvest=25pct', 'normalYearLb');
    close(numberAt('yield-means=gone-of-growth&gone=50pct&eaten-of-gone=50pct', 'normalYearLb'), told);
    close(numberAt('yield-means=above-stubble&grazed=25pct', 'normalYearLb'), told);
  });

  test('air-dry pounds hold a tenth less than oven-dry ones', () => {
    close(numberAt('yield-basis=air-dry', 'normalYearLb'), 0.9 * numberAt('yield-basis=oven-dry', 'normalYearLb'));
    close(numberAt('yield-basis=air-dry', 'otherBasisHead'), numberAt('yield-basis=oven-dry', 'normalHead'));
  });

  test('a year as usual is the normal year', () => {
    fc.assert(
      fc.property(wait, (days) => {
        const query = `so-far=100pct&rest=100pct&today=${isoDay(june20 + days)}&go=${isoDay(june20 + days)}`;
        close(numberAt(query, 'thisLb'), numberAt(query, 'normalLb'));
      }),
    );
  });

  test.each([
    ['to=2027-04-20', 'at most 12 months'],
    ['to=2027-03-01', 'two seasons'],
    ['to=2026-04-01&today=2026-04-20', 'come after turn-in'],
    ['today=2026-03-01', 'between turn-in and the last day'],
    ['go=2026-06-01', 'from today to before the last day'],
    ['start-month=jun&best-month=may', 'in order'],
    ['quit-month=may&fall-flush=some', 'after the best one'],
  ])('%s is refused in words', (query, words) => {
    expect(() => run(query)).toThrow(words);
  });
});

describe('a season over New Year', () => {
  const season = (curve: string, from: string, today: string, to: string) =>
    `${curve}&fall-flush=none&from=${from}&today=${today}&go=${today}&to=${to}&so-far=100pct&rest=100pct`;
  const annual = season('start-month=nov&best-month=mar&quit-month=may', '2026-11-01', '2027-01-31', '2027-05-31');
  test('on annual range: by January 31 126 of 620 parts are due, by hand, and the winter is counted as days grazed', () => {
    const { values } = run(annual);
    close(Number(values['grownPercent']), (100 * 126) / 620);
    close(Number(values['endPercent']), 100);
    // November 30, December 31, January 31 days; turn-in is the first of them.
    expect([values['goneDays'], values['seasonDays']]).toEqual([91, 211]);
    const lines = values['monthLines'];
    const due = Array.isArray(lines) ? lines.map(({ duePercent }) => Number(duePercent)) : [];
    // 9, 36, 81, 144, 225 of 225 from November to March, then 100/225 and 25/225.
    expect(due.map((each) => Math.round((each * 620) / 100))).toEqual([9, 45, 126, 270, 495, 595, 620]);
  });
  test('turned by half a year it is the same by months', () => {
    const turned = season('start-month=may&best-month=sep&quit-month=nov', '2026-05-01', '2026-07-31', '2026-11-30');
    for (const path of ['grownPercent', 'endPercent', 'monthLines.0.duePercent', 'monthLines.3.duePercent', 'monthLines.6.duePercent'])
      close(numberAt(turned, path), numberAt(annual, path));
  });
  test('a year later it is the same in every figure', () => {
    const shape = 'start-month=oct&best-month=dec&quit-month=mar';
    const [one, other] = [season(shape, '2024-10-01', '2024-12-15', '2025-03-31'), season(shape, '2025-10-01', '2025-12-15', '2026-03-31')].map(
      (query) => {
        const { shown, values } = run(query);
        return shown.filter((key) => typeof values[key] === 'number' && !key.endsWith('Day')).map((key) => [key, values[key]]);
      },
    );
    expect(one?.length).toBeGreaterThan(5);
    expect(other).toEqual(one);
  });
  test('reaches from the growth of one summer into the winter after it, and no further than the next growth', () => {
    close(numberAt('to=2027-02-28', 'endPercent'), 100);
    expect(numberAt('to=2027-02-28', 'seasonDays')).toBe(314);
  });
  test('says where all of it grew before turn-in', () => {
    const says = (query: string) => run(query).cautions.some(({ lead }) => lead.includes('still stands uneaten'));
    expect(says('from=2026-01-01&today=2026-01-01&go=2026-01-01&to=2026-02-15')).toBe(true);
    expect(says('from=2026-11-15&today=2026-11-15&go=2026-11-15&to=2026-12-31')).toBe(true);
    expect(says(annual)).toBe(false);
  });
});

test('the balance by month ends where the season does, and a poor year never stands above a normal one', () => {
  const outcome = run('');
  const rowsOf = (name: string) => {
    const list = outcome.values[name];
    return Array.isArray(list) ? list : [];
  };
  const months = rowsOf('monthLines');
  const [normal, poor, thisYear] = rowsOf('years');
  expect(months).toHaveLength(7);
  close(months.at(-1).normalAheadLb, normal.balanceLb);
  close(months.at(-1).poorAheadLb, poor.balanceLb);
  close(months.at(-1).thisAheadLb, thisYear.balanceLb);
  for (const { normalAheadLb, poorAheadLb } of months) expect(poorAheadLb).toBeLessThanOrEqual(normalAheadLb);
});

test('one head is told as one', () => {
  const { note, ranges } = run('herd.count=1&pastures.area=10');
  expect(note).toContain('; there is 1 head.');
  expect(ranges['goHead']).toContain('usual, 1 head if nothing more grows');
  expect(run('').note).toContain('; there are 45 head.');
});

describe('the swing of the share eaten', () => {
  const sharesOf = (query: string): readonly { readonly sharePercent: number; readonly shareNormalHead: number; readonly shareGoHead: number }[] => {
    const list = run(query).values['shares'];
    return Array.isArray(list) ? list : [];
  };

  test('25, 40 and 55 % carry 23, 46 and 69 head: in the headline, in its range and in the note', () => {
    expect(sharesOf('harvest=40pct').map(({ sharePercent }) => sharePercent)).toEqual([25, 40, 55]);
    expect(sharesOf('harvest=40pct').map(({ shareNormalHead }) => Math.round(shareNormalHead))).toEqual([23, 46, 69]);
    const { note, ranges, cautions } = run('harvest=40pct');
    expect(note).toContain('about 46 head (23 to 69 by the share eaten, 25 to 55 %)');
    expect(ranges['normalHead']).toContain('23 to 69 by the share eaten, 25 to 55 %');
    expect(ranges['goHead']).toContain('45 to 0 by the share eaten, 25 to 55 %');
    expect(cautions.map(({ say }) => say).join(' ')).toContain('no trial here shows that grass stands them in a drought');
  });

  // Rounded up to whole animals, a hair below none is minus zero, which `toBe` tells from none.
  test('where all can stay, none go', () => {
    expect(sharesOf('harvest=80pct').at(-1)?.shareGoHead).toBe(0);
    expect(numberAt('harvest=80pct', 'goHead')).toBe(0);
  });

  test('each end is what a run with that share itself gives', () => {
    for (const { sharePercent, shareNormalHead, shareGoHead } of sharesOf('')) {
      close(numberAt(`harvest=${sharePercent}pct`, 'normalHead'), shareNormalHead);
      expect(numberAt(`harvest=${sharePercent}pct`, 'goHead')).toBe(shareGoHead);
    }
  });

  test.each(['harvest=5pct', 'harvest=80pct', 'yield-means=above-stubble&grazed=100pct', 'yield-means=gone-of-growth&gone=5pct&eaten-of-gone=10pct'])(
    '%s: the share given lies within its swing, and the swing within what can be eaten',
    (query) => {
      const shares = sharesOf(query).map(({ sharePercent }) => sharePercent);
      expect(shares).toEqual(shares.toSorted((one, other) => one - other));
      expect(shares).toHaveLength(3);
      for (const share of shares) {
        expect(share).toBeGreaterThan(0);
        expect(share).toBeLessThanOrEqual(100);
      }
    },
  );

  test('range starts at a quarter eaten', () => {
    expect(inputs.land.options.range.fills).toEqual({ harvestPercent: 25 });
  });

  test('what was run there was eaten already: no share, no swing', () => {
    expect(sharesOf('yield-from=stock-days')).toEqual([]);
    expect(run('yield-from=stock-days').note).not.toContain('by the share eaten');
  });
});
