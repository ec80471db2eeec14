/** What tells two managements apart, over each of them; nothing when there is nothing to tell. */
export function SideTitles({ sides }: { readonly sides: readonly { readonly is: string; readonly title: string }[] }) {
  if (sides.every((side) => side.title === '')) return null;
  return (
    <div class="side-titles">
      {sides.map((side) => (
        <p key={side.is} class={`picture-${side.is}`}>
          {side.title.replaceAll(' %', '\u00a0%')}
        </p>
      ))}
    </div>
  );
}
