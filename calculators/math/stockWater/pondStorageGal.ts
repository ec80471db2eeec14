import { need } from '../need.ts';
import { inchAcresToGallons } from '../water/waterVolume.ts';

/** Share of surface times greatest depth that a pond with gently sloping sides holds. */
export const pondShape = 0.4;

/**
 * Water in a pond from its surface and its greatest depth: V = 0.4 A D, with A = `surfaceAc`, D = `maxDepthFt`, turned into gallons.
 * @param surfaceAc - Water surface today, acres; above 0
 * @param maxDepthFt - Greatest depth of water today, feet; 0 or more
 * @returns Water, US gallons
 * @throws RangeError if a value is outside its range
 * @source dpird-dam-volume, simple, rough estimate of current water volume
 * @example pondStorageGal(1, 10) //=> 1303406
 */
export function pondStorageGal(surfaceAc: number, maxDepthFt: number): number {
  need('pondStorageGal', 'surfaceAc', surfaceAc, { above: 0 });
  need('pondStorageGal', 'maxDepthFt', maxDepthFt, { atLeast: 0 });
  return inchAcresToGallons(12 * pondShape * surfaceAc * maxDepthFt);
}

/** A pond as it was measured: its surface and its greatest depth on one day. */
export interface MeasuredPond {
  readonly surfaceAc: number;
  readonly maxDepthFt: number;
}

/**
 * Surface of a pond at another depth: A(h) = A (h / D)^1.5, the only shape for which V = 0.4 A D holds at every depth, since V is the sum of its
 * surfaces; A = `surfaceAc`, D = `maxDepthFt`, h = `depthFt`.
 * @param pond - Surface, acres, and greatest depth, feet, as measured; both above 0
 * @param depthFt - Greatest depth at which the surface is wanted, feet; 0 or more
 * @returns Surface, acres
 * @throws RangeError if a value is outside its range
 * @source our own, derived from V = 0.4 A D
 * @example pondSurfaceAtAc({ surfaceAc: 1, maxDepthFt: 10 }, 5) //=> 0.354
 */
export function pondSurfaceAtAc(pond: MeasuredPond, depthFt: number): number {
  needPond('pondSurfaceAtAc', pond);
  need('pondSurfaceAtAc', 'depthFt', depthFt, { atLeast: 0 });
  return pond.surfaceAc * (depthFt / pond.maxDepthFt) ** (1 / pondShape - 1);
}

/**
 * Water in a pond at another depth: V(h) = 0.4 A D (h / D)^2.5, with A = `surfaceAc`, D = `maxDepthFt`, h = `depthFt`.
 * @param pond - Surface, acres, and greatest depth, feet, as measured; both above 0
 * @param depthFt - Greatest depth at which the water is wanted, feet; 0 or more
 * @returns Water, US gallons
 * @throws RangeError if a value is outside its range
 * @source our own, derived from V = 0.4 A D
 * @example pondStorageAtGal({ surfaceAc: 1, maxDepthFt: 10 }, 5) //=> 230412
 */
export function pondStorageAtGal(pond: MeasuredPond, depthFt: number): number {
  needPond('pondStorageAtGal', pond);
  need('pondStorageAtGal', 'depthFt', depthFt, { atLeast: 0 });
  return pondStorageGal(pond.surfaceAc, pond.maxDepthFt) * (depthFt / pond.maxDepthFt) ** (1 / pondShape);
}

/**
 * Depth of a pond that holds an amount of water: h = D (V / (0.4 A D))^0.4, the inverse of `pondStorageAtGal`.
 * @param pond - Surface, acres, and greatest depth, feet, as measured; both above 0
 * @param gallons - Water that it holds, US gallons; 0 or more
 * @returns Greatest depth, feet
 * @throws RangeError if a value is outside its range
 * @source our own, derived from V = 0.4 A D
 * @example pondDepthFt({ surfaceAc: 1, maxDepthFt: 10 }, 230412) //=> 5.00
 */
export function pondDepthFt(pond: MeasuredPond, gallons: number): number {
  needPond('pondDepthFt', pond);
  need('pondDepthFt', 'gallons', gallons, { atLeast: 0 });
  return pond.maxDepthFt * (gallons / pondStorageGal(pond.surfaceAc, pond.maxDepthFt)) ** pondShape;
}

function needPond(name: string, { surfaceAc, maxDepthFt }: MeasuredPond): void {
  need(name, 'surfaceAc', surfaceAc, { above: 0 });
  need(name, 'maxDepthFt', maxDepthFt, { above: 0 });
}
