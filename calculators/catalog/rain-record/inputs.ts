import { rainGauge } from '../../asks/rainGauge.ts';
import { choice, date, months, number } from '../../kit/inputs.ts';
import { record } from '../../kit/record/record.ts';

/** Rain of the invented Two Bench place by month: its thirty years of days, added up. A test holds the sums against the days. */
export const exampleRain = `year,Jan (in),Feb,Mar,Apr,May,Jun,Jul,Aug,Sep,Oct,Nov,Dec
1996,2.63,2.44,2.29,3.55,5.43,6.05,4.49,2.38,3.36,3.07,2.37,3.34
1997,1.02,2.34,3.74,7.95,4.00,10.19,1.97,1.70,3.60,2.67,4.85,1.39
1998,2.42,3.72,5.05,4.20,2.05,3.17,1.30,1.72,0.73,1.88,1.93,3.94
1999,1.94,1.33,1.45,1.54,4.72,4.75,3.47,1.61,2.87,2.36,0.05,1.68
2000,4.42,2.99,2.29,5.29,5.72,5.36,3.86,4.71,4.50,0.05,1.60,2.42
2001,4.04,3.01,3.91,3.75,9.46,5.71,2.58,1.92,3.68,4.24,1.67,1.91
2002,1.21,3.11,5.04,4.07,6.92,9.53,1.35,6.27,3.10,1.53,3.97,2.75
2003,1.73,1.78,4.11,2.05,4.89,10.22,4.99,0.88,3.15,5.80,2.25,3.49
2004,2.14,0.37,3.21,1.74,3.92,6.33,3.79,3.83,5.27,3.28,6.52,2.03
2005,2.59,4.18,2.89,2.72,4.36,5.59,0.67,1.05,0.71,3.22,3.03,2.63
2006,1.44,3.46,4.42,0.71,8.01,1.70,2.09,2.61,0.87,2.37,3.38,4.22
2007,2.71,3.30,0.30,1.85,5.41,3.86,0.94,0.43,0.65,2.14,3.88,2.09
2008,2.38,2.96,3.67,3.13,2.13,6.34,2.37,4.40,0.22,2.70,3.20,1.58
2009,4.96,1.26,4.33,5.46,3.76,4.10,3.65,2.42,2.23,2.16,3.28,2.64
2010,1.59,3.06,2.52,5.87,4.49,3.03,5.00,3.85,2.70,3.00,5.46,5.33
2011,2.97,0.54,4.67,5.75,5.86,3.43,3.60,0.75,1.18,4.11,6.68,3.21
2012,3.66,1.65,4.93,3.10,3.82,3.85,6.87,1.42,4.58,1.04,2.35,2.02
2013,1.17,2.45,5.84,3.69,5.09,3.43,2.00,4.57,4.47,1.42,1.50,1.15
2014,0.28,1.81,2.03,3.78,7.24,3.09,2.06,2.48,7.79,2.97,3.14,1.60
2015,1.97,2.16,1.61,0.87,5.70,2.42,2.70,3.14,2.08,2.76,2.45,1.50
2016,3.51,4.05,2.84,3.63,5.56,5.86,2.86,0.52,2.44,4.64,3.06,2.12
2017,3.69,3.13,3.21,2.37,6.80,3.26,1.58,1.53,1.12,1.87,2.42,2.30
2018,4.28,1.15,3.49,4.54,8.02,8.39,2.63,1.90,2.88,6.38,1.88,1.72
2019,1.69,0.73,3.38,2.55,4.83,6.43,5.00,1.44,5.22,0.54,3.81,2.70
2020,3.01,1.45,1.69,4.61,4.63,4.20,1.41,4.31,3.00,1.26,4.82,1.50
2021,6.52,2.37,3.24,3.25,3.51,4.40,1.67,2.69,1.30,1.01,2.64,3.24
2022,2.44,1.03,1.60,2.03,6.21,2.87,2.05,5.54,1.29,5.02,4.76,1.26
2023,0.75,3.54,3.41,4.77,3.72,4.06,2.90,1.42,5.42,3.95,6.25,4.29
2024,0.47,0.43,0.67,3.25,2.37,3.99,1.48,2.30,3.65,1.72,3.10,3.84
2025,1.79,0.94,2.47,4.83,3.54,2.60,3.01,0.73,1.73,7.08,1.97,2.90
`;

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
  }),
  stationIn: months('Median rain of the month at the station', 'm', 'in', [0, 60], [2.4, 2.4, 3.2, 3.6, 4.9, 4.2, 2.6, 2.1, 2.9, 2.7, 3.1, 2.4], {
    shownWhen: { compareWith: 'medians' },
    help: 'Medians, not means: half of the years had less.',
    offeredBy: 'rain.station',
  }),
};
