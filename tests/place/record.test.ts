import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rainGauge } from '../../calculators/asks/rainGauge.ts';
import { understandRecord } from '../../calculators/kit/record/understandRecord.ts';
import { isoDay } from '../../calculators/units/printQuantity.ts';
import type { MoveRow, Row } from '../../src/place/model/row.ts';
import { bringMoves, bringRain, type RowBody } from '../../src/place/record/bringLines.ts';
import { guarded, movesCsv, rainCsv, readMoves, readRain, unguarded } from '../../src/place/record/csv.ts';
import { dayIn, rowsOf } from '../../src/place/record/days.ts';
import { groundsOf } from '../../src/place/record/grounds.ts';
import { herdsOf } from '../../src/place/record/herds.ts';
import { nextReady, slowRestDays } from '../../src/place/record/nextReady.ts';
import { heightGap, plannedOf } from '../../src/place/record/planned.ts';
import { sameWeek, shortestRest } from '../../src/place/record/pointed.ts';
import { lastReading, rainText, unreadDays } from '../../src/place/record/rainText.ts';
import { staysOf } from '../../src/place/record/stays.ts';
import { groundYears, rainByMonth, wholeYears, yearsOf } from '../../src/place/record/years.ts';
import { near } from '../support/near.ts';
import { aPlace, withPasture } from './aPlace.ts';
import { aHay, aHeight, aMove, aPlan, aRain } from './aRow.ts';

// What is expected was worked out by hand on a calendar and with a pencil: common practice.

const today = dayIn('2026-06-20');
const counting = { todayDay: today, yardstickLbPerDay: 30 };
const lowToHigh: readonly Row[] = [
  aMove({ outDay: '2026-05-08' }),
  aMove({ id: 'm2', paddockId: 'high', inDay: '2026-05-08', outDay: '2026-05-20' }),
  aMove({ id: 'm3', inDay: '2026-06-12' }),
];

describe('where herds stand', () => {
  it('is where the last move without an end took them, and is not known before one', () => {
    expect(herdsOf(aPlace(), [])).toEqual([{ number: 1 }]);
    expect(herdsOf(aPlace(), lowToHigh)).toMatchObject([{ number: 1, at: { id: 'm3' }, sinceDay: dayIn('2026-06-12') }]);
  });
  it('is told of each herd, in the order of their numbers', () => {
    const place = aPlace({
      herd: [
        { id: 'ewes', kind: 'ewe', countHead: 60, herdNumber: 2 },
        { id: 'cows', kind: 'cow', countHead: 45, herdNumber: 1 },
      ],
    });
    const rows = [aMove(), aMove({ id: 'm9', herdNumber: 3, paddockId: 'high' })];
    expect(herdsOf(place, rows).map(({ number, at }) => [number, at?.id])).toEqual([
      [1, 'm1'],
      [2, undefined],
      [3, 'm9'],
    ]);
  });
});

