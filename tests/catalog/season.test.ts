import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import season from '../../calculators/catalog/season/definition.ts';
import type { Run } from '../../calculators/kit/define.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { readForm } from '../../calculators/kit/state.ts';
import { sliced } from '../../calculators/ui/long/sliced.ts';
import { calculators } from '../support/catalog.ts';
import { filesBelow, root } from '../support/files.ts';

vi.setConfig({ testTimeout: 30_000 });

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
  it('turns with the seasons in the south', () => {
    const south =
      'latitude=south-35&turn-out=2026-10-20&pull=2026-05-01&first-cut=2026-12-10&second-cut=2026-02-20&month-rain=2.9in,2.5in,3.1in,3.2in,2.9in,2.4in,2.2in,2.1in,3.2in,3.9in,4.9in,4.6in&month-wet=7.6d,6.8d,7.7d,7.6d,8.6d,8.8d,9.1d,8.7d,10.7d,11.2d,11.9d,10.2d';
    const [there, here] = [number(south, 'grownLbPerAc'), number('latitude=north-35', 'grownLbPerAc')];
    expect(Math.abs(there - here) / here).toBeLessThan(0.1);
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
