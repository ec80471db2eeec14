import { convert, type UnitSystem } from '../../../units/units.ts';

const tapeSteps = { us: [3, 6, 12, 24], si: [5, 10, 20, 50] } as const;
/** Tapes are marked in inches or centimeters. */
export const tapeUnit = { us: 'in', si: 'cm' } as const;
/** Marks on the tape down the soil, below its top: round steps at least so many inches apart, none close to the foot of the cut. */
export function depthMarks(deepIn: number, leastIn: number, system: UnitSystem): readonly number[] {
  const unit = tapeUnit[system];
  const [deep, least] = [convert(deepIn, 'in', unit), convert(leastIn, 'in', unit)];
  const step = tapeSteps[system].find((each) => each >= least) ?? Math.ceil(least / 12) * 12;
  return Array.from({ length: Math.max(0, Math.ceil((deep - least * 0.4) / step) - 1) }, (_, index) => (index + 1) * step);
}
