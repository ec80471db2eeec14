import { midSentence } from '../../kit/midSentence.ts';
import type { Lines as LinesPicture } from '../../kit/pictures.ts';
import { printName, printScalar } from '../../kit/print.ts';
import { digitsTold, type ScalarQuantity } from '../../kit/quantities.ts';
import { isShown } from '../../kit/state.ts';
import { printIn, printNumber, withUnit } from '../../units/printQuantity.ts';
import { convert, type UnitName, type UnitSystem, unitIn, units } from '../../units/units.ts';
import { dayName, dayTicks, niceTicks, wholeTicks } from './axis.ts';
import { curveOf, type Found, type Point, wordsAlong, wordsAt } from './placeWords.ts';
import { columnOf, fillIn, type PictureProps, rowsIn, type Side, sideName, sidesOf, tenth, usualWidthPx } from './readings.ts';
import { Words } from './Words.tsx';
import { type Box, boxOf, linesAt, linesWithin, meet, sizes, textPx, type Word } from './words.ts';

/** The whole of it, and where the curves may stand in it. */
const heightPx = 220;
/** What a taller plot costs, beside curves that run through words. */
const growthCost = (extraPx: number): number => extraPx / 8;
/** From the axis to its names: those of the other axis end lower than it. */
const feetPx = 10;
/** More marked rows than so many are counted for whoever hears the picture, not listed: the table has them. */
const mostListed = 8;

interface Curve {
  readonly name: string;
  /** This and that are straw and green; what they are read against is ink. */
  readonly is: 'this' | 'that' | 'beside' | 'beside other';
  readonly points: readonly Point[];
}
const unitOf = (quantity: ScalarQuantity | undefined, system: UnitSystem): UnitName | undefined =>
  quantity?.kind === 'number' ? unitIn(system, quantity.unit) : undefined;
const shownIn = (quantity: ScalarQuantity | undefined, system: UnitSystem) => {
  const unit = unitOf(quantity, system);
  return (value: number): number => (quantity?.kind === 'number' && unit ? convert(value, quantity.unit, unit) : value);
};
/** As many digits as the step between two ticks needs. */
const tickText = (ticks: readonly number[]) => {
  const step = Math.abs((ticks[1] ?? 1) - (ticks[0] ?? 0)) || 1;
  const digits = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return (tick: number): string => printNumber(tick, Number.isInteger(Number((step * 10 ** digits).toPrecision(9))) ? digits : digits + 1);
};
const ticksOf = (quantity: ScalarQuantity | undefined, low: number, high: number, count: number): readonly number[] => {
  const ticks = niceTicks(low, high, count);
  return quantity?.kind === 'number' && quantity.digits <= 0 ? wholeTicks(ticks) : ticks;
};
const isSame = (one: readonly Point[], other: readonly Point[]): boolean => JSON.stringify(one) === JSON.stringify(other);

/** What is drawn: of two managements the first column of each, and of the others those that are the same for both. */
function curvesOf({ calculator, picture, system }: PictureProps<LinesPicture>, sides: readonly Side[]): readonly Curve[] {
  const toX = shownIn(columnOf(calculator, picture.rows, picture.x), system);
  const pointsOf = (side: Side, name: string): readonly Point[] => {
    const toY = shownIn(columnOf(calculator, picture.rows, name), system);
    return rowsIn(side.outcome, picture.rows)
      .flatMap((row): readonly Point[] => {
        const [across, up] = [row[picture.x], row[name]];
        return typeof across === 'number' && typeof up === 'number' ? [[toX(across), toY(up)]] : [];
      })
      .toSorted((one, other) => one[0] - other[0]);
  };
  const isPair = sides.length > 1;
  return picture.ys
    .flatMap((name, index): readonly Curve[] => {
      const own = picture.says?.[index] ?? columnOf(calculator, picture.rows, name)?.label ?? name;
      if (index === 0) return sides.map((side) => ({ name: isPair ? sideName(side) : own, is: side.is, points: pointsOf(side, name) }));
      const [points = [], other] = sides.map((side) => pointsOf(side, name));
      return other === undefined || isSame(points, other) ? [{ name: own, is: index === 1 ? 'beside' : 'beside other', points }] : [];
    })
    .filter(({ points }) => points.length > 0);
}

