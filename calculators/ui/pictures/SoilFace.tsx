import type { Calculator, Outcome } from '../../kit/define.ts';
import type { SoilFace as SoilFacePicture } from '../../kit/pictures.ts';
import { printName } from '../../kit/print.ts';
import { convert, type UnitSystem } from '../../units/units.ts';
import { depthMarks } from './axis.ts';
import { Face, type FaceDepths, frame } from './Face.tsx';
import { labelOf, type PictureProps, type Side, sidesOf, sizeIn, tenth } from './readings.ts';
import { SideTitles } from './SideTitles.tsx';

/** How deep the cut goes unless roots go deeper. */
const cutIn = 36;
const share = (part: number, all: number): number => (all > 0 ? Math.min(1, part / all) : 0);

function depthsOf(picture: SoilFacePicture, outcome: Outcome): FaceDepths {
  const [rainIn, runsOffIn] = [sizeIn(outcome, picture.rain), sizeIn(outcome, picture.runsOff)];
  const cover = picture.coverPercent === undefined ? undefined : Math.min(1, sizeIn(outcome, picture.coverPercent) / 100);
  return {
    rainIn,
    runsOffIn,
    heldFirstIn: sizeIn(outcome, picture.heldFirst),
    soaksInIn: sizeIn(outcome, picture.soaksIn),
    cover: cover ?? 0.5,
    open: cover ?? 1 - share(runsOffIn, rainIn),
    rootsIn: picture.rootsIn === undefined ? undefined : sizeIn(outcome, picture.rootsIn),
  };
}

/** One scale for all faces: 14 units of width for an inch of water, less when the deepest arrow would outgrow its place. */
const waterUnitsPerIn = (faces: readonly FaceDepths[]): number =>
  Math.min(14, 56 / Math.max(1, ...faces.map((face) => Math.max(face.rainIn, face.runsOffIn, face.soaksInIn))));

interface TapeProps {
  readonly x: number;
  readonly soilUnits: number;
  readonly deepIn: number;
  readonly system: UnitSystem;
  readonly pair: boolean;
}
/** The tape that hangs between the faces, or beside the only one. */
function Tape({ x, soilUnits, deepIn, system, pair }: TapeProps) {
  const unit = system === 'us' ? 'in' : 'mm';
  const marks = depthMarks(deepIn, system).map((mark) => ({ mark, y: tenth(frame.sky + convert(mark, unit, 'in') * soilUnits) }));
  return (
    <g class="tape">
      <path class="marks" d={marks.map(({ y }) => `${pair ? `M${x + 1} ${y}h4` : ''}M${x + frame.tape - 5} ${y}h4`).join('')} />
      {marks.map(({ mark, y }) => (
        <text key={mark} x={x + frame.tape / 2} y={y} dy=".36em">
          {mark === 0 ? unit : mark}
        </text>
      ))}
    </g>
  );
}

const marks = {
  rain: 'M13 2l-3 8M7 7l-3 8M15 11l-2 6',
  'runs-off': 'M1 7v6h9v4l9-7-9-7v4z',
  held: 'M10 2q6 8 6 11a6 6 0 0 1-12 0q0-3 6-11z',
  soaks: 'M7 1v9H3l7 9 7-9h-4V1z',
  roots: 'M10 1v8q-1 5-5 9M10 9q1 5 5 9M10 6q-4 2-6 6M10 6q4 2 6 6',
} as const;
const namesOf = (picture: SoilFacePicture): readonly (readonly [keyof typeof marks, string])[] => [
  ['rain', picture.rain],
  ['runs-off', picture.runsOff],
  ['held', picture.heldFirst],
  ['soaks', picture.soaksIn],
  ...(picture.rootsIn === undefined ? [] : [['roots', picture.rootsIn] as const]),
];

interface LabelsProps {
  readonly calculator: Calculator;
  readonly picture: SoilFacePicture;
  readonly sides: readonly Side[];
  readonly system: UnitSystem;
}
/** The numbers stand in type of the page's own size under their face, what they are between them, with the mark that it has in the picture. */
function Labels({ calculator, picture, sides, system }: LabelsProps) {
  const [first, second] = sides;
  const cell = (side: Side | undefined, name: string) => side && <td>{printName(calculator, side.outcome.values, name, system)}</td>;
  return (
    <table class="face-labels">
      {second && (
        <thead class="picture-said">
          <tr>
            <th scope="col">{first?.title}</th>
            <td />
            <th scope="col">{second.title}</th>
          </tr>
        </thead>
      )}
      <tbody>
        {namesOf(picture).map(([mark, name]) => (
          <tr key={mark}>
            {second && cell(first, name)}
            <th scope="row">
              <svg class={`mark ${mark}`} viewBox="0 0 20 20" width="18" height="18" aria-hidden="true">
                <path d={marks[mark]} />
              </svg>
              {labelOf(calculator, name)}
            </th>
            {cell(second ?? first, name)}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A cut through the ground, drawn from the numbers. Two managements are two faces of one cut, to one scale. */
export function SoilFace({ calculator, picture, outcome, other, titles, system, id }: PictureProps<SoilFacePicture>) {
  const sides = sidesOf({ outcome, other, titles });
  const faces = sides.map((side) => depthsOf(picture, side.outcome));
  const waterUnits = waterUnitsPerIn(faces);
  const deepIn = Math.max(cutIn, ...faces.map((face) => (face.rootsIn ?? 0) * 1.06));
  const soilUnits = frame.soil / deepIn;
  const pair = sides.length === 2;
  const { width, head, tape } = frame;
  const faceWidth = pair ? (width - 2 * head - tape) / 2 : width - head - tape;
  const said = sides
    .map((side) => {
      const told = namesOf(picture).map(([, name]) => `${labelOf(calculator, name)} ${printName(calculator, side.outcome.values, name, system)}`);
      return `${side.title && `${side.title}: `}${told.join(', ')}.`;
    })
    .join(' ');
  return (
    <figure class={`picture soil-face${pair ? ' pair' : ''}`}>
      <SideTitles sides={sides} />
      <svg
        viewBox={`0 0 ${width} ${frame.sky + frame.soil}`}
        role="img"
        aria-label={`${calculator.title}: a cut through the ground`}
        aria-describedby={`${id}-said`}
      >
        <desc id={`${id}-said`}>{said}</desc>
        {faces.map((depths, index) => (
          <Face
            key={sides[index]?.is}
            depths={depths}
            x={!pair ? tape : index === 0 ? head : head + faceWidth + tape}
            width={faceWidth}
            toward={pair && index === 0 ? -1 : 1}
            waterUnits={waterUnits}
            soilUnits={soilUnits}
            id={`${id}-${index}`}
          />
        ))}
        <Tape x={pair ? head + faceWidth : 0} soilUnits={soilUnits} deepIn={deepIn} system={system} pair={pair} />
      </svg>
      <Labels calculator={calculator} picture={picture} sides={sides} system={system} />
      <figcaption>
        Arrows are as wide as the water is deep. The ground is drawn wet down to six times the water that soaks in, as in dry loam: sand wets deeper,
        clay less. Layers and pores are a drawing, not a measurement.
      </figcaption>
    </figure>
  );
}
