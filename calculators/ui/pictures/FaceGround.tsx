import type { JSX } from 'preact';
import { blades, crustOn, litterOn, rootsUnder, type StripKind, splashesOn, standOf, stonesOn, stripsOf, taproot } from './growth.ts';
import { between } from './noise.ts';
import { tenth } from './readings.ts';
import { blocks, channels, crumbs, filledSpots, flecks, wander } from './soil.ts';

export type Grain = 'crumbs' | 'blocks' | 'cracked';
/** What is drawn of the ground on one face: inches and shares, no pixels. */
export interface Ground {
  readonly shares: Readonly<Record<StripKind, number>>;
  /** How crumbly and open it is, 0 to 1. */
  readonly open: number;
  readonly layers: readonly { readonly toIn: number; readonly grain: Grain }[];
  readonly rootsIn: number;
  /** One root goes as deep as this. */
  readonly tapIn: number;
  /** Wet from above down to here. */
  readonly wetIn: number;
  /** Or as full as each layer is. */
  readonly filled: readonly { readonly fromIn: number; readonly toIn: number; readonly share: number }[];
  readonly hard: { readonly fromIn: number; readonly toIn: number } | undefined;
  /** Gone from the top. */
  readonly lostIn: number;
  /** Nothing grows between these shares of the width. */
  readonly gap: readonly [number, number] | undefined;
  /** A ring that water went into. */
  readonly ring: { readonly halfIn: number; readonly insertedIn: number } | undefined;
  readonly isRaining: boolean;
}
export interface Frame {
  readonly id: string;
  readonly width: number;
  /** Height of the air and of the ground. */
  readonly sky: number;
  readonly soil: number;
  readonly perIn: number;
  readonly salt: number;
}

const prefix: Readonly<Record<Grain, string>> = { crumbs: 'top', blocks: 'sub', cracked: 'par' };
const grid = { blocks: { across: 25, tall: 29, gap: 4 }, cracked: { across: 36, tall: 40, gap: 5.8 } } as const;

interface LumpsProps {
  readonly id: string;
  readonly shapes: readonly string[];
  readonly name: string;
  /** Crumbs are strokes so thick; blocks are filled. */
  readonly thick?: number;
}
/** Each shape three times: its rim, itself, and a little light from the upper left. */
function Lumps({ id, shapes, name, thick }: LumpsProps) {
  const isCrumb = thick !== undefined;
  return (
    <>
      {shapes.map((d, index) => {
        const [href, tone] = [`#${id}${index}`, `${name}-${1 + (index % 3)}`];
        const size = isCrumb ? tenth(thick * (0.76 + 0.16 * index)) : 0;
        return (
          <g key={href} class={isCrumb ? 'lump' : 'block'}>
            <defs>
              <path id={`${id}${index}`} d={d} />
            </defs>
            {isCrumb ? (
              <use href={href} class={`${name}-0`} stroke-width={size + 2.6} />
            ) : (
              <use href={href} class={`${name}-lit`} x={-1.3} y={-1.5} />
            )}
            <use href={href} class={tone} {...(isCrumb && { 'stroke-width': size })} />
            {isCrumb && <use href={href} class={`${name}-lit`} stroke-width={tenth(size * 0.22)} x={tenth(-size * 0.16)} y={tenth(-size * 0.22)} />}
          </g>
        );
      })}
    </>
  );
}

interface LayerProps {
  readonly grain: Grain;
  readonly top: number;
  readonly bottom: number;
  readonly isLast: boolean;
  readonly open: number;
  readonly width: number;
  readonly salt: number;
  readonly id: string;
}
function Layer({ grain, top, bottom, isLast, open, width, salt, id }: LayerProps) {
  const name = prefix[grain];
  if (grain === 'crumbs') {
    const cell = 11.2 - 1.2 * open;
    return (
      <Lumps
        id={id}
        name={name}
        thick={cell * (0.68 - 0.06 * open)}
        shapes={crumbs({ width, top, bottom: isLast ? bottom + 20 : bottom, salt }, cell)}
      />
    );
  }
  const stretch = { width, top, bottom: isLast ? bottom + 30 : bottom, salt };
  return (
    <>
      <Lumps id={id} name={name} shapes={blocks({ ...stretch, ...grid[grain] }, (y) => isLast || y < bottom + 6)} />
      <path class={`fleck ${name}-fleck`} d={flecks({ width, top, bottom, salt: salt + 6 })} />
    </>
  );
}

/** Water goes straight down inside a ring, and spreads to the sides below it. */
function bulb(width: number, deep: number, half: number, inserted: number): string {
  const [middle, below] = [width / 2, deep - inserted];
  const wide = half + Math.min(below * 0.9, width / 2 - half - 6);
  const [left, right] = [tenth(middle - half), tenth(middle + half)];
  return `0H${left}V${tenth(inserted)}C${tenth(middle - wide)} ${tenth(inserted)} ${tenth(middle - wide)} ${tenth(deep)} ${tenth(middle)} ${tenth(deep)}S${tenth(middle + wide)} ${tenth(inserted)} ${right} ${tenth(inserted)}V0H${width}`;
}

