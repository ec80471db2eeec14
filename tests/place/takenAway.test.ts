import { describe, expect, it } from 'vitest';
import { placeKind } from '../../src/place/store/kinds.ts';
import { memoryStore } from '../../src/place/store/openStore.ts';
import { backupsIn } from '../../src/place/ui/backups.ts';
import { Session } from '../../src/place/ui/session.ts';
import { pastureNames } from '../../src/place/visit/visitWords.ts';
import { aPlace } from './aPlace.ts';

describe('a pasture that is taken away', () => {
  it('keeps its name for what was told of it, and comes back as it was', async () => {
    const store = memoryStore('chosen', { by: 'x' });
    const place = aPlace({ soils: [{ id: 's1', name: 'Silt loam' }] });
    await store.save(placeKind, [{ before: null, after: place }]);
    const session = new Session({
      store,
      oldRain: { read: () => undefined, settle: () => {} },
      backups: backupsIn({ read: () => null, write: () => {}, remove: () => {} }),
      by: 'x',
      now: () => new Date('2026-06-20T12:00:00'),
      mark: { read: () => place.id, write: () => {} },
    });
    await session.begin();
    const names = (): string => (session.place ? pastureNames(session.place, ['low', 'high']) : '');
    session.takeAway('Low bench', ['pastures'], 0);
    expect(session.place?.pastures.map(({ id }) => id)).toEqual(['high']);
    expect(names()).toBe('High bench and Low bench');
    session.putBack();
    expect(session.place?.pastures).toEqual(place.pastures);
    expect(names()).toBe('Low bench and High bench');
    session.takeAway('Low bench', ['pastures'], 0);
    session.takeAway('Silt loam', ['soils'], 0);
    expect(session.place?.pasturesTakenAway).toEqual([{ id: 'low', name: 'Low bench' }]);
  });
});
