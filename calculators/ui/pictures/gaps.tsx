import type { Outcome } from '../../kit/define.ts';
import type { Gaps } from '../../kit/pictures.ts';
import { rowsIn, tenth } from './readings.ts';

/** Which rows of any side lack readings, as places from the first. */
export function gapsIn(outcomes: readonly Outcome[], rows: string, gaps: Gaps | undefined): readonly number[] {
  if (!gaps) return [];
  const lists = outcomes.map((outcome) => rowsIn(outcome, rows));
  const most = Math.max(0, ...lists.map(({ length }) => length));
  return Array.from({ length: most }, (_, place) => place).filter((place) => lists.some((list) => Number(list[place]?.[gaps.of]) > gaps.above));
}

/** A band behind a picture for each of them, as wide as from one row to the next and no wider than the plot. */
export function GapBands({ id, bands }: { readonly id: string; readonly bands: readonly Band[] }) {
  if (bands.length === 0) return null;
  return (
    <>
      <defs>
        <pattern id={`${id}-gaps`} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path class="gap-stripe" d="M3.5 0V7" />
        </pattern>
      </defs>
      <path
        class="gaps"
        fill={`url(#${id}-gaps)`}
        d={bands.map(({ from, to, top, foot }) => `M${tenth(from)} ${top}H${tenth(to)}V${foot}H${tenth(from)}z`).join('')}
      />
    </>
  );
}
interface Band {
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly foot: number;
}
