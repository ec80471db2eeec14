import { noise } from '../noise.ts';
import { tenth } from '../readings.ts';
import { faceOf } from './Face.tsx';
import { type StripKind, stripKinds } from './growth.ts';
import { type FaceProps, figure, groundBy, name, place, type Reading, sumOf, tellerOf } from './reading.ts';

const stonesOn = (feet: readonly number[]): string =>
  feet
    .map((x, index) => {
      const [half, tall] = [4 + 1.5 * noise(index, 118), 4 + 4 * noise(index, 119)];
      return `M${tenth(x - half)} 2q-.5 ${tenth(-tall)} ${tenth(half)} ${tenth(-tall - 1)}t${tenth(half)} ${tenth(tall + 1)}z`;
    })
    .join('');
const counted: Readonly<Record<StripKind, string>> = { plant: 'plant base', litter: 'litter', rock: 'rock', bare: 'bare' };
/** What the steps met: as many strips of the cut. */
function read(props: FaceProps): readonly Reading[] {
  const { counts } = props.picture;
  if (!counts) return [];
  const { size, print } = tellerOf(props);
  const all = Math.max(1, size(counts.all));
  const steps = all === 1 ? 'step' : 'steps';
  const shares = { plant: size(counts.plant) / all, litter: size(counts.litter) / all, rock: size(counts.rock) / all, bare: size(counts.bare) / all };
  const parts = stripKinds.map((kind) => ({ kind, name: counts[kind], says: counted[kind] }));
  return [
    {
      ground: groundBy(1 - shares.bare, { shares, strewn: ({ rock }) => <path class="stone" d={stonesOn(rock)} /> }),
      heights: { sky: 60, soil: 136 },
      needIn: 9,
      hasTape: false,
      sum: sumOf(props, counts.all, parts, ` ${steps}`),
      told: `${print(counts.coveredPercent)} covered: of ${print(counts.all)} ${steps} ${parts.map((part) => `${print(part.name)} on ${counted[part.kind]}`).join(', ')}`,
      caption: 'Each strip of the surface is a share of the steps: plants, litter, rock, and a bare crust. What lies below is a drawing.',
      labels: ({ width, sky }) => [
        figure(print(counts.coveredPercent), place(width / 2, sky + 62, 'on-soil')),
        name(['covered'], place(width / 2, sky + 83, 'on-soil')),
      ],
    },
  ];
}
export const Face = faceOf(read);
