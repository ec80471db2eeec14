import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dripHoles, dripRate, jarRateInPerHr, minutesOfRain } from '../../calculators/math/demonstration/dripRate.ts';
import { jarShares } from '../../calculators/math/demonstration/jarShares.ts';
import { trayDepthIn, trayWater } from '../../calculators/math/demonstration/trayWater.ts';
import { between } from '../support/numbers.ts';

const near = (one: number, other: number, relative = 1e-9): void => {
  expect(Math.abs(one - other)).toBeLessThanOrEqual(relative * Math.max(1, Math.abs(other)));
};
const tray = fc.record({ lengthIn: between(4, 60), widthIn: between(4, 60) });

describe('rain on a tray', () => {
  it('turns depth into water and back', () => {
    fc.assert(
      fc.property(tray, between(0, 10), ({ lengthIn, widthIn }, rainIn) => {
        const water = trayWater(lengthIn, widthIn, rainIn);
        near(trayDepthIn(water.milliliters, lengthIn, widthIn), rainIn);
        near(water.quarts, water.pints / 2);
        near(water.gallons * 3785.411784, water.milliliters);
      }),
    );
  });
  it('gives the rate that the jar then shows', () => {
    fc.assert(
      fc.property(tray, between(0.1, 12), between(5, 600), (one, rateInPerHr, seconds) => {
        near(jarRateInPerHr((dripRate(rateInPerHr, one) * seconds) / 60, seconds, one), rateInPerHr);
      }),
    );
  });
  it('pours in the time of the rain what the depth asks for', () => {
    fc.assert(
      fc.property(tray, between(0.1, 6), between(0.1, 12), (one, rainIn, rateInPerHr) => {
        near(dripRate(rateInPerHr, one) * minutesOfRain(rainIn, rateInPerHr), trayWater(one.lengthIn, one.widthIn, rainIn).milliliters);
      }),
    );
  });
  it('has holes enough and not one too many', () => {
    fc.assert(
      fc.property(tray, between(0.1, 12), between(0.5, 30), (one, rateInPerHr, holeMlPerMin) => {
        const holes = dripHoles(rateInPerHr, one, holeMlPerMin);
        expect(holes * holeMlPerMin).toBeGreaterThanOrEqual(dripRate(rateInPerHr, one) * (1 - 1e-12));
        expect((holes - 1) * holeMlPerMin).toBeLessThan(dripRate(rateInPerHr, one));
      }),
    );
  });
});

describe('the jars', () => {
  it('share out all the water', () => {
    fc.assert(
      fc.property(between(100, 10_000), between(0, 0.5), between(0, 0.5), (pouredMl, runoff, through) => {
        const { runoffPercent, throughPercent, heldPercent } = jarShares(pouredMl, runoff * pouredMl, through * pouredMl);
        near(runoffPercent + throughPercent + heldPercent, 100);
      }),
    );
  });
  it('cannot hold more than was poured', () => {
    expect(() => jarShares(1000, 700, 400)).toThrow(RangeError);
    expect(jarShares(1000, 600, 410).heldPercent).toBeLessThan(0);
  });
});
