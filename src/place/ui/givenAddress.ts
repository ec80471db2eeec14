import { localDay } from '../../../calculators/units/days.ts';
import { fetchFiller, fetchParts } from '../offer/fetchParts.ts';
import { givenLink } from '../offer/givenLink.ts';
import { offersOf } from '../offer/offersOf.ts';
import { definitionOf } from './definitions.ts';
import type { PlaceView } from './view.ts';

/**
 * The address of a form, `href`, with the figures of the place in it: of the pastures that are chosen, if any. For a browser that parts the pages of a folder.
 * @throws Error where the form cannot be loaded
 */
export async function givenAddress({ place, session, system }: PlaceView, slug: string, href: string, ids: readonly string[] = []): Promise<string> {
  const calculator = await definitionOf(slug);
  const today = localDay(session.now);
  const fillTexts = await fetchFiller(calculator);
  const filled = fillTexts(calculator, offersOf(await fetchParts([calculator]), place, today, { ids }), today, system);
  const address = new URL(href);
  // What goes along with every link of a folder stays in it.
  address.search = `?${givenLink(calculator, filled, system)}${address.search.replace('?', '&')}`;
  return address.href;
}
