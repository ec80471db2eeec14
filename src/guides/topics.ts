import { calculators } from '../catalog/catalog.ts';
import { href } from '../site/href.ts';
import { calculatorSlugsOf, type Guide, guides } from './guides.ts';

/** The order in which the first page asks. A calculator that no topic names still appears, under the last heading. */
const topics: readonly { readonly title: string; readonly slugs: readonly string[] }[] = [
  { title: 'Rain and the ground', slugs: ['rain-on-ground', 'storm-runoff', 'ponding', 'stored-water', 'soil-loss', 'rain-record'] },
  { title: 'Grass and the herd', slugs: ['forage-on-hand', 'carrying-capacity', 'rest-and-moves', 'herd-intake', 'standing-feed', 'sown-feed'] },
  { title: 'Hay and money', slugs: ['hay-to-grass', 'hay-value', 'feed-or-sell', 'early-weaning'] },
  { title: 'Water and feed that can harm', slugs: ['stock-water', 'feed-hazards'] },
  { title: 'The season ahead', slugs: ['decision-dates', 'season'] },
  { title: 'On the tailgate', slugs: ['ring-test', 'slake-test', 'packed-soil', 'cover-count', 'rain-demonstration'] },
];

/** One question and the calculator that answers it. */
export interface Way {
  readonly question: string;
  readonly address: string;
  readonly name: string;
  /** The guides that go with a calculator. */
  readonly guides: readonly Guide[];
}

/** Guides that use a calculator or that it names. */
export const guidesOf = (slug: string): readonly Guide[] => {
  const named = calculators.find((calculator) => calculator.slug === slug)?.guides ?? [];
  return guides.filter((guide) => named.includes(guide.id) || calculatorSlugsOf(guide).includes(slug));
};

const waysOf = (slugs: readonly string[]): Way[] =>
  slugs.flatMap((slug) =>
    calculators
      .filter((calculator) => calculator.slug === slug)
      .map(({ question, title }) => ({ question, address: href(`/calculators/${slug}/`), name: title, guides: guidesOf(slug) })),
  );

const named = new Set(topics.flatMap(({ slugs }) => slugs));

/** Every question that a calculator answers, by topic. */
export const waysByTopic: readonly { readonly title: string; readonly ways: readonly Way[] }[] = [
  ...topics.map(({ title, slugs }) => ({ title, ways: waysOf(slugs) })),
  { title: 'More', ways: waysOf(calculators.map(({ slug }) => slug).filter((slug) => !named.has(slug))) },
].filter(({ ways }) => ways.length > 0);

/** The hundreds of a guide's `order`, and what they are about. */
const guideTopics: readonly { readonly from: number; readonly title: string }[] = [
  { from: 0, title: 'To begin with' },
  { from: 100, title: 'Soil and water' },
  { from: 200, title: 'Grass and the herd' },
  { from: 300, title: 'Decisions in a dry year' },
  { from: 400, title: 'Feed' },
  { from: 500, title: 'Stock and their water' },
  { from: 600, title: 'The place and its people' },
];

/** Every guide, by topic. */
export const guidesByTopic: readonly { readonly title: string; readonly guides: readonly Guide[] }[] = guideTopics
  .map(({ from, title }, index) => ({
    title,
    guides: guides.filter(({ data }) => data.order >= from && data.order < (guideTopics[index + 1]?.from ?? Number.POSITIVE_INFINITY)),
  }))
  .filter((topic) => topic.guides.length > 0);
