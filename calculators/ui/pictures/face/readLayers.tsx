import { printScalar } from '../../../kit/print.ts';
import { between, noise } from '../noise.ts';
import { columnOf, rowsIn, tenth } from '../readings.ts';
import type { Grain } from './drawGround.tsx';
import { faceOf } from './Face.tsx';
import { type FaceProps, figure, groundBy, name, place, type Reading, sumOf, tellerOf } from './reading.ts';
import type { Stretch } from './soil.ts';

/** Pixels from spot to spot. */
const spotGap = 11;
/** As many of a layer's spots as it is full, in patches: the first by rank, so that a layer fills up without any spot moving. */
function filledSpots({ width, top, bottom, salt }: Stretch, share: number, gap: number): string {
  const columns = Math.ceil(width / gap) + 1;
  const rows = Math.max(1, Math.round((bottom - top) / (gap * 0.86)));
  return Array.from({ length: columns * rows }, (_, index) => {
    const [column, row] = [index % columns, Math.floor(index / columns)];
    const patch = Math.sin(column * 0.62 + salt + row * 0.35) + Math.sin(row * 0.8 - column * 0.27 + salt);
    return { x: (column + (row % 2) / 2) * gap, y: top + ((row + 0.5) * (bottom - top)) / rows, rank: patch * 0.28 + noise(index, salt + 9) };
  })
    .toSorted((one, other) => one.rank - other.rank)
    .slice(0, Math.round(columns * rows * share))
    .map(({ x, y }) => `M${Math.round(x)} ${Math.round(y)}h0`)
    .join('');
}

/** The one root that goes deepest. */
const taproot = (x: number, deep: number): string =>
  `M${Math.round(x)} 0q-7 ${Math.round(deep * 0.3)} 2 ${Math.round(deep * 0.55)}t-4 ${Math.round(deep * 0.45)}`;

/** The ground as it was dug and felt. */
function read(props: FaceProps): readonly Reading[] {
  const { layers } = props.picture;
  if (!layers) return [];
  const { size, print } = tellerOf(props);
  const number = (value: unknown): number => (typeof value === 'number' && Number.isFinite(value) ? Math.max(0, value) : 0);
  const column = columnOf(props.calculator, layers.rows, layers.filledPercent);
  const dug = rowsIn(props.outcome, layers.rows).map((row) => ({
    fromIn: number(row[layers.top]),
    toIn: number(row[layers.top]) + number(row[layers.thickness]),
    share: between(0, number(row[layers.filledPercent]) / 100, 1),
    says: column && printScalar(row[layers.filledPercent] ?? '', column, props.system),
  }));
  const grainOf = (index: number): Grain => (index === 0 ? 'crumbs' : index === dug.length - 1 && index > 1 ? 'cracked' : 'blocks');
  const [mostIn, deepestIn] = [size(layers.mostRoots), Math.max(size(layers.mostRoots), size(layers.deepestRoot))];
  const parts = [
    { kind: 'there', name: layers.has, says: 'there' },
    { kind: 'missing', name: layers.missing, says: 'missing' },
  ];
  const told = parts.map((part) => `${print(part.name)} ${part.says}`).join(', ');
  return [
    {
      ground: groundBy(0.6, {
        shares: { plant: 0.85, litter: 0, rock: 0, bare: 0.15 },
        layers: dug.map(({ toIn }, index) => ({ toIn, grain: grainOf(index) })),
        rootsIn: mostIn,
        wetArea: ({ width, soil, perIn, salt }) => {
          const gap = spotGap * Math.max(1, perIn / 18);
          const spots = dug.map(({ fromIn, toIn, share }, index) => {
            const [top, bottom] = [fromIn * perIn, Math.min(soil, toIn * perIn)];
            return bottom > top ? filledSpots({ width, top, bottom, salt: salt + 90 + index }, share, gap) : '';
          });
          return { d: spots.join(''), spot: Math.round(gap * 1.2) };
        },
        within: ({ width, perIn }) => <path class="root" d={taproot(width * 0.36, deepestIn * perIn)} />,
      }),
      heights: { sky: 46, soil: 276 },
      needIn: Math.min(deepestIn * 1.1, Math.max(9, dug.at(-1)?.toIn ?? 9)),
      hasTape: true,
      sum: sumOf(props, layers.holds, parts, ' when full'),
      told: `${print(layers.holds)} in the root zone when full: ${told}; most roots to ${print(layers.mostRoots)}, the deepest to ${print(layers.deepestRoot)}; layers from above ${dug.map(({ says }) => says).join(', ')} full`,
      caption: 'Layers as you dug them, each wet by as much of it as is full. The dashed line is as deep as most roots go.',
      shapes: ({ width, sky, perIn }) => <path class="rooted" d={`M0 ${tenth(sky + mostIn * perIn)}H${width}`} />,
      labels: ({ width, sky, soil, perIn, isNarrow }) => [
        ...dug.flatMap(({ fromIn, toIn, says }) => {
          const [top, foot] = [fromIn * perIn, Math.min(soil, toIn * perIn)];
          const y = sky + (top + foot) / 2 + 6;
          return foot - top < 21 || !says
            ? []
            : [figure(isNarrow ? says : `${says} full`, place(width - 10, y, 'on-soil', 'end'), place(width / 2, y, 'on-soil'))];
        }),
        name(
          isNarrow ? ['most roots'] : [`most roots, ${print(layers.mostRoots)}`],
          ...[-7, 19].flatMap((by) => [0.42, 0.5, 0.58].map((share) => place(width * share, sky + mostIn * perIn + by, 'on-soil'))),
        ),
      ],
    },
  ];
}
export const Face = faceOf(read);
