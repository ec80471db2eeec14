import { dialed, type HelpLine as Line } from '../../../calculators/kit/helpLines.ts';
import { type NameSource, SourceOf } from './Sourced.tsx';

interface HelpLineProps {
  readonly line: Line;
  /** None where the number alone counts and the sources stand below. */
  readonly nameSource: NameSource | undefined;
}
export function HelpLine({ line, nameSource }: HelpLineProps) {
  const { before, number, dials, after } = dialed(line);
  return (
    <>
      {before}
      <a href={`tel:${dials}`}>{number}</a>
      {after}
      {nameSource && (
        <>
          {' '}
          <span class="line-source">
            <SourceOf of={line} nameSource={nameSource} />
          </span>
        </>
      )}
    </>
  );
}
