import type { FaceLoss } from '../../../kit/pictures.ts';
import { tenth } from '../readings.ts';
import { faceOf } from './Face.tsx';
import { standOf } from './growth.ts';
import { anInch, coverOf, type FaceProps, figure, groundBy, name, place, type Reading, tellerOf } from './reading.ts';

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
    heights: { sky: air, soil: 228 },
    needIn: Math.max(9, gone * 1.5),
    hasTape: true,
    title: isPlowed ? { is: 'plain', title: 'Plowed' } : { is: 'this', title: 'This pasture' },
    told: `${isPlowed ? 'plowed: ' : ''}${amount} gone in thirty years${saysYears}`,
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
function read(props: FaceProps, isCompared: boolean): readonly Reading[] {
  const { loss } = props.picture;
  return loss ? [readOneLoss(props, loss, false), ...(isCompared ? [] : [readOneLoss(props, loss.plowed, true)])] : [];
}
export const Face = faceOf(read);
