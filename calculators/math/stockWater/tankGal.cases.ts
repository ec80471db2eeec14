import { checkList, tableChecks } from '../checks.ts';
import { litersPerCubicFoot } from '../water/waterVolume.ts';
import { roundTankGal, tankGal } from './tankGal.ts';

/** The table is in Imperial gallons: 4.54609 liters, by definition. */
const imperialPerUs = ((231 / 12 ** 3) * litersPerCubicFoot) / 4.54609;

export default checkList('tankGal', [
  ...tableChecks({
    columns: ['3', '4', '5'],
    text: `
      6x3     336   448   560
      7x6     785  1047  1308
      9x5     841  1121  1402
      10x10  1869  2492  3116
      12x7   1570  2093  2617
    `,
    what: (size, depth) => `tank of ${size} ft, ${depth} ft deep, Imperial gallons`,
    ours: (size, depth) => {
      const [length = '', width = ''] = size.split('x');
      return tankGal(Number(length), Number(width), Number(depth)) * imperialPerUs;
    },
    source: 'weathers-1913',
    where: 'number of gallons in square-built tanks, five of its sizes',
    seen: 'transcription',
    differs: (size, depth) => {
      if (depth === '5') return { by: '1.6', because: 'The last column stands on a rounded gallon: it is off by up to 1.6 gallons.' };
      return size === '7x6' && depth === '4' ? { by: '0.6', because: 'Exactly 1,046.4; the table prints 1,047.' } : undefined;
    },
  }),
  {
    what: 'round tank, 4 ft across and 3 ft deep, Imperial gallons',
    ours: () => roundTankGal(4, 3) * imperialPerUs,
    printed: '235',
    source: 'weathers-1913',
    where: 'circular tanks or wells',
    seen: 'transcription',
  },
]);
