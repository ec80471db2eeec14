import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import decisionDates from '../../calculators/catalog/decision-dates/definition.ts';
import { demoRain } from '../../calculators/catalog/decision-dates/inputs.ts';
import { resultAt, runLink, runQuery } from '../../calculators/kit/cases.ts';
import { picturesOf } from '../../calculators/kit/pictures.ts';
import { readForm, startTexts } from '../../calculators/kit/state.ts';
import { printDay } from '../../calculators/units/printQuantity.ts';
import { readWeather } from '../../content/place/weatherRecord.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { root } from '../support/files.ts';

const runWithRecord = (query: string, rainRecord: string) => runLink(decisionDates, query, { rainRecord });
/** Rain in June and in October only, so that what came before July and what came after it can be added up by eye. */
const yearLine = (year: number, june: number, october: number): string => `${year}, 0, 0, 0, 0, 0, ${june}, 0, 0, 0, ${october}, 0, 0`;
const months = 'Year, Jan, Feb, Mar, Apr, May, Jun, Jul, Aug, Sep, Oct, Nov, Dec';
const fiveYears = [months, yearLine(2001, 2, 9), yearLine(2002, 3, 2), yearLine(2003, 6, 4), yearLine(2004, 8, 1), yearLine(2005, 10, 0)].join('\n');

describe('rain of a plan', () => {
  const at = (query: string) => {
    const { values, note, calendar, shown } = runQuery(decisionDates, query);
    return { values, since: printDay(Number(values['sinceDay'])), note, shown, first: calendar[0]?.text };
  };
  it.each([
    // Opened in winter it is that of the year that is planned, whose dates begin on May 15.
    ['today=2026-01-15', 'Mar 1, 2026', false],
    ['today=2026-02-28', 'Mar 1, 2026', false],
    ['today=2026-03-01', 'Mar 1, 2026', true],
    ['today=2026-06-01', 'Mar 1, 2026', true],
    // A winter's rain is that of the winter before the first date, whether today is in it or not.
    ['today=2026-01-15&since-month=oct', 'Oct 1, 2025', true],
    ['today=2026-06-01&since-month=oct', 'Oct 1, 2025', true],
    // The first date itself may be the first of that month; a day before it, the year before is meant.
    ['today=2026-01-15&since-month=may&steps.day=2026-05-01&steps.step=look', 'May 1, 2026', false],
    ['today=2026-01-15&since-month=may&steps.day=2026-04-30&steps.step=look', 'May 1, 2025', true],
    ['today=2026-07-01&since-month=jun', 'Jun 1, 2025', true],
  ])('is counted at %s from %s, begun: %s', (query, since, isBegun) => {
    const found = at(query);
    expect([found.since, found.values['rainSays'] !== 'not-begun']).toEqual([since, isBegun]);
  });
  it('has the same triggers in winter as in summer, and takes nothing of what fell before it is counted', () => {
    const [winter, summer] = [at('today=2026-01-15'), at('today=2026-06-01')];
    expect(winter.values['dates']).toEqual(summer.values['dates']);
    expect(winter.first).toBe(summer.first);
    expect(winter.first).toContain('rain since Mar 1, 2026 below');
    expect(winter.note).toContain('Rain is counted from Sun, Mar 1, 2026 on.');
    expect(winter.shown).not.toContain('soFarPercent');
    expect(winter.shown).not.toContain('likeCount');
    expect(winter.shown).toContain('odds');
    const wet = at('today=2026-01-15&rain-so-far=41.2in');
    expect({ ...wet, values: { ...wet.values, rainSoFarIn: winter.values['rainSoFarIn'] } }).toEqual(winter);
  });
});

