import { describe, expect, it } from 'vitest';
import { rowsIn, startTexts, textIn } from '../../calculators/kit/state.ts';
import type { Place } from '../../src/place/model/place.ts';
import { daysSinceBirth, intakePercentAt, stageOf } from '../../src/place/offer/stages.ts';
import { calculatorOf } from '../support/catalog.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { day, fill, plain, with_ } from './filled.ts';

describe('stock', () => {
  // Common practice: a beef calf suckles about 205 days, lambs and kids about 90; she eats for it 60 and 42 days before.
  it.each([
    ['cow', '03-10', '2026-03-09', 'late'],
    ['cow', '03-10', '2026-03-10', 'nursing'],
    ['cow', '03-10', '2026-09-30', 'nursing'],
    ['cow', '03-10', '2026-10-01', 'dry'],
    ['cow', '03-10', '2027-01-08', 'dry'],
    ['cow', '03-10', '2027-01-09', 'late'],
    ['ewe', '03-25', '2026-06-22', 'nursing'],
    ['ewe', '03-25', '2026-06-23', 'dry'],
    ['ewe', '03-25', '2027-02-10', 'dry'],
    ['ewe', '03-25', '2027-02-11', 'late'],
    ['cow', '12-20', '2027-01-05', 'nursing'],
    ['bull', '03-10', '2026-03-12', 'dry'],
  ] as const)('%s that gives birth %s is on %s %s', (kind, birthsDay, today, stage) => {
    expect(stageOf({ kind, birthsDay }, day(today))).toBe(stage);
  });
  it('is dry where no day of birth is told', () => {
    expect(stageOf({ kind: 'cow' }, day('2026-06-20'))).toBe('dry');
  });
  it('counts days since the last birth over New Year, and Feb 29 as Feb 28', () => {
    expect(daysSinceBirth('12-20', day('2027-01-05'))).toBe(16);
    expect(daysSinceBirth('02-29', day('2027-03-01'))).toBe(1);
    expect(daysSinceBirth('02-29', day('2028-03-01'))).toBe(1);
  });
  it('eats what its owner knows, else the likely figure of the guides', () => {
    expect(intakePercentAt({ kind: 'cow', ownIntakePercent: 2.8 }, 'dry')).toBe(2.8);
    // hibberd-thrift-1992: dry cow 2.2 % on average forage; the table of intakes names the line.
    expect(intakePercentAt({ kind: 'cow' }, 'late')).toBe(2.2);
  });
  it('goes into each form in that form’s words', () => {
    const kinds = (slug: string, table: string, column: string, today = '2026-06-20') =>
      rowsIn(fill(slug, { today }).texts[table]).map((row) => row[column]);
    expect(kinds('days-of-grass', 'stock', 'kind')).toEqual(['cow-nursing', 'bull', 'heifer', 'ewe-nursing']);
    expect(kinds('days-of-grass', 'stock', 'kind', '2026-11-20')).toEqual(['cow-dry', 'bull', 'heifer', 'ewe-dry']);
    expect(kinds('forage-on-hand', 'stock', 'kind')).toEqual(['cow-nursing', 'bull', 'other', 'ewe-nursing']);
    expect(kinds('standing-feed', 'stock', 'kind')).toEqual(['cow-dry', 'bull', 'heifer', 'ewe-dry']);
    expect(kinds('hay-to-grass', 'herd', 'stock')).toEqual(['cow', 'bull', 'heifer', 'ewe']);
    expect(kinds('hay-to-grass', 'herd', 'stock', '2027-03-01')).toEqual(['cow', 'bull', 'heifer', 'ewe-late']);
    expect(kinds('stock-water', 'herd', 'stock')).toEqual(['cow-nursing', 'bull', 'heifer-pregnant-750', 'ewe-nursing']);
    expect(kinds('herd-intake', 'herd', 'birthMonth').filter((_, index) => index !== 1)).toEqual(['mar', 'feb', 'mar']);
  });
  it('brings what each eats as it stands today, and the weight of the own stock', () => {
    const [cows] = rowsIn(fill('days-of-grass').texts['stock']);
    expect(Object.fromEntries(Object.entries(cows ?? {}).map(([name, text]) => [name, plain(text)]))).toEqual({
      kind: 'cow-nursing',
      countHead: '45',
      weightLb: '1250 lb',
      intakePercent: '2.5 pct',
    });
  });
  it('takes the nearest weight of growing cattle, and says where a form has no such kind', () => {
    const herd: Place['herd'] = [
      { id: 's', kind: 'stocker', countHead: 30, weightLb: 720 },
      { id: 'l', kind: 'lamb', countHead: 50, weightLb: 70 },
    ];
    const water = fill('stock-water', { place: with_({ herd }) });
    expect(rowsIn(water.texts['herd']).map((row) => row['stock'])).toEqual(['growing-800']);
    expect(water.said).toEqual(['Lambs: this form has no such kind; add them by hand.']);
    expect(rowsIn(fill('hay-to-grass', { place: with_({ herd }) }).texts['herd']).map((row) => row['stock'])).toEqual(['growing', 'lamb']);
    expect(fill('rain-on-ground', { place: with_({ herd }) }).said).toEqual(['Lambs: this form has no such kind; add them by hand.']);
  });
  it('keeps those that eat most where not all fit, in their own order, and says so', () => {
    const herd: Place['herd'] = Array.from({ length: 12 }, (_, index) => ({ id: `g${index}`, kind: 'cow', countHead: index + 1, weightLb: 1200 }));
    const filled = fill('carrying-capacity', { place: with_({ herd }) });
    expect(rowsIn(filled.texts['herd']).map((row) => row['countHead'])).toEqual(['5', '6', '7', '8', '9', '10', '11', '12']);
    expect(filled.said).toEqual(['The herd: only 8 fit here, those that eat most.']);
  });
  it('is added up for the forms that ask for one figure', () => {
    const texts = fill('early-weaning').texts;
    expect(plain(textIn(texts['pairsHead']))).toBe('45');
    expect(plain(textIn(texts['cowWeightLb']))).toBe('1250 lb');
    // March 10 to June 20, counted on a calendar.
    expect(plain(textIn(texts['ageDays']))).toBe('102 d');
    // By hand, of 194 days of grazing: cows nurse 164 at 2.5 % and are dry at 2.2 %, heifers nurse 151 of them alike, ewes 64 at 4 % and 2 %; bulls 2 %.
    // 56,250 × 2.4536 % + 8,550 × 2.4335 % + 9,600 × 2.6598 % + 3,800 × 2 %, the percents those of the guides at that stage.
    expect(plain(textIn(fill('decision-dates').texts['herdLbPerDay']))).toBe('1920 lb/d');
    expect(textIn(fill('feed-hazards').texts['animals'])).toBe('adult-cattle');
    const sheep = with_({ herd: [{ id: 'e', kind: 'ewe', countHead: 60, weightLb: 160 }] });
    expect(textIn(fill('feed-hazards', { place: sheep }).texts['animals'])).toBe('sheep-or-goats');
  });
});

