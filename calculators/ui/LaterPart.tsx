import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Calculator, Outcome } from '../kit/define.ts';
import { type PlainPicture, picturesOf } from '../kit/pictures.ts';
import type { Form } from '../kit/state.ts';
import type { UnitSystem } from '../units/units.ts';
import type { DrawPicture } from './pictures/loadPicture.tsx';
import { usualWidthPx } from './pictures/readings.ts';
import type { PlaceMarks } from './props.ts';
import { ShortHelp } from './ShortHelp.tsx';

/** What follows the answer at the end of a run of keys. */
export interface Told {
  readonly form: Form;
  readonly place: PlaceMarks | undefined;
  readonly system: UnitSystem;
  readonly outcome: Outcome | null;
  readonly other: Outcome | null;
  /** What the sides are called beside the form. */
  readonly titles: readonly [string, string];
  /** The same where the form does not stand beside it: as its owner calls a side, else by what it does differently. Empty of one side. */
  readonly saying: readonly [string, string];
  /** What lies between two sides, in a line, where it is known how far that is to be believed. */
  readonly between: string;
}

/** A face runs from edge to edge; words and plots keep the margins of the text. */
const plotInsetPx = 32;
/** While paper is printed the page has next to no width. */
const leastPx = 120;
/** Pixels that a picture of this kind gets in a box so wide. */
const drawnPx = (kind: PlainPicture['kind'], boxPx: number): number => (kind === 'face' ? boxPx : boxPx - plotInsetPx);
/**
 * What was built for one phone is shown by others of nearly its width: stretched or shrunk so much (`screen-answer.css` has the same limits), and drawn anew
 * with the first change only.
 */
const stretched = { least: 0.9, most: 1.12 } as const;
/** A strip is dragged along: it must be alive to be of use. */
function staysAsBuilt({ kind }: PlainPicture, boxPx: number): boolean {
  const times = drawnPx(kind, boxPx) / drawnPx(kind, usualWidthPx);
  return kind !== 'strip' && times >= stretched.least && times <= stretched.most;
}
/** How wide the box of pictures in here is, where one was built and shows. */
export function boxPxIn(root: HTMLElement): number | undefined {
  const widthPx = root.querySelector('.picture-box')?.clientWidth ?? 0;
  return widthPx >= leastPx ? widthPx : undefined;
}
export interface PicturesProps {
  readonly told: Told;
  readonly calculator: Calculator;
  readonly id: string;
  readonly Picture: DrawPicture | undefined;
  /** How wide its box is, where that is known before it is drawn; else it is drawn once more. */
  readonly boxPx?: number | undefined;
  /** What is told was built into the page and stands there. */
  readonly isBuilt?: boolean;
}
/** Taken over as it stands. */
export const asItIs = { __html: '' };
/** The first picture under the answer, the others under all results. */
export function Pictures({
  told,
  calculator,
  id,
  Picture,
  boxPx,
  isBuilt = false,
  places,
}: PicturesProps & { readonly places: readonly [from: number, to?: number] }) {
  const box = useRef<HTMLDivElement>(null);
  const [widthPx, setWidth] = useState(boxPx);
  // The first picture of other answers is drawn at once, and once.
  const [isTakingOver, setTakingOver] = useState(isBuilt || places[0] > 0);
  const isDrawn = useRef(false);
  const { outcome, other, system, saying } = told;
  // Each picture of other answers than were built is drawn in a moment of its own.
  const waits = isTakingOver && !isBuilt && boxPx !== undefined && places[0] > 0;
  const shown = outcome && !waits ? picturesOf(calculator, outcome.values).slice(...places) : [];
  // What cannot stay is drawn once the page has taken over the rest, in a moment of its own.
  const stays = isBuilt && !isDrawn.current && (isTakingOver || (widthPx !== undefined && shown.every((picture) => staysAsBuilt(picture, widthPx))));
  // What was built is gone then, whatever width the box has later.
  if (!stays) isDrawn.current = true;
  useEffect(() => {
    setTakingOver(false);
    if (!box.current) return undefined;
    const watch = new ResizeObserver(([seen]) => {
      const now = seen?.target.clientWidth ?? 0;
      if (now >= leastPx) setWidth(now);
    });
    watch.observe(box.current);
    return () => watch.disconnect();
  }, [stays]);
  if (stays) return <div key="built" class="picture-box" ref={box} dangerouslySetInnerHTML={asItIs} />;
  return (
    <div key="drawn" class="picture-box" ref={box}>
      {outcome &&
        Picture &&
        shown.map((picture, place) => (
          <Picture
            key={place}
            calculator={calculator}
            system={system}
            picture={picture}
            outcome={outcome}
            other={other}
            titles={saying}
            id={`${id}-picture${places[0] + place || ''}`}
            widthPx={drawnPx(picture.kind, widthPx ?? usualWidthPx)}
          />
        ))}
    </div>
  );
}

/** The picture and the note, which may come a moment after the figure. */
export function LaterPart(props: PicturesProps) {
  const { told, calculator } = props;
  const { outcome, other, system, titles, saying } = told;
  // Other words beside the same answers redraw no picture.
  const picture = useMemo(() => <Pictures {...props} places={[0, 1]} />, [outcome, other, system, ...titles, ...saying]);
  return useMemo(
    () => (
      <>
        {picture}
        {outcome && (other ? <BothNotes calculator={calculator} told={told} /> : <p class="note">{outcome.note}</p>)}
        {outcome && calculator.weighsOnPeople && <ShortHelp />}
      </>
    ),
    [told],
  );
}

/** What either side comes to, each in the words of its own note. */
function BothNotes({ told: { outcome, other, titles } }: { readonly calculator: Calculator; readonly told: Told }) {
  if (outcome?.note === other?.note) return <p class="note">{outcome?.note}</p>;
  return (
    <>
      <p class="note">
        <b class="word-this">{titles[0]}:</b> {outcome?.note}
      </p>
      <p class="note">
        <b class="word-that">{titles[1]}:</b> {other?.note}
      </p>
    </>
  );
}
