/**
 * Dry matter in an inch of height, lb per acre, by stand. A stick calibrated on the place with three clips comes before any of these: printed
 * values run from 50 to 400.
 */
export interface HeightDensity {
  readonly stand: string;
  readonly name: string;
  readonly condition: 'fair' | 'good' | 'excellent' | 'average';
  readonly lbPerAcreInch: readonly [low: number, high: number];
  readonly source: string;
  readonly where: string;
  readonly seen: 'print' | 'transcription' | 'memory';
}

const maine = { source: 'umaine-pasture-lesson-1', where: 'Appendix D', seen: 'print' } as const;
const noble = { condition: 'average', source: 'noble-grazing-stick', where: 'Pounds per acre-inch', seen: 'print' } as const;
const recalled = { source: 'smith-agr191', where: 'Table of dry matter per acre-inch', seen: 'memory' } as const;

export const heightDensity = [
  { stand: 'bluegrass-clover', name: 'Bluegrass and clover', condition: 'fair', lbPerAcreInch: [150, 200], ...maine },
  { stand: 'bluegrass-clover', name: 'Bluegrass and clover', condition: 'good', lbPerAcreInch: [250, 300], ...maine },
  { stand: 'bluegrass-clover', name: 'Bluegrass and clover', condition: 'excellent', lbPerAcreInch: [350, 400], ...maine },
  { stand: 'perennial-ryegrass-clover', name: 'Perennial ryegrass and clover', condition: 'fair', lbPerAcreInch: [150, 200], ...maine },
  { stand: 'perennial-ryegrass-clover', name: 'Perennial ryegrass and clover', condition: 'good', lbPerAcreInch: [250, 300], ...maine },
  { stand: 'perennial-ryegrass-clover', name: 'Perennial ryegrass and clover', condition: 'excellent', lbPerAcreInch: [350, 400], ...maine },
  { stand: 'orchardgrass-legume', name: 'Orchardgrass and legume', condition: 'fair', lbPerAcreInch: [150, 200], ...maine },
  { stand: 'orchardgrass-legume', name: 'Orchardgrass and legume', condition: 'good', lbPerAcreInch: [250, 300], ...maine },
  { stand: 'orchardgrass-legume', name: 'Orchardgrass and legume', condition: 'excellent', lbPerAcreInch: [300, 350], ...maine },
  { stand: 'timothy-legume', name: 'Timothy and legume', condition: 'fair', lbPerAcreInch: [150, 200], ...maine },
  { stand: 'timothy-legume', name: 'Timothy and legume', condition: 'good', lbPerAcreInch: [250, 300], ...maine },
  { stand: 'timothy-legume', name: 'Timothy and legume', condition: 'excellent', lbPerAcreInch: [300, 350], ...maine },
  { stand: 'tall-fescue', name: 'Tall fescue with nitrogen', condition: 'fair', lbPerAcreInch: [100, 150], ...maine },
  { stand: 'tall-fescue', name: 'Tall fescue with nitrogen', condition: 'good', lbPerAcreInch: [200, 250], ...maine },
  { stand: 'tall-fescue', name: 'Tall fescue with nitrogen', condition: 'excellent', lbPerAcreInch: [350, 400], ...maine },
  { stand: 'mixed-pasture', name: 'Mixed pasture', condition: 'fair', lbPerAcreInch: [150, 200], ...maine },
  { stand: 'mixed-pasture', name: 'Mixed pasture', condition: 'good', lbPerAcreInch: [250, 300], ...maine },
  { stand: 'mixed-pasture', name: 'Mixed pasture', condition: 'excellent', lbPerAcreInch: [300, 350], ...maine },
  { stand: 'bermudagrass', name: 'Bermudagrass, average 235', lbPerAcreInch: [80, 730], ...noble },
  { stand: 'fescue', name: 'Fescue, average 160', lbPerAcreInch: [50, 265], ...noble },
  {
    stand: 'cool-season-missouri',
    name: 'Cool-season pasture, Missouri',
    condition: 'average',
    lbPerAcreInch: [200, 300],
    source: 'tate-2020',
    where: 'Pounds per acre-inch in the text',
    seen: 'print',
  },
  {
    stand: 'pasture-pennsylvania',
    name: 'Typical pasture, Pennsylvania',
    condition: 'average',
    lbPerAcreInch: [300, 300],
    source: 'penn-state-four-steps',
    where: 'Step 4',
    seen: 'print',
  },
  { stand: 'bermudagrass', name: 'Bermudagrass, under 75 % cover', condition: 'fair', lbPerAcreInch: [100, 200], ...recalled },
  { stand: 'bermudagrass', name: 'Bermudagrass, 75 to 90 % cover', condition: 'good', lbPerAcreInch: [200, 300], ...recalled },
  { stand: 'bermudagrass', name: 'Bermudagrass, over 90 % cover', condition: 'excellent', lbPerAcreInch: [300, 400], ...recalled },
  { stand: 'alfalfa', name: 'Alfalfa, under 75 % cover', condition: 'fair', lbPerAcreInch: [75, 150], ...recalled },
  { stand: 'alfalfa', name: 'Alfalfa, 75 to 90 % cover', condition: 'good', lbPerAcreInch: [150, 225], ...recalled },
  { stand: 'alfalfa', name: 'Alfalfa, over 90 % cover', condition: 'excellent', lbPerAcreInch: [225, 300], ...recalled },
  { stand: 'red-clover', name: 'Red clover, under 75 % cover', condition: 'fair', lbPerAcreInch: [75, 125], ...recalled },
  { stand: 'red-clover', name: 'Red clover, 75 to 90 % cover', condition: 'good', lbPerAcreInch: [125, 175], ...recalled },
  { stand: 'red-clover', name: 'Red clover, over 90 % cover', condition: 'excellent', lbPerAcreInch: [175, 250], ...recalled },
] as const satisfies readonly HeightDensity[];
