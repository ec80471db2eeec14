interface TextLinesProps {
  readonly x: number | string;
  /** Top of the first line. */
  readonly y: number;
  readonly lines: readonly string[];
  readonly anchor?: 'middle' | 'end';
  readonly class?: string;
}
export const lineHeight = 18;
/** SVG text does not wrap of itself: one line under the other. */
export const TextLines = ({ x, y, lines, anchor, class: name }: TextLinesProps) => (
  <text {...(anchor === undefined ? {} : { 'text-anchor': anchor })} {...(name === undefined ? {} : { class: name })}>
    {lines.map((line, index) => (
      <tspan key={line} x={x} y={y + index * lineHeight + 14}>
        {line}
      </tspan>
    ))}
  </text>
);
