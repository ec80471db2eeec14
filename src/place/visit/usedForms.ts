import type { Visit } from '../model/visit.ts';

/** Slugs of the forms that a visit is likeliest to need next: its own, the last kept first, then those of the visit before it at that place, in their order there. */
export function usedForms(visit: Visit, visits: readonly Visit[]): readonly string[] {
  const [lastTime] = visits
    .filter(({ id, placeId, day, results }) => id !== visit.id && placeId === visit.placeId && day <= visit.day && results.length > 0)
    .toSorted((one, other) => other.day.localeCompare(one.day) || other.changedAt.localeCompare(one.changedAt));
  const own = visit.results.map(({ slug }) => slug).toReversed();
  return [...new Set([...own, ...(lastTime?.results.map(({ slug }) => slug) ?? [])])];
}
