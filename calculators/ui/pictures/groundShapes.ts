import { evenly, noise } from './noise.ts';
import { tenth } from './readings.ts';

// Every shape is one path of many short strokes, in whole drawing units, for one stretch of ground; the picture repeats the stretch. With round
// ends a stroke of no length is a dot. Light enough to be part of each page and to redraw at each keystroke.

/** Width of the stretch that repeats. */
export const stretch = 68;

const between = (low: number, value: number, high: number): number => Math.min(high, Math.max(low, value));
const strokes = (count: number, make: (index: number) => string): string =>
  Array.from({ length: Math.max(0, Math.round(count)) }, (_, index) => make(index)).join('');
const whole = Math.round;
const swing = (index: number, salt: number): number => noise(index, salt) - 0.5;

/** Strokes of rain, six a stretch for an inch. Beyond twelve inches they grow longer, for there is no room for more. */
export function rainStrokes(rainIn: number, height: number): string {
  const long = whole(7 + 6 * between(0, (rainIn - 2) / 20, 1));
  return strokes(between(0, rainIn, 12) * 6, (index) => {
    const [across, down] = evenly(index);
    return `M${whole(4 + across * stretch)} ${whole(2 + down * (height - long - 4))}l${-whole(long / 3)} ${long}`;
  });
}

/** Tufts of grass on the line y = 0. Cover decides how many stand and how tall; a tuft grows in rather than popping up. */
export function grassBlades(cover: number, salt: number): string {
  return strokes(13, (tuft) => {
    const grown = between(0, (cover * 1.25 - noise(tuft, salt)) / 0.25, 1);
    const height = (5 + 28 * cover) * (0.7 + 0.5 * noise(tuft, salt + 1)) * grown;
    if (height < 2) return '';
    const foot = (tuft + 0.5 + 0.6 * swing(tuft, salt + 2)) * (stretch / 13);
    return strokes(4, (blade) => {
      const index = tuft * 4 + blade;
      const lean = whole(swing(index, salt + 3) * height * 0.9);
      const tall = whole(height * (0.6 + 0.4 * noise(index, salt + 4)));
      return `M${whole(foot + blade - 1.5)} 0q0-${whole(tall * 0.6)} ${lean}-${tall}`;
    });
  });
}

/** Dead leaves and stems lying on the ground. */
export const litter = (cover: number, salt: number): string =>
  strokes(cover * 14, (index) => {
    const [across] = evenly(index);
    return `M${whole(across * stretch)}${tenth(-0.5 - 2 * noise(index, salt))}l${whole(4 + 5 * noise(index, salt + 1))} ${whole(3 * swing(index, salt + 2))}`;
  });

/** Drops that hang on leaves and litter, three a stretch for a tenth of an inch held. */
export const drops = (heldIn: number, tallest: number): string =>
  strokes(between(0, heldIn, 2) * 30, (index) => {
    const [across, up] = evenly(index);
    return `M${whole(across * stretch)}${tenth(-1.5 - up * tallest)}h0`;
  });

/**
 * The topsoil's own pieces. Open ground is crumbs that leave room between them; tight ground is thin plates lying flat. One turns into the
 * other as `open` goes from 1 to 0: the same pieces, stretched and pressed.
 */
export function soilPieces(open: number, depth: number, salt: number): string {
  const [across, down] = [stretch / 8, 6.5];
  const long = 11 * (1 - open);
  return strokes(Math.ceil(depth / down) + 1, (row) =>
    strokes(8, (place) => {
      const index = row * 8 + place;
      const x = (place + (row % 2) / 2 + 0.4 * swing(index, salt)) * across - long / 2;
      return `M${whole(x)} ${tenth(row * down + 2 + 3.5 * swing(index, salt + 1) * open)}h${whole(long * (0.7 + 0.6 * noise(index, salt + 2)))}`;
    }),
  );
}
export const pieceThickness = (open: number): number => tenth(3.8 + 3.2 * open);

/** Pores of three sizes, more and wider in open ground, fewer with depth; flat cracks in tight ground. */
export const pores = (size: number, open: number, depth: number, salt: number): string =>
  strokes((14 - 3 * size) * (0.4 + 0.6 * open), (index) => {
    const [across, down] = evenly(index * 3 + size + salt);
    const flat = whole((1 - open) * (3 + 4 * noise(index, salt + size)));
    return `M${whole(across * stretch)} ${whole(4 + down * Math.sqrt(down) * (depth - 8))}l${flat} ${whole(open * 4 * noise(index, salt + 9))}`;
  });
