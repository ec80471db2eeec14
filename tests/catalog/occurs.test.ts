import { describe, expect, it } from 'vitest';
import { isDoubtful } from '../../calculators/kit/clock.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import type { Cell, Occurs } from '../../calculators/kit/inputs.ts';
import { exampleOn, occurrenceOf } from '../../calculators/kit/occurs.ts';
import { readForm, rowsIn, startTexts, type Texts, textIn } from '../../calculators/kit/state.ts';
import { clockQuestion } from '../../calculators/ui/ClockQuestion.tsx';
import { localDay } from '../../calculators/units/days.ts';
import { dayOf, isoDay } from '../../calculators/units/printQuantity.ts';
import { calculators } from '../support/catalog.ts';
import { isWanted } from '../support/mutated.ts';

const day = (iso: string): number => {
  const found = dayOf(iso);
  if (found === undefined) throw new RangeError(`${iso} is no day`);
  return found;
};
const daysFrom = (iso: string, count: number): readonly number[] => Array.from({ length: count }, (_, ahead) => day(iso) + ahead);

/** Every date and month of a form with its place, `herd.birthDay` for a column. */
function dated({ inputs }: Calculator): readonly (readonly [string, Occurs])[] {
  const of = (at: string, cell: Cell): readonly (readonly [string, Occurs])[] =>
    (cell.kind === 'date' || cell.kind === 'choice') && cell.occurs !== undefined ? [[at, cell.occurs]] : [];
  return Object.entries(inputs).flatMap(([key, input]) => {
    if (input.kind === 'rows') return Object.entries(input.columns).flatMap(([name, cell]) => of(`${key}.${name}`, cell));
    return input.kind === 'months' || input.kind === 'record' ? [] : of(key, input);
  });
}
/** The days that stand in one date, or in one column of dates. */
function daysAt(texts: Texts, at: string): readonly number[] {
  const [key = '', column] = at.split('.');
  return column === undefined ? [day(textIn(texts[key]))] : rowsIn(texts[key]).map((row) => day(row[column] ?? ''));
}
const calculatorOf = (slug: string): Calculator => {
  const found = calculators.find((each) => each.slug === slug);
  if (!found) throw new RangeError(`no calculator ${slug}`);
  return found;
};
const opened = (slug: string, today: string) => {
  const calculator = calculatorOf(slug);
  return exampleOn(calculator, startTexts(calculator.inputs), day(today));
};

it('asks whether the moved dates would be refused without working the example out', () => {
  const calculator: Calculator = {
    ...calculatorOf('hay-to-grass'),
    run: () => {
      throw new Error('worked out');
    },
  };
  expect(exampleOn(calculator, startTexts(calculator.inputs), day('2027-02-28')).texts).toMatchObject({ fromDay: '2027-02-28' });
});

