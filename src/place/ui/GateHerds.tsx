import type { MoveRow } from '../model/row.ts';
import { herdStock, moreThanTold } from '../offer/herdStock.ts';
import { inDayOf } from '../record/days.ts';
import type { AtGate } from './atGate.tsx';
import { daysWords, dayWords, groundName, stockWords } from './recordWords.ts';

/** Each herd with all that it stands on. One that was split is one line, and none of its head is told twice. */
export function GateHerds({ place, herds, todayDay }: Pick<AtGate, 'place' | 'herds' | 'todayDay'>) {
  const on = (move: MoveRow): string => {
    const sinceDay = inDayOf(move);
    const since = sinceDay >= todayDay ? 'today' : `${dayWords(sinceDay, todayDay)} (${daysWords(todayDay - sinceDay)})`;
    return `on ${groundName(place, move)} since ${since}`;
  };
  const more = moreThanTold(place, herds, todayDay);
  return (
    <>
      <ul class="gate-herds">
        {herds.map((herd) => {
          const { number, parts } = herd;
          const { stock, isShared } = herdStock(place, herd, todayDay);
          return (
            <li key={number}>
              <b>
                {herds.length > 1 && `Herd ${number}: `}
                {stock.length === 0 ? 'The herd' : stockWords(stock)}
              </b>{' '}
              {parts.length === 0
                ? 'stand nowhere yet'
                : parts.length > 1 && isShared
                  ? `in ${parts.length} parts: ${parts.map((part) => `${stockWords(part.stock) || 'some'} ${on(part)}`).join('; ')}`
                  : parts.map(on).join(', and ')}
            </li>
          );
        })}
      </ul>
      {more.map(({ there, told, numbers }) => (
        <p class="told" key={there.kind}>
          That makes {stockWords([there])}, and your place has {stockWords([told])}. If herd {numbers.join(' and herd ')} was split off, tell under{' '}
          <a href="#/stock">Stock</a> how many go with it.
        </p>
      ))}
    </>
  );
}
