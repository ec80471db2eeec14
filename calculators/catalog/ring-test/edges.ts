import { always, defineEdges, edge, tells, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

/** One ring in which a pouring stands an inch deep, to a thousandth: an inch in 30 minutes is 2 in an hour. */
const inch = 'bore=6in&water=463.333ml';
const oneRing = `${inch}&rings.pours=once&rings.end=gone`;
const filled = 'bore-from=filled';
const visit = 'beside=visit';
/** Two rings of the other test alike, the third moved. */
const then = (alike: number, third: number): string => `others.then=${alike}in/hr,${alike}in/hr,${third}in/hr`;

export default defineEdges(definition, {
  limits: {
    boreIn: [2, 48],
    fillWaterMl: [50, 100_000],
    fillDepthIn: [0.5, 24],
    insertedIn: [0.5, 12],
    waterMl: [20, 100_000],
    'rings.firstMin': [0.05, 1440],
    'rings.secondMin': [0.05, 1440],
    'rings.thirdMin': [0.05, 1440],
    'rings.leftIn': [0, 24],
    'others.thenInPerHr': [0.001, 2000],
  },
  edges: [
    always('Wear safety glasses'),
    edge('Dry ground drinks the first', { on: 'rings.pours=once,twice,twice', raised: 'moisture=dry', silent: 'moisture=moist' }),
    edge('Water that runs down a', { raised: 'site=cracks', silent: 'site=none' }),
    edge('Water that runs down a', { raised: 'site=burrow', silent: 'site=none' }),
    edge('Water that runs down a', { raised: 'site=leak', silent: 'site=standing' }),
    edge('Frozen or flooded ground', { raised: 'site=frozen', silent: 'site=none' }),
    edge('Frozen or flooded ground', { raised: 'site=standing', silent: 'site=leak' }),
    edge('One pouring stands far from', { on: 'bore=6in', raised: 'water=231.6ml', silent: 'water=231.7ml' }),
    edge('One pouring stands far from', { on: 'bore=6in', raised: 'water=926.7ml', silent: 'water=926.6ml' }),
    edge('A ring was poured only', { raised: 'rings.pours=once,twice,twice', silent: 'rings.pours=twice,twice,twice' }),
    edge('These rings agree better than', { on: visit, raised: then(0.6, 0.7), silent: then(0.6, 0.69) }),
    edge('Wet ground reads slow.', { raised: 'moisture=wet', silent: 'moisture=moist' }),
    edge('Fewer than three rings.', { raised: 'rings.first=4min,3min', silent: 'rings.first=4min,3min,7min' }),
    edge('The two tests were made', { on: visit, raised: 'alike=no', silent: 'alike=yes' }),
    // A ring 2 in wide and 3 in deep holds 154.4 mL, one of 48 in 88,960.
    edge('By this water and depth', { on: filled, raised: 'fill-water=154.4ml', silent: 'fill-water=154.5ml' }),
    edge('By this water and depth', { on: `${filled}&water=44000ml`, raised: 'fill-water=88960ml', silent: 'fill-water=88959ml' }),
    // In a bore of 6 in a tenth of an inch is 46.3 mL, a foot 5,560.
    edge('In this ring that much', { on: 'bore=6in', raised: 'water=46.3ml', silent: 'water=46.4ml' }),
    edge('In this ring that much', { on: 'bore=6in', raised: 'water=5561ml', silent: 'water=5559ml' }),
    edge('In one ring as much', { on: `${inch}&rings.end=left,gone,gone`, raised: 'rings.left=0.991in,,', silent: 'rings.left=0.989in,,' }),
    turns('judged', { 'first-only': 'moisture=dry', judged: 'moisture=moist' }, { on: 'rings.pours=once,twice,twice' }),
    turns('judged', {
      judged: 'site=none',
      cracks: 'site=cracks',
      burrow: 'site=burrow',
      leak: 'site=leak',
      frozen: 'site=frozen',
      standing: 'site=standing',
    }),
    turns('rateClass', { 'very-rapid': 'rings.first=2.99min', rapid: 'rings.first=3.01min' }, { on: oneRing }),
    turns('rateClass', { rapid: 'rings.first=9.99min', 'moderately-rapid': 'rings.first=10.01min' }, { on: oneRing }),
    turns('rateClass', { 'moderately-rapid': 'rings.first=29.9min', moderate: 'rings.first=30.1min' }, { on: oneRing }),
    turns('rateClass', { moderate: 'rings.first=99.9min', 'moderately-slow': 'rings.first=100.1min' }, { on: oneRing }),
    turns('rateClass', { 'moderately-slow': 'rings.first=299.9min', slow: 'rings.first=300.1min' }, { on: oneRing }),
    turns('rateClass', { slow: 'rings.first=999.9min', 'very-slow': 'rings.first=1000.1min' }, { on: oneRing }),
    // 0.036 in gone in a day is 0.0015 in an hour.
    turns(
      'rateClass',
      { 'very-slow': 'rings.left=0.963in', impermeable: 'rings.left=0.965in' },
      { on: `${inch}&rings.first=1440min&rings.pours=once&rings.end=left` },
    ),
    turns('verdict', { faster: then(0.6, 0.69), 'perhaps-faster': then(0.6, 0.7) }, { on: visit }),
    turns('verdict', { 'perhaps-faster': then(0.6, 1.71), chance: then(0.6, 1.72) }, { on: visit }),
    turns('verdict', { slower: then(15, 16), 'perhaps-slower': then(15, 15.9) }, { on: visit }),
    turns('verdict', { 'perhaps-slower': then(15, 5.7), chance: then(15, 5.6) }, { on: visit }),
    tells('scatter too much to bound', { on: visit, told: then(0.6, 6.06), untold: then(0.6, 6.03) }),
    turns('verdict', { 'too-few': 'others.then=0.8in/hr', chance: 'others.then=0.8in/hr,1.5in/hr' }, { on: visit }),
  ],
});
