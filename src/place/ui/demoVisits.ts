import * as v from 'valibot';
import { fromLink } from '../../../calculators/kit/openLink.ts';
import { runTexts } from '../../../calculators/kit/runTexts.ts';
import placeData from '../../../content/place/place.json' with { type: 'json' };
import { placeSchema as contentSchema } from '../../../content/place/schema.ts';
import type { Place } from '../model/place.ts';
import type { Result } from '../model/result.ts';
import { type Visit, visitSchema } from '../model/visit.ts';
import type { Batch } from '../store/store.ts';
import { resultKind, visitKind } from '../store/visitKinds.ts';
import { keptResult } from '../visit/keptResult.ts';
import { type Begun, newVisit } from '../visit/newVisit.ts';
import { definitionOf } from './definitions.ts';

type DemoVisit = v.InferOutput<typeof contentSchema>['visits'][number];
type Site = DemoVisit['sites'][number];

/** The tests of one site, as links of the forms that work them out. */
function linksOf({ moistureFeel, rings, cover }: Site): readonly (readonly [slug: string, link: string])[] {
  const each = (of: (ring: Site['rings'][number]) => string): string => rings.map(of).join(',');
  const minutes =
    (at: number) =>
    (ring: Site['rings'][number]): string =>
      `${ring.pourings[at]?.minutes ?? ''}min`;
  const bore = rings[0]?.boreIn ?? 6;
  return [
    [
      'ring-test',
      `bore=${bore}in&moisture=${moistureFeel}&rings.first=${each(minutes(0))}&rings.pours=${each(() => 'twice')}&rings.second=${each(minutes(1))}&rings.end=${each(() => 'gone')}&v=2`,
    ],
    ['cover-count', `plant=${cover.plantCount}&litter=${cover.litterCount}&rock=${cover.stoneCount}&bare=${cover.bareCount}&v=1`],
  ];
}
async function resultOf(begun: Begun, slug: string, link: string, visit: Visit, pastureId: string, edition: string): Promise<Result> {
  const calculator = await definitionOf(slug);
  const ran = runTexts(calculator, fromLink(calculator, link).form.this, 'us');
  if (!('outcome' in ran)) throw new RangeError(`${slug} refuses what the demo place measured`);
  return keptResult({
    begun,
    calculator,
    link,
    outcome: ran.outcome,
    other: null,
    titles: ['This', 'That'],
    between: '',
    system: 'us',
    placeId: visit.placeId,
    visitId: visit.id,
    pastureIds: [pastureId],
    keptDay: visit.day,
    edition,
    sources: [],
    stamp: 'Invented example',
  });
}

/** The visits that were invented with the demo place, worked out by the very forms. */
export async function demoVisits(place: Place, begin: () => Begun, edition: string): Promise<readonly Batch[]> {
  const visits: Visit[] = [];
  const results: Result[] = [];
  for (const { day, daysSinceRain, fiveDayRainIn, sites } of v.parse(contentSchema, placeData).visits) {
    const blank = newVisit(begin(), place.id, day, 'The adviser');
    const [first] = sites;
    const visit = v.parse(visitSchema, {
      ...blank,
      present: 'The owner',
      pastureIds: sites.map(({ pasture }) => pasture),
      ground: { daysSinceRain, fiveDayRainIn, ...(first && { moistureFeel: first.moistureFeel }) },
      seen: 'Grass up to the fence and the litter still there on the low bench. Bare steps and a thin crust on the high one.',
      said: 'The high bench was grazed hard in the dry years. Something has to give it time.',
      steps: [{ id: 'rest', what: 'Keep stock off the high bench until it is at start height', who: 'The owner' }],
    });
    for (const site of sites)
      for (const [slug, link] of linksOf(site)) {
        const result = await resultOf(begin(), slug, link, visit, site.pasture, edition);
        results.push(result);
        visit.results.push({ id: result.id, slug, title: result.title });
      }
    visits.push(visit);
  }
  return [
    { kind: visitKind, edits: visits.map((after) => ({ before: null, after })) },
    { kind: resultKind, edits: results.map((after) => ({ before: null, after })) },
  ];
}