/** What marks rows of a table at their points: fetched with the pictures that name any. */
export type MarkRows = typeof import('./rowMarks.tsx');

/** Curves over a common axis, each named beside it, with the reader's own place on it. Two managements share one plot. */
export function Lines({ markRows, ...props }: PictureProps<LinesPicture> & { readonly markRows?: MarkRows | undefined }) {
  const { calculator, picture, outcome, other, titles, system, widthPx = usualWidthPx } = props;
  const sides = sidesOf({ outcome, other, titles });
  const x = columnOf(calculator, picture.rows, picture.x);
  const y = columnOf(calculator, picture.rows, picture.ys[0] ?? '');
  const [toX, toY] = [shownIn(x, system), shownIn(y, system)];
  const curves = curvesOf(props, sides);
  if (curves.length === 0) return null;
  const yous = sides.flatMap(({ outcome: { values }, is }) => {
    const [at, value] = picture.you ? [values[picture.you.at], values[picture.you.value]] : [];
    if (!picture.you || typeof at !== 'number' || typeof value !== 'number') return [];
    return [{ is, at: toX(at), value: toY(value), told: printName(calculator, values, picture.you.value, system) }];
  });
  const rowMarks = (markRows?.marksOf(sides, picture.rows, picture.rowMarks ?? [], [picture.x, picture.ys[0] ?? '']) ?? []).map((placed) => ({
    ...placed,
    points: placed.points.map(([across, up]): Point => [toX(across), toY(up)]),
  }));
  const all = [...curves.flatMap(({ points }) => points), ...yous.map(({ at, value }): Point => [at, value])];
  const [acrosses, ups] = [all.map(([across]) => across), all.map(([, up]) => up)];
  const [from, furthest] = [Math.min(...acrosses), Math.max(...acrosses)];
  const to = furthest > from ? furthest : from + 1;
  const highest = Math.max(0, ...ups);
  const [low, high] = [Math.min(0, ...ups), highest > 0 ? highest : 1];
  const yTicks = ticksOf(y, low, high, 3);
  const [bottom, top] = [Math.min(low, yTicks[0] ?? 0), Math.max(high, yTicks.at(-1) ?? 0)];
  const sayY = tickText(yTicks);
  const unitWords = (quantity: ScalarQuantity | undefined): string => {
    const unit = unitOf(quantity, system);
    return unit ? units[unit].print : '';
  };
  /** A label that says its unit, such as `Head to go`, needs it no second time. */
  const nameWith = (quantity: ScalarQuantity | undefined): string => {
    const [label, unit] = [quantity?.label ?? '', unitWords(quantity)];
    return unit === '' || ` ${label.toLowerCase()} `.includes(` ${unit} `) ? label : `${label}, ${unit}`;
  };
  // One curve, or one on each side, is named by its axis; several by their own names.
  const isNamedAbove = picture.ys.length === 1;
  const above = linesWithin(isNamedAbove || picture.says ? nameWith(y) : unitWords(y) || nameWith(y), 'name', widthPx);
  const below = x?.kind === 'day' ? [] : linesWithin(nameWith(x), 'name', widthPx);
  const left = 10 + Math.max(...yTicks.map((tick) => textPx(sayY(tick), 'name')));
  const right = widthPx - 10;
  const xTicks = x?.kind === 'day' ? dayTicks(from, to, right - left) : ticksOf(x, from, to, 4);
  const sayX = tickText(xTicks);
  const nameX = (at: number): string => (x?.kind === 'day' ? dayName(printScalar(at, x, system)) : sayX(at));
  const aboveWords = linesAt(above, { top: 0, x: 0, size: 'name', is: 'quiet' });
  const headBottom = above.length * sizes.name.line;
  const plotTop = headBottom + 12;
  const feet = (1 + below.length) * sizes.name.line + feetPx + 1;
  const draw = (
    extraTop: number,
  ): {
    readonly words: readonly Word[];
    readonly cost: number;
    readonly px: (point: Point) => Point;
    readonly top: number;
    readonly foot: number;
  } => {
    const [upper, foot] = [plotTop + extraTop, heightPx + extraTop - feet];
    const px = ([across, up]: Point): Point => [
      tenth(left + ((across - from) / (to - from)) * (right - left)),
      tenth(foot - ((up - bottom) / (top - bottom)) * (foot - upper)),
    ];
    const words: Word[] = [];
    for (const tick of yTicks) words.push({ text: sayY(tick), x: left - 8, y: px([from, tick])[1] + 5, size: 'name', anchor: 'end', is: 'quiet' });
    const taken = (): readonly Box[] => words.map(boxOf);
    for (const tick of xTicks) {
      const half = textPx(nameX(tick), 'name') / 2;
      const at = Math.max(half, Math.min(px([tick, 0])[0], widthPx - half));
      const word: Word = { text: nameX(tick), x: at, y: foot + feetPx + sizes.name.px, size: 'name', anchor: 'middle', is: 'quiet' };
      if (taken().every((box) => !meet(box, boxOf(word), 8))) words.push(word);
    }
    words.push(...linesAt(below, { top: foot + feetPx + sizes.name.line, x: right + 10, size: 'name', anchor: 'end', is: 'quiet' }));
    const drawn = curves.map(({ points }) => curveOf(points.map(px), widthPx));
    const field = (): Parameters<typeof wordsAlong>[2] => ({
      left,
      right: widthPx,
      top: headBottom + 1,
      bottom: foot - 2,
      curves: drawn,
      taken: [...taken(), ...dots, ...marked, ...ruled],
    });
    const marked = rowMarks.flatMap(({ points }) => points.flatMap((point) => markRows?.markBox(px(point)) ?? []));
    const dots: Box[] = yous.map(({ at, value }) => {
      const [cx, cy] = px([at, value]);
      return { left: cx - 9, right: cx + 9, top: cy - 9, bottom: cy + 9 };
    });
    /** The rule at the mark: its own words stand at it, no curve's name lies across it. */
    const ruled: Box[] = [];
    let cost = growthCost(extraTop);
    const put = (found: Found | undefined): void => {
      words.push(...(found?.words ?? []));
      cost += found?.cost ?? Number.POSITIVE_INFINITY;
    };
    for (const { is, at, value, told } of distinctYous)
      put(wordsAt(px([at, value]), other ? told : `you: ${told}`, 'figure', field(), distinctYous.length > 1 ? `word-${is}` : undefined));
    if (mark) {
      const [at] = px([mark.at, 0]);
      put(wordsAt([at, (upper + foot) / 2], mark.says, 'figure', field(), 'on-mark'));
      ruled.push({ left: at, right: at, top: upper, bottom: foot });
    }
    if (!isNamedAbove || other)
      for (const [index, { name, is }] of curves.entries()) {
        const curve = drawn[index];
        const [only] = curve?.points ?? [];
        // A curve of one point has no place along it.
        put(
          curve && curve.points.length > 1
            ? wordsAlong(curve, name, field(), `word-${is}`)
            : only && wordsAt(only, name, 'name', field(), `word-${is}`),
        );
      }
    return { words, cost, px, top: upper, foot };
  };
  const distinctYous = yous.filter(({ at, value }, index) => index === 0 || at !== yous[0]?.at || value !== yous[0].value);
  const markOf = (side: Side) => {
    const at = picture.mark && isShown(picture.mark, side.outcome.values) ? side.outcome.values[picture.mark.at] : undefined;
    return picture.mark && typeof at === 'number' ? { at: toX(at), says: fillIn(calculator, side.outcome, system, picture.mark.says) } : undefined;
  };
  const [mine, theirs] = sides.map(markOf);
  const isShared = other === null || (mine?.at === theirs?.at && mine?.says === theirs?.says);
  const mark = mine && isShared && mine.at > from && mine.at <= to ? mine : undefined;
  // Where words find no good room among the curves the plot grows at its head.
  let drawnAt = { extra: 0, ...draw(0) };
  for (const extra of [26, 52, 104, 208]) {
    if (drawnAt.cost <= growthCost(extra)) break;
    const next = { extra, ...draw(extra) };
    if (next.cost < drawnAt.cost) drawnAt = next;
  }
  const { words, px, foot, extra } = drawnAt;
  const height = heightPx + extra;
  const path = (points: readonly Point[]): string => `M${points.map((point) => px(point).join(' ')).join('L')}`;
  const zero = px([from, Math.max(0, bottom)])[1];
  /** Whoever hears it sees no axis: every number across is told with what it counts. */
  const sayAcross = (at: number): string => {
    const unit = unitOf(x, system);
    return x?.kind === 'day' ? printScalar(at, x, system) : `${midSentence(x?.label ?? '')} ${unit ? withUnit(sayX(at), unit) : sayX(at)}`;
  };
  const sayPoint = ([across, up]: Point): string => {
    const digits = y?.kind === 'number' ? Math.max(0, digitsTold(up, y)) : 0;
    const unit = unitOf(y, system);
    return `${unit ? printIn(up, unit, digits) : printNumber(up, digits)} at ${sayAcross(across)}`;
  };
  /** A curve that lies level at its end is told up to where it got there: grass is gone on that day, not on the last one drawn. */
  const sayCurve = ({ name, points }: Curve): string => {
    const first: Point = points[0] ?? [0, 0];
    const end = points[points.findLastIndex(([, up]) => up !== points.at(-1)?.[1]) + 1] ?? first;
    return `${name} from ${sayPoint(first)} to ${sayPoint(end === first ? (points.at(-1) ?? first) : end)}`;
  };
  const said = [
    ...yous.map(
      ({ told, at, is }) =>
        `${other ? (is === 'this' ? 'this' : 'that') : 'you'}: ${told} at ${x?.kind === 'day' ? dayName(sayAcross(at)) : sayAcross(at)}`,
    ),
    ...curves.map(sayCurve),
    ...(mark ? [mark.says] : []),
    ...rowMarks.map(({ says, is, points, of }) => {
      const which = points.length > mostListed ? `${points.length} of ${of}` : points.map(([across]) => nameX(across)).join(', ');
      return `${other ? `${is}: ` : ''}${says}: ${which}`;
    }),
  ].join('; ');
  return (
    <figure class="picture plot lines">
      <svg width={widthPx} height={height} viewBox={`0 0 ${widthPx} ${height}`} role="img" aria-label={`${calculator.title}: ${said}.`}>
        <path class="tick" d={yTicks.map((tick) => `M${tenth(left)} ${px([from, tick])[1]}H${tenth(right)}`).join('')} />
        <path class="axis" d={`M${tenth(left)} ${zero}H${tenth(right)}${xTicks.map((tick) => `M${px([tick, 0])[0]} ${foot}v5`).join('')}`} />
        {mark && <path class="day" d={`M${px([mark.at, 0])[0]} ${drawnAt.top - 6}V${foot}`} />}
        {curves.toReversed().map(({ is, name, points }) => (
          <g key={`${is} ${name}`}>
            <path class={`curve is-${is}`} d={path(points)} />
            {is === 'that' && <path class="curve-core" d={path(points)} />}
          </g>
        ))}
        {markRows &&
          rowMarks.flatMap(({ as, is, points }) =>
            points.map((point) => <markRows.RowMarkAt key={`${as} ${is} ${point[0]}`} as={as} is={is} at={px(point)} />),
          )}
        {yous.map(({ is, at, value }) => {
          const [cx, cy] = px([at, value]);
          return (
            <g key={is}>
              <path class="drop" d={`M${cx} ${cy}V${foot}`} />
              <circle class={`you is-${is}`} cx={cx} cy={cy} r="8" />
            </g>
          );
        })}
        <Words words={[...aboveWords, ...words]} />
      </svg>
      {markRows && <markRows.MarksSaid marks={rowMarks} />}
    </figure>
  );
}
