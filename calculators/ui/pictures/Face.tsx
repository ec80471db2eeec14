import { Fragment } from 'preact';
import type { Face as FacePicture } from '../../kit/pictures.ts';
import { convert, type UnitSystem } from '../../units/units.ts';
import { depthMarks, tapeUnit } from './axis.ts';
import { drawGround } from './FaceGround.tsx';
import type { Reading, Room } from './faceReading.ts';
import { type Anchor, type Label, layLabels, type Wanted } from './labels.ts';
import { between } from './noise.ts';
import { readFace } from './readFace.ts';
import { type PictureProps, type Side, sidesOf, tenth } from './readings.ts';
import { SideTitles } from './SideTitles.tsx';
import { Streaks, type WaterFrame, WaterShapes, waterLabels } from './water.tsx';

/** Pixels between the faces of a pair, for the tape. */
const tapeWidth = 32;
/** An inch of water is never wider than this, all of it no more than a third of one face, and what runs off no thicker than this. */
const most = { perIn: 42, share: 0.335, narrowShare: 0.42, ran: 82 } as const;

const swap: Readonly<Record<Anchor, Anchor>> = { start: 'end', middle: 'middle', end: 'start' };
const ranIn = ({ water }: Reading): number => water?.bands.find(({ kind }) => kind === 'ran')?.depthIn ?? 0;

/** One scale for all faces. */
function waterScale(readings: readonly Reading[], width: number, isNarrow: boolean): number {
  const deepest = Math.max(0, ...readings.map(({ water }) => water?.rainIn ?? 0));
  const share = isNarrow ? most.narrowShare : most.share;
  return deepest > 0 ? Math.min(most.perIn, (width * share) / deepest, most.ran / Math.max(0.01, ...readings.map(ranIn))) : 0;
}
/** Whole threes of inches, so that the tape ends on a mark; a tray is as deep as it is. */
function cutOf(readings: readonly Reading[]): number {
  const deepest = Math.max(...readings.map(({ needIn }) => needIn));
  return readings.every(({ isExact }) => isExact) ? Math.max(0.5, deepest) : between(9, Math.ceil(deepest / 3 - 1e-9) * 3, 75);
}

function tapeMarks(deepIn: number, perIn: number, system: UnitSystem): readonly { readonly y: number; readonly says: string }[] {
  return depthMarks(deepIn, 26 / perIn, system).map((mark) => ({ y: convert(mark, tapeUnit[system], 'in') * perIn, says: String(mark) }));
}

const Texts = ({ labels }: { readonly labels: readonly Label[] }) => (
  <>
    {labels.map(({ words, size, x, y, anchor, on }) => (
      <text key={`${x} ${y}`} class={`type-${size} ${on}`} x={tenth(x)} y={tenth(y)} text-anchor={anchor}>
        {words}
      </text>
    ))}
  </>
);

