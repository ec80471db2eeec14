import { between } from '../noise.ts';
import { faceOf } from './Face.tsx';
import type { Room } from './labels.ts';
import { coverOf, type FaceProps, figure, groundBy, name, place, type Reading, sumOf, tellerOf } from './reading.ts';
import { partsOf, type Water, WaterShapes, waterLabels } from './water.tsx';

/** Dry loam holds about 2 in of water a foot between dry and wet to the touch, so an inch wets about 6 in: common practice. The caption says so. */
const wetInPerIn = 6;
/** Deeper than this nothing of it happens near the surface. */
const mostWetIn = 60;

/** Rain that came down and parted. */
function read(props: FaceProps): readonly Reading[] {
  const { water } = props.picture;
  if (!water) return [];
  const { size, print } = tellerOf(props);
  const { bands, parts, told } = partsOf(props, [
    { kind: 'ran', of: water.ranOffIn, says: ['ran off'] },
    ...(water.heldIn === undefined ? [] : [{ kind: 'held' as const, of: water.heldIn, says: ['held on leaves', 'held'] }]),
    { kind: 'soaked', of: water.soakedIn, says: ['soaked in'] },
  ]);
  const fallen: Water = { rainIn: size(water.fellIn), figure: print(water.fellIn), bands };
  const perIn = water.roomShare === undefined ? wetInPerIn : 1 / Math.max(0.01, size(water.roomShare));
  const wetIn = Math.min(mostWetIn, size(water.soakedIn) * perIn);
  const ground = groundBy(coverOf(props), { wetIn, rainIn: fallen.rainIn });
  const soon = water.standsAfter !== undefined && size(water.ranOffIn) > 0 ? print(water.standsAfter) : '';
  const tipped = (room: Room) => ({ ...room, tip: between(18, wetIn * room.perIn - 2, room.soil - 8) });
  return [
    {
      ground,
      curtainIn: fallen.rainIn,
      ranIn: size(water.ranOffIn),
      heights: { sky: 148, soil: 186 },
      needIn: Math.max(ground.rootsIn * 1.1, wetIn * 1.25),
      hasTape: true,
      sum: sumOf(props, water.fellIn, parts),
      told: `${print(water.fellIn)} of rain: ${told}${soon && `, water stands after ${soon}`}`,
      caption: `Bands are as wide as the water is deep; the ground is ${
        water.roomShare === undefined ? 'drawn wet to six times what soaked in, as in dry loam' : 'wet as deep as its room for water gives'
      }. Crumbs, plants and roots are a drawing.`,
      flows: (room) => <WaterShapes water={fallen} room={tipped(room)} />,
      // Water that stands on the ground, and how soon.
      ...(soon !== '' && { shapes: ({ width, sky }: Room) => <path class="ponded" d={`M0 ${sky - 7}H${width}v8H0z`} /> }),
      labels: (room) => [
        ...waterLabels(fallen, tipped(room)),
        ...(soon === '' || room.isNarrow
          ? []
          : [
              figure(soon, place(room.from - 8, room.sky - 14, 'on-rain', 'end')),
              name(['stands after', 'after'], place(room.from - 8, room.sky - 34, 'on-rain', 'end')),
            ]),
      ],
    },
  ];
}
export const Face = faceOf(read);
