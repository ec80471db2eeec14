import { tenth } from '../readings.ts';
import { faceOf } from './Face.tsx';
import { blades } from './growth.ts';
import { type Room, textWidth, type Wanted } from './labels.ts';
import { type FaceProps, groundBy, place, type Reading, sumOf, tellerOf } from './reading.ts';

// A pond, cut through. Areas stand as the gallons do, from the water's level today down: what the herd drinks, what sun and ground take, what is left.

const bank = 14;
const steps = 60;

/** Left and right shore at a depth, as a share of the width and of the depth: one bank steeper than the other. */
const shoreAt = (down: number): readonly [number, number] => [0.07 + 0.38 * down ** 1.9, 0.93 - 0.34 * down ** 1.6];
const areaOf = (from: number, to: number): number => {
  const high = (to - from) / steps;
  return Array.from({ length: steps }, (_, index) => shoreAt(from + (index + 0.5) * high)).reduce(
    (sum, [left, right]) => sum + (right - left) * high,
    0,
  );
};
/** How far down the part `share` of the water reaches, from the surface. */
function levelAt(share: number): number {
  const all = areaOf(0, 1);
  let [low, high] = [0, 1];
  for (let turn = 0; turn < 24; turn++) {
    const middle = (low + high) / 2;
    if (areaOf(0, middle) < share * all) low = middle;
    else high = middle;
  }
  return high;
}

/** The water of a pond. */
function read(props: FaceProps): readonly Reading[] {
  const { pond } = props.picture;
  if (!pond) return [];
  const { size, print, bare, isTold } = tellerOf(props);
  const lasts = isTold(pond.lastsDays) ? `lasts ${print(pond.lastsDays)}` : '';
  const all = Math.max(1e-9, size(pond.all));
  const drunkTo = levelAt(size(pond.drunk) / all);
  const lostTo = levelAt((size(pond.drunk) + size(pond.lost)) / all);
  const parts = [
    { kind: 'drunk', name: pond.drunk, says: 'drunk' },
    { kind: 'lost', name: pond.lost, says: 'to sun and ground' },
    { kind: 'left', name: pond.left, says: 'left' },
  ];
  const at =
    ({ sky, soil }: Room) =>
    (share: number) =>
      sky + bank + share * (soil - bank - 34);
  return [
    {
      ground: groundBy(0.55, { shares: { plant: 0, litter: 0, rock: 0, bare: 0 }, rootsIn: 0 }),
      heights: { sky: 60, soil: 226 },
      needIn: 70,
      hasTape: false,
      sum: sumOf(props, pond.all, parts),
      told: `${print(pond.all)} in the pond: ${parts.map(({ name, says }) => `${print(name)} ${says}`).join(', ')}${lasts && `; ${lasts}`}; ${print(pond.deadDepth)} must stay`,
      caption: 'Areas stand as the gallons do. The shape of the pond, its banks and the ground are a drawing.',
      shapes: (room) => {
        const { id, width } = room;
        const y = at(room);
        const shore = Array.from({ length: 15 }, (_, index) => index / 14);
        const point = (down: number, side: 0 | 1): string => `${tenth(shoreAt(down)[side] * width)} ${tenth(y(down))}`;
        const rim = (side: 0 | 1): string => `${tenth((side === 0 ? 0.02 : 0.98) * width)} ${room.sky}`;
        const outline = [rim(0), ...shore.map((down) => point(down, 0)), ...shore.toReversed().map((down) => point(down, 1)), rim(1)].join('L');
        const band = (name: string, from: number, to: number) =>
          to > from && <path class={name} d={`M0 ${tenth(y(from))}H${width}V${tenth(to === 1 ? y(1) + 4 : y(to))}H0z`} />;
        return (
          <>
            <defs>
              <clipPath id={`${id}-bowl`}>
                <path d={`M${outline}z`} />
              </clipPath>
              <pattern id={`${id}-stripes`} width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
                <path class="pond-stripe" d="M4.5 0v9" />
              </pattern>
            </defs>
            <g clip-path={`url(#${id}-bowl)`}>
              <path class="pond-air" d={`M0 0H${width}V${tenth(y(1) + 4)}H0z`} />
              {band('pond-drunk', 0, drunkTo)}
              {band('pond-drunk', drunkTo, lostTo)}
              <g fill={`url(#${id}-stripes)`}>{band('pond-lost', drunkTo, lostTo)}</g>
              {band('pond-left', lostTo, 1)}
            </g>
            <path class="pond-bank" d={`M${outline}`} />
            <g transform={`translate(0 ${room.sky})`}>
              {blades([3, 8, width - 9, width - 3], 20, 4, 7).map((d, tone) => (
                <path key={d} class={`blade-${tone + 1}`} d={d} />
              ))}
            </g>
          </>
        );
      },
      labels: (room) => {
        const { width, sky, isNarrow } = room;
        const y = at(room);
        const label = (from: number, to: number, named: string, says: string, on: string): Wanted => {
          // Where the words end below, for the banks come nearer with every line.
          const [left, right] = shoreAt(Math.min(to, (from + to) / 2 + 8 / (room.soil - bank - 34)));
          const middle = (y(from) + y(to)) / 2 + 6;
          // On the water where it is wide enough, else under it.
          const words = [`${says} ${print(named)}`, `${says} ${bare(named)}`, bare(named)];
          const fitting = y(to) - y(from) < 21 ? [] : words.filter((each) => textWidth(each, 18) + 10 < (right - left) * width);
          return fitting.length > 0
            ? { words: fitting, size: 18, places: [place(((left + right) / 2) * width, middle, on)] }
            : { words: to === 1 && size(named) > 0 ? words : [], size: 18, places: [place(width / 2, y(1) + 26, 'on-soil')] };
        };
        return [
          { words: [isNarrow ? print(pond.all) : `${print(pond.all)} today`], size: 18, places: [place(width / 2, sky - 34, 'on-rain')] },
          ...(lasts === '' ? [] : [{ words: [lasts], size: 18 as const, places: [place(width / 2, sky - 10, 'on-rain')] }]),
          label(0, drunkTo, pond.drunk, 'stock', 'on-water'),
          label(drunkTo, lostTo, pond.lost, 'sun, ground', 'on-stripes'),
          label(lostTo, 1, pond.left, 'left', 'on-left'),
        ];
      },
    },
  ];
}
export const Face = faceOf(read);
