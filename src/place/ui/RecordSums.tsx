import { yearOf } from '../../../calculators/units/days.ts';
import { shortMonthName } from '../../../calculators/units/months.ts';
import { printNumber, printQuantity } from '../../../calculators/units/printQuantity.ts';
import type { UnitSystem } from '../../../calculators/units/units.ts';
import { dayIn } from '../record/days.ts';
import { nextReady } from '../record/nextReady.ts';
import { heightGap, type Planned } from '../record/planned.ts';
import { sameWeek, shortestRest } from '../record/pointed.ts';
import { type Stay, twicePlaced } from '../record/stays.ts';
import { groundYears, rainByMonth } from '../record/years.ts';
import { groundWord } from './groundWord.ts';
import { daysWords, dayWords, heightWords, readyWords } from './recordWords.ts';
import type { ShownRecord } from './shownRecord.ts';

const tenth = (value: number | undefined): string => (value === undefined ? '' : printNumber(value, 1));
const acres = (areaAc: number | undefined, system: UnitSystem): string => (areaAc === undefined ? '' : printQuantity(areaAc, 'ac', 1, system));

/** Sums a paddock, with what hay covered told beside what grass gave. */
export function SumsTable({ place, stays, year, system }: Pick<ShownRecord, 'place' | 'stays' | 'year' | 'system'>) {
  const word = groundWord(place);
  const sums = groundYears(stays, year);
  if (sums.length === 0) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: who has no mouse scrolls it by keys
    <section class="record-table" tabIndex={0} aria-label="Sums of the year">
      <table>
        <caption>
          {year}, {word.one} by {word.one}
        </caption>
        <thead>
          <tr>
            {[word.head, 'Size', 'Stays', 'Days', 'Stock-days an acre, off grass', 'With hay', 'Pounds an acre', 'Hay fed, lb dry'].map((head) => (
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
              <td>{tenth(each.stockDaysPerAc)}</td>
              <td>{tenth(each.withHayPerAc)}</td>
              <td>{each.lbPerAc === undefined ? '' : printNumber(Math.round(each.lbPerAc), 0)}</td>
              <td>{each.hayLb === 0 ? '' : printNumber(Math.round(each.hayLb), 0)}</td>
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
/** What no sum holds and what is in two of them, so that nobody takes the sums for right. */
export function SumsDoubted({ stays, year, todayDay }: Pick<ShownRecord, 'stays' | 'year' | 'todayDay'>) {
  const isOfYear = ({ inDay }: Stay): boolean => yearOf(inDay) === year;
  const left = stays.filter((stay) => stay.isImpossible && isOfYear(stay));
  return (
    <>
      {left.length > 0 && (
        <p class="problem">Not in the sums, because they went out before they came in: {left.map((stay) => stayed(stay, todayDay)).join('; ')}.</p>
      )}
      <TwoPlaces pairs={twicePlaced(stays).filter((pair) => pair.some(isOfYear))} todayDay={todayDay} />
    </>
  );
}
export function RainTable({ rows, year, system }: Pick<ShownRecord, 'rows' | 'year' | 'system'>) {
  const months = rainByMonth(rows.all, year);
  if (months.every((each) => each === undefined)) return null;
  const total = months.reduce<number>((sum, each) => (each === undefined ? sum : sum + each), 0);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: who has no mouse scrolls it by keys
    <section class="record-table" tabIndex={0} aria-label="Rain of the year">
      <table>
        <caption>Rain that was read in {year}. An empty month was not read.</caption>
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
            {months.map((each, month) => (
              <td key={shortMonthName(month)}>{each === undefined ? '' : printQuantity(each, 'in', 2, system)}</td>
            ))}
            <td>{printQuantity(total, 'in', 2, system)}</td>
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
  const ready = nextReady(place, rows.all, todayDay);
  const plans = planned.filter(({ plan }) => plan.inDay.startsWith(String(year)));
  const unweighed = stays.some(({ inDay, isHayUnweighed }) => yearOf(inDay) === year && isHayUnweighed);
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
              const ground = shown.stays.find(({ move }) => move.paddockId === each.plan.paddockId)?.name;
              return (
                <li key={each.plan.id}>
                  <b>{ground ?? each.plan.paddockName ?? 'A paddock'}</b>, {dayWords(dayIn(each.plan.inDay), todayDay)} for{' '}
                  {daysWords(each.plannedDays)}: {doneWords(each, system)}
                </li>
              );
            })}
          </ul>
        </>
      )}
      <SumsTable {...shown} />
      <SumsDoubted {...shown} />
      {unweighed && <p>Some hay has no weight, so it is not taken off. Tell what a bale weighs at its line below.</p>}
      <RainTable {...shown} />
    </>
  );
}
