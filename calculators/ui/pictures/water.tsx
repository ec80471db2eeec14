import { type Place, textWidth, type Wanted } from './labels.ts';
import { between, evenly, noise, strokes } from './noise.ts';
import { tenth } from './readings.ts';

export type BandKind = 'held' | 'soaked' | 'through' | 'ran';
/** One part of the rain, from the inner side of a face outward. */
export interface Band {
  readonly kind: BandKind;
  readonly depthIn: number;
  /** As it stands on the arrow, with its unit and without. */
  readonly figure: string;
  readonly bare: string;
  /** What it is, the longest wording first. */
  readonly says: readonly string[];
}
export interface Water {
  /** The rain, inches: the curtain is as wide. */
  readonly rainIn: number;
  readonly figure: string;
  readonly says: readonly string[];
  /** They add up to the rain, or there are none. */
  readonly bands: readonly Band[];
}
/** Pixels; across is counted from the inner side of the face. */
export interface WaterFrame {
  readonly width: number;
  readonly sky: number;
  /** Where the face ends below. */
  readonly foot: number;
  readonly perIn: number;
  /** Where the curtain begins. */
  readonly from: number;
  /** How deep below the surface the water that soaked in comes to its tip. */
  readonly tip: number;
  /** Runoff of the other management, in outline. */
  readonly otherRanIn: number | undefined;
  readonly isPair: boolean;
  readonly salt: number;
}
interface Stream extends Band {
  readonly left: number;
  readonly right: number;
}

const nose = (thick: number): number => between(6, thick * 0.5, 22);
const upright = { curtain: 54, above: 13 } as const;

export function streamsOf({ bands }: Water, { perIn, from }: Pick<WaterFrame, 'perIn' | 'from'>): readonly Stream[] {
  let at = from;
  return bands.map((band) => {
    const left = at;
    at += band.depthIn * perIn;
    return { ...band, left, right: at };
  });
}
const ranOf = ({ bands }: Water): number => bands.find(({ kind }) => kind === 'ran')?.depthIn ?? 0;
/** Where the curtain parts: high enough for the thickest arrow, low enough for its own figure. */
const splitOf = (water: Water, { sky, perIn, otherRanIn = 0 }: WaterFrame): number =>
  water.bands.length === 0 ? sky : Math.max(upright.curtain, sky - Math.max(Math.max(ranOf(water), otherRanIn) * perIn + upright.above, 46));

function shapeOf({ kind, left, right }: Stream, split: number, { sky, foot, width, tip }: WaterFrame): string {
  const [thick, l, r] = [right - left, tenth(left), tenth(right)];
  const start = `M${l} ${tenth(split)}H${r}`;
  switch (kind) {
    case 'held':
      return `${start}V${tenth(sky - 3 - thick / 2)}a${tenth(thick / 2)} ${tenth(thick / 2)} 0 0 1${tenth(-thick)} 0z`;
    case 'soaked':
    case 'through': {
      const end = kind === 'through' ? foot - 3 : sky + tip;
      const neck = tenth(end - between(5, thick * 0.45, 20));
      return `${start}V${neck}L${tenth((left + right) / 2)} ${tenth(end)}L${l} ${neck}z`;
    }
    case 'ran': {
      const end = width - 3;
      const [bend, outer] = [Math.min(9, thick * 0.4 + 3), Math.min(thick * 0.7 + 2, sky - split)];
      return `${start}V${tenth(sky - thick - bend)}q0 ${tenth(bend)} ${tenth(bend)} ${tenth(bend)}H${tenth(end - nose(thick))}L${end} ${tenth(sky - thick / 2)}L${tenth(end - nose(thick))} ${sky}H${tenth(left + outer)}q${tenth(-outer)} 0 ${tenth(-outer)} ${tenth(-outer)}z`;
    }
  }
}
const isInside = (water: Water, { otherRanIn = 0 }: WaterFrame): boolean => otherRanIn < ranOf(water);
/** What left under the other management, on the same ground: around the arrow, or inside it. */
function otherShape(water: Water, streams: readonly Stream[], frame: WaterFrame): string {
  const { sky, width, perIn, from, otherRanIn } = frame;
  const thick = (otherRanIn ?? 0) * perIn;
  const own = streams.find(({ kind }) => kind === 'ran');
  const ownThick = own ? own.right - own.left : 0;
  if (Math.abs(thick - ownThick) < 1.5 || thick < 1.5) return '';
  const [end, tip] = [width - 3, nose(thick)];
  const start = from + water.rainIn * perIn + (isInside(water, frame) ? 0 : 5);
  if (end - tip < start + 3) return '';
  return `M${tenth(start)} ${tenth(sky - thick)}H${tenth(end - tip)}L${end} ${tenth(sky - thick / 2)}L${tenth(end - tip)} ${sky}H${tenth(start)}z`;
}

const slant = (width: number, height: number, count: number, salt: number): string =>
  strokes(count, (index) => {
    const [across, down] = evenly(index);
    const long = 8 + 8 * noise(index, salt);
    return `M${Math.round(across * (width + 12) - 4)} ${Math.round(down * (height - 10))}l${Math.round(-long * 0.28)} ${Math.round(long)}`;
  });

/** Rain that falls beside the curtain: the more, the harder it came. */
export const Streaks = ({
  width,
  sky,
  rainIn,
  salt,
}: {
  readonly width: number;
  readonly sky: number;
  readonly rainIn: number;
  readonly salt: number;
}) => <path class="streaks" d={slant(width, sky - 4, (width * between(0.3, rainIn, 4)) / 18, salt)} />;

