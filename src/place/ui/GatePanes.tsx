import { useState } from 'preact/hooks';
import { isoDay } from '../../../calculators/units/printQuantity.ts';
import { convert, type UnitSystem } from '../../../calculators/units/units.ts';
import type { RainRow } from '../model/row.ts';
import { dayIn, rowsOf } from '../record/days.ts';
import { type Ground, groundsById, groundsOf, hayGroundsOf } from '../record/grounds.ts';
import { baleOf, standingOn } from '../record/hayFed.ts';
import { lastReading, unreadDays } from '../record/rainText.ts';
import { type AtGate, Choices } from './atGate.tsx';
import { amount, count } from './fields/field.ts';
import { Height } from './MovedPane.tsx';
import { OwnAmount } from './OwnAmount.tsx';
import { daysWords, dayWords, heightWords, rainWords } from './recordWords.ts';

interface PaneProps extends AtGate {
  readonly onDone: () => void;
}

const quickRain: Readonly<Record<UnitSystem, readonly { readonly label: string; readonly amountIn: number }[]>> = {
  us: [0.1, 0.25, 0.5, 1].map((amountIn) => ({ label: String(amountIn), amountIn })),
  si: [2, 5, 10, 25].map((mm) => ({ label: String(mm), amountIn: convert(mm, 'mm', 'in') })),
};
/** The most that forms take of one rain, too. */
const mostRainIn = 30;
const rainField = amount('amountIn', 'Rain', 'in', [0, mostRainIn], 0.4);
/** A gauge that nobody emptied for longer than this overflows or dries up. */
const longestTotal = 30;

export function RainPane({ rows, day, todayDay, system, onDone }: PaneProps) {
  const [isOther, setOther] = useState(false);
  const unread = unreadDays(rows.all, day);
  const last = lastReading(rows.all, day - 1);
  const here = rowsOf(rows.all, 'rain').find((row) => dayIn(row.day) === day);
  const isTotal = here === undefined && unread.length > 0 && unread.length <= longestTotal;
  const keep = async (amountIn: number, isTrace = false): Promise<void> => {
    onDone();
    const says = `Rain ${dayWords(day, todayDay)}: ${rainWords({ amountIn, isTrace }, system)}.`;
    if (here !== undefined) {
      // The gauge was read twice that day: what it held then and now adds up.
      const { isTrace: was, ...read } = here;
      const sum = here.amountIn + amountIn;
      const after: RainRow = { ...read, amountIn: sum, ...(sum === 0 && (isTrace || was === true) ? { isTrace: true } : {}) };
      await rows.change(`${says} With what was read before: ${rainWords(after, system)}.`, [], [{ before: here, after }]);
      return;
    }
    const days = isTotal ? unread.length + 1 : 1;
    await rows.change(says, [{ is: 'rain', day: isoDay(day), days, amountIn, ...(isTrace ? { isTrace } : {}) }]);
  };
  const dry = async (): Promise<void> => {
    const [first] = unread;
    const until = unread.at(-1);
    if (first === undefined || until === undefined) return;
    await rows.change(`Dry from ${dayWords(first, todayDay)} to ${dayWords(until, todayDay)}.`, [
      { is: 'rain', day: isoDay(until), days: unread.length, amountIn: 0 },
    ]);
  };
  return (
    <>
      {last !== undefined && unread.length > 0 && (
        <p class="gate-asks">
          Last read {dayWords(dayIn(last.day), todayDay)}.{' '}
          {isTotal ? `What you tap now counts for all ${daysWords(unread.length + 1)}.` : 'The days between count as not read.'}
        </p>
      )}
      {unread.length > 0 && unread.length <= 366 && (
        <p class="gate-wide">
          <button type="button" onClick={() => void dry()}>
            Dry since I last read
          </button>
        </p>
      )}
      <p class="gate-asks">In the gauge, {system === 'us' ? 'inches' : 'millimeters'}</p>
      <Choices label="Rain in the gauge">
        <button type="button" onClick={() => void keep(0)}>
          0
        </button>
        <button type="button" onClick={() => void keep(0, true)}>
          trace
        </button>
        {quickRain[system].map(({ label, amountIn }) => (
          <button key={label} type="button" onClick={() => void keep(amountIn)}>
            {label}
          </button>
        ))}
        <button type="button" aria-expanded={isOther} onClick={() => setOther(!isOther)}>
          other
        </button>
      </Choices>
      {isOther && <OwnAmount id="gate-rain" field={rainField} system={system} onKeep={(amountIn) => void keep(amountIn)} />}
    </>
  );
}

