import { localDay } from '../../../calculators/units/days.ts';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import type { View } from './view.ts';

export const today = ({ session }: View): string => isoDay(localDay(session.now));
