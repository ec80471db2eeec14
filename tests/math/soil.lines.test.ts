import { describe, expect, it } from 'vitest';
import { availableWaterInPerFt } from '../../calculators/math/soil/availableWaterInPerFt.ts';
import { densityLimits, densityStanding } from '../../calculators/math/soil/densityStanding.ts';
import { gaugeReading } from '../../calculators/math/soil/gaugeReading.ts';
import { groundCover } from '../../calculators/math/soil/groundCover.ts';
import { probeSummary } from '../../calculators/math/soil/probeSummary.ts';
import { profileClass } from '../../calculators/math/soil/profileClass.ts';
import { rootZoneWater } from '../../calculators/math/soil/rootZoneWater.ts';
import { slakeClass } from '../../calculators/math/soil/slakeClass.ts';
import { slakeSummary } from '../../calculators/math/soil/slakeSummary.ts';
import { waterAtTensionInPerIn } from '../../calculators/math/soil/waterAtTensionInPerIn.ts';
import { waterRetention } from '../../calculators/math/soil/waterRetention.ts';
import { profileClasses } from '../../calculators/tables/availableWater.ts';
import { type DensityLimits, rootLimitingDensity } from '../../calculators/tables/rootLimitingDensity.ts';
import { textureGroups } from '../../calculators/tables/soilGroups.ts';
import { near } from '../support/near.ts';

type List = keyof typeof rootLimitingDensity;
type Texture = keyof typeof textureGroups.groups;
const isList = (name: string): name is List => name in rootLimitingDensity;
const isTexture = (name: string): name is Texture => name in textureGroups.groups;

describe('the line between two classes', () => {
  it('of density: ideal is below, roots may suffer from, roots are kept out above', () => {
    let held = 0;
    for (const list of Object.keys(rootLimitingDensity).filter(isList))
      for (const texture of Object.keys(textureGroups.groups).filter(isTexture)) {
        const limits: DensityLimits | undefined = densityLimits(list, texture);
        const at = (density: number) => densityStanding(list, texture, density);
        if (!limits) continue;
        const { idealBelow, limitsFrom, stopsAbove } = limits;
        if (stopsAbove !== undefined) expect([at(stopsAbove + 0.001), at(stopsAbove) === 'stopping']).toEqual(['stopping', false]);
        if (limitsFrom !== undefined) expect([at(limitsFrom), at(limitsFrom - 0.001) === 'limiting']).toEqual(['limiting', false]);
        if (idealBelow !== undefined) expect([at(idealBelow - 0.001), at(idealBelow)]).toEqual(['open', 'between']);
        held++;
      }
    expect(held).toBeGreaterThan(30);
  });
  it('of the gauge: 100, 200 and 300 psi', () => {
    expect([99.9, 100, 200, 200.1, 300, 300.1].map(gaugeReading)).toEqual(['loose', 'easy', 'easy', 'slowing', 'slowing', 'stopping']);
  });
  it('of a packed field: 30, 50 and 75 percent of the holes', () => {
    const stopped = (count: number, holes: number) => probeSummary(Array.from({ length: holes }, (_, at) => (at < count ? 8 : Infinity))).degree;
    expect([stopped(29, 100), stopped(3, 10), stopped(5, 10), stopped(51, 100), stopped(75, 100), stopped(76, 100)]).toEqual([
      'little',
      'slight',
      'slight',
      'moderate',
      'moderate',
      'severe',
    ]);
  });
  it('of the water a profile holds belongs to the class below', () => {
    for (const [at, { name, toIn }] of profileClasses.classes.entries()) {
      if (toIn === Infinity) continue;
      expect([profileClass(toIn), profileClass(toIn + 0.01)]).toEqual([name, profileClasses.classes[at + 1]?.name]);
    }
  });
  it('of a slaking crumb: 5, 30 and 300 seconds, then 10, 25 and 75 percent left', () => {
    // Herrick and others (2001), the field kit: half lost within 5 s, 5 to 30 s, 30 to 300 s or under 10 % left; 10 to 25 %, 25 to 75 %, 75 to 100 %.
    const lost = (halfLostSeconds: number) => slakeClass({ halfLostSeconds, leftPercent: 80 });
    expect([0, 5, 5.1, 30, 30.1, 300].map(lost)).toEqual([0, 1, 2, 2, 3, 3]);
    const left = (leftPercent: number) => slakeClass({ halfLostSeconds: Infinity, leftPercent });
    expect([9.9, 10, 24.9, 25, 74.9, 75].map(left)).toEqual([3, 4, 4, 5, 5, 6]);
  });
});

describe('what is counted', () => {
  it('is whole: hits, points, classes', () => {
    for (const wrong of [
      { hits: 2.5, points: 10 },
      { hits: 2, points: 10.5 },
    ])
      expect(() => groundCover(wrong)).toThrow('needs');
    expect(() => slakeSummary([2, 2.5])).toThrow('needs class');
  });
});

describe('water in the ground', () => {
  it('is less by the stones', () => {
    // A foot that holds 2 in, a quarter of it stones, half full.
    const layer = { thicknessIn: 12, availableInPerFt: 2, stoneVolumePercent: 25, filledPercent: 50 };
    expect(rootZoneWater([layer], 12)).toEqual({ holdsIn: 1.5, hasIn: 0.75, missingIn: 0.75 });
  });
  it('of silt, which the list leaves out, is that of silt loam', () => {
    expect(availableWaterInPerFt('silt')).toEqual(availableWaterInPerFt('silt-loam'));
  });
  it('falls straight from air entry to 33 kPa, and stays full up to air entry', () => {
    const curve = { fieldCapacityInPerIn: 0.3, saturationInPerIn: 0.45, airEntryKPa: 5, tensionExponent: 4 };
    expect([0, 5, 33].map((kPa) => waterAtTensionInPerIn(curve, kPa))).toEqual([0.45, 0.45, 0.3]);
    near(waterAtTensionInPerIn(curve, 19), 0.375, 0.5e-12);
    near(waterAtTensionInPerIn(curve, 33 * 16), 0.15, 0.5e-12);
  });
  it.each([
    [40, 20, 4.1472475],
    [10, 33, 9.0191683],
    [65, 10, 0.2467598],
  ])('enters a soil of %d % sand and %d % clay at the tension of the equation', (sandPercent, clayPercent, kPa) => {
    // Saxton and Rawls (2006), table 1, equation 4, worked out apart for 2.5 % organic matter.
    near(waterRetention({ sandPercent, clayPercent, organicMatterPercent: 2.5 }).airEntryKPa, kPa, 0.5e-6);
  });
  it('has no more clay than the sand leaves', () => {
    expect(() => waterRetention({ sandPercent: 60, clayPercent: 41, organicMatterPercent: 2 })).toThrow('needs clayPercent');
  });
});
