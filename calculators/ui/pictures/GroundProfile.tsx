import type { Outcome } from '../../kit/define.ts';
import type { GroundProfile as GroundProfilePicture } from '../../kit/pictures.ts';
import { printName } from '../../kit/print.ts';
import { frame, Roots, Stretches } from './Face.tsx';
import { FaceLabels, type MarkedName, Tape } from './faceParts.tsx';
import { grassBlades, stretch } from './groundShapes.ts';
import { evenly } from './noise.ts';
import { labelOf, type PictureProps, rowsIn, sidesOf, sizeIn, tenth } from './readings.ts';
import { SideTitles } from './SideTitles.tsx';

interface Layer {
  readonly topIn: number;
  readonly thicknessIn: number;
  readonly holdsInPerFt: number;
  readonly filled: number;
}
/** Grass above the ground: only a rim, for nothing of it was asked. */
const sky = 34;
/** Pores in a stretch of ground for each inch of water that it can hold: enough to tell a tenth of an inch. */
const poresPerInch = 26;
const drawnCover = 0.55;
const soils = ['soil-a', 'soil-b', 'soil-c'] as const;

function layersOf(picture: GroundProfilePicture, outcome: Outcome): readonly Layer[] {
  const number = (value: unknown): number => (typeof value === 'number' && Number.isFinite(value) ? Math.max(0, value) : 0);
  return rowsIn(outcome, picture.rows).map((row) => ({
    topIn: number(row[picture.top]),
    thicknessIn: number(row[picture.thickness]),
    holdsInPerFt: number(row[picture.holdsInPerFt]),
    filled: Math.min(1, number(row[picture.filledPercent]) / 100),
  }));
}

/** Dots on an even scatter: the first of them are full, so that a layer fills up without any dot moving. */
function poreDots({ layer, height, part }: { readonly layer: Layer; readonly height: number; readonly part: 'full' | 'empty' }): string {
  const count = Math.round(poresPerInch * layer.holdsInPerFt * (layer.thicknessIn / 12));
  const full = Math.round(count * layer.filled);
  return Array.from({ length: count }, (_, index) => {
    if (index < full !== (part === 'full')) return '';
    const [across, down] = evenly(index);
    return `M${tenth(across * stretch)} ${tenth(3 + down * Math.max(0, height - 6))}h0`;
  }).join('');
}

interface ColumnProps {
  readonly layers: readonly Layer[];
  readonly mostIn: number;
  readonly deepestIn: number;
  readonly x: number;
  readonly width: number;
  readonly soilUnits: number;
  readonly id: string;
}
function Column({ layers, mostIn, deepestIn, x, width, soilUnits, id }: ColumnProps) {
  const last = layers.length - 1;
  const taproot = (deepestIn - mostIn) * soilUnits;
  return (
    <>
      <svg x={x} width={width} height={sky} aria-hidden="true">
        <g class="grass" transform={`translate(0 ${sky})`}>
          <Stretches id={`${id}-grass`} d={grassBlades(drawnCover, 20)} width={width} />
        </g>
      </svg>
      <svg x={x} y={sky} width={width} height={frame.soil} aria-hidden="true">
        <rect class="bedrock" width={width} height={frame.soil} />
        {layers.map((layer, index) => {
          const [y, height] = [tenth(layer.topIn * soilUnits), tenth(layer.thicknessIn * soilUnits)];
          return (
            <g key={layer.topIn} transform={`translate(0 ${y})`}>
              <rect class={`layer ${index === 0 ? soils[0] : index === last ? soils[2] : soils[1]}`} width={width} height={height} />
              <g class="pore is-empty">
                <Stretches id={`${id}-empty${index}`} d={poreDots({ layer, height, part: 'empty' })} width={width} />
              </g>
              <g class="pore is-full">
                <Stretches id={`${id}-full${index}`} d={poreDots({ layer, height, part: 'full' })} width={width} />
              </g>
              {index > 0 && <path class="seam" d={`M0 0H${width}`} />}
            </g>
          );
        })}
        {mostIn > 0 && <Roots id={`${id}-roots`} depth={mostIn * soilUnits} width={width} salt={20} />}
        {taproot > 0 && (
          <path
            class="taproot"
            d={`M${width / 2} ${tenth(mostIn * soilUnits * 0.8)}q-5 ${tenth(taproot * 0.4)} 1 ${tenth(taproot * 0.7)}t-3 ${tenth(taproot * 0.3 + mostIn * soilUnits * 0.2)}`}
          />
        )}
        {mostIn > 0 && <path class="rooted" d={`M0 ${tenth(mostIn * soilUnits)}H${width}`} />}
      </svg>
    </>
  );
}

const namesOf = ({ holds, has, missing, mostRoots, deepestRoot }: GroundProfilePicture): readonly MarkedName[] => [
  ['holds', holds],
  ['water', has],
  ['missing', missing],
  ['roots', mostRoots],
  ['roots', deepestRoot],
];

/** The ground as it was dug and felt. Two managements are two faces of one cut, to one scale. */
export function GroundProfile({ calculator, picture, outcome, other, titles, system, id }: PictureProps<GroundProfilePicture>) {
  const sides = sidesOf({ outcome, other, titles });
  const faces = sides.map((side) => ({
    layers: layersOf(picture, side.outcome),
    mostIn: sizeIn(side.outcome, picture.mostRoots),
    deepestIn: sizeIn(side.outcome, picture.deepestRoot),
  }));
  const bottoms = faces.flatMap(({ layers, mostIn, deepestIn }) => [mostIn, deepestIn, ...layers.map((layer) => layer.topIn + layer.thicknessIn)]);
  const deepIn = Math.max(12, ...bottoms) * 1.03;
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
    <figure class={`picture soil-face ground-profile${pair ? ' pair' : ''}`}>
      <SideTitles sides={sides} />
      <svg
        viewBox={`0 0 ${width} ${sky + frame.soil}`}
        role="img"
        aria-label={`${calculator.title}: the ground as it stands`}
        aria-describedby={`${id}-said`}
      >
        <desc id={`${id}-said`}>{said}</desc>
        {faces.map((face, index) => (
          <Column
            key={sides[index]?.is}
            {...face}
            x={!pair ? tape : index === 0 ? head : head + faceWidth + tape}
            width={faceWidth}
            soilUnits={soilUnits}
            id={`${id}-${index}`}
          />
        ))}
        <Tape x={pair ? head + faceWidth : 0} sky={sky} soilUnits={soilUnits} deepIn={deepIn} system={system} pair={pair} />
      </svg>
      <FaceLabels calculator={calculator} names={namesOf(picture)} sides={sides} system={system} />
      <figcaption>
        Each layer is as thick as you dug it. The more water a layer can hold, the closer its pores stand; light ones are full today, dark ones empty.
        The dashed line is as deep as most roots go.
      </figcaption>
    </figure>
  );
}
