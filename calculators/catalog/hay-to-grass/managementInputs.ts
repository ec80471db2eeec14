import { choice, number } from '../../kit/inputs.ts';
import type { feederWaste } from '../../tables/feederWaste.ts';
import { hasHay } from './placeInputs.ts';

const methods = {
  'ground-uncovered': { label: 'On the ground, no cover' },
  'raised-uncovered': { label: 'Off the ground, no cover' },
  'ground-covered': { label: 'On the ground, covered' },
  'raised-covered': { label: 'Off the ground, covered' },
  roof: { label: 'Under a roof, open sides' },
  barn: { label: 'In a closed barn' },
} as const;
type Method = keyof typeof methods;
/** The six that the table knows, for fields that show only with them. */
const byTable: readonly Method[] = ['ground-uncovered', 'raised-uncovered', 'ground-covered', 'raised-covered', 'roof', 'barn'];

const feeders = {
  cone: { label: 'Cone feeder, bale hangs inside' },
  'ring-sheeted': { label: 'Ring with a sheeted bottom' },
  'ring-open': { label: 'Open ring' },
  'ring-poly': { label: 'Poly ring' },
  trailer: { label: 'Feeding trailer' },
  cradle: { label: 'Cradle' },
  'square-rack': { label: 'Square bales in a rack' },
  'round-rack': { label: 'Round bales in a rack' },
  'no-rack': { label: 'Bales set out, nothing around them' },
  unrolled: { label: 'Unrolled, more than a day of hay at once' },
} as const satisfies Readonly<Record<(typeof feederWaste)[number]['feeder'], { readonly label: string }>>;

const known = { label: 'I know my own loss' } as const;

export const managementInputs = {
  ownStorage: choice('How the hay on hand is stored', 'barn', {
    options: { ...methods, rind: 'I cut one open and measured the rind', known },
    belongsTo: 'management',
    shownWhen: { onHand: hasHay },
  }),
  knownOwnPercent: number('Loss of the hay on hand, still to come', 's_o', 'pct', [0, 90], 5, {
    belongsTo: 'management',
    shownWhen: { onHand: hasHay, ownStorage: 'known' },
  }),
  rindIn: number('Spoiled rind', 't', 'in', [0, 15], 4, {
    belongsTo: 'management',
    usual: 'rindIn',
    shownWhen: { onHand: hasHay, ownStorage: 'rind' },
    field: 'Cut in from the side of a bale that is like the rest, to where the hay is bright.',
  }),
  ownDiameterFt: number('Diameter of those bales', 'D_o', 'ft', [3, 7], 5, {
    belongsTo: 'management',
    shownWhen: { onHand: hasHay, ownStorage: 'rind' },
  }),
  storage: choice('How the bought hay is stored', 'ground-uncovered', { options: { ...methods, known }, belongsTo: 'management' }),
  knownStoragePercent: number('Lost in storage, of what was stacked', 's_k', 'pct', [0, 90], 10, {
    belongsTo: 'management',
    shownWhen: { storage: 'known' },
  }),
  storedFrom: choice('How long it stands, on average', 'half', {
    options: { half: 'Half of the days on hay', months: 'I give the months' },
    belongsTo: 'management',
    shownWhen: { storage: byTable },
    help: 'Hay that is fed down evenly stands half of the time on average.',
  }),
  storedMonths: number('Months in storage, on average', 'M_s', 'mo', [0, 18], 4, {
    belongsTo: 'management',
    shownWhen: { storage: byTable, storedFrom: 'months' },
    ask: 'Which month was it stacked, and which is the middle of feeding?',
  }),
  feeder: choice('How it is fed', 'ring-open', {
    options: { ...feeders, known: 'I know what is wasted' },
    belongsTo: 'management',
    help: 'From trials with good hay. Poor hay is wasted more.',
  }),
  knownFeedingPercent: number('Lost in feeding, of what is put out', 'f_k', 'pct', [0, 90], 20, {
    belongsTo: 'management',
    shownWhen: { feeder: 'known' },
    ask: 'Rake up and weigh what lies around one bale when it is gone, against the weight of the bale.',
  }),
  baleFrom: choice('Bales to buy', 'weighed', {
    options: { weighed: 'I know what one weighs', round: 'Round, by size', square: 'Square, by size' },
    belongsTo: 'management',
  }),
  baleLb: number('Weight of a bale to buy', 'w_k', 'lb', [20, 3000], 1000, {
    belongsTo: 'management',
    usual: 'baleLb',
    shownWhen: { baleFrom: 'weighed' },
    field: 'Three of the seller’s bales on a scale ticket. Most people guess high by a tenth or more.',
  }),
  widthFt: number('Width', 'c', 'ft', [1, 6], 4, {
    belongsTo: 'management',
    shownWhen: { baleFrom: ['round', 'square'] },
    help: 'The first number of a size: a 4x5 is 4 ft wide.',
  }),
  diameterFt: number('Diameter', 'D', 'ft', [2, 7], 5, { belongsTo: 'management', shownWhen: { baleFrom: 'round' } }),
  heightFt: number('Height', 'h', 'ft', [1, 6], 3, { belongsTo: 'management', shownWhen: { baleFrom: 'square' } }),
  lengthFt: number('Length', 'l', 'ft', [2, 10], 8, { belongsTo: 'management', shownWhen: { baleFrom: 'square' } }),
  densityLbPerFt3: number('How tight they are', 'd_b', 'lb/cuft', [4, 40], 10, {
    belongsTo: 'management',
    usual: 'baleDensityLbPerFt3',
    shownWhen: { baleFrom: ['round', 'square'] },
    help: 'Round bales: 9 soft, 11 usual, 12 tight. Large squares run tighter.',
  }),
  loadCount: number('Bales in a load', 'L', 'count', [1, 2000], 34, {
    belongsTo: 'management',
    whole: true,
    ask: 'Ask the trucker. The legal weight or the width is the limit, whichever comes first.',
  }),
};
