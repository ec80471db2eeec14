import { useState } from 'preact/hooks';
import { isoDay, printDay } from '../../../calculators/units/printQuantity.ts';
import type { StockLine } from '../model/row.ts';
import { type Brought, bringMoves, bringRain } from '../record/bringLines.ts';
import { isOfRain, movesCsv, rainCsv, readMoves, readRain } from '../record/csv.ts';
import { dayIn, rowsOf } from '../record/days.ts';
import { staysOf, twicePlaced } from '../record/stays.ts';
import { download } from './download.ts';
import { TwoPlaces } from './RecordSums.tsx';
import { rainWords, stockWords } from './recordWords.ts';
import type { ShownRecord } from './shownRecord.ts';

export interface TablesProps extends ShownRecord {
  readonly lbPerDayOf: (line: StockLine, day: number) => number | undefined;
}
type Found =
  | { readonly is: 'refused'; readonly say: string }
  | { readonly is: 'read'; readonly lines: readonly Brought[]; readonly twice?: ReturnType<typeof twicePlaced> };
const newsOf = (lines: readonly Brought[]): readonly Brought[] => lines.filter(({ is }) => is === 'new' || is === 'changed');
const standings: Readonly<Record<Brought['is'], string>> = { new: 'new', changed: 'changes what is here', same: 'here already', wrong: 'left out' };
/** So many are shown one by one; what is left out is always shown. */
const mostShown = 200;

/** Tables for a spreadsheet, out and in. What comes in is shown line by line before anything is written. */
export function RecordTables(shown: TablesProps) {
  const { place, rows, stays, todayDay, system } = shown;
  const [found, setFound] = useState<Found | undefined>(undefined);
  const [said, setSaid] = useState('');
  const take = (text: string): Found => {
    const bringing = {
      place,
      rows: rows.all,
      stays,
      lbPerDayOf: shown.lbPerDayOf,
      sayMove: (
        { inDay, outDay, stock }: { readonly inDay: string; readonly outDay?: string | undefined; readonly stock: readonly StockLine[] },
        name: string,
      ) =>
        [name, `${printDay(dayIn(inDay))} to ${outDay === undefined ? 'now' : printDay(dayIn(outDay))}`, stockWords(stock)]
          .filter(Boolean)
          .join(', '),
      sayRain: (rain: { readonly day: string; readonly days: number; readonly amountIn: number; readonly isTrace?: true }) =>
        `${printDay(dayIn(rain.day))}: ${rainWords(rain, system)}${rain.days > 1 ? ` in ${rain.days} days` : ''}`,
    };
    if (isOfRain(text)) {
      const read = readRain(text);
      return 'problem' in read ? { is: 'refused', say: read.problem } : { is: 'read', lines: bringRain(bringing, read) };
    }
    const read = readMoves(text);
    if ('problem' in read) return { is: 'refused', say: read.problem };
    const lines = bringMoves(bringing, read);
    const coming = new Map(
      newsOf(lines).flatMap(({ adds, changes }) =>
        [...adds.map((body) => rows.made(body)), ...(changes === undefined ? [] : [changes.after])].map((row) => [row.id, row] as const),
      ),
    );
    const after = staysOf(place, [...rows.all.filter(({ id }) => !coming.has(id)), ...coming.values()], { todayDay });
    return { is: 'read', lines, twice: twicePlaced(after).filter((pair) => pair.some(({ move }) => coming.has(move.id))) };
  };
  const open = async (input: HTMLInputElement): Promise<void> => {
    const file = input.files?.[0];
    if (file === undefined) return;
    try {
      setFound(take(await file.text()));
    } catch {
      setFound({ is: 'refused', say: 'This device could not read the file. Nothing was changed.' });
    }
    setSaid('');
    input.value = '';
  };
  const lines = found?.is === 'read' ? found.lines : [];
  const news = newsOf(lines);
  const bring = async (): Promise<void> => {
    const count = news.reduce((sum, each) => sum + each.lines.length, 0);
    setFound(undefined);
    setSaid(count === 1 ? 'One line is in the record.' : `${count} lines are in the record.`);
    await rows.change(
      'The table is in.',
      news.flatMap(({ adds }) => adds),
      news.flatMap(({ changes }) => (changes === undefined ? [] : [changes])),
    );
  };
  const stamp = isoDay(todayDay);
  return (
    <>
      <p>
        <button type="button" onClick={() => download(`moves-${stamp}.csv`, movesCsv(stays, system), 'text/csv')}>
          Save moves.csv
        </button>{' '}
        <button type="button" onClick={() => download(`rain-${stamp}.csv`, rainCsv(rowsOf(rows.all, 'rain'), system), 'text/csv')}>
          Save rain.csv
        </button>
      </p>
      <p class="file-field">
        <label for="record-table">Bring in a table of moves or of rain</label>
        <input id="record-table" type="file" accept=".csv,text/csv" onChange={(event) => void open(event.currentTarget)} />
      </p>
      <p>
        Its first line names the columns, as in the files above: paddock, in, out, kind, head; or day and rain_in, counted in inches, or rain_mm, in
        millimeters. Pounds stand under weight_lb, hay_lb and lb_day, kilograms under weight_kg, hay_kg and kg_day; inches under height_in and
        height_out, millimeters under height_in_mm and height_out_mm. A cell may name its own unit, such as 20 cm. You see what was understood before
        anything is written.
      </p>
      {found?.is === 'refused' && (
        <p class="problem" role="alert">
          {found.say}
        </p>
      )}
      {found?.is === 'read' && (
        <div class="preview">
          <h4>What was understood</h4>
          <ul class="coming">
            {[...lines.filter(({ is }) => is === 'wrong'), ...lines.filter(({ is }) => is !== 'wrong').slice(0, mostShown)].map((each) => (
              <li key={each.lines.join()}>
                <b>
                  Line {each.lines.join(', ')}, {standings[each.is]}:
                </b>{' '}
                {each.say}
              </li>
            ))}
            {lines.length > mostShown && <li>and {lines.length - mostShown} more.</li>}
          </ul>
          <TwoPlaces pairs={found.twice ?? []} todayDay={todayDay} />
          <p>
            <button type="button" disabled={news.length === 0} onClick={() => void bring()}>
              {news.length === 0 ? 'Nothing new to bring in' : `Bring in ${news.length}`}
            </button>{' '}
            <button type="button" class="quiet" onClick={() => setFound(undefined)}>
              Leave it
            </button>
          </p>
        </div>
      )}
      <p role="status">{said}</p>
    </>
  );
}
