import type { Face } from '../../kit/pictures.ts';
import { coverOf, type FaceProps, groundBy, place, type Reading, type Room, sumOf, tellerOf } from './faceReading.ts';
import { tenth } from './readings.ts';
import type { Band, BandKind } from './water.tsx';

/** Dry loam holds about 2 in of water a foot between dry and wet to the touch, so an inch wets about 6 in: common practice. The caption says so. */
const wetInPerIn = 6;
/** Deeper than this nothing of it happens near the surface. */
const mostWetIn = 60;
const aDrawing = 'Crumbs, plants and roots are a drawing.';
const asWide = 'Bands are as wide as the water is deep';

const words: Readonly<Record<BandKind, readonly string[]>> = {
  held: ['held on leaves', 'held'],
  soaked: ['soaked in'],
  through: ['came out below'],
  ran: ['ran off'],
};
const trayWords = { ...words, soaked: ['stayed in it'] } as const;
const sheet = 7;

/** Water that stands on the ground, and how soon. */
const standing = (after: string) => ({
  shapes: ({ width, sky }: Room) => <path class="ponded" d={`M0 ${sky - sheet}H${width}V${sky + 1}H0z`} />,
  labels: ({ sky, from, isNarrow }: Room) =>
    isNarrow
      ? []
      : [
          { words: [after], size: 18 as const, places: [place(from - 8, sky - 14, 'on-rain', 'end')] },
          { words: ['stands after', 'after'], size: 16 as const, places: [place(from - 8, sky - 34, 'on-rain', 'end')] },
        ],
});
/** A tray with a wire floor. */
const tray = ({ width, sky, soil }: Room) => (
  <>
    <path class="tray" d={`M3 ${sky - 16}V${tenth(sky + soil)}M${tenth(width - 3)} ${sky + 2}V${tenth(sky + soil)}`} />
    <path class="tray-floor" d={`M3 ${tenth(sky + soil)}H${tenth(width - 3)}`} />
  </>
);

/** Rain that came down and parted. */
export function readWater(props: FaceProps, water: NonNullable<Face['water']>): Reading {
  const { size, print, bare } = tellerOf(props);
  const isTray = water.trayIn !== undefined;
  const says = isTray ? trayWords : words;
  const named = (
    [
      ['held', water.held],
      ['soaked', water.soakedIn],
      ['through', water.cameThrough],
      ['ran', water.ranOff],
    ] as const
  ).flatMap(([kind, name]) => (name === undefined ? [] : [{ kind, name }]));
  const rainIn = size(water.depthIn ?? water.fell);
  const all = named.reduce((sum, { name }) => sum + size(name), 0);
  // Jars are read with an error: the bands share the curtain as the readings share their sum.
  const bands: readonly Band[] =
    all > 0
      ? named.map(({ kind, name }) => ({ kind, depthIn: (size(name) / all) * rainIn, figure: print(name), bare: bare(name), says: says[kind] }))
      : [];
  const depthOf = (kind: BandKind): number => bands.reduce((sum, band) => sum + (band.kind === kind ? band.depthIn : 0), 0);
  const cover = coverOf(props);
  const room = water.roomShare === undefined ? 1 / wetInPerIn : Math.max(0.01, size(water.roomShare));
  const trayIn = size(water.trayIn);
  const reachedIn = Math.min(mostWetIn, (depthOf('soaked') + depthOf('through')) / room);
  const ground = groundBy(cover, {
    wetIn: isTray ? Math.min(trayIn, reachedIn) : reachedIn,
    isRaining: rainIn > 0,
    ...(isTray && { rootsIn: trayIn }),
  });
  // What leaves is told first.
  const parts = [...named.slice(-1), ...named.slice(0, -1)].map(({ kind, name }) => ({ kind, name, says: says[kind].at(-1) ?? '' }));
  const fell = `${print(water.depthIn ?? water.fell)} of rain`;
  const isStanding = water.standsAfter !== undefined && depthOf('ran') > 0;
  return {
    ground,
    rainIn,
    water: { rainIn, figure: print(water.depthIn ?? water.fell), says: ['fell'], bands },
    heights: isTray ? { sky: [148, 140], soil: [104, 96], foot: 46 } : { sky: [148, 140], soil: [186, 176] },
    needIn: isTray ? trayIn : Math.max(ground.rootsIn * 1.1, ground.wetIn * 1.25),
    isExact: isTray,
    hasTape: !isTray,
    sum: bands.length > 0 ? sumOf(props, water.fell, parts) : undefined,
    told: [
      bands.length > 0 ? `Of ${fell} ${parts.map(({ kind, name }) => `${print(name)} ${says[kind][0]}`).join(', ')}` : fell,
      ...(isStanding && water.standsAfter !== undefined ? [`water stands after ${print(water.standsAfter)}`] : []),
      ...(props.picture.coverPercent === undefined ? [] : [`${print(props.picture.coverPercent)} of the ground is covered`]),
    ].join(', '),
    caption: isTray
      ? `${asWide} on the tray. How wet the soil is drawn, crumbs, plants and roots are a drawing.`
      : water.roomShare === undefined
        ? `${asWide}; the ground is drawn wet to six times what soaked in, as in dry loam. ${aDrawing}`
        : `${asWide}; the ground is wet as deep as its room for water gives. Cover, ${aDrawing.toLowerCase()}`,
    ...(isStanding && water.standsAfter !== undefined ? standing(print(water.standsAfter)) : {}),
    ...(isTray && { shapes: tray }),
  };
}
