import { Fragment } from 'preact';
import type { Face as FacePicture } from '../../../kit/pictures.ts';
import { convert, type UnitSystem } from '../../../units/units.ts';
import { between } from '../noise.ts';
import { type PictureProps, type Side, sidesOf, tenth, usualWidthPx } from '../readings.ts';
import { SideTitles } from '../SideTitles.tsx';
import { drawGround } from './drawGround.tsx';
import { type Anchor, type Label, layLabels, type Room, type Wanted } from './labels.ts';
import { slant } from './rain.ts';
import type { ReadFace, Reading } from './reading.ts';
import { depthMarks, tapeUnit } from './tape.ts';

/** Pixels between the faces of a pair, for the tape. */
const tapeWidth = 32;
/** Beside the questions of a wide screen all of it must be in view: from that width on deep ground is drawn so much less tall. */
const wide = { fromPx: 520, lessPx: 66, leastPx: 120 } as const;
/** An inch of water is never wider than this, all of it no more than a third of one face, and what runs off no thicker than this. */
const limits = { perIn: 42, share: 1 / 3, narrowShare: 0.42, ran: 82 } as const;

const swap: Readonly<Record<Anchor, Anchor>> = { start: 'end', middle: 'middle', end: 'start' };
/** One scale for all faces. */
function waterScale(readings: readonly Reading[], width: number, isNarrow: boolean): number {
  const most = (of: 'curtainIn' | 'ranIn'): number => Math.max(0.01, ...readings.map((reading) => reading[of] ?? 0.01));
  const share = isNarrow ? limits.narrowShare : limits.share;
  return Math.min(limits.perIn, (width * share) / most('curtainIn'), limits.ran / most('ranIn'));
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
function AnyFace(props: PictureProps<FacePicture> & { readonly read: ReadFace }) {
  const { picture, calculator, outcome, other, titles, system, id, read, heights, widthPx = usualWidthPx } = props;
  const sides = sidesOf({ outcome, other, titles });
  const readings = sides.flatMap((side) => read({ picture, calculator, outcome: side.outcome, system }, sides.length > 1));
  const [first] = readings;
  if (!first) return null;
  const isPair = readings.length > 1;
  const hasTape = readings.some((reading) => reading.hasTape);
  const tall = (part: 'sky' | 'soil'): number => heights?.[part] ?? Math.max(...readings.map((reading) => reading.heights[part]));
  const [sky, deep, foot] = [tall('sky'), tall('soil'), first.heights.foot ?? 0];
  const soil = widthPx < wide.fromPx || heights ? deep : Math.max(deep - wide.lessPx, Math.min(deep, wide.leastPx));
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
    const room: Room = {
      ...{ id: faceId, width: each, sky, soil, height, perIn, waterPerIn, from, isNarrow },
      otherRanIn: readings[1 - index]?.ranIn ?? (isPair ? 0 : reading.ranIn) ?? 0,
      salt: isLeft ? 20 : 50,
    };
    const tape: readonly Wanted[] = isPair
      ? []
      : tapeAt.map(({ y, says }, at) => ({
          words: [at === 0 ? `${says} ${tapeUnit[system]}` : says],
          size: 15,
          places: [{ x: 13, y: sky + y + 5, anchor: 'start', on: 'on-soil' }],
        }));
    const wanted = [...tape, ...(reading.labels?.(room) ?? [])];
    const labels = layLabels(wanted, each, height).map((label) => ({
      ...label,
      x: x + (isLeft ? each - label.x : label.x),
      anchor: isLeft ? swap[label.anchor] : label.anchor,
    }));
    const { behind, before } = drawGround(reading.ground, room);
    return {
      labels,
      shapes: (
        <svg key={faceId} x={x} width={each} height={height} aria-hidden="true">
          {reading.ground.rainIn > 0 && (
            <path class="streaks" d={slant(each, sky - 4, (each * between(0.3, reading.ground.rainIn, 4)) / 18, room.salt + 60)} />
          )}
          {behind}
          {reading.flows && <g {...(isLeft && { transform: `translate(${each})scale(-1 1)` })}>{reading.flows(room)}</g>}
          {reading.shapes?.(room)}
          {before}
        </svg>
      ),
    };
  });
  // The tape hangs between the faces, or its marks stand on the only one.
  const ticksAt = (y: number): string => (isPair ? `M${each} ${y}h4M${each + tapeWidth - 4} ${y}h4` : `M0 ${y}h9`);
  const tapeLabel = (words: string, y: number): Label => ({ words, size: 15, x: each + tapeWidth / 2, y, anchor: 'middle', on: 'on-paper' });
  const onTape = isPair && hasTape ? [tapeLabel(tapeUnit[system], sky + 12), ...tapeAt.map(({ y, says }) => tapeLabel(says, sky + y + 5))] : [];
  return (
    <figure class={`picture face${isPair ? ' pair' : ''}`}>
      <SideTitles sides={sides.length > 1 ? sides : readings.flatMap(({ title }) => (title ? [title] : []))} />
      <svg viewBox={`0 0 ${widthPx} ${height}`} width={widthPx} height={height} role="img" aria-label={toldOf(sides, readings)}>
        {drawn.map(({ shapes }) => shapes)}
        <path class={isPair ? 'tape' : 'tape-on-soil'} d={tapeAt.map(({ y }) => ticksAt(tenth(sky + y))).join('')} />
        <Texts labels={[...onTape, ...drawn.flatMap(({ labels }) => labels)]} />
      </svg>
      {readings.some(({ sum }) => sum) && (
        <div class="sums">{readings.map(({ sum }, index) => sum && <SumLine key={sides[index]?.is ?? index} {...sum} isShort={isNarrow} />)}</div>
      )}
      {isNarrow && first.sum && <Key {...first.sum} />}
      <figcaption>{(readings.find((reading) => reading.hasTape) ?? first).caption}</figcaption>
    </figure>
  );
}

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

/** What the figures of a narrow pair are. */
const Key = ({ parts }: NonNullable<Reading['sum']>) => (
  <p class="face-key">
    {parts.map(({ kind, says, mark }) => (
      <span key={kind}>
        {mark && (
          <svg viewBox="0 0 20 20" width="18" height="18" aria-hidden="true">
            <path class={kind} d={mark} />
          </svg>
        )}
        <span class={`sum-${kind}`}>{says}</span>
      </span>
    ))}
  </p>
);

const toldOf = (sides: readonly Side[], readings: readonly Reading[]): string =>
  `${readings.map(({ told }, index) => `${sides[index]?.title ? `${sides[index].title}: ` : ''}${told}`).join('; ')}.`;

/** What draws the faces of one subject. */
export const faceOf = (read: ReadFace) => (props: PictureProps<FacePicture>) => <AnyFace read={read} {...props} />;
