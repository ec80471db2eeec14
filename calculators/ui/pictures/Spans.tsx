import type { RowSpans, Spans as SpansPicture } from '../../kit/pictures.ts';
import { printName, printScalar } from '../../kit/print.ts';
import type { Scalar } from '../../kit/quantities.ts';
import { isShown } from '../../kit/state.ts';
import { dayName, dayTicks, niceTicks } from './axis.ts';
import { columnOf, fillIn, type PictureProps, rowsIn, type Side, sideName, sidesOf, sizeIn, tenth, usualWidthPx } from './readings.ts';
import { Words } from './Words.tsx';
import { boxOf, linesAt, linesWithin, meet, sizes, textPx, type Word } from './words.ts';

interface Span {
  readonly from: number;
  readonly to: number;
  readonly isHollow: boolean;
}
interface Lane {
  readonly name: string;
  /** Told before the name, where the name stands over the bar. */
  readonly told: string;
  readonly spans: readonly Span[];
}
/** All lanes together are about this tall, the fewer the wider each; many are thin. */
const lanesPx = 208;
const laneMost = 26;
const laneLeast = 7;

/** The lanes of one side, and how a place on their axis is told. */
function lanesOf(props: PictureProps<SpansPicture>, { outcome }: Side): readonly Lane[] {
  const { calculator, picture, system } = props;
  if ('lanes' in picture)
    return picture.lanes.map(({ of, says }) => ({
      name: says,
      told: printName(calculator, outcome.values, of, system),
      spans: [{ from: 0, to: sizeIn(outcome, of), isHollow: false }],
    }));
  const print = (name: string, value: Scalar): string => {
    const column = columnOf(calculator, picture.rows, name);
    return column ? printScalar(value, column, system) : String(value);
  };
  const lanes = new Map<Scalar | number, { readonly name: string; readonly told: string; readonly spans: Span[] }>();
  for (const [index, row] of rowsIn(outcome, picture.rows).entries()) {
    const from = typeof picture.from === 'string' ? row[picture.from] : outcome.values[picture.from.of];
    const [name, to] = [row[picture.lane], row[picture.to]];
    if (name === undefined || typeof from !== 'number' || typeof to !== 'number') continue;
    const value = picture.told === undefined ? undefined : row[picture.told];
    // Each row that tells something of its own is a lane of its own.
    const key = value === undefined ? name : index;
    const lane = lanes.get(key) ?? {
      name: print(picture.lane, name),
      told: value === undefined || picture.told === undefined ? '' : dayName(print(picture.told, value)),
      spans: [],
    };
    lane.spans.push({ from, to: Math.max(from, to), isHollow: picture.hollow !== undefined && row[picture.hollow.of] === picture.hollow.is });
    lanes.set(key, lane);
  }
  return [...lanes.values()].map((lane) => ({ ...lane, spans: lane.spans.sort((one, other) => one.from - other.from) }));
}

