import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { localDay } from '../../../calculators/units/days.ts';
import { printDay } from '../../../calculators/units/printQuantity.ts';
import { dayOfRow } from '../record/days.ts';
import { groundsById } from '../record/grounds.ts';
import { herdsOf } from '../record/herds.ts';
import type { AtGate } from './atGate.tsx';
import { GateHerds } from './GateHerds.tsx';
import { lazily, useBehind } from './lazily.tsx';
import { dayWords } from './recordWords.ts';
import { type Rows, useRows } from './rows.ts';
import type { PlaceView } from './view.ts';

type Pane = 'moved' | 'went' | 'rain' | 'hay' | 'height';
const fetchPanes = () => import('./panes.ts');
const panes: Readonly<Record<Pane, FunctionComponent<AtGate & { readonly onDone: () => void }>>> = {
  moved: lazily(async () => (await fetchPanes()).MovedPane),
  went: lazily(async () => (await fetchPanes()).WentPane),
  rain: lazily(async () => (await fetchPanes()).RainPane),
  hay: lazily(async () => (await fetchPanes()).HayPane),
  height: lazily(async () => (await fetchPanes()).HeightPane),
};
/** So long a tap can be taken back here; in the record it can be for ever. */
const takeBackMs = 10_000;

export function Gate(view: PlaceView) {
  const { session, place } = view;
  const rows = useRows(session, place);
  const todayDay = localDay(session.now);
  const [back, setBack] = useState(0);
  const [pane, setPane] = useState<Pane | undefined>(undefined);
  useBehind(fetchPanes);
  if (rows === undefined) return <p>One moment: reading the record.</p>;
  const Shown = pane && panes[pane];
  const at: AtGate = { ...view, rows, day: todayDay - back, todayDay, herds: herdsOf(place, rows.all, todayDay) };
  if (groundsById(place).size === 0)
    return (
      <p>
        Tell your pastures first: a move goes from one to another. <a href="#/ground">Pastures and soils</a>
      </p>
    );
  const lastDay = Math.max(...rows.all.filter(({ is }) => is !== 'plan').map(dayOfRow));
  const go = (next: Pane | undefined) => () => setPane(pane === next ? undefined : next);
  return (
    <div class="gate">
      <p class="gate-day">
        <button type="button" aria-label="A day back" onClick={() => setBack(back + 1)}>
          ‹
        </button>
        <b aria-live="polite">
          {back === 0 ? 'Today, ' : back === 1 ? 'Yesterday, ' : ''}
          {dayWords(at.day, todayDay)}
        </b>
        <button type="button" aria-label="A day on" disabled={back === 0} onClick={() => setBack(back - 1)}>
          ›
        </button>
      </p>
      {lastDay > todayDay && (
        <p class="told" role="status">
          This device says {printDay(todayDay)}, and your record goes to {printDay(lastDay)}. Set the date of the device before you tap, or put right
          what stands in <a href="#/record">the record</a>.
        </p>
      )}
      <GateHerds {...at} />
      <TakeBack key={rows.done?.says ?? ''} rows={rows} onBack={() => setPane(undefined)} />
      <p class="gate-buttons">
        {(
          [
            ['moved', 'They moved'],
            ['rain', 'Rain'],
            ['hay', 'Hay'],
            ['height', 'Height'],
          ] as const
        ).map(([key, label]) => (
          <button key={key} type="button" aria-expanded={pane === key} onClick={go(key)}>
            {label}
          </button>
        ))}
      </p>
      {Shown !== undefined && <Shown key={pane} {...at} onDone={() => setPane(pane === 'moved' ? 'went' : undefined)} />}
      {pane === undefined && (
        <p class="gate-on">
          <a href="#/record">The record</a> <a href="#/">Your place</a>
        </p>
      )}
    </div>
  );
}

/** What the last tap wrote, with the way back while it is fresh. */
function TakeBack({ rows, onBack }: { readonly rows: Rows; readonly onBack: () => void }) {
  const { done, trouble } = rows;
  const [isFresh, setFresh] = useState(true);
  useEffect(() => {
    const timer = setTimeout(() => setFresh(false), takeBackMs);
    return () => clearTimeout(timer);
  }, []);
  return (
    <div class="gate-done" role="status">
      {trouble !== undefined && <span>{trouble}</span>}
      {done !== undefined && (
        <>
          <span>{done.says}</span>
          {isFresh ? (
            <button
              type="button"
              onClick={() => {
                onBack();
                void done.takeBack();
              }}
            >
              Take it back
            </button>
          ) : (
            <a href="#/record">In the record</a>
          )}
        </>
      )}
    </div>
  );
}
