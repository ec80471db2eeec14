import type { Shares as SharesPicture } from '../../kit/pictures.ts';
import { printName } from '../../kit/print.ts';
import { add } from '../../kit/wholes.ts';
import { spreadLabels, wrapLabel } from './axis.ts';
import { labelOf, type PictureProps, sidesOf, sizeIn, tenth } from './readings.ts';
import { SideTitles } from './SideTitles.tsx';
import { lineHeight, TextLines } from './TextLines.tsx';

/** A bar's own height at least; many or long labels make it taller. */
const leastHeight = 220;
/** Letters in a line of a label, so that it fits a phone. */
const letters = 19;
const leaderPx = 26;

interface Segment {
  readonly top: number;
  readonly height: number;
}
/** The parts from the top down, standing on the ground line; `unitsPer` is the common scale. */
export function stackParts(sizes: readonly number[], height: number, unitsPer: number): readonly Segment[] {
  let top = height - add(sizes) * unitsPer;
  return sizes.map((size) => {
    const segment = { top, height: size * unitsPer };
    top += segment.height;
    return segment;
  });
}

/** One bar cut into its parts, each named beside it; two managements stand at the sides of the names, to one scale. */
export function Shares({ calculator, picture, outcome, other, titles, system, id }: PictureProps<SharesPicture>) {
  const sides = sidesOf({ outcome, other, titles });
  const pair = sides.length === 2;
  const told = (name: string, index: number): string => {
    const side = sides[index];
    return side ? printName(calculator, side.outcome.values, name, system) : '';
  };
  const head = wrapLabel(labelOf(calculator, picture.whole), letters);
  // What is nothing on either side was not measured or does not occur: its name beside no piece of the bar would only raise a question.
  const filled = picture.parts.filter((part) => sides.some((side) => sizeIn(side.outcome, part.of) > 0));
  const drawn = filled.length > 0 ? filled : picture.parts;
  const labels = drawn.map((part) => wrapLabel(labelOf(calculator, part.of), letters));
  const heights = labels.map((lines) => (lines.length + 1) * lineHeight + 12);
  const height = Math.max(leastHeight, add(heights));
  const bars = sides.map((side) => {
    const sizes = drawn.map((part) => sizeIn(side.outcome, part.of));
    return { sizes, whole: sizeIn(side.outcome, picture.whole), all: add(sizes) };
  });
  const largest = Math.max(...bars.map((bar) => Math.max(bar.whole, bar.all)));
  // Less than a billionth of anything is nothing; dividing by it would not be finite.
  const unitsPer = largest > 1e-9 ? height / largest : 0;
  const stacks = bars.map((bar) => stackParts(bar.sizes, height, unitsPer));
  const middleOf = (stack: readonly Segment[] | undefined, part: number): number => {
    const segment = stack?.[part];
    return segment ? segment.top + segment.height / 2 : height;
  };
  const tops = spreadLabels(
    labels.map((_, part) => ({ at: stacks.reduce((sum, stack) => sum + middleOf(stack, part), 0) / stacks.length, height: heights[part] ?? 0 })),
    height,
  );
  const headHeight = (head.length + (pair ? 0 : 1)) * lineHeight + 10;
  // Two bars leave the middle to the names; a single one has them at its right.
  const [barWide, barAt] = pair ? ['17%', ['0%', '83%']] : ['26%', ['0%']];
  const said = sides
    .map((side, index) => {
      const parts = drawn.map((part) => `${labelOf(calculator, part.of)} ${told(part.of, index)}`);
      return `${side.title && `${side.title}: `}${labelOf(calculator, picture.whole)} ${told(picture.whole, index)}; of it ${parts.join(', ')}.`;
    })
    .join(' ');
  return (
    <figure class="picture shares">
      <SideTitles sides={sides} />
      <svg
        width="100%"
        height={headHeight + height + 2}
        role="img"
        aria-label={`${calculator.title}: ${labelOf(calculator, picture.whole)} in its parts`}
        aria-describedby={`${id}-said`}
      >
        <desc id={`${id}-said`}>{said}</desc>
        <defs>
          <pattern id={`${id}-lost`} width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path d="M0 1.5H9" />
          </pattern>
          <pattern id={`${id}-water`} width="14" height="8" patternUnits="userSpaceOnUse">
            <path d="M0 3q3.5-4 7 0t7 0" />
          </pattern>
          <pattern id={`${id}-other`} width="9" height="9" patternUnits="userSpaceOnUse">
            <path d="M4.5 4.5h0" />
          </pattern>
        </defs>
        {pair ? (
          <>
            <TextLines x="0" y={0} lines={[told(picture.whole, 0)]} class="amount" />
            <TextLines x="50%" y={0} lines={head} anchor="middle" />
            <TextLines x="100%" y={0} lines={[told(picture.whole, 1)]} anchor="end" class="amount" />
          </>
        ) : (
          <>
            <TextLines x="0" y={0} lines={[head.join(' ')]} />
            <TextLines x="0" y={lineHeight} lines={[told(picture.whole, 0)]} class="amount" />
          </>
        )}
        <svg y={headHeight} width="100%" height={height + 2} overflow="visible" aria-hidden="true">
          {stacks.map((stack, index) => (
            <g key={sides[index]?.is}>
              {stack.map((segment, part) => {
                const tone = drawn[part]?.tone ?? 'other';
                const box = { x: barAt[index], y: tenth(segment.top), width: barWide, height: tenth(segment.height) };
                return (
                  <g key={drawn[part]?.of} class="part">
                    <rect class={tone} {...box} />
                    {tone !== 'kept' && <rect fill={`url(#${id}-${tone})`} {...box} />}
                  </g>
                );
              })}
              <rect
                class="whole"
                x={barAt[index]}
                y={tenth(height - (bars[index]?.whole ?? 0) * unitsPer)}
                width={barWide}
                height={tenth((bars[index]?.whole ?? 0) * unitsPer)}
              />
            </g>
          ))}
          <svg x={pair ? '17%' : '26%'} overflow="visible" aria-hidden="true">
            {labels.map((lines, part) => {
              const top = tops[part] ?? 0;
              return (
                <g key={drawn[part]?.of}>
                  <path class="leader" d={`M3 ${tenth(middleOf(stacks[0], part))}h3L16 ${tenth(top + 14)}h6`} />
                  {!pair && <TextLines x={leaderPx} y={top} lines={lines} />}
                  <TextLines x={leaderPx} y={top + (pair ? 0 : lines.length * lineHeight)} lines={[told(drawn[part]?.of ?? '', 0)]} class="amount" />
                </g>
              );
            })}
          </svg>
          {pair &&
            labels.map((lines, part) => <TextLines key={drawn[part]?.of} x="50%" y={(tops[part] ?? 0) + lineHeight} lines={lines} anchor="middle" />)}
          {pair && (
            <svg x="83%" overflow="visible" aria-hidden="true">
              {labels.map((_, part) => {
                const top = tops[part] ?? 0;
                return (
                  <g key={drawn[part]?.of}>
                    <path class="leader" d={`M-3 ${tenth(middleOf(stacks[1], part))}h-3L-16 ${tenth(top + 14)}h-6`} />
                    <TextLines x={-leaderPx} y={top} lines={[told(drawn[part]?.of ?? '', 1)]} anchor="end" class="amount" />
                  </g>
                );
              })}
            </svg>
          )}
        </svg>
      </svg>
    </figure>
  );
}
