import type { Outcome } from '../../kit/define.ts';
import type { Lines as LinesPicture } from '../../kit/pictures.ts';
import { printScalar } from '../../kit/print.ts';
import { digitsTold, type ScalarQuantity } from '../../kit/quantities.ts';
import { printNumber } from '../../units/printQuantity.ts';
import { convert, type UnitSystem, unitIn, units } from '../../units/units.ts';
import { dayTicks, niceTicks, percentAlong, spreadLabels, wrapLabel } from './axis.ts';
import { columnOf, type PictureProps, rowsIn, sidesOf } from './readings.ts';
import { lineHeight, TextLines } from './TextLines.tsx';

const plot = { height: 220, leastWidth: 190, letters: 13, below: 44 } as const;

type Point = readonly [number, number];
interface Mark {
  readonly at: number;
  readonly says: string;
  /** The whole of it in words. */
  readonly told: string;
}
interface Curve {
  readonly label: string;
  readonly points: readonly Point[];
}
/** One curve for each word in the column that tells them apart. */
function curvesBehind({ calculator, picture, system }: PictureProps<LinesPicture>, outcome: Outcome): readonly Curve[] {
  const { behind } = picture;
  if (!behind) return [];
  const toX = shownIn(columnOf(calculator, behind.rows, behind.x), system);
  const toY = shownIn(columnOf(calculator, behind.rows, behind.y), system);
  const byName = new Map<string, Point[]>();
  for (const row of rowsIn(outcome, behind.rows)) {
    const [name, across, up] = [String(row[behind.of]), row[behind.x], row[behind.y]];
    if (typeof across !== 'number' || typeof up !== 'number') continue;
    const points = byName.get(name) ?? [];
    points.push([toX(across), toY(up)]);
    byName.set(name, points);
  }
  return [...byName].map(([label, points]) => ({ label, points }));
}
const unitOf = (quantity: ScalarQuantity | undefined, system: UnitSystem) =>
  quantity?.kind === 'number' ? unitIn(system, quantity.unit) : undefined;
const shownIn = (quantity: ScalarQuantity | undefined, system: UnitSystem) => {
  const unit = unitOf(quantity, system);
  return (value: number): number => (quantity?.kind === 'number' && unit ? convert(value, quantity.unit, unit) : value);
};
/** As many digits as the step between two ticks needs. */
const tickText = (ticks: readonly number[]) => {
  const step = Math.abs((ticks[1] ?? 1) - (ticks[0] ?? 0)) || 1;
  const digits = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return (tick: number): string => printNumber(tick, Number.isInteger(step * 10 ** digits) ? digits : digits + 1);
};
const range = (values: readonly number[], fromZero: boolean): Point => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const start = fromZero ? Math.min(0, low) : low;
  return high > start ? [start, high] : [start, start + 1];
};

