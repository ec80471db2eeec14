import type { JSX } from 'preact';
import { between } from '../noise.ts';
import { tenth } from '../readings.ts';
import { blades, crustOn, litterOn, rootsUnder, type StripKind, type Strips, splashesOn, standOf, stripsOf } from './growth.ts';
import type { Room } from './labels.ts';
import { blocks, crumbs, wander } from './soil.ts';

export type Grain = 'crumbs' | 'blocks' | 'cracked';
/** What is drawn of the ground on one face: inches and shares, no pixels. */
export interface Ground {
  readonly shares: Readonly<Record<StripKind, number>>;
  /** How crumbly and open it is, 0 to 1. */
  readonly open: number;
  readonly layers: readonly { readonly toIn: number; readonly grain: Grain }[];
  readonly rootsIn: number;
  /** Wet from above down to here. */
  readonly wetIn: number;
  /** Gone from the top. */
  readonly lostIn: number;
  /** Where the ground is wet, if not down to a front: a shape, or spots so wide. */
  readonly wetArea?: (room: Room) => { readonly d: string; readonly spot: number };
  /** What else lies in the ground, and on it. */
  readonly within?: (room: Room) => JSX.Element;
  readonly strewn?: (strips: Strips) => JSX.Element;
  /** Rain that falls beside what is drawn of it: inches, the more the harder. */
  readonly rainIn: number;
}
const prefix: Readonly<Record<Grain, string>> = { crumbs: 'top', blocks: 'sub', cracked: 'par' };
const grid = { blocks: { across: 25, tall: 29, gap: 4 }, cracked: { across: 36, tall: 40, gap: 5.8 } } as const;

interface LumpsProps {
  readonly id: string;
  readonly shapes: readonly string[];
  readonly name: string;
  /** Crumbs are strokes so thick; blocks are filled. */
  readonly thick: number;
}
/** Each shape three times: its rim, itself, and a little light from the upper left. */
export const Lumps = ({ id, shapes, name, thick }: LumpsProps) => (
  <>
    {shapes.map((d, index) => {
      const size = tenth(thick * (0.76 + 0.16 * index));
      const drawn = (tone: number | string, wide: number, by: number) => (
        <use href={`#${id}${index}`} class={`${name}-${tone}`} stroke-width={tenth(wide)} x={tenth(by)} y={tenth(by * 1.3)} />
      );
      return (
        <g key={d} class={thick ? 'lump' : 'block'}>
          <defs>
            <path id={`${id}${index}`} d={d} />
          </defs>
          {thick ? drawn(0, size + 2.6, 0) : drawn('lit', 5, -1.2)}
          {drawn(1 + (index % 3), thick ? size : 5, 0)}
          {thick > 0 && drawn('lit', size * 0.22, -size * 0.17)}
        </g>
      );
    })}
  </>
);

/** The cut ground of one face, and what grows on it: what stands behind the water, and what stands before it. */
export function drawGround(ground: Ground, room: Room): { readonly behind: JSX.Element; readonly before: JSX.Element } {
  const { id, width, sky, soil, perIn, salt } = room;
  const { shares, open, layers } = ground;
  const strips = stripsOf(width, shares, salt);
  const gone = ground.lostIn * perIn;
  const height = Math.max(0, soil - gone);
  const toPx = (depthIn: number): number => between(0, (depthIn - ground.lostIn) * perIn, height);
  const deep = ground.wetIn * perIn;
  // As uneven as the pit shows it: water runs ahead along roots and holes.
  const area = ground.wetArea?.(room) ?? {
    d: `M-4-9V${wander(deep, width, Math.min(deep * 0.4, 4 + 10 * open), salt + 2, 17)}H${width + 4}V-9z`,
    spot: 0,
  };
  const shown = layers
    .map((layer, index) => ({ ...layer, index, top: toPx(layers[index - 1]?.toIn ?? 0), bottom: toPx(layer.toIn) }))
    .filter(({ top, bottom }) => bottom > top && top < height);
  const cover = 1 - shares.bare;
  const isWet = deep > 0 || area.spot > 0;
  const wet = (name: string) => (
    <use href={`#${id}-water`} class={`${name}${area.spot > 0 ? ' is-spots' : ''}`} {...(area.spot > 0 && { 'stroke-width': area.spot })} />
  );
  const [thick, fine] = rootsUnder(strips.plant, ground.rootsIn * perIn, salt + 50);
  // In a shallow cut grains are as large as they look from near.
  const near = Math.max(1, perIn / 18);
  const cell = (11.2 - 1.2 * open) * near;
  const stand = standOf(cover);
  const tufts = (each: number, tall: number, more: number) =>
    blades(strips.plant, tall, each, more).map((d, tone) => <path key={tone} class={`blade-${tone + 1}`} d={d} />);
  const at = `translate(0 ${tenth(sky + gone)})`;
  return {
    behind: (
      <>
        <svg y={tenth(sky + gone)} width={width} height={tenth(height)} aria-hidden="true">
          {isWet && (
            <defs>
              <path id={`${id}-water`} d={area.d} />
            </defs>
          )}
          {shown.map(({ grain, top, bottom, index }) => (
            <path key={index} class={`${prefix[grain]}-0`} d={`M0 ${tenth(top)}H${width}V${tenth(bottom)}H0z`} />
          ))}
          {isWet && wet('pore-water')}
          {shown.toReversed().map(({ grain, top, bottom, index }) => {
            // The last goes on below the cut; the lowest of the others lie scattered in what is under them.
            const stretch = { width, top, bottom: bottom < height ? bottom : height + 30, salt: salt + index * 9 };
            const isCrumb = grain === 'crumbs';
            return (
              <Lumps
                key={index}
                id={`${id}-l${index}-`}
                name={prefix[grain]}
                thick={isCrumb ? cell * 0.65 : 0}
                shapes={isCrumb ? crumbs(stretch, cell) : blocks(stretch, grid[grain], near)}
              />
            );
          })}
          {ground.within?.(room)}
          {isWet && wet('wet')}
          <path class="root-fine" d={fine} />
          <path class="root" d={thick} />
          {deep > 0 && <use href={`#${id}-water`} class="front" />}
        </svg>
        <g transform={at}>
          <path class="crust" d={crustOn(strips.bare)} />
          {tufts(3, stand, salt)}
        </g>
      </>
    ),
    before: (
      <g transform={at}>
        {ground.rainIn > 0 && <path class="splash" d={splashesOn(strips.bare, salt + 61)} />}
        <path
          class="litter"
          d={litterOn([...strips.litter, ...strips.litter.map((x) => x + 3), ...strips.plant.filter((_, index) => index % 3 > 0)], salt + 66)}
        />
        {ground.strewn?.(strips)}
        {tufts(2, Math.min(11, stand * 0.5), salt + 80)}
      </g>
    ),
  };
}
