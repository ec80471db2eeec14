import { Component, type ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

// Heard before any part hears it, so that what is drawn for paper is drawn for paper from its first moment.
let isPrintingNow = false;
if (typeof addEventListener === 'function') {
  addEventListener('beforeprint', () => {
    isPrintingNow = true;
  });
  addEventListener('afterprint', () => {
    isPrintingNow = false;
  });
}
/** Paper shows what is folded on the screen, and what is told instead of fields. */
export function usePrinting(): boolean {
  const [isPrinting, setPrinting] = useState(isPrintingNow);
  useEffect(() => {
    const follow = () => setPrinting(isPrintingNow);
    addEventListener('beforeprint', follow);
    addEventListener('afterprint', follow);
    return () => {
      removeEventListener('beforeprint', follow);
      removeEventListener('afterprint', follow);
    };
  }, []);
  return isPrinting;
}

interface FoldProps {
  readonly title: string;
  readonly says?: string;
  readonly isOpenAtFirst?: boolean;
  readonly isPrinting: boolean;
  readonly children: () => ComponentChildren;
}
/** Told in a line; what is in it is drawn when it is opened. */
export function Fold({ title, says, isOpenAtFirst = false, isPrinting, children }: FoldProps) {
  const [isOpen, setOpen] = useState(isOpenAtFirst);
  return (
    <details class="group" open={isOpen || isPrinting} onToggle={(event) => !isPrinting && setOpen(event.currentTarget.open)}>
      <summary>
        <span class="group-name">{title}</span>
        {says !== undefined && says !== '' && <span class="group-says">{says}</span>}
        <span class="group-change" />
      </summary>
      {(isOpen || isPrinting) && children()}
    </details>
  );
}

interface StillProps {
  /** What it is drawn from. While these are the same things it stands still. */
  readonly from: readonly unknown[];
  readonly children: () => ComponentChildren;
}
/** One of many, which a key in another does not draw again. */
export class Still extends Component<StillProps> {
  override shouldComponentUpdate(next: StillProps): boolean {
    const { from } = this.props;
    return next.from.length !== from.length || next.from.some((each, index) => each !== from[index]);
  }
  override render(): ComponentChildren {
    return this.props.children();
  }
}