describe('a stay', () => {
  // 45 cows of 30 lb, 7 days on 85 ac: 45 x 7 / 85 = 3.706 cow-days an acre, 111.2 lb.
  it('counts its days, its rest before, and stock-days an acre', () => {
    const [first, second, third] = staysOf(aPlace(), lowToHigh, counting);
    expect(first).toMatchObject({ days: 7, isOpen: false, name: 'Low bench' });
    expect(first?.restDays).toBeUndefined();
    near(first?.stockDaysPerAc, 3.706, 0.0005);
    near(first?.lbPerAc, 111.18, 0.005);
    expect(second?.days).toBe(12);
    // May 8 to June 12: 23 days of May and 12 of June.
    expect(third).toMatchObject({ restDays: 35, days: 8, isOpen: true });
  });
  // A bale of 1,000 lb with a tenth of water is 900 lb dry: 30 cow-days, 0.353 an acre.
  it('takes off what hay covers, and says both', () => {
    const [stay] = staysOf(aPlace(), [aMove({ outDay: '2026-05-08' }), aHay()], counting);
    near(stay?.hayLb, 900, 1e-9);
    near(stay?.withHayPerAc, 3.706, 0.0005);
    near(stay?.stockDaysPerAc, 3.353, 0.0005);
    expect(stay?.isHayUnweighed).toBe(false);
  });
  it('says of hay that nobody weighed that it is not taken off', () => {
    const unweighed = { ...aHay() };
    delete unweighed.baleLb;
    expect(staysOf(aPlace(), [aMove({ outDay: '2026-05-08' }), unweighed], counting)[0]).toMatchObject({ hayLb: 0, isHayUnweighed: true });
  });
  it('gives hay of the day of a move to who came, and none to who was never there', () => {
    const stays = staysOf(
      aPlace(),
      [
        aMove({ outDay: '2026-05-08' }),
        aMove({ id: 'm2', inDay: '2026-05-08', outDay: '2026-05-12', herdNumber: 2 }),
        aHay({ day: '2026-05-08' }),
        aHay({ id: 'y2', day: '2026-06-01' }),
      ],
      counting,
    );
    expect(stays.map(({ hayLb }) => Math.round(hayLb))).toEqual([0, 900]);
  });
  it('begun and ended on one day counts half a day', () => {
    expect(staysOf(aPlace(), [aMove({ outDay: '2026-05-01' })], counting)[0]?.days).toBe(0.5);
  });
  it('has no stock-days where acres, what they eat or the yardstick are not known', () => {
    const move = aMove({ outDay: '2026-05-08' });
    const noIntake = aMove({ outDay: '2026-05-08', stock: [{ kind: 'cow', countHead: 45 }] });
    for (const stay of [
      ...staysOf(withPasture(aPlace(), 'low', { areaAc: undefined }), [move], counting),
      ...staysOf(aPlace(), [noIntake], counting),
      ...staysOf(aPlace(), [move], { todayDay: today }),
    ])
      expect(stay.stockDaysPerAc).toBeUndefined();
  });
  it('is counted in another yardstick as soon as that is changed', () => {
    const [stay] = staysOf(aPlace(), [aMove({ outDay: '2026-05-08' })], { todayDay: today, yardstickLbPerDay: 15 });
    near(stay?.stockDaysPerAc, 7.412, 0.0005);
    near(stay?.lbPerAc, 111.18, 0.005);
  });
  it('keeps the stock of its day, whatever the herd is now, and its name where the paddock was taken away', () => {
    const place = aPlace({ herd: [], pastures: [] });
    const [stay] = staysOf(place, [aMove({ outDay: '2026-05-08', paddockName: 'Low bench' })], counting);
    expect(stay).toMatchObject({ name: 'Low bench', eatenLbPerDay: 1350 });
    expect(stay?.stockDaysPerAc).toBeUndefined();
  });
  it('has the rain of its days, and none where nobody read', () => {
    const rows = [
      aMove({ outDay: '2026-05-08' }),
      aRain(),
      aRain({ id: 'r2', day: '2026-05-08', amountIn: 0.25 }),
      aRain({ id: 'r3', day: '2026-05-09' }),
    ];
    near(staysOf(aPlace(), rows, counting)[0]?.rainIn, 0.75, 1e-12);
    expect(staysOf(aPlace(), lowToHigh, counting)[0]?.rainIn).toBeUndefined();
  });
  it('in a paddock has its even share of the acres where nobody told its own', () => {
    const place = withPasture(aPlace(), 'low', {
      paddocks: [
        { id: 'a', name: 'Low 1' },
        { id: 'b', name: 'Low 2', areaAc: 50 },
      ],
    });
    expect(groundsOf(place).map(({ id, areaAc }) => [id, areaAc])).toEqual([
      ['a', 42.5],
      ['b', 50],
      ['high', 120],
    ]);
  });
});