/** Lanes over time: solid while grazed, hatched while at rest; the day that matters is a line with words. */
export function Spans(props: PictureProps<SpansPicture>) {
  const { calculator, picture, outcome, other, titles, system, id, widthPx = usualWidthPx } = props;
  const rows: RowSpans | undefined = 'lanes' in picture ? undefined : picture;
  const sides = sidesOf({ outcome, other, titles }).map((side) => {
    const at = picture.mark && isShown(picture.mark, side.outcome.values) ? side.outcome.values[picture.mark.at] : undefined;
    const mark = picture.mark && typeof at === 'number' ? { at, says: fillIn(calculator, side.outcome, system, picture.mark.says) } : undefined;
    return { ...side, lanes: lanesOf(props, side), mark };
  });
  const spans = sides.flatMap((side) => side.lanes.flatMap((lane) => lane.spans));
  if (spans.length === 0) return null;
  const marks = sides.flatMap(({ mark }) => (mark ? [mark.at] : []));
  const from = Math.min(...spans.map((span) => span.from));
  const to = Math.max(from + 1, ...spans.map((span) => span.to), ...marks);
  const isNamedOver = rows === undefined || rows.told !== undefined;
  const laneLabel = rows ? (columnOf(calculator, rows.rows, rows.lane)?.label ?? '') : '';
  const names = sides.flatMap((side) => side.lanes.map((lane) => lane.name));
  const left = isNamedOver ? 0 : Math.min(widthPx * 0.35, 10 + Math.max(...names.map((name) => textPx(name, 'name'))));
  const right = widthPx - 2;
  const across = (at: number): number => tenth(left + ((at - from) / (to - from)) * (right - left));
  const print = (day: number, column: string): string => {
    const quantity = rows && columnOf(calculator, rows.rows, column);
    return quantity ? printScalar(day, quantity, system) : String(Math.round(day));
  };
  const ticks = rows
    ? dayTicks(from, to, right - left).map((day) => ({ at: day, name: dayName(print(day, rows.to)) }))
    : niceTicks(from, to, 4).map((day, index, all) => ({ at: day, name: index === all.length - 1 ? `${day} days` : String(day) }));
  const words: Word[] = [];
  const drawn = [];
  let top = 0;
  if (!isNamedOver && laneLabel !== '') {
    words.push({ text: laneLabel, x: 0, y: top + sizes.name.px, size: 'name', is: 'quiet' });
    top += sizes.name.line;
  }
  for (const side of sides) {
    const { lanes, mark } = side;
    if (other) {
      const lines = linesWithin(sideName(side), 'figure', widthPx);
      words.push(...linesAt(lines, { top, x: 0, size: 'figure', is: `picture-${side.is}` }));
      top += lines.length * sizes.figure.line + 4;
    }
    const rulesAt = top;
    if (other) top += 8;
    const markTop = top;
    if (mark) {
      const lines = linesWithin(mark.says, 'figure', widthPx);
      const wide = Math.max(...lines.map((line) => textPx(line, 'figure')));
      const middle = Math.max(wide / 2, Math.min(across(mark.at), widthPx - wide / 2));
      words.push(...linesAt(lines, { top, x: middle, size: 'figure', anchor: 'middle', is: 'on-mark' }));
      top += lines.length * sizes.figure.line + 2;
    }
    const bodyTop = top;
    const row = isNamedOver ? 16 : Math.max(laneLeast, Math.min(laneMost, lanesPx / lanes.length));
    const nameEvery = Math.ceil(sizes.name.line / row);
    const boxes = lanes.map((lane, index) => {
      const start = top - 3;
      // How far a name over the bar reaches.
      let end = 0;
      if (isNamedOver) {
        const lines = linesWithin(`${lane.told} ${lane.name}`, 'figure', widthPx);
        end = Math.max(...lines.map((line) => textPx(line, 'figure')));
        words.push(...linesAt(lines, { top: top + 2, x: 0, size: 'figure' }));
        top += 2 + lines.length * sizes.figure.line;
      } else if (index % nameEvery === 0 && (lanes.length - index) * row >= sizes.name.line - 4)
        words.push({ text: lane.name, x: left - 8, y: top + Math.max(row, sizes.name.px) / 2 + 6, size: 'name', anchor: 'end' });
      const box = { top: tenth(top + (row > 12 ? 2 : 1)), height: tenth(row - (row > 12 ? 4 : 1)) };
      top += row;
      return { lane, from: start, right: end, ...box };
    });
    drawn.push({ side, rulesAt, boxes, bodyTop, markTop, bottom: top, mark });
    top += 6;
  }
  const axisTop = top;
  const named = ticks.map(({ at, name }): Word => {
    const half = textPx(name, 'name') / 2;
    return {
      text: name,
      x: Math.max(half, Math.min(across(at), widthPx - half)),
      y: axisTop + sizes.name.px,
      size: 'name',
      anchor: 'middle',
      is: 'quiet',
    };
  });
  // Every one of them, or every second, or third: gaps of different width would read as different times.
  const everySo = [1, 2, 3, 4].find((step) => {
    const some = named.filter((_, index) => index % step === 0);
    return some.every((word, index) => index === 0 || !meet(boxOf(some[index - 1] ?? word), boxOf(word), 8));
  });
  words.push(...named.filter((_, index) => index % (everySo ?? named.length) === 0));
  top += sizes.name.line;
  // What the two patterns mean stands in words under them, at a piece of each.
  const hasHollow = spans.some(({ isHollow }) => isHollow);
  const keys = [
    ...(rows && !isNamedOver ? [{ is: 'graze', says: rows.spanSays }] : []),
    ...(rows && !isNamedOver ? [{ is: 'rest', says: rows.gapSays }] : []),
    ...(rows?.hollow && hasHollow ? [{ is: 'hollow', says: rows.hollow.says }] : []),
  ];
  const keyed = [];
  let x = 0;
  for (const key of keys) {
    const lines = linesWithin(key.says, 'name', widthPx - 38);
    const wide = 38 + Math.max(...lines.map((line) => textPx(line, 'name')));
    if (x > 0 && x + wide > widthPx) {
      x = 0;
      top += sizes.name.line + 2;
    }
    keyed.push({ is: key.is, x: x + 1, y: top + 4 });
    words.push(...linesAt(lines, { top, x: x + 34, size: 'name' }));
    x += wide + 14;
    if (lines.length > 1) top += (lines.length - 1) * sizes.name.line;
  }
  if (keys.length > 0) top += sizes.name.line + 2;
  const saidOf = ({ lanes, mark, ...side }: (typeof sides)[number]): string => {
    const first = lanes[0];
    const ends =
      first && rows && !isNamedOver
        ? first.spans.slice(0, 2).map((span) => `${rows.spanSays} ${print(span.from, rows.to)} to ${print(span.to, rows.to)}`)
        : [];
    const each = isNamedOver
      ? lanes.map((lane) => `${lane.told} ${lane.name}`)
      : [
          `${lanes.length} lanes by ${laneLabel.toLowerCase()}, from ${dayName(print(from, rows?.to ?? ''))} to ${dayName(print(to, rows?.to ?? ''))}; ${first?.name} ${ends.join(', then ')}`,
        ];
    return `${other ? `${sideName(side)}: ` : ''}${[...each, ...(mark ? [mark.says] : [])].join('; ')}`;
  };
  const piece = (is: string, box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }, key: string) => (
    <g key={key}>
      <rect class={`span ${is}`} {...box} />
      {is === 'rest' && <rect fill={`url(#${id}-rest)`} {...box} />}
    </g>
  );
  return (
    <figure class="picture plot spans">
      <svg
        width={widthPx}
        height={tenth(top)}
        viewBox={`0 0 ${widthPx} ${tenth(top)}`}
        role="img"
        aria-label={`${calculator.title}: ${sides.map(saidOf).join('. ')}.`}
      >
        <defs>
          <pattern id={`${id}-rest`} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path class="rest-stripe" d="M3.5 0V7" />
          </pattern>
        </defs>
        {drawn.map(({ side, rulesAt, boxes, bodyTop, bottom, mark }) => (
          <g key={side.is}>
            {other && (
              <path class={`side-rule is-${side.is}`} d={side.is === 'this' ? `M0 ${rulesAt}H72` : `M0 ${rulesAt - 2}H72M0 ${rulesAt + 3}H72`} />
            )}
            <path class="tick" d={ticks.map(({ at }) => `M${across(at)} ${tenth(bodyTop)}V${tenth(bottom + 4)}`).join('')} />
            {boxes.map(({ lane, top: y, height }, index) => (
              <g key={`${lane.told} ${lane.name}`} data-lane={index}>
                {lane.spans.map((span, at) => {
                  // What is not grazed again by the plan rests to its end.
                  const restsTo = lane.spans[at + 1]?.from ?? (at === 0 && rows !== undefined && !isNamedOver ? to : span.to);
                  const x = across(span.from);
                  return [
                    piece(span.isHollow ? 'hollow' : 'graze', { x, y, width: tenth(Math.max(1.5, across(span.to) - x)), height }, `${span.from}`),
                    restsTo > span.to
                      ? piece('rest', { x: across(span.to), y, width: tenth(across(restsTo) - across(span.to)), height }, `${span.from} rest`)
                      : null,
                  ];
                })}
              </g>
            ))}
            {mark && (
              <path
                class="day"
                d={
                  // Not through the names over the bars.
                  boxes
                    .map(
                      ({ from, top: y, height, right: end }) =>
                        `M${across(mark.at)} ${tenth(across(mark.at) > end + 6 ? from : y - 3)}V${tenth(y + height + 3)}`,
                    )
                    .join('')
                }
              />
            )}
          </g>
        ))}
        {keyed.map(({ is, ...at }) => piece(is, { ...at, width: 26, height: 14 }, is))}
        <Words words={words} />
      </svg>
    </figure>
  );
}
