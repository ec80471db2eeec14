import { calculators } from './catalog.ts';
import { calculatorSlugsOf, type Guide, guides } from './guides.ts';
import { href } from './href.ts';

/** The order in which the first page asks. A calculator that no topic names still appears, under the last heading. */
const topics: readonly { readonly title: string; readonly slugs: readonly string[] }[] = [
  { title: 'Rain and the ground', slugs: ['rain-on-ground', 'storm-runoff', 'ponding', 'stored-water', 'soil-loss', 'rain-record'] },
  { title: 'Grass and the herd', slugs: ['forage-on-hand', 'carrying-capacity', 'rest-and-moves', 'herd-intake', 'standing-feed', 'sown-feed'] },
  { title: 'Hay and money', slugs: ['hay-to-grass', 'hay-value', 'feed-or-sell', 'early-weaning'] },
  { title: 'Water and feed that can harm', slugs: ['stock-water', 'feed-hazards'] },
  { title: 'The season ahead', slugs: ['decision-dates', 'season'] },
  { title: 'On the tailgate', slugs: ['ring-test', 'slake-test', 'packed-soil', 'cover-count', 'rain-demonstration'] },
];

/** One question and where it is answered. */
export interface Way {
  readonly question: string;
  readonly address: string;
  readonly kind: 'calculator' | 'guide';
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
      .map(({ question, title }) => ({ question, address: href(`/calculators/${slug}/`), kind: 'calculator', name: title, guides: guidesOf(slug) })),
  );

const named = new Set(topics.flatMap(({ slugs }) => slugs));

const rest: readonly Way[] = [
  ...waysOf(calculators.map(({ slug }) => slug).filter((slug) => !named.has(slug))),
  ...guides
    .filter((guide) => !calculators.some(({ slug }) => guidesOf(slug).includes(guide)))
    .map(({ id, data }) => ({
      question: data.question ?? data.title,
      address: href(`/guides/${id}/`),
      kind: 'guide' as const,
      name: data.title,
      guides: [],
    })),
];

/** Every question that the site answers, by topic. */
export const waysByTopic: readonly { readonly title: string; readonly ways: readonly Way[] }[] = [
  ...topics.map(({ title, slugs }) => ({ title, ways: waysOf(slugs) })),
  { title: 'Worth knowing', ways: rest },
].filter(({ ways }) => ways.length > 0);
