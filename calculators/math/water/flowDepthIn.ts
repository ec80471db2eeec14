import { need } from '../need.ts';
import { cubicFeetPerInchAcre, gallonsPerCubicFoot, gallonsToInchAcres } from './waterVolume.ts';

/**
 * Gallons a minute in a flow given in cubic feet a second: 448.83 × q, with q = `flowCfs`.
 * @param flowCfs - Flow, cubic feet per second; 0 or more
 * @returns Flow, US gallons per minute
 * @throws RangeError if `flowCfs` is negative
 * @source common practice
 * @example cfsToGallonsPerMinute(1) //=> 448.83
 */
export function cfsToGallonsPerMinute(flowCfs: number): number {
  need('cfsToGallonsPerMinute', 'flowCfs', flowCfs, { atLeast: 0 });
  return flowCfs * 60 * gallonsPerCubicFoot;
}

/**
 * Depth that a steady flow puts on an area: d = q t / A, with q = `flowGpm`, t = `hours`, A = `areaAc`.
 * @param options.flowGpm - Flow, US gallons per minute; 0 or more
 * @param options.hours - How long it runs, hours; 0 or more
 * @param options.areaAc - Area that it spreads over, acres; above 0
 * @returns Depth, inches
 * @throws RangeError if a parameter is outside its range
 * @source common practice
 * @example flowDepthIn({ flowGpm: 450, hours: 1, areaAc: 1 }) //=> 0.994
 */
export function flowDepthIn({ flowGpm, hours, areaAc }: { flowGpm: number; hours: number; areaAc: number }): number {
  need('flowDepthIn', 'flowGpm', flowGpm, { atLeast: 0 });
  need('flowDepthIn', 'hours', hours, { atLeast: 0 });
  need('flowDepthIn', 'areaAc', areaAc, { above: 0 });
  return gallonsToInchAcres(flowGpm * 60 * hours) / areaAc;
}

/**
 * Flow that a depth of runoff means if it drains from an area in a time: q = d A / t, with d = `depthIn`, A = `areaAc`, t = `hours`.
 * @param options.depthIn - Depth of runoff, inches; 0 or more
 * @param options.areaAc - Area that it drains from, acres; 0 or more
 * @param options.hours - How long it takes, hours; above 0
 * @returns Mean flow, cubic feet per second
 * @throws RangeError if a parameter is outside its range
 * @source common practice
 * @example meanFlowCfs({ depthIn: 1, areaAc: 1, hours: 1 }) //=> 1.0083
 */
export function meanFlowCfs({ depthIn, areaAc, hours }: { depthIn: number; areaAc: number; hours: number }): number {
  need('meanFlowCfs', 'depthIn', depthIn, { atLeast: 0 });
  need('meanFlowCfs', 'areaAc', areaAc, { atLeast: 0 });
  need('meanFlowCfs', 'hours', hours, { above: 0 });
  return (depthIn * areaAc * cubicFeetPerInchAcre) / (hours * 3600);
}
