import { choice, number } from '../../kit/inputs.ts';

/** What people decide: what is kept out, pumped, hauled and stored. */
export const managementInputs = {
  drinkFrom: choice('They drink from', 'bank', {
    options: { bank: 'The pond’s edge', trough: 'A trough or tank below or beside it' },
    belongsTo: 'management',
    shownWhen: { supply: 'pond' },
  }),
  deadDepthFt: number('Depth to leave in the pond', 'd', 'ft', [0, 15], 2, {
    belongsTo: 'management',
    shownWhen: { supply: 'pond' },
    help: 'The last 1 to 2 ft are mud, foul water and bogged stock.',
  }),
  pumpedHr: number('It runs, in a day', 'h', 'hr', [0.1, 24], 24, {
    belongsTo: 'management',
    shownWhen: { supply: 'flow' },
    help: '24 for a spring. A pump needs rest, sun or power: count the hours that it really runs.',
  }),
  loadGal: number('Water in a load', 'V_l', 'gal', [10, 20_000], 1000, { belongsTo: 'management', shownWhen: { supply: 'hauled' } }),
  weeklyLoadsCount: number('Loads in a week', 'N_l', 'count', [0, 200], 7, {
    belongsTo: 'management',
    shownWhen: { supply: 'hauled' },
    help: '0 if there is only what stands in the tanks.',
  }),
  storage: choice('Water stored beside that', 'round', {
    options: {
      none: 'None',
      round: 'Round tanks',
      square: 'Square-cornered tanks',
      'round-end': 'Tanks with round ends',
      known: 'I know the gallons',
    },
    belongsTo: 'management',
    help: 'In tanks and troughs, full. With a pond it is counted as the reserve, not into the days.',
  }),
  ownStoredGal: number('Gallons stored', 'V_k', 'gal', [0, 2_000_000], 2500, { belongsTo: 'management', shownWhen: { storage: 'known' } }),
  tanksCount: number('Tanks of this size', 'N_t', 'count', [1, 50], 1, {
    belongsTo: 'management',
    whole: true,
    shownWhen: { storage: ['round', 'square', 'round-end'] },
  }),
  tankAcrossFt: number('Across, inside', 'd_t', 'ft', [0.5, 60], 10, { belongsTo: 'management', shownWhen: { storage: 'round' } }),
  tankLengthFt: number('Length, inside', 'l_t', 'ft', [0.5, 60], 8, { belongsTo: 'management', shownWhen: { storage: ['square', 'round-end'] } }),
  tankWidthFt: number('Width, inside', 'w_t', 'ft', [0.5, 60], 2, { belongsTo: 'management', shownWhen: { storage: ['square', 'round-end'] } }),
  tankDepthFt: number('Water in it, deep', 'h_t', 'ft', [0, 30], 2, {
    belongsTo: 'management',
    usual: 'troughFt',
    shownWhen: { storage: ['round', 'square', 'round-end'] },
  }),
  walkFt: number('Farthest that they graze from the water', 'L', 'ft', [0, 30_000], 1500, {
    belongsTo: 'management',
    usual: 'walkFt',
    help: 'Beyond about 900 ft they come as a herd, all at once.',
  }),
};
