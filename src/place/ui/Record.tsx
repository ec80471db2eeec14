import { useEffect, useState } from 'preact/hooks';
import { localDay, yearOf } from '../../../calculators/units/days.ts';
import { printQuantity } from '../../../calculators/units/printQuantity.ts';
import { lbPerDayOf, yardstickOf } from '../offer/stockToday.ts';
import { plannedOf } from '../record/planned.ts';
import { staysOf } from '../record/stays.ts';
import { yearsOf } from '../record/years.ts';
import { lazily, useBehind } from './lazily.tsx';
import { Fold } from './Part.tsx';
import { RecordRows } from './RecordRows.tsx';
import { RecordSums } from './RecordSums.tsx';
import type { TablesProps } from './RecordTables.tsx';
import { dryWords } from './recordWords.ts';
import { type Rows, useRows } from './rows.ts';
import type { ShownRecord } from './shownRecord.ts';
import type { PlaceView } from './view.ts';

// Few have rain from before, and few have tables: both come when they are wanted. What is opened or printed comes a moment behind.
const OldRain = lazily<PlaceView & { readonly rows: Rows }>(async () => (await import('./OldRain.tsx')).OldRain);
const RecordTables = lazily<TablesProps>(async () => (await import('./RecordTables.tsx')).RecordTables);
const Yardstick = lazily<PlaceView>(async () => (await import('./RecordLine.tsx')).Yardstick);
const RecordPaper = lazily<ShownRecord>(async () => (await import('./RecordPaper.tsx')).RecordPaper);
/** Without its sheet the page itself prints, as it stands. */
const printSheet = (): void => void RecordPaper.bring().then(print, print);

/** What was done and what came of it, year by year. */
export function Record(view: PlaceView) {
  const { session, place, system, isPrinting } = view;
  const rows = useRows(session, place);
  const todayDay = localDay(session.now);
  const [picked, setPicked] = useState<number | undefined>(undefined);
  useBehind(Yardstick.bring);
  useBehind(RecordPaper.bring);
  const [, redraw] = useState(0);
  useEffect(() => {
    // Printed before the sheet has come.
    if (isPrinting && !RecordPaper.isThere())
      RecordPaper.bring().then(
        () => redraw((count) => count + 1),
        () => undefined,
      );
  }, [isPrinting]);
  if (rows === undefined) return <p>One moment: reading the record.</p>;
  const year = picked ?? yearOf(todayDay);
  const yardstick = yardstickOf(place, todayDay);
  const counting = { todayDay, ...(yardstick === undefined ? {} : { yardstickLbPerDay: yardstick.lbPerDay }) };
  const stays = staysOf(place, rows.all, counting);
  const ofYear = staysOf(place, rows.all, { ...counting, year });
  const shown = { ...view, rows, todayDay, year, stays, ofYear, planned: plannedOf(rows.all, stays), yardstick };
  if (isPrinting && RecordPaper.isThere()) return <RecordPaper {...shown} />;
  const { done, taken, trouble } = rows;
  const years = yearsOf(rows.all, todayDay);
  return (
    <>
      {session.oldRain.read() !== undefined && <OldRain {...view} rows={rows} />}
      <p class="record-status" role="status">
        {trouble}
        {[...(done === undefined ? [] : [done]), ...taken].map((each) => (
          <span key={each.id}>
            {each.says}{' '}
            <button type="button" onClick={() => void each.takeBack()}>
              Take it back
            </button>{' '}
          </span>
        ))}
      </p>
      {rows.all.length === 0 ? (
        <p>
          Nothing is in the record yet. <a href="#/gate">At the gate</a> a move, the rain, hay or a height is one tap or two; what you have on paper
          or in a table comes in below.
        </p>
      ) : (
        <p class="gate-choices">
          {years.map((each) => (
            <button key={each} type="button" aria-pressed={each === year} onClick={() => setPicked(each)}>
              {each}
            </button>
          ))}
        </p>
      )}
      <RecordSums {...shown} />
      <RecordRows {...shown} />
      <Fold
        title="The measure of a stock-day"
        says={
          yardstick === undefined ? 'not told' : `${printQuantity(yardstick.lbPerDay, 'lb/d', 1, system)}${yardstick.isSet ? '' : ', not set yet'}`
        }
        isPrinting={false}
      >
        {() => (
          <>
            {yardstick?.isSet === false && (
              <p>
                Nothing is set, so a stock-day is what one of your {yardstick.of ?? 'stock'} eats today: {dryWords(yardstick.lbPerDay, system)}, the
                water out. Set it once, so that years can be laid side by side.
              </p>
            )}
            <Yardstick {...view} />
          </>
        )}
      </Fold>
      <h3>Print it</h3>
      <p>
        The sheet has the columns that lessors and offices ask for, of the year above. It is wide: letter or A4, on its side.{' '}
        <button type="button" onClick={printSheet}>
          Print {year}
        </button>
      </p>
      <h3>As tables, for a spreadsheet</h3>
      <Fold title="Save or bring in a table" isPrinting={false}>
        {() => <RecordTables {...shown} lbPerDayOf={(line, day) => lbPerDayOf(place, line, day)} />}
      </Fold>
    </>
  );
}
