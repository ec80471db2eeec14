import { need } from '../need.ts';

export type Frame =
  | { readonly shape: 'hoop-around'; readonly circumferenceIn: number }
  | { readonly shape: 'hoop-across'; readonly diameterIn: number }
  | { readonly shape: 'rectangle'; readonly lengthIn: number; readonly widthIn: number };

const squareInchesPerSquareFoot = 144;

/**
 * Area of a clipping frame: C^2 / (4 pi) for a hoop measured round its edge, pi D^2 / 4 for one measured across, l w for a rectangle, over 144.
 * @param frame - Shape and inside measures, inches; each above 0
 * @returns Area, square feet
 * @throws RangeError if a measure is not above 0
 * @source common practice
 * @example frameAreaFt2({ shape: 'hoop-around', circumferenceIn: 93 }) //=> 4.78
 */
export function frameAreaFt2(frame: Frame): number {
  if (frame.shape === 'hoop-around') {
    need('frameAreaFt2', 'circumferenceIn', frame.circumferenceIn, { above: 0 });
    return frame.circumferenceIn ** 2 / (4 * Math.PI) / squareInchesPerSquareFoot;
  }
  if (frame.shape === 'hoop-across') {
    need('frameAreaFt2', 'diameterIn', frame.diameterIn, { above: 0 });
    return ((Math.PI / 4) * frame.diameterIn ** 2) / squareInchesPerSquareFoot;
  }
  need('frameAreaFt2', 'lengthIn', frame.lengthIn, { above: 0 });
  need('frameAreaFt2', 'widthIn', frame.widthIn, { above: 0 });
  return (frame.lengthIn * frame.widthIn) / squareInchesPerSquareFoot;
}
