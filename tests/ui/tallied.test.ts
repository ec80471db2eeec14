import { describe, expect, it } from 'vitest';
import shareTaken from '../../calculators/catalog/share-taken/definition.ts';
import { cleared } from '../../calculators/kit/cleared.ts';
import { readForm, startTexts } from '../../calculators/kit/state.ts';
import { tallied } from '../../calculators/ui/tallied.ts';

const { inputs } = shareTaken;
const empty = cleared(inputs, startTexts(inputs));
const put = (before: typeof empty, changes: Readonly<Record<string, string>>) => tallied(inputs, before, { ...before, ...changes });
const waits = (texts: typeof empty) => readForm(inputs, texts).problems.map(({ at }) => at);

describe('a count', () => {
  it('has none of what nobody saw, once anything of it is counted', () => {
    const texts = put(empty, { tenCount: '1' });
    expect(texts).toMatchObject({ noneCount: '0', tenCount: '1', thirtyCount: '0', fiftyCount: '0', seventyCount: '0', ninetyCount: '0' });
    expect(waits(texts)).toEqual(['headDaysCount']);
  });
  it('is not begun by another answer', () => {
    expect(put(empty, { headDaysCount: '1200' })).toEqual({ ...empty, headDaysCount: '1200' });
  });
  it('can have a number taken out to type another', () => {
    const texts = put(put(empty, { tenCount: '1' }), { noneCount: '' });
    expect(texts['noneCount']).toBe('');
  });
  it('leaves as they are the counts that hold a number', () => {
    const start = startTexts(inputs);
    expect(put(start, { tenCount: '9' })).toEqual({ ...start, tenCount: '9' });
  });
});
