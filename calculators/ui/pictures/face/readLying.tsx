import { tenth } from '../readings.ts';
import { faceOf } from './Face.tsx';
import { coverOf, type FaceProps, figure, groundBy, name, place, type Reading, tellerOf } from './reading.ts';

/** Rain as it would lie on the ground if none of it moved. */
function read(props: FaceProps): readonly Reading[] {
  const { lies } = props.picture;
  if (!lies) return [];
  const { depth, amount } = lies;
  const { size, print } = tellerOf(props);
  const depthIn = size(depth);
  return [
    {
      ground: groundBy(coverOf(props), { rainIn: depthIn }),
      heights: { sky: 158, soil: 120 },
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
    },
  ];
}
export const Face = faceOf(read);
