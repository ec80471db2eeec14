import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MoveRow, Row } from '../../src/place/model/row.ts';
import { bringMoves, bringRain, type RowBody } from '../../src/place/record/bringLines.ts';
import { guarded, isOfRain, movesCsv, rainCsv, readMoves, readRain, unguarded } from '../../src/place/record/csv.ts';
import { rowsOf } from '../../src/place/record/days.ts';
import { isLoad } from '../../src/place/record/loads.ts';
import { staysOf } from '../../src/place/record/stays.ts';
import type { Data } from '../../src/place/ui/edit.ts';
import { hayFields } from '../../src/place/ui/fields/record.ts';
import { problemIn } from '../../src/place/ui/texts.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { aPlace, withPasture } from './aPlace.ts';
import { counting } from './aRecord.ts';
import { aHay, aMove, aRain } from './aRow.ts';

// What is expected was worked out by hand on a calendar and with a pencil: common practice.

describe('tables out and in', () => {
  const bringing = (rows: readonly Row[], place = aPlace()) => ({
    place,
    rows,
    stays: staysOf(place, rows, counting),
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
    expect(movesCsv(staysOf(aPlace(), two, counting), 'us')).toBe(
      [
        'paddock,acres,herd,in,out,kind,head,weight_lb,height_in,height_out,hay_lb,word,lb_day',
        'Low bench,85,1,2026-05-01,2026-05-08,cow,45,1250,9,4,,"left the fescue, ""tall""",30',
        'High bench,120,1,2026-05-08,,cow,45,1250,,,,,31.25',
        'High bench,,1,2026-05-08,,bull,2,1900,,,,,38',
      ].join('\n'),
    );
    expect(rainCsv(rowsOf([aRain(), aRain({ id: 'r2', day: '2026-05-06', days: 2, amountIn: 0, isTrace: true })], 'rain'), 'us')).toBe(
      'day,rain_in,days\n2026-05-04,0.5,1\n2026-05-06,T,2',
    );
  });
  it('come in again as the same moves and readings', () => {
    const moves = bringMoves(bringing([]), linesIn(readMoves(movesCsv(staysOf(aPlace(), two, counting), 'us'))));
    expect(moves.map(({ is, lines }) => [is, lines])).toEqual([
      ['new', [2]],
      ['new', [3, 4]],
    ]);
    const body = ({ id, rev, past, changedBy, changedAt, v, placeId, ...rest }: MoveRow) => rest;
    expect(moves.flatMap(({ adds }) => adds)).toEqual(rowsOf(two, 'move').map(body));
    const rain = rowsOf([aRain(), aRain({ id: 'r2', day: '2026-05-06', days: 2, amountIn: 0, isTrace: true })], 'rain');
    expect(bringRain(bringing([]), linesIn(readRain(rainCsv(rain, 'us')))).flatMap(({ adds }) => adds)).toEqual([
      { is: 'rain', day: '2026-05-04', days: 1, amountIn: 0.5 },
      { is: 'rain', day: '2026-05-06', days: 2, amountIn: 0, isTrace: true },
    ]);
  });
  // An inch is 25.4 mm.
  it('of rain go out in millimeters for who reads in metric, under a name that says so, and change nothing here when they come back', () => {
    const rows = [aRain(), aRain({ id: 'r2', day: '2026-05-06', amountIn: 12 / 25.4 }), aRain({ id: 'r3', day: '2026-05-07', amountIn: 0.01 })];
    const out = rainCsv(rowsOf(rows, 'rain'), 'si');
    expect(out).toBe('day,rain_mm,days\n2026-05-04,12.7,1\n2026-05-06,12,1\n2026-05-07,0.254,1');
    for (const text of [out, rainCsv(rowsOf(rows, 'rain'), 'us')])
      expect(bringRain(bringing(rows), linesIn(readRain(text))).map(({ is }) => is)).toEqual(['same', 'same', 'same']);
    expect(bringRain(bringing(rows), linesIn(readRain(out.replace('0.254', '0.25'))))[2]?.is, 'another hundredth of a millimeter').toBe('changed');
  });
  // A pound is 0.45359237 kg, an acre 0.40468564 ha, an inch 25.4 mm.
  it('of moves go out in metric for who reads in metric, under names that say so, and change nothing here when they come back', () => {
    const rows: readonly Row[] = [
      ...two,
      aHay({ baleLb: 900, moisturePercent: 0 }),
      aMove({
        id: 'm3',
        inDay: '2026-06-01',
        outDay: '2026-06-04',
        // As somebody typed it in metric: 560 kg, 12 kg a day, 210 mm and 75.
        stock: [{ kind: 'cow', countHead: 3, weightLb: 560 / 0.45359237, lbPerDay: 12 / 0.45359237 }],
        heightInIn: 210 / 25.4,
        heightOutIn: 75 / 25.4,
        paddockName: 'Low bench',
      }),
    ];
    const out = movesCsv(staysOf(aPlace(), rows, counting), 'si');
    expect(out.split('\n')).toEqual([
      'paddock,hectares,herd,in,out,kind,head,weight_kg,height_in_mm,height_out_mm,hay_kg,word,kg_day',
      'Low bench,34.3983,1,2026-05-01,2026-05-08,cow,45,566.9905,228.6,101.6,408.2,"left the fescue, ""tall""",13.6078',
      'High bench,48.5623,1,2026-05-08,,cow,45,566.9905,,,,,14.1748',
      'High bench,,1,2026-05-08,,bull,2,861.8255,,,,,17.2365',
      'Low bench,34.3983,1,2026-06-01,2026-06-04,cow,3,560,210,75,,,12',
    ]);
    const back = (text: string) => bringMoves(bringing(rows), linesIn(readMoves(text)));
    for (const text of [out, movesCsv(staysOf(aPlace(), rows, counting), 'us')])
      expect(back(text).map(({ is, say }) => [is, say.includes('does not change hay')])).toEqual(Array(3).fill(['same', false]));
    const changed = back(out.replace('cow,3,560,210', 'cow,3,560,220').replace('45,566.9905,228.6', '45,567,228.6'));
    expect(changed.map(({ is }) => is)).toEqual(['changed', 'same', 'changed']);
    expect(changed[2]?.changes?.after).toMatchObject({ heightOutIn: 75 / 25.4, stock: [{ weightLb: 560 / 0.45359237 }] });
    const elsewhere = bringMoves(bringing([]), linesIn(readMoves(out)));
    const [first] = elsewhere.flatMap(({ adds }) => adds.filter((each) => each.is === 'move'));
    expect([first?.heightInIn, first?.heightOutIn]).toEqual([9, 4]);
    // Four digits of a kilogram hold an eighth of a thousandth of a pound.
    expectWithin(first?.stock[0]?.weightLb ?? Number.NaN, 1250, 2e-4);
    expectWithin(first?.stock[0]?.lbPerDay ?? Number.NaN, 30, 2e-4);
  });
  it('of moves are read in the unit that the name of a column says, unless a cell names its own, and in one of two', () => {
    const rows = ['560,200,400', '1250 lb,8 in,900 lb', '2300,,'].map((cells) => `Low bench,2026-05-01,cow,45,${cells}`);
    const [line, pounds, heavy] = linesIn(readMoves(`paddock,in,kind,head,weight_kg,height_in_mm,hay_kg\n${rows.join('\n')}\n`));
    expect(line?.read?.stock?.weightLb?.toFixed(1)).toBe('1234.6');
    expect([line?.read?.heightInIn?.toFixed(3), line?.read?.hayLb?.toFixed(1)]).toEqual(['7.874', '881.8']);
    expect(pounds?.read).toMatchObject({ stock: { weightLb: 1250 }, heightInIn: 8, hayLb: 900 });
    expect(heavy?.problem).toBe('“weight_kg” is 2300. Write a number from 0.4 to 2,268.');
    expect(readMoves('paddock,in,weight_lb,weight_kg\nLow bench,2026-05-01,1250,567\n')).toEqual({
      problem: 'The first line names “weight_lb” and “weight_kg”. Leave one of these columns.',
    });
  });
  it('of rain are read in the unit that the name of their column says, unless a cell names its own', () => {
    const inches = (text: string) => linesIn(readRain(text)).map(({ read, problem }) => read?.amountIn.toFixed(4) ?? problem);
    expect(inches('day,rain_mm\n2026-05-04,12\n2026-05-05,0.5 in\n2026-05-06,T\n')).toEqual(['0.4724', '0.5000', '0.0000']);
    expect(inches('day,rain_in\n2026-05-04,12\n2026-05-05,12 mm\n')).toEqual(['12.0000', '0.4724']);
    expect(inches('day,rain_mm\n2026-05-04,\n2026-05-05,2600\n')).toEqual([
      '“rain_mm” is empty. Write 0 where it was dry, or leave the line out where nobody read.',
      '“rain_mm” is 2600. Write a number from 0 to 2,540.',
    ]);
    expect(readRain('day,rain\n2026-05-04,12\n')).toEqual({ problem: 'The first line must name the columns. “rain_in” or “rain_mm” is missing.' });
    expect(readRain('day,rain_in,rain_mm\n2026-05-04,0.5,12.7\n')).toEqual({
      problem: 'The first line names “rain_in” and “rain_mm”. Leave one of these columns.',
    });
  });
  it('of moves take a height and a weight with their own unit', () => {
    const [line] = linesIn(readMoves('paddock,in,kind,head,weight_lb,height_in\nLow bench,2026-05-01,cow,45,560 kg,20 cm\n'));
    expect(line?.read?.heightInIn?.toFixed(3)).toBe('7.874');
    expect(line?.read?.stock?.weightLb?.toFixed(1)).toBe('1234.6');
  });
  it('that came from here change nothing here', () => {
    const rows = [...two, aRain(), aHay()];
    expect(bringMoves(bringing(rows), linesIn(readMoves(movesCsv(staysOf(aPlace(), rows, counting), 'us')))).map(({ is }) => is)).toEqual([
      'same',
      'same',
    ]);
    expect(bringRain(bringing(rows), linesIn(readRain(rainCsv(rowsOf(rows, 'rain'), 'us')))).map(({ is }) => is)).toEqual(['same']);
  });
  it('that came from here with a day that was read twice change nothing here, and bring both readings in elsewhere', () => {
    const rows = [aRain(), aRain({ id: 'r2', amountIn: 0 }), aRain({ id: 'r3', amountIn: 0.2, isTrace: true, day: '2026-05-06' })];
    const read = linesIn(readRain(rainCsv(rowsOf(rows, 'rain'), 'us')));
    expect(bringRain(bringing(rows), read).map(({ is }) => is)).toEqual(['same', 'same', 'same']);
    expect(bringRain(bringing([]), read).map(({ is, say }) => [is, say])).toEqual([
      ['new', '2026-05-04: 0.5. That day has more than one reading: they add up'],
      ['new', '2026-05-04: 0. That day has more than one reading: they add up'],
      ['new', '2026-05-06: 0'],
    ]);
  });
  it('mend a day that was read twice only where it is sure which reading is meant', () => {
    const rows = [aRain(), aRain({ id: 'r2', amountIn: 0 })];
    const brought = (...lines: readonly string[]) => bringRain(bringing(rows), linesIn(readRain(`day,rain_in\n${lines.join('\n')}\n`)));
    expect(brought('2026-05-04,0.5', '2026-05-04,0.3')).toMatchObject([{ is: 'same' }, { is: 'changed', changes: { before: { id: 'r2' } } }]);
    expect(brought('2026-05-04,0.3')).toMatchObject([
      { is: 'wrong', say: 'Your record has other readings of 2026-05-04. Mend them there, under “Rain”.', adds: [] },
    ]);
    expect(brought('2026-05-04,0', '2026-05-04,0', '2026-05-04,0')).toMatchObject([{ is: 'same' }, { is: 'wrong' }, { is: 'wrong' }]);
  });
  it('tell what they would change, and take nothing away that they leave empty', () => {
    const [first] = bringMoves(bringing(two), linesIn(readMoves('paddock,in,out\nlow bench,5/1/2026,5/9/2026\n')));
    expect(first).toMatchObject({ is: 'changed', changes: { after: { id: 'm1', outDay: '2026-05-09', heightInIn: 9, stock: [{ countHead: 45 }] } } });
  });
  it('name a paddock as the record does, or as the place does where only one is called so', () => {
    const paddocks = (...ids: readonly string[]) => ids.map((id) => ({ id, name: id.slice(-1) }));
    const place = withPasture(withPasture(aPlace(), 'low', { paddocks: paddocks('a1', 'a2') }), 'high', { paddocks: paddocks('b1', 'b3') });
    const [one, two, both, whole] = bringMoves(
      { ...bringing([]), place },
      linesIn(readMoves('paddock,in\n1 (high bench),2026-05-01\n2,2026-05-01\n1,2026-05-01\nLow bench,2026-05-01\n')),
    );
    expect([one, two, whole].map((each) => each?.adds[0])).toMatchObject([{ paddockId: 'b1' }, { paddockId: 'a2' }, { paddockId: 'low' }]);
    expect(both?.say).toBe('Your place has two paddocks of the name “1”. Write “1 (Low bench)” or “1 (High bench)”.');
  });
  it('bring hay as pounds that are dry, once', () => {
    const text = 'paddock,in,out,hay_lb\nLow bench,2026-05-01,2026-05-08,900\n';
    const [first] = bringMoves(bringing([]), linesIn(readMoves(text)));
    expect(first?.adds[1]).toEqual({ is: 'hay', paddockId: 'low', day: '2026-05-01', baleCount: 1, baleLb: 900, moisturePercent: 0 });
    expect(bringMoves(bringing([aMove({ outDay: '2026-05-08' }), aHay()]), linesIn(readMoves(text)))[0]?.adds).toEqual([]);
  });
  it('say of other hay that it stays as it is here, and nothing of hay that went out of here', () => {
    const rows = [aMove({ outDay: '2026-05-08' }), aHay(), aMove({ id: 'm2', inDay: '2026-05-08', outDay: '2026-05-12', herdNumber: 2 })];
    const both = [...rows, aHay({ id: 'y2', day: '2026-05-08', baleLb: 500 })];
    const out = movesCsv(staysOf(aPlace(), both, counting), 'us');
    expect(bringMoves(bringing(both), linesIn(readMoves(out))).map(({ is, say }) => [is, say])).toEqual([
      ['same', 'Low bench, 2026-05-01 to 2026-05-08'],
      ['same', 'Low bench, 2026-05-08 to 2026-05-12'],
    ]);
    expect(bringMoves(bringing(both), linesIn(readMoves(out.replace(',900,', ',950,'))))[0]).toMatchObject({
      is: 'same',
      say: 'Low bench, 2026-05-01 to 2026-05-08. A table does not change hay that is here: mend it under “Hay fed”',
      adds: [],
    });
  });
  it('bring hay that its own fields take', () => {
    const [brought] = bringMoves(bringing([]), linesIn(readMoves('paddock,in,hay_lb\nLow bench,2026-05-01,5100\n')));
    const hay = brought?.adds.find((each) => each.is === 'hay');
    if (hay?.is !== 'hay') throw new RangeError('no hay was brought');
    const line: Data = JSON.parse(JSON.stringify(hay));
    expect(hayFields([{ id: 'low', name: 'Low bench' }], isLoad(hay)).map((field) => problemIn(line, field, 'us'))).toEqual(Array(5).fill(undefined));
  });
  it.each([
    ['Lower bench,2026-05-01,,cow,5', 'Your place has no paddock “Lower bench”. Add it under Ground, or mend the name.'],
    [',2026-05-01,,cow,5', '“paddock” is empty. Write its name as your place has it.'],
    ['Low bench,,,cow,5', '“in” is empty. Write the day, such as 2026-05-01.'],
    ['Low bench,2026-02-30,,cow,5', '“in” is “2026-02-30”. Write a day such as 2026-05-01.'],
    ['Low bench,0202-05-12,,cow,5', '“in” is “0202-05-12”. Write a day such as 2026-05-01.'],
    ['Low bench,2026-05-08,2026-05-01,cow,5', '“out” is May 1, 2026, before “in”, May 8, 2026.'],
    ['Low bench,2026-05-01,,llama,5', '“kind” is “llama”. Write one of cow, heifer, bull, stocker, calf, ewe, lamb, doe, horse.'],
    ['Low bench,2026-05-01,,cow,', '“head” is empty. Write how many there were.'],
    ['Low bench,2026-05-01,,cow,five', '“head” is “five”. Write a number.'],
    ['Low bench,2026-05-01,,cow,4.5', '“head” is 4.5. Write a whole number from 0 to 10,000,000.'],
  ])('say what is wrong in “%s”, and bring nothing of it', (line, say) => {
    const [found] = bringMoves(bringing([]), linesIn(readMoves(`paddock,in,out,kind,head\n${line}\n`)));
    expect(found).toEqual({ lines: [2], is: 'wrong', say, adds: [] });
  });
  it.each([
    ['"0,5",1', '“rain_in” is “0,5”: a comma here can mean two things. Write a point for decimals: 0.5.'],
    ['"1,25",1', '“rain_in” is “1,25”: a comma here can mean two things. Write a point for decimals: 1.25.'],
    ['"0,125",1', '“rain_in” is “0,125”: a comma here can mean two things. Write a point for decimals: 0.125.'],
    ['0,5,1', 'It has more cells than the first line names. Write a point for decimals, and quotes around a text with a comma.'],
  ])('refuse a decimal comma in “%s”, which would make it another rain', (cells, problem) => {
    expect(readRain(`day,rain_in,days\n2026-05-20,${cells}\n`)).toEqual([{ line: 2, problem }]);
  });
  it('read commas of thousands in every column of numbers, and refuse others there', () => {
    const line = (cells: string) => linesIn(readMoves(`paddock,in,kind,head,weight_lb,height_in,hay_lb\nLow bench,2026-05-01,cow,${cells}\n`))[0];
    expect(line('"1,250","1,400",9,"5,100"')?.read).toMatchObject({ stock: { countHead: 1250, weightLb: 1400 }, heightInIn: 9, hayLb: 5100 });
    for (const cells of ['"12,5",1400,9,900', '5,"1,2",9,900', '5,1400,"9,5",900', '5,1400,9,"5,10"'])
      expect(line(cells)?.problem, cells).toContain('a comma here can mean two things');
  });
  it('say which columns are missing, and of rain what is wrong in a line', () => {
    expect(readMoves('a,b\n1,2')).toEqual({ problem: 'The first line must name the columns. “paddock”, “in” are missing.' });
    expect(readMoves('in,b\n1,2')).toEqual({ problem: 'The first line must name the columns. “paddock” is missing.' });
    const read = linesIn(readRain('day,rain_in\n2026-05-04,\n2026-05-05,0.2\n2026-05-05,0.2'));
    expect(bringRain(bringing([]), read).map(({ is, say }) => [is, say])).toEqual([
      ['wrong', '“rain_in” is empty. Write 0 where it was dry, or leave the line out where nobody read.'],
      ['new', '2026-05-05: 0.2'],
      ['wrong', '2026-05-05 stands in this table twice. Leave one line of it.'],
    ]);
  });
  it('are told apart by their columns, in whatever order they stand', () => {
    for (const head of ['day,rain_in,days', 'rain_in,day', 'rain_mm,day', '\uFEFF"Days","RAIN_IN","Day"', 'day', ' Day ,amount'])
      expect(isOfRain(`${head}\r\n2026-05-04,0.5,1\n`), head).toBe(true);
    for (const head of ['paddock,in,out', 'in,paddock,word\nrain_in,2,day', '', 'a,b', 'days,b']) expect(isOfRain(head), head).toBe(false);
    expect(linesIn(readRain('rain_in,day\n0.5,2026-05-04\n'))).toEqual([{ line: 2, read: { day: '2026-05-04', days: 1, amountIn: 0.5 } }]);
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
    const out = movesCsv(staysOf(aPlace(), [aMove({ word: '=HYPERLINK("x")', outDay: '2026-05-02' })], counting), 'us');
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
          linesIn(readMoves(movesCsv(staysOf(aPlace(), [row], counting), 'us'))),
        );
        expect(found?.is).toBe('same');
      }),
    );
  });
});
