import type { Calculator } from '../../../calculators/kit/define.ts';
import { fromLink } from '../../../calculators/kit/openLink.ts';
import { printName } from '../../../calculators/kit/print.ts';
import { digitsTold, type NumberQuantity } from '../../../calculators/kit/quantities.ts';
import { runTexts } from '../../../calculators/kit/runTexts.ts';
import { visitRatio } from '../../../calculators/math/infiltration/visitRatio.ts';
import { coverChange } from '../../../calculators/math/soil/coverChange.ts';
import { meanChange } from '../../../calculators/math/special/meanChange.ts';
import { printNumber, printQuantity } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import type { Result } from '../model/result.ts';
import type { Visit } from '../model/visit.ts';

const confidencePercent = 95;
/** Fewer readings than this on either day, and nothing is said. Of a count: steps. Both our own. */
const fewestReadings = 3;
const fewestPoints = 30;
/** Days since rain that tell two soils apart by wetness alone. Common practice: the same day counts, a day is nothing. */
const mostRainDaysApart = 1;

const covered: Pick<NumberQuantity, 'label' | 'unit' | 'digits' | 'significant'> = { label: 'Ground covered', unit: 'pct', digits: 0 };

/** One side's readings: each apart, or a count of points. */
interface Side {
  readonly readings: readonly number[];
  readonly count?: { readonly hits: number; readonly points: number };
  readonly tool: string;
}
export interface Compared {
  readonly title: string;
  readonly label: string;
  readonly earlier: readonly number[];
  readonly later: readonly number[];
  /** Readings in words, for the plot. */
  readonly tell: (reading: number) => string;
  readonly isRatio: boolean;
  /** Later against earlier with its range; nothing where there are too few. */
  readonly change?: { readonly value: number; readonly low: number; readonly high: number; readonly words: string };
  readonly verdict: string;
  /** What was not the same on the two days. */
  readonly differs: readonly string[];
}

function sideOf(calculator: Calculator, link: string): Side | undefined {
  const { compares } = calculator;
  if (compares === undefined) return undefined;
  const ran = runTexts(calculator, fromLink(calculator, link).form.this, 'us');
  if (!('outcome' in ran)) return undefined;
  const { values } = ran.outcome;
  const numberAt = (name: string): number => Number(values[name]);
  if (compares.as === 'share') {
    const [points, misses] = [numberAt(compares.points), numberAt(compares.misses)];
    return { readings: [((points - misses) / points) * 100], count: { hits: points - misses, points }, tool: '' };
  }
  const rows: unknown = values[compares.rows];
  const list: readonly Readonly<Record<string, unknown>>[] = Array.isArray(rows) ? rows : [];
  const tool = (compares.alike ?? []).map((name) => `${name} ${printName(calculator, values, name, 'us')}`).join(', ');
  return { readings: list.map((row) => Number(row[compares.column])).filter(Number.isFinite), tool };
}

const monthOf = (day: string): number => Number(day.slice(5, 7));
/** What was not the same on the two days, each in words. */
export function differences(one: Visit, other: Visit): readonly string[] {
  const apart = Math.abs(monthOf(one.day) - monthOf(other.day));
  const [wet, wetThen] = [other.ground?.moistureFeel, one.ground?.moistureFeel];
  const [rain, rainThen] = [other.ground?.daysSinceRain, one.ground?.daysSinceRain];
  const isRainTold = rain !== undefined && rainThen !== undefined;
  return [
    ...(wet === undefined || wetThen === undefined
      ? ['how wet the ground felt is not told of both']
      : wet === wetThen
        ? []
        : [`the ground felt ${wetThen} then and ${wet} now`]),
    ...(isRainTold
      ? Math.abs(rain - rainThen) <= mostRainDaysApart
        ? []
        : [`${rainThen} days since rain then, ${rain} now`]
      : ['days since rain are not told of both']),
    ...(one.ground?.isFrozen === true || other.ground?.isFrozen === true ? ['the ground was frozen'] : []),
    ...(Math.min(apart, 12 - apart) <= 1 ? [] : ['another time of the year']),
    ...((one.by ?? '') === (other.by ?? '') ? [] : ['other hands']),
  ];
}

const verdicts = {
  few: 'Too few readings to say anything.',
  chance: 'The change cannot be told from chance.',
  more: 'The change is more than these readings scatter.',
  apart: 'It may be the ground’s wetness, not the ground: the two days were not alike.',
} as const;

/** Two results of one test, the earlier first; nothing where the test is not one that is compared. */
export function compareResults(
  calculator: Calculator,
  [one, visitOne]: readonly [Result, Visit],
  [other, visitOther]: readonly [Result, Visit],
  system: UnitSystem,
): Compared | undefined {
  const { compares } = calculator;
  const [earlier, later] = [sideOf(calculator, one.link), sideOf(calculator, other.link)];
  if (compares === undefined || earlier === undefined || later === undefined) return undefined;
  const table = compares.as === 'share' ? undefined : calculator.quantities[compares.rows];
  const column = table?.kind === 'rows' && compares.as !== 'share' ? table.columns[compares.column] : undefined;
  const told = column?.kind === 'number' ? column : covered;
  const tell = (value: number): string => printQuantity(value, told.unit, digitsTold(value, told), system);
  const differs = [
    ...differences(visitOne, visitOther),
    ...(earlier.tool === later.tool ? [] : ['another tool, or another amount of water']),
    ...(one.hasRecord || other.hasRecord ? ['a record went into it that no link carries'] : []),
  ];
  const isRatio = compares.as === 'ratio';
  const frame = { title: calculator.title, label: told.label, earlier: earlier.readings, later: later.readings, tell, isRatio, differs };
  const change = changeOf(earlier, later, isRatio, tell);
  if (change === undefined) return { ...frame, verdict: verdicts.few };
  const nothing = isRatio ? 1 : 0;
  const isMore = change.low > nothing || change.high < nothing;
  // Days that are not alike are never called a change of the ground.
  return { ...frame, change, verdict: !isMore ? verdicts.chance : differs.length > 0 ? verdicts.apart : verdicts.more };
}

function changeOf(earlier: Side, later: Side, isRatio: boolean, tell: (value: number) => string): Compared['change'] {
  if (earlier.count && later.count) {
    if (Math.min(earlier.count.points, later.count.points) < fewestPoints) return undefined;
    const { change, low, high } = coverChange({ earlier: earlier.count, later: later.count, confidencePercent });
    const points = (share: number): string => `${share < 0 ? '−' : '+'}${printNumber(Math.abs(share * 100), 0)}`;
    return { value: change, low, high, words: `${points(change)} points of a hundred (${points(low)} to ${points(high)}, 19 times in 20)` };
  }
  if (Math.min(earlier.readings.length, later.readings.length) < fewestReadings) return undefined;
  const given = { earlier: earlier.readings, later: later.readings, confidencePercent };
  if (isRatio) {
    const { ratio, low, high } = visitRatio(given);
    const times = (value: number): string => printNumber(value, 2);
    return { value: ratio, low, high, words: `${times(ratio)} times what it was (${times(low)} to ${times(high)}, 19 times in 20)` };
  }
  const { change, low, high } = meanChange(given);
  const signed = (value: number): string => `${value < 0 ? '−' : '+'}${tell(Math.abs(value))}`;
  return { value: change, low, high, words: `${signed(change)} (${signed(low)} to ${signed(high)}, 19 times in 20)` };
}
