import { need } from '../need.ts';

/** Feet of head in a pound a square inch of water: 144 / 62.34 at about 70 °F, in round use 2.31. */
export const feetPerPsi = 2.31;

/** A pipe: inside diameter, length with fittings added as length, and the Hazen-Williams coefficient of its wall. */
export interface Pipe {
  readonly insideIn: number;
  readonly lengthFt: number;
  readonly roughness: number;
}

function needPipe(name: string, { insideIn, lengthFt, roughness }: Pipe): void {
  need(name, 'insideIn', insideIn, { above: 0 });
  need(name, 'lengthFt', lengthFt, { above: 0 });
  need(name, 'roughness', roughness, { atLeast: 60, atMost: 160 });
}

/**
 * Head lost to friction in a full pipe, Hazen-Williams: h = 0.2083 (100 / C)^1.852 q^1.852 / d^4.8655 × L / 100, with C = `roughness`, q = `flowGpm`,
 * d = `insideIn`, L = `lengthFt`.
 * @param flowGpm - Flow, US gallons a minute; 0 or more
 * @param pipe - Inside diameter, inches, above 0; length, feet, above 0; Hazen-Williams coefficient, 60 to 160, 140 to 150 for plastic
 * @returns Head lost, feet of water
 * @throws RangeError if a value is outside its range
 * @source engineering-toolbox-hazen-williams, equation 1
 * @example pipeHeadLossFt(200, { insideIn: 3.048, lengthFt: 30, roughness: 140 }) //=> 2.7
 */
export function pipeHeadLossFt(flowGpm: number, pipe: Pipe): number {
  need('pipeHeadLossFt', 'flowGpm', flowGpm, { atLeast: 0 });
  needPipe('pipeHeadLossFt', pipe);
  return (lossPer100Ft(pipe) * flowGpm ** 1.852 * pipe.lengthFt) / 100;
}

/**
 * Flow that a fall or a pressure pushes through a pipe: `pipeHeadLossFt` solved for q, with the loss equal to h = `headFt`.
 * @param headFt - Head that may be used up, fall plus 2.31 ft for each psi, feet; 0 or more
 * @param pipe - Inside diameter, inches, above 0; length, feet, above 0; Hazen-Williams coefficient, 60 to 160
 * @returns Flow, US gallons a minute
 * @throws RangeError if a value is outside its range
 * @source engineering-toolbox-hazen-williams, equation 1 solved for the flow
 * @example pipeFlowGpm(2.702, { insideIn: 3.048, lengthFt: 30, roughness: 140 }) //=> 200
 */
export function pipeFlowGpm(headFt: number, pipe: Pipe): number {
  need('pipeFlowGpm', 'headFt', headFt, { atLeast: 0 });
  needPipe('pipeFlowGpm', pipe);
  return ((100 * headFt) / (lossPer100Ft(pipe) * pipe.lengthFt)) ** (1 / 1.852);
}

/**
 * Speed of the water in a full pipe: v = 0.408709 q / d², with q = `flowGpm`, d = `insideIn`. Above 5 ft a second a line bangs and wears.
 * @param flowGpm - Flow, US gallons a minute; 0 or more
 * @param insideIn - Inside diameter, inches; above 0
 * @returns Speed, feet a second
 * @throws RangeError if a value is outside its range
 * @source engineering-toolbox-hazen-williams, equation 2
 * @example pipeSpeedFtPerS(10, 1.049) //=> 3.71
 */
export function pipeSpeedFtPerS(flowGpm: number, insideIn: number): number {
  need('pipeSpeedFtPerS', 'flowGpm', flowGpm, { atLeast: 0 });
  need('pipeSpeedFtPerS', 'insideIn', insideIn, { above: 0 });
  return (0.408709 * flowGpm) / insideIn ** 2;
}

const lossPer100Ft = ({ insideIn, roughness }: Pipe): number => (0.2083 * (100 / roughness) ** 1.852) / insideIn ** 4.8655;
