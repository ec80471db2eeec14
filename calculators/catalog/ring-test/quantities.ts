import { amount, table, word } from '../../kit/quantities.ts';

/** Two digits count: tight ground takes hundredths of an inch an hour, a worm hole a hundred inches. */
const rate = (label: string, symbol: string) => ({ ...amount(label, symbol, 'in/hr', 3), significant: 2 }) as const;
const inches = (label: string, symbol: string) => amount(label, symbol, 'in', 2);
const bare = (label: string, symbol: string, digits = 3) => amount(label, symbol, 'count', digits);
const times = (label: string, symbol: string, significant = 2) => ({ ...amount(label, symbol, 'ratio', 3), significant }) as const;

export const quantities = {
  judged: word('Can this test be judged?', {
    judged: 'Yes',
    'first-only': 'Not yet: pour again into the same rings',
    cracks: 'No: water ran down cracks',
    burrow: 'No: water ran into a burrow',
    leak: 'No: water got out beside the ring',
    frozen: 'No: the ground was frozen',
    standing: 'No: water stood there already',
  }),
  ringIn: inches('Inside width of the ring', 'b'),
  depthIn: inches('Depth of one pouring', 'z'),
  lines: table('Each ring', ['pouringsCount', 'totalIn', 'firstInPerHr', 'ringInPerHr'], {
    pouringsCount: bare('Pourings', 'n_p', 0),
    firstMin: amount('First pouring', 't_1', 'min', 1),
    lastMin: amount('Last pouring', 't', 'min', 1),
    leftIn: inches('Left at the stop', 'l'),
    totalIn: inches('Soaked in', 'F'),
    firstInPerHr: rate('First pouring', 'r_1'),
    ringInPerHr: rate('Last pouring', 'r'),
    logRate: bare('Its logarithm', '\\ln r'),
    gapSquare: bare('Squared gap from their mean', 'g'),
  }),
  ringsCount: bare('Rings', 'n', 0),
  logSum: bare('Logarithms added up', 'L'),
  gapSum: bare('Squared gaps added up', 'S'),
  middleInPerHr: rate('Intake of this ground (geometric mean of the rings)', '\\bar r'),
  slowestInPerHr: rate('Slowest ring', 'r_{low}'),
  fastestInPerHr: rate('Fastest ring', 'r_{high}'),
  inchMin: { ...amount('Time for an inch to go in', 't_{in}', 'min', 1), significant: 2 },
  rateClass: word('Soil-survey class of the ring’s own rate, which reads high', {
    impermeable: 'Impermeable',
    'very-slow': 'Very slow',
    slow: 'Slow',
    'moderately-slow': 'Moderately slow',
    moderate: 'Moderate',
    'moderately-rapid': 'Moderately rapid',
    rapid: 'Rapid',
    'very-rapid': 'Very rapid',
  }),
  pondedIn: inches('Mean depth of the water in the ring', 'H'),
  overLowTimes: times('A ring reads high by, coarse soil', 'o_{low}', 3),
  overHighTimes: times('A ring reads high by, fine soil', 'o_{high}', 3),
  straightLowInPerHr: rate('Straight down, fine soil', 'K_{low}'),
  straightHighInPerHr: rate('Straight down, coarse soil', 'K_{high}'),
  otherLines: table('The other test', {
    thenInPerHr: rate('Rate', 'r_0'),
    logRate: bare('Its logarithm', '\\ln r_0'),
    gapSquare: bare('Squared gap from their mean', 'g_0'),
  }),
  othersCount: bare('Rings of the other test', 'n_0', 0),
  otherLogSum: bare('Their logarithms added up', 'L_0'),
  otherGapSum: bare('Their squared gaps added up', 'S_0'),
  otherInPerHr: rate('Intake at the other test (geometric mean)', '\\bar r_0'),
  spread: bare('Spread of the rings, on logarithms', 's'),
  studentTimes: bare('Student’s t', 't'),
  verdict: word('Is it more than chance?', {
    'too-few': 'Can’t tell: it takes two rings or more on both sides',
    faster: 'Yes: this takes water faster',
    slower: 'Yes: this takes water slower',
    'perhaps-faster': 'Perhaps faster: past the scatter of these rings, within what rings usually scatter',
    'perhaps-slower': 'Perhaps slower: past the scatter of these rings, within what rings usually scatter',
    chance: 'It can be chance',
  }),
  ratioTimes: times('This rate is so many times the other', 'q'),
  lowRatioTimes: times('Low end', 'q_{low}'),
  highRatioTimes: times('High end', 'q_{high}'),
  scatterTimes: times('Two such tests of one ground can come out so many times apart by chance', 'q_{chance}'),
  byPouring: table('Pouring by pouring', {
    pouring: bare('Pouring', 'k', 0),
    fastInPerHr: rate('Fastest ring', 'r_{high}'),
    middlingInPerHr: rate('Geometric mean', '\\bar r'),
    slowInPerHr: rate('Slowest ring', 'r_{low}'),
  }),
} as const;
