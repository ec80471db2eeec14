import { between, noise, strokes, sway } from '../noise.ts';
import { tenth } from '../readings.ts';

const whole = Math.round;

// What grows and lies on the line y = 0, and the roots below it, as paths in pixels.

/** Width of one strip along the cut: what is on it was met at one step of the count. */
export const stripWidth = 9;
export const stripKinds = ['plant', 'litter', 'rock', 'bare'] as const;
export type StripKind = (typeof stripKinds)[number];
export type Strips = Readonly<Record<StripKind, readonly number[]>>;

/**
 * What each strip carries: of every kind exactly its share, in patches. Shares add up to one. Each strip has its fixed rank, so that ground fills in and
 * never reshuffles.
 */
export function stripsOf(width: number, shares: Readonly<Record<StripKind, number>>, salt: number): Strips {
  const count = Math.max(1, Math.floor(width / stripWidth));
  const ranked = Array.from({ length: count }, (_, index) => ({
    x: tenth(((index + 0.5) * width) / count),
    rank: 0.7 * noise(index, salt) + 0.3 * noise(Math.floor(index / 3), salt + 1),
  })).toSorted((one, other) => one.rank - other.rank);
  let share = 0;
  let from = 0;
  const strips: Record<StripKind, readonly number[]> = { plant: [], litter: [], rock: [], bare: [] };
  for (const kind of stripKinds) {
    share += shares[kind];
    const to = whole(count * share);
    strips[kind] = ranked
      .slice(from, to)
      .map(({ x }) => x)
      .toSorted((one, other) => one - other);
    from = to;
  }
  return strips;
}

/** How tall it stands on ground with so much cover: pixels, a drawing. */
export const standOf = (cover: number): number => 9 + 30 * cover ** 1.7;

/** Blades that taper to a tip, in three greens. */
export function blades(feet: readonly number[], stand: number, each: number, salt: number): readonly string[] {
  const tones = ['', '', ''];
  for (const [place, x] of feet.entries())
    for (let blade = 0; blade < each; blade++) {
      const index = place * 7 + blade;
      const tall = stand * (0.45 + 0.65 * noise(index, salt));
      const foot = tenth(x + sway(index, salt + 1) * stripWidth * 0.6);
      const tip = sway(index, salt + 2) * tall * 0.6;
      const thick = 1.1 + 0.9 * noise(index, salt + 3);
      tones[index % 3] +=
        `M${foot} 1q${tenth(tip * 0.1)} ${tenth(-tall * 0.6)} ${tenth(tip)} ${tenth(-tall)}Q${tenth(foot + thick + tip * 0.35)} ${tenth(-tall * 0.5)} ${tenth(foot + 2 * thick)} 1z`;
    }
  return tones;
}

/** Dead leaves and stems lying flat. */
export const litterOn = (feet: readonly number[], salt: number): string =>
  feet
    .map(
      (x, index) =>
        `M${tenth(x + sway(index, salt) * 4 - 5)} ${tenth(-0.4 - 2.6 * noise(index, salt + 1))}l${tenth(8 + 4 * noise(index, salt + 2))} ${tenth(sway(index, salt + 3) * 2.5)}`,
    )
    .join('');

/** Bare soil seals: a crust like a plate, one piece to a strip. */
export const crustOn = (feet: readonly number[]): string => feet.map((x) => `M${tenth(x - stripWidth / 2 - 0.5)} 1.4h${stripWidth + 1}`).join('');

/** Drops that strike bare soil. */
export const splashesOn = (feet: readonly number[], salt: number): string =>
  feet.map((x, index) => (noise(index, salt) < 0.6 ? `M${x} -1l-4-5m4 5l5-4m-5 2v-6` : '')).join('');

/** Thick and fine roots under plants, every fifth just as deep as they go. */
export function rootsUnder(feet: readonly number[], deep: number, salt: number): readonly [string, string] {
  let fine = '';
  const spare = Math.ceil(feet.length / 20);
  const thick = feet
    .filter((_, index) => index % spare === 0)
    .map((start, place) => {
      const reach = Math.max(4, deep * (place % 5 === 2 ? 1 : 0.22 + 0.62 * noise(place, salt) ** 1.4));
      const parts = between(2, whole(reach / 24), 9);
      const step = reach / parts;
      let [x, y] = [start, 0];
      const main = strokes(parts, (part) => {
        const index = place * 12 + part;
        const dx = sway(index, salt + 1) * 8;
        for (const side of [-1, 1]) {
          const down = step * (0.2 + 0.6 * noise(index, salt + 4 + side));
          const drop = Math.min(step * (0.2 + 0.5 * noise(index, salt + 7 + side)), reach - y - down + 2);
          const out = side * (4 + 11 * noise(index, salt + 10 + side)) * (1 - (0.5 * part) / parts);
          if (drop > 0)
            fine += `M${whole(x + (dx * down) / step)} ${whole(y + down)}q${whole(out * 0.6)} ${whole(drop * 0.1)} ${whole(out)} ${whole(drop)}`;
        }
        x += dx;
        y += step;
        return `q${whole(sway(index, salt + 2) * 7)} ${tenth(step * 0.5)} ${tenth(dx)} ${tenth(step)}`;
      });
      return `M${tenth(start)} 0${main}`;
    })
    .join('');
  return [thick, fine];
}
