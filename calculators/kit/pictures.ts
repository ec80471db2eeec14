import type { NumberKeys, RowOf, RowsKeys } from './quantities.ts';
import { isShown } from './state.ts';

/**
 * Pictures are data: a kind and the names of the quantities that it draws. `ui` draws any of them, one beside the other for two managements.
 * V: inputs' values with the results; R: the results.
 */
export type Picture<V, R> =
  | Face<NumberKeys<V>>
  | Shares<NumberKeys<V>>
  | {
      readonly [K in RowsKeys<R>]:
        | Spans<K, keyof RowOf<R[K]> & string>
        | Lines<K, keyof RowOf<R[K]> & string, NumberKeys<V>>
        | Face<NumberKeys<V>, FaceLayers<K, keyof RowOf<R[K]> & string, NumberKeys<V>>>;
    }[RowsKeys<R>];
/** Drawn only where a choice has one of these: a pond for those who have one. */
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
/** One bar cut into its parts, largest quantity whole: where the hay goes. */
export interface Shares<N extends string = string> extends Where {
  readonly kind: 'shares';
  readonly whole: N;
  readonly parts: readonly { readonly of: N; readonly tone: 'kept' | 'lost' | 'water' | 'other' }[];
}
/** Lanes over time: which paddock is grazed when. */
export interface Spans<K extends string = string, C extends string = string> extends Where {
  readonly kind: 'spans';
  readonly rows: K;
  readonly lane: C;
  readonly from: C;
  readonly to: C;
  /** A word for what a span is: `grazed`; and for the time between: `rests`. */
  readonly spanSays: string;
  readonly gapSays: string;
  /** Spans that are planned and should not come to pass are drawn hollow: those whose column `of` holds the word `is`. */
  readonly hollow?: { readonly of: C; readonly is: string; readonly says: string };
}
/** Curves over a common axis. */
export interface Lines<K extends string = string, C extends string = string, N extends string = string> extends Where {
  readonly kind: 'lines';
  readonly rows: K;
  readonly x: C;
  readonly ys: readonly C[];
  /** Many thin curves behind them on the same axes, one for each word in the column `of`: all years behind this one. */
  readonly behind?: {
    readonly rows: string;
    readonly of: string;
    readonly x: string;
    readonly y: string;
    /** What they are, a sentence. */
    readonly says: string;
  };
  /** A place on the common axis that has a name of its own, in the unit of the axis. Left out where it does not lie inside, or where two curves share one plot. */
  readonly mark?: { readonly at: N; readonly says: string };
}
export type PlainPicture = Face | Shares | Spans | Lines;

/** What a face can be about. Each is drawn by a file of its own, so that a page fetches one. */
const subjects = ['water', 'tray', 'lies', 'layers', 'counts', 'hard', 'ring', 'loss', 'pond'] as const;
export type FaceSubject = (typeof subjects)[number];
export const subjectOf = (picture: Face): FaceSubject | undefined => subjects.find((subject) => picture[subject] !== undefined);

/** The pictures of a calculation with these answers, the first one first. */
export const picturesOf = (
  { picture, morePictures }: { readonly picture: PlainPicture | undefined; readonly morePictures: readonly PlainPicture[] },
  values: Readonly<Record<string, unknown>>,
): readonly PlainPicture[] => [...(picture ? [picture] : []), ...morePictures].filter((each) => isShown(each, values));
