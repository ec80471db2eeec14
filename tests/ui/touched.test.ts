import { describe, expect, it } from 'vitest';
import { blankIn } from '../../calculators/ui/touched.ts';

describe('what is blank', () => {
  const texts = {
    rainIn: '',
    soil: 'loam',
    monthsIn: ['1', ''],
    herd: [
      { stock: '', count: '2' },
      { stock: 'cow', count: '' },
    ],
  };
  it('is told by its path: an answer, a month, a cell', () => {
    expect([...blankIn(texts)]).toEqual(['rainIn', 'monthsIn.1', 'herd.0.stock', 'herd.1.count']);
  });
  it('is looked for among some', () => {
    expect([...blankIn(texts, ['herd', 'soil', 'none'])]).toEqual(['herd.0.stock', 'herd.1.count']);
  });
});
