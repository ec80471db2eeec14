import { need } from '../need.ts';

/** How a laboratory names nitrate: as its nitrogen, as the ion, or as potassium nitrate. */
export type NitrateForm = 'no3-n' | 'no3' | 'kno3';
export type SlipUnit = 'ppm' | 'percent';
export type SlipBasis = 'dry' | 'as-fed';

// Standard atomic weights, abridged (IUPAC 2021).
const nitrogen = 14.007;
const oxygen = 15.999;
const potassium = 39.098;
const perNitrogen: Readonly<Record<NitrateForm, number>> = {
  'no3-n': 1,
  no3: (nitrogen + 3 * oxygen) / nitrogen,
  kno3: (potassium + nitrogen + 3 * oxygen) / nitrogen,
};

/**
 * A slip's nitrate as nitrate nitrogen in dry matter: N = x u / f / (d / 100), with x = `amount`, u = 1 for ppm and 10,000 for percent, f = 1 for NO3-N,
 * 4.427 for NO3, 7.218 for KNO3 by `form`, and d = `dryMatterPercent`, which divides only a value on the as-fed basis.
 * @param options.amount - Value as the slip prints it; 0 or more
 * @param options.form - What it is counted as: 'no3-n', 'no3' or 'kno3'
 * @param options.unit - Its unit: 'ppm' (the same as mg/kg) or 'percent'
 * @param options.basis - 'dry' for dry matter, 'as-fed' for the feed as it came
 * @param options.dryMatterPercent - Dry matter of the feed, percent; above 0, at most 100
 * @returns Nitrate nitrogen, ppm of dry matter
 * @throws RangeError if a value is outside its range
 * @source anderson-nitrate-2016, the two ways of reporting
 * @example nitrateNitrogenPpm({ amount: 0.44, form: 'no3', unit: 'percent', basis: 'dry', dryMatterPercent: 90 }) //=> 994
 */
export function nitrateNitrogenPpm({
  amount,
  form,
  unit,
  basis,
  dryMatterPercent,
}: {
  readonly amount: number;
  readonly form: NitrateForm;
  readonly unit: SlipUnit;
  readonly basis: SlipBasis;
  readonly dryMatterPercent: number;
}): number {
  need('nitrateNitrogenPpm', 'amount', amount, { atLeast: 0 });
  need('nitrateNitrogenPpm', 'dryMatterPercent', dryMatterPercent, { above: 0, atMost: 100 });
  const ppm = (amount * (unit === 'percent' ? 10_000 : 1)) / perNitrogen[form];
  return basis === 'dry' ? ppm : ppm / (dryMatterPercent / 100);
}

/**
 * Nitrate nitrogen written in another form: x = N f, with N = `nitrogenPpm` and f = 1, 4.427 or 7.218 by `form`.
 * @param nitrogenPpm - Nitrate nitrogen, ppm or mg/L; 0 or more
 * @param form - Form wanted: 'no3-n', 'no3' or 'kno3'
 * @returns Nitrate in that form, ppm or mg/L
 * @throws RangeError if the amount is negative
 * @source virginia-spes-201, Table 1
 * @example nitrateAsPpm(1000, 'no3') //=> 4427
 */
export function nitrateAsPpm(nitrogenPpm: number, form: NitrateForm): number {
  need('nitrateAsPpm', 'nitrogenPpm', nitrogenPpm, { atLeast: 0 });
  return nitrogenPpm * perNitrogen[form];
}
