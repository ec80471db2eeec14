import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cfsToGallonsPerMinute, flowDepthIn, meanFlowCfs } from '../../calculators/math/water/flowDepthIn.ts';
import { rectangleAc, roofGallons } from '../../calculators/math/water/rectangleAc.ts';
import { gallonsToInchAcres, inchAcresToGallons, waterVolume } from '../../calculators/math/water/waterVolume.ts';
import { between } from '../support/numbers.ts';

const depth = between(0.001, 100);
const area = between(0.001, 1e5);
const near = (ours: number, theirs: number): void => {
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-12 * Math.abs(theirs));
};

describe('water amounts', () => {
  it('go to gallons and back', () => {
    fc.assert(fc.property(depth, (inchAcres) => near(gallonsToInchAcres(inchAcresToGallons(inchAcres)), inchAcres)));
  });
  it('are one amount in every unit: inch-acres of 3,630 cubic feet, liters of a thousandth of a cubic meter', () => {
    fc.assert(
      fc.property(depth, area, (depthIn, areaAc) => {
        const { inchAcres, acreFeet, cubicFeet, gallons, liters, cubicMeters } = waterVolume(depthIn, areaAc);
        near(cubicFeet, 3630 * inchAcres);
        near(acreFeet * 12, inchAcres);
        near(gallons * 3.785411784, liters);
        near(cubicMeters, depthIn * 0.0254 * areaAc * 4046.8564224);
      }),
    );
  });
  it('are the same on a roof as on the acres of that roof', () => {
    fc.assert(
      fc.property(depth, area, (depthIn, side) => near(roofGallons(depthIn, side * 10), inchAcresToGallons(depthIn * rectangleAc(side, 10)))),
    );
  });
  it('flow off in a time and come back as the depth', () => {
    fc.assert(
      fc.property(depth, area, between(0.01, 1000), (depthIn, areaAc, hours) =>
        near(flowDepthIn({ flowGpm: cfsToGallonsPerMinute(meanFlowCfs({ depthIn, areaAc, hours })), hours, areaAc }), depthIn),
      ),
    );
  });
  it('refuse what is negative or not a number', () => {
    expect(() => waterVolume(-1, 1)).toThrow(RangeError);
    expect(() => waterVolume(1, Number.NaN)).toThrow(RangeError);
    expect(() => gallonsToInchAcres(-1)).toThrow(RangeError);
    expect(() => flowDepthIn({ flowGpm: 1, hours: 1, areaAc: 0 })).toThrow(RangeError);
  });
});
