import { demoPlace } from '../demo.ts';
import { newId } from '../store/ids.ts';
import type { Session } from './session.ts';

/** Opens the invented place as a copy. Its visits bring two forms along: without them it opens all the same, and says so. */
export async function openDemo(session: Session, edition: string): Promise<void> {
  const { changedBy, changedAt } = session.newHead();
  // Its id begins so that every page can tell, at next to no weight.
  const place = demoPlace(`demo-${newId()}`, changedBy, changedAt);
  const visits = await import('./demoVisits.ts')
    .then(({ demoVisits }) => demoVisits(place, () => session.newHead(), edition))
    .catch((error: unknown) => void console.info(error));
  // With its visits, in one step: who goes on to them at once finds them.
  await session.beginsWith(place, visits ?? []);
  if (visits === undefined) session.say('noVisits');
}
