import { firstOfMonth, yearOf } from '../../../calculators/units/days.ts';
import { shortMonthName } from '../../../calculators/units/months.ts';
import { printNumber, printQuantity } from '../../../calculators/units/printQuantity.ts';
import { convert, type UnitName, type UnitSystem, unitIn } from '../../../calculators/units/units.ts';
import { dayIn, rowsOf } from '../record/days.ts';
import { groundsById } from '../record/grounds.ts';
import { nextReady } from '../record/nextReady.ts';
import { heightGap, type Planned } from '../record/planned.ts';
import { sameWeek, shortestRest } from '../record/pointed.ts';
import { hayOutside, type Stay, twicePlaced } from '../record/stays.ts';
import { groundYears, type MonthRain, rainByMonth } from '../record/years.ts';
import { groundWord } from './groundWord.ts';
import { cannotBe, daysWords, dayWords, groundUnit, heightWords, readyWords, stockDaysOn } from './recordWords.ts';
import type { ShownRecord } from './shownRecord.ts';

/** The number alone, whole, as a column has it whose head names the unit. */
export const inUnit = (value: number, unit: UnitName, system: UnitSystem): string =>
  printNumber(Math.round(convert(value, unit, unitIn(system, unit))), 0);
const acres = (areaAc: number | undefined, system: UnitSystem): string => (areaAc === undefined ? '' : printQuantity(areaAc, 'ac', 1, system));

