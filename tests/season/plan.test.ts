import { describe, expect, it } from 'vitest';
import { FLAG, numberAt, wholeAt } from '../../calculators/season/flat.ts';
import { planOf } from '../../calculators/season/plan.ts';
import type { MonthDay } from '../../calculators/season/weather.ts';
import { changedWeather, demoWeather, manyPaddocks, sideOf, skyWith } from '../support/seasonPlace.ts';

// From 1 January 1996, a leap year, to the end of the next.
const sky = skyWith(changedWeather(demoWeather(), { to: 366 + 365 }));
const side = sideOf({ grazed: 0.045, meadow: 0.061 }, manyPaddocks);
const stock = [
  { head: 10, weightLb: 1000, intakePercent: 2, from: 420, to: 1101 },
  { head: 5, weightLb: 1000, intakePercent: 4, from: 1015, to: 105 },
];
const sale = { on: 715, belowDays: 30, share: 0.2 };
const { flags, demandLb } = planOf(sky, { ...side, stock, management: { ...side.management, turnOut: 420, pull: 1101, cutOn: [610, 820], sale } });

describe('the calendar of a management, laid on days', () => {
  const daysWith = (bit: number): readonly MonthDay[] => [...sky.monthDay].filter((_, day) => (wholeAt(flags, day) & bit) !== 0);
  it('says on its very days when stock go out, are sold, and hay is cut', () => {
    expect(daysWith(FLAG.turnOut)).toEqual([420, 420]);
    expect(daysWith(FLAG.sell)).toEqual([715, 715]);
    expect(daysWith(FLAG.cut)).toEqual([610, 820, 610, 820]);
    const season = daysWith(FLAG.inSeason);
    // 20 April to 31 October, twice.
    expect([season.length, season[0], season.at(-1)]).toEqual([2 * 195, 420, 1031]);
  });
  it('asks for each row of stock between its dates, over the new year too', () => {
    const on = (date: MonthDay): number => numberAt(demandLb, sky.monthDay.indexOf(date));
    expect([101, 104, 105, 229, 419, 420, 1014, 1015, 1031, 1101, 1231].map(on)).toEqual([200, 200, 0, 0, 0, 200, 200, 400, 400, 200, 200]);
  });
});
