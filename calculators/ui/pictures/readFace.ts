import type { Calculator, Outcome } from '../../kit/define.ts';
import type { Face, FaceLoss } from '../../kit/pictures.ts';
import { printName, toldNumber } from '../../kit/print.ts';
import { roundTogether } from '../../kit/wholes.ts';
import { printIn, printNumber } from '../../units/printQuantity.ts';
import type { UnitName, UnitSystem } from '../../units/units.ts';
import type { Ground } from './FaceGround.tsx';
import type { Wanted } from './labels.ts';
import { between } from './noise.ts';
import { rowsIn, sizeIn } from './readings.ts';
import type { Band, BandKind, Water } from './water.tsx';

/** Dry loam holds about 2 in of water a foot between dry and wet to the touch, so an inch wets about 6 in: common practice. The picture's caption says so. */
export const wetInPerIn = 6;
/** Deeper than this nothing of it happens near the surface. */
const mostIn = 60;
/** Nobody counted: half. */
const uncounted = 0.5;
export const thirtyYears = 30;
/** Past a foot the topsoil is long gone and no thickness is told. */
const mostLostIn = 12;

/** Words in a band or a sum, with what they are drawn like. */
export interface SumPart {
  readonly kind: string;
  readonly figure: string;
  readonly says: string;
}
export interface Sum {
  readonly parts: readonly SumPart[];
  readonly total: string;
}
/** Where a label may stand: the face's width, its air, and pixels to an inch of ground. */
export interface Room {
  readonly width: number;
  readonly sky: number;
  readonly soil: number;
  readonly perIn: number;
  readonly isPair: boolean;
}
/** One face, read from an outcome: what is drawn and what is said on it. */
export interface Reading {
  readonly ground: Ground;
  readonly water: Water | undefined;
  /** How deep the cut must go. */
  readonly needIn: number;
  readonly sum: Sum | undefined;
  /** One sentence with every figure. */
  readonly told: string;
  readonly labels: (room: Room) => readonly Wanted[];
}
export interface Teller {
  readonly size: (name: string | undefined) => number;
  readonly print: (name: string) => string;
  /** The number alone. */
  readonly bare: (name: string) => string;
  readonly isTold: (name: string) => boolean;
}
export const tellerOf = (calculator: Calculator, outcome: Outcome, system: UnitSystem): Teller => ({
  size: (name) => (name === undefined ? 0 : sizeIn(outcome, name)),
  print: (name) => printName(calculator, outcome.values, name, system),
  bare: (name) => {
    const told = toldNumber(calculator, outcome.values, name, system);
    return told ? printNumber(told.value, told.digits) : '';
  },
  isTold: (name) => outcome.shown.includes(name) || calculator.inputs[name] !== undefined,
});

const finer: Partial<Record<UnitName, number>> = { in: 2 };
/** The parts and their whole, inches in hundredths, rounded so that they add up as printed. */
export function sumOf(
  calculator: Calculator,
  outcome: Outcome,
  system: UnitSystem,
  { whole, parts }: { readonly whole: string; readonly parts: readonly { readonly name: string; readonly kind: string; readonly says: string }[] },
): Sum | undefined {
  const all = toldNumber(calculator, outcome.values, whole, system);
  const told = parts.map((part) => ({ ...part, told: toldNumber(calculator, outcome.values, part.name, system) }));
  if (!all) return undefined;
  const digits = Math.max(all.digits, finer[all.unit] ?? all.digits);
  const per = sizeIn(outcome, whole) > 0 ? convertedPer(all.value, sizeIn(outcome, whole)) : 1;
  const total = Number(all.value.toFixed(Math.max(0, digits)));
  const sizes = roundTogether(
    told.map(({ name }) => sizeIn(outcome, name) * per),
    total,
    digits,
  );
  return {
    parts: told.map(({ kind, says }, index) => ({ kind, says, figure: printNumber(sizes[index] ?? 0, digits) })),
    total: printIn(all.value, all.unit, digits),
  };
}
/** One unit for whole and parts: what the reader's unit is to the one that they are kept in. */
const convertedPer = (shown: number, kept: number): number => shown / kept;

