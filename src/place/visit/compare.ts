import type { Compares, Mover } from '../../../calculators/kit/compares.ts';
import type { Calculator } from '../../../calculators/kit/define.ts';
import { digitsTold, type NumberQuantity } from '../../../calculators/kit/quantities.ts';
import { isBoundedRatio, visitChange } from '../../../calculators/math/infiltration/visitRatio.ts';
import { coverChange } from '../../../calculators/math/soil/coverChange.ts';
import { meanChange } from '../../../calculators/math/special/meanChange.ts';
import { printNumber, printQuantity } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Result } from '../model/result.ts';
import type { Visit } from '../model/visit.ts';
import { isSameSeason, labeled, type Readings, readingsOf } from './readings.ts';

const confidencePercent = 95;
/** Fewer readings than this on either day, and nothing is said. Of a count: steps. Both our own. */
const fewestReadings = 3;
const fewestPoints = 30;
/** Days since rain that tell two soils apart by wetness alone. Common practice: the same day counts, a day is nothing. */
const mostRainDaysApart = 1;

type Told = Pick<NumberQuantity, 'label' | 'unit' | 'digits' | 'significant'>;
const covered: Told = { label: 'Ground covered', unit: 'pct', digits: 0 };

interface ToldChange {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** All three in words, and each end alone. */
  readonly words: string;
  readonly lowWords: string;
  readonly highWords: string;
  /** Past the scatter of these readings. */
  readonly isMore: boolean;
  /** Of rings: the ends of its range are too far off to be told or drawn. */
  readonly isBoundless?: boolean;
  /** Of rings: within what rings usually scatter all the same. */
  readonly isHint?: boolean;
  /** What usual scatter alone can come to, where that helps to read the change. */
  readonly usual?: string;
}
/** A change with its range, each told in the same way. */
const toldChange = (
  { value, low, high }: Pick<ToldChange, 'value' | 'low' | 'high'>,
  nothing: 0 | 1,
  tell: (value: number) => string,
  after: string,
): ToldChange => ({
  value,
  low,
  high,
  isMore: low > nothing || high < nothing,
  words: `${tell(value)} ${after}(${tell(low)} to ${tell(high)}, 19 times in 20)`,
  lowWords: tell(low),
  highWords: tell(high),
});
export interface Compared {
  readonly title: string;
  readonly label: string;
  /** The middle of both days: `2.1 then, 4.4 now`. */
  readonly sides: string;
  readonly earlier: readonly number[];
  readonly later: readonly number[];
  /** Readings in words, for the plot. */
  readonly tell: (reading: number) => string;
  readonly isRatio: boolean;
  /** Later against earlier with its range; nothing where there are too few. */
  readonly change?: ToldChange;
  readonly verdict: string;
  /** What was not the same on the two days and can move these readings, and what nobody noted of it. */
  readonly differs: readonly Difference[];
  /** Sentences on what differs that the verdict does not say, and what to do about it. */
  readonly besides: readonly string[];
}

