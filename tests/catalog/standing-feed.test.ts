import { expect, it } from 'vitest';
import definition from '../../calculators/catalog/standing-feed/definition.ts';
import { resultAt, runLink, runQuery } from '../../calculators/kit/cases.ts';
import { printDay } from '../../calculators/units/printQuantity.ts';
import { near } from '../support/near.ts';

const result = (query: string, path: string): number => Number(resultAt(runQuery(definition, query), path));
const days = (query: string): number => result(query, 'grazingForDays');

it('lasts as long as a herd that is walked across the field hour by hour', () => {
  const query = 'area=120ac&loss=9.7pct&measured=2026-11-01&start=2026-12-01&stubble=800lb/ac&standing=2600lb/ac&eaten-from=own&own-eaten=70pct';
  const demandLb = result(query, 'demandLbPerDay');
  const hour = 1 / 24;
  let acresLeft = 120;
  let hours = 0;
  for (; acresLeft > 0; hours++) {
    const months = (30 + hours * hour) / (365.25 / 12);
    acresLeft -= (demandLb * hour) / ((2600 - 800) * (1 - 0.097 * months) * 0.7);
  }
  expect(Math.abs(days(query) - hours * hour)).toBeLessThan(2 * hour);
});
it('counts the loss from the start as the share of the less that is left then', () => {
  // 10 % a month of what stood for six months leaves 40 %, of which it is a quarter; for eight and a half months 15 %, of which it is two thirds.
  const months = (days: number): number => days / (365.25 / 12);
  for (const [start, waited] of [
    ['2027-05-01', 181],
    ['2027-07-15', 256],
  ] as const)
    near(
      result(`measured=2026-11-01&start=${start}&until=2027-09-01&loss=10pct&stubble=0lb/ac`, 'fromStartPercent'),
      10 / (1 - 0.1 * months(waited)),
      0.5e-6,
    );
});
it('goes less far the later it starts, the more weather takes, the more stubble stays and the longer a strip lasts', () => {
  const worse = (one: string, other: string) => expect(days(one), `${one} against ${other}`).toBeGreaterThan(days(other));
  worse('start=2026-12-01', 'start=2027-01-15');
  worse('loss=3pct', 'loss=9pct');
  worse('stubble=600lb/ac', 'stubble=1200lb/ac');
  worse('strip=1d', 'strip=7d');
});
it('moves the wire farther from one row to the next, never shorter', () => {
  const run = runQuery(definition, 'area=150ac&loss=8pct');
  const moves = Array.from({ length: 5 }, (_, row) => Number(resultAt(run, `strips.${row}.stripFt`)));
  expect(moves).toEqual(moves.toSorted((one, other) => one - other));
  expect(moves[4]).toBeGreaterThan(Number(moves[0]));
});
it('counts the days before the field is opened as days fed another way', () => {
  const wait = 'area=400ac&from=2026-12-01&until=2027-02-01';
  expect(result(`${wait}&start=2026-12-01`, 'shortDays')).toBe(0);
  expect(result(`${wait}&start=2026-12-21`, 'shortDays')).toBe(20);
});
it('tells a plan that is no number of days in words, and a range without a loss as one', () => {
  const even = 'loss=0pct&eaten-from=own&own-eaten=100pct&area=10ac&stubble=1000lb/ac&stock.kind=other&stock.weight=1000lb&stock.intake=2pct';
  // 10 acres, 20 lb a head and day: 1,000 lb an acre are 500 days for one head, 1 day for 500 and less for 501.
  const note = (head: number) => runQuery(definition, `${even}&standing=2000lb/ac&stock.count=${head}`).note;
  expect(note(1)).toContain('a year or more');
  expect(note(500)).toContain('about 1 day');
  expect(note(501)).toContain('less than a day');
  const range = (query: string) => runQuery(definition, query).ranges['grazingForDays'];
  expect(range('loss=0pct')).toBe('the same with twice the weather loss, or none');
  expect(range('loss=20pct')).toContain('if weather takes twice as much');
});
it('stops wherever weather has taken it all, however far past that', () => {
  // A year of waiting at 8.4 percent a month takes 100.8 percent, at 30 percent more than three times all of it.
  for (const lossPercent of [8.4, 10, 12, 15, 20, 30]) {
    const run = runLink(definition, `measured=2025-12-01&start=2026-12-01&loss=${lossPercent}pct`);
    expect('refusals' in run ? run.refusals.map(({ say }) => say.slice(0, 31)) : [], `${lossPercent}`).toEqual(['By that day weather has taken n']);
  }
});

it('tells as many days as lie from the first day of grazing through the last, with the same days in its note', () => {
  for (const stubble of [1000, 1200, 1250, 1300, 1350]) {
    const run = runQuery(definition, `start=2026-12-01&stubble=${stubble}lb/ac`);
    const told = /about (\d+) days \(.*?\), through about (\w+, \w+ \d+, \d+)\./.exec(run.note);
    // December 1 is the first day, so the last of 30 is December 30.
    const last = new Date(Date.UTC(2026, 10, 30 + Number(told?.[1])));
    expect(told?.[2], `${stubble}`).toBe(printDay(last.getTime() / 86_400_000, true));
    // And those that are told to be fed another way make up the 121 that feed is wanted.
    expect(Number(told?.[1]) + Number(/leaves (\d+) days/.exec(run.note)?.[1])).toBe(121);
  }
});
it('warns of ice and snow where a day of grazing can lie outside June, July and August, and not in July alone', () => {
  const leads = (query: string) => runQuery(definition, query).cautions.map(({ lead }) => lead);
  const summer = 'feed=annual-range&measured=2026-06-01&from=2026-07-01&until=2026-10-01&start=2026-07-01';
  const ice = 'Ice or snow can shut off the grass in a night. Keep hay and open water.';
  expect(leads(`${summer}&area=40ac`)).not.toContain(ice);
  // Enough to last from July into fall.
  expect(leads(`${summer}&area=160ac`)).toContain(ice);
  // From July for a whole year, to a July again.
  expect(leads(`${summer}&area=4000ac`)).toContain(ice);
  expect(leads('')).toContain(ice);
});
it('speaks of thin grass to those that graze it: cattle go short, sheep and goats take worms, horses founder', () => {
  const leads = (kind: string) =>
    runQuery(definition, `standing=700lb/ac&stubble=0lb/ac&loss=0pct&feed=other&stock.kind=${kind}&stock.count=20`).cautions.map(({ lead }) => lead);
  for (const kind of ['cow-dry', 'stocker']) {
    expect(leads(kind)).toContain('Grass this thin on the first day leaves cattle short before it is gone.');
    expect(leads(kind).join(' ')).not.toMatch(/Sheep and goats|Horses and donkeys founder/);
  }
  for (const [kind, about] of [
    ['doe', /^Sheep and goats eat grass this thin/],
    ['ewe-dry', /^Sheep and goats eat grass this thin/],
    ['horse', /^Horses and donkeys founder/],
  ] as const) {
    expect(leads(kind).filter((lead) => about.test(lead))).toHaveLength(1);
    expect(leads(kind).join(' ')).not.toContain('cattle short');
  }
  // What no list names may be cattle or donkeys.
  expect(leads('other').join(' ')).toMatch(/leaves cattle short.*Horses and donkeys founder/);
});
