import { between } from '../noise.ts';
import { tenth } from '../readings.ts';
import { type Place, type Room, textWidth, type Wanted } from './labels.ts';
import { slant } from './rain.ts';
import { type FaceProps, place, tellerOf } from './reading.ts';

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
  /** They add up to the rain, or there are none. */
  readonly bands: readonly Band[];
}
/** Where a face has it, with the depth to which what soaked in comes. */
export interface WaterRoom extends Room {
  readonly tip: number;
}
interface Stream extends Band {
  readonly left: number;
  readonly right: number;
}

/** Inner side first, and the shape of each for the key of a pair, which has no room for names. */
const order = ['held', 'soaked', 'through', 'ran'] as const;
const down = 'M5 1h10v11l-5 7-5-7z';
const marks: Readonly<Record<BandKind, string>> = { ran: 'M1 5h9l9 5-9 5H1z', held: 'M4 1h12v9a6 6 0 0 1-12 0z', soaked: down, through: down };

interface NamedPart {
  readonly kind: BandKind;
  readonly of: string;
  readonly says: readonly string[];
}
/** The parts of the rain as bands, as a sum, and in words; `inPer` turns a volume into inches. */
export function partsOf(props: FaceProps, named: readonly NamedPart[], inPer = 1) {
  const { size, print, bare } = tellerOf(props);
  return {
    bands: named
      .map(({ kind, of, says }): Band => ({ kind, depthIn: size(of) * inPer, figure: print(of), bare: bare(of), says }))
      .toSorted((one, other) => order.indexOf(one.kind) - order.indexOf(other.kind)),
    parts: named.map(({ kind, of, says }) => ({ kind, name: of, says: says.at(-1) ?? '', mark: marks[kind] })),
    told: named.map(({ of, says }) => `${print(of)} ${says[0]}`).join(', '),
  };
}

const nose = (thick: number): number => between(6, thick * 0.5, 22);
/** The head of an arrow along the ground, from its upper edge to its foot. */
const head = (thick: number, { sky, width }: Room): string => {
  const [end, neck] = [width - 3, tenth(width - 3 - nose(thick))];
  return `H${neck}L${end} ${tenth(sky - thick / 2)}L${neck} ${sky}H`;
};
const upright = { curtain: 54, above: 13 } as const;

export function streamsOf({ bands }: Water, { waterPerIn, from }: Room): readonly Stream[] {
  let at = from;
  return bands.map((band) => {
    const left = at;
    at += band.depthIn * waterPerIn;
    return { ...band, left, right: at };
  });
}
const ranOf = ({ bands }: Water): number => bands.find(({ kind }) => kind === 'ran')?.depthIn ?? 0;
/** Where the curtain parts: high enough for the thickest arrow, low enough for its own figure. */
const splitOf = (water: Water, { sky, waterPerIn, otherRanIn }: Room): number =>
  water.bands.length === 0 ? sky : Math.max(upright.curtain, sky - Math.max(Math.max(ranOf(water), otherRanIn) * waterPerIn + upright.above, 46));

function shapeOf({ kind, left, right }: Stream, split: number, room: WaterRoom): string {
  const { sky, height, tip } = room;
  const [thick, l, r] = [right - left, tenth(left), tenth(right)];
  const start = `M${l} ${tenth(split)}H${r}`;
  switch (kind) {
    case 'held':
      return `${start}V${tenth(sky - 3 - thick / 2)}a${tenth(thick / 2)} ${tenth(thick / 2)} 0 0 1${tenth(-thick)} 0z`;
    case 'soaked':
    case 'through': {
      const end = kind === 'through' ? height - 3 : sky + tip;
      const neck = tenth(end - between(5, thick * 0.45, 20));
      return `${start}V${neck}L${tenth((left + right) / 2)} ${tenth(end)}L${l} ${neck}z`;
    }
    case 'ran': {
      const [bend, outer] = [Math.min(9, thick * 0.4 + 3), Math.min(thick * 0.7 + 2, sky - split)];
      return `${start}V${tenth(sky - thick - bend)}q0 ${tenth(bend)} ${tenth(bend)} ${tenth(bend)}${head(thick, room)}${tenth(left + outer)}q${tenth(-outer)} 0 ${tenth(-outer)} ${tenth(-outer)}z`;
    }
  }
}
const isInside = (water: Water, { otherRanIn }: Room): boolean => otherRanIn < ranOf(water);
/** What left under the other management, on the same ground: around the arrow, or inside it. */
function otherShape(water: Water, streams: readonly Stream[], room: Room): string {
  const { sky, width, waterPerIn, from, otherRanIn } = room;
  const thick = otherRanIn * waterPerIn;
  const own = streams.find(({ kind }) => kind === 'ran');
  const ownThick = own ? own.right - own.left : 0;
  if (Math.abs(thick - ownThick) < 1.5 || thick < 1.5) return '';
  const start = from + water.rainIn * waterPerIn + (isInside(water, room) ? 0 : 5);
  return width - 6 - nose(thick) < start ? '' : `M${tenth(start)} ${tenth(sky - thick)}${head(thick, room)}${tenth(start)}z`;
}

