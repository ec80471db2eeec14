import { topics } from '../../calculators/kit/topics.ts';
import { calculators } from '../catalog/catalog.ts';
import { href } from '../site/href.ts';
import { type Guide, guides } from './guides.ts';

/** One question and the calculator that answers it. */
export interface Way {
  readonly question: string;
  readonly address: string;
}

/** Every question that a calculator answers, by topic, in the order in which the first page asks. */
export const waysByTopic: readonly { readonly title: string; readonly ways: readonly Way[] }[] = Object.entries(topics)
  .map(([topic, title]) => ({
    title,
    ways: calculators
      .filter((each) => each.topic === topic)
      .sort((one, other) => one.order - other.order)
      .map(({ slug, question }) => ({ question, address: href(`/calculators/${slug}/`) })),
  }))
  .filter(({ ways }) => ways.length > 0);

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
