import { need } from '../need.ts';
import { gallonsPerCubicFoot } from '../water/waterVolume.ts';

/**
 * Water in a tank with straight walls and square corners: V = 7.4805 l w h, with l = `lengthFt`, w = `widthFt`, h = `depthFt`.
 * @param lengthFt - Inside length, feet; above 0
 * @param widthFt - Inside width, feet; above 0
 * @param depthFt - Depth of water, feet; 0 or more
 * @returns Water, US gallons
 * @throws RangeError if a value is outside its range
 * @source weathers-1913, square-built tanks
 * @example tankGal(6, 3, 3) //=> 403.9
 */
export function tankGal(lengthFt: number, widthFt: number, depthFt: number): number {
  need('tankGal', 'lengthFt', lengthFt, { above: 0 });
  need('tankGal', 'widthFt', widthFt, { above: 0 });
  need('tankGal', 'depthFt', depthFt, { atLeast: 0 });
  return lengthFt * widthFt * depthFt * gallonsPerCubicFoot;
}

/**
 * Water in an upright round tank: V = 7.4805 π d² h / 4, with d = `diameterFt`, h = `depthFt`.
 * @param diameterFt - Inside diameter, feet; above 0
 * @param depthFt - Depth of water, feet; 0 or more
 * @returns Water, US gallons
 * @throws RangeError if a value is outside its range
 * @source weathers-1913, circular tanks
 * @example roundTankGal(4, 3) //=> 282.0
 */
export function roundTankGal(diameterFt: number, depthFt: number): number {
  need('roundTankGal', 'diameterFt', diameterFt, { above: 0 });
  need('roundTankGal', 'depthFt', depthFt, { atLeast: 0 });
  return (Math.PI / 4) * diameterFt ** 2 * depthFt * gallonsPerCubicFoot;
}

/**
 * Water in a tank with straight sides and half-round ends: V = 7.4805 ((l − w) w + π w² / 4) h, with l = `lengthFt`, w = `widthFt`, h = `depthFt`.
 * @param lengthFt - Inside length over all, feet; at least `widthFt`
 * @param widthFt - Inside width, feet; above 0
 * @param depthFt - Depth of water, feet; 0 or more
 * @returns Water, US gallons
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example roundEndTankGal(8, 2, 2) //=> 226.5
 */
export function roundEndTankGal(lengthFt: number, widthFt: number, depthFt: number): number {
  need('roundEndTankGal', 'widthFt', widthFt, { above: 0 });
  need('roundEndTankGal', 'lengthFt', lengthFt, { atLeast: widthFt });
  need('roundEndTankGal', 'depthFt', depthFt, { atLeast: 0 });
  return ((lengthFt - widthFt) * widthFt + (Math.PI / 4) * widthFt ** 2) * depthFt * gallonsPerCubicFoot;
}
