import { need } from '../need.ts';
import { greenAmptDepthCm, type WettingSoil } from './greenAmptDepthCm.ts';
import { pondingDepthCm } from './pondingHours.ts';

/** A stretch of rain at one rate. */
export interface RainStep {
  readonly hours: number;
  readonly rainCm: number;
}

/** What one stretch did; `pondedHours` is how long of it water stood on the ground. */
export interface InfiltrationRow {
  readonly hours: number;
  readonly endHours: number;
  readonly rainCm: number;
  readonly infiltratedCm: number;
  readonly runoffCm: number;
  readonly pondedHours: number;
}

export interface StormInfiltration {
  readonly rows: readonly InfiltrationRow[];
  readonly infiltratedCm: number;
  readonly runoffCm: number;
  /** Hours from the start until water first stood, or null if it never did. */
  readonly firstPondedHours: number | null;
}

/**
 * Where the rain of a storm goes, step by step: all of it in while the rain stays below f = K (1 + G / F); from the moment when it does not, F by
 * the Green-Ampt equation with ponding; the rest runs off at once. Each of the `steps` has one rate, and within it the answer is exact. The soil does
 * not drain between bursts, and no water is held on the ground.
 * @param options.steps - Stretches of rain: hours (above 0) and rain in cm (0 or more)
 * @param options.soil - Conductivity in cm per hour (above 0), suction in cm (0 or more), moisture deficit (0 to 1)
 * @returns Rows with depths in cm and times in hours, their sums, and the time when water first stood
 * @throws RangeError if a parameter is outside its range
 * @source chow-1988, section 5.4; mein-larson-1971, infiltration after surface saturation
 * @example stormInfiltration({ steps: [{ hours: 1, rainCm: 5 }], soil: { conductivityCmPerHr: 0.65, suctionCm: 16.7, moistureDeficit: 0.34 } }).infiltratedCm //=> 3.02
 */
export function stormInfiltration({ steps, soil }: { steps: readonly RainStep[]; soil: WettingSoil }): StormInfiltration {
  const rows: InfiltrationRow[] = [];
  let soakedCm = 0;
  let endHours = 0;
  let runoffCm = 0;
  let firstPondedHours: number | null = null;
  for (const { hours, rainCm } of steps) {
    need('stormInfiltration', 'hours', hours, { above: 0 });
    need('stormInfiltration', 'rainCm', rainCm, { atLeast: 0 });
    const rateCmPerHr = rainCm / hours;
    const pondsAtCm = pondingDepthCm(rateCmPerHr, soil);
    const dryHours = Math.min(hours, Math.max(0, (pondsAtCm - soakedCm) / rateCmPerHr));
    const pondedHours = hours - dryHours;
    const afterDryCm = soakedCm + rateCmPerHr * dryHours;
    const afterCm =
      pondedHours > 0 ? Math.min(greenAmptDepthCm({ hours: pondedHours, soil, startCm: afterDryCm }), soakedCm + rainCm) : soakedCm + rainCm;
    if (pondedHours > 0) firstPondedHours ??= endHours + dryHours;
    endHours += hours;
    // Where no water stood, the difference of two sums would leave dust, and a hair less than nothing running off.
    const infiltratedCm = pondedHours > 0 ? Math.min(rainCm, afterCm - soakedCm) : rainCm;
    rows.push({ hours, endHours, rainCm, infiltratedCm, runoffCm: rainCm - infiltratedCm, pondedHours });
    runoffCm += rainCm - infiltratedCm;
    soakedCm = afterCm;
  }
  return { rows, infiltratedCm: soakedCm, runoffCm, firstPondedHours };
}
