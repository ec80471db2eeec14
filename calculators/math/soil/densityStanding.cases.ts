import { checkList } from '../checks.ts';
import { densityStanding } from './densityStanding.ts';

const sheet = { source: 'nrcs-bulk-density-sheet', where: 'table 1, read by hand', seen: 'computed' } as const;
const florida = { source: 'ufl-critical-bulk-density', where: 'critical bulk density values, read by hand', seen: 'computed' } as const;
const lecture = {
  source: 'illinois-nres201-2011',
  where: 'bulk densities when roots begin to have problems, read by hand',
  seen: 'computed',
} as const;
const ours = (...of: Parameters<typeof densityStanding>) => densityStanding(...of) ?? 'not named';

export default checkList('densityStanding', [
  { what: 'sandy soil, 1.55: ideal for plant growth', ours: () => ours('three-groups', 'sand', 1.55), printed: 'open', ...sheet },
  { what: 'silty soil, 1.70: restricts root growth', ours: () => ours('three-groups', 'silt-loam', 1.7), printed: 'stopping', ...sheet },
  { what: 'clayey soil, 1.30: neither ideal nor restricting', ours: () => ours('three-groups', 'clay', 1.3), printed: 'between', ...sheet },
  { what: 'loam, 1.44: below the critical range', ours: () => ours('critical-range', 'loam', 1.44), printed: 'open', ...florida },
  { what: 'loam, 1.50: within the critical range', ours: () => ours('critical-range', 'loam', 1.5), printed: 'limiting', ...florida },
  { what: 'sand, 1.80: beyond the critical value', ours: () => ours('critical-range', 'sand', 1.8), printed: 'stopping', ...florida },
  { what: 'clay, 1.45: roots begin to have problems', ours: () => ours('by-class', 'clay', 1.45), printed: 'limiting', ...lecture },
  { what: 'sandy loam, 1.60: below the density of problems', ours: () => ours('by-class', 'sandy-loam', 1.6), printed: 'open', ...lecture },
]);