/** The cut ground of one face, and what grows on it: what stands behind the water, and what stands before it. */
export function drawGround(
  ground: Ground,
  { id, width, sky, soil, perIn, salt }: Frame,
): { readonly behind: JSX.Element; readonly before: JSX.Element } {
  const { shares, open, layers, hard, filled, ring, gap, isRaining } = ground;
  const strips = stripsOf(width, shares, salt, gap && [gap[0] * width, gap[1] * width]);
  const gone = ground.lostIn * perIn;
  const height = Math.max(0, soil - gone);
  const toPx = (depthIn: number): number => between(0, (depthIn - ground.lostIn) * perIn, height);
  const deep = ground.wetIn * perIn;
  // As uneven as the pit shows it: water runs ahead along roots and holes.
  const front = ring
    ? bulb(width, deep, ring.halfIn * perIn, ring.insertedIn * perIn)
    : wander(deep, width, Math.min(deep * 0.4, 4 + 10 * open), salt + 2, 17);
  const shown = layers
    .map((layer, index) => ({ ...layer, index, top: toPx(layers[index - 1]?.toIn ?? 0), bottom: toPx(layer.toIn) }))
    .filter(({ top, bottom }) => bottom > top && top < height);
  const cover = 1 - shares.bare;
  const isWet = deep > 0 || filled.length > 0;
  const wet = (name: string) => <use href={`#${id}-water`} class={`${name}${deep > 0 ? '' : ' is-spots'}`} />;
  const [thick, fine] = rootsUnder(strips.plant, ground.rootsIn * perIn, salt + 50, hard && toPx(hard.fromIn));
  const holes = channels(width, Math.min(shown[0]?.bottom ?? 0, hard ? toPx(hard.fromIn) : height), cover ** 1.5, salt + 40);
  const spots = (): string =>
    filled
      .map(({ fromIn, toIn, share }, index) => filledSpots({ width, top: toPx(fromIn), bottom: toPx(toIn), salt: salt + 90 + index }, share))
      .join('');
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
              <path id={`${id}-water`} d={deep > 0 ? `M0 0V${front}V0z` : spots()} />
              {deep > 0 && (
                <clipPath id={`${id}-wet`}>
                  <use href={`#${id}-water`} />
                </clipPath>
              )}
            </defs>
          )}
          {shown.map(({ grain, top, bottom, index }) => (
            <path key={index} class={`${prefix[grain]}-0`} d={`M0 ${tenth(top)}H${width}V${tenth(bottom)}H0z`} />
          ))}
          {isWet && wet('pore-water')}
          {shown.toReversed().map(({ grain, top, bottom, index }) => (
            <Layer key={index} {...{ grain, top, bottom, open, width }} isLast={bottom >= height} salt={salt + index * 9} id={`${id}-l${index}-`} />
          ))}
          {hard && (
            <g class="hard">
              <path
                class="hard-0"
                d={`M0 ${tenth(toPx(hard.fromIn))}V${wander(toPx(hard.toIn), width, 3, salt + 70)}V${tenth(toPx(hard.fromIn))}z`}
              />
              <Lumps
                id={`${id}-h`}
                name="hard"
                shapes={blocks(
                  { width, top: toPx(hard.fromIn), bottom: toPx(hard.toIn), across: 52, tall: 8.5, gap: 1.2, salt: salt + 71 },
                  (y) => y > toPx(hard.fromIn) + 4 && y < toPx(hard.toIn) - 3,
                )}
              />
            </g>
          )}
          {isWet && wet('wet')}
          <path class="channel" d={holes} />
          {deep > 0 && <path class="channel-water" clip-path={`url(#${id}-wet)`} d={holes} />}
          <path class="root-fine" d={fine} />
          <path class="root" d={thick} />
          {ground.tapIn > ground.rootsIn && <path class="root" d={taproot(width * 0.36, ground.tapIn * perIn)} />}
          {deep > 0 && <path class="front" d={`M0 ${front}`} />}
        </svg>
        <g transform={at}>
          <path class="crust" d={crustOn(strips.bare)} />
          {tufts(3, stand, salt)}
        </g>
      </>
    ),
    before: (
      <g transform={at}>
        {isRaining && <path class="splash" d={splashesOn(strips.bare, salt + 61)} />}
        <path
          class="litter"
          d={`${litterOn(strips.litter, salt + 66)}${litterOn(strips.litter, salt + 69)}${litterOn(
            strips.plant.filter((_, index) => index % 3 > 0),
            salt + 67,
          )}`}
        />
        <path class="stone" d={stonesOn(strips.rock, salt + 68)} />
        {tufts(2, Math.min(11, stand * 0.5), salt + 80)}
      </g>
    ),
  };
}