const baleChoices = [1, 2, 3, 4, 6, 8];
const balesField = count('baleCount', 'Bales', 'count', [1, 1000], 5);
export function HayPane({ place, rows, day, todayDay, system, onDone }: PaneProps) {
  const grounds = groundsById(place);
  const standing = standingOn(rows.all, day).map(({ id, paddockId, paddockName }) => ({
    id,
    ground: grounds.get(paddockId) ?? { id: paddockId, name: paddockName ?? 'a paddock that was taken away' },
  }));
  const [picked, setPicked] = useState<string | undefined>(undefined);
  const [isOther, setOther] = useState(false);
  const ground = standing.find(({ ground: each }) => each.id === picked)?.ground ?? standing[0]?.ground;
  if (ground === undefined) return <p>The record does not know where they stood {dayWords(day, todayDay)}. Tap “They moved” first.</p>;
  const bale = baleOf(place);
  const keep = async (baleCount: number): Promise<void> => {
    onDone();
    await rows.change(`Hay on ${ground.name}, ${dayWords(day, todayDay)}: ${baleCount === 1 ? '1 bale' : `${baleCount} bales`}.`, [
      { is: 'hay', paddockId: ground.id, paddockName: ground.name, day: isoDay(day), baleCount, ...bale },
    ]);
  };
  return (
    <>
      {standing.length > 1 && (
        <Choices label="Where">
          {standing.map(({ id, ground: each }) => (
            <button key={id} type="button" aria-pressed={each.id === ground.id} onClick={() => setPicked(each.id)}>
              {each.name}
            </button>
          ))}
        </Choices>
      )}
      <p class="gate-asks">
        Bales fed on {ground.name}
        {bale.baleLb === undefined && '. Put under Feed what a bale weighs: until then this hay counts as grass'}
      </p>
      <Choices label={`Bales fed on ${ground.name}`}>
        {baleChoices.map((each) => (
          <button key={each} type="button" onClick={() => void keep(each)}>
            {each}
          </button>
        ))}
        <button type="button" aria-expanded={isOther} onClick={() => setOther(!isOther)}>
          other
        </button>
      </Choices>
      {isOther && <OwnAmount id="gate-bales" field={balesField} system={system} onKeep={(baleCount) => void keep(baleCount)} />}
    </>
  );
}

/** A paddock at rest, read with a stick: twice, and the record tells when it is ready. */
export function HeightPane({ place, rows, day, todayDay, system, onDone }: PaneProps) {
  const [ground, setGround] = useState<Ground | undefined>(undefined);
  const [heightIn, setHeight] = useState<number | undefined>(undefined);
  if (ground === undefined)
    return (
      <>
        <p class="gate-asks">Where did you measure?</p>
        <Choices label="Where did you measure">
          {[...groundsOf(place), ...hayGroundsOf(place)].map((each) => (
            <button key={each.id} type="button" onClick={() => setGround(each)}>
              {each.name}
            </button>
          ))}
        </Choices>
      </>
    );
  const before = rowsOf(rows.all, 'height').findLast(({ paddockId }) => paddockId === ground.id);
  const keep = async (read: number): Promise<void> => {
    onDone();
    await rows.change(`${ground.name}, ${dayWords(day, todayDay)}: ${heightWords(read, system)} tall.`, [
      { is: 'height', paddockId: ground.id, paddockName: ground.name, day: isoDay(day), heightIn: read },
    ]);
  };
  return (
    <>
      <p class="gate-asks">
        {before === undefined
          ? 'Twenty spots, and the mean of them.'
          : `Last read ${dayWords(dayIn(before.day), todayDay)}: ${heightWords(before.heightIn, system)}.`}
      </p>
      <Height
        system={system}
        label={`How tall ${ground.name} stands`}
        heightIn={heightIn}
        startIn={before?.heightIn ?? ground.pasture.startHeightIn ?? 6}
        onHeight={setHeight}
      />
      <p class="gate-wide">
        <button type="button" disabled={heightIn === undefined} onClick={() => heightIn !== undefined && void keep(heightIn)}>
          Keep it
        </button>
      </p>
    </>
  );
}
