import { between } from '../noise.ts';
import { tenth } from '../readings.ts';
import { faceOf } from './Face.tsx';
import type { Room } from './labels.ts';
import { coverOf, type FaceProps, groundBy, type Reading, sumOf, tellerOf } from './reading.ts';
import { partsOf, type Water, WaterShapes, waterLabels } from './water.tsx';

/** Water put on a tray of soil, and what the jars caught of it. */
function read(props: FaceProps): readonly Reading[] {
  const { tray } = props.picture;
  if (!tray) return [];
  const { size, print } = tellerOf(props);
  const [rainIn, soilIn] = [size(tray.rainIn), size(tray.soilIn)];
  const caught = size(tray.ranOff) + size(tray.cameThrough) + size(tray.stayed);
  // Jars are read with an error: the bands share the curtain as the readings share their sum. Before anybody poured there are none.
  const { bands, parts, told } = partsOf(
    props,
    caught > 0
      ? [
          { kind: 'ran', of: tray.ranOff, says: ['ran off'] },
          { kind: 'soaked', of: tray.stayed, says: ['stayed in it'] },
          { kind: 'through', of: tray.cameThrough, says: ['came out below'] },
        ]
      : [],
    rainIn / Math.max(1e-9, caught),
  );
  const fallen: Water = { rainIn, figure: print(tray.rainIn), bands };
  const ground = groundBy(coverOf(props), { wetIn: caught > 0 ? soilIn : 0, rootsIn: soilIn, rainIn });
  const tipped = (room: Room) => ({ ...room, tip: between(18, room.soil - 10, room.soil) });
  return [
    {
      ground,
      curtainIn: rainIn,
      ranIn: bands.find(({ kind }) => kind === 'ran')?.depthIn ?? 0,
      heights: { sky: 148, soil: 104, foot: 46 },
      needIn: soilIn,
      isExact: true,
      hasTape: false,
      // Jars that hold more than was poured make no sum; the caution says that it is reading error.
      sum: bands.length > 0 && caught <= (1 + 1e-9) * size(tray.poured) ? sumOf(props, tray.poured, parts) : undefined,
      told: `${print(tray.rainIn)} of rain on the tray${told && `: ${told}`}`,
      caption: 'Bands are as wide as the water is deep on the tray. How wet the soil is, crumbs, plants and roots are a drawing.',
      flows: (room) => <WaterShapes water={fallen} room={tipped(room)} />,
      // A wall high behind and low where water leaves, and a wire floor.
      shapes: ({ width, sky, soil }) => (
        <>
          <path class="tray" d={`M3 ${sky - 16}V${tenth(sky + soil)}M${tenth(width - 3)} ${sky + 2}V${tenth(sky + soil)}`} />
          <path class="tray-floor" d={`M3 ${tenth(sky + soil)}H${tenth(width - 3)}`} />
        </>
      ),
      labels: (room) => waterLabels(fallen, tipped(room)),
    },
  ];
}
export const Face = faceOf(read);
