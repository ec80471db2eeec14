import type { Face, FaceLoss } from '../../kit/pictures.ts';
import { printScalar } from '../../kit/print.ts';
import type { Grain } from './FaceGround.tsx';
import { anInch, coverOf, type FaceProps, groundBy, place, type Reading, sumOf, tellerOf } from './faceReading.ts';
import { type StripKind, standOf, stripKinds } from './growth.ts';
import type { Wanted } from './labels.ts';
import { between } from './noise.ts';
import { columnOf, rowsIn, tenth } from './readings.ts';

type Part<K extends keyof Face> = NonNullable<Face[K]>;
const figure = (words: string, ...places: Wanted['places']): Wanted => ({ words: [words], size: 18, places });
const name = (words: readonly string[], ...places: Wanted['places']): Wanted => ({ words, size: 16, places });

/** Rain as it would lie on the ground if none of it moved. */
export function readLying(props: FaceProps, { depth, amount }: Part<'lies'>): Reading {
  const { size, print } = tellerOf(props);
  const depthIn = size(depth);
  return {
    ground: groundBy(coverOf(props), { isRaining: true }),
    rainIn: depthIn,
    heights: { sky: [158, 150], soil: [120, 110] },
    needIn: 9,
    mostPerIn: () => 72 / Math.max(0.01, depthIn),
    hasTape: true,
    told: `${print(depth)} of rain on this ground is ${print(amount)}`,
    caption: 'The rain, to the scale of the tape, as if all of it lay where it fell. Ground and plants are a drawing.',
    shapes: ({ width, sky, perIn }) => (
      <>
        <path class="ponded" d={`M0 ${tenth(sky - depthIn * perIn)}H${width}V${sky + 1}H0z`} />
        <path class="water-line" d={`M0 ${tenth(sky - depthIn * perIn)}H${width}`} />
      </>
    ),
    labels: ({ width, sky, perIn }) => {
      const top = sky - depthIn * perIn;
      const isIn = sky - top > 24;
      return [
        figure(print(depth), isIn ? place(width / 2, (top + sky) / 2 + 6, 'on-water') : place(width / 2, top - 10, 'on-rain')),
        figure(print(amount), place(width / 2, top - (isIn ? 32 : 54), 'on-rain')),
        name(['on this ground'], place(width / 2, top - (isIn ? 12 : 34), 'on-rain')),
      ];
    },
  };
}

/** The ground as it was dug and felt. */
export function readLayers(props: FaceProps, layers: Part<'layers'>): Reading {
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
  return {
    ground: groundBy(0.6, {
      shares: { plant: 0.85, litter: 0, rock: 0, bare: 0.15 },
      layers: dug.map(({ toIn }, index) => ({ toIn, grain: grainOf(index) })),
      rootsIn: mostIn,
      tapIn: deepestIn,
      filled: dug,
    }),
    rainIn: 0,
    heights: { sky: [46, 46], soil: [276, 250] },
    needIn: Math.min(deepestIn * 1.1, Math.max(9, dug.at(-1)?.toIn ?? 9)),
    hasTape: true,
    sum: sumOf(props, layers.holds, parts, ' when full'),
    told: `Of ${print(layers.holds)} that the root zone holds ${told}; most roots to ${print(layers.mostRoots)}, the deepest to ${print(layers.deepestRoot)}; layers from above ${dug.map(({ says }) => says).join(', ')} full`,
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
  };
}

