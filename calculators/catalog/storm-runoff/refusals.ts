import { conditionOf, type Ground } from './compute.ts';
import { hasNumber } from './covers.ts';

export const noGroupA =
  'The dry-range list has no number for group A ground, except under desert shrub. Choose B, C or D, or give a curve number of your own.';

/** The dry-range table leaves group A empty. */
export const lacksNumber = (ground: Ground): boolean => ground.cover !== 'own' && !hasNumber(ground.cover, conditionOf(ground), ground.soilGroup);
