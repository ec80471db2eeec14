import { useState } from 'preact/hooks';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import { convert } from '../../../calculators/units/units.ts';
import type { Place } from '../model/place.ts';
import type { MoveRow, StockLine } from '../model/row.ts';
import { lbPerDayOf, stockToday } from '../offer/stockToday.ts';
import { inDayOf, rowsOf } from '../record/days.ts';
import { type Ground, groundsById } from '../record/grounds.ts';
import type { Herd } from '../record/herds.ts';
import { nextReady } from '../record/nextReady.ts';
import { splitsOf, stockLeft } from '../record/splits.ts';
import { type AtGate, Choices } from './atGate.tsx';
import { groundWord } from './groundWord.ts';
import { dayWords, groundName, heightWords, readyWords } from './recordWords.ts';

/** So many stand there at once: the rest is one tap away, and none lies below the screen. */
const shownFirst = 3;

/** What is moved as one: a herd, and where it was split each part of it, and all of them together. */
interface Moving {
  readonly key: string;
  readonly label: string;
  readonly number: number;
  readonly from: readonly MoveRow[];
  /** What a part is; all of a herd is what the place counts with it on that day. */
  readonly stock?: readonly StockLine[];
}
const movingOf = (place: Place, splits: ReturnType<typeof splitsOf>, { number, parts }: Herd, isOnly: boolean): readonly Moving[] => {
  const whole = { key: String(number), label: `${parts.length > 1 ? 'All of herd' : 'Herd'} ${number}`, number, from: parts };
  if (parts.length < 2) return [whole];
  const ofHerd = isOnly ? '' : `Herd ${number}, `;
  const ofPart = (part: MoveRow): Moving => ({
    key: part.id,
    label: `${ofHerd}${groundName(place, part)}`,
    number,
    from: [part],
    stock: stockLeft(part.stock, splits.get(part) ?? []),
  });
  return [...parts.map(ofPart), whole];
};

/** Which paddock they went to: the one that is ready first stands first, and one tap writes it. */
export function MovedPane({ place, rows, day, todayDay, herds, onDone }: AtGate & { readonly onDone: () => void }) {
  const splits = splitsOf(place, rowsOf(rows.all, 'move'), todayDay);
  const choices = herds.flatMap((herd) => movingOf(place, splits, herd, herds.length === 1));
  const [key, setKey] = useState(choices[0]?.key ?? '1');
  const [isAll, setAll] = useState(false);
  const { number, from, stock }: Omit<Moving, 'key' | 'label'> = choices.find((each) => each.key === key) ?? { number: 1, from: [] };
  const late = from.find((move) => inDayOf(move) > day);
  const ready = nextReady(place, rows.all, day);
  const shown = isAll ? ready : ready.slice(0, shownFirst);
  const move = async (ground: Ground): Promise<void> => {
    const iso = isoDay(day);
    const went = stock?.map((line) => {
      const lbPerDay = lbPerDayOf(place, line, day);
      return lbPerDay === undefined ? line : { ...line, lbPerDay };
    });
    onDone();
    await rows.change(
      from.length === 0
        ? `They are on ${ground.name}.`
        : `They went from ${from.map((each) => groundName(place, each)).join(' and ')} to ${ground.name}.`,
      [{ is: 'move', paddockId: ground.id, paddockName: ground.name, herdNumber: number, inDay: iso, stock: went ?? stockToday(place, number, day) }],
      from.map((before) => ({ before, after: { ...before, outDay: iso } })),
    );
  };
  return (
    <>
      {choices.length > 1 && (
        <Choices label={herds.length > 1 ? 'Which herd' : 'Which part'}>
          {choices.map((each) => (
            <button key={each.key} type="button" aria-pressed={each.key === key} onClick={() => setKey(each.key)}>
              {each.label}
            </button>
          ))}
        </Choices>
      )}
      {late !== undefined ? (
        <p class="problem" role="alert">
          They came to {groundName(place, late)} on {dayWords(inDayOf(late), todayDay)}, after the day above. Set the day on, or mend that line in{' '}
          <a href="#/record">the record</a>.
        </p>
      ) : (
        <>
          <p class="gate-asks">To which?</p>
          <ul class="gate-grounds">
            {shown.map((each) => (
              <li key={each.ground.id}>
                <button type="button" onClick={() => void move(each.ground)}>
                  <b>{each.ground.name}</b> <span>{readyWords(each, day)}</span>
                </button>
              </li>
            ))}
          </ul>
          {ready.length === 0 && (
            <p>
              Stock stand on every {groundWord(place).one} that the record knows. Close a stay in the record, or add a {groundWord(place).one} under
              Ground.
            </p>
          )}
          {ready.length > shown.length && (
            <button type="button" class="quiet" onClick={() => setAll(true)}>
              {ready.length - shown.length} more
            </button>
          )}
        </>
      )}
    </>
  );
}

/** Right behind a move: how tall it stands where they went, and how short where they were. Both may be left. */
export function WentPane({ place, rows, system }: AtGate) {
  const moves = rowsOf(rows.all, 'move');
  const went = moves.find(({ id }) => rows.done?.made.some((row) => row.id === id));
  if (went === undefined) return null;
  const left = moves.findLast(({ outDay, herdNumber }) => outDay === went.inDay && herdNumber === went.herdNumber);
  const grounds = groundsById(place);
  return (
    <>
      <Height
        system={system}
        label={`How tall it stands on ${groundName(place, went)}`}
        heightIn={went.heightInIn}
        startIn={grounds.get(went.paddockId)?.pasture.startHeightIn ?? 8}
        onHeight={(heightInIn) => void rows.write([{ before: went, after: { ...went, heightInIn } }])}
      />
      {left !== undefined && (
        <Height
          system={system}
          label={`How short they left ${groundName(place, left)}`}
          heightIn={left.heightOutIn}
          startIn={grounds.get(left.paddockId)?.pasture.stopHeightIn ?? 4}
          onHeight={(heightOutIn) => void rows.write([{ before: left, after: { ...left, heightOutIn } }])}
        />
      )}
    </>
  );
}

interface HeightProps {
  readonly system: AtGate['system'];
  readonly label: string;
  readonly heightIn: number | undefined;
  /** Where the first tap begins. */
  readonly startIn: number;
  readonly onHeight: (heightIn: number) => void;
}
/** By half inches, or by centimeters. Nothing is written before the first tap. */
export function Height({ system, label, heightIn, startIn, onHeight }: HeightProps) {
  const stepIn = system === 'us' ? 0.5 : convert(1, 'cm', 'in');
  const round = (value: number): number =>
    system === 'us' ? Math.round(value * 2) / 2 : convert(Math.round(convert(value, 'in', 'cm')), 'cm', 'in');
  const now = heightIn ?? round(startIn);
  const step = (by: number) => () => onHeight(Math.min(200, Math.max(0, round(now + by))));
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset here would take the looks of a question of two answers
    <div class="gate-height" role="group" aria-label={label}>
      <span>{label}</span>
      <button type="button" aria-label="Shorter" onClick={step(-stepIn)}>
        −
      </button>
      <button type="button" class={heightIn === undefined ? 'is-open' : undefined} onClick={() => onHeight(now)}>
        {heightIn === undefined ? `${heightWords(now, system)}?` : heightWords(heightIn, system)}
      </button>
      <button type="button" aria-label="Taller" onClick={step(stepIn)}>
        +
      </button>
    </div>
  );
}
