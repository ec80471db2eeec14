import { amount, table, word } from '../../kit/quantities.ts';

const count = (label: string, symbol: string, digits = 0) => amount(label, symbol, 'count', digits);

export const quantities = {
  holds: word('Does it hold together?', {
    damp: 'Can’t be judged: the samples were damp',
    well: 'It holds together well in water',
    partly: 'It holds for a while and then gives way',
    poorly: 'It falls apart in water',
  }),
  comparable: word('Can the two places be compared?', { yes: 'Yes', no: 'No: they feel different, so texture and care can’t be told apart' }),
  lines: table('Each sample', ['number', 'seen', 'soilClass'], {
    number: count('Sample', 'k'),
    seen: word('What was seen', {
      dry: 'gone before it was wet',
      'by-5': 'gone within 5 seconds',
      'by-30': 'gone by 30 seconds',
      'by-300': 'gone by 5 minutes',
      crumbs: 'dips left less than a tenth',
      some: 'dips left a tenth to a quarter',
      half: 'dips left a quarter to three quarters',
      most: 'dips left three quarters or more',
    }),
    soilClass: count('Class', 'c'),
    gapSquare: count('Squared gap from the mean', 'g', 3),
    isTop: count('Class 6', 'c_6'),
    isMiddle: count('Class 4 or 5', 'c_{45}'),
    isLow: count('Class 3', 'c_3'),
    isGone: count('Class 0 to 2', 'c_{02}'),
  }),
  count: count('Samples', 'n'),
  classSum: count('Classes added up', 'C'),
  gapSum: count('Squared gaps added up', 'G', 3),
  topCount: count('Stayed whole (class 6)', 'n_6'),
  middleCount: count('Gave way in the dips (4, 5)', 'n_{45}'),
  lowCount: count('Went within 5 minutes or in the dips (3)', 'n_3'),
  goneCount: count('Went within 30 seconds (0 to 2)', 'n_{02}'),
  meanClass: count('Mean class, 0 falls apart to 6 stays whole', '\\bar c', 1),
  lowestClass: count('Lowest class', 'c_{low}'),
  highestClass: count('Highest class', 'c_{high}'),
  topClassPercent: amount('Share that stayed whole (class 6)', 'p_6', 'pct'),
  spread: count('Spread of the classes (standard deviation)', 's', 1),
  studentTimes: count('Student’s t', 't', 2),
  scatterClasses: count('Between two such places, a difference in classes under this is scatter', 'd', 1),
} as const;
