import type { Text } from '../../../calculators/kit/state.ts';

export const hasSameRows = (one: Text | undefined, other: Text | undefined): boolean =>
  typeof one !== 'object' || typeof other !== 'object' || one.length === other.length;
