import { describe, expect, it, vi } from 'vitest';
import { placeKind } from '../../src/place/store/kinds.ts';
import { memoryStore } from '../../src/place/store/openStore.ts';
import { rowKind } from '../../src/place/store/rowKind.ts';
import { backupsIn } from '../../src/place/ui/backups.ts';
import { Session } from '../../src/place/ui/session.ts';
import { aPlace } from './aPlace.ts';
import { aRain } from './aRow.ts';
import { texts } from './texts.ts';

const saved = new Date('2026-06-01T08:00:00.000Z');
const daysOn = (days: number): Date => new Date(saved.getTime() + days * 86_400_000);
function backups() {
  const local = texts();
  return backupsIn({ read: (key) => local.getItem(key), write: (key, text) => local.setItem(key, text), remove: (key) => local.removeItem(key) });
}

describe('the reminder to save a file', () => {
  it('comes after 14 days with 10 changes, of the place or of what is kept beside it', () => {
    const kept = backups();
    const place = aPlace();
    kept.saved(place, saved);
    const changed = (count: number) => ({ ...place, rev: place.rev + count });
    expect(kept.isDue(changed(10), daysOn(13.9), 0)).toBe(false);
    expect(kept.isDue(changed(10), daysOn(14), 0)).toBe(true);
    expect(kept.isDue(changed(9), daysOn(14), 0)).toBe(false);
    expect(kept.isDue(changed(9), daysOn(14), 1)).toBe(true);
    expect(kept.isDue(place, daysOn(14), 10)).toBe(true);
    expect(kept.isDue(place, daysOn(14), 9)).toBe(false);
    expect(kept.isDue({ ...changed(50), isDemo: true }, daysOn(99), 50)).toBe(false);
  });
  it('comes a week later where somebody said later', () => {
    const kept = backups();
    kept.saved(aPlace(), saved);
    kept.later('p1', daysOn(14));
    expect(kept.isDue(aPlace(), daysOn(20.9), 99)).toBe(false);
    expect(kept.isDue(aPlace(), daysOn(21), 99)).toBe(true);
  });
  it('counts lines of the record that were written since, of this place alone', async () => {
    const store = memoryStore('chosen', { by: 'x', now: () => daysOn(3) });
    const kept = backups();
    await store.save(placeKind, [{ before: null, after: aPlace() }]);
    await store.save(
      rowKind,
      Array.from({ length: 12 }, (_, each) => ({
        before: null,
        after: aRain({ id: `r${each}`, placeId: each < 11 ? 'p1' : 'other', changedAt: daysOn(each === 0 ? -1 : 3).toISOString() }),
      })),
    );
    kept.saved(aPlace(), saved);
    const oldRain = { read: () => undefined, settle: () => {} };
    const session = new Session({ store, oldRain, backups: kept, by: 'x', now: () => daysOn(15), mark: { read: () => 'p1', write: () => {} } });
    await session.begin();
    await vi.waitFor(() => expect(session.changedBeside).toBeGreaterThan(0));
    expect(session.changedBeside).toBe(10);
  });
});
