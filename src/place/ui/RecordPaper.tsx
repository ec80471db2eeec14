import { yearOf } from '../../../calculators/units/days.ts';
import { printAsIs, printDay, printNumber, printQuantity } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { groundWord } from './groundWord.ts';
import { inUnit, RainTable, SumsDoubted, SumsTable } from './RecordSums.tsx';
import { cannotBe, daysWords, heightWords, rainWords, stockWords } from './recordWords.ts';
import type { ShownRecord } from './shownRecord.ts';

const headsIn = (system: UnitSystem): readonly string[] => [
  system === 'us' ? 'Acres' : 'Hectares',
  'In, date',
  'Out, date',
  'Days',
  'Kind of stock, and how many',
  `Weight of one, ${system === 'us' ? 'lb' : 'kg'}`,
  `${system === 'us' ? 'Inches' : 'Centimeters'} going in`,
  `${system === 'us' ? 'Inches' : 'Centimeters'} coming out`,
  `${system === 'us' ? 'Inches' : 'Millimeters'} of rain there`,
  'Rest before, days',
  'Stock-days an acre',
  'What they left, water, weather, trouble',
];

/** The columns of the sheet by the gate, filled in, for who leases or lends the ground: one year, with its sums and its rain. */
export function RecordPaper(shown: ShownRecord) {
  const { place, year, ofYear, system, yardstick, todayDay } = shown;
  /** The sheet is of one year: another stands beside its days. */
  const day = (number: number): string => (yearOf(number) === year ? printDay(number).slice(0, -6) : printDay(number));
  return (
    <div class="record-paper">
      <p>
        <b>
          Grazing record, {place.name}, {year}
        </b>
        {place.isDemo === true && '. Invented example'}. Printed {printDay(todayDay)}.
        {yardstick !== undefined &&
          ` Counted in ${yardstick.of ?? 'stock'} that eat ${system === 'us' ? `${printAsIs(yardstick.lbPerDay)} lb a day` : printQuantity(yardstick.lbPerDay, 'lb/d', 1, system)}, the water out${yardstick.isSet ? '' : ', as they do today'}; changing that counts all years anew.`}
      </p>
      <table>
        <thead>
          <tr>
            {[groundWord(place).head, ...headsIn(system)].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {ofYear.map(
            ({
              move,
              ground,
              name,
              inDay,
              outDay,
              isOpen,
              isImpossible,
              days,
              restDays,
              rainIn,
              rainUnreadDays,
              stockDaysPerAc,
              withHayPerAc,
              hayLb,
            }) => (
              <tr key={move.id}>
                <th scope="row">{name}</th>
                <td>{ground?.areaAc === undefined ? '' : printQuantity(ground.areaAc, 'ac', 1, system)}</td>
                <td>{day(inDay)}</td>
                <td>{isOpen ? 'there now' : day(outDay)}</td>
                <td>{isImpossible ? cannotBe : printNumber(days, days % 1 === 0 ? 0 : 1)}</td>
                <td>{stockWords(move.stock)}</td>
                <td>{move.stock.map(({ weightLb }) => (weightLb === undefined ? '?' : inUnit(weightLb, 'lb', system))).join(', ')}</td>
                <td>{move.heightInIn === undefined ? '' : heightWords(move.heightInIn, system)}</td>
                <td>{move.heightOutIn === undefined ? '' : heightWords(move.heightOutIn, system)}</td>
                <td>
                  {rainIn === undefined ? '' : rainWords({ amountIn: rainIn }, system)}
                  {rainIn !== undefined && rainUnreadDays > 0 && `, ${daysWords(rainUnreadDays)} not read`}
                </td>
                <td>{restDays}</td>
                <td>
                  {stockDaysPerAc === undefined ? '' : printNumber(stockDaysPerAc, 1)}
                  {hayLb > 0 && withHayPerAc !== undefined && ` (${printNumber(withHayPerAc, 1)} with hay)`}
                </td>
                <td>{move.word}</td>
              </tr>
            ),
          )}
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
