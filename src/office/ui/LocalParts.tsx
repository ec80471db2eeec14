import { shortMonthName } from '../../../calculators/units/months.ts';
import type { Part } from '../../local/localParts.ts';
import { type NameSource, SourceOf } from './Sourced.tsx';

interface LocalPartsProps {
  readonly parts: readonly Part[];
  readonly nameSource: NameSource;
}
/** A country's values, in a built page and in a browser alike. */
export function LocalParts({ parts, nameSource }: LocalPartsProps) {
  return (
    <>
      {parts.map((part) => (
        <LocalPart key={part} part={part} nameSource={nameSource} />
      ))}
    </>
  );
}

function LocalPart({ part, nameSource }: { readonly part: Part; readonly nameSource: NameSource }) {
  switch (part.kind) {
    case 'table':
      return (
        <div class="wide">
          <table class="local-table">
            <thead>
              <tr>
                {part.head.map((cell) => (
                  <th key={cell} scope="col">
                    {cell}
                  </th>
                ))}
                <th scope="col">Source</th>
              </tr>
            </thead>
            <tbody>
              {part.rows.map((row) => (
                <tr key={row}>
                  {row.cells.map((cell, index) => (
                    <td key={part.head[index]} data-head={part.head[index]}>
                      {cell}
                    </td>
                  ))}
                  <td data-head="Source">
                    <SourceOf of={row} nameSource={nameSource} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      );
    case 'months':
      return (
        <>
          <p class="local-months-title">
            {part.title} <span class="muted">Source:</span> <SourceOf of={part} nameSource={nameSource} />
          </p>
          <dl class="local-months">
            {part.values.map((value, index) => (
              <div key={shortMonthName(index)}>
                <dt>{shortMonthName(index)}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        </>
      );
    case 'says':
      return (
        <p>
          {part.says} <span class="muted">Source:</span> <SourceOf of={part} nameSource={nameSource} />
        </p>
      );
    case 'missing':
      return <p>{part.says}</p>;
  }
}
