const count = (label: string, symbol: string, digits = 0) => ({ kind: 'number', label, symbol, unit: 'count', digits }) as const;
const word = <W extends string>(label: string, words: Readonly<Record<W, string>>) => ({ kind: 'word', label, words }) as const;

export const quantities = {
  holds: word('Does it hold together?', {
    damp: 'Can’t be judged: the samples were damp',
    well: 'It holds together well in water',
    partly: 'It holds for a while and then gives way',
    poorly: 'It falls apart in water',
  }),
  comparable: word('Can the two places be compared?', { yes: 'Yes', no: 'No: they feel different, and sand never reaches what loam does' }),
  lines: {
    kind: 'rows',
    label: 'Each sample',
    shown: ['number', 'seen', 'soilClass'],
    columns: {
      number: count('Sample', 'k'),
      seen: word('Half of it gone', {
        dry: 'before it was wet',
        'by-5': 'within 5 seconds',
        'by-30': 'by 30 seconds',
        'by-300': 'by 5 minutes',
        held: 'not within 5 minutes',
      }),
      soilClass: count('Class', 'c'),
      gapSquare: count('Squared gap from the mean', 'g', 3),
      isTop: count('Class 6', 'c_6'),
      isMiddle: count('Class 4 or 5', 'c_{45}'),
      isLow: count('Class 3', 'c_3'),
      isGone: count('Class 0 to 2', 'c_{02}'),
    },
  },
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
  topClassPercent: { kind: 'number', label: 'Share that stayed whole (class 6)', symbol: 'p_6', unit: 'pct', digits: 0 },
  spread: count('Spread of the classes (standard deviation)', 's', 1),
  studentTimes: count('Student’s t', 't', 2),
  scatterClasses: count('Between two such places, a difference in classes under this is scatter', 'd', 1),
} as const;