const counted: Readonly<Record<StripKind, string>> = { plant: 'plants', litter: 'litter', rock: 'rock', bare: 'bare' };
/** What the steps met: as many strips of the cut. */
export function readCounts(props: FaceProps, counts: Part<'counts'>): Reading {
  const { size, print } = tellerOf(props);
  const all = Math.max(1, size(counts.all));
  const shares = { plant: size(counts.plant) / all, litter: size(counts.litter) / all, rock: size(counts.rock) / all, bare: size(counts.bare) / all };
  const parts = stripKinds.map((kind) => ({ kind, name: counts[kind], says: counted[kind] }));
  return {
    ground: groundBy(1 - shares.bare, { shares }),
    rainIn: 0,
    heights: { sky: [60, 60], soil: [136, 120] },
    needIn: 9,
    hasTape: false,
    sum: sumOf(props, counts.all, parts, ' steps'),
    told: `${print(counts.coveredPercent)} covered: of ${print(counts.all)} steps ${parts.map((part) => `${print(part.name)} on ${counted[part.kind]}`).join(', ')}`,
    caption: 'Each strip of the surface is a share of the steps: plants, litter, rock, and a bare crust. What lies below is a drawing.',
    labels: ({ width, sky }) => [
      figure(print(counts.coveredPercent), place(width / 2, sky + 62, 'on-soil')),
      name(['covered'], place(width / 2, sky + 83, 'on-soil')),
    ],
  };
}

/** Thick enough to be seen; nobody measured where it ends. */
const hardIn = 4;
/** How tight the ground is, and where a probe met hard ground. */
export function readHard(props: FaceProps, { density, poresPercent, fromIn }: Part<'hard'>): Reading {
  const { size, print } = tellerOf(props);
  const [pores, depthIn] = [size(poresPercent), size(fromIn)];
  const isHard = depthIn > 0;
  const open = between(0.05, (pores - 36) / 22, 1);
  return {
    ground: groundBy(0.7, {
      open: isHard ? 0.6 : open,
      hard: isHard ? { fromIn: depthIn, toIn: depthIn + hardIn } : undefined,
      rootsIn: isHard ? depthIn + hardIn : 3 + 6 * open,
    }),
    rainIn: 0,
    heights: { sky: [50, 50], soil: [210, 190] },
    needIn: isHard ? (depthIn + hardIn) * 1.25 : 9,
    hasTape: isHard,
    told: `${print(density)}, ${print(poresPercent)} pores${isHard ? `, hard ground from ${print(fromIn)}` : ''}`,
    caption: isHard
      ? 'Plates lie where the probe met hard ground; roots turn aside on them. How thick they are nobody measured, so that is a drawing.'
      : 'The looser the cores, the deeper it is drawn in crumbs. No depth was measured, so none is shown.',
    labels: ({ width, sky, soil, perIn, isNarrow }) => {
      const middle = sky + (isHard ? (depthIn + hardIn / 2) * perIn : soil * 0.45);
      const both = `${print(density)}, ${print(poresPercent)} pores`;
      return [
        ...(isNarrow
          ? [
              figure(print(density), place(width / 2, middle - 4, 'on-soil')),
              figure(`${print(poresPercent)} pores`, place(width / 2, middle + 18, 'on-soil')),
            ]
          : [figure(both, place(width / 2 + 14, middle + 6, 'on-soil'))]),
        ...(isHard
          ? [name([`hard from ${print(fromIn)}`, `from ${print(fromIn)}`], place(width - 10, sky + depthIn * perIn - 8, 'on-soil', 'end'))]
          : []),
      ];
    },
  };
}

/** A ring in the ground, to one scale with it. */
export function readRing(props: FaceProps, ring: Part<'ring'>): Reading {
  const { size, print } = tellerOf(props);
  const [acrossIn, insertedIn, waterIn] = [size(ring.acrossIn), size(ring.insertedIn), size(ring.waterIn)];
  const above = (perIn: number): number => between(10, (waterIn + 1.2) * perIn, 52);
  return {
    ground: groundBy(0.55, { wetIn: insertedIn + 3 * waterIn, ring: { halfIn: acrossIn / 2, insertedIn } }),
    rainIn: 0,
    heights: { sky: [112, 112], soil: [176, 168] },
    needIn: Math.max(9, (insertedIn + 3 * waterIn) * 1.25),
    mostPerIn: (width) => (width * 0.52) / Math.max(0.01, acrossIn),
    hasTape: true,
    told: `Water goes in by ${anInch(props)} in ${print(ring.inchMin)}, ${print(ring.rate)}; the ring is ${print(ring.acrossIn)} wide and stands ${print(ring.insertedIn)} deep`,
    caption: 'Ring and water of one pouring to the scale of the tape. How far the wet ground reaches is a drawing.',
    shapes: ({ width, sky, perIn }) => {
      const half = (acrossIn / 2) * perIn;
      const [left, right] = [tenth(width / 2 - half), tenth(width / 2 + half)];
      const wall = `V${tenth(sky + insertedIn * perIn)}`;
      const [top, water] = [tenth(sky - above(perIn)), tenth(sky - Math.min(waterIn * perIn, above(perIn) - 3))];
      return (
        <>
          <path class="ponded" d={`M${left} ${water}H${right}V${sky + 1}H${left}z`} />
          <path class="ring" d={`M${left} ${top}${wall}M${right} ${top}${wall}`} />
        </>
      );
    },
    labels: ({ width, sky, perIn }) => {
      const y = sky - above(perIn) - 12;
      return [
        figure(print(ring.rate), place(width / 2, y, 'on-rain')),
        { words: [`${anInch(props)} in ${print(ring.inchMin)}`, print(ring.inchMin)], size: 18, places: [place(width / 2, y - 24, 'on-rain')] },
      ];
    },
  };
}

