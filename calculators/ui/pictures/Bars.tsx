import type { Bars as BarsPicture } from '../../kit/pictures.ts';
import { printCell, printScalar } from '../../kit/print.ts';
import { convert, unitIn, units } from '../../units/units.ts';
import { dayName, niceTicks } from './axis.ts';
import { columnOf, type PictureProps, rowsIn, sideName, sidesOf, tenth, usualWidthPx } from './readings.ts';
import { Words } from './Words.tsx';
import { boxOf, linesAt, linesWithin, meet, sizes, textPx, type Word } from './words.ts';

/** From the foot to the highest bar or the highest usual. */
const fieldPx = 128;

interface Month {
  readonly at: number;
  readonly told: string;
  readonly usualTold: string;
  readonly name: string;
  readonly value: number;
  readonly usual: number;
}

/** A bar for each month, a line across it for the usual one, and a hatch for what it is short of that. */
export function Bars({ calculator, picture, outcome, other, titles, system, id, widthPx = usualWidthPx }: PictureProps<BarsPicture>) {
  const [x, y] = [picture.x, picture.y].map((name) => columnOf(calculator, picture.rows, name));
  const toY = (value: number): number => (y?.kind === 'number' ? convert(value, y.unit, unitIn(system, y.unit)) : value);
  const sides = sidesOf({ outcome, other, titles }).map((side) => ({
    ...side,
    months: rowsIn(side.outcome, picture.rows).flatMap((row): readonly Month[] => {
      const [at, value, usual] = [row[picture.x], row[picture.y], row[picture.usual]];
      if (!x || !y || typeof at !== 'number' || typeof value !== 'number' || typeof usual !== 'number') return [];
      const name = dayName(printScalar(at, x, system)).replace(/ \d+$/, '');
      return [{ at, name, told: printCell(value, y, system), usualTold: printCell(usual, y, system), value: toY(value), usual: toY(usual) }];
    }),
  }));
  const most = Math.max(0, ...sides.flatMap(({ months }) => months.flatMap(({ value, usual }) => [value, usual])));
  if (most === 0) return null;
  const ticks = niceTicks(0, most, 3).filter((tick) => tick > 0);
  const left = 10 + Math.max(...ticks.map((tick) => textPx(String(tick), 'name')));
  const unit = y?.kind === 'number' ? units[unitIn(system, y.unit)].print : '';
  const words: Word[] = [...linesAt([[y?.label ?? '', unit].filter(Boolean).join(', ')], { top: 0, x: 0, size: 'name', is: 'quiet' })];
  let top: number = sizes.name.line;
  const drawn = sides.map(({ months, ...side }) => {
    if (other) {
      const lines = linesWithin(sideName(side), 'figure', widthPx);
      words.push(...linesAt(lines, { top, x: 0, size: 'figure', is: `picture-${side.is}` }));
      top += lines.length * sizes.figure.line;
    }
    // A figure may stand over the highest bar.
    const foot = top + sizes.figure.line + 4 + fieldPx;
    const up = (value: number): number => tenth(foot - (value / most) * fieldPx);
    const step = (widthPx - left) / Math.max(1, months.length);
    for (const tick of ticks) words.push({ text: String(tick), x: left - 8, y: up(tick) + 5, size: 'name', anchor: 'end', is: 'quiet' });
    // All of them or none: a figure at some bars only would be taken to mean something.
    const isTold = months.every(({ told }) => textPx(told, 'figure') + 2 <= step);
    const names: Word[] = [];
    const bars = months.map((month, index) => {
      const middle = left + (index + 0.5) * step;
      const name: Word = { text: month.name, x: middle, y: foot + 2 + sizes.name.px, size: 'name', anchor: 'middle', is: 'quiet' };
      if (boxOf(name).right <= widthPx && names.every((each) => !meet(boxOf(each), boxOf(name), 6))) names.push(name);
      if (isTold) {
        const figure = (y: number): Word => ({ text: month.told, x: middle, y, size: 'figure', anchor: 'middle' });
        const inBar: Word = { ...figure(up(month.value) + sizes.figure.px + 3), is: 'on-fell' };
        const line = up(month.usual);
        // In its own bar where that is tall enough, else over it; never on the line of the usual month, whose figure it would seem to be.
        const isFree = (word: Word): boolean => boxOf(word).bottom < line - 2 || boxOf(word).top > line + 2;
        const places = [...(foot - up(month.value) >= sizes.figure.line + 4 ? [inBar] : []), figure(up(month.value) - 7)];
        words.push(places.find(isFree) ?? figure(Math.min(line, up(month.value)) - 9));
      }
      const wide = step * 0.76;
      return {
        month,
        x: tenth(middle - wide / 2),
        width: tenth(wide),
        y: up(month.value),
        usual: up(month.usual),
        lineFrom: tenth(middle - step * 0.46),
        lineTo: tenth(middle + step * 0.46),
      };
    });
    words.push(...names);
    top = foot + sizes.name.line + 8;
    return { side, bars, foot, ticks: ticks.map((tick) => `M${tenth(left)} ${up(tick)}H${widthPx}`).join('') };
  });
  const keyed: { readonly is: 'usual' | 'short'; readonly x: number; readonly y: number }[] = [];
  let keyX = 0;
  for (const key of [
    { is: 'usual', says: picture.usualSays },
    { is: 'short', says: picture.shortSays },
  ] as const) {
    const wide = 34 + textPx(key.says, 'name');
    if (keyX > 0 && keyX + wide > widthPx) {
      keyX = 0;
      top += sizes.name.line;
    }
    keyed.push({ is: key.is, x: keyX, y: top });
    words.push(...linesAt([key.says], { top, x: keyX + 32, size: 'name' }));
    keyX += wide + 14;
  }
  top += sizes.name.line + 3;
  const said = drawn
    .map(
      ({ side, bars }) =>
        `${other ? `${sideName(side)}: ` : ''}${bars.map(({ month }) => `${month.name} ${month.told} against ${month.usualTold}`).join(', ')}`,
    )
    .join('; ');
  return (
    <figure class="picture plot bars">
      <svg
        width={widthPx}
        height={tenth(top)}
        viewBox={`0 0 ${widthPx} ${tenth(top)}`}
        role="img"
        aria-label={`${calculator.title}, ${unit} against ${picture.usualSays}: ${said}.`}
      >
        <defs>
          <pattern id={`${id}-short`} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path class="lost-stripe" d="M3.5 0V7" />
          </pattern>
        </defs>
        {drawn.map(({ side, bars, foot, ticks: lines }) => (
          <g key={side.is}>
            <path class="tick" d={lines} />
            {bars.map((bar) => (
              <g key={bar.month.at}>
                {bar.month.value < bar.month.usual && (
                  <rect fill={`url(#${id}-short)`} x={bar.x} y={bar.usual} width={bar.width} height={tenth(bar.y - bar.usual)} />
                )}
                <rect class="fell" x={bar.x} y={bar.y} width={bar.width} height={tenth(foot - bar.y)} />
                <path class="usual-edge" d={`M${bar.lineFrom} ${bar.usual}H${bar.lineTo}`} />
                <path class="usual" d={`M${bar.lineFrom} ${bar.usual}H${bar.lineTo}`} />
              </g>
            ))}
            <path class="axis" d={`M${tenth(left)} ${foot}H${widthPx}`} />
          </g>
        ))}
        {keyed.map(({ is, x: at, y: from }) =>
          is === 'usual' ? (
            <path key={is} class="usual" d={`M${at} ${from + 11}h26`} />
          ) : (
            <rect key={is} fill={`url(#${id}-short)`} x={at} y={from + 4} width="26" height="14" />
          ),
        )}
        <Words words={words} />
      </svg>
    </figure>
  );
}