const counted = (days: number): string => `${days} ${days === 1 ? 'day' : 'days'}`;
/** Something that was not the same on the two days, or was not noted of both. */
export interface Difference {
  /** `form`: an answer of the test itself, such as its tool, which matters to every test that asks it. */
  readonly of: Mover | 'form';
  readonly say: string;
  readonly isNoted: boolean;
}
const noted = (of: Difference['of'], say: string): Difference => ({ of, say, isNoted: true });
const notNoted = (of: Mover, say: string): Difference => ({ of, say, isNoted: false });
/** What was not the same on the two days, and what nobody noted, each in words. */
export function differences(one: Visit, other: Visit): readonly Difference[] {
  const [wet, wetThen] = [other.ground?.moistureFeel, one.ground?.moistureFeel];
  const [rain, rainThen] = [other.ground?.daysSinceRain, one.ground?.daysSinceRain];
  const [hands = '', handsThen = ''] = [other, one].map(({ by = '' }) => by.trim());
  const isRainTold = rain !== undefined && rainThen !== undefined;
  return [
    ...(wet === undefined || wetThen === undefined
      ? [notNoted('wetness', 'how wet the ground felt')]
      : wet === wetThen
        ? []
        : [noted('wetness', `the ground felt ${wetThen} then and ${wet} now`)]),
    ...(isRainTold
      ? Math.abs(rain - rainThen) <= mostRainDaysApart
        ? []
        : [noted('wetness', `it was ${counted(rainThen)} since rain then and ${rain} now`)]
      : [notNoted('wetness', 'how long ago it rained')]),
    ...(one.ground?.isFrozen === true || other.ground?.isFrozen === true ? [noted('wetness', 'the ground was frozen')] : []),
    ...(isSameSeason(one.day, other.day) ? [] : [noted('season', 'it was another time of the year')]),
    ...(hands === '' || handsThen === ''
      ? [notNoted('hands', 'who did it')]
      : hands === handsThen
        ? []
        : [noted('hands', `${handsThen} wrote it then and ${hands} now`)]),
  ];
}
/** `a, b and c` */
const listed = (words: readonly string[]): string => (words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`);
const said = (all: readonly Difference[], isNoted: boolean): readonly string[] => all.flatMap((each) => (each.isNoted === isNoted ? [each.say] : []));
/** What was not alike, and what was not noted of both days, each a sentence where there is any. */
export const unlikeWords = (all: readonly Difference[]): readonly string[] => {
  const [unlike, open] = [said(all, true), said(all, false)];
  return [
    ...(unlike.length === 0 ? [] : [`Not alike on the two days: ${unlike.join('; ')}.`]),
    ...(open.length === 0 ? [] : [`Not noted on both days: ${listed(open)}.`]),
  ];
};

const verdicts = {
  few: 'Too few readings to say anything.',
  chance: 'The change cannot be told from chance.',
  more: 'The change is more than these readings scatter.',
  hint: 'A hint, no more: past the scatter of these rings, within what rings usually scatter.',
} as const;

/** A change that may come from what was not alike, or from what nobody noted. */
function apart(differs: readonly Difference[], isHint: boolean): string {
  const [unlike, open] = [said(differs, true), said(differs, false)];
  const unknown = open.length === 0 ? [] : [`${listed(open)} ${open.length === 1 ? 'was' : 'were'} not noted on both days`];
  const lead = isHint ? 'A hint at most, and' : 'The readings differ by more than they scatter, but';
  return `${lead} that need not be the ground’s doing: ${[...unlike, ...unknown].join('; ')}.`;
}
const adviceFor = (movedBy: readonly Mover[]): string =>
  `Compare the same spots, ${movedBy.includes('wetness') ? 'as wet, ' : ''}in the same month, with the same hands and tool.`;

/** Answers of the form that should be the same both times and are not. */
const unlike = (earlier: Readings, later: Readings): readonly Difference[] =>
  [...earlier.alike].flatMap(([name, { label, told }]) => {
    const now = later.alike.get(name);
    return now === undefined || now.told === told ? [] : [noted('form', labeled(label, `“${told}” then, “${now.told}” now`))];
  });
/** Why two tests tell nothing of each other, if they do not: what stood in the way on a day, then what was not the same ground. */
function whyNothing(earlier: Readings, later: Readings): string | undefined {
  const bar = [...earlier.bars, ...later.bars][0];
  if (bar === undefined) return [...earlier.same].find(([why, then]) => later.same.get(why) !== then)?.[0];
  const [isThen, isNow] = [earlier, later].map(({ bars }) => bars.includes(bar));
  return `${isThen && isNow ? 'on both days' : isThen ? 'on the earlier day' : 'on the later day'} ${bar}`;
}

/** How a reading is told, and the middle of all of them. */
function quantitiesOf({ quantities, slug }: Calculator, { rows, column, middle }: Exclude<Compares, { as: 'share' }>): readonly [Told, Told] {
  const [table, told] = [quantities[rows], quantities[middle]];
  const reading = table?.kind === 'rows' ? table.columns[column] : undefined;
  if (reading?.kind !== 'number' || told?.kind !== 'number') throw new RangeError(`${slug} compares what is no number`);
  return [reading, told];
}

/** Two results of one test, the earlier first; nothing where the test is not one that is compared. */
export function compareResults(
  calculator: Calculator,
  [one, visitOne]: readonly [Result, Visit],
  [other, visitOther]: readonly [Result, Visit],
  system: UnitSystem,
): Compared | undefined {
  const { compares } = calculator;
  const [earlier, later] = [readingsOf(calculator, one.link), readingsOf(calculator, other.link)];
  if (compares === undefined || earlier === undefined || later === undefined) return undefined;
  const [readingTold, middleTold] = compares.as === 'share' ? [covered, covered] : quantitiesOf(calculator, compares);
  const printed = (told: Told) => (value: number) => printQuantity(value, told.unit, digitsTold(value, told), system);
  const tell = printed(readingTold);
  const tellMiddle = printed(middleTold);
  const differs = [
    ...differences(visitOne, visitOther).filter(({ of }) => of !== 'form' && compares.movedBy.includes(of)),
    ...unlike(earlier, later),
    ...(one.hasRecord || other.hasRecord ? [noted('form', 'a record went into it that no link carries')] : []),
  ];
  const isRatio = compares.as === 'ratio';
  const sides = `${tellMiddle(earlier.middle)} then, ${tellMiddle(later.middle)} now`;
  const frame = { title: calculator.title, label: middleTold.label, sides, earlier: earlier.readings, later: later.readings, tell, isRatio, differs };
  const besides = differs.length === 0 ? [] : [...unlikeWords(differs), adviceFor(compares.movedBy)];
  const why = whyNothing(earlier, later);
  if (why !== undefined) return { ...frame, besides, verdict: `Nothing can be said: ${why}.` };
  const change = changeOf(earlier, later, isRatio, middleTold, system);
  if (change === undefined) return { ...frame, besides, verdict: verdicts.few };
  if (!change.isMore) return { ...frame, change, besides, verdict: verdicts.chance };
  const isHint = change.isHint === true;
  // Days that are not alike are never called a change of the ground.
  return differs.length === 0
    ? { ...frame, change, besides, verdict: isHint ? verdicts.hint : verdicts.more }
    : { ...frame, change, besides: besides.slice(-1), verdict: apart(differs, isHint) };
}

/** Two digits count, below 1 too. */
const times = (value: number): string => printNumber(value, digitsTold(value, { digits: 3, significant: 2 }));
function ratioChange(given: Parameters<typeof visitChange>[0]): ToldChange {
  const { ratio, low, high, scatterTimes, verdict } = visitChange(given);
  // Rings that differ more than usual can leave a change open that lies past the usual scatter: that figure would only confuse.
  const isUseful = verdict !== 'chance' || Math.max(ratio, 1 / ratio) <= scatterTimes;
  const told = toldChange({ value: ratio, low, high }, 1, times, 'times what it was ');
  return {
    ...told,
    ...(isBoundedRatio({ ratio, high })
      ? {}
      : { isBoundless: true, words: `${times(ratio)} times what it was (these rings scatter too much to bound it)` }),
    isHint: verdict === 'perhaps-faster' || verdict === 'perhaps-slower',
    ...(isUseful ? { usual: `Two such tests of one ground can come out ${times(scatterTimes)} times apart by chance.` } : {}),
  };
}

/** Digits that a difference may have beyond its mean, where fewer would tell an end of its range as no change at all. */
const mostMoreDigits = 2;
function difference({ change, low, high }: ReturnType<typeof meanChange>, told: Told, system: UnitSystem): ToldChange {
  const signed =
    (more: number) =>
    (value: number): string =>
      `${value < 0 ? '−' : '+'}${printQuantity(Math.abs(value), told.unit, digitsTold(value, told) + more, system)}`;
  const nothing = (more: number): string => signed(more)(0).slice(1);
  const isMore = low > 0 || high < 0;
  const isTold = (more: number): boolean => !isMore || [low, high].every((end) => signed(more)(end).slice(1) !== nothing(more));
  const more = Array.from({ length: mostMoreDigits }, (_, index) => index).find(isTold) ?? mostMoreDigits;
  return toldChange({ value: change, low, high }, 0, signed(more), '');
}
function changeOf(earlier: Readings, later: Readings, isRatio: boolean, middle: Told, system: UnitSystem): Compared['change'] {
  if (earlier.count && later.count) {
    if (Math.min(earlier.count.points, later.count.points) < fewestPoints) return undefined;
    const { change, low, high } = coverChange({ earlier: earlier.count, later: later.count, confidencePercent });
    const points = (share: number): string => `${share < 0 ? '−' : '+'}${printNumber(Math.abs(share * 100), 0)}`;
    return toldChange({ value: change, low, high }, 0, points, 'points of a hundred ');
  }
  if (Math.min(earlier.readings.length, later.readings.length) < fewestReadings) return undefined;
  const given = { earlier: earlier.readings, later: later.readings, confidencePercent };
  if (isRatio) return ratioChange(given);
  return difference(meanChange(given), middle, system);
}
