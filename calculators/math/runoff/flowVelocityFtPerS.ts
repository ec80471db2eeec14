import { need } from '../need.ts';

/**
 * Speed of water that has gathered into shallow rills: V = 16.1345 √s on open ground, 20.3282 √s on pavement, with s = `slope`.
 * @param slope - Slope of the watercourse, feet per foot; above 0
 * @param surface - What it runs over; `unpaved` or `paved`
 * @returns Velocity, feet per second
 * @throws RangeError if `slope` is not above 0
 * @source tr55-1986, appendix F, figure 3-1
 * @example shallowVelocityFtPerS(0.01, 'unpaved') //=> 1.61
 */
export function shallowVelocityFtPerS(slope: number, surface: 'unpaved' | 'paved'): number {
  need('shallowVelocityFtPerS', 'slope', slope, { above: 0 });
  return (surface === 'paved' ? 20.3282 : 16.1345) * Math.sqrt(slope);
}

/**
 * Speed of water in a channel by Manning's equation: V = 1.49 r^(2/3) s^(1/2) / n, with r = `hydraulicRadiusFt`, s = `slope`, n = `roughness`.
 * @param options.hydraulicRadiusFt - Cross section of the flow divided by its wetted edge, feet; above 0
 * @param options.slope - Slope of the channel, feet per foot; above 0
 * @param options.roughness - Manning's n of the channel, no unit; above 0
 * @returns Velocity, feet per second
 * @throws RangeError if a parameter is not above 0
 * @source tr55-1986, eq. 3-4
 * @example flowVelocityFtPerS({ hydraulicRadiusFt: 27 / 28.2, slope: 0.005, roughness: 0.05 }) //=> 2.05
 */
export function flowVelocityFtPerS({ hydraulicRadiusFt, slope, roughness }: { hydraulicRadiusFt: number; slope: number; roughness: number }): number {
  need('flowVelocityFtPerS', 'hydraulicRadiusFt', hydraulicRadiusFt, { above: 0 });
  need('flowVelocityFtPerS', 'slope', slope, { above: 0 });
  need('flowVelocityFtPerS', 'roughness', roughness, { above: 0 });
  return (1.49 * hydraulicRadiusFt ** (2 / 3) * Math.sqrt(slope)) / roughness;
}

/**
 * Time that water takes over a length: T = ℓ / (3600 V), with ℓ = `lengthFt`, V = `velocityFtPerS`.
 * @param lengthFt - Length of the way, feet; 0 or more
 * @param velocityFtPerS - Speed of the water, feet per second; above 0
 * @returns Travel time, hours
 * @throws RangeError if a parameter is outside its range
 * @source tr55-1986, eq. 3-1
 * @example travelHours(1400, 1.6) //=> 0.24
 */
export function travelHours(lengthFt: number, velocityFtPerS: number): number {
  need('travelHours', 'lengthFt', lengthFt, { atLeast: 0 });
  need('travelHours', 'velocityFtPerS', velocityFtPerS, { above: 0 });
  return lengthFt / (3600 * velocityFtPerS);
}
