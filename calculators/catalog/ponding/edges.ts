import { always, defineEdges, edge, shows, tells, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

const spells = 'storm=spells';

export default defineEdges(definition, {
  limits: {
    rainIn: [0.05, 30],
    hardMin: [2, 1440],
    'spells.lastsMin': [2, 1440],
    'spells.fellIn': [0, 20],
    conductivityInPerHr: [0.005, 10],
    suctionIn: [0.5, 60],
    roomPercent: [1, 60],
    filledPercent: [0, 95],
    ringHereInPerHr: [0.02, 60],
    ringThereInPerHr: [0.02, 60],
  },
  edges: [
    always('Watch a storm from under'),
    edge('Over 12 inches an hour', { on: 'hard=10min', raised: 'rain=2.01in', silent: 'rain=2in' }),
    edge('Over 12 inches an hour', { on: `${spells}&spells.lasts=30min,10min`, raised: 'spells.fell=0.2in,2.01in', silent: 'spells.fell=0.2in,2in' }),
    edge('Rings side by side differ', { raised: 'rings=both', silent: 'rings=none' }),
    edge('The table may have loam', { raised: 'texture=loam', silent: 'texture=sandy-loam' }),
    edge('The table may have loam', { raised: 'texture=silt-loam', silent: 'texture=silty-clay-loam' }),
    edge('An inch off every acre', { raised: 'rain=2.13in', silent: 'rain=2.12in' }),
    edge('No rain fell in any', { on: `${spells}&spells.lasts=30min`, raised: 'spells.fell=0.009in', silent: 'spells.fell=0.01in' }),
    edge('One spell rains harder than', {
      on: `${spells}&spells.lasts=30min,3min`,
      raised: 'spells.fell=0.2in,5.01in',
      silent: 'spells.fell=0.2in,5in',
    }),
    edge('So much rain in so', { on: 'hard=3min', raised: 'rain=5.01in', silent: 'rain=5in' }),
    turns('ponds', { never: 'hard=240min', stands: 'hard=239min' }),
    shows('evenRunoffIn', { on: 'storm=spells', shown: 'spells.lasts=648min,20min,772min', hidden: 'spells.lasts=649min,20min,772min' }),
    tells('almost at once', { told: 'rain=5.56in', untold: 'rain=5.55in' }),
    // The table's own figures, in the order in which it stands.
    tells('the table has 0.340 cm an hour for this soil when soaked; the other of the two has 0.650', {
      told: 'texture=loam',
      untold: 'texture=silt-loam',
    }),
    tells('even if it takes water half', { told: 'rain=0.707in', untold: 'rain=0.708in' }),
  ],
});
