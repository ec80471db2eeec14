import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Calculator, Outcome } from '../../kit/define.ts';
import type { Face as FacePicture, Strip as StripPicture } from '../../kit/pictures.ts';
import { printCell, printScalar } from '../../kit/print.ts';
import type { ScalarQuantity } from '../../kit/quantities.ts';
import { unitIn, units } from '../../units/units.ts';
import { dayName, daySpot, dayTicks } from './axis.ts';
import { GapBands, gapsIn } from './gaps.tsx';
import { columnOf, type PictureProps, rowsIn, sideName, sidesOf, tenth, usualWidthPx } from './readings.ts';
import { csvOf, save } from './stripCsv.ts';

const lanePx = 56;
const headPx = 24;
const footPx = 26;
/** The ground is drawn from so far below the glass on; and once the page has been quiet for so long, wherever it is. */
const nearPx = 60;
const lateMs = 1000;

type DrawFace = (props: PictureProps<FacePicture>) => JSX.Element | null;

/** One row stands for all: what a face names is found in it. */
function atRow(outcome: Outcome, rows: string, index: number): Outcome {
  const row = rowsIn(outcome, rows)[index];
  return row ? { ...outcome, values: { ...outcome.values, ...row, [rows]: [row] } } : outcome;
}
/** The columns of those rows as if they were results. */
function withColumns(calculator: Calculator, rows: string): Calculator {
  const quantity = calculator.quantities[rows];
  return quantity?.kind === 'rows' ? { ...calculator, quantities: { ...calculator.quantities, ...quantity.columns } } : calculator;
}

const named = (quantity: ScalarQuantity | undefined, system: 'us' | 'si'): string => {
  const unit = quantity?.kind === 'number' ? units[unitIn(system, quantity.unit)].print : '';
  return [quantity?.label ?? '', unit].filter(Boolean).join(', ');
};

