import { expect, it } from 'vitest';
import { soilGroupOf } from '../../calculators/catalog/storm-runoff/inputs.ts';

it('moves silt loam by one group where a barrier lies at a middle depth, and to D where it is shallow', () => {
  // NEH 630 chapter 7: under 20 in D; 20 to 40 in one group later (own reading); silt loam is B by the list of 1986.
  const groupOver = (barrier: 'deep' | 'middle' | 'shallow') => soilGroupOf({ soilGroup: 'ask', texture: 'silt-loam', barrier });
  expect([groupOver('deep'), groupOver('middle'), groupOver('shallow')]).toEqual(['b', 'c', 'd']);
});
