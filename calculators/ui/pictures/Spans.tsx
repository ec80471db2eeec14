import type { Spans as SpansPicture } from '../../kit/pictures.ts';
import { printScalar } from '../../kit/print.ts';
import type { Scalar } from '../../kit/quantities.ts';
import { dayNamePx, dayTicks, percentAlong } from './axis.ts';
import { columnOf, type PictureProps, rowsIn, type Side, sidesOf } from './readings.ts';

const axisHeight = 40;
/** The chart never gets narrower than this on a phone, names of the lanes aside. */
const leastWidth = 240;
/** What a sheet leaves for the lanes. */
const paperWidth = 460;

interface Span {
  readonly from: number;
  readonly to: number;
  readonly isHollow: boolean;
}
interface Lane {
  readonly name: Scalar;
  readonly spans: readonly Span[];
}
function lanesOf(side: Side, picture: SpansPicture): readonly Lane[] {
  const lanes = new Map<Scalar, Span[]>();
  for (const row of rowsIn(side.outcome, picture.rows)) {
    const [name, from, to] = [row[picture.lane], row[picture.from], row[picture.to]];
    if (name === undefined || typeof from !== 'number' || typeof to !== 'number') continue;
    const spans = lanes.get(name) ?? [];
    spans.push({ from, to: Math.max(from, to), isHollow: picture.hollow !== undefined && row[picture.hollow.of] === picture.hollow.is });
    lanes.set(name, spans);
  }
  return [...lanes].map(([name, spans]) => ({ name, spans: spans.sort((one, other) => one.from - other.from) }));
}

/** Lanes over time, each span a bar and the time between a thin line. Long plans scroll inside their own box; the names of the lanes stay. */
export function Spans({ calculator, picture, outcome, other, titles, system, id }: PictureProps<SpansPicture>) {
  const columns = [picture.lane, picture.from, picture.to].map((name) => columnOf(calculator, picture.rows, name));
  const print = (value: Scalar, column: number): string => {
    const quantity = columns[column];
    return quantity ? printScalar(value, quantity, system) : String(value);
  };
  const sides = sidesOf({ outcome, other, titles }).map((side) => ({ ...side, lanes: lanesOf(side, picture) }));
  const spans = sides.flatMap((side) => side.lanes.flatMap((lane) => lane.spans));
  const saysOf = ({ isHollow }: Span): string => (isHollow && picture.hollow ? picture.hollow.says : picture.spanSays);
  if (spans.length === 0) return null;
  const from = Math.min(...spans.map((span) => span.from));
  const to = Math.max(from + 1, ...spans.map((span) => span.to));
  const shortest = Math.max(0.5, Math.min(...spans.map((span) => span.to - span.from)));
  // The shortest stay is still five points wide, unless the plan would run off into a scroll that nobody follows.
  const width = Math.max(leastWidth, Math.round((to - from) * Math.min(4, Math.max(1, 5 / shortest))));
  // On paper only each so many-th day is named.
  const every = Math.ceil(width / paperWidth);
  const fitsPaper = (day: number, index: number): boolean =>
    every === 1 || (index % every === 0 && (to - day) * paperWidth >= dayNamePx * (to - from));
  const laneLabel = columns[0]?.label ?? '';
  const ticks = dayTicks(from, to, width).map((day) => {
    const [name = '', year] = print(day, 1)
      .replace(/^\w+, (?=\w{3} \d)/, '')
      .split(', ');
    return { day, name, year };
  });
  const names = sides.flatMap((side) => side.lanes.map((lane) => print(lane.name, 0)));
  const nameWidth = Math.min(130, Math.max(24, 8 + 8 * Math.max(laneLabel.length, ...names.map((name) => name.length))));
  return (
    <figure class="picture spans">
      {sides.map(({ is, title, lanes }) => {
        const row = lanes.length > 14 ? 19 : 27;
        const height = axisHeight + lanes.length * row;
        const first = lanes[0];
        const told = first?.spans.map((span) => `${saysOf(span)} ${print(span.from, 1)} to ${print(span.to, 2)}`).slice(0, 3);
        const said = `${laneLabel}: ${lanes.length} of them, ${print(from, 1)} to ${print(to, 2)}. ${first ? `${laneLabel} ${print(first.name, 0)}: ${told?.join(`, ${picture.gapSays}, `)}.` : ''}`;
        return (
          <div key={is}>
            {title && <p class={`picture-title picture-${is}`}>{title}</p>}
            <p class="picture-said" id={`${id}-${is}-said`}>
              {said}
            </p>
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard */}
            <section class="picture-scroll" tabIndex={0} aria-label={`${title || calculator.title}, scrolls sideways`}>
              <svg class="lane-names" width={nameWidth} height={height} aria-hidden="true">
                <text x="0" y="16">
                  {laneLabel}
                </text>
                {lanes.map((lane, index) => (
                  <text key={lane.name} x="0" y={axisHeight + (index + 0.5) * row + 5}>
                    {print(lane.name, 0)}
                  </text>
                ))}
              </svg>
              <svg
                class="lanes"
                width={width}
                height={height}
                role="img"
                aria-label={`${calculator.title}: ${laneLabel}`}
                aria-describedby={`${id}-${is}-said`}
              >
                {ticks.map(({ day, name, year }, index) => (
                  <g key={day}>
                    <line class="tick" x1={percentAlong(day, from, to)} x2={percentAlong(day, from, to)} y1={axisHeight - 4} y2={height} />
                    <text {...(fitsPaper(day, index) ? {} : { class: 'aside' })} x={percentAlong(day, from, to)} y="14">
                      {name}
                    </text>
                    {year !== ticks[index - 1]?.year && (
                      <text class="year" x={percentAlong(day, from, to)} y="30">
                        {year}
                      </text>
                    )}
                  </g>
                ))}
                {lanes.map((lane, index) => {
                  const middle = axisHeight + (index + 0.5) * row;
                  const last = lane.spans.at(-1);
                  return (
                    <g key={lane.name}>
                      {lane.spans[0] && last && lane.spans.length > 1 && (
                        <line
                          class="gap"
                          x1={percentAlong(lane.spans[0].from, from, to)}
                          x2={percentAlong(last.from, from, to)}
                          y1={middle}
                          y2={middle}
                        />
                      )}
                      {lane.spans.map((span) => (
                        <rect
                          key={span.from}
                          class={span.isHollow ? 'span hollow' : 'span'}
                          x={percentAlong(span.from, from, to)}
                          y={middle - row / 2 + 3}
                          width={percentAlong(span.to - span.from, 0, to - from)}
                          height={row - 6}
                        />
                      ))}
                    </g>
                  );
                })}
              </svg>
            </section>
          </div>
        );
      })}
      <figcaption class="picture-key">
        <svg width="26" height="14" aria-hidden="true">
          <rect class="span" width="26" height="14" />
        </svg>
        {picture.spanSays}
        {picture.hollow && spans.some(({ isHollow }) => isHollow) && (
          <>
            <svg width="26" height="14" aria-hidden="true">
              <rect class="span hollow" width="26" height="14" />
            </svg>
            {picture.hollow.says}
          </>
        )}
        <svg width="26" height="14" aria-hidden="true">
          <path class="gap" d="M0 7h26" />
        </svg>
        {picture.gapSays}
      </figcaption>
    </figure>
  );
}
