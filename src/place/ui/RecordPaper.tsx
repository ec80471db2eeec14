import { yearOf } from '../../../calculators/units/days.ts';
import { printDay, printNumber, printQuantity } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { groundWord } from './groundWord.ts';
import { inUnit, RainTable, SumsDoubted, SumsTable } from './RecordSums.tsx';
import { cannotBe, daysWords, dryWords, groundUnit, heightWords, rainWords, stayedWords, stockDaysOn } from './recordWords.ts';
import type { ShownRecord } from './shownRecord.ts';

const headsIn = (system: UnitSystem): readonly string[] => [
  system === 'us' ? 'Acres' : 'Hectares',
  'In, date',
  'Out, date',
  'Days',
  'Kind of stock, and how many',
  `Weight of one, ${system === 'us' ? 'lb' : 'kg'}`,
  `${system === 'us' ? 'Inches' : 'Millimeters'} going in`,
  `${system === 'us' ? 'Inches' : 'Millimeters'} coming out`,
  `${system === 'us' ? 'Inches' : 'Millimeters'} of rain there`,
  'Rest before, days',
  `Stock-days ${groundUnit(system)}`,
  'What they left, water, weather, trouble',
];

interface PaperProps extends Pick<ShownRecord, 'place' | 'stays' | 'ofYear' | 'year' | 'system' | 'yardstick' | 'todayDay'> {
  readonly rows: Pick<ShownRecord['rows'], 'all'>;
}
/** The columns of the sheet by the gate, filled in, for who leases or lends the ground: one year, with its sums and its rain. */
export function RecordPaper(shown: PaperProps) {
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
          ` Counted in ${yardstick.of ?? 'stock'} that eat ${dryWords(yardstick.lbPerDay, system)} a day, the water out${yardstick.isSet ? '' : ', as they do today'}; changing that counts all years anew.`}
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
              splitOff,
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
                <td>{stayedWords({ move, inDay, splitOff })}</td>
                <td>{move.stock.map(({ weightLb }) => (weightLb === undefined ? '?' : inUnit(weightLb, 'lb', system))).join(', ')}</td>
                <td>{move.heightInIn === undefined ? '' : heightWords(move.heightInIn, system)}</td>
                <td>{move.heightOutIn === undefined ? '' : heightWords(move.heightOutIn, system)}</td>
                <td>
                  {rainIn === undefined ? '' : rainWords({ amountIn: rainIn }, system)}
                  {rainIn !== undefined && rainUnreadDays > 0 && `, ${daysWords(rainUnreadDays)} not read`}
                </td>
                <td>{restDays}</td>
                <td>
                  {stockDaysPerAc === undefined ? '' : stockDaysOn(stockDaysPerAc, system)}
                  {hayLb > 0 && withHayPerAc !== undefined && ` (${stockDaysOn(withHayPerAc, system)} with hay)`}
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
        Stock-days: what all of them eat a day, over what one of them eats, times days, over {system === 'us' ? 'acres' : 'hectares'}; less what hay
        covered. In and out on one day is half a day. Rest: from the day out to the next day in.
      </p>
    </div>
  );
}
