import type { OfferKey, TableOffer } from '../../../calculators/kit/offers.ts';
import type { Pasture } from '../model/pasture.ts';
import type { Place } from '../model/place.ts';
import type { Visit } from '../model/visit.ts';
import type { WaterPoint } from '../model/waterPoint.ts';
import type { CountedStack, Left } from './hayLeft.ts';

/** What a place says under one name. Numbers are in the unit of the offer. */
export type Offered =
  /** `typed`: as the person wrote it at the place, to be shown again where it says the same in a form. */
  (
    | { readonly amount: number; readonly typed?: string | undefined }
    /** The place's word, then what stands in for it in a list that lacks it. */
    | { readonly words: readonly [string, ...string[]] }
    | { readonly isYes: boolean }
    | { readonly monthDay: string }
    | { readonly day: string }
    | { readonly months: readonly number[] }
    /** A record as its text. */
    | { readonly record: string }
    /** The place has what this would be laid against, and not this: the field is left empty, for the example's would be taken for the reader's. */
    | { readonly isToBeTold: true }
  ) & {
    /** What must be told beside it: `slip of Jun 3, 2026`. */
    readonly says?: string | undefined;
  };
export type OfferMap = ReadonlyMap<OfferKey, Offered>;

/** A row that a table can be given. */
export interface OfferedRow {
  /** What it is, where it must be told that it does not fit: `Lambs`. */
  readonly name: string;
  /** The greater go first where not all fit. */
  readonly size: number;
  readonly cells: OfferMap;
}
export interface Offers {
  readonly single: OfferMap;
  readonly tables: Readonly<Partial<Record<TableOffer, readonly OfferedRow[]>>>;
  /** What no form has room for, in whole sentences; with the offer that it concerns, if it is told only where that one is taken: other stacks of hay. */
  readonly besides: readonly { readonly key?: OfferKey; readonly say: string }[];
}

/** A field that holds what a place gave it, as long as its text is this one. */
export interface Mark {
  /** `areaAc`, `herd.0.countHead`, `stationIn.3`. */
  readonly at: string;
  readonly offer: OfferKey;
  readonly text: string;
  /** What must be told beside it: `slip of Jun 3, 2026`. */
  readonly says?: string | undefined;
}

/** A test of an earlier visit, as the form that is filled reads it. */
export interface EarlierTest {
  /** `2025-06-18` */
  readonly day: string;
  /** Where it was made; none where nobody chose a pasture. */
  readonly pastureIds: readonly string[];
  /** In the unit of the offer. */
  readonly readings: readonly number[];
  /** In words; empty where the test has none. */
  readonly tool: string;
  readonly isOtherSeason: boolean;
}

/** What the record of grazing and rain can put into forms: of the place, and of each of its pastures. */
export interface RecordOffers {
  readonly single: OfferMap;
  readonly ofPasture: ReadonlyMap<string, OfferMap>;
  /** What lies in a stack, and in all of them, less the hay that was fed by this day. */
  readonly balesLeft: (stack: CountedStack, isOnly: boolean) => Left;
  readonly poundsLeft: (stacks: readonly CountedStack[]) => Left | undefined;
}

/** What of a place offers are worked out from, on a day. */
export interface Standing {
  readonly place: Place;
  readonly todayDay: number;
  /** The chosen ones, else all that are grazed. */
  readonly pastures: readonly Pasture[];
  readonly isChosen: boolean;
  /** The one that is meant, where there is but one. */
  readonly pasture: Pasture | undefined;
  readonly water: WaterPoint | undefined;
  /** What its record says, where there is one and a form asks for it. */
  readonly record: RecordOffers | undefined;
  /** Tests of earlier visits, for a form that can stand beside one. */
  readonly earlier: readonly EarlierTest[] | undefined;
  /** The visit that the form was opened from. */
  readonly visit: Pick<Visit, 'day' | 'pastureIds' | 'ground'> | undefined;
}
/** Offers of one subject, or of a few that forms ask for together. */
export type OfferPart = (standing: Standing) => Partial<Offers>;

type Pair = readonly [OfferKey, Offered];
/** One offer, or none where the place does not tell. */
export const amount = (key: OfferKey, value: number | undefined, says?: string): readonly Pair[] =>
  value === undefined ? [] : [[key, { amount: value, says }]];
type Typed = Readonly<Record<string, string>> | undefined;
/** A number of a record, and how it was typed. */
export function told<const K extends string>(
  key: OfferKey,
  of: (Readonly<Partial<Record<K, number | undefined>>> & { readonly typed?: Typed }) | undefined,
  at: K,
  { says, typed = of?.typed }: { readonly says?: string | undefined; readonly typed?: Typed } = {},
): readonly Pair[] {
  const value = of?.[at];
  return value === undefined ? [] : [[key, { amount: value, says, typed: typed?.[at] }]];
}
/** What was typed in a part of a record, by its name there: `prices.`. */
export const typedUnder = (typed: Typed, part: string): Typed =>
  typed && Object.fromEntries(Object.entries(typed).flatMap(([at, text]) => (at.startsWith(part) ? [[at.slice(part.length), text]] : [])));
/** What was worked out is no finer than what it came from. */
export const derived = (key: OfferKey, value: number | undefined, says?: string): readonly Pair[] =>
  value === undefined ? [] : amount(key, Number(value.toPrecision(4)), says);
export const word = (key: OfferKey, words: readonly [string, ...string[]] | string | undefined): readonly Pair[] =>
  words === undefined ? [] : [[key, { words: typeof words === 'string' ? [words] : words }]];
export const monthDay = (key: OfferKey, value: string | undefined): readonly Pair[] => (value === undefined ? [] : [[key, { monthDay: value }]]);
export const day = (key: OfferKey, value: string | undefined): readonly Pair[] => (value === undefined ? [] : [[key, { day: value }]]);
export const yesNo = (key: OfferKey, isYes: boolean): readonly Pair[] => [[key, { isYes }]];
export const offerMap = (...pairs: readonly (readonly Pair[])[]): OfferMap => new Map(pairs.flat());

/** The sum, if every part is known and there is one. */
export const sumIfAll = (parts: readonly (number | undefined)[]): number | undefined =>
  parts.length === 0
    ? undefined
    : parts.reduce<number | undefined>((sum, each) => (sum === undefined || each === undefined ? undefined : sum + each), 0);
/** The mean by weight, if all is known and anything weighs. */
export function meanIfAll(parts: readonly { readonly value: number | undefined; readonly weight: number | undefined }[]): number | undefined {
  const weight = sumIfAll(parts.map((each) => each.weight));
  const total = sumIfAll(parts.map((each) => (each.value === undefined || each.weight === undefined ? undefined : each.value * each.weight)));
  return weight === undefined || total === undefined || weight <= 0 ? undefined : total / weight;
}
