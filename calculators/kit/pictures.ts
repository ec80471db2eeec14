import type { NumberKeys, RowOf, RowsKeys } from './quantities.ts';
import { isShown } from './state.ts';

/**
 * Pictures are data: a kind and the names of the quantities that it draws. `ui` draws any of them, one beside the other for two managements.
 * V: inputs' values with the results; R: the results.
 */
export type Picture<V, R> =
  | Face<NumberKeys<V>>
  | Shares<NumberKeys<V>>
  | DaySpans<NumberKeys<V>>
  | {
      readonly [K in RowsKeys<R>]:
        | RowSpans<K, keyof RowOf<R[K]> & string, NumberKeys<V>>
        | Bars<K, keyof RowOf<R[K]> & string>
        | Lines<K, keyof RowOf<R[K]> & string, NumberKeys<V>>
        | Strip<K, keyof RowOf<R[K]> & string, NumberKeys<V> | (keyof RowOf<R[K]> & string)>
        | Face<NumberKeys<V>, FaceLayers<K, keyof RowOf<R[K]> & string, NumberKeys<V>>>;
    }[RowsKeys<R>];
/** Drawn only where a choice or a word among the results is one of these: a pond for those who have one. */
interface Where {
  readonly shownWhen?: Readonly<Record<string, string | readonly string[]>>;
}

/**
 * A cut through the ground. What grows on it, what the water did, how it lies in layers: each part is drawn if its numbers are named. One of `water`,
 * `tray`, `lies`, `layers`, `counts`, `hard`, `ring`, `loss` and `pond` is what the picture is about.
 */
