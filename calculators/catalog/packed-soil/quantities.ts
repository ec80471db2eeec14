import { amount, table, word } from '../../kit/quantities.ts';

const density = (label: string, symbol: string) => amount(label, symbol, 'g/cc', 2);
const millilitres = (label: string, symbol: string, digits = 0) => amount(label, symbol, 'ml', digits);

export const quantities = {
  packed: word('Is it packed?', {
    packed: 'Yes: roots suffer, by every list that tells from when on',
    'lists-differ': 'Perhaps: roots suffer by some lists, not by others',
    between: 'No, but tighter than the best',
    open: 'No: loose enough for roots by every list',
  }),
  canMl: millilitres('Volume of the can', 'V_{can}', 1),
  lines: table('Each core', ['dryG', 'volumeMl', 'stoneVolumePercent', 'wholeGPerCm3', 'fineGPerCm3'], {
    coreG: amount('Weight as given', 'm', 'g', 0),
    waterPercent: amount('Water', 'u', 'pct', 1),
    holeMl: millilitres('Water in the hole', 'V_{hole}'),
    volumeMl: millilitres('Volume', 'V'),
    dryG: amount('Dry weight', 'd', 'g', 0),
    stonesG: amount('Stones', 's', 'g', 0),
    jarMl: millilitres('Water that the stones pushed up', 'V_{jar}'),
    stonesMl: millilitres('Volume of the stones', 'v', 1),
    wholeGPerCm3: density('Density with stones', '\\rho_{all}'),
    fineGPerCm3: density('Density of the soil between them', '\\rho'),
    stoneVolumePercent: amount('Stones by volume', 'p_s', 'pct', 0),
    solidMl: millilitres('Solid soil', 'V_s', 1),
    poreMl: millilitres('Pores', 'V_p', 1),
  }),
  coresCount: amount('Cores', 'n', 'count', 0),
  totalGPerCm3: density('Densities added up', '\\Sigma\\rho'),
  fineGPerCm3: density('Density of the soil (bulk density), mean of the cores', '\\bar\\rho'),
  lowGPerCm3: density('Loosest core', '\\rho_{low}'),
  highGPerCm3: density('Tightest core', '\\rho_{high}'),
  porosityPercent: amount('Pores, where air and water go', 'f', 'pct', 0),
  allMl: millilitres('All cores together', 'V_{all}'),
  allPoreMl: millilitres('Pores in them', 'V_{pores}'),
  allSolidMl: millilitres('Solid soil in them', 'V_{solid}'),
  allStoneMl: millilitres('Stones in them', 'V_{stones}'),
  limits: table('What each list says for this texture', {
    list: word('List', {
      'by-class': 'Illinois lecture',
      'critical-range': 'Florida critical range',
      'three-groups': 'Conservation service sheet',
      'seven-rows': 'Arshad and others',
    }),
    limit: word('Limit', { ideal: 'best for roots below', suffer: 'roots suffer from', stop: 'roots kept out above' }),
    limitGPerCm3: density('At', '\\rho_{limit}'),
    side: word('Your mean', { past: 'past it', short: 'below it' }),
  }),
  stoppedPercent: amount('Pushes that met hard ground', 'q', 'pct', 0),
  medianStopIn: amount('Middle depth where they met it', 'z_{mid}', 'in', 0),
  pushesCount: amount('Pushes', 'n_p', 'count', 0),
  probeSays: word('The probe says', {
    'not-pushed': 'No probe was pushed',
    'too-dry': 'Nothing: the soil was too dry',
    'too-wet': 'Nothing: the soil was too wet',
    little: 'Little hard ground',
    slight: 'Some hard ground',
    moderate: 'A good deal of hard ground',
    severe: 'Hard ground nearly everywhere',
  }),
} as const;