/** The curtain and the bands into which it parts. Together they are just as wide as it is: the sum can be seen. */
export function WaterShapes({ water, frame }: { readonly water: Water; readonly frame: WaterFrame }) {
  const { from, perIn, salt } = frame;
  const [streams, split, wide] = [streamsOf(water, frame), splitOf(water, frame), water.rainIn * perIn];
  const other = otherShape(water, streams, frame);
  return (
    <>
      <svg x={tenth(from)} width={tenth(wide)} height={tenth(split)} aria-hidden="true">
        <rect class="curtain" width="100%" height="100%" />
        <path class="curtain-streaks" d={slant(wide, split + 16, wide / 2.2, salt)} />
      </svg>
      {streams.map((stream) => stream.right > stream.left && <path key={stream.kind} class={stream.kind} d={shapeOf(stream, split, frame)} />)}
      {other !== '' && <path class={`other-ran${isInside(water, frame) ? ' is-inside' : ''}`} d={other} />}
    </>
  );
}

/** Figures on the arrows where they are wide enough, else beside them. */
export function waterLabels(water: Water, frame: WaterFrame): readonly Wanted[] {
  const { sky, foot, width, from, perIn, isPair, tip } = frame;
  const streams = streamsOf(water, frame);
  const split = splitOf(water, frame);
  const all = from + water.rainIn * perIn;
  const place = (x: number, y: number, on: string, anchor: Place['anchor'] = 'middle'): Place => ({ x, y, on, anchor });
  const fits = (words: string, wide: number): boolean => textWidth(words, 18) < wide + 1;
  const figures: Wanted[] = [];
  const names: Wanted[] = [];
  const rainFits = fits(water.figure, all - from);
  figures.push({
    words: [water.figure],
    size: 18,
    places: [
      ...(rainFits ? [place((from + all) / 2, 24, 'on-curtain')] : []),
      place(all + 8, 24, 'on-rain', 'start'),
      place(from - 8, 24, 'on-rain', 'end'),
    ],
  });
  names.push({
    words: water.says,
    size: 16,
    places: [
      ...(rainFits && textWidth(water.says[0] ?? '', 16) + 3 < all - from ? [place((from + all) / 2, 43, 'on-curtain')] : []),
      place(all + 8, 43, 'on-rain', 'start'),
      place(from - 8, 43, 'on-rain', 'end'),
    ],
  });
  for (const stream of streams) {
    const { kind, left, right, says } = stream;
    const figure = isPair ? stream.bare : stream.figure;
    const [middle, thick] = [(left + right) / 2, right - left];
    if (thick === 0) continue;
    switch (kind) {
      case 'held': {
        const y = between(split + 20, sky - 46, sky - 20);
        const inside = fits(figure, thick);
        figures.push({
          words: [figure],
          size: 18,
          places: [
            ...(inside ? [place(middle, y, 'on-water')] : []),
            place(left - 7, y, 'on-rain', 'end'),
            place(left - 7, y - 22, 'on-rain', 'end'),
          ],
        });
        names.push({
          words: says,
          size: 16,
          places: [place(left - 7, inside ? y : y - 20, 'on-rain', 'end'), place(left - 7, y - 42, 'on-rain', 'end')],
        });
        break;
      }
      case 'ran': {
        const inside = thick >= 25 && textWidth(figure, 18) < width - right - nose(thick);
        const above = sky - Math.max(ranOf(water), frame.otherRanIn ?? 0) * perIn;
        const x = inside ? (left + width - nose(thick)) / 2 : (right + width) / 2;
        const side = place(width - 6, above - 8, 'on-clay-word', 'end');
        figures.push({
          words: [figure],
          size: 18,
          places: [
            ...(inside ? [place(x, sky - thick / 2 + 6, 'on-ran')] : []),
            place(x, above - 8, 'on-clay-word'),
            side,
            { ...side, y: above - 30 },
            { ...side, y: above - 52 },
            place(right + 8, above - 8, 'on-clay-word', 'start'),
          ],
        });
        names.push({
          words: says,
          size: 16,
          places: [place(x, above - (inside ? 9 : 29), 'on-clay-word'), { ...side, y: side.y - (inside ? 0 : 20) }, { ...side, y: side.y - 40 }],
        });
        break;
      }
      default: {
        const isBelow = kind === 'through';
        const low = isBelow ? foot - 24 : sky + between(24, tip - 24, 46);
        const inside = fits(figure, thick) || fits(stream.bare, thick);
        const on = isBelow ? 'on-rain' : 'on-soil';
        // Past whatever else goes down beside it.
        const down = streams.filter((each) => each.kind === 'soaked' || each.kind === 'through').map((each) => each.right);
        const beside = place(Math.max(...down) + 8, low, on, 'start');
        const behind = place(left - 8, low, on, 'end');
        figures.push({
          words: fits(figure, thick) || !inside ? [figure] : [stream.bare],
          size: 18,
          places: [...(inside ? [place(middle, low, 'on-water')] : []), beside, behind, { ...beside, y: low + 20 }, { ...behind, y: low + 20 }],
        });
        names.push({
          words: says,
          size: 16,
          places: [beside, { ...beside, y: low + 20 }, behind, { ...behind, y: low + 20 }, { ...beside, y: low + 40 }],
        });
      }
    }
  }
  return isPair ? figures : [...figures, ...names];
}
