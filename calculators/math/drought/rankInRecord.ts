import { need } from '../need.ts';

/** Where an amount stands, in counts that even a short record can bear. */
export interface RankInRecord {
  readonly years: number;
  /** Years of the record with less. */
  readonly drierYears: number;
  /** Years of the record with the same. */
  readonly sameYears: number;
  /** Place from the dry end, 1 for the driest, shared places taken together. */
  readonly rank: number;
}

/**
 * Counts the years of a record that were drier than an amount, with `amount` and `record`: «3 of 30», the honest answer while the record is short.
 * @param amount - Rain of the period in question, any one unit; at least 0
 * @param record - Rain of the same period in each year of the record, same unit; one year or more
 * @returns Years in all, drier, the same, and the rank
 * @throws RangeError if the record is empty or a value is outside its range
 * @source our own, plain counting
 * @example rankInRecord(2, [1, 2, 3]) //=> ({ years: 3, drierYears: 1, sameYears: 1, rank: 2 })
 */
export function rankInRecord(amount: number, record: readonly number[]): RankInRecord {
  need('rankInRecord', 'amount', amount, { atLeast: 0 });
  need('rankInRecord', 'record.length', record.length, { atLeast: 1 });
  for (const each of record) need('rankInRecord', 'record', each, { atLeast: 0 });
  const drierYears = record.filter((each) => each < amount).length;
  return { years: record.length, drierYears, sameYears: record.filter((each) => each === amount).length, rank: drierYears + 1 };
}
