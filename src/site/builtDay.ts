import { localDay } from '../../calculators/units/days.ts';
import { isoDay } from '../../calculators/units/printQuantity.ts';

/** The day of this build, by which a device's clock is doubted. `SOURCE_DATE_EPOCH` (reproducible-builds.org, seconds) fixes it, so that builds of two days are the same bytes. */
const epochSeconds = process.env['SOURCE_DATE_EPOCH'];
export const builtDay: string = isoDay(localDay(epochSeconds === undefined ? new Date() : new Date(Number(epochSeconds) * 1000)));