export const poreThickness = (size: number, open: number): number => tenth((0.8 + 1.4 * open) * (1 + size * 0.55));

/** Roots in a stretch a hundred units deep: one goes all the way, the others most of it. The picture stretches them to their depth. */
export const roots = (salt: number): string =>
  strokes(6, (root) => {
    const step = (root === 2 ? 100 : 50 + 45 * noise(root, salt)) / 6;
    const side = (part: number): number => whole(9 * swing(root * 9 + part, salt + 1));
    const fine = (part: number): string => {
      const reach = whole(16 * swing(root * 9 + part, salt + 2));
      return `q${whole(reach * 0.7)} 1 ${reach} ${whole(step * 0.6)}m${-reach} ${-whole(step * 0.6)}`;
    };
    const main = strokes(5, (part) => `${fine(part)}q${side(part + 3)} ${whole(step / 2)} ${side(part)} ${tenth(step)}`);
    return `M${whole((root + 0.5) * (stretch / 6) + 6 * swing(root, salt + 3))} 0q0 ${whole(step / 2)} ${side(8)} ${tenth(step)}${main}`;
  });

/** Where the ground is wet: down to `depth`, in fingers, longer ones where the ground is open. */
export function wetZone({
  depth,
  open,
  width,
  salt,
}: {
  readonly depth: number;
  readonly open: number;
  readonly width: number;
  readonly salt: number;
}): string {
  const fingers = Math.round(width / 17);
  const wide = width / fingers;
  const reach = Math.min(depth, 5 + 6 * open);
  const y = (index: number): number => tenth(depth + reach * swing(index, salt));
  const edge = strokes(
    fingers,
    (index) =>
      `Q${tenth((index + 0.5) * wide)} ${tenth(depth + reach * (noise(index, salt + 1) - 0.3))} ${tenth((index + 1) * wide)} ${y(index + 1)}`,
  );
  // Its sides lie outside the face, so that only the lower edge shows as a line.
  return `M-4-9V${y(0)}H0${edge}H${width + 4}V-9z`;
}

/** Blocks of subsoil and stones below, the same in every face. */
export const cracks =
  'M0 56l15-3 12 7 17-8 24 4M15 53l-3-6M27 60l-5 17 11 9 16-5 5-17-10-12M22 77l-14 5-8-6M68 70l-14-6M33 86l-4 13 11 9 18-8 10 2M49 81l9 19M0 102l13-3 16 0M13 99l5 18M40 108l-3 10M8 137l9-5 9 4 1 7-9 5-9-3zM40 150l11-4 6 6-5 8-9 1-5-5zM15 163l7-2 4 4-4 6-7-3zM50 130l5-2 3 5-6 3zM60 172l5-2 3 4-4 3z';

const hundredth = (size: number): number => Math.round(size * 100) / 100;
const overhang = (wide: number): number => hundredth(4 + wide * 0.08);
/** Sideways: its first upright is the shaft's width. `toward` is −1 for left, 1 for right. */
export function sidewaysArrow({
  from,
  neck,
  middle,
  wide,
  toward,
}: {
  readonly from: number;
  readonly neck: number;
  readonly middle: number;
  readonly wide: number;
  readonly toward: -1 | 1;
}): string {
  const over = overhang(wide);
  const top = hundredth(middle - wide / 2);
  return `M${tenth(from)} ${top}v${hundredth(wide)}H${neck}v${over}L${neck + toward * 13} ${hundredth(middle)}L${neck} ${hundredth(top - over)}v${over}z`;
}
/** Downward from the surface: its first level stroke is the shaft's width. */
export function downArrow({ middle, wide, tip }: { readonly middle: number; readonly wide: number; readonly tip: number }): string {
  const over = overhang(wide);
  const neck = hundredth(Math.max(0, tip - 9 - wide * 0.12));
  const left = hundredth(middle - wide / 2);
  return `M${left} 0h${hundredth(wide)}V${neck}h${over}L${tenth(middle)} ${hundredth(tip)}L${hundredth(left - over)} ${neck}h${over}z`;
}
