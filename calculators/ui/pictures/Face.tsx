import type { ComponentChildren } from 'preact';
import {
  cracks,
  downArrow,
  drops,
  grassBlades,
  litter,
  pieceThickness,
  pores,
  poreThickness,
  rainStrokes,
  roots,
  sidewaysArrow,
  soilPieces,
  stretch,
  wetZone,
} from './groundShapes.ts';
import { tenth } from './readings.ts';

/** Drawing units. At 340 wide the picture stands on a phone at about its own size. */
export const frame = { width: 340, sky: 104, soil: 186, head: 14, tape: 40 } as const;
/** Layers as they are drawn, not as they were found. */
const topsoilIn = 9;
const subsoilIn = 24;
/** Dry loam holds about 2 in of water a foot between dry and wet to the touch, so an inch wets about 6 in: common practice. The picture's caption says so. */
const wetInPerIn = 6;

export interface FaceDepths {
  readonly rainIn: number;
  readonly runsOffIn: number;
  readonly heldFirstIn: number;
  readonly soaksInIn: number;
  /** Share of the ground under cover, 0 to 1; what was not counted is drawn half covered on both sides. */
  readonly cover: number;
  /** How open the ground is drawn, 0 to 1: by its cover, or by the share of the rain that stayed. */
  readonly open: number;
  readonly rootsIn: number | undefined;
}

/** One stretch of a shape, repeated over the width. */
export function Stretches({ id, d, width }: { readonly id: string; readonly d: string; readonly width: number }) {
  if (d === '') return null;
  const more = Array.from({ length: Math.ceil(width / stretch) - 1 }, (_, index) => (index + 1) * stretch);
  return (
    <>
      <path id={id} d={d} />
      {more.map((x) => (
        <use key={x} href={`#${id}`} x={x} />
      ))}
    </>
  );
}

/** Every second stretch of roots is a mirrored, shallower one. */
export function Roots({ id, depth, width, salt }: { readonly id: string; readonly depth: number; readonly width: number; readonly salt: number }) {
  const more = Array.from({ length: Math.ceil(width / stretch) - 1 }, (_, index) => index + 1);
  return (
    <g class="roots" transform={`scale(1 ${tenth(depth) / 100})`}>
      <path id={id} d={roots(salt)} />
      {more.map((at) => (
        <use key={at} href={`#${id}`} transform={at % 2 ? `translate(${(at + 1) * stretch})scale(-1 .87)` : `translate(${at * stretch})`} />
      ))}
    </g>
  );
}

interface FaceProps {
  readonly depths: FaceDepths;
  readonly x: number;
  readonly width: number;
  readonly toward: -1 | 1;
  readonly waterUnits: number;
  readonly soilUnits: number;
  readonly id: string;
}
/** One face of the cut: sky, sod and ground, and what the rain did there. */
export function Face({ depths, x, width, toward, waterUnits, soilUnits, id }: FaceProps) {
  const { rainIn, cover, open, rootsIn = 0 } = depths;
  const { sky, soil } = frame;
  const salt = toward === -1 ? 20 : 50;
  const [topsoil, subsoil] = [topsoilIn * soilUnits, subsoilIn * soilUnits];
  const [runsOff, soaksIn] = [depths.runsOffIn * waterUnits, depths.soaksInIn * waterUnits];
  const wet = depths.soaksInIn * wetInPerIn * soilUnits;
  const outer = toward === -1 ? 0 : width;
  const layer = (depth: number, bend: number): string => `M0-9V${tenth(depth)}q${width / 4} ${bend} ${width / 2} 0t${width / 2} 0V-9z`;
  const clipped = (what: string): string => `url(#${id}-${what})`;
  const Wet = ({ children }: { readonly children: ComponentChildren }) => <g clip-path={clipped('wet')}>{children}</g>;
  return (
    <>
      <svg x={x} y={sky} width={width} height={soil} aria-hidden="true">
        <defs>
          <clipPath id={`${id}-top`}>
            <path d={layer(topsoil, -2)} />
          </clipPath>
          <clipPath id={`${id}-wet`}>
            <path id={`${id}-front`} d={wetZone({ depth: wet, open, width, salt })} />
          </clipPath>
        </defs>
        <rect class="soil-c" width={width} height={soil} />
        <path class="soil-b" d={layer(subsoil, 3)} />
        <path class="soil-a" d={layer(topsoil, -2)} />
        <g class="cracks">
          <g id={`${id}-cracks`} transform={`scale(1 ${tenth(soilUnits * 10) / 50})`}>
            <Stretches id={`${id}-crack`} d={cracks} width={width} />
          </g>
        </g>
        <Wet>
          <rect class="wet" width={width} height={soil} />
          <use class="filled" href={`#${id}-cracks`} />
          <rect class="soaked" width={width} height={topsoil + 3} clip-path={clipped('top')} />
        </Wet>
        <g class="pieces" stroke-width={pieceThickness(open)} clip-path={clipped('top')}>
          <Stretches id={`${id}-pieces`} d={soilPieces(open, topsoil, salt)} width={width} />
        </g>
        <g class="pores">
          <g id={`${id}-pores`}>
            {[0, 1, 2].map((size) => (
              <g key={size} stroke-width={poreThickness(size, open)}>
                <Stretches id={`${id}-pores${size}`} d={pores(size, open, soil, salt)} width={width} />
              </g>
            ))}
          </g>
        </g>
        <Wet>
          <use class="filled" href={`#${id}-pores`} />
        </Wet>
        {rootsIn > 0 && <Roots id={`${id}-roots`} depth={rootsIn * soilUnits} width={width} salt={salt} />}
        {rootsIn > 0 && <path class="rooted" d={`M0 ${tenth(rootsIn * soilUnits)}H${width}`} />}
        {wet > 0 && <use class="front" href={`#${id}-front`} />}
        {soaksIn > 0 && <path class="soaks" d={downArrow({ middle: width / 2, wide: soaksIn, tip: Math.min(soil - 6, Math.max(12, wet)) })} />}
      </svg>
      <svg x={x} width={width} height={sky} aria-hidden="true">
        <g class="rain">
          <Stretches id={`${id}-rain`} d={rainStrokes(rainIn, sky - 6)} width={width} />
        </g>
        <svg y={sky} width={width} overflow="visible" aria-hidden="true">
          {open < 1 && <path class="crust" d={`M0-.5H${width}`} opacity={tenth(1 - open)} />}
          <g id={`${id}-sod`} class="grass">
            <Stretches id={`${id}-grass`} d={grassBlades(cover, salt)} width={width + stretch / 2} />
          </g>
          <use href={`#${id}-sod`} x={-stretch / 2} />
          <g class="litter">
            <Stretches id={`${id}-litter`} d={litter(cover, salt)} width={width} />
          </g>
          <g class="drops">
            <Stretches id={`${id}-drops`} d={drops(depths.heldFirstIn, 2 + 20 * cover)} width={width} />
          </g>
        </svg>
      </svg>
      {runsOff > 0 && (
        <path
          class="runs-off"
          d={sidewaysArrow({ from: x + outer - toward * width * 0.5, neck: x + outer, middle: sky - 3 - runsOff / 2, wide: runsOff, toward })}
        />
      )}
    </>
  );
}