/** Past a foot the topsoil is long gone, and no thickness is told. */
const mostLostIn = 12;
function readOneLoss(props: FaceProps, { lostIn, inchYears }: FaceLoss<string>, isPlowed: boolean): Reading {
  const { size, print, isTold } = tellerOf(props);
  const lost = size(lostIn);
  const gone = Math.min(lost, mostLostIn);
  const cover = isPlowed ? 0 : coverOf(props);
  // Room for two lines above what grows there.
  const air = 50 + Math.round(standOf(cover));
  const amount = isTold(lostIn) ? print(lostIn) : lost > mostLostIn ? 'past a foot' : 'hardly any';
  const years = isTold(inchYears) ? print(inchYears) : '';
  const saysYears = years === '' ? '' : `, ${anInch(props)} in ${years}`;
  return {
    ground: groundBy(cover, { lostIn: gone, open: isPlowed ? 0.5 : cover }),
    rainIn: 0,
    heights: { sky: [air, air], soil: [228, 228] },
    needIn: Math.max(9, gone * 1.5),
    hasTape: true,
    title: isPlowed ? { is: 'plain', title: 'Plowed' } : { is: 'this', title: 'This pasture' },
    told: `${isPlowed ? 'Plowed ground' : 'This ground'} loses ${amount} in thirty years${saysYears}`,
    caption: 'The hatched slice is what thirty years take off the top, at true depth. Plants, roots and what lies below are a drawing.',
    shapes: ({ id, width, sky, perIn }) => (
      <>
        <defs>
          <pattern id={`${id}-hatch`} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path class="gone-stripe" d="M3.5 0v7" />
          </pattern>
        </defs>
        <path class="gone" fill={`url(#${id}-hatch)`} d={`M0 ${sky}H${width}V${tenth(sky + gone * perIn)}H0z`} />
        <path class="gone-line" d={`M0 ${sky}H${width}`} />
      </>
    ),
    labels: ({ width, sky, soil, perIn }) => {
      const depth = gone * perIn;
      const isIn = depth > 48;
      // Above what grows there.
      const y = sky - 10 - Math.max(0, standOf(cover) * 1.1 - depth);
      return [
        figure(amount, place(width / 2, isIn ? sky + depth / 2 - 2 : y - 20, 'on-clay-word')),
        name(['gone'], place(width / 2, isIn ? sky + depth / 2 + 19 : y, 'on-clay-word')),
        ...(years === ''
          ? []
          : [
              figure(years, place(width / 2, sky + soil - 16, 'on-soil')),
              name([`${anInch(props)} in`], place(width / 2, sky + soil - 37, 'on-soil')),
            ]),
      ];
    },
  };
}
/** One ground beside the same ground plowed; two managements beside each other. */
export const readLoss = (props: FaceProps, { plowed, ...here }: Part<'loss'>, isCompared: boolean): readonly Reading[] => [
  readOneLoss(props, here, false),
  ...(isCompared ? [] : [readOneLoss(props, plowed, true)]),
];