describe('a date seen from today', () => {
  // Counted on a calendar. 2028 and 2032 have a February 29.
  it.each<[occurs: Occurs, start: string, today: string, then: string]>([
    ['fixed', '2025-09-30', '2028-02-29', '2025-09-30'],
    ['today', '2026-06-20', '2028-02-29', '2028-02-29'],
    ['thisYear', '2026-06-15', '2028-02-29', '2028-06-15'],
    ['thisYear', '2026-12-31', '2028-01-01', '2028-12-31'],
    ['thisYear', '2026-01-01', '2027-12-31', '2027-01-01'],
    ['thisYear', '2028-02-29', '2027-07-04', '2027-02-28'],
    ['thisYear', '2028-02-29', '2032-07-04', '2032-02-29'],
    ['thisYear', '2026-03-01', '2028-07-04', '2028-03-01'],
    [{ daysAfterToday: 20 }, '2026-07-10', '2027-12-20', '2028-01-09'],
    [{ daysAfterToday: 20 }, '2026-07-10', '2028-02-10', '2028-03-01'],
    [{ daysAfterToday: 20 }, '2026-07-10', '2027-02-10', '2027-03-02'],
    [{ lastBy: 'today' }, '2026-04-20', '2028-04-19', '2027-04-20'],
    [{ lastBy: 'today' }, '2026-04-20', '2028-04-20', '2028-04-20'],
    [{ lastBy: 'today' }, '2026-04-20', '2028-01-01', '2027-04-20'],
    [{ lastBy: 'today' }, '2026-12-31', '2028-01-01', '2027-12-31'],
    [{ lastBy: 'today' }, '2026-12-31', '2027-12-31', '2027-12-31'],
    [{ lastBy: 'today' }, '2028-02-29', '2028-02-28', '2027-02-28'],
    [{ lastBy: 'today' }, '2028-02-29', '2028-02-29', '2028-02-29'],
    [{ nextFrom: 'today' }, '2026-11-01', '2027-11-01', '2027-11-01'],
    [{ nextFrom: 'today' }, '2026-11-01', '2027-11-02', '2028-11-01'],
    [{ nextFrom: 'today' }, '2026-01-01', '2027-12-31', '2028-01-01'],
    [{ nextFrom: 'today' }, '2028-02-29', '2027-03-01', '2028-02-29'],
    [{ nextFrom: 'today' }, '2028-02-29', '2028-03-01', '2029-02-28'],
    [{ before: 'otherDay', built: '2026-10-31' }, '2026-10-30', '2028-02-29', '2030-10-31'],
    [{ before: 'otherDay', built: '2026-10-31' }, '2026-05-15', '2028-02-29', '2030-05-16'],
    [{ lastBy: 'otherDay' }, '2026-06-15', '2028-02-29', '2030-06-15'],
    [{ nextFrom: 'otherDay' }, '2026-04-20', '2028-02-29', '2031-04-20'],
    [{ lastBy: 'otherDay', notBefore: 'today' }, '2026-06-15', '2030-05-01', '2030-06-15'],
    [{ lastBy: 'otherDay', notBefore: 'today' }, '2026-06-15', '2030-08-01', '2030-08-01'],
    // From November till the end of a time, 2030-11-01: today while it is under way.
    [{ nextFrom: 'today', until: 'otherDay' }, '2026-10-01', '2030-07-04', '2030-10-01'],
    [{ nextFrom: 'today', until: 'otherDay' }, '2026-10-01', '2030-10-01', '2030-10-01'],
    [{ nextFrom: 'today', until: 'otherDay' }, '2026-10-01', '2030-10-02', '2030-10-02'],
    [{ nextFrom: 'today', until: 'otherDay' }, '2026-12-01', '2029-11-30', '2029-12-01'],
    // Both ends are 2030-11-01: it is that day, or half a year before it at most, or after.
    [{ nearest: ['otherDay', 'otherDay'] }, '2026-11-01', '2028-02-29', '2030-11-01'],
    [{ nearest: ['otherDay', 'otherDay'] }, '2026-05-15', '2028-02-29', '2030-05-15'],
    [{ nearest: ['otherDay', 'otherDay'] }, '2026-04-15', '2028-02-29', '2031-04-15'],
  ])('%j of %s on %s is %s', (occurs, start, today, then) => {
    const other = () => day('2030-11-01');
    expect(isoDay(occurrenceOf(occurs, day(start), day(today), { dayAt: other, endAt: other }))).toBe(then);
  });

  it('is today where the device is, to the last minute of the day', () => {
    expect(isoDay(localDay(new Date(2028, 1, 29, 23, 59)))).toBe('2028-02-29');
    expect(isoDay(localDay(new Date(2028, 0, 1, 0, 0)))).toBe('2028-01-01');
  });

  it('is doubted before the copy was built, and three years on', () => {
    const isDoubted = (today: string, built: string) => isDoubtful(day(today), day(built));
    // A day before may be the same hour farther west.
    expect(['2019-01-03', '2026-11-26', '2026-11-27', '2026-11-28'].map((today) => isDoubted(today, '2026-11-28'))).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect(['2029-11-28', '2029-11-29'].map((today) => isDoubted(today, '2026-11-28'))).toEqual([false, true]);
    expect(['2031-02-28', '2031-03-01'].map((today) => isDoubted(today, '2028-02-29'))).toEqual([false, true]);
    expect(clockQuestion(day('2019-01-03'))).toBe('This device says Jan 3, 2019. Is that today?');
  });
});

