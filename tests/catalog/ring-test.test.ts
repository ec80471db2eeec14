import { describe, expect, it } from 'vitest';
import definition from '../../calculators/catalog/ring-test/definition.ts';
import { resultAt, runQuery } from '../../calculators/kit/cases.ts';
import { near } from '../support/near.ts';

const result = (query: string, name: string) => resultAt(runQuery(definition, query), name);
const number = (query: string, name: string): number => Number(result(query, name));

describe('ring-test', () => {
  it('goes by the second pouring, whatever the first one was', () => {
    const with1 = 'rings.first=1min&rings.pours=twice&rings.second=20min';
    const with9 = 'rings.first=9min&rings.pours=twice&rings.second=20min';
    expect(number(with1, 'middleInPerHr')).toBe(number(with9, 'middleInPerHr'));
  });
  it('counts what was left standing as not soaked in', () => {
    const half = number('water=444ml&rings.first=20min&rings.pours=once', 'depthIn') / 2;
    const whole = number('rings.first=20min&rings.pours=once', 'middleInPerHr');
    const left = number(`rings.first=20min&rings.pours=once&rings.end=left&rings.left=${half}in`, 'middleInPerHr');
    expect(Math.abs(left - whole / 2)).toBeLessThan(1e-9);
  });
  it('does not judge dry ground by one pouring, nor ground with a fault', () => {
    expect(result('moisture=dry&rings.first=4min&rings.pours=once', 'judged')).toBe('first-only');
    expect(result('moisture=moist&rings.first=4min&rings.pours=once', 'judged')).toBe('judged');
    for (const site of ['cracks', 'burrow', 'leak', 'frozen', 'standing']) expect(result(`site=${site}`, 'judged')).toBe(site);
  });
  it('says which way the change went, and never from a single ring', () => {
    const then = (rates: string): string => `beside=visit&others.then=${rates}`;
    expect(result(then('0.1in/hr,0.11in/hr,0.12in/hr'), 'verdict')).toBe('faster');
    expect(result(then('60in/hr,61in/hr,62in/hr'), 'verdict')).toBe('slower');
    expect(result(then('0.001in/hr'), 'verdict')).toBe('too-few');
  });
  it('tells a single ring over another as so many times', () => {
    const query = 'beside=visit&others.then=1.5in/hr&rings.first=20min&rings.pours=once&rings.end=gone';
    const rate = number(query, 'middleInPerHr');
    expect(rate).toBeGreaterThan(0);
    near(number(query, 'ratioTimes'), rate / 1.5, 0.5e-9);
  });
  it('gives one verdict: no “yes” beside a figure that calls it scatter', () => {
    // Three rings that agree closely, 4.3 times as fast as three others: these rings alone would make it sure, usual rings would not.
    const query =
      'beside=visit&others.then=0.7in/hr,0.72in/hr,0.75in/hr&rings.first=18min,18min,19min&rings.pours=once,once,once&rings.end=gone,gone,gone';
    expect(number(query, 'lowRatioTimes')).toBeGreaterThan(1);
    expect(number(query, 'ratioTimes')).toBeLessThan(number(query, 'scatterTimes'));
    expect(result(query, 'verdict')).toBe('perhaps-faster');
    const { note, cautions } = runQuery(definition, query);
    expect(note).toContain('a hint, no more');
    expect(cautions.map(({ say }) => say).join(' ')).toContain('Take it as a hint');
    const slower = query.replaceAll('0.7', '12.7');
    expect(result(slower, 'verdict')).toBe('perhaps-slower');
    expect(
      runQuery(definition, slower)
        .cautions.map(({ say }) => say)
        .join(' '),
    ).toContain('Take it as a hint');
  });
  it('never shows a change as chance beside a usual scatter that it has passed', () => {
    const wild = 'beside=visit&others.then=0.1in/hr,0.2in/hr,3in/hr&rings.first=1min,3min,60min&rings.pours=once,once,once&rings.end=gone,gone,gone';
    expect(result(wild, 'verdict')).toBe('chance');
    expect(number(wild, 'ratioTimes')).toBeGreaterThan(number(wild, 'scatterTimes'));
    expect(runQuery(definition, wild).shown).not.toContain('scatterTimes');
  });
  it('tells a ratio below one, and its ends, to two digits', () => {
    const slower = 'beside=visit&others.then=30in/hr,45in/hr,60in/hr';
    expect(runQuery(definition, slower).ranges['ratioTimes']).toMatch(/^0\.0\d\d to 0\.\d\d, 19 times in 20$/);
  });
  it('gives rings that scatter by more than ten times either way no range of figures', () => {
    const wild = 'beside=visit&others.then=0.1in/hr,0.2in/hr,3in/hr&rings.first=1min,3min,60min&rings.pours=once,once,once&rings.end=gone,gone,gone';
    const { ranges, note } = runQuery(definition, wild);
    expect(number(wild, 'highRatioTimes') / number(wild, 'ratioTimes')).toBeGreaterThan(10);
    expect(ranges['ratioTimes']).toBe('these rings scatter too much to bound it');
    expect(note).toContain('(these rings scatter too much to bound it)');
  });
});
