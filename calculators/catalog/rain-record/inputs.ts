import { exampleRain } from '../../asks/exampleRain.ts';
import { rainGauge } from '../../asks/rainGauge.ts';
import { choice, date, months, number } from '../../kit/inputs.ts';
import { record } from '../../kit/record/record.ts';

export const inputs = {
  compareWith: choice('What do you compare with', 'record', {
    options: {
      record: { label: 'My own rain record', short: 'my own record' },
      medians: { label: 'The nearest station’s medians', short: 'station medians' },
    },
    ask: 'No record yet? The twelve monthly medians of the nearest station give a percentage, and nothing more. Start a record today.',
    offeredBy: 'rain.from',
  }),
  rainRecord: record({
    ...rainGauge,
    maxRows: 60_000,
    default: exampleRain,
    standIn: 'This is the rain of the invented Two Bench place, not yours. Put your own record in, here or after opening a link.',
    shownWhen: { compareWith: 'record' },
    help: 'Paste it, or type a day and its rain on each line: 2026-03-02, 0.45. A year and its twelve months work too.',
    field:
      'Read the gauge at one hour every day, and write a 0 on dry days: a gap can then be told from a dry day. Write T for a trace, M for a day that was not read.',
    ask: 'No record of your own? Ask the nearest weather station for its daily or monthly rain. A station some miles off is better than a guess, and it is still not your rain.',
    offeredBy: 'rain.record',
  }),
  // It stays with the example's record, which ends in 2025.
  untilDay: date('Up to which day', '2025-09-30', {
    occurs: 'fixed',
    help: 'A record by months goes up to the end of a month.',
    offeredBy: 'rain.lastDay',
  }),
  windowMonths: number('Months to look back over', 'k', 'mo', [1, 24], 6, {
    whole: true,
    help: 'One to three for topsoil and this growth, six for a season, twelve or more for ponds and wells.',
  }),
  leastPercent: number('Least share of a month’s days read, for it to count', 'r', 'pct', [50, 100], 90, {
    help: 'A month with fewer days read is left out, with its whole period. Rain on the days that are missing is not made up.',
    shownWhen: { compareWith: 'record' },
  }),
  ownYear: choice('In the record that judges it, this year is', 'left-out', {
    options: { 'left-out': 'left out', 'counted-in': 'counted in' },
    convention: true,
    since: { version: 2, before: 'counted-in' },
    shownWhen: { compareWith: 'record' },
    help: 'A year counted among its own judges pulls the middle toward itself and looks a little more usual than it is. Published tables often count it in.',
  }),
  ownRainIn: number('Your rain in those months', 'P', 'in', [0, 400], 16.4, {
    shownWhen: { compareWith: 'medians' },
    field: 'Add up your gauge. No gauge: straight-sided cans, emptied after each rain.',
    offeredBy: 'rain.halfYear',
  }),
  stationIn: months('Median rain of the month at the station', 'm', 'in', [0, 60], [2.4, 2.4, 3.2, 3.6, 4.9, 4.2, 2.6, 2.1, 2.9, 2.7, 3.1, 2.4], {
    shownWhen: { compareWith: 'medians' },
    help: 'Medians, not means: half of the years had less.',
    offeredBy: 'rain.station',
  }),
};
