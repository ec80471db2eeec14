import { describe, expect, it } from 'vitest';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { textIn } from '../../calculators/kit/state.ts';
import type { Pasture } from '../../src/place/model/pasture.ts';
import { calculatorOf } from '../support/catalog.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { fill, plain, with_ } from './filled.ts';

const base = {
  isCounted: true,
  paddocks: [],
  stopHeightIn: 4,
  reachPercent: 90,
  stand: 'mixed-pasture',
  condition: 'fair',
} as const satisfies Partial<Pasture>;
const big: Pasture = { ...base, id: 'big', name: 'Big', areaAc: 60 };
const middle: Pasture = { ...base, id: 'middle', name: 'Middle', areaAc: 30 };
const small: Pasture = { ...base, id: 'small', name: 'Small', areaAc: 10 };

describe('several pastures as one ground', () => {
  const asked = ['stopHeightIn', 'reachPercent', 'stand', 'condition', 'densityFrom', 'densityLbPerAcIn'] as const;
  const at = (pastures: readonly Pasture[], ids: readonly string[] = [], slug = 'days-of-grass') => {
    const filled = fill(slug, { place: with_({ pastures: [...pastures] }), chosen: { ids } });
    const of = (key: string) => {
      const mark = filled.marks.find((each) => each.at === key);
      return mark && [plain(mark.text), mark.says];
    };
    return { ...filled, of };
  };

  it.each([[[]], [['big', 'middle', 'small']], [['big', 'small']], [['small']]])('have what all say alike, with %j chosen', (ids) => {
    const { of } = at([big, middle, small], ids);
    expect(asked.map(of)).toEqual([
      ['4 in', undefined],
      ['90 pct', undefined],
      ['mixed-pasture', undefined],
      ['fair', undefined],
      undefined,
      undefined,
    ]);
  });
  it('last as many days together as they do one after another, all standing alike', () => {
    const daysOf = (ids: readonly string[]): number => {
      const run = runTexts(calculatorOf('days-of-grass'), at([big, middle, small], ids).texts);
      const days = 'outcome' in run ? run.outcome.values['lastsDays'] : undefined;
      return typeof days === 'number' ? days : Number.NaN;
    };
    // Nothing grows in the example, so that the grass of each is eaten in its own turn.
    expectWithin(daysOf(['big', 'middle', 'small']), daysOf(['big']) + daysOf(['middle']) + daysOf(['small']), 1e-9);
    expect(daysOf(['big'])).toBeGreaterThan(1);
  });
  it('have the mean by acres of numbers that differ, and it is said', () => {
    const { of } = at([big, { ...middle, stopHeightIn: 6, reachPercent: 50 }, small]);
    // By hand: (60 × 4 + 30 × 6 + 10 × 4) / 100 and (70 × 90 + 30 × 50) / 100.
    expect(of('stopHeightIn')).toEqual(['4.6 in', 'mean by acres']);
    expect(of('reachPercent')).toEqual(['78 pct', 'mean by acres']);
  });
  it('have the word that most of the acres have, and it is said that the rest differs', () => {
    const { of } = at([
      { ...big, areaAc: 35 },
      { ...middle, condition: 'good' },
      { ...small, condition: 'good' },
    ]);
    expect(of('condition')).toEqual(['good', 'most of the acres; the rest differs']);
    expect(of('stand')).toEqual(['mixed-pasture', undefined]);
  });
  it('say of how many it is told', () => {
    const { stopHeightIn, ...bare } = middle;
    expect(stopHeightIn).toBe(4);
    expect(at([big, bare, small]).of('stopHeightIn')).toEqual(['4 in', 'told of 2 of 3 pastures']);
    expect(at([{ ...big, stopHeightIn: 3 }, bare, small]).of('stopHeightIn')?.[1]).toBe('mean by acres; told of 2 of 3 pastures');
  });
  it('have pounds in an inch only where each has them', () => {
    const clipped = [
      { ...big, densityLbPerAcIn: 200 },
      { ...middle, densityLbPerAcIn: 300 },
    ];
    // By hand: (60 × 200 + 30 × 300) / 90.
    expect(['densityFrom', 'densityLbPerAcIn'].map(at(clipped).of)).toEqual([
      ['own', undefined],
      ['233.3 lb/ac/in', 'mean by acres'],
    ]);
    expect(['densityFrom', 'densityLbPerAcIn'].map(at([...clipped, small]).of)).toEqual([undefined, undefined]);
  });
  it('differ, and their acres are not known: nothing is guessed', () => {
    const { areaAc, ...unmeasured } = middle;
    expect(areaAc).toBe(30);
    const { of } = at([big, { ...unmeasured, stopHeightIn: 6, condition: 'good' }]);
    expect([of('stopHeightIn'), of('condition'), of('reachPercent')]).toEqual([undefined, undefined, ['90 pct', undefined]]);
  });
  it('give the planner of seasons the same', () => {
    expect(at([big, { ...middle, stopHeightIn: 6 }, small], [], 'season').of('stubbleIn')).toEqual(['4.6 in', 'mean by acres']);
  });
  it('tell the planner of seasons their hay ground beside those that are grazed, if all of it has acres', () => {
    const [creek, bottom] = [
      { ...small, id: 'creek', name: 'Creek meadow', areaAc: 40, use: 'hay' as const },
      { ...small, id: 'bottom', name: 'Bottom', areaAc: 15, use: 'hay' as const },
    ];
    expect(at([big, creek], [], 'season').of('meadowAc')).toEqual(['40 ac', 'Creek meadow']);
    expect(at([big, creek, bottom], [], 'season').of('meadowAc')).toEqual(['55 ac', '2 hay meadows']);
    // One that is chosen to be grazed leaves the hay ground what it is.
    expect(at([big, middle, creek], [big.id], 'season').of('meadowAc')).toEqual(['40 ac', 'Creek meadow']);
    const { areaAc: _, ...unmeasured } = bottom;
    expect(at([big, creek, unmeasured], [], 'season').of('meadowAc')).toBeUndefined();
    // None is told to be hay ground: nobody knows whether there is any.
    expect(at([big, middle], [], 'season').of('meadowAc')).toBeUndefined();
  });
  it('give a form of one pasture nothing of it', () => {
    expect(textIn(at([big, small], [], 'forage-on-hand').texts['areaAc'])).not.toContain('70');
    expect(at([big, small], [], 'forage-on-hand').of('stubbleIn')).toBeUndefined();
  });
});
