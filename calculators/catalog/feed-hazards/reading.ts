import { leastSharePercent } from '../../math/hazards/forageNitrateReadings.ts';
import type { Line, Thing } from './lists.ts';

/** What leads: what the strictest list means for these animals, in words, without a laboratory's name or its grade. */
export const readingWords = {
  'feed-none': 'None of this feed for any of them',
  'feed-none-pregnant': 'None of this feed for pregnant stock',
  'feed-quarter-pregnant': 'No more than a quarter of the ration, pregnant stock. Fed alone it is four times that',
  'feed-quarter': 'Only mixed with low feed, and no more than a quarter of the ration. Fed alone it is four times that',
  'feed-third': 'Only mixed with low feed, and no more than about a third of the ration (35 %). Fed alone it is nearly three times that',
  'feed-half-pregnant': 'No more than half of the ration, pregnant stock. Fed alone it is twice that',
  'feed-half': 'No more than half of the ration. Fed alone it is twice that',
  'feed-warned': 'At least one list warns of the nitrate in this feed and names no share',
  'feed-under': 'The feed’s nitrate is under the limits in these lists. That clears nothing',
  'together-warned': 'Feed and water together pass a limit for nitrate',
  'together-not': 'Feed and water together hold more nitrate than may be fed',
  'prussic-warned': 'Prussic acid was found. No figure clears it',
  'prussic-toxic': 'Prussic acid: potentially toxic. Never their only feed, and none before the veterinarian has been asked',
  'prussic-not': 'Prussic acid: do not feed it',
  'water-nitrate-warned': 'Nitrate in the water: at least one list warns or names harm',
  'water-nitrate-not': 'Nitrate in the water: do not use it',
  'water-sulfate-warned': 'Sulfate in the water: at least one list warns or names harm',
  'water-sulfate-not': 'Sulfate in the water: do not use it. It can bring on polio, the brain disease',
  'water-salts-warned': 'Salts in the water: at least one list warns or names harm',
  'water-salts-not': 'Salts in the water: do not use it',
  'under-every-limit': 'Under the limits in these lists. That clears nothing',
  'not-tested': '',
} as const;
export type ReadingWord = keyof typeof readingWords;

/** The reading of nitrate in the feed for these animals, by the smallest share of the ration that a list allows them. */
export function feedReadingOf(nitrogenPpm: number, isPregnant: boolean, severity: number): ReadingWord {
  switch (leastSharePercent(nitrogenPpm, isPregnant)) {
    case 0:
      return leastSharePercent(nitrogenPpm, false) === 0 ? 'feed-none' : 'feed-none-pregnant';
    case 25:
      return isPregnant ? 'feed-quarter-pregnant' : 'feed-quarter';
    case 35:
      return 'feed-third';
    case 50:
      return isPregnant ? 'feed-half-pregnant' : 'feed-half';
    default:
      return severity === 0 ? 'feed-under' : 'feed-warned';
  }
}

/** The line that leads: the strictest of the lists that were read; one from memory only where none that was read sets a limit. */
export function leadOf(lines: readonly Line[]): Line | undefined {
  const strictest = (some: readonly Line[]): Line | undefined =>
    some
      .filter(({ severity }) => severity > 0)
      .reduce<Line | undefined>((most, each) => (most !== undefined && most.severity >= each.severity ? most : each), undefined);
  return strictest(lines.filter(({ isRead }) => isRead)) ?? strictest(lines);
}

const otherReadings: Readonly<Record<Exclude<Thing, 'feed'>, readonly [ReadingWord, ReadingWord, ReadingWord]>> = {
  'feed-and-water': ['together-warned', 'together-warned', 'together-not'],
  'prussic-acid': ['prussic-warned', 'prussic-toxic', 'prussic-not'],
  'prussic-as-is': ['prussic-warned', 'prussic-toxic', 'prussic-not'],
  'water-nitrate': ['water-nitrate-warned', 'water-nitrate-warned', 'water-nitrate-not'],
  'water-sulfate': ['water-sulfate-warned', 'water-sulfate-warned', 'water-sulfate-not'],
  'water-salts': ['water-salts-warned', 'water-salts-warned', 'water-salts-not'],
};
/** What leads for these animals, whatever was tested. */
export function readingOf(lines: readonly Line[], feedReading: ReadingWord): ReadingWord {
  const lead = leadOf(lines);
  if (lead === undefined) return 'under-every-limit';
  if (lead.thing === 'feed') return feedReading;
  const [warned, harm, not] = otherReadings[lead.thing];
  return lead.severity === 1 ? warned : lead.severity === 2 ? harm : not;
}
