import type { JSX } from 'preact';
import type { Calculator, Outcome } from '../../../kit/define.ts';
import type { Face } from '../../../kit/pictures.ts';
import { printName, toldNumber } from '../../../kit/print.ts';
import { roundTogether } from '../../../kit/wholes.ts';
import { printIn, printNumber } from '../../../units/printQuantity.ts';
import type { UnitSystem } from '../../../units/units.ts';
import { between } from '../noise.ts';
import { sizeIn } from '../readings.ts';
import type { Ground } from './drawGround.tsx';
import type { Place, Room, Wanted } from './labels.ts';

/** The parts of a sum and what they come to, with the class of the shape that each is drawn as. */
export interface Sum {
  readonly parts: readonly { readonly kind: string; readonly figure: string; readonly says: string; readonly mark?: string | undefined }[];
  readonly total: string;
  /** What the whole is, behind its unit. */
  readonly of: string;
}
/** One face, read from an outcome: what is drawn, and what is said on it. */
export interface Reading {
  readonly ground: Ground;
  /** Rain that comes down as a curtain as wide as it is deep, and what of it runs off: they set one scale for both faces. */
  readonly curtainIn?: number;
  readonly ranIn?: number;
  /** Of the air, of the ground, and of what lies under a tray. */
  readonly heights: { readonly sky: number; readonly soil: number; readonly foot?: number };
  /** How deep the cut must go, or how deep it goes. */
  readonly needIn: number;
  readonly isExact?: boolean;
  /** No more pixels to an inch than this: what must be seen whole. */
  readonly mostPerIn?: (width: number) => number;
  readonly hasTape: boolean;
  readonly title?: { readonly is: string; readonly title: string };
  readonly sum?: Sum | undefined;
  /** One sentence with every figure. */
  readonly told: string;
  readonly caption: string;
  /** Between the plants behind and before, turned outward on the left of a pair; and the same, not turned. */
  readonly flows?: (room: Room) => JSX.Element;
  readonly shapes?: (room: Room) => JSX.Element;
  readonly labels?: (room: Room) => readonly Wanted[];
}
export interface FaceProps {
  readonly picture: Face;
  readonly calculator: Calculator;
  readonly outcome: Outcome;
  readonly system: UnitSystem;
}

/** What a picture says of one outcome: mostly one face, and two where it sets plowed ground beside. */
export type ReadFace = (props: FaceProps, isCompared: boolean) => readonly Reading[];

/** Sizes and words of one outcome, by name. */
export const tellerOf = ({ calculator, outcome, system }: FaceProps) => ({
  size: (name: string | undefined): number => (name === undefined ? 0 : sizeIn(outcome, name)),
  print: (name: string): string => printName(calculator, outcome.values, name, system),
  /** The number alone. */
  bare: (name: string): string => {
    const told = toldNumber(calculator, outcome.values, name, system);
    return told ? printNumber(told.value, told.digits) : '';
  },
  isTold: (name: string): boolean => outcome.shown.includes(name),
});

/** The parts and their whole, inches in hundredths, rounded so that they add up as printed. */
export function sumOf(
  { calculator, outcome, system }: FaceProps,
  whole: string,
  parts: readonly { readonly name: string; readonly kind: string; readonly says: string; readonly mark?: string }[],
  of = '',
): Sum | undefined {
  const all = toldNumber(calculator, outcome.values, whole, system);
  if (!all) return undefined;
  const digits = all.unit === 'in' ? Math.max(2, all.digits) : all.digits;
  const size = sizeIn(outcome, whole);
  const sizes = roundTogether(
    parts.map(({ name }) => (size > 0 ? (sizeIn(outcome, name) / size) * all.value : 0)),
    all.value,
    digits,
  );
  return {
    parts: parts.map(({ kind, says, mark }, index) => ({ kind, says, mark, figure: printNumber(sizes[index] ?? Number.NaN, digits) })),
    total: printIn(all.value, all.unit, digits),
    of,
  };
}

/** Where crumbs, roots and mulch have made them; below blocks, and below those blocks with wider cracks. A drawing, as the captions say. */
function layersBy(open: number): Ground['layers'] {
  const crumbsIn = 2 + 7 * open;
  return [
    { toIn: crumbsIn, grain: 'crumbs' },
    { toIn: crumbsIn + 11, grain: 'blocks' },
    { toIn: 999, grain: 'cracked' },
  ];
}
/** Ground under so much cover. */
export const groundBy = (cover: number, more: Partial<Ground> = {}): Ground => ({
  shares: { plant: cover, litter: 0, rock: 0, bare: 1 - cover },
  open: cover,
  layers: layersBy(more.open ?? cover),
  rootsIn: 2.5 + 6 * cover,
  wetIn: 0,
  lostIn: 0,
  rainIn: 0,
  ...more,
});
/** An inch, as people of the other system say it. */
export const anInch = ({ system }: FaceProps): string => (system === 'us' ? 'an inch' : '25 mm');
/** Where nobody counted, half of the ground is drawn covered. */
export const coverOf = (props: FaceProps): number =>
  props.picture.coverPercent === undefined ? 0.5 : between(0, sizeIn(props.outcome, props.picture.coverPercent) / 100, 1);

export const place = (x: number, y: number, on: string, anchor: Place['anchor'] = 'middle'): Place => ({ x, y, on, anchor });
/** A figure stands at 18 px, bold; a name at 16. */
export const figure = (words: string, ...places: Wanted['places']): Wanted => ({ words: [words], size: 18, places });
export const name = (words: readonly string[], ...places: Wanted['places']): Wanted => ({ words, size: 16, places });
