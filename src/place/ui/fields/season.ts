import { monthsOnTo } from '../../../../calculators/units/months.ts';
import type { Place } from '../../model/place.ts';
import { curves, fallFlushes, groundWords, rainClasses } from '../../model/words.ts';
import { amount, choice, count, month, monthDay } from './field.ts';
import { yardstickField } from './yardstick.ts';

/** Forms take one growth of at most 12 months, over New Year too, and are given none whose months do not follow each other. */
function outOfOrder({ growth = {} }: Place): string {
  const { startMonth, bestMonth, quitMonth } = growth;
  if (startMonth === undefined || bestMonth === undefined || quitMonth === undefined) return '';
  return monthsOnTo(startMonth, bestMonth) > monthsOnTo(startMonth, quitMonth)
    ? 'Going on from the month in which growth starts, the best one comes next and then the last, over New Year if need be: 12 months at most. In another order no form takes them, and each keeps its example there.'
    : '';
}
const answers = ['growth.curve', 'answers'] as const;
export const seasonGroups = [
  {
    title: 'Days of every year',
    fields: [
      monthDay('season.turnInDay', 'Turn-in'),
      monthDay('season.endDay', 'Last day on grass'),
      monthDay('season.hayFromDay', 'First day on hay'),
      monthDay('season.frostDay', 'First killing frost'),
    ],
  },
  {
    title: 'When the grass grows',
    fields: [
      choice('growth.curve', 'When the grass grows', curves, {
        answers: 'Four answers of my own',
        nd0002: 'Cool-season grass, North Dakota',
        'smooth-brome-kansas': 'Smooth brome with nitrogen, northeast Kansas',
        co6707: 'Warm-season grass, eastern Colorado',
        'mlra69-fine-a': 'Mixed warm and cool season, southeastern Colorado',
      }),
      month('growth.startMonth', 'Growth starts in', { shownWhen: answers }),
      month('growth.bestMonth', 'It is best in', { shownWhen: answers }),
      month('growth.quitMonth', 'It quits after', { shownWhen: answers }),
      choice('growth.fallFlush', 'Growth in the fall', fallFlushes, {}, { shownWhen: answers }),
    ],
    problem: outOfOrder,
  },
  {
    title: 'How you graze',
    fields: [
      count('grazing.stayDays', 'Days in one paddock', 'd', [1, 366], 4),
      count('grazing.herdCount', 'Herds', 'count', [1, 50], 1),
      count('grazing.restDays', 'Rest you plan for', 'd', [1, 1000], 45),
      yardstickField,
    ],
  },
  {
    title: 'Rain, heat and where you are',
    fields: [
      amount('yearRainIn', 'Rain in a usual year', 'in', [1, 200], 30),
      choice('rainClass', 'Rain in a usual year, by class', rainClasses, {
        dry: 'Under 25 in (635 mm)',
        middle: '25 to 40 in (635 to 1,015 mm)',
        wet: 'Over 40 in (1,015 mm)',
      }),
      amount('rainFactor', 'Rain factor (R)', 'ratio', [5, 1000], 150, { help: 'From your conservation office, where you know it.' }),
      amount('hotF', 'Hottest day to plan for', 'f', [40, 130], 95),
      count('latitudeDeg', 'Latitude, to the degree', 'ratio', [-60, 70], 38, { help: 'A degree is 69 miles: no place can be told from it.' }),
    ],
  },
  { title: 'Words', fields: [choice('groundWord', 'You call a piece of fenced ground a', groundWords)] },
];
/** January first. */
export const stationField = amount('stationMonthsIn', 'Median rain', 'in', [0, 60], 2.5);
