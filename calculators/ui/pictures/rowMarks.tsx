import type { RowMark } from '../../kit/pictures.ts';
import { rowsIn, type Side, tenth } from './readings.ts';
import type { Box } from './words.ts';

/** A mark tells itself by its shape: printed gray, or to whoever sees no colors, it says the same. */
const shapes: Readonly<Record<RowMark['as'], string>> = { wedge: 'M0 -8L7.5 5H-7.5z', cross: 'M-5 -5L5 5M-5 5L5 -5' };

export interface PlacedMark extends Pick<RowMark, 'as' | 'says'> {
  readonly is: Side['is'];
  /** Places of the rows on the two axes, in the units of their columns. */
  readonly points: readonly (readonly [across: number, up: number])[];
  /** Of so many rows. */
  readonly of: number;
}
/** For each mark and side that has any, the rows that bear it. */
export const marksOf = (sides: readonly Side[], rows: string, marks: readonly RowMark[], [x, y]: readonly [string, string]): readonly PlacedMark[] =>
  marks.flatMap(({ of, is: word, as, says }) =>
    sides.flatMap(({ outcome, is }): readonly PlacedMark[] => {
      const list = rowsIn(outcome, rows);
      const points = list.flatMap((row): PlacedMark['points'] => {
        const [across, up] = [row[x], row[y]];
        return row[of] === word && typeof across === 'number' && typeof up === 'number' ? [[across, up]] : [];
      });
      return points.length > 0 ? [{ as, says, is, points, of: list.length }] : [];
    }),
  );

/** Where no words stand. */
export const markBox = ([x, y]: readonly [number, number]): Box => ({ left: x - 8, right: x + 8, top: y - 9, bottom: y + 6 });

export const RowMarkAt = ({
  as,
  is,
  at: [x, y],
}: {
  readonly as: RowMark['as'];
  readonly is: Side['is'];
  readonly at: readonly [number, number];
}) => <path class={`row-mark is-${as} is-${is}`} transform={`translate(${tenth(x)} ${tenth(y)})`} d={shapes[as]} />;

/** What each kind of mark means, under the picture. */
export function MarksSaid({ marks }: { readonly marks: readonly PlacedMark[] }) {
  const kinds = marks.filter(({ as }, index) => marks.findIndex((each) => each.as === as) === index);
  if (kinds.length === 0) return null;
  return (
    <figcaption class="marks-said">
      {kinds.map(({ as, says }) => (
        <span key={as}>
          {marks
            .filter((each) => each.as === as)
            .map(({ is }) => (
              <svg key={is} width="18" height="18" viewBox="-9 -10 18 18" aria-hidden="true">
                <RowMarkAt as={as} is={is} at={[0, 0]} />
              </svg>
            ))}
          {says}
        </span>
      ))}
    </figcaption>
  );
}