describe('what a form asks of the grazing season', () => {
  // Calving Mar 10 they nurse 205 days, to Sep 30 (common practice): of the 194 days from Apr 20 to Oct 31 that is 164, at 2.5 %; 30 at 2.2 % (hibberd-thrift-1992).
  const cowPercent = (164 * 2.5 + 30 * 2.2) / 194;
  const season = { turnInDay: '04-20', endDay: '10-31' };
  const cows = { id: 'c', kind: 'cow', countHead: 100, weightLb: 1000, birthsDay: '03-10' } as const;
  const days = Array.from({ length: 12 }, (_, month) => `2027-${String(month + 1).padStart(2, '0')}-05`);
  const rowOf = (slug: string, table: string, herd: Place['herd'], today = '2027-06-20') => {
    const filled = fill(slug, { place: with_({ herd, season }), today });
    const [{ kind = '', intakePercent = '' } = {}] = rowsIn(filled.texts[table]);
    return { kind, percent: Number.parseFloat(intakePercent), says: filled.marks.find(({ at }) => at === `${table}.0.intakePercent`)?.says };
  };

  it.each([
    ['season', 'stock'],
    ['carrying-capacity', 'herd'],
  ])('%s tells alike on whatever day it is opened', (slug, table) => {
    for (const today of slug === 'season' ? days.slice(0, 3) : days) {
      const { kind, percent, says } = rowOf(slug, table, [cows], today);
      expect([kind, says], today).toEqual(['cow-nursing', 'mean of Apr 20 to Oct 31']);
      expectWithin(percent, cowPercent, 0.0005);
    }
  });
  it('is the days that grass feeds them, where turn-in and the first day on hay are told', () => {
    const at = (days: Place['season']) => {
      const filled = fill('decision-dates', { place: with_({ season: days }) });
      return [plain(textIn(filled.texts['feedDays'])), filled.marks.find((mark) => mark.at === 'feedDays')?.says];
    };
    // Counted on a calendar: 10 days of April, 31, 30, 31, 31, 30 and 31 of the months after it, and the first of November is hay.
    expect(at({ ...season, hayFromDay: '11-01' })).toEqual(['195 d', 'Apr 20 to Nov 1, your first day on hay']);
    // On stockpiled grass into the new year: 245 days to the last of December, counted in the same way, and 15 more.
    expect(at({ ...season, hayFromDay: '01-15' })).toEqual(['270 d', 'Apr 20 to Jan 15, your first day on hay']);
    const example = plain(textIn(startTexts(calculatorOf('decision-dates').inputs)['feedDays']));
    for (const days of [season, { hayFromDay: '11-01' }]) expect(at(days)).toEqual([example, undefined]);
  });
  it('is what the whole herd eats in decision-dates', () => {
    for (const today of days.slice(0, 10)) {
      const filled = fill('decision-dates', { place: with_({ herd: [cows, { ...cows, id: 'b', kind: 'bull' }], season }), today });
      // A bull 2 % the year round.
      expectWithin(Number.parseFloat(textIn(filled.texts['herdLbPerDay'])), 1000 * (cowPercent + 2), 0.5);
      expect(filled.marks.find(({ at }) => at === 'herdLbPerDay')?.says).toBe('mean of Apr 20 to Oct 31');
    }
  });
  it('goes by the days on grass, over New Year too', () => {
    const of = (turnInDay: string, endDay: string, births: string) => rowOfSeason({ turnInDay, endDay }, births);
    // Nursing from the first day to the last; dry all through; and the half of it.
    expect(of('04-20', '09-30', '03-10')).toEqual(['cow-nursing', 2.5, undefined]);
    expect(of('10-01', '12-31', '03-10')).toEqual(['cow-dry', 2.2, undefined]);
    // Calving Dec 1 she eats for the calf before and nurses from then on: 61 days of Oct 1 to Mar 1, and 90.
    const [kind, percent, says] = of('10-01', '03-01', '12-01');
    expect([kind, says]).toEqual(['cow-nursing', 'mean of Oct 1 to Mar 1']);
    expectWithin(percent, (61 * 2.2 + 90 * 2.5) / 151, 0.0005);
  });
  const rowOfSeason = (on: Place['season'], birthsDay: string) => {
    const filled = fill('carrying-capacity', { place: with_({ herd: [{ ...cows, birthsDay }], season: on }), today: '2027-01-05' });
    const [{ kind = '', intakePercent = '' } = {}] = rowsIn(filled.texts['herd']);
    return [kind, Number.parseFloat(intakePercent), filled.marks.find(({ at }) => at === 'herd.0.intakePercent')?.says] as const;
  };
  it('is what was told of those of which no births are told, and else dry', () => {
    const { birthsDay, ...unknown } = cows;
    expect(birthsDay).toBe('03-10');
    expect(rowOf('carrying-capacity', 'herd', [unknown])).toEqual({ kind: 'cow-dry', percent: 2.2, says: undefined });
    const told = { stage: 'nursing', day: '2026-06-01' } as const;
    expect(rowOf('carrying-capacity', 'herd', [{ ...unknown, told }])).toEqual({ kind: 'cow-nursing', percent: 2.5, says: undefined });
  });
  it('is what its owner knows, all through', () => {
    expect(rowOf('carrying-capacity', 'herd', [{ ...cows, ownIntakePercent: 2.8 }])).toMatchObject({ kind: 'cow-nursing', percent: 2.8 });
  });
});

