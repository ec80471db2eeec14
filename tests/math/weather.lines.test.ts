import { describe, expect, it } from 'vitest';
import { dayOfYear } from '../../calculators/math/weather/dayOfYear.ts';
import { generatedRainMm } from '../../calculators/math/weather/generatedRainMm.ts';
import { penmanMonteithFromTemperatureMm } from '../../calculators/math/weather/penmanMonteithMm.ts';
import { wetDayChain, wetDayShare } from '../../calculators/math/weather/wetDayChain.ts';

describe('days', () => {
  it('are whole', () => {
    for (const [month, day] of [
      [2.5, 1],
      [2, 1.5],
    ] as const)
      expect(() => dayOfYear(month, day)).toThrow('needs');
  });
});

describe('use of water from temperature alone', () => {
  it('is more where the air is drier than the night’s low says', () => {
    // Allen and others (1998), p. 58: in dry country the dew point lies 2 to 3 °C below Tmin.
    const day = { minTempC: 14.8, maxTempC: 26.6, latitudeDeg: 45.7, dayOfYear: 196, elevationM: 200, setting: 'interior' } as const;
    expect(penmanMonteithFromTemperatureMm({ ...day, drynessC: 3 })).toBeGreaterThan(penmanMonteithFromTemperatureMm(day) + 0.1);
  });
});

describe('the chain of wet days, counted by hand', () => {
  const of = (...rainMm: number[]) =>
    wetDayChain(
      rainMm,
      rainMm.map(() => 1),
    )[0];
  it('has the chances of its pairs', () => {
    expect(of(0, 3, 2, 0, 0, 1)).toEqual({ wetAfterWet: 1 / 2, wetAfterDry: 2 / 3, shape: 1, scaleMm: 2 });
  });
  it('takes the share of wet days where one kind never came before', () => {
    expect(of(5, 3, 2)).toMatchObject({ wetAfterWet: 1, wetAfterDry: 1 });
    expect(of(0, 0, 4)).toMatchObject({ wetAfterWet: 1 / 2, wetAfterDry: 1 / 2 });
    expect(of(1, 0, 4)).toMatchObject({ wetAfterWet: 0, wetAfterDry: 1 });
    expect(of(5, 3, 0)).toMatchObject({ wetAfterWet: 1 / 2, wetAfterDry: 1 / 2 });
    // One day alone makes no pair.
    expect(of(4)).toMatchObject({ wetAfterWet: 0, wetAfterDry: 0 });
  });
  it('fits a shape to five amounts that differ, and to no fewer', () => {
    expect(of(1, 2, 3, 4)?.shape).toBe(1);
    expect(of(1, 2, 3, 4, 5)?.shape).toBeGreaterThan(2);
    expect(of(2, 2, 2, 2, 2)).toMatchObject({ shape: 1, scaleMm: 2 });
  });
  it('has no share in the long run where wet stays wet and dry stays dry', () => {
    expect(() => wetDayShare(1, 0)).toThrow('needs 1 + wetAfterDry');
  });
  it('begins after a dry day unless told otherwise', () => {
    const stays = { months: [1, 1], chains: Array(12).fill({ wetAfterWet: 1, wetAfterDry: 0, shape: 1, scaleMm: 5 }), random: () => 0.5 };
    expect(generatedRainMm(stays)).toEqual([0, 0]);
    expect(Math.min(...generatedRainMm({ ...stays, startsAfterWet: true }))).toBeGreaterThan(0);
  });
});
