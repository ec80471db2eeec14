import { checkList, tableChecks } from '../checks.ts';
import { needThere } from '../need.ts';
import {
  daylightHours,
  evaporationEquivalentMm,
  extraterrestrialRadiationMj,
  sunPosition,
  sunsetHourAngleRad,
} from './extraterrestrialRadiationMj.ts';

/** Latitude in degrees and day of the year. */
const places: Readonly<Record<string, readonly [latitudeDeg: number, day: number]>> = {
  '20°S,3-Sep': [-20, 246],
  'Rio,15-May': [-(22 + 54 / 60), 135],
  'Lyon,15-Jul': [45 + 43 / 60, 196],
  'Bangkok,15-Apr': [13 + 44 / 60, 105],
  'Uccle,6-Jul': [50 + 48 / 60, 187],
};

const examples = tableChecks({
  columns: ['dr', 'δ', 'ωs', 'Ra', 'mm', 'N'],
  text: `
    20°S,3-Sep      0.985  0.120  1.527  32.2   13.1  11.7
    Rio,15-May      -      -      -      25.1   -     10.9
    Lyon,15-Jul     -      -      -      40.55  -     -
    Bangkok,15-Apr  -      -      -      38.06  -     12.31
    Uccle,6-Jul     -      -      -      41.09  -     16.1
  `,
  what: (place, column) => `${column}, ${place.replace('-', ' ').replace(',', ', ')}`,
  ours: (place, column) => {
    const [latitudeDeg, day] = needThere('extraterrestrialRadiationMj', place, places[place]);
    if (column === 'dr') return sunPosition(day).inverseDistance;
    if (column === 'δ') return sunPosition(day).declinationRad;
    if (column === 'ωs') return sunsetHourAngleRad(latitudeDeg, day);
    if (column === 'N') return daylightHours(latitudeDeg, day);
    const radiation = extraterrestrialRadiationMj(latitudeDeg, day);
    return column === 'mm' ? evaporationEquivalentMm(radiation) : radiation;
  },
  source: 'allen-1998',
  where: 'examples 8, 9, 10, 17, 18, 20',
  seen: 'print',
});

const rounded = tableChecks({
  columns: ['Ra'],
  text: `
    Lyon,15-Jul     40.6
    Bangkok,15-Apr  38.1
  `,
  what: (place) => `Ra, ${place.replace('-', ' ').replace(',', ', ')}`,
  ours: (place) => extraterrestrialRadiationMj(...needThere('extraterrestrialRadiationMj', place, places[place])),
  source: 'allen-1998',
  where: 'examples 15 and 16',
  seen: 'print',
});

const mid = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349];
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const dayOf = (month: string): number => needThere('extraterrestrialRadiationMj', month, mid[months.indexOf(month)]);

/** The annex prints these tables as pictures in the copy that was read; the cells are Eq. 21 and 34 worked out by another program. */
const byLatitude = tableChecks({
  columns: months,
  text: `
     0   36.2  37.4  37.9  36.8  34.8  33.4  33.9  35.6  37.2  37.3  36.3  35.6
     20  26.8  30.6  34.7  37.9  39.3  39.5  39.3  38.3  35.7  31.7  27.6  25.6
     30  21.1  25.8  31.4  36.8  40.0  41.2  40.5  38.0  33.3  27.5  22.2  19.7
     40  15.0  20.4  27.2  34.7  39.7  41.8  40.8  36.7  29.9  22.5  16.3  13.6
     45  11.9  17.5  24.8  33.2  39.2  41.9  40.6  35.6  27.9  19.7  13.2  10.5
     50  8.9   14.4  22.2  31.5  38.5  41.7  40.2  34.3  25.6  16.8  10.2  7.5
     60  3.3   8.3   16.6  27.5  36.7  41.2  39.1  31.3  20.5  10.8  4.4   2.2
    -30  43.1  39.6  34.3  27.2  21.4  18.5  19.6  24.4  31.2  37.5  42.0  43.9
  `,
  what: (latitude, month) => `Ra at ${latitude}° of latitude, 15 ${month}`,
  ours: (latitude, month) => extraterrestrialRadiationMj(Number(latitude), dayOf(month)),
  source: 'allen-1998',
  where: 'eq. 21, worked out apart',
  seen: 'computed',
});
const daylight = tableChecks({
  columns: months,
  text: `
     40  9.5   10.5  11.7  13.1  14.2  14.8  14.6  13.6  12.2  10.9  9.7   9.2
    -30  13.7  13.0  12.2  11.3  10.5  10.1  10.3  10.9  11.8  12.8  13.5  13.9
  `,
  what: (latitude, month) => `Daylight at ${latitude}° of latitude, 15 ${month}`,
  ours: (latitude, month) => daylightHours(Number(latitude), dayOf(month)),
  source: 'allen-1998',
  where: 'eq. 34, worked out apart',
  seen: 'computed',
});

export default checkList('extraterrestrialRadiationMj', [...examples, ...rounded, ...byLatitude, ...daylight]);
