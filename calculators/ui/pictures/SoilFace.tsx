import type { Outcome } from '../../kit/define.ts';
import type { SoilFace as SoilFacePicture } from '../../kit/pictures.ts';
import { printName } from '../../kit/print.ts';
import { Face, type FaceDepths, frame } from './Face.tsx';
import { FaceLabels, type MarkedName, Tape } from './faceParts.tsx';
import { labelOf, type PictureProps, sidesOf, sizeIn } from './readings.ts';
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

const namesOf = (picture: SoilFacePicture): readonly MarkedName[] => [
  ['rain', picture.rain],
  ['runs-off', picture.runsOff],
  ['held', picture.heldFirst],
  ['soaks', picture.soaksIn],
  ...(picture.rootsIn === undefined ? [] : [['roots', picture.rootsIn] as const]),
];

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
        <Tape x={pair ? head + faceWidth : 0} sky={frame.sky} soilUnits={soilUnits} deepIn={deepIn} system={system} pair={pair} />
      </svg>
      <FaceLabels calculator={calculator} names={namesOf(picture)} sides={sides} system={system} />
      <figcaption>
        Arrows are as wide as the water is deep. The ground is drawn wet down to six times the water that soaks in, as in dry loam: sand wets deeper,
        clay less. Layers and pores are a drawing, not a measurement.
      </figcaption>
    </figure>
  );
}
