import { yearOf } from '../../../calculators/units/days.ts';
import { printAsIs, printDay, printNumber, printQuantity } from '../../../calculators/units/printQuantity.ts';
import { groundWord } from './groundWord.ts';
import { RainTable, SumsDoubted, SumsTable } from './RecordSums.tsx';
import { cannotBe, heightWords, rainWords, stockWords } from './recordWords.ts';
import type { ShownRecord } from './shownRecord.ts';

const heads = [
  'Acres',
  'In, date',
  'Out, date',
  'Days',
  'Kind of stock, and how many',
  'Weight of one, lb',
  'Inches going in',
  'Inches coming out',
  'Inches of rain there',
  'Rest before, days',
  'Stock-days an acre',
  'What they left, water, weather, trouble',
];
const day = (number: number): string => printDay(number).slice(0, -6);

/** The columns of the sheet by the gate, filled in, for who leases or lends the ground: one year, with its sums and its rain. */
export function RecordPaper(shown: ShownRecord) {
  const { place, year, stays, system, yardstick, todayDay } = shown;
  const ofYear = stays.filter(({ inDay }) => yearOf(inDay) === year);
  return (
    <div class="record-paper">
      <p>
        <b>
          Grazing record, {place.name}, {year}
        </b>
        {place.isDemo === true && '. Invented example'}. Printed {printDay(todayDay)}.
        {yardstick !== undefined &&
          ` Counted in ${yardstick.of ?? 'stock'} that eat ${printAsIs(yardstick.lbPerDay)} lb a day, the water out${yardstick.isSet ? '' : ', as they do today'}; changing that counts all years anew.`}
      </p>
      <table>
        <thead>
          <tr>
            {[groundWord(place).head, ...heads].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {ofYear.map(({ move, ground, name, inDay, outDay, isOpen, isImpossible, days, restDays, rainIn, stockDaysPerAc, withHayPerAc, hayLb }) => (
            <tr key={move.id}>
              <th scope="row">{name}</th>
              <td>{ground?.areaAc === undefined ? '' : printQuantity(ground.areaAc, 'ac', 1, system)}</td>
              <td>{day(inDay)}</td>
              <td>{isOpen ? 'there now' : day(outDay)}</td>
              <td>{isImpossible ? cannotBe : printNumber(days, days % 1 === 0 ? 0 : 1)}</td>
              <td>{stockWords(move.stock)}</td>
              <td>{move.stock.map(({ weightLb }) => (weightLb === undefined ? '?' : printNumber(weightLb, 0))).join(', ')}</td>
              <td>{move.heightInIn === undefined ? '' : heightWords(move.heightInIn, system)}</td>
              <td>{move.heightOutIn === undefined ? '' : heightWords(move.heightOutIn, system)}</td>
              <td>{rainIn === undefined ? '' : rainWords({ amountIn: rainIn }, system)}</td>
              <td>{restDays}</td>
              <td>
                {stockDaysPerAc === undefined ? '' : printNumber(stockDaysPerAc, 1)}
                {hayLb > 0 && withHayPerAc !== undefined && ` (${printNumber(withHayPerAc, 1)} with hay)`}
              </td>
              <td>{move.word}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <SumsTable {...shown} />
      <SumsDoubted {...shown} />
      <RainTable {...shown} />
      <p>
        Stock-days: pounds that all of them eat a day, over the pounds of one, times days, over acres; less what hay covered. In and out on one day is
        half a day. Rest: from the day out to the next day in.
      </p>
    </div>
  );
}