describe('what a form asks of the winter', () => {
  // Calving Mar 10 they nurse 205 days (common practice): of the 170 days from Nov 1 to Apr 20 the last 41, at 2.5 %; 129 at 2.2 % (hibberd-thrift-1992).
  const cowPercent = (129 * 2.2 + 41 * 2.5) / 170;
  const cows = { id: 'c', kind: 'cow', countHead: 100, weightLb: 1000, birthsDay: '03-10' } as const;
  const { birthsDay: _, ...unknown } = cows;
  const rowOf = (herd: Place['herd'], today: string, season: Place['season'] = { hayFromDay: '11-01', turnInDay: '04-20' }) => {
    const filled = fill('standing-feed', { place: with_({ herd, season }), today });
    const [{ kind = '', intakePercent = '' } = {}] = rowsIn(filled.texts['stock']);
    return { kind, percent: Number.parseFloat(intakePercent), says: filled.marks.find(({ at }) => at === 'stock.0.intakePercent')?.says };
  };

  it.each(['2027-01-05', '2027-06-20', '2027-09-05', '2027-11-20'])('is the same opened on %s: feed kept for winter is eaten in winter', (today) => {
    const { kind, percent, says } = rowOf([cows], today);
    expect([kind, says]).toEqual(['cow-dry', 'mean of Nov 1 to Apr 20']);
    expectWithin(percent, cowPercent, 0.0005);
  });
  it('goes by the days of the place: cows that calve in fall nurse through it', () => {
    expect(rowOf([{ ...cows, birthsDay: '10-15' }], '2027-06-20')).toEqual({ kind: 'cow-nursing', percent: 2.5, says: undefined });
    expect(rowOf([cows], '2027-06-20', { hayFromDay: '12-01', turnInDay: '03-10' })).toEqual({
      kind: 'cow-dry',
      percent: 2.2,
      says: 'mean of Dec 1 to Mar 10',
    });
  });
  it.each([
    ['2026-06-01', 'cow-dry', 2.2],
    ['2026-10-31', 'cow-dry', 2.2],
    ['2026-11-01', 'cow-nursing', 2.5],
    ['2027-04-19', 'cow-nursing', 2.5],
    ['2027-04-20', 'cow-dry', 2.2],
  ] as const)('takes nursing that was told on %s without a day of birth only from a winter: %s', (toldDay, kind, percent) => {
    expect(rowOf([{ ...unknown, told: { stage: 'nursing', day: toldDay } }], '2027-06-20')).toEqual({ kind, percent, says: undefined });
  });
});
