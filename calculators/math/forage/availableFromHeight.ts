import { need } from '../need.ts';

/**
 * Dry matter above the stubble from height: (H - h) d, with H = `heightIn`, h = `stubbleIn`, d = `poundsPerAcreInch`; 0 where the stand is below
 * the stubble.
 * @param options.heightIn - Mean height of the stand, inches; at least 0
 * @param options.stubbleIn - Height to leave, inches; at least 0
 * @param options.poundsPerAcreInch - Dry matter in an inch of height, lb per acre; above 0
 * @returns Dry matter above the stubble, lb per acre
 * @throws RangeError if a value is outside its range
 * @source umaine-pasture-lesson-1, appendix D
 * @example availableFromHeight({ heightIn: 7, stubbleIn: 3, poundsPerAcreInch: 300 }) //=> 1200
 */
export function availableFromHeight({
  heightIn,
  stubbleIn,
  poundsPerAcreInch,
}: {
  readonly heightIn: number;
  readonly stubbleIn: number;
  readonly poundsPerAcreInch: number;
}): number {
  need('availableFromHeight', 'heightIn', heightIn, { atLeast: 0 });
  need('availableFromHeight', 'stubbleIn', stubbleIn, { atLeast: 0 });
  need('availableFromHeight', 'poundsPerAcreInch', poundsPerAcreInch, { above: 0 });
  return Math.max(0, heightIn - stubbleIn) * poundsPerAcreInch;
}