describe('an example on a day', () => {
  // By hand from section on section of the season: what a person would put in who opens the form on that day.
  it.each<[slug: string, today: string, dates: Readonly<Record<string, string | readonly string[]>>]>([
    ['carrying-capacity', '2027-07-04', { fromDay: '2027-04-20', toDay: '2027-10-31', todayDay: '2027-07-04', goDay: '2027-07-24' }],
    ['carrying-capacity', '2028-04-20', { fromDay: '2028-04-20', toDay: '2028-10-31', todayDay: '2028-04-20', goDay: '2028-05-10' }],
    ['decision-dates', '2027-02-28', { todayDay: '2027-02-28', endDay: '2027-10-31' }],
    [
      'hay-to-grass',
      '2027-04-20',
      {
        fromDay: '2027-11-01',
        toDay: '2028-04-20',
        'herd.birthDay': ['2028-03-10', '2028-03-10', '2028-03-25'],
        baledDay: '2027-06-15',
        weighedDay: '2027-10-15',
      },
    ],
    // While they are on hay, the first day is today.
    [
      'hay-to-grass',
      '2027-03-15',
      {
        fromDay: '2027-03-15',
        toDay: '2027-04-20',
        'herd.birthDay': ['2027-03-10', '2027-03-10', '2027-03-25'],
        baledDay: '2026-06-15',
        weighedDay: '2026-10-15',
      },
    ],
    ['hay-to-grass', '2027-11-02', { fromDay: '2027-11-02', toDay: '2028-04-20', baledDay: '2027-06-15', weighedDay: '2027-10-15' }],
    ['standing-feed', '2027-07-04', { measuredDay: '2027-07-04', fromDay: '2027-12-01', startDay: '2027-12-01', untilDay: '2028-04-01' }],
    ['standing-feed', '2028-01-01', { measuredDay: '2028-01-01', fromDay: '2028-01-01', startDay: '2028-01-01', untilDay: '2028-04-01' }],
    ['sown-feed', '2027-05-21', { sowDay: '2028-05-20', frostDay: '2028-10-15' }],
    ['feed-or-sell', '2028-02-29', { pricesSeenDay: '2028-02-29' }],
    ['rest-and-moves', '2028-02-29', { startDay: '2028-02-29' }],
    ['rain-record', '2028-02-29', { untilDay: '2025-09-30' }],
  ])('%s on %s', (slug, today, dates) => {
    const { texts, isExampleDates } = opened(slug, today);
    expect(isExampleDates).toBe(false);
    for (const [at, then] of Object.entries(dates)) expect(daysAt(texts, at).map(isoDay), at).toEqual([then].flat());
  });
  it('decision-dates moves each step into the season that ends next', () => {
    const built = daysAt(startTexts(calculatorOf('decision-dates').inputs), 'steps.day').map(isoDay);
    const moved = daysAt(opened('decision-dates', '2028-02-29').texts, 'steps.day').map(isoDay);
    expect(moved).toEqual(built.map((iso) => iso.replace('2026-', '2028-')));
    const inFall = daysAt(opened('decision-dates', '2027-11-15').texts, 'steps.day').map(isoDay);
    expect(inFall).toEqual(moved);
  });
  it('takes the month where a month is asked for', () => {
    expect(opened('herd-intake', '2027-01-15')).toMatchObject({ texts: { month: 'jan' }, todayAt: ['month'] });
    expect(opened('herd-intake', '2028-02-29').texts['month']).toBe('feb');
    expect(opened('herd-intake', '2027-12-31').texts['month']).toBe('dec');
  });
  it('tells where today stands', () => {
    expect(opened('carrying-capacity', '2027-07-04').todayAt).toEqual(['todayDay']);
    expect(opened('standing-feed', '2027-07-04').todayAt).toEqual(['measuredDay']);
    expect(['2027-10-31', '2027-11-01', '2027-11-02'].map((today) => opened('hay-to-grass', today).todayAt)).toEqual([[], [], ['fromDay']]);
    expect(opened('rain-on-ground', '2027-07-04')).toMatchObject({ todayAt: [], isExampleDates: false });
  });

  // The day for which each was written: there it is what the built page shows.
  it.each([
    ['carrying-capacity', '2026-06-20'],
    ['decision-dates', '2026-06-01'],
    ['feed-or-sell', '2026-11-01'],
    ['hay-to-grass', '2026-10-20'],
    ['herd-intake', '2026-07-04'],
    ['rest-and-moves', '2026-05-01'],
    ['sown-feed', '2027-03-01'],
    ['standing-feed', '2026-11-10'],
  ])('%s is as built on %s', (slug, today) => {
    expect(opened(slug, today)).toMatchObject({ texts: startTexts(calculatorOf(slug).inputs), isExampleDates: false });
  });

  /** The stretches of 2028 in which the season is over, from their first day to their last. */
  const over2028: Readonly<Record<string, readonly (readonly [first: string, last: string])[]>> = {
    // From twenty days before the end until turn-in there is no day to sell by.
    'carrying-capacity': [
      ['2028-01-01', '2028-04-19'],
      ['2028-10-11', '2028-12-31'],
    ],
    'decision-dates': [['2028-10-31', '2028-10-31']],
    // The day when feed is no longer wanted.
    'standing-feed': [['2028-04-01', '2028-04-01']],
  };
  /** How the dates of a season follow each other. */
  const inOrder: Readonly<Record<string, readonly string[]>> = {
    'carrying-capacity': ['fromDay', 'todayDay', 'goDay', 'toDay'],
    'decision-dates': ['steps.day', 'endDay'],
    'hay-to-grass': ['baledDay', 'weighedDay', 'fromDay', 'toDay'],
    'sown-feed': ['sowDay', 'frostDay'],
    'standing-feed': ['measuredDay', 'fromDay', 'startDay', 'untilDay'],
  };
  const year = daysFrom('2028-01-01', 366);
  const turns = [...daysFrom('2026-12-28', 8), ...daysFrom('2028-12-28', 8), ...daysFrom('2099-12-28', 8), day('1970-01-01'), day('2300-03-01')];
  const isTurn = (each: number): boolean => [-1, 0, 1, 2].some((away) => isoDay(each + away).endsWith('-01'));
  /** Reading thirty years of rain takes ten times as long as all the rest: then one day of each week, and those about the first of a month. */
  const daysFor = ({ inputs }: Calculator): readonly number[] =>
    Object.values(inputs).some(({ kind }) => kind === 'record') ? year.filter((each) => each % 7 === 0 || isTurn(each)) : year;

  describe.each(calculators.filter(({ slug }) => isWanted(slug)).map((calculator) => [calculator.slug, calculator] as const))(
    '%s',
    (slug, calculator) => {
      const start = startTexts(calculator.inputs);
      const moving = dated(calculator);
      /** What is neither a date nor a month that moves. */
      const still = (texts: Texts): Texts =>
        Object.fromEntries(
          Object.entries(texts)
            .filter(([key]) => !moving.some(([at]) => at === key))
            .map(([key, text]) => {
              const columns = moving.flatMap(([at]) => (at.startsWith(`${key}.`) ? [at.slice(key.length + 1)] : []));
              if (columns.length === 0) return [key, text];
              return [key, rowsIn(text).map((row) => Object.fromEntries(Object.entries(row).filter(([name]) => !columns.includes(name))))];
            }),
        );

      it('says of each date how it occurs', () => {
        /** The dates that one goes by, one after the other, to the one that goes by today. */
        const chainOf = (at: string, occurs: Occurs | undefined): readonly string[] => {
          if (typeof occurs !== 'object' || 'daysAfterToday' in occurs) return [at];
          // The first of two is what the second goes by.
          const anchor =
            'lastBy' in occurs ? occurs.lastBy : 'before' in occurs ? occurs.before : 'nearest' in occurs ? occurs.nearest[1] : occurs.nextFrom;
          if (anchor === 'today') return [at];
          const input = calculator.inputs[anchor];
          expect(input?.kind, `${at} goes by ${anchor}, which must be a date at the top of the form`).toBe('date');
          return anchor === at ? [at, at] : [at, ...chainOf(anchor, input?.kind === 'date' ? input.occurs : undefined)];
        };
        for (const [at, occurs] of moving) {
          const chain = chainOf(at, occurs);
          expect(new Set(chain).size, `${at} goes by itself`).toBe(chain.length);
        }
        // Say beside such a date why it does not move, and name it here.
        expect(moving.filter(([, occurs]) => occurs === 'fixed').map(([at]) => at)).toEqual(slug === 'rain-record' ? ['untilDay'] : []);
      });

      it('lists months in order where today’s is shown', () => {
        const names = Array.from({ length: 12 }, (_, month) =>
          new Date(Date.UTC(2026, month, 1)).toLocaleString('en-US', { month: 'long', timeZone: 'UTC' }),
        );
        for (const [at] of moving) {
          const input = calculator.inputs[at];
          if (input?.kind === 'choice') expect(Object.values(input.options).map(({ label }) => label)).toEqual(names);
        }
      });

      /** What is wrong with the form on a day that takes the moved dates. */
      const faultsOf = (texts: Texts, today: number): readonly string[] => {
        const { values, problems } = readForm(calculator.inputs, texts);
        const run = calculator.runs === 'long' ? calculator.run(values) : undefined;
        const faults = [...problems, ...(run && 'refusals' in run ? run.refusals : [])].map(({ say }) => say);
        const say = (isWrong: boolean, what: string): void => {
          if (isWrong) faults.push(what);
        };
        say(JSON.stringify(still(texts)) !== JSON.stringify(still(start)), 'more than dates has moved');
        for (const [at, occurs] of moving) {
          if (calculator.inputs[at]?.kind === 'choice') continue;
          const days = daysAt(texts, at);
          if (occurs === 'today')
            say(
              days.some((each) => each !== today),
              `${at} is not today`,
            );
          if (typeof occurs !== 'object' || 'daysAfterToday' in occurs) continue;
          if ('nearest' in occurs) {
            const [[from = Number.NaN], [to = Number.NaN]] = [daysAt(texts, occurs.nearest[0]), daysAt(texts, occurs.nearest[1])];
            // Before the first day only where that is today, in the middle of its time.
            say(!days.every((each) => (each >= from || from === today) && from - each <= 183 && each <= to), `${at} lies outside ${occurs.nearest}`);
            continue;
          }
          const anchor = 'lastBy' in occurs ? occurs.lastBy : 'before' in occurs ? occurs.before : occurs.nextFrom;
          const [anchorDay = Number.NaN] = anchor === 'today' ? [today] : daysAt(texts, anchor);
          const away = days.map((each) => ('nextFrom' in occurs ? each - anchorDay : anchorDay - each));
          say(!away.every((each) => each >= 0 && each <= 365), `${at} is ${away.join(', ')} days from ${anchor}`);
        }
        const places = inOrder[slug] ?? [];
        places.slice(1).forEach((at, index) => {
          const before = places[index] ?? '';
          say(Math.max(...daysAt(texts, before)) > Math.min(...daysAt(texts, at)), `${before} comes after ${at}`);
        });
        return faults.map((fault) => `${isoDay(today)}: ${fault}`);
      };
      if (!moving.some(([, occurs]) => occurs !== 'fixed')) {
        it('opens as it was built, for nothing in it moves', () => {
          for (const today of turns) expect(exampleOn(calculator, start, today)).toEqual({ texts: start, todayAt: [], isExampleDates: false });
        });
        return;
      }
      // `exampleOn` runs the moved dates, of what does not run long: a refusal shows in what it gives, and a result that is not finite throws.
      it('opens without a refusal on every day of a year and at the turn of others', () => {
        const opens = [...daysFor(calculator), ...turns].map((today) => ({ today, ...exampleOn(calculator, start, today) }));
        const over = opens.filter(({ isExampleDates }) => isExampleDates);
        expect(over.filter(({ texts, todayAt }) => texts !== start || todayAt.length > 0)).toEqual([]);
        expect(opens.flatMap(({ texts, today, isExampleDates }) => (isExampleDates ? [] : faultsOf(texts, today)))).toEqual([]);
        const isOver = (iso: string): boolean => (over2028[slug] ?? []).some(([first, last]) => iso >= first && iso <= last);
        const of2028 = (list: readonly { readonly today: number }[]): readonly string[] =>
          [...new Set(list.map(({ today }) => isoDay(today)))].filter((iso) => iso.startsWith('2028'));
        expect(of2028(over)).toEqual(of2028(opens).filter(isOver));
      });
    },
  );
});
