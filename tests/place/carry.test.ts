import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import ponding from '../../calculators/catalog/ponding/definition.ts';
import { startTexts } from '../../calculators/kit/state.ts';
import type { Change } from '../../calculators/ui/formProps.ts';
import { forgetRecents, keepRecent, mostRecents, type Recent, readRecents, sorted } from '../../src/place/carry/recents.ts';
import { changedIn, mostSteps, Steps, type Stood } from '../../src/place/carry/undo.ts';
import { byKey, forKey, namesNow } from '../../src/scripts/names.ts';

const nobody: ReadonlySet<string> = new Set();
const change = (rain: string, more: Partial<Change> = {}): Change => ({
  ...{ link: '', system: 'us', touched: nobody, linked: nobody, blank: nobody, today: new Map(), placed: nobody, place: undefined },
  ...{ form: { this: { ...startTexts(ponding.inputs), rainIn: rain }, that: null }, names: ['', ''] as const, outcome: null, other: null },
  ...{ titles: ['This', 'That'] as const, saying: ['', ''] as const, between: '', stamp: { is: 'yours', text: '', short: '' } as const },
  ...more,
});
const stood = (rain: string, more: Partial<Change> = {}, chosen: readonly string[] = []): Stood => ({ change: change(rain, more), chosen });

describe('undo', () => {
  it('goes back a step at a time to how the form was opened, and no further', () => {
    const [first, second, third] = [stood('1'), stood('2'), stood('3')];
    const steps = new Steps(first);
    expect(steps.take(second)).toBe(true);
    expect(steps.take(third)).toBe(true);
    expect(steps.count).toBe(2);
    expect(steps.back(third)).toBe(second);
    expect(steps.back(second)).toBe(first);
    expect(steps.back(first)).toBeUndefined();
    expect(steps.count).toBe(0);
  });
  it('counts nothing that has changed nothing, though it was drawn anew', () => {
    const steps = new Steps(stood('1'));
    expect(steps.take(stood('1'))).toBe(false);
    expect(steps.take(stood('1', { outcome: null }))).toBe(false);
    expect(steps.count).toBe(0);
  });
  it('takes what was typed and not left yet as a step of its own', () => {
    const first = stood('1');
    const steps = new Steps(first);
    expect(steps.back(stood('12'))).toBe(first);
  });
  it('counts a choice of pastures, the names of the sides and the units', () => {
    const steps = new Steps(stood('1'));
    expect(steps.take(stood('1', {}, ['low']))).toBe(true);
    expect(steps.take(stood('1', { names: ['Now', 'Then'] }, ['low']))).toBe(true);
    expect(steps.take(stood('1', { names: ['Now', 'Then'], system: 'si' }, ['low']))).toBe(true);
    expect(steps.count).toBe(3);
  });
  it('goes back fifty steps', () => {
    const steps = new Steps(stood('0'));
    for (let step = 1; step <= mostSteps + 10; step += 1) steps.take(stood(String(step)));
    expect(steps.count).toBe(50);
    let now = stood(String(mostSteps + 10));
    for (let to = steps.back(now); to; to = steps.back(now)) now = to;
    expect(now.change.form.this['rainIn']).toBe('10');
  });
  it('says what it took back, in the words of the form', () => {
    expect(changedIn(ponding, stood('2'), stood('1'))).toBe(ponding.inputs['rainIn']?.label ?? 'none');
    const texts = { ...startTexts(ponding.inputs), rainIn: '2' };
    expect(changedIn(ponding, stood('2', { form: { this: texts, that: texts } }), stood('2'))).toBe('the other side');
    expect(changedIn(ponding, stood('2', { system: 'si' }), stood('2'))).toBe('the units');
    expect(changedIn(ponding, stood('2', {}, ['low']), stood('2'))).toBe('the choice of pasture');
  });
});

const recent = (id: string, minute: number, more: Partial<Recent> = {}): Recent => ({
  ...{ id, slug: 'ponding', title: 'Ponding', link: 'water=1in', says: '1 in', whose: '', marks: '{}', chosen: [], placeId: undefined },
  at: new Date(Date.UTC(2027, 5, 20, 7, minute)).toISOString(),
  ...more,
});
describe('recent calculations', () => {
  beforeEach(() => {
    globalThis.indexedDB = new IDBFactory();
  });
  it('stand with the newest first, and the same one once', async () => {
    await keepRecent(recent('a', 1));
    await keepRecent(recent('b', 2));
    await keepRecent(recent('a', 3, { link: 'water=2in' }));
    expect((await readRecents()).map(({ id, link }) => `${id} ${link}`)).toEqual(['a water=2in', 'b water=1in']);
  });
  it('are thirty at most, and the oldest go', async () => {
    for (let minute = 0; minute < mostRecents + 3; minute += 1) await keepRecent(recent(`n${minute}`, minute));
    const ids = (await readRecents()).map(({ id }) => id);
    expect(ids).toHaveLength(30);
    expect([ids[0], ids.at(-1)]).toEqual(['n32', 'n3']);
  });
  it('are forgotten at a word', async () => {
    await keepRecent(recent('a', 1));
    await forgetRecents();
    expect(await readRecents()).toEqual([]);
  });
  it('pass over what cannot be read, and lead to no address but a calculator’s', () => {
    const wrong = [null, 7, {}, recent('x', 1, { slug: '../../evil' }), { ...recent('y', 1), chosen: 'low' }, { ...recent('z', 1), link: 7 }];
    expect(sorted([...wrong, recent('a', 1)]).map(({ id }) => id)).toEqual(['a']);
  });
  it('stay in the window where the browser refuses a store', async () => {
    Reflect.deleteProperty(globalThis, 'indexedDB');
    await keepRecent(recent('a', 1));
    expect((await readRecents()).map(({ id }) => id)).toEqual(['a']);
  });
});

describe('names', () => {
  const texts = new Map<string, string>();
  const storage = { getItem: (key: string) => texts.get(key) ?? null };
  beforeEach(() => {
    texts.clear();
    vi.stubGlobal('window', { sessionStorage: storage, localStorage: storage });
    vi.setSystemTime(new Date('2027-06-20T12:00:00'));
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.useRealTimers();
  });
  it('say whose, which day and by whom; nothing where nobody said', () => {
    expect(namesNow(undefined)).toEqual({ title: undefined, by: undefined, heading: undefined });
    texts.set(forKey, 'Creek place');
    expect(namesNow(undefined).heading).toBe('Creek place, Jun 20, 2027');
    texts.set(byKey, 'A. R.');
    expect(namesNow(undefined)).toEqual({ title: 'Creek place, Jun 20, 2027', by: 'A. R.', heading: 'Creek place, Jun 20, 2027, by A. R.' });
    expect(namesNow('Low bench, Two Bench place, Jun 20, 2027').heading).toBe('Low bench, Two Bench place, Jun 20, 2027, by A. R.');
    texts.delete(forKey);
    expect(namesNow(undefined).heading).toBe('Jun 20, 2027, by A. R.');
  });
});