describe('decision-dates', () => {
  // Two inches each month from March through May and 2/30 on June 1: normal by then is 6.067 in, three quarters of it 4.55.
  it.each([
    ['4.4', '', '73 % of normal, under the trigger'],
    ['4.53', 'just under it: 74.7 % of normal, and the trigger is 75 %', '74.7 % of normal, just under the trigger of 75 %'],
    ['4.55', 'right at it: 75 % of normal, and the trigger is 75 %', '75 % of normal, right at the trigger of 75 %'],
    ['4.57', 'just over it: 75.3 % of normal, and the trigger is 75 %', '75.3 % of normal, just over the trigger of 75 %'],
    ['4.7', '', '77 % of normal, over the trigger'],
  ])('tells rain near the trigger on its own side of it: %s in', (rain, words, inNote) => {
    const station = Array.from({ length: 12 }, () => '2in').join();
    const { ranges, note } = runQuery(decisionDates, `rain-from=station&station=${station}&today=2026-06-01&rain-so-far=${rain}in`);
    expect(ranges['rainSays'] ?? '').toBe(words);
    expect(note).toContain(`is ${inNote}.`);
  });
  it('never tells a share on the other side of a trigger in tenths either', () => {
    // 67.37 % of normal by the example's record, which whole percents would tell as 67.
    const { ranges, values } = runQuery(decisionDates, 'trigger=67.4pct');
    expect(values['rainSays']).toBe('under');
    expect(ranges['rainSays']).toBeUndefined();
    expect(runQuery(decisionDates, 'trigger=67.3pct').ranges['rainSays']).toMatch(
      /^just over it: 67\.(?:3[1-9]|4) % of normal, and the trigger is 67\.3 %$/,
    );
  });
  it('looks into the record once for what is wrong, however many refusals ask', () => {
    const { values } = readForm(decisionDates.inputs, startTexts(decisionDates.inputs));
    const { rainRecord = [] } = values;
    const readsWith = (endDay: number): number => {
      let reads = 0;
      const asked = {
        ...values,
        endDay,
        get rainRecord() {
          reads += 1;
          return rainRecord;
        },
      };
      decisionDates.refuses(asked);
      return reads;
    };
    // A day of another year is refused before anybody looks into the record.
    expect(readsWith(Number(values['endDay'])) - readsWith(Number(values['endDay']) + 366)).toBe(1);
  });
  it('takes all rain for past where none falls in the season', () => {
    const { season } = runQuery(decisionDates, `rain-from=station&station=${Array.from({ length: 12 }, () => '0in').join(',')}`).values;
    if (!Array.isArray(season)) throw new TypeError('no season');
    expect(season.length).toBeGreaterThan(0);
    for (const row of season) expect(row['rainPercent']).toBe(100);
  });
  it('counts years as a person would, pencil in hand', () => {
    const run = runWithRecord(
      'today=2026-06-30&end=2026-10-31&since-month=jan&rain-so-far=2.5in&trigger=50&steps.day=2026-06-30&steps.step=look',
      fiveYears,
    );
    if ('refusals' in run) throw new Error(run.refusals.map(({ say }) => say).join(' '));
    const { outcome } = run;
    // Whole seasons 11, 5, 10, 9, 10 in: middle 10. By June 2, 3, 6, 8, 10: middle 6, half of it 3.
    expectWithin(Number(resultAt(outcome, 'seasonNormalIn')), 10, 1e-9);
    expectWithin(Number(resultAt(outcome, 'dates.0.triggerIn')), 3, 1e-9);
    expect(resultAt(outcome, 'yearsCount')).toBe(5);
    // 2001 and 2002 were as dry; 2001 came to 11. After June 7 in were missing; only 2001 had them.
    expect(outcome.computed['odds']).toEqual([
      { oddsDay: expect.any(Number), dryCount: 2, dryCaughtCount: 1, madeUpCount: 1, atBestDays: expect.any(Number) },
    ]);
    // Only 2001 had no more than 2.5 in by today.
    expect([resultAt(outcome, 'likeCount'), resultAt(outcome, 'likeCaughtCount')]).toEqual([1, 1]);
  });
  it('refuses a record of fewer than three whole seasons, and leaves a season with a gap out', () => {
    const short = runWithRecord('since-month=jan', [months, yearLine(2001, 2, 9), yearLine(2002, 3, 2)].join('\n'));
    expect('refusals' in short && short.refusals.map(({ at }) => at)).toEqual(['rainRecord']);
    const gap = runWithRecord('since-month=jan', `${fiveYears}\n2006, 0, 0, 0, , , 4, 0, 0, 0, 4, 0, 0`);
    expect('outcome' in gap && resultAt(gap.outcome, 'yearsCount')).toBe(5);
  });
  it('begins with the rain of the demo place', () => {
    const byMonth = new Map<string, number>();
    for (const { day, rainIn } of readWeather(readFileSync(join(root, 'content/place/weather.csv'), 'utf8')))
      byMonth.set(day.slice(0, 7), (byMonth.get(day.slice(0, 7)) ?? 0) + Math.round(100 * rainIn));
    const told = demoRain
      .split('\n')
      .slice(1)
      .flatMap((line) => {
        const [year = '', ...amounts] = line.split(', ');
        return amounts.map((amount, month): [string, number] => [`${year}-${String(month + 1).padStart(2, '0')}`, Math.round(100 * Number(amount))]);
      });
    expect(new Map(told)).toEqual(byMonth);
  });
  const everyOtherDay = Array.from({ length: 15 }, (_, index) => String(1 + 2 * index).padStart(2, '0'));
  it.each(everyOtherDay)('never gains by waiting from July %s to August, and asks for more rain then', (day) => {
    const told = (month: string) => {
      const outcome = runQuery(decisionDates, `steps.day=2026-${month}-${day}&steps.step=sell-open&steps.leave=10&steps.each=26`);
      const at = (path: string): number => Number(resultAt(outcome, path));
      return { gainedDays: at('gainedDays'), triggerIn: at('dates.0.triggerIn'), bestPercent: at('dates.0.bestPercent') };
    };
    const [july, august] = [told('07'), told('08')];
    expect(july.gainedDays).toBeGreaterThan(august.gainedDays);
    expect(august.triggerIn).toBeGreaterThanOrEqual(july.triggerIn);
    // What a dry spring cost cannot come back: the later, the less the year can still make.
    expect(august.bestPercent).toBeLessThanOrEqual(july.bestPercent);
  });
  it('gives each date to the calendar with what to look at', () => {
    const { calendar } = runQuery(decisionDates, '');
    expect(calendar).toHaveLength(5);
    expect(calendar[2]?.title).toBe('Decide: wean early and take the calves off');
    expect(calendar[2]?.text).toMatch(/^Do it if both are short: rain since \w+ \d+, \d+ below \d+\.\d in, .* below \d+ days/);
  });
  it('makes no condition of looking', () => {
    const { calendar, note } = runQuery(decisionDates, 'today=2026-05-01');
    expect(calendar[0]?.title).toBe('Look and write down, nothing more');
    expect(calendar[0]?.text).toMatch(/^Measure both, and write them down/);
    expect(note).toContain('look and write down, nothing more.');
    expect(runQuery(decisionDates, 'today=2026-06-10').note).toContain('sell dry, open and late cows if both rain and grass are short.');
  });
  it.each(['today=2026-09-01', 'today=2026-12-30&end=2026-12-31'])(
    'leads with it that all dates are past, and draws none of them as ahead: %s',
    (query) => {
      const { shown, note, values } = runQuery(decisionDates, query);
      expect(note).toContain('All dates of the plan are past.');
      expect([shown[0], values['ahead']]).toEqual(['ahead', 'past']);
      expect(shown).not.toContain('nextDay');
      expect(shown).not.toContain('nextStep');
      expect(picturesOf(decisionDates, values)).toEqual([]);
      expect(picturesOf(decisionDates, runQuery(decisionDates, '').values)).toHaveLength(1);
    },
  );
});