/** Sums a paddock, with what hay covered told beside what grass gave. */
export function SumsTable({ place, ofYear, year, system }: Pick<ShownRecord, 'place' | 'ofYear' | 'year' | 'system'>) {
  const word = groundWord(place);
  const sums = groundYears(ofYear);
  const isUs = system === 'us';
  if (sums.length === 0) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: who has no mouse scrolls it by keys
    <section class="record-table" tabIndex={0} aria-label="Sums of the year">
      <table>
        <caption>
          {year}, {word.one} by {word.one}
          {ofYear.some(({ isCut }) => isCut) && '. A stay over New Year counts in each year with the days, the hay and the rain of that year'}
        </caption>
        <thead>
          <tr>
            {[
              word.head,
              'Size',
              'Stays',
              'Days',
              `Stock-days ${groundUnit(system)}, off grass`,
              'With hay',
              `${isUs ? 'Pounds' : 'Kilograms'} ${groundUnit(system)}`,
              `Hay fed, ${isUs ? 'lb' : 'kg'} dry`,
            ].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sums.map((each) => (
            <tr key={each.name}>
              <th scope="row">{each.name}</th>
              <td>{acres(each.areaAc, system)}</td>
              <td>{each.stays}</td>
              <td>{printNumber(each.days, each.days % 1 === 0 ? 0 : 1)}</td>
              <td>{each.stockDaysPerAc === undefined ? '' : stockDaysOn(each.stockDaysPerAc, system)}</td>
              <td>{each.withHayPerAc === undefined ? '' : stockDaysOn(each.withHayPerAc, system)}</td>
              <td>{each.lbPerAc === undefined ? '' : inUnit(each.lbPerAc, 'lb/ac', system)}</td>
              <td>{each.hayLb === 0 ? '' : inUnit(each.hayLb, 'lb', system)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
const stayed = ({ name, inDay, outDay, isOpen }: Stay, todayDay: number): string =>
  `${name}, ${dayWords(inDay, todayDay)} to ${isOpen ? 'now' : dayWords(outDay, todayDay)}`;
/** A herd in two places at once counts in both. */
export const TwoPlaces = ({ pairs, todayDay }: { readonly pairs: ReturnType<typeof twicePlaced>; readonly todayDay: number }) =>
  pairs.length === 0 ? null : (
    <p class="problem">
      In two places at once, and counted in both:{' '}
      {pairs.map(([one, other]) => `herd ${one.move.herdNumber} on ${stayed(one, todayDay)}, and on ${stayed(other, todayDay)}`).join('; ')}.
    </p>
  );
interface DoubtedProps extends Pick<ShownRecord, 'place' | 'stays' | 'ofYear' | 'year' | 'todayDay'> {
  readonly rows: Pick<ShownRecord['rows'], 'all'>;
}
/** What no sum holds, what is in two of them and what is not taken off, so that nobody takes the sums for right. */
export function SumsDoubted({ place, rows, stays, ofYear, year, todayDay }: DoubtedProps) {
  const those = (some: readonly Stay[]): string => some.map((stay) => stayed(stay, todayDay)).join('; ');
  const left = ofYear.filter(({ isImpossible }) => isImpossible);
  const unweighed = ofYear.filter(({ isHayUnweighed }) => isHayUnweighed);
  const isOfYear = ({ move }: Stay): boolean => ofYear.some((each) => each.move.id === move.id);
  const outside = hayOutside(rows.all, todayDay).filter(({ day }) => yearOf(dayIn(day)) === year);
  const grounds = groundsById(place);
  return (
    <>
      {left.length > 0 && <p class="problem">Not in the sums, because they went out before they came in: {those(left)}.</p>}
      {outside.length > 0 && (
        <p class="problem">
          Not in the sums, because this record has no stock there on that day:{' '}
          {outside
            .map(
              (hay) =>
                `hay on ${grounds.get(hay.paddockId)?.name ?? hay.paddockName ?? 'ground that was taken away'}, ${dayWords(dayIn(hay.day), todayDay)}`,
            )
            .join('; ')}
          .
        </p>
      )}
      {unweighed.length > 0 && (
        <p class="problem">Some hay has no weight, so it is not taken off: {those(unweighed)}. Tell at the line of that hay what a bale weighs.</p>
      )}
      <TwoPlaces pairs={twicePlaced(stays).filter((pair) => pair.some(isOfYear))} todayDay={todayDay} />
    </>
  );
}
/** `0.35 in`, and of how many days, where not all of them were read. */
const RainCell = ({ amountIn, readDays, days, system }: MonthRain & Pick<ShownRecord, 'system'>) => (
  <td>
    {printQuantity(amountIn, 'in', 2, system)}
    {readDays < days && ` (${readDays} of ${days} days)`}
  </td>
);
interface RainProps extends Pick<ShownRecord, 'year' | 'system' | 'todayDay'> {
  readonly rows: Pick<ShownRecord['rows'], 'all'>;
}
export function RainTable({ rows, year, system, todayDay }: RainProps) {
  const months = rainByMonth(rows.all, year, todayDay);
  const read = months.filter((each) => each !== undefined);
  if (read.length === 0) return null;
  const sumOf = (key: keyof MonthRain): number => read.reduce((sum, each) => sum + each[key], 0);
  const end = firstOfMonth(0, year + 1) - 1;
  const days = Math.min(end, Math.max(todayDay, ...rowsOf(rows.all, 'rain').map(({ day }) => dayIn(day)))) - firstOfMonth(0, year) + 1;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: who has no mouse scrolls it by keys
    <section class="record-table" tabIndex={0} aria-label="Rain of the year">
      <table>
        <caption>Rain that was read in {year}. Where not every day was read, it says how many were; an empty month was not read at all.</caption>
        <thead>
          <tr>
            {months.map((_, month) => (
              <th key={shortMonthName(month)} scope="col">
                {shortMonthName(month)}
              </th>
            ))}
            <th scope="col">All</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            {months.map((each, month) =>
              each === undefined ? <td key={shortMonthName(month)} /> : <RainCell key={shortMonthName(month)} {...each} system={system} />,
            )}
            <RainCell amountIn={sumOf('amountIn')} readDays={sumOf('readDays')} days={days} system={system} />
          </tr>
        </tbody>
      </table>
    </section>
  );
}

const late = (days: number): string => (days === 0 ? 'on the day' : `${daysWords(Math.abs(days))} ${days > 0 ? 'late' : 'early'}`);
const longer = (days: number): string => (days === 0 ? 'as long as planned' : `${daysWords(Math.abs(days))} ${days > 0 ? 'longer' : 'shorter'}`);
const taller = (gapIn: number | undefined, what: string, system: UnitSystem): string | undefined =>
  gapIn === undefined || gapIn === 0 ? undefined : `${heightWords(Math.abs(gapIn), system)} ${gapIn > 0 ? 'above' : 'below'} ${what}`;
function doneWords({ stay, lateDays, longerDays }: Planned, system: UnitSystem): string {
  if (stay === undefined || lateDays === undefined) return 'not done, or not written down';
  const pasture = stay.ground?.pasture;
  return [
    late(lateDays),
    stay.isOpen ? 'there now' : longerDays === undefined ? undefined : longer(longerDays),
    taller(heightGap(stay.move.heightInIn, pasture?.startHeightIn), 'the height to start at', system),
    taller(heightGap(stay.move.heightOutIn, pasture?.stopHeightIn), 'the stubble to leave', system),
  ]
    .filter((each) => each !== undefined)
    .join(', ');
}

/** What the record points at: the next paddock, the shortest rest, the same week twice, plan against deed; then the sums. */
export function RecordSums(shown: ShownRecord) {
  const { place, rows, stays, planned, year, todayDay, system } = shown;
  const shortest = shortestRest(stays, year);
  const again = sameWeek(stays, year);
  const ready = nextReady(place, rows.all, todayDay).filter(({ from }) => from !== 'hay');
  const grounds = groundsById(place);
  const plans = planned.filter(({ plan }) => plan.inDay.startsWith(String(year)));
  return (
    <>
      {rows.all.some(({ is }) => is === 'move') && year === yearOf(todayDay) && ready.length > 0 && (
        <>
          <h3>Next</h3>
          <ol class="record-next">
            {ready.slice(0, 6).map((each) => (
              <li key={each.ground.id}>
                <b>{each.ground.name}</b>: {readyWords(each, todayDay)}
              </li>
            ))}
          </ol>
        </>
      )}
      {shortest !== undefined && (
        <p>
          <b>Shortest rest of {year}:</b> {shortest.name}, {daysWords(shortest.restDays)}, ended {dayWords(shortest.inDay, todayDay)}. Start there
          last next spring.
        </p>
      )}
      {again.map(({ now, before }) => (
        <p key={now.move.id}>
          <b>{now.name} was grazed in the same week two springs running:</b> {dayWords(before.inDay, todayDay)} and {dayWords(now.inDay, todayDay)}.
          Start elsewhere next year.
        </p>
      ))}
      {plans.length > 0 && (
        <>
          <h3>Planned, and done</h3>
          <ul class="record-next">
            {plans.map((each) => {
              const ground = grounds.get(each.plan.paddockId)?.name;
              return (
                <li key={each.plan.id}>
                  <b>{ground ?? each.plan.paddockName ?? 'A paddock'}</b>, {dayWords(dayIn(each.plan.inDay), todayDay)}
                  {each.plannedDays < 0 ? `, ${cannotBe}` : ` for ${daysWords(each.plannedDays)}: ${doneWords(each, system)}`}
                </li>
              );
            })}
          </ul>
        </>
      )}
      <SumsTable {...shown} />
      <SumsDoubted {...shown} />
      <RainTable {...shown} />
    </>
  );
}
