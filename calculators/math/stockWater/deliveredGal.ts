import { need } from '../need.ts';

/**
 * Water that a flow delivers: V = 60 q t, with q = `flowGpm`, t = `hours`.
 * @param flowGpm - Flow, US gallons a minute; 0 or more
 * @param hours - Time that it runs, hours; 0 or more
 * @returns Water, US gallons
 * @throws RangeError if a value is negative
 * @source common practice
 * @example deliveredGal(0.5, 24) //=> 720
 */
export function deliveredGal(flowGpm: number, hours: number): number {
  need('deliveredGal', 'flowGpm', flowGpm, { atLeast: 0 });
  need('deliveredGal', 'hours', hours, { atLeast: 0 });
  return 60 * flowGpm * hours;
}

/**
 * Flow that delivers an amount in a time: q = V / (60 t), with V = `gallons`, t = `hours`.
 * @param gallons - Water, US gallons; 0 or more
 * @param hours - Time to deliver it, hours; above 0
 * @returns Flow, US gallons a minute
 * @throws RangeError if a value is outside its range
 * @source alberta-pasture-pipeline, step 2
 * @example flowForGpm(1200, 4) //=> 5
 */
export function flowForGpm(gallons: number, hours: number): number {
  need('flowForGpm', 'gallons', gallons, { atLeast: 0 });
  need('flowForGpm', 'hours', hours, { above: 0 });
  return gallons / (60 * hours);
}

/**
 * Flow from a bucket and a watch: q = 60 V / s, with V = `bucketGal`, s = `seconds`.
 * @param bucketGal - Water that the bucket holds to its mark, US gallons; above 0
 * @param seconds - Time to fill it, seconds; above 0
 * @returns Flow, US gallons a minute
 * @throws RangeError if a value is outside its range
 * @source common practice
 * @example bucketFlowGpm(5, 30) //=> 10
 */
export function bucketFlowGpm(bucketGal: number, seconds: number): number {
  need('bucketFlowGpm', 'bucketGal', bucketGal, { above: 0 });
  need('bucketFlowGpm', 'seconds', seconds, { above: 0 });
  return (60 * bucketGal) / seconds;
}