describe('a plan over New Year', () => {
  const plan = (curve: string, dates: string) =>
    `${curve}&fall-flush=none&${dates}&rain-from=station&station=${Array.from({ length: 12 }, () => '2in').join()}&rain-so-far=4in&steps.step=look,sell-open`;
  const annual = plan(
    'start-month=nov&best-month=mar&quit-month=may',
    'today=2027-01-10&end=2027-05-31&since-month=oct&steps.day=2027-01-31,2027-03-31',
  );
  const at = (query: string, path: string): number => Number(resultAt(runQuery(decisionDates, query), path));
  it('on annual range: 126 of 620 parts by January 31 and 495 by March 31, by hand, with rain from October on', () => {
    expectWithin(at(annual, 'dates.0.grownPercent'), (100 * 126) / 620, 1e-9);
    expectWithin(at(annual, 'dates.1.grownPercent'), (100 * 495) / 620, 1e-9);
    expectWithin(at(annual, 'dates.1.comesPercent'), (100 * 125) / 620, 1e-9);
    // Four months of 2 in by January 31, eight by May 31.
    expectWithin(at(annual, 'dates.0.normalIn'), 8, 1e-9);
    expectWithin(at(annual, 'seasonNormalIn'), 16, 1e-9);
    expect(printDay(at(annual, 'sinceDay'))).toBe('Oct 1, 2026');
    expect(at(annual, 'dates.0.leftDays')).toBe(120);
  });
  it('may be opened in the fall before it, and turned by half a year it has the same growth', () => {
    expectWithin(at(annual.replace('today=2027-01-10', 'today=2026-10-10'), 'dates.0.grownPercent'), (100 * 126) / 620, 1e-9);
    const turned = plan(
      'start-month=may&best-month=sep&quit-month=nov',
      'today=2026-07-10&end=2026-11-30&since-month=apr&steps.day=2026-07-31,2026-09-30',
    );
    for (const path of [
      'dates.0.grownPercent',
      'dates.1.comesPercent',
      'endPercent',
      'dates.0.normalIn',
      'season.0.grassPercent',
      'season.4.grassPercent',
    ])
      expectWithin(at(turned, path), at(annual, path), 1e-9);
  });
  it('counts the seasons of a record over New Year', () => {
    // June and October rain: from October 1 to May 31 it is that of each October, 9, 2, 4 and 1 in. The middle of the four is 3.
    const run = runWithRecord(
      'today=2026-12-10&end=2027-05-31&since-month=oct&start-month=nov&best-month=mar&quit-month=may&steps.day=2027-01-31&steps.step=look',
      fiveYears,
    );
    if ('refusals' in run) throw new Error(run.refusals.map(({ say }) => say).join(' '));
    expect(resultAt(run.outcome, 'yearsCount')).toBe(4);
    expectWithin(Number(resultAt(run.outcome, 'seasonNormalIn')), 3, 1e-9);
  });
  it('has a past season of the medians however early rain is counted from', () => {
    expect(printDay(at('rain-from=station&today=2026-11-20&end=2027-10-31&since-month=dec&steps.day=2026-11-25&steps.step=look', 'sinceDay'))).toBe(
      'Dec 1, 2025',
    );
  });
  it.each([
    ['end=2027-06-01', 'at most 12 months'],
    ['today=2026-12-01&end=2027-10-31&steps.day=2026-10-31&steps.step=look', 'at most 12 months: move it'],
    ['today=2026-12-01&end=2027-10-20&steps.day=2026-10-25&steps.step=look', 'two seasons'],
  ])('%s is refused in words', (query, words) => {
    expect(() => runQuery(decisionDates, query)).toThrow(words);
  });
});