describe('the next paddock', () => {
  const place = (more = {}) => withPasture(aPlace({ grazing: { restDays: 40 } }), 'low', { startHeightIn: 8, ...more });
  const out = (outDay: string) => aMove({ outDay });
  it('is ready the wanted rest after they went out, with a look three days before', () => {
    // May 8 and 40 days: June 17, so ready today; from May 20 on June 29.
    const ready = nextReady(place(), [out('2026-05-08'), aMove({ id: 'm2', paddockId: 'high', outDay: '2026-05-20' })], today);
    expect(
      ready.map(({ ground, from, readyDay, lookDay, restedDays }) => [
        ground.id,
        from,
        readyDay && isoDay(readyDay),
        lookDay && isoDay(lookDay),
        restedDays,
      ]),
    ).toEqual([
      ['low', 'rest', '2026-06-20', '2026-06-20', 43],
      ['high', 'rest', '2026-06-29', '2026-06-26', 31],
    ]);
  });
  it('takes the longest rest that guides give for slow growth where the place tells none: 60 days', () => {
    expect(slowRestDays).toBe(60);
    const [, low] = nextReady(aPlace(), [out('2026-05-08')], today);
    expect(low?.readyDay).toBe(dayIn('2026-07-07'));
  });
  it('is ready at a height at or above the one to start at, whatever the rest', () => {
    const ready = nextReady(place(), [out('2026-06-10'), aHeight({ day: '2026-06-18', heightIn: 8 })], today);
    expect(ready.find(({ ground }) => ground.id === 'low')).toMatchObject({ from: 'height', readyDay: today });
  });
  it('is ready by the growth of two heights since they went out: 4 in and 6 in ten days apart, 8 in ten days on', () => {
    const heights = [aHeight({ day: '2026-06-05', heightIn: 4 }), aHeight({ id: 'h2', day: '2026-06-15', heightIn: 6 })];
    const [, low] = nextReady(place(), [out('2026-06-01'), ...heights], today);
    expect(low).toMatchObject({ from: 'heights', readyDay: dayIn('2026-06-25'), lookDay: dayIn('2026-06-22') });
  });
  it('is not before rain where it did not grow, and stands last', () => {
    const heights = [aHeight({ day: '2026-06-05', heightIn: 4 }), aHeight({ id: 'h2', day: '2026-06-15', heightIn: 4 })];
    const ready = nextReady(place(), [out('2026-06-01'), ...heights], today);
    expect(ready.map(({ ground, from }) => [ground.id, from])).toEqual([
      ['high', 'never'],
      ['low', 'no-growth'],
    ]);
    expect(ready[1]?.readyDay).toBeUndefined();
  });
  it('goes by no height from before they went out, and by no two on neighboring days', () => {
    const [, low] = nextReady(place(), [aHeight({ day: '2026-05-05', heightIn: 9 }), out('2026-06-01')], today);
    expect(low?.from).toBe('rest');
    const near = [aHeight({ day: '2026-06-14', heightIn: 4 }), aHeight({ id: 'h2', day: '2026-06-15', heightIn: 5 })];
    expect(nextReady(place(), [out('2026-06-01'), ...near], today)[1]?.from).toBe('rest');
  });
  it('is none on which stock stand, and of two that are ready the one that rested longer', () => {
    const rows = [out('2026-04-02'), aMove({ id: 'm2', paddockId: 'high', inDay: '2026-02-01', outDay: '2026-03-10' })];
    expect(nextReady(place(), rows, today).map(({ ground }) => ground.id)).toEqual(['high', 'low']);
    expect(nextReady(place(), [...rows, aMove({ id: 'm3', paddockId: 'high', inDay: '2026-06-10' })], today).map(({ ground }) => ground.id)).toEqual([
      'low',
    ]);
  });
});

describe('planned against done', () => {
  it('tells days late, days longer, and heights against those meant', () => {
    const rows = [aPlan(), aMove({ id: 'm2', paddockId: 'high', inDay: '2026-05-10', outDay: '2026-05-20' })];
    const [done] = plannedOf(rows, staysOf(aPlace(), rows, counting));
    expect(done).toMatchObject({ plannedDays: 7, lateDays: 2, longerDays: 3, stay: { move: { id: 'm2' } } });
    expect(heightGap(3.5, 4)).toBe(-0.5);
    expect(heightGap(undefined, 4)).toBeUndefined();
  });
  it('takes a stay for one plan only, and none of another herd, ground or month', () => {
    const stays = [aMove({ id: 'm2', paddockId: 'high', inDay: '2026-05-10', outDay: '2026-05-20' })];
    const again = aPlan({ id: 'n2', inDay: '2026-05-12', outDay: '2026-05-14' });
    const rows = [aPlan(), again, aPlan({ id: 'n3', herdNumber: 2 }), aPlan({ id: 'n4', inDay: '2026-09-01', outDay: '2026-09-04' }), ...stays];
    expect(plannedOf(rows, staysOf(aPlace(), rows, counting)).map(({ plan, stay }) => [plan.id, stay?.move.id])).toEqual([
      ['n1', 'm2'],
      ['n3', undefined],
      ['n2', undefined],
      ['n4', undefined],
    ]);
  });
});

