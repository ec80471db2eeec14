import type { JSX } from 'preact';
import type { Calculator, Outcome } from '../../kit/define.ts';
import type { Face } from '../../kit/pictures.ts';
import { printName, toldNumber } from '../../kit/print.ts';
import { roundTogether } from '../../kit/wholes.ts';
import { printIn, printNumber } from '../../units/printQuantity.ts';
import type { UnitName, UnitSystem } from '../../units/units.ts';
import type { Ground } from './FaceGround.tsx';
import type { Place, Wanted } from './labels.ts';
import { between } from './noise.ts';
import { sizeIn } from './readings.ts';
import type { Water } from './water.tsx';

/** The parts of a sum and what they come to, with the class of the shape that each is drawn as. */
export interface Sum {
  readonly parts: readonly { readonly kind: string; readonly figure: string; readonly says: string }[];
  readonly total: string;
  /** What the whole is, behind its unit. */
  readonly of: string;
}
/** Where things may stand on a face, pixels. */
export interface Room {
  readonly id: string;
  readonly width: number;
  readonly sky: number;
  readonly soil: number;
  /** Pixels to an inch of ground. */
  readonly perIn: number;
  /** Free on the inner side, before the curtain. */
  readonly from: number;
  /** One of two narrow faces. */
  readonly isNarrow: boolean;
}
/** One face, read from an outcome: what is drawn, and what is said on it. */
export interface Reading {
  readonly ground: Ground;
  readonly rainIn: number;
  readonly water?: Water;
  /** Height of the air, of the ground and of what lies under a tray, alone and in a pair. */
  readonly heights: { readonly sky: readonly [number, number]; readonly soil: readonly [number, number]; readonly foot?: number };
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
  readonly shapes?: (room: Room) => JSX.Element;
  readonly labels?: (room: Room) => readonly Wanted[];
}
export interface FaceProps {
  readonly picture: Face;
  readonly calculator: Calculator;
  readonly outcome: Outcome;
  readonly system: UnitSystem;
}

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

const finest: Partial<Record<UnitName, number>> = { in: 2 };
/** The parts and their whole, inches in hundredths, rounded so that they add up as printed. */
export function sumOf(
  { calculator, outcome, system }: FaceProps,
  whole: string,
  parts: readonly { readonly name: string; readonly kind: string; readonly says: string }[],
  of = '',
): Sum | undefined {
  const all = toldNumber(calculator, outcome.values, whole, system);
  if (!all) return undefined;
  const digits = Math.max(all.digits, finest[all.unit] ?? all.digits);
  const size = sizeIn(outcome, whole);
  const sizes = roundTogether(
    parts.map(({ name }) => (size > 0 ? (sizeIn(outcome, name) / size) * all.value : 0)),
    all.value,
    digits,
  );
  return {
    parts: parts.map(({ kind, says }, index) => ({ kind, says, figure: printNumber(sizes[index] ?? Number.NaN, digits) })),
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
    { toIn: Number.POSITIVE_INFINITY, grain: 'cracked' },
  ];
}
/** Ground under so much cover. */
export const groundBy = (cover: number, more: Partial<Ground> = {}): Ground => ({
  shares: { plant: cover, litter: 0, rock: 0, bare: 1 - cover },
  open: cover,
  layers: layersBy(more.open ?? cover),
  rootsIn: 2.5 + 6 * cover,
  tapIn: 0,
  wetIn: 0,
  filled: [],
  hard: undefined,
  lostIn: 0,
  ring: undefined,
  gap: undefined,
  isRaining: false,
  ...more,
});
/** An inch, as people of the other system say it. */
export const anInch = ({ system }: FaceProps): string => (system === 'us' ? 'an inch' : '25 mm');
/** Where nobody counted, half of the ground is drawn covered. */
export const coverOf = (props: FaceProps): number =>
  props.picture.coverPercent === undefined ? 0.5 : between(0, sizeIn(props.outcome, props.picture.coverPercent) / 100, 1);

export const place = (x: number, y: number, on: string, anchor: Place['anchor'] = 'middle'): Place => ({ x, y, on, anchor });
