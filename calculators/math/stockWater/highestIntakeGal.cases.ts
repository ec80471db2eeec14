import { checkList } from '../checks.ts';
import { highestIntakeGal } from './highestIntakeGal.ts';

export default checkList('highestIntakeGal', [
  {
    what: 'cow of 1,250 lb at 95 degrees by the rule of 0.4 gallons a degree, gallons a day',
    ours: () => highestIntakeGal('cattle', 1250, 95),
    printed: '24',
    source: 'noble-water-1999',
    where: 'fourth paragraph',
    seen: 'print',
  },
  {
    what: 'calf of 500 lb at 90 degrees, gallons a day',
    ours: () => highestIntakeGal('cattle', 500, 90),
    printed: '10.6',
    source: 'beef-summer-water',
    where: 'daily water intake in gallons',
    seen: 'print',
  },
  {
    what: 'finishing cattle of 800 lb at 90 degrees, gallons a day',
    ours: () => highestIntakeGal('cattle', 800, 90),
    printed: '17.5',
    source: 'gould-fs1090',
    where: 'water intake by temperature',
    seen: 'transcription',
  },
  {
    what: 'goat, the high end, gallons on a cool day',
    ours: () => highestIntakeGal('sheep-or-goats', 120, 60),
    printed: '4',
    source: 'mwps14-new-hampshire',
    where: 'drinking water needs of farm animals',
    seen: 'transcription',
  },
]);
