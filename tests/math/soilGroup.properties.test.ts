import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { searchedDepthCm, soilGroupFromConductivity } from '../../calculators/math/soilGroup/soilGroupFromConductivity.ts';
import { soilGroupFromRate } from '../../calculators/math/soilGroup/soilGroupFromRate.ts';
import { soilGroupFromTexture } from '../../calculators/math/soilGroup/soilGroupFromTexture.ts';
import { textureGroups } from '../../calculators/tables/soilGroups.ts';
import { between } from '../support/numbers.ts';

const conductivity = between(0, 100);
const depth = fc.oneof(between(0, 250), fc.constant(Infinity));
const rank = (group: string) => 'abcd'.indexOf(group);
const textures = Object.keys(textureGroups.groups).filter((each): each is keyof typeof textureGroups.groups => each in textureGroups.groups);

describe('soil groups', () => {
  it('change with the depth of a barrier where the rule of 2009 says so', () => {
    // NEH 630 chapter 7, table 7-1: 50, 60 and 100 cm, told as 20, 24 and 40 in. Silt loam is group B by the list of 1986.
    expect([19.9, 20, 40, 40.1].map((depthIn) => soilGroupFromTexture('silt-loam', depthIn))).toEqual(['d', 'c', 'c', 'b']);
    expect([49.9, 50, 100, 100.1].map((barrierCm) => searchedDepthCm(barrierCm, 59.9))).toEqual([0, 60, 60, 100]);
    expect([49.9, 50, 100, 100.1].map((barrierCm) => searchedDepthCm(barrierCm, 60))).toEqual([0, 50, 50, 50]);
    expect([59.9, 60, 100, 100.1].map((waterCm) => searchedDepthCm(Infinity, waterCm))).toEqual([100, 50, 50, 100]);
  });
  it('take the slower group for a rate on the line between two', () => {
    // TR-55, appendix A: A is "greater than 0.30" inches an hour; 0.15 and 0.05 end one range and begin the next, and the slower is the careful reading.
    expect([0.3, 0.15, 0.05].map(soilGroupFromRate)).toEqual(['b', 'c', 'd']);
  });
  it('never get slower with conductivity', () => {
    fc.assert(
      fc.property(conductivity, conductivity, depth, depth, (one, other, barrierDepthCm, waterTableDepthCm) => {
        const at = (leastConductivityUmPerS: number) => soilGroupFromConductivity({ leastConductivityUmPerS, barrierDepthCm, waterTableDepthCm });
        const [slow, fast] = [at(Math.min(one, other)), at(Math.max(one, other))];
        expect(rank(fast.group)).toBeLessThanOrEqual(rank(slow.group));
        expect(rank(fast.drainedGroup ?? 'd')).toBeLessThanOrEqual(rank(slow.drainedGroup ?? 'd'));
        expect(rank(soilGroupFromRate(Math.max(one, other)))).toBeLessThanOrEqual(rank(soilGroupFromRate(Math.min(one, other))));
      }),
    );
  });
  it('are D under a shallow barrier, and D as they lie under high water', () => {
    fc.assert(
      fc.property(conductivity, between(0, 49.9), depth, (leastConductivityUmPerS, shallowCm, anyCm) => {
        expect(soilGroupFromConductivity({ leastConductivityUmPerS, barrierDepthCm: shallowCm, waterTableDepthCm: anyCm })).toEqual({
          group: 'd',
          drainedGroup: null,
        });
        expect(soilGroupFromConductivity({ leastConductivityUmPerS, barrierDepthCm: anyCm, waterTableDepthCm: shallowCm }).group).toBe('d');
      }),
    );
  });
  it('search no deeper than the barrier allows', () => {
    fc.assert(
      fc.property(depth, depth, (barrierDepthCm, waterTableDepthCm) => {
        const searched = searchedDepthCm(barrierDepthCm, waterTableDepthCm);
        expect([0, 50, 60, 100]).toContain(searched);
        if (barrierDepthCm < 50) expect(searched).toBe(0);
      }),
    );
  });
  it('by texture never get faster as the barrier comes nearer', () => {
    fc.assert(
      fc.property(fc.constantFrom(...textures), between(0, 80), between(0, 80), (texture, one, other) => {
        expect(rank(soilGroupFromTexture(texture, Math.min(one, other)))).toBeGreaterThanOrEqual(
          rank(soilGroupFromTexture(texture, Math.max(one, other))),
        );
      }),
    );
    expect(soilGroupFromTexture('sand', 19)).toBe('d');
    expect(soilGroupFromTexture('sandy-loam', 30)).toBe('b');
    expect(soilGroupFromTexture('silt-loam', Infinity)).toBe('b');
  });
});
