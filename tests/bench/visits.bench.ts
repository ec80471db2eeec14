import { test } from 'vitest';
import { textOfPlaces } from '../../src/place/files/save.ts';
import { memoryStore } from '../../src/place/store/openStore.ts';
import { resultKind, visitKind } from '../../src/place/store/visitKinds.ts';
import { aPlace } from '../place/aPlace.ts';
import { aResult, aVisit } from '../place/aVisit.ts';

// Goals: the list of 500 visits in under 200 ms, a file of them with 20 results each in under 2 s.
const results = Array.from({ length: 10_000 }, (_, index) => aResult({ id: `r${index}`, visitId: `v${Math.floor(index / 20)}` }));
const visits = Array.from({ length: 500 }, (_, index) =>
  aVisit({ id: `v${index}`, results: results.slice(index * 20, index * 20 + 20).map(({ id, slug, title }) => ({ id, slug, title })) }),
);

test('500 visits with 20 results each', { timeout: 120_000 }, async ({ bench }) => {
  const store = memoryStore('chosen', { by: 'a bench' });
  await store.saveAll([
    { kind: visitKind, edits: visits.map((after) => ({ before: null, after })) },
    { kind: resultKind, edits: results.map((after) => ({ before: null, after })) },
  ]);
  await bench.compare(
    bench('read for the list of visits', async () => {
      await store.read(visitKind);
    }),
    bench('written as a file', async () => {
      const [kept, of] = [await store.read(visitKind), await store.read(resultKind)];
      textOfPlaces([aPlace()], '0.1.0', '2026-06-20T12:00:00.000Z', { visits: kept.records, results: of.records });
    }),
    { time: 500, iterations: 5, warmupTime: 0, warmupIterations: 1 },
  );
});
