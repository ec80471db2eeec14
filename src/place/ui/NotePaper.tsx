import { Fragment } from 'preact';
import { Code } from '../../../calculators/ui/paper/Code.tsx';
import type { Outgoing } from '../visit/audience.ts';
import type { Block, Line, Run } from '../visit/blocks.ts';
import { sectionsOf } from '../visit/sections.ts';

/** Longer ones make a code that a phone no longer reads off paper. */
const longestCoded = 700;

const RunView = ({ text, href, isStrong }: Run) => {
  if (href !== undefined) return <a href={href}>{text}</a>;
  return isStrong === true ? <b>{text}</b> : <span>{text}</span>;
};
const LineView = ({ line }: { readonly line: Line }) => (
  <>
    {line.map((run, index) => (
      <RunView key={String(index)} {...run} />
    ))}
  </>
);
/** Lines one below the other, links as links. */
export const RunsView = ({ lines, isList }: { readonly lines: readonly Line[]; readonly isList: boolean }) =>
  isList ? (
    <ul class="note-lines">
      {lines.map((line, index) => (
        <li key={String(index)}>
          <LineView line={line} />
        </li>
      ))}
    </ul>
  ) : (
    <div class="note-lines">
      {lines.map((line, index) => (
        <p key={String(index)}>
          <LineView line={line} />
        </p>
      ))}
    </div>
  );

/** Nobody taps paper: a code stands for a link, and where it would be too fine, its address. */
const onPaper = (line: Line): Line =>
  line.map((run) => {
    if (run.href === undefined || run.href.startsWith('tel:') || run.href.endsWith(run.text) || run.href.includes(run.text)) return run;
    return run.href.length <= longestCoded ? { text: 'Scan the code to open it as it stood' } : { text: run.href };
  });
function PaperBlock({ block, isUnder }: { readonly block: Block; readonly isUnder: boolean }) {
  const { title, text = '', lines, isList, address, images } = block;
  return (
    <section class={address === undefined ? 'paper-block' : 'paper-block has-code'}>
      {isUnder ? <h4>{title}</h4> : <h3>{title}</h3>}
      {address !== undefined && address.length <= longestCoded && (
        <div class="note-code">
          <Code link={address} />
        </div>
      )}
      {text
        .split(/\n+/)
        .filter((each) => each.trim() !== '')
        .map((each) => (
          <p key={each}>{each}</p>
        ))}
      {images?.map(({ src, words }) => (
        <figure key={src.slice(-40) + words} class="note-photo">
          <img src={src} alt={words} />
          <figcaption>{words}</figcaption>
        </figure>
      ))}
      {images === undefined && lines.length > 0 && <RunsView lines={lines.map(onPaper)} isList={isList} />}
    </section>
  );
}
/** The note as it is printed. */
export const NotePaper = ({ note }: { readonly note: Outgoing }) => (
  <article class="note-paper">
    <h2>{note.title}</h2>
    {sectionsOf(note.blocks).map(({ heading, parts }) => (
      <Fragment key={parts[0]?.id}>
        {heading !== undefined && <h3>{heading}</h3>}
        {parts.map((block) => (
          <PaperBlock key={block.id} block={block} isUnder={heading !== undefined} />
        ))}
      </Fragment>
    ))}
  </article>
);
