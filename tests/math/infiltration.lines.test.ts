import { describe, expect, it } from 'vitest';
import { designStormSteps } from '../../calculators/math/infiltration/designStormShare.ts';
import { pondingDepthCm, pondingHours } from '../../calculators/math/infiltration/pondingHours.ts';
import { pouringRateInPerHr, ringDepthIn, ringTest } from '../../calculators/math/infiltration/ringTest.ts';
import { stormInfiltration } from '../../calculators/math/infiltration/stormInfiltration.ts';
import { near } from '../support/near.ts';

const soil = { conductivityCmPerHr: 0.65, suctionCm: 16.7, moistureDeficit: 0.34 };

describe('rain no faster than the ground takes it', () => {
  it('never stands', () => {
    for (const rain of [0, 0.3, 0.65]) expect([pondingDepthCm(rain, soil), pondingHours(rain, soil)]).toEqual([Infinity, Infinity]);
    // Nor on ground without any pull.
    expect(pondingDepthCm(0.65, { ...soil, suctionCm: 0 })).toBe(Infinity);
  });
  it('goes in to the last drop, hour by hour, and there is no hour in which it stood', () => {
    const { rows, runoffCm, firstPondedHours } = stormInfiltration({
      steps: [0.1, 0.3, 0, 0.7, 0.3].map((rainCm) => ({ hours: 1.1, rainCm })),
      soil,
    });
    expect(rows.map(({ infiltratedCm, rainCm }) => infiltratedCm - rainCm)).toEqual([0, 0, 0, 0, 0]);
    expect([runoffCm, firstPondedHours]).toEqual([0, null]);
    expect(rows.map(({ endHours }) => Number(endHours.toFixed(9)))).toEqual([1.1, 2.2, 3.3, 4.4, 5.5]);
  });
  it('stands from the hour in which a harder burst fills the top, counted from the start of the storm', () => {
    // Mein and Larson: after 1 h of drizzle of 0.5 cm, rain of 2 cm an hour stands once K G / (i − K) = 0.65 · 5.678 / 1.35 cm are in.
    const { firstPondedHours } = stormInfiltration({
      steps: [
        { hours: 1, rainCm: 0.5 },
        { hours: 3, rainCm: 6 },
      ],
      soil,
    });
    near(firstPondedHours, 1 + ((0.65 * 16.7 * 0.34) / 1.35 - 0.5) / 2, 0.5e-9);
  });
});

describe('a day of rain in steps', () => {
  it('is cut into any whole number of them, and into no other', () => {
    for (let count = 1; count <= 200; count++) expect(designStormSteps({ rainType: 'ii', rainCm: 5, stepHours: 24 / count })).toHaveLength(count);
    expect(() => designStormSteps({ rainType: 'ii', rainCm: 5, stepHours: 7 })).toThrow('needs 24 / stepHours');
  });
});

describe('a ring', () => {
  it('takes inches by the hour, whatever was poured', () => {
    expect(pouringRateInPerHr(2, 30)).toBe(4);
  });
  it('keeps its first rate, and counts the minutes on', () => {
    const inch = 444 / ringDepthIn(444, 6);
    const { firstRateInPerHr, leadingRateInPerHr, rows } = ringTest({
      boreIn: 6,
      pourings: [
        { volumeMl: inch, minutes: 6 },
        { volumeMl: inch, minutes: 20 },
      ],
    });
    near(firstRateInPerHr, 10, 0.5e-9);
    near(leadingRateInPerHr, 3, 0.5e-9);
    expect(rows.map(({ elapsedMinutes }) => elapsedMinutes)).toEqual([6, 26]);
  });
});