/** Curves over a common axis, each named at its end. Two managements: one curve each in the same plot, or a plot each below the other. */
export function Lines(props: PictureProps<LinesPicture>) {
  const { calculator, picture, outcome, other, titles, system, id } = props;
  const sides = sidesOf({ outcome, other, titles });
  const x = columnOf(calculator, picture.rows, picture.x);
  const ys = picture.ys.map((name) => columnOf(calculator, picture.rows, name));
  const toX = shownIn(x, system);
  const curvesOf = sides.map((side) =>
    picture.ys.map((name, index): Curve => {
      const toY = shownIn(ys[index], system);
      const points = rowsIn(side.outcome, picture.rows).flatMap((row): readonly Point[] => {
        const [across, up] = [row[picture.x], row[name]];
        return typeof across === 'number' && typeof up === 'number' ? [[toX(across), toY(up)]] : [];
      });
      return { label: ys[index]?.label ?? name, points };
    }),
  );
  const behindOf = sides.map((side) => curvesBehind(props, side.outcome));
  const all = [...curvesOf, ...behindOf].flat().flatMap((curve) => curve.points);
  if (all.length === 0) return null;
  const markOf = (side: (typeof sides)[number]): Mark | undefined => {
    const at = picture.mark ? side.outcome.values[picture.mark.at] : undefined;
    return picture.mark && x && typeof at === 'number'
      ? { at: toX(at), says: picture.mark.says, told: `${picture.mark.says}: ${printScalar(at, x, system)}.` }
      : undefined;
  };
  const overlaid = sides.length === 2 && picture.ys.length === 1 && titles[0] !== '' && titles[1] !== '';
  const plots = overlaid
    ? [
        {
          is: 'both',
          title: curvesOf[0]?.[0]?.label ?? '',
          curves: curvesOf.flatMap((curves, index) => curves.map((curve) => ({ ...curve, label: titles[index] ?? '' }))),
          behind: behindOf[0] ?? [],
          mark: undefined,
        },
      ]
    : sides.map((side, index) => ({
        is: side.is,
        title: side.title,
        curves: curvesOf[index] ?? [],
        behind: behindOf[index] ?? [],
        mark: markOf(side),
      }));
  const [left, right] = range(
    all.map(([across]) => across),
    false,
  );
  const [, highest] = range(
    all.map(([, up]) => up),
    true,
  );
  const yTicks = niceTicks(
    range(
      all.map(([, up]) => up),
      true,
    )[0],
    highest,
    4,
  );
  const [bottom, top] = [
    Math.min(
      range(
        all.map(([, up]) => up),
        true,
      )[0],
      yTicks[0] ?? 0,
    ),
    Math.max(highest, yTicks.at(-1) ?? 0),
  ];
  const height = (up: number): number => Math.round((1 - (up - bottom) / (top - bottom)) * plot.height * 10) / 10;
  const xTicks = x?.kind === 'day' ? dayTicks(left, right, plot.leastWidth) : niceTicks(left, right, 3);
  const [sayX, sayY] = [tickText(xTicks), tickText(yTicks)];
  const nameX = (tick: number): string =>
    x?.kind === 'day'
      ? printScalar(tick, x, system)
          .replace(/^\w+, (?=\w{3} \d)/, '')
          .replace(/, \d+$/, '')
      : sayX(tick);
  const unitWords = (quantity: ScalarQuantity | undefined): string => {
    const unit = unitOf(quantity, system);
    return unit ? units[unit].print : '';
  };
  const isLate = (across: number): boolean => across - left > 0.4 * (right - left);
  const axisWidth = 10 + 8 * Math.max(...yTicks.map((tick) => sayY(tick).length));
  return (
    <figure class="picture lines">
      {plots.map(({ is, title, curves, behind, mark }) => {
        const marked = mark && mark.at > left && mark.at < right ? mark : undefined;
        const drawn = curves.filter((curve) => curve.points.length > 0);
        const labels = drawn.map((curve) => wrapLabel(curve.label, plot.letters));
        const ends = drawn.map((curve) => height(curve.points.at(-1)?.[1] ?? 0));
        const tops = spreadLabels(
          labels.map((lines, index) => ({ at: ends[index] ?? 0, height: lines.length * lineHeight + 4 })),
          plot.height + plot.below,
        );
        const say = (index: number, at: 0 | -1): string => {
          const point = drawn[index]?.points.at(at);
          return point
            ? `${printNumber(point[1], ys[0]?.kind === 'number' ? Math.max(0, digitsTold(point[1], ys[0])) : 0)} ${unitWords(ys[0])} at ${x?.kind === 'day' ? printScalar(point[0], x, system) : sayX(point[0])}`
            : '';
        };
        const said = [
          ...drawn.map((curve, index) => `${curve.label}: from ${say(index, 0)} to ${say(index, -1)}.`),
          ...(behind.length > 0 && picture.behind ? [picture.behind.says] : []),
          ...(marked ? [marked.told] : []),
        ].join(' ');
        const path = ({ points }: Curve): string =>
          `M${points.map(([across, up]) => `${Math.round(((across - left) / (right - left)) * 1000)} ${height(up)}`).join('L')}`;
        return (
          <div key={is}>
            {title && <p class={`picture-title picture-${is}`}>{title}</p>}
            <p class="picture-said" id={`${id}-${is}-said`}>
              {said}
            </p>
            <p class="unit">
              {unitWords(ys[0])}
              {behind.length > 0 && picture.behind && <span aria-hidden="true">. {picture.behind.says}</span>}
            </p>
            <div
              class="plot"
              role="img"
              aria-label={`${calculator.title}: ${drawn.map((curve) => curve.label).join(', ')}`}
              aria-describedby={`${id}-${is}-said`}
            >
              <svg width={axisWidth} height={plot.height + plot.below} aria-hidden="true">
                {yTicks.map((tick) => (
                  <text key={tick} x={axisWidth - 6} y={height(tick)} dy=".34em" text-anchor="end">
                    {sayY(tick)}
                  </text>
                ))}
              </svg>
              <svg class="plot-field" width="100%" height={plot.height + plot.below} aria-hidden="true">
                {yTicks.map((tick) => (
                  <line key={tick} class="tick" x2="100%" y1={height(tick)} y2={height(tick)} />
                ))}
                {xTicks.map((tick) => (
                  <g key={tick}>
                    <line
                      class="axis"
                      x1={percentAlong(tick, left, right)}
                      x2={percentAlong(tick, left, right)}
                      y1={plot.height}
                      y2={plot.height + 5}
                    />
                    <text x={percentAlong(tick, left, right)} y={plot.height + 20} text-anchor={x?.kind === 'day' ? 'start' : 'middle'}>
                      {nameX(tick)}
                    </text>
                  </g>
                ))}
                <text class="axis-name" x="0" y={plot.height + 40}>
                  {x?.kind === 'day' ? '' : [x?.label, unitWords(x)].filter(Boolean).join(', ')}
                </text>
                <line class="axis" x2="100%" y1={height(Math.max(0, bottom))} y2={height(Math.max(0, bottom))} />
                <svg
                  width="100%"
                  height={plot.height}
                  viewBox={`0 0 1000 ${plot.height}`}
                  preserveAspectRatio="none"
                  overflow="visible"
                  aria-hidden="true"
                >
                  {behind.length > 0 && <path class="curve curve-behind" d={behind.map(path).join('')} />}
                  {drawn.map((curve, index) => (
                    <path key={curve.label} class={`curve curve-${index % 4}`} d={path(curve)} />
                  ))}
                </svg>
                {marked && (
                  <g class="plot-mark">
                    <line x1={percentAlong(marked.at, left, right)} x2={percentAlong(marked.at, left, right)} y2={plot.height} />
                    {/* Before the mark the curves mostly run together and leave the middle free; behind it they part, and the foot is free. */}
                    <text
                      x={percentAlong(marked.at, left, right)}
                      dx={isLate(marked.at) ? -6 : 6}
                      y={isLate(marked.at) ? plot.height / 2 : plot.height - 8}
                      text-anchor={isLate(marked.at) ? 'end' : 'start'}
                    >
                      {marked.says}
                    </text>
                  </g>
                )}
              </svg>
              <svg width={8.2 * plot.letters + 24} height={plot.height + plot.below} aria-hidden="true">
                {labels.map((lines, index) => (
                  <g key={lines.join()}>
                    <path class="leader" d={`M3 ${ends[index]}L12 ${(tops[index] ?? 0) + 8}h5`} />
                    <TextLines x={20} y={(tops[index] ?? 0) - 2} lines={lines} />
                  </g>
                ))}
              </svg>
            </div>
          </div>
        );
      })}
    </figure>
  );
}
