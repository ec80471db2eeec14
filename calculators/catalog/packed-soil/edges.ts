import { always, defineEdges, edge, shows, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

/** Cores of a round volume, so that grams read as densities. */
const hundred = 'volume-from=known&ring=100ml&stones=none';
const pushes = (passed: number, all: number): string =>
  `pushes.gauge=${Array.from({ length: all }, (_, at) => (at < passed ? 'passed' : 'never')).join(',')}`;
const quarters = 'volume-from=hole&stones=jar&cores.core=150g&cores.hole=100ml&cores.stone=10g';

export default defineEdges(definition, {
  limits: {
    acrossIn: [0.5, 12],
    tallIn: [0.5, 12],
    ringMl: [20, 5000],
    'cores.coreG': [10, 15_000],
    'cores.waterPercent': [0, 100],
    'cores.holeMl': [20, 15_000],
    'cores.stoneG': [0, 10_000],
    'cores.jarMl': [0, 10_000],
    'pushes.stopIn': [0, 36],
  },
  edges: [
    edge('Fewer than three cores.', { raised: 'cores.core=490g,515g', silent: 'cores.core=490g,515g,505g' }),
    edge('The cores differ by more', { on: hundred, raised: 'cores.core=160.1g,140g', silent: 'cores.core=159.9g,140g' }),
    edge('More than a quarter of', { on: quarters, raised: 'cores.jar=25.1ml', silent: 'cores.jar=25ml' }),
    edge('A probe in dry soil', { on: 'probe=pushed', raised: 'moisture=dry', silent: 'moisture=sponge' }),
    edge('A probe in soaked soil', { on: 'probe=pushed', raised: 'moisture=wet', silent: 'moisture=sponge' }),
    edge('Fewer than ten pushes.', { on: 'probe=pushed', raised: pushes(9, 9), silent: pushes(9, 10) }),
    edge('Fewer than ten pushes.', { raised: 'probe=pushed', silent: 'probe=none' }),
    edge('The cores are loose and', { on: 'probe=pushed', raised: 'tall=3.11in', silent: 'tall=3.1in' }),
    edge('The cores are loose and', { on: 'probe=pushed&tall=3.2in', raised: pushes(16, 30), silent: pushes(15, 30) }),
    edge('Before you rip anything', { on: hundred, raised: 'cores.core=155g', silent: 'cores.core=154.9g' }),
    always('Call 811 a few working days'),
    always('Dry soil in an oven'),
    edge('In one core the stones weigh', { on: 'stones=jar', raised: 'cores.stone=490g,0g,0g', silent: 'cores.stone=489g,0g,0g' }),
    edge('In one core the stones take', { on: 'stones=jar', raised: 'cores.jar=348ml,0ml,0ml', silent: 'cores.jar=347ml,0ml,0ml' }),
    edge('One core comes out nearly', { on: hundred, raised: 'cores.core=230.1g', silent: 'cores.core=230g' }),
    edge('One core comes out lighter', { on: hundred, raised: 'cores.core=19.9g', silent: 'cores.core=20g' }),
    turns('packed', { open: 'cores.core=139.9g', 'lists-differ': 'cores.core=140g' }, { on: hundred }),
    turns('packed', { 'lists-differ': 'cores.core=154.9g', packed: 'cores.core=155g' }, { on: hundred }),
    turns('packed', { open: 'cores.core=109.9g', between: 'cores.core=110g' }, { on: `${hundred}&texture=clay` }),
    // Where no push met it there is no depth to tell.
    shows('medianStopIn', { on: 'probe=pushed', shown: pushes(1, 10), hidden: pushes(0, 10) }),
    turns('probeSays', { little: pushes(8, 30), slight: pushes(9, 30) }, { on: 'probe=pushed' }),
    turns('probeSays', { slight: pushes(15, 30), moderate: pushes(16, 30) }, { on: 'probe=pushed' }),
    turns('probeSays', { moderate: pushes(22, 30), severe: pushes(23, 30) }, { on: 'probe=pushed' }),
    turns('probeSays', { 'not-pushed': 'probe=none', moderate: 'probe=pushed' }),
    turns('probeSays', { 'too-dry': 'moisture=dry', 'too-wet': 'moisture=wet' }, { on: 'probe=pushed' }),
  ],
});
