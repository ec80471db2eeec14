import type { ShareBar, Shares as SharesPicture } from '../../kit/pictures.ts';
import { printName, toldNumber } from '../../kit/print.ts';
import { isShown } from '../../kit/state.ts';
import { add } from '../../kit/wholes.ts';
import { printNumber } from '../../units/printQuantity.ts';
import { units } from '../../units/units.ts';
import { fillIn, labelOf, type PictureProps, type Side, sideName, sidesOf, sizeIn, tenth, usualWidthPx } from './readings.ts';
import { barHeight, layBar, type Part } from './shareBars.ts';
import { Words } from './Words.tsx';
import { linesAt, linesWithin, sizes, type Word } from './words.ts';

const lower = (label: string): string => (/^[A-Z][a-z]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label);

/** Whole bars to one scale, each cut into its parts and named around it; two managements one under the other. */
export function Shares({ calculator, picture, outcome, other, titles, system, id, widthPx = usualWidthPx }: PictureProps<SharesPicture>) {
  const sides = sidesOf({ outcome, other, titles }).filter((side) => isShown(picture, side.outcome.values));
  const sizeOf = (side: Side, { whole, parts }: ShareBar): number =>
    whole === undefined ? add(parts.map(({ of }) => sizeIn(side.outcome, of))) : sizeIn(side.outcome, whole);
  // Less than a billionth of anything is nothing; dividing by it would not be finite.
  const barsOf = (side: Side): readonly ShareBar[] => [picture, ...(picture.beside ?? [])].filter((bar) => sizeOf(side, bar) > 1e-9);
  const told = (side: Side, name: string): string => printName(calculator, side.outcome.values, name, system);
  const bareOf = (side: Side, name: string): string => {
    const number = toldNumber(calculator, side.outcome.values, name, system);
    if (!number) return told(side, name);
    const bare = printNumber(number.value, number.digits);
    return units[number.unit].print.startsWith('$') ? `$${bare}` : bare;
  };
  const nameOf = (side: Side, { of, says }: ShareBar['parts'][number]): string =>
    says === undefined ? lower(labelOf(calculator, of)) : fillIn(calculator, side.outcome, system, says);
  const titleOf = (side: Side, { title, whole }: ShareBar): string =>
    title !== undefined
      ? fillIn(calculator, side.outcome, system, title)
      : whole === undefined
        ? ''
        : `${labelOf(calculator, whole)}: ${told(side, whole)}`;
  const most = Math.max(0, ...sides.flatMap((side) => barsOf(side).map((bar) => sizeOf(side, bar))));
  if (most === 0) return null;
  const pxPer = (widthPx - 2) / most;
  const words: Word[] = [];
  const drawn = [];
  let top = 0;
  for (const side of sides) {
    if (other) {
      const name = linesWithin(sideName(side), 'figure', widthPx);
      words.push(...linesAt(name, { top, x: 0, size: 'figure', is: `picture-${side.is}` }));
      top += name.length * sizes.figure.line + 4;
      drawn.push({ key: `${side.is}`, rule: { is: side.is, y: top } });
      top += 8;
    }
    for (const bar of barsOf(side)) {
      const parts = bar.parts.map(
        (part): Part => ({
          size: sizeIn(side.outcome, part.of),
          tone: part.tone,
          name: nameOf(side, part),
          told: told(side, part.of),
          bare: bareOf(side, part.of),
        }),
      );
      const laid = layBar({ title: titleOf(side, bar), parts, pxPer, widthPx, top });
      words.push(...laid.words);
      drawn.push({ key: `${side.is} ${bar.parts[0]?.of}`, bar: laid });
      top = laid.bottom + 12;
    }
  }
  const said = sides
    .flatMap((side) =>
      barsOf(side).map((bar) => {
        const parts = bar.parts.filter(({ of }) => sizeIn(side.outcome, of) > 0).map((part) => `${told(side, part.of)} ${nameOf(side, part)}`);
        return `${other ? `${sideName(side)}: ` : ''}${titleOf(side, bar)}, ${parts.join(', ')}`;
      }),
    )
    .join('; ');
  return (
    <figure class="picture plot shares">
      <svg width={widthPx} height={top} viewBox={`0 0 ${widthPx} ${top}`} role="img" aria-label={`${calculator.title}: ${said}.`}>
        <defs>
          <pattern id={`${id}-lost`} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path class="lost-stripe" d="M3.5 0V7" />
          </pattern>
          <pattern id={`${id}-water`} width="14" height="8" patternUnits="userSpaceOnUse">
            <path class="water-wave" d="M0 4q3.5-4 7 0t7 0" />
          </pattern>
          <pattern id={`${id}-dots`} width="9" height="9" patternUnits="userSpaceOnUse">
            <path class="dot" d="M4.5 4.5h0" />
          </pattern>
          <pattern id={`${id}-lines`} width="6" height="6" patternUnits="userSpaceOnUse">
            <path class="line" d="M3 0V6" />
          </pattern>
          {(['own', 'bought'] as const).map((tone) => (
            <pattern key={tone} id={`${id}-${tone}`} width="23" height="23" patternUnits="userSpaceOnUse">
              <g class={`bale ${tone}-bale`}>
                <circle cx="11.5" cy="11.5" r="10" />
                <path d="M11.5 5.5a6 6 0 1 1-6 6M11.5 8.6a2.9 2.9 0 1 1-2.9 2.9" />
              </g>
            </pattern>
          ))}
        </defs>
        {drawn.map(({ key, rule, bar }) =>
          rule ? (
            <path key={key} class={`side-rule is-${rule.is}`} d={rule.is === 'this' ? `M0 ${rule.y}H72` : `M0 ${rule.y - 2}H72M0 ${rule.y + 3}H72`} />
          ) : (
            bar && (
              <g key={key}>
                {bar.pieces.map(({ tone, left, width, name }) => {
                  const box = { x: tenth(left + 1), y: bar.barTop, width: tenth(width), height: barHeight };
                  return (
                    <g key={`${left} ${name}`}>
                      <rect class={`share ${tone}`} {...box} />
                      {tone !== 'kept' && tone !== 'other' && <rect class="grain" fill={`url(#${id}-${tone})`} {...box} />}
                    </g>
                  );
                })}
                {bar.leaders.map((leader) => (
                  <path key={leader} class="leader" d={leader} />
                ))}
              </g>
            )
          ),
        )}
        <Words words={words} />
      </svg>
    </figure>
  );
}
