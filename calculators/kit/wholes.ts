import { printNumber } from '../units/printQuantity.ts';
import type { Face, PlainPicture } from './pictures.ts';

/** Numbers that are shown together as the parts of one number: rounded so that they add up as printed. All in one unit. */
export interface Whole<N extends string = string> {
  /** Left out where it is all of something, 100 percent: then it is what the parts come to. */
  readonly whole?: N;
  readonly parts: readonly N[];
  /** Of those, what is also told by itself, or told alike of another side: it is rounded as it is there, and the others take what rounding leaves. */
  readonly stands?: readonly N[];
}

/** What a picture cuts into parts. */
export function wholesOf(picture: PlainPicture | undefined): readonly Whole[] {
  switch (picture?.kind) {
    case 'shares':
      // A bar of one part is not cut.
      return [picture, ...(picture.beside ?? [])]
        .filter(({ parts }) => parts.length > 1)
        .map(({ whole, parts }) => {
          const stands = parts.flatMap((part) => (part.stands ? [part.of] : []));
          return { ...(whole === undefined ? {} : { whole }), parts: parts.map(({ of }) => of), ...(stands.length === 0 ? {} : { stands }) };
        });
    case 'face':
      return facesWholes(picture);
    default:
      return [];
  }
}

function facesWholes({ water, tray, layers, pond }: Face): readonly Whole[] {
  if (layers) return [{ whole: layers.holds, parts: [layers.has, layers.missing] }];
  if (pond) return [{ whole: pond.all, parts: [pond.drunk, pond.lost, pond.left] }];
  if (tray) return [{ whole: tray.poured, parts: [tray.ranOff, tray.cameThrough, tray.stayed] }];
  return water ? [{ whole: water.fellIn, parts: [water.ranOffIn, ...(water.heldIn === undefined ? [] : [water.heldIn]), water.soakedIn] }] : [];
}

/** What people read when that number is printed. */
export const asPrinted = (value: number, digits: number): number => Number(printNumber(value, digits).replaceAll(',', '').replace('−', '-'));

export const add = (sizes: readonly number[]): number => sizes.reduce((sum, size) => sum + size, 0);

/**
 * Rounds parts to one precision so that they add up to `sum`: each is cut off, and what is then missing goes to those that lost most (largest remainder).
 * Each stays within one unit of its last digit, and what is a whole number of those units stays as it is. Parts that are no division of `sum`, such as
 * readings with an error in them, are rounded one by one.
 * @param parts - The parts, unrounded
 * @param sum - What they must come to, a whole number of units of the last digit
 * @param digits - Digits after the point, or before it when negative
 */
export function roundTogether(parts: readonly number[], sum: number, digits: number): readonly number[] {
  const unitsOf = (value: number): number => (digits < 0 ? value / 10 ** -digits : value * 10 ** digits);
  const sizeOf = (units: number): number => (digits < 0 ? units * 10 ** -digits : units / 10 ** digits);
  const cut = parts.map((part) => {
    const units = unitsOf(part);
    const near = Math.round(units);
    // 0.29 is 28.999999999999996 hundredths: a whole number of them but for the way that numbers are kept.
    const whole = Math.abs(units - near) < 1e-9 * Math.max(1, Math.abs(units)) ? near : Math.floor(units);
    return { whole, lost: Math.max(0, units - whole) };
  });
  const missing = Math.round(unitsOf(sum)) - add(cut.map(({ whole }) => whole));
  const losing = cut.filter(({ lost }) => lost > 0);
  const isDivision = Math.abs(unitsOf(sum) - unitsOf(add(parts))) <= 1 + 1e-6;
  if (!isDivision || missing < 0 || missing > losing.length) return parts.map((part) => asPrinted(part, digits));
  const gaining = losing.toSorted((one, other) => other.lost - one.lost).slice(0, missing);
  return cut.map((each) => sizeOf(each.whole + (gaining.includes(each) ? 1 : 0)));
}