/** A cut through the ground, drawn at the width that it gets. Two managements are two faces of one cut, to one scale, with the tape between them. */
export function Face(props: PictureProps<FacePicture>) {
  const { picture, calculator, outcome, other, titles, system, id, widthPx = 376 } = props;
  const sides = sidesOf({ outcome, other, titles });
  const readings = sides.flatMap((side) => readFace({ picture, calculator, outcome: side.outcome, system }, sides.length > 1));
  const [first] = readings;
  if (!first) return null;
  const isPair = readings.length > 1;
  const hasTape = readings.some((reading) => reading.hasTape);
  const tall = (part: 'sky' | 'soil'): number => Math.max(...readings.map(({ heights }) => heights[part][isPair ? 1 : 0]));
  const [sky, soil, foot] = [tall('sky'), tall('soil'), first.heights.foot ?? 0];
  const each = isPair ? (widthPx - tapeWidth) / 2 : widthPx;
  const perIn = Math.min(soil / cutOf(readings), ...readings.map(({ mostPerIn }) => mostPerIn?.(each) ?? Number.POSITIVE_INFINITY));
  const tapeAt = hasTape ? tapeMarks(soil / perIn, perIn, system) : [];
  const height = sky + soil + foot;
  const isNarrow = isPair && each < 250;
  const waterPerIn = waterScale(readings, each, isNarrow);
  const from = isNarrow ? 42 : Math.round(each * 0.325);
  const drawn = readings.map((reading, index) => {
    const x = index * (each + tapeWidth);
    const isLeft = isPair && index === 0;
    const faceId = `${id}-${index}`;
    const room: Room = { id: faceId, width: each, sky, soil, perIn, from, isNarrow };
    const frame = { ...room, salt: isLeft ? 20 : 50 };
    const opposite = readings[1 - index];
    const waterFrame: WaterFrame = {
      width: each,
      sky,
      foot: height,
      perIn: waterPerIn,
      from,
      tip: between(18, reading.ground.wetIn * perIn - 2, soil - 8),
      otherRanIn: isPair && opposite ? ranIn(opposite) : undefined,
      isPair: isNarrow,
      salt: 3,
    };
    const tape: readonly Wanted[] = isPair
      ? []
      : tapeAt.map(({ y, says }, at) => ({
          words: [at === 0 ? `${says} ${tapeUnit[system]}` : says],
          size: 15,
          places: [{ x: 13, y: sky + y + 5, anchor: 'start', on: 'on-soil' }],
        }));
    const wanted = [...tape, ...(reading.water ? waterLabels(reading.water, waterFrame) : []), ...(reading.labels?.(room) ?? [])];
    const labels = layLabels(wanted, each, height).map((label) => ({
      ...label,
      x: x + (isLeft ? each - label.x : label.x),
      anchor: isLeft ? swap[label.anchor] : label.anchor,
    }));
    const { behind, before } = drawGround(reading.ground, frame);
    return {
      labels,
      shapes: (
        <svg key={faceId} x={x} width={each} height={height} aria-hidden="true">
          {reading.rainIn > 0 && <Streaks width={each} sky={sky} rainIn={reading.rainIn} salt={frame.salt + 60} />}
          {behind}
          {reading.water && (
            <g {...(isLeft && { transform: `translate(${each})scale(-1 1)` })}>
              <WaterShapes water={reading.water} frame={waterFrame} />
            </g>
          )}
          {reading.shapes?.(room)}
          {before}
        </svg>
      ),
    };
  });
  return (
    <figure class={`picture face${isPair ? ' pair' : ''}`}>
      <SideTitles sides={sides.length > 1 ? sides : readings.flatMap(({ title }) => (title ? [title] : []))} />
      <svg viewBox={`0 0 ${widthPx} ${height}`} width={widthPx} height={height} role="img" aria-label={toldOf(sides, readings)}>
        {drawn.map(({ shapes }) => shapes)}
        {isPair ? (
          hasTape && <Between x={each} sky={sky} marks={tapeAt} system={system} />
        ) : (
          <path class="tape-on-soil" d={tapeAt.map(({ y }) => `M0 ${tenth(sky + y)}h9`).join('')} />
        )}
        <Texts labels={drawn.flatMap(({ labels }) => labels)} />
      </svg>
      {readings.some(({ sum }) => sum) && (
        <div class="sums">{readings.map(({ sum }, index) => sum && <SumLine key={sides[index]?.is ?? index} {...sum} isShort={isNarrow} />)}</div>
      )}
      {isNarrow && first.sum && <Key {...first.sum} />}
      <figcaption>{(readings.find((reading) => reading.hasTape) ?? first).caption}</figcaption>
    </figure>
  );
}

/** The tape that hangs between the faces. */
const Between = ({
  x,
  sky,
  marks,
  system,
}: {
  readonly x: number;
  readonly sky: number;
  readonly marks: ReturnType<typeof tapeMarks>;
  readonly system: UnitSystem;
}) => (
  <>
    <path class="tape" d={marks.map(({ y }) => `M${x} ${tenth(sky + y)}h4M${x + tapeWidth - 4} ${tenth(sky + y)}h4`).join('')} />
    <text class="type-15 on-paper" x={x + tapeWidth / 2} y={sky + 12} text-anchor="middle">
      {tapeUnit[system]}
    </text>
    {marks.map(({ y, says }) => (
      <text key={says} class="type-15 on-paper" x={x + tapeWidth / 2} y={tenth(sky + y + 5)} text-anchor="middle">
        {says}
      </text>
    ))}
  </>
);

const SumLine = ({ parts, total, of, isShort }: NonNullable<Reading['sum']> & { readonly isShort: boolean }) => (
  <p class="sum">
    {parts.map(({ kind, figure, says }, index) => (
      <Fragment key={kind}>
        <span>
          {index > 0 && '+ '}
          <b class={`sum-${kind}`}>{isShort ? figure : `${figure} ${says}`}</b>
        </span>{' '}
      </Fragment>
    ))}
    <span>
      = <b>{isShort ? total : `${total}${of}`}</b>
    </span>
  </p>
);

/** What the shapes of a pair are: there is no room for names on them. */
const marks = {
  ran: 'M1 5h9l9 5-9 5H1z',
  held: 'M4 1h12v9a6 6 0 0 1-12 0z',
  soaked: 'M5 1h10v11l-5 7-5-7z',
  through: 'M5 1h10v11l-5 7-5-7z',
} as const;
const isMarked = (kind: string): kind is keyof typeof marks => Object.hasOwn(marks, kind);
const Key = ({ parts }: NonNullable<Reading['sum']>) => (
  <p class="key">
    {parts.map(({ kind, says }) => (
      <span key={kind}>
        {isMarked(kind) && (
          <svg viewBox="0 0 20 20" width="18" height="18" aria-hidden="true">
            <path class={kind} d={marks[kind]} />
          </svg>
        )}
        <span class={`sum-${kind}`}>{says}</span>
      </span>
    ))}
  </p>
);

const toldOf = (sides: readonly Side[], readings: readonly Reading[]): string =>
  `${readings.map(({ told }, index) => `${sides[index]?.title ? `${sides[index].title}: ` : ''}${told}`).join('; ')}.`;
