import { test } from 'vitest';
import definition from '../../calculators/catalog/rain-record/definition.ts';
import { understandRecord } from '../../calculators/kit/record/understandRecord.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { startTexts } from '../../calculators/kit/state.ts';

/** A hundred years of days, wet on one day in four. */
const century = [
  'day,rain (in),high,low',
  ...Array.from({ length: 36_525 }, (_, day) => {
    const iso = new Date(Date.UTC(1925, 0, 1 + day)).toISOString().slice(0, 10);
    return `${iso},${day % 4 === 0 ? ((day * 7) % 130) / 100 : 0},60,40`;
  }),
].join('\n');
const limits = { label: 'Rain record', unit: 'in', min: 0, max: 60, maxRows: 60_000 } as const;
const texts = { ...startTexts(definition.inputs), rainRecord: century, untilDay: '2024-12-31', windowMonths: '12' };
const brief = { time: 500, warmupTime: 100 };

test('a hundred years of days', async ({ bench }) => {
  await bench.compare(
    bench('read for the first time', () => {
      understandRecord(limits, century);
    }),
    bench('read and computed again at a key', () => {
      runTexts(definition, texts);
    }),
    brief,
  );
});
