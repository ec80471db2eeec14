import { localDay } from '../../../calculators/units/days.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import type { View } from './view.ts';

/** The day of this device. */
export const today = ({ session }: Pick<View, 'session'>): string => isoDay(localDay(session.now));
