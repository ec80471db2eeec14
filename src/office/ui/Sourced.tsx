import type { ComponentChildren } from 'preact';
import type { Sourced } from '../../local/localParts.ts';

/** How a source is called, and where it is told more fully. */
export interface SourceName {
  readonly text: string;
  readonly address?: string | undefined;
}
export type NameSource = (source: string) => SourceName;

export interface SourcedProps {
  readonly of: Pick<Sourced, 'source' | 'at' | 'also'>;
  readonly nameSource: NameSource;
}
/** Where a value comes from, beside it. */
export function SourceOf({ of: { source, at, also = [] }, nameSource }: SourcedProps) {
  const note = (key: string, place?: string): ComponentChildren => {
    const { text, address } = nameSource(key);
    return (
      <span class="source-note">
        {address === undefined ? text : <a href={address}>{text}</a>}
        {place !== undefined && `, ${place}`}
      </span>
    );
  };
  return (
    <>
      {note(source, at)}
      {also.map((key) => (
        <>
          {' with '}
          {note(key)}
        </>
      ))}
    </>
  );
}
