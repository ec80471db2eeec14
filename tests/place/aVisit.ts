import type { Note } from '../../src/place/model/note.ts';
import type { Result } from '../../src/place/model/result.ts';
import type { Visit } from '../../src/place/model/visit.ts';
import type { Facts } from '../../src/place/visit/blocks.ts';
import { aPlace } from './aPlace.ts';

const head = { rev: 1, past: ['1-aaaaaa'], changedBy: 'first window', changedAt: '2026-06-20T08:00:00.000Z' } as const;
/** A visit with every field told. */
export const aVisit = (more: Partial<Visit> = {}): Visit => ({
  ...head,
  past: [...head.past],
  id: 'v1',
  v: 1,
  placeId: 'p1',
  day: '2026-06-20',
  by: 'Ana Reyes',
  present: 'Kit Moss, Lou Tanner and the Sandoval boys',
  pastureIds: ['low', 'high'],
  ground: { moistureFeel: 'moist', daysSinceRain: 3, fiveDayRainIn: 0.6, isFrozen: false },
  spots: 'Third post from the gate of Low bench',
  photos: [{ id: 'f1', words: 'Crust on the bare spots' }],
  seen: 'Bare steps on High bench.\nKit’s ground holds its crumbs on the low bench.',
  said: 'Rest it until the Moss cows are home.',
  steps: [
    { id: 's1', what: 'Rest High bench; Reyes looks in', who: 'Kit Moss', byDay: '2026-07-20' },
    { id: 's2', what: 'Call Lou', isDone: true },
  ],
  nextDay: '2026-09-01',
  results: [
    { id: 'r1', slug: 'ring-test', title: 'Infiltration rate from a ring test' },
    { id: 'r2', slug: 'feed-or-sell', title: 'Feed or sell' },
  ],
  typed: { 'ground.daysSinceRain': '3 days' },
  ...more,
});
export const aResult = (more: Partial<Result> = {}): Result => ({
  ...head,
  past: [...head.past],
  id: 'r1',
  v: 1,
  placeId: 'p1',
  visitId: 'v1',
  pastureIds: ['high'],
  keptDay: '2026-06-20',
  slug: 'ring-test',
  version: 2,
  edition: '0.1.0',
  title: 'Infiltration rate from a ring test',
  link: 'v=2&bore=6in&rings=4min_9min',
  note: 'Ring test, moist ground: 1.2 in/hr.',
  shown: [{ label: 'Middle rate', text: '1.2 in/hr', range: 'nearer 0.4 to 0.9 in/hr' }],
  cautions: [{ lead: 'Call 811 days before.', say: 'Call 811 a few days before you drive a ring.', source: 'common practice' }],
  sources: ['A soil test guide, 2024'],
  days: [],
  hasRecord: false,
  weighsOnPeople: false,
  ...more,
});
export const aNote = (more: Partial<Note> = {}): Note => ({
  ...head,
  past: [...head.past],
  id: 'v1',
  v: 1,
  placeId: 'p1',
  blocks: [],
  editedDay: '2026-06-20',
  ...more,
});
export const money = aResult({
  id: 'r2',
  slug: 'feed-or-sell',
  version: 1,
  title: 'Feed or sell',
  link: 'v=1&herd=40',
  note: 'Feeding costs $412 a cow.',
  stamp: 'Example, not your numbers',
  shown: [{ label: 'Cost', text: '$412' }],
  cautions: [
    { lead: 'Call 811 days before.', say: 'Call 811 a few days before you drive a ring.', source: 'common practice' },
    { lead: 'Prices move.', say: 'Look at this week’s prices before you sell.', source: 'common practice' },
  ],
  days: [{ day: '2026-07-15', title: 'Decide by', text: 'Rain by now, or sell.' }],
  weighsOnPeople: true,
});
export const facts = (more: Partial<Facts> = {}): Facts => ({
  place: aPlace({ name: 'Tanner Home place', water: [{ id: 'w1', name: 'Moss well' }] }),
  visit: aVisit(),
  results: [aResult(), money],
  note: undefined,
  system: 'us',
  base: 'https://example.org/field/',
  edition: '0.1.0',
  ...more,
});