export interface Face<N extends string = string, L = FaceLayers> extends Where {
  readonly kind: 'face';
  /** Covered ground, percent: exactly that share of the cut carries plants. */
  readonly coverPercent?: N;
  readonly water?: FaceWater<N>;
  readonly tray?: FaceTray<N>;
  /** A depth of water, inches, as if it all lay on the ground, and what that comes to. */
  readonly lies?: { readonly depth: N; readonly amount: N };
  readonly layers?: L;
  /** Steps of a count that met each kind: as many strips of the cut. */
  readonly counts?: { readonly plant: N; readonly litter: N; readonly rock: N; readonly bare: N; readonly all: N; readonly coveredPercent: N };
  /** How tight the ground is: its density and pores, and how deep a probe met hard ground (0 if it never did). */
  readonly hard?: { readonly density: N; readonly poresPercent: N; readonly fromIn: N };
  /** A ring in the ground: its width, how deep it stands, water of a pouring, and how fast that went in. Inches. */
  readonly ring?: { readonly acrossIn: N; readonly insertedIn: N; readonly waterIn: N; readonly inchMin: N; readonly rate: N };
  /** Thickness that leaves in thirty years, inches, and the years to an inch, of this ground and of plowed ground. */
  readonly loss?: FaceLoss<N> & { readonly plowed: FaceLoss<N> };
  /** A pond, cut through: all that is in it, what is drunk, what sun and ground take, what is left, how long it lasts, and the depth that must stay. */
  readonly pond?: { readonly all: N; readonly drunk: N; readonly lost: N; readonly left: N; readonly lastsDays: N; readonly deadDepth: N };
}
/** Rain and its parts, which add up to it. */
export interface FaceWater<N extends string = string> {
  readonly fellIn: N;
  readonly ranOffIn: N;
  /** What wets leaves, litter and hollows before any runs. */
  readonly heldIn?: N;
  readonly soakedIn: N;
  /** Water stands on the ground from then on. */
  readonly standsAfter?: N;
  /** Share of the ground that the water could fill: then it is drawn wet as deep as that gives, and else as dry loam wets. */
  readonly roomShare?: N;
}
/** Water put on a tray of soil: how deep it was, how deep the soil is, and the jars, which with what stayed add up to what was poured. */
export interface FaceTray<N extends string = string> {
  readonly rainIn: N;
  readonly soilIn: N;
  readonly poured: N;
  readonly ranOff: N;
  readonly cameThrough: N;
  readonly stayed: N;
}
export interface FaceLoss<N extends string = string> {
  readonly lostIn: N;
  readonly inchYears: N;
}
/** The ground layer by layer, as it was dug: how full each is and how deep roots reach. Depths in inches. */
export interface FaceLayers<K extends string = string, C extends string = string, N extends string = string> {
  /** One row a layer, from the top down. */
  readonly rows: K;
  readonly top: C;
  readonly thickness: C;
  readonly filledPercent: C;
  readonly mostRoots: N;
  readonly deepestRoot: N;
  /** Water that the root zone holds when full, what is in it, what is missing. */
  readonly holds: N;
  readonly has: N;
  readonly missing: N;
}
/** How a part is drawn: solid, plain, of dots or lines; hatched in clay what is lost; in waves what is water; as bales what is in the barn and what is bought. */
export type Tone = 'kept' | 'lost' | 'water' | 'other' | 'dots' | 'lines' | 'own' | 'bought';
/** A whole bar and what it is cut into. */
export interface ShareBar<N extends string = string> {
  /** Stands over the bar, with any `{number}` in it. Left out it is the name of the whole with its number. */
  readonly title?: string;
  /** Left out where it is all of something, 100 percent: then it is what the parts come to. A bar of nothing is not drawn. */
  readonly whole?: N;
  /**
   * In order from the left. `says` is short enough to stand at a piece of the bar; left out it is the part's own name. One that `stands` is told as it is
   * by itself elsewhere, and the others take what rounding leaves.
   */
  readonly parts: readonly { readonly of: N; readonly tone: Tone; readonly says?: string; readonly stands?: true }[];
}
/** Whole bars to one scale, cut into their parts: where the hay comes from and where it goes. */
export interface Shares<N extends string = string> extends ShareBar<N>, Where {
  readonly kind: 'shares';
  readonly beside?: readonly ShareBar<N>[];
}
/** The day that matters, a line with words, with any `{number}` in them. */
export interface SpanMark<N extends string = string> extends Where {
  readonly at: N;
  readonly says: string;
}
/** Lanes over time, one for each name in the column `lane`: which paddock is grazed when. */
export interface RowSpans<K extends string = string, C extends string = string, N extends string = string> extends Where {
  readonly kind: 'spans';
  readonly rows: K;
  readonly lane: C;
  /** A column, or one day for all of them. */
  readonly from: C | { readonly of: N };
  readonly to: C;
  /** The column told before the name of the lane, which then stands over its bar: names that need room. */
  readonly told?: C;
  /** A word for what a span is: `grazed`; and for the time between, where there is any: `rests`. */
  readonly spanSays: string;
  readonly gapSays: string;
  /** Spans that are planned and should not come to pass are drawn hollow: those whose column `of` holds the word `is`. */
  readonly hollow?: { readonly of: C; readonly is: string; readonly says: string };
  readonly mark?: SpanMark<N>;
}
/** Lanes that all begin with today and are so many days long: how long the grass lasts, by how much there is. */
export interface DaySpans<N extends string = string> extends Where {
  readonly kind: 'spans';
  readonly lanes: readonly { readonly of: N; readonly says: string }[];
  readonly spanSays: string;
  readonly mark?: SpanMark<N>;
}
export type Spans<K extends string = string, C extends string = string, N extends string = string> = RowSpans<K, C, N> | DaySpans<N>;
/** A bar for each row against what is usual: rain by month. What a bar is short is hatched. */
export interface Bars<K extends string = string, C extends string = string> extends Where {
  readonly kind: 'bars';
  readonly rows: K;
  /** A day that tells the month. */
  readonly x: C;
  readonly y: C;
  readonly usual: C;
  /** What the line across a bar and the hatch are: `the usual month`, `short of it`. */
  readonly usualSays: string;
  readonly shortSays: string;
}
/** Rows that lack readings are hatched: those whose column `of` holds more than `above`. `says` stands under the picture where there is one. */
export interface Gaps<C extends string = string> {
  readonly of: C;
  readonly above: number;
  readonly says: string;
}
/** Rows at which the column `of` holds the word `is` bear a mark on the first curve. `says` stands under the picture where there is one. */
export interface RowMark<C extends string = string> {
  readonly of: C;
  readonly is: string;
  readonly as: 'wedge' | 'cross';
  readonly says: string;
}
/** Curves over a common axis: the first, which two managements are compared by, then others to read it against. */
export interface Lines<K extends string = string, C extends string = string, N extends string = string> extends Where {
  readonly kind: 'lines';
  readonly rows: K;
  readonly x: C;
  readonly ys: readonly C[];
  /** What stands at the curves instead of the names of their columns, in order. */
  readonly says?: readonly string[];
  /** The reader's own answer on the common axis, in the unit of its column, and the result there. */
  readonly you?: { readonly at: N; readonly value: N };
  /** A place on the common axis that has a name of its own, in the unit of the axis. Left out where it does not lie inside, or where two sides do not share it. */
  readonly mark?: SpanMark<N>;
  readonly rowMarks?: readonly RowMark<C>[];
}
/** Lanes over one span of days, and the ground on any of them: the reader moves along it. */
export interface Strip<K extends string = string, C extends string = string, N extends string = string> extends Where {
  readonly kind: 'strip';
  readonly rows: K;
  readonly x: C;
  readonly lanes: readonly { readonly of: C; readonly as: 'curve' | 'bars' }[];
  /** A cut through the ground on the chosen day: it names columns of the rows as well, and its layers are the chosen row alone. */
  readonly face: Face<N, FaceLayers<K, C, N>>;
  readonly gaps?: Gaps<C>;
}
export type PlainPicture = Face | Shares | Spans | Bars | Lines | Strip;

/** What a face can be about. Each is drawn by a file of its own, so that a page fetches one. */
const subjects = ['water', 'tray', 'lies', 'layers', 'counts', 'hard', 'ring', 'loss', 'pond'] as const;
export type FaceSubject = (typeof subjects)[number];
export const subjectOf = (picture: Face): FaceSubject | undefined => subjects.find((subject) => picture[subject] !== undefined);

interface Pictured {
  readonly picture: PlainPicture | undefined;
  readonly morePictures: readonly PlainPicture[];
}
export const allPictures = ({ picture, morePictures }: Pictured): readonly PlainPicture[] => [...(picture ? [picture] : []), ...morePictures];
/** The pictures of a calculation with these answers, the first one first. */
export const picturesOf = (of: Pictured, values: Readonly<Record<string, unknown>>): readonly PlainPicture[] =>
  allPictures(of).filter((each) => isShown(each, values));
