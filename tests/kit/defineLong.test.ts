import { describe, expect, it } from 'vitest';
import { defineLong } from '../../calculators/kit/defineLong.ts';
import { fetchWhole } from '../../calculators/kit/fetchWhole.ts';
import { number, type ValuesOf } from '../../calculators/kit/inputs.ts';
import { amount } from '../../calculators/kit/quantities.ts';

const inputs = { rainIn: number('Rain', 'P', 'in', [0, 30], 1) };
type Asked = ValuesOf<typeof inputs>;
const engine = {
  mostIn: 10,
  compute: ({ rainIn }: Asked) => ({ doubleIn: 2 * rainIn }),
  *computeBySteps(asked: Asked) {
    yield 0.5;
    return engine.compute(asked);
  },
};
/** One whose engine does not come the first so many times. */
function longOne(failures = 0) {
  const fetched = { times: 0 };
  const calculator = defineLong({
    slug: 'long-one',
    version: 1,
    title: 'Twice',
    inputs,
    refusals: [{ at: 'rainIn', when: ({ rainIn }, { mostIn }) => rainIn > mostIn, say: 'Too much.' }],
    engine: async () => {
      fetched.times += 1;
      if (fetched.times <= failures) throw new TypeError('no signal');
      return engine;
    },
  }).describe({
    question: '',
    lead: '',
    quantities: { doubleIn: amount('Twice the rain', 'D', 'in', 1) },
    results: [{ of: 'doubleIn' }],
    first: ['rainIn'],
    steps: [],
    cautions: [],
    limits: [],
    note: (_, show) => show('doubleIn'),
    sources: [],
    topic: 'rain',
    order: 1,
    guides: ['none'],
  });
  return { calculator, fetched };
}
const doubled = (run: object): unknown => ('outcome' in run ? Object(run.outcome).computed.doubleIn : run);

describe('a definition that leaves what works it out for later', () => {
  it('says what it asks, tells and refuses without it, and that it cannot run', () => {
    const { calculator, fetched } = longOne();
    expect([calculator.runs, calculator.refusals, calculator.results]).toEqual(['long', [{ at: 'rainIn', say: 'Too much.' }], [{ of: 'doubleIn' }]]);
    expect(() => calculator.run({ rainIn: 2 })).toThrow('long-one: what works it out was not fetched');
    expect(() => calculator.runBySteps?.({ rainIn: 2 }).next()).toThrow('was not fetched');
    expect(fetched.times).toBe(0);
  });
  it('runs and refuses once it is here', async () => {
    const { calculator } = longOne();
    expect(await fetchWhole(calculator)).toBe(calculator);
    expect(doubled(calculator.run({ rainIn: 2 }))).toBe(4);
    expect(calculator.run({ rainIn: 11 })).toEqual({ refusals: [{ at: 'rainIn', say: 'Too much.' }] });
    const steps = calculator.runBySteps?.({ rainIn: 3 });
    expect(steps?.next()).toEqual({ done: false, value: 0.5 });
    expect(doubled(Object(steps?.next().value))).toBe(6);
  });
  it('is fetched anew where it did not come, and never twice', async () => {
    const { calculator, fetched } = longOne();
    await calculator.fetchEngine?.();
    await calculator.fetchEngine?.();
    expect(fetched.times).toBe(1);
    const { calculator: later } = longOne(1);
    await expect(later.fetchEngine?.()).rejects.toThrow('no signal');
    await later.fetchEngine?.();
    expect(doubled(later.run({ rainIn: 2 }))).toBe(4);
  });
});