const plain = (share: number): Ground['shares'] => ({ plant: share, litter: 0, rock: 0, bare: 1 - share });
/** Where crumbs, roots and mulch have made them; below blocks, and below those blocks with wider cracks. A drawing, as the caption says. */
function layersBy(open: number): Ground['layers'] {
  const crumbsIn = 2 + 7 * open;
  return [
    { toIn: crumbsIn, grain: 'crumbs' },
    { toIn: crumbsIn + 11, grain: 'blocks' },
    { toIn: Number.POSITIVE_INFINITY, grain: 'cracked' },
  ];
}
function groundBy(cover: number, more: Partial<Ground> = {}): Ground {
  return {
    shares: plain(cover),
    open: cover,
    layers: layersBy(cover),
    rootsIn: 2.5 + 6 * cover,
    tapIn: 0,
    wetIn: 0,
    filled: [],
    hard: undefined,
    lostIn: 0,
    ringIn: 0,
    isRaining: false,
    ...more,
  };
}
const coverOf = (picture: Face, { size }: Teller): number =>
  picture.coverPercent === undefined ? uncounted : between(0, size(picture.coverPercent) / 100, 1);

const bandWords: Readonly<Record<BandKind, readonly string[]>> = {
  held: ['held on leaves', 'held'],
  soaked: ['soaked in'],
  through: ['came out below', 'below'],
  ran: ['ran off'],
};
const inTray: Readonly<Partial<Record<BandKind, readonly string[]>>> = { soaked: ['stayed in it', 'stayed'] };

export interface FaceProps {
  readonly picture: Face;
  readonly calculator: Calculator;
  readonly outcome: Outcome;
  readonly system: UnitSystem;
}

function readWater({ picture, calculator, outcome, system }: FaceProps, water: NonNullable<Face['water']>): Reading {
  const teller = tellerOf(calculator, outcome, system);
  const { size, print, bare } = teller;
  const words = water.trayIn === undefined ? bandWords : { ...bandWords, ...inTray };
  const named = (
    [
      ['held', water.held],
      ['soaked', water.soakedIn],
      ['through', water.cameThrough],
      ['ran', water.ranOff],
    ] as const
  ).flatMap(([kind, name]) => (name === undefined ? [] : [{ kind, name }]));
  const rainIn = size(water.depthIn === undefined ? water.fell : water.depthIn);
  const parted = named.reduce((sum, { name }) => sum + size(name), 0);
  // Jars are read with an error: the bands share the curtain as the readings share their sum.
  const bands = named.map(
    ({ kind, name }): Band => ({ kind, depthIn: (size(name) / parted) * rainIn, figure: print(name), bare: bare(name), says: words[kind] }),
  );
  const isParted = parted > 0;
  const depthOf = (kind: BandKind): number => (isParted ? (bands.find((band) => band.kind === kind)?.depthIn ?? 0) : 0);
  const cover = coverOf(picture, teller);
  const room = water.roomShare === undefined ? 1 / wetInPerIn : size(water.roomShare);
  const trayIn = size(water.trayIn);
  const wetIn = Math.min(mostIn, (depthOf('soaked') + depthOf('through')) / Math.max(room, 0.01));
  const isStanding = water.standsAfter !== undefined && depthOf('ran') > 0;
  const ground = groundBy(cover, {
    wetIn: water.trayIn === undefined ? wetIn : Math.min(trayIn, wetIn),
    isRaining: rainIn > 0,
    ...(water.trayIn !== undefined && { rootsIn: trayIn * 0.9 }),
  });
  // What leaves is told first.
  const parts = [...named.slice(-1), ...named.slice(0, -1)].map(({ kind, name }) => ({ kind, name, says: words[kind].at(-1) ?? '' }));
  return {
    ground,
    water: {
      rainIn,
      figure: print(water.depthIn ?? water.fell),
      says: ['fell'],
      bands: isParted ? bands : [],
      stands: isStanding && water.standsAfter !== undefined ? `stands after ${print(water.standsAfter)}` : undefined,
    },
    needIn: water.trayIn === undefined ? Math.max(ground.rootsIn * 1.1, wetIn * 1.25) : trayIn,
    sum: isParted ? sumOf(calculator, outcome, system, { whole: water.fell, parts }) : undefined,
    told: isParted
      ? `${print(water.fell)} fell: ${parts.map(({ name, says }) => `${print(name)} ${says}`).join(', ')}`
      : `${print(water.fell)} fell`,
    labels: () => [],
  };
}

export function readFace(props: FaceProps): readonly Reading[] {
  const { picture } = props;
  if (picture.water) return [readWater(props, picture.water)];
  return [];
}
