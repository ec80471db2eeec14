import { tenth } from './readings.ts';
import type { Word } from './words.ts';

export const Words = ({ words }: { readonly words: readonly Word[] }) => (
  <>
    {words.map(({ text, x, y, size, anchor, is }) => (
      <text
        key={`${x} ${y} ${text}`}
        class={is === undefined ? `plot-${size}` : `plot-${size} ${is}`}
        x={tenth(x)}
        y={tenth(y)}
        {...(anchor === undefined ? {} : { 'text-anchor': anchor })}
      >
        {text}
      </text>
    ))}
  </>
);
