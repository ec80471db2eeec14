import { between } from '../noise.ts';
import { tenth } from '../readings.ts';
import { faceOf } from './Face.tsx';
import { anInch, type FaceProps, figure, groundBy, place, type Reading, tellerOf } from './reading.ts';

/** Water goes straight down inside a ring, and spreads to the sides below it. */
function bulb(width: number, deep: number, half: number, inserted: number): string {
  const [middle, below] = [width / 2, deep - inserted];
  const wide = half + Math.min(below * 0.9, width / 2 - half - 6);
  const [left, right] = [tenth(middle - half), tenth(middle + half)];
  return `M${left}-9V${tenth(inserted)}C${tenth(middle - wide)} ${tenth(inserted)} ${tenth(middle - wide)} ${tenth(deep)} ${tenth(middle)} ${tenth(deep)}S${tenth(middle + wide)} ${tenth(inserted)} ${right} ${tenth(inserted)}V-9z`;
}

/** A ring in the ground, to one scale with it. */
function read(props: FaceProps): readonly Reading[] {
  const { ring } = props.picture;
  if (!ring) return [];
  const { size, print } = tellerOf(props);
  const [acrossIn, insertedIn, waterIn] = [size(ring.acrossIn), size(ring.insertedIn), size(ring.waterIn)];
  const above = (perIn: number): number => between(10, (waterIn + 1.2) * perIn, 52);
  return [
    {
      ground: groundBy(0.55, {
        wetIn: insertedIn + 3 * waterIn,
        wetArea: ({ width, perIn }) => ({ d: bulb(width, (insertedIn + 3 * waterIn) * perIn, (acrossIn / 2) * perIn, insertedIn * perIn), spot: 0 }),
      }),
      heights: { sky: 112, soil: 176 },
      needIn: Math.max(9, (insertedIn + 3 * waterIn) * 1.25),
      mostPerIn: (width) => (width * 0.52) / Math.max(0.01, acrossIn),
      hasTape: true,
      told: `${anInch(props)} of water in ${print(ring.inchMin)}, ${print(ring.rate)}; the ring is ${print(ring.acrossIn)} wide and stands ${print(ring.insertedIn)} deep`,
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
    },
  ];
}
export const Face = faceOf(read);
