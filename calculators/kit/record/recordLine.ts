/**
 * What fell up to and with `day`. The lines of a record stand in order of their days and never overlap. A day without a line was not read:
 * it is missing, never dry. A dry day that was read has a line with 0.
 */
export interface RecordLine {
  readonly day: number;
  readonly amount: number;
  /** Days that the amount covers, the last of them `day`: a total over several days, a whole month. Left out for one day. */
  readonly days?: number;
  /** The day’s temperatures, °F, where the record has them and the form takes them. */
  readonly highF?: number;
  readonly lowF?: number;
}