/** Lanes over a span of days, a day that the reader moves, and the ground on it. */
export function Strip({ Face, ...props }: PictureProps<StripPicture> & { readonly Face: DrawFace }) {
  const { calculator, picture, outcome, other, titles, system, id, widthPx = usualWidthPx } = props;
  const sides = sidesOf({ outcome, other, titles }).map((side) => ({ ...side, rows: rowsIn(side.outcome, picture.rows) }));
  const count = Math.min(...sides.map(({ rows }) => rows.length));
  const [wanted, setWanted] = useState<number | undefined>(undefined);
  const [isLive, setLive] = useState(false);
  const ground = useRef<HTMLDivElement>(null);
  const [isNear, setNear] = useState(false);
  useEffect(() => {
    setLive(true);
    if (!ground.current) return undefined;
    const come = () => setNear(true);
    const watch = new IntersectionObserver(([seen]) => seen?.isIntersecting && come(), { rootMargin: `${nearPx}px` });
    watch.observe(ground.current);
    const late = setTimeout(come, lateMs);
    return () => {
      watch.disconnect();
      clearTimeout(late);
    };
  }, []);
  const x = columnOf(calculator, picture.rows, picture.x);
  if (!(count > 1) || !x) return null;
  // The year begins with turn-out: a third of it on is the middle of summer.
  const chosen = Math.min(wanted ?? Math.floor(count / 3), count - 1);
  const at = (index: number): number => tenth((index / (count - 1)) * widthPx);
  const number = (row: Readonly<Record<string, unknown>> | undefined, name: string): number => {
    const value = row?.[name];
    return typeof value === 'number' ? value : 0;
  };
  const days = sides[0]?.rows.map((row) => number(row, picture.x)) ?? [];
  const [first = 0, last = 1] = [days[0], days[count - 1]];
  const dayAt = (day: number): string => dayName(printScalar(day, x, system));
  const lanes = picture.lanes.map((lane, place) => {
    const quantity = columnOf(calculator, picture.rows, lane.of);
    const most = Math.max(...sides.flatMap(({ rows }) => rows.map((row) => number(row, lane.of)))) || 1;
    const foot = (place + 1) * (headPx + lanePx);
    const up = (value: number): number => tenth(foot - (value / most) * lanePx);
    const told = sides.map(({ rows }) => (quantity ? printCell(number(rows[chosen], lane.of), quantity, system) : ''));
    return { ...lane, quantity, foot, up, told };
  });
  const height = lanes.length * (headPx + lanePx) + footPx;
  const chosenDay = dayAt(days[chosen] ?? first);
  const gaps = gapsIn(
    sides.map((side) => side.outcome),
    picture.rows,
    picture.gaps,
  );
  const gapColumn = picture.gaps && columnOf(calculator, picture.rows, picture.gaps.of);
  const gapSaid = (index: number): string =>
    picture.gaps && gapColumn && gaps.includes(index)
      ? `; ${gapColumn.label} ${printCell(Math.max(...sides.map(({ rows }) => number(rows[index], picture.gaps?.of ?? ''))), gapColumn, system)}`
      : '';
  const said = `${lanes.map(({ quantity, told }) => `${named(quantity, system)} ${[...new Set(told)].join(' against ')}`).join('; ')}${gapSaid(chosen)}`;
  const halfWeek = widthPx / (count - 1) / 2;
  const faces = withColumns(calculator, picture.rows);
  return (
    <>
      <figure class="picture plot lines strip">
        <svg
          width={widthPx}
          height={height}
          viewBox={`0 0 ${widthPx} ${height}`}
          role="img"
          aria-label={`${calculator.title}, the week from ${chosenDay}: ${said}.`}
        >
          <GapBands
            id={id}
            bands={gaps
              .filter((index) => index < count)
              .flatMap((index) => {
                const [from, to] = [Math.max(0, at(index) - halfWeek), Math.min(widthPx, at(index) + halfWeek)];
                // Between the lanes stand their names.
                return lanes.map(({ foot }) => ({ from, to, top: foot - lanePx, foot }));
              })}
          />
          {lanes.map(({ of, as, quantity, foot, up, told }) => (
            <g key={of}>
              <text x={0} y={foot - lanePx - 6} class="quiet">
                {named(quantity, system)}
              </text>
              <text x={widthPx} y={foot - lanePx - 6} text-anchor="end">
                {[...new Set(told)].join(' · ')}
              </text>
              {sides.map(({ is, rows }) =>
                as === 'bars' ? (
                  <path
                    key={is}
                    class={`curve is-${is}`}
                    d={rows
                      .slice(0, count)
                      .flatMap((row, index) => {
                        const top = up(number(row, of));
                        return top < foot ? [`M${tenth(at(index) + (is === 'that' ? 2 : 0))} ${foot}V${top}`] : [];
                      })
                      .join('')}
                  />
                ) : (
                  <path
                    key={is}
                    class={`curve is-${is}`}
                    d={`M${rows
                      .slice(0, count)
                      .map((row, index) => `${at(index)} ${up(number(row, of))}`)
                      .join('L')}`}
                  />
                ),
              )}
              <path class="axis" d={`M0 ${foot}H${widthPx}`} />
            </g>
          ))}
          {/* Not through the names between the lanes. */}
          <path class="day" d={lanes.map(({ foot }) => `M${at(chosen)} ${foot - lanePx}V${foot}`).join('')} />
          {dayTicks(first, last, widthPx).map((tick) => {
            const x = tenth(((tick - first) / (last - first)) * widthPx);
            return (
              <text key={tick} class="quiet" {...daySpot(x, widthPx)} y={height - 6}>
                {dayAt(tick)}
              </text>
            );
          })}
        </svg>
        {gaps.length > 0 && <figcaption>{picture.gaps?.says}</figcaption>}
      </figure>
      <label class="strip-day" for={`${id}-day`}>
        Week from {chosenDay}
        <input
          id={`${id}-day`}
          type="range"
          min={0}
          max={count - 1}
          step={1}
          value={chosen}
          disabled={!isLive}
          aria-valuetext={`${chosenDay}: ${said}`}
          onInput={({ currentTarget }) => setWanted(currentTarget.valueAsNumber)}
        />
      </label>
      {/* In the built page it would weigh more than all the rest. Below the glass of a phone it is drawn as soon as it comes near, or a day is picked. */}
      <div class="strip-ground" ref={ground}>
        {(isNear || wanted !== undefined) && (
          <Face
            {...props}
            picture={picture.face}
            calculator={faces}
            outcome={atRow(outcome, picture.rows, chosen)}
            other={other && atRow(other, picture.rows, chosen)}
            id={`${id}-face`}
            widthPx={widthPx}
          />
        )}
      </div>
      <p class="strip-csv">
        {sides.map((side) => (
          <button
            key={side.is}
            type="button"
            class="quiet"
            disabled={!isLive}
            onClick={() => save(`${calculator.slug}-${side.is}.csv`, csvOf(calculator, side.outcome, system, other ? side.title : ''))}
          >
            {other ? `Save ${sideName(side)} as CSV` : 'Save all tables as CSV'}
          </button>
        ))}
      </p>
    </>
  );
}