/** The curtain and the bands into which it parts. Together they are just as wide as it is: the sum can be seen. */
export function WaterShapes({ water, room }: { readonly water: Water; readonly room: WaterRoom }) {
  const { from, waterPerIn } = room;
  const [streams, split, wide] = [streamsOf(water, room), splitOf(water, room), water.rainIn * waterPerIn];
  const other = otherShape(water, streams, room);
  return (
    <>
      <svg x={tenth(from)} width={tenth(wide)} height={tenth(split)} aria-hidden="true">
        <rect class="curtain" width="100%" height="100%" />
        <path class="curtain-streaks" d={slant(wide, split + 16, wide / 2.2, 3)} />
      </svg>
      {streams.map((stream) => stream.right > stream.left && <path key={stream.kind} class={stream.kind} d={shapeOf(stream, split, room)} />)}
      {other !== '' && <path class={`other-ran${isInside(water, room) ? ' is-inside' : ''}`} d={other} />}
    </>
  );
}

/** Figures on the arrows where they are wide enough, else beside them; then the names, in what is left of the same places. */
export function waterLabels(water: Water, room: WaterRoom): readonly Wanted[] {
  const { sky, height, width, from, waterPerIn, otherRanIn, isNarrow, tip } = room;
  const streams = streamsOf(water, room);
  const [split, wide] = [splitOf(water, room), water.rainIn * waterPerIn];
  const fits = (words: string, thick: number): boolean => textWidth(words, 18) < thick + 1;
  /** Rows of places at an edge. */
  const rows = (x: number, on: string, anchor: Place['anchor'], ...ys: readonly number[]): readonly Place[] => ys.map((y) => place(x, y, on, anchor));
  const inCurtain = rows(from + wide / 2, 'on-curtain', 'middle', 24, 43);
  const beside = [...rows(from + wide + 8, 'on-rain', 'start', 24, 43), ...rows(from - 8, 'on-rain', 'end', 24, 43)];
  const atRain = fits(water.figure, wide) ? inCurtain : beside;
  const figures: Wanted[] = [{ words: [water.figure], size: 18, places: atRain }];
  const names: Wanted[] = [{ words: ['fell'], size: 16, places: atRain }];
  // Past everything that goes down.
  const beyond = 8 + Math.max(from, ...streams.filter(({ kind }) => kind !== 'ran').map(({ right }) => right));
  for (const { kind, left, right, says, figure, bare } of streams) {
    const thick = right - left;
    if (thick === 0) continue;
    const told = isNarrow ? bare : figure;
    const short = fits(told, thick) ? told : bare;
    const isRan = kind === 'ran';
    const low = kind === 'through' ? height - 24 : sky + between(24, tip - 24, 46);
    const above = sky - Math.max(ranOf(water), otherRanIn) * waterPerIn - 8;
    const isOn = isRan ? thick >= 25 && textWidth(told, 18) < width - right - nose(thick) : fits(short, thick);
    const middle = isRan ? ((isOn ? left : right) + width - nose(thick)) / 2 : (left + right) / 2;
    const held = between(split + 20, sky - 46, sky - 20);
    const on = kind === 'through' ? 'on-rain' : 'on-soil';
    const places =
      kind === 'held'
        ? rows(left - 7, 'on-rain', 'end', held, held - 20, held - 40)
        : isRan
          ? [...rows(middle, 'on-clay-word', 'middle', above, above - 20), ...rows(width - 6, 'on-clay-word', 'end', above, above - 20, above - 40)]
          : [...rows(beyond, on, 'start', low, low + 20, low + 40), ...rows(left - 8, on, 'end', low, low + 20, low + 40)];
    const onArrow = place(middle, kind === 'held' ? held : isRan ? sky - thick / 2 + 6 : low, isRan ? 'on-ran' : 'on-water');
    figures.push({ words: [isOn && !isRan ? short : told], size: 18, places: isOn ? [onArrow, ...places] : places });
    names.push({ words: says, size: 16, places });
  }
  return isNarrow ? figures : [...figures, ...names];
}
