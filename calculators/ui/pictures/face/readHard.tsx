import { between, strokes, sway } from '../noise.ts';
import { tenth } from '../readings.ts';
import { Lumps } from './drawGround.tsx';
import { faceOf } from './Face.tsx';
import type { Room } from './labels.ts';
import { type FaceProps, figure, groundBy, name, place, type Reading, tellerOf } from './reading.ts';
import { blocks, wander } from './soil.ts';

/** Thick enough to be seen; nobody measured where it ends. */
const hardIn = 4;
const plates = (fromIn: number) => (room: Room) => {
  const { id, width, perIn, salt } = room;
  const [top, bottom] = [fromIn * perIn, (fromIn + hardIn) * perIn];
  const shapes = blocks({ width, top: top + 3, bottom: bottom - 8, salt: salt + 71 }, { across: 52, tall: 8.5, gap: 1.2 });
  return (
    <g class="hard">
      <path class="hard-0" d={`M0 ${tenth(top)}V${wander(bottom, width, 3, salt + 70)}V${tenth(top)}z`} />
      <Lumps id={`${id}-h`} name="hard" thick={0} shapes={shapes} />
      <path
        class="root"
        d={strokes(
          width / 34,
          (index) =>
            `M${Math.round((index + 0.5) * 34)} ${tenth(top - 1)}q${Math.round(sway(index, salt) * 9)} -3 ${Math.round(sway(index, salt + 1) * 34)} ${index % 2}`,
        )}
      />
    </g>
  );
};
/** How tight the ground is, and where a probe met hard ground. */
function read(props: FaceProps): readonly Reading[] {
  const { hard } = props.picture;
  if (!hard) return [];
  const { density, poresPercent, fromIn } = hard;
  const { size, print } = tellerOf(props);
  const [pores, depthIn] = [size(poresPercent), size(fromIn)];
  const isHard = depthIn > 0;
  const open = between(0.05, (pores - 36) / 22, 1);
  return [
    {
      ground: groundBy(0.7, { open: isHard ? 0.6 : open, ...(isHard && { within: plates(depthIn) }), rootsIn: isHard ? depthIn : 3 + 6 * open }),
      heights: { sky: 50, soil: 210 },
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
    },
  ];
}
export const Face = faceOf(read);