describe('what is pointed out', () => {
  const springs = (first: string, second: string) =>
    staysOf(aPlace(), [aMove({ inDay: first, outDay: first }), aMove({ id: 'm2', inDay: second })], counting);
  it('is the shortest rest of the year', () => {
    const rows = [...lowToHigh.slice(0, 2), aMove({ id: 'm4', paddockId: 'high', inDay: '2026-06-01', outDay: '2026-06-12' }), ...lowToHigh.slice(2)];
    expect(shortestRest(staysOf(aPlace(), rows, counting), 2026)).toMatchObject({ name: 'High bench', restDays: 12 });
    expect(shortestRest(staysOf(aPlace(), rows, counting), 2025)).toBeUndefined();
  });
  it('is a paddock grazed first in the same week of two springs', () => {
    expect(sameWeek(springs('2025-05-01', '2026-05-04'), 2026)).toMatchObject([
      { now: { name: 'Low bench' }, before: { inDay: dayIn('2025-05-01') } },
    ]);
    expect(sameWeek(springs('2025-05-01', '2026-05-05'), 2026)).toEqual([]);
    expect(sameWeek(springs('2025-08-01', '2026-08-01'), 2026)).toEqual([]);
    expect(sameWeek(springs('2024-05-01', '2026-05-01'), 2026)).toEqual([]);
  });
});

describe('a year', () => {
  it('is summed by ground, with nothing for a sum that has an unknown part', () => {
    const rows = [...lowToHigh, aMove({ id: 'm5', paddockId: 'high', inDay: '2026-06-01', outDay: '2026-06-03', stock: [] })];
    const [low, high] = groundYears(staysOf(aPlace(), rows, counting), 2026);
    // 7 and 8 days: 45 x 15 / 85.
    expect(low).toMatchObject({ name: 'Low bench', stays: 2, days: 15 });
    near(low?.stockDaysPerAc, 7.941, 0.0005);
    expect(high).toMatchObject({ days: 14 });
    expect(high?.stockDaysPerAc).toBeUndefined();
  });
  it('is whole when it is over and the record had it from turn-in on', () => {
    const rows = [
      aMove({ inDay: '2024-04-25', outDay: '2024-05-02' }),
      aMove({ id: 'm2', inDay: '2025-05-01', outDay: '2025-05-09' }),
      aMove({ id: 'm3' }),
    ];
    expect(wholeYears(aPlace({ season: { turnInDay: '04-20' } }), rows, today)).toEqual([2024, 2025]);
    expect(wholeYears(aPlace({ season: { turnInDay: '03-20' } }), rows, today)).toEqual([2025]);
    expect(wholeYears(aPlace(), rows, today)).toEqual([2025]);
    expect(wholeYears(aPlace(), [], today)).toEqual([]);
    expect(yearsOf(rows)).toEqual([2026, 2025, 2024]);
  });
  it('has its rain by month, and nothing for a month in which nobody read', () => {
    const rows = [aRain(), aRain({ id: 'r2', day: '2026-06-02', days: 4, amountIn: 1 }), aRain({ id: 'r3', day: '2025-05-01', amountIn: 9 })];
    // Four days to June 2: half an inch in May, half in June.
    expect(rainByMonth(rows, 2026).slice(3, 7)).toEqual([undefined, 1, 0.5, undefined]);
  });
});

describe('rain', () => {
  it('goes into forms as they read it: every day of it, and a day without a line was not read', () => {
    const rows = [
      aRain(),
      aRain({ id: 'r2', day: '2026-05-08', days: 2, amountIn: 0.5 }),
      aRain({ id: 'r3', day: '2026-05-10', amountIn: 0, isTrace: true }),
    ];
    const understood = understandRecord({ ...rainGauge, maxRows: 1000 }, rainText(rows) ?? '');
    expect(understood.problem).toBeUndefined();
    expect(understood.isConfirmed).toBe(true);
    expect(understood.lines.map(({ day, amount }) => [isoDay(day), amount])).toEqual([
      ['2026-05-04', 0.5],
      ['2026-05-07', 0.25],
      ['2026-05-08', 0.25],
      ['2026-05-10', 0],
    ]);
    expect(understood.missing).toEqual([{ year: 2026, days: 3 }]);
    expect(rainText([])).toBeUndefined();
  });
  it('is not read on days without a line, which are never dry by themselves', () => {
    expect(unreadDays([aRain({ day: '2026-06-17' })], today).map(isoDay)).toEqual(['2026-06-18', '2026-06-19']);
    expect(unreadDays([aRain({ day: '2026-06-17' }), aRain({ id: 'r2', day: '2026-06-20' })], today).map(isoDay)).toEqual([
      '2026-06-18',
      '2026-06-19',
    ]);
    expect(unreadDays([], today)).toEqual([]);
    expect(lastReading([aRain(), aRain({ id: 'r2', day: '2026-07-01' })], today)?.id).toBe('r1');
  });
});

