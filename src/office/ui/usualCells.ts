import type { NumberInput } from '../../../calculators/kit/inputs.ts';
import type { UsualName } from '../../../calculators/kit/usual.ts';
import type { UnitName } from '../../../calculators/units/units.ts';
import type { OfficeField } from '../model/field.ts';

const hay = ['hayUsdPerTon', 'usd/ton'] as const;
const calf = ['calfUsdPerCwt', 'usd/cwt'] as const;
const cow = ['cowUsd', 'usd'] as const;
const start = ['swardIn', 'in'] as const;
const stop = ['stubbleIn', 'in'] as const;
const forage = ['forageLbPerAc', 'lb/ac'] as const;
/** What a value usually is, as the forms ask that it fills: `content/local/fields.json` says which. */
const usualOf: Readonly<Record<string, readonly [usual: UsualName, unit: UnitName]>> = {
  lowUsdPerTon: hay,
  likelyUsdPerTon: hay,
  highUsdPerTon: hay,
  calfEarlyUsdPerCwt: calf,
  calfUsualUsdPerCwt: calf,
  cowSaleUsd: cow,
  buyBackLowUsd: cow,
  buyBackLikelyUsd: cow,
  buyBackHighUsd: cow,
  usdPerLoad: ['freightUsdPerLoad', 'usd/load'],
  percent: ['interestPercent', 'pct'],
  'startIn.0': start,
  'startIn.1': start,
  'stopIn.0': stop,
  'stopIn.1': stop,
  poorLbPerAc: forage,
  normalLbPerAc: forage,
  goodLbPerAc: forage,
};
/** The cell by which a number of the office is asked about where it looks wrong; nothing where no form asks. */
export function usualCell({ at, label }: Pick<OfficeField, 'at' | 'label'>): NumberInput | undefined {
  const known = usualOf[at];
  if (known === undefined) return undefined;
  const [usual, unit] = known;
  return { kind: 'number', label, unit, usual, symbol: '', min: 0, max: Number.MAX_VALUE, default: 0, belongsTo: 'place' };
}