describe('tables out and in', () => {
  const bringing = (rows: readonly Row[], place = aPlace()) => ({
    place,
    rows,
    lbPerDayOf: () => 30,
    sayMove: ({ inDay, outDay }: RowBody & { readonly is: 'move' }, name: string) => `${name}, ${inDay} to ${outDay ?? 'now'}`,
    sayRain: ({ day, amountIn }: { readonly day: string; readonly amountIn: number }) => `${day}: ${amountIn}`,
  });
  const linesIn = <T>(read: readonly T[] | { readonly problem: string }): readonly T[] => {
    if ('problem' in read) throw new RangeError(read.problem);
    return read;
  };
  const two: readonly Row[] = [
    aMove({ outDay: '2026-05-08', heightInIn: 9, heightOutIn: 4, word: 'left the fescue, "tall"', paddockName: 'Low bench' }),
    aMove({
      id: 'm2',
      paddockId: 'high',
      paddockName: 'High bench',
      inDay: '2026-05-08',
      stock: [
        { kind: 'cow', countHead: 45, weightLb: 1250, lbPerDay: 31.25 },
        { kind: 'bull', countHead: 2, weightLb: 1900, lbPerDay: 38 },
      ],
    }),
  ];
  it('have a line a kind, under a head that names the columns', () => {
    expect(movesCsv(staysOf(aPlace(), two, counting))).toBe(
      [
        'paddock,acres,herd,in,out,kind,head,weight_lb,height_in,height_out,hay_lb,word,lb_day',
        'Low bench,85,1,2026-05-01,2026-05-08,cow,45,1250,9,4,,"left the fescue, ""tall""",30',
        'High bench,120,1,2026-05-08,,cow,45,1250,,,,,31.25',
        'High bench,,1,2026-05-08,,bull,2,1900,,,,,38',
      ].join('\n'),
    );
    expect(rainCsv(rowsOf([aRain(), aRain({ id: 'r2', day: '2026-05-06', days: 2, amountIn: 0, isTrace: true })], 'rain'))).toBe(
      'day,rain_in,days\n2026-05-04,0.5,1\n2026-05-06,T,2',
    );
  });
  it('come in again as the same moves and readings', () => {
    const moves = bringMoves(bringing([]), linesIn(readMoves(movesCsv(staysOf(aPlace(), two, counting)))));
    expect(moves.map(({ is, lines }) => [is, lines])).toEqual([
      ['new', [2]],
      ['new', [3, 4]],
    ]);
    const body = ({ id, rev, past, changedBy, changedAt, v, placeId, ...rest }: MoveRow) => rest;
    expect(moves.flatMap(({ adds }) => adds)).toEqual(rowsOf(two, 'move').map(body));
    const rain = rowsOf([aRain(), aRain({ id: 'r2', day: '2026-05-06', days: 2, amountIn: 0, isTrace: true })], 'rain');
    expect(bringRain(bringing([]), linesIn(readRain(rainCsv(rain)))).flatMap(({ adds }) => adds)).toEqual([
      { is: 'rain', day: '2026-05-04', days: 1, amountIn: 0.5 },
      { is: 'rain', day: '2026-05-06', days: 2, amountIn: 0, isTrace: true },
    ]);
  });
  it('that came from here change nothing here', () => {
    const rows = [...two, aRain(), aHay()];
    expect(bringMoves(bringing(rows), linesIn(readMoves(movesCsv(staysOf(aPlace(), rows, counting))))).map(({ is }) => is)).toEqual(['same', 'same']);
    expect(bringRain(bringing(rows), linesIn(readRain(rainCsv(rowsOf(rows, 'rain'))))).map(({ is }) => is)).toEqual(['same']);
  });
  it('tell what they would change, and take nothing away that they leave empty', () => {
    const [first] = bringMoves(bringing(two), linesIn(readMoves('paddock,in,out\nlow bench,5/1/2026,5/9/2026\n')));
    expect(first).toMatchObject({ is: 'changed', changes: { after: { id: 'm1', outDay: '2026-05-09', heightInIn: 9, stock: [{ countHead: 45 }] } } });
  });
  it('bring hay as pounds that are dry, once', () => {
    const text = 'paddock,in,out,hay_lb\nLow bench,2026-05-01,2026-05-08,900\n';
    const [first] = bringMoves(bringing([]), linesIn(readMoves(text)));
    expect(first?.adds[1]).toEqual({ is: 'hay', paddockId: 'low', day: '2026-05-01', baleCount: 1, baleLb: 900, moisturePercent: 0 });
    expect(bringMoves(bringing([aMove({ outDay: '2026-05-08' }), aHay()]), linesIn(readMoves(text)))[0]?.adds).toEqual([]);
  });
  it.each([
    ['Lower bench,2026-05-01,,cow,5', 'Your place has no paddock “Lower bench”. Add it under Ground, or mend the name.'],
    [',2026-05-01,,cow,5', '“paddock” is empty. Write its name as your place has it.'],
    ['Low bench,,,cow,5', '“in” is empty. Write the day, such as 2026-05-01.'],
    ['Low bench,2026-02-30,,cow,5', '“in” is “2026-02-30”. Write a day such as 2026-05-01.'],
    ['Low bench,2026-05-08,2026-05-01,cow,5', '“out” is May 1, 2026, before “in”, May 8, 2026.'],
    ['Low bench,2026-05-01,,llama,5', '“kind” is “llama”. Write one of cow, heifer, bull, stocker, calf, ewe, lamb, doe, horse.'],
    ['Low bench,2026-05-01,,cow,', '“head” is empty. Write how many there were.'],
    ['Low bench,2026-05-01,,cow,five', '“head” is “five”. Write a number.'],
    ['Low bench,2026-05-01,,cow,4.5', '“head” is 4.5. Write a whole number from 0 to 10,000,000.'],
  ])('say what is wrong in “%s”, and bring nothing of it', (line, say) => {
    const [found] = bringMoves(bringing([]), linesIn(readMoves(`paddock,in,out,kind,head\n${line}\n`)));
    expect(found).toEqual({ lines: [2], is: 'wrong', say, adds: [] });
  });
  it('say which columns are missing, and of rain what is wrong in a line', () => {
    expect(readMoves('a,b\n1,2')).toEqual({ problem: 'The first line must name the columns. “paddock”, “in” is missing.' });
    const read = linesIn(readRain('day,rain_in\n2026-05-04,\n2026-05-05,0.2\n2026-05-05,0.3'));
    expect(bringRain(bringing([]), read).map(({ is, say }) => [is, say])).toEqual([
      ['wrong', '“rain_in” is empty. Write 0 where it was dry, or leave the line out where nobody read.'],
      ['new', '2026-05-05: 0.2'],
      ['wrong', '2026-05-05 stands in this table twice. Leave one line of it.'],
    ]);
  });
  it('refuse two lines of one move that do not agree', () => {
    const [found] = bringMoves(
      bringing([]),
      linesIn(readMoves('paddock,in,out\nLow bench,2026-05-01,2026-05-08\nLow bench,2026-05-01,2026-05-09\n')),
    );
    expect(found).toMatchObject({ is: 'wrong', lines: [2, 3] });
  });
  it('put an apostrophe before what a spreadsheet would take for a formula, and take it off again', () => {
    expect(['=1+1', '+1', '-1', '@a', 'a=b', "'=x", ''].map(guarded)).toEqual(["'=1+1", "'+1", "'-1", "'@a", 'a=b', "''=x", '']);
    fc.assert(fc.property(fc.string(), (text) => unguarded(guarded(text)) === text && !/^[=+\-@\t\r]/.test(guarded(text))));
    const out = movesCsv(staysOf(aPlace(), [aMove({ word: '=HYPERLINK("x")', outDay: '2026-05-02' })], counting));
    expect(out).toContain(`"'=HYPERLINK(""x"")"`);
    expect(linesIn(readMoves(out))[0]?.read?.word).toBe('=HYPERLINK("x")');
  });
  it('hold any word, name and number through out and in', () => {
    const words = fc.string({ minLength: 1, maxLength: 40 }).filter((text) => text.trim() === text && !text.includes('\r'));
    fc.assert(
      fc.property(words, fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 0, max: 400 }), (word, countHead, halves) => {
        const row = aMove({ word, outDay: '2026-05-02', heightInIn: halves / 2, stock: [{ kind: 'ewe', countHead }], paddockName: 'Low bench' });
        const [found] = bringMoves(
          { ...bringing([row]), lbPerDayOf: () => undefined },
          linesIn(readMoves(movesCsv(staysOf(aPlace(), [row], counting)))),
        );
        expect(found?.is).toBe('same');
      }),
    );
  });
});
