import { always, defineEdges, edge, shows, tells, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

export default defineEdges(definition, {
  limits: {
    noneCount: [0, 500],
    tenCount: [0, 500],
    thirtyCount: [0, 500],
    fiftyCount: [0, 500],
    seventyCount: [0, 500],
    ninetyCount: [0, 500],
    wantedPercent: [5, 90],
    headDaysCount: [1, 1_000_000],
  },
  edges: [
    edge('No plant is counted yet.', { on: 'none=0&ten=0&thirty=0&fifty=0&seventy=0', raised: 'ninety=0', silent: 'ninety=1' }),
    edge('More of this grass is', { raised: 'ninety=13', silent: 'ninety=12' }),
    edge('More of this grass is', { raised: 'seventy=21', silent: 'seventy=20' }),
    edge('More of this grass is', { raised: 'wanted=23.9pct', silent: 'wanted=24pct' }),
    // The abstract has samples of 20, 25, 50 and 100 plants.
    edge('Fewer than twenty plants. The', { on: 'thirty=0&fifty=0', raised: 'none=3', silent: 'none=4' }),
    // 14 of 56 are a quarter.
    edge('A quarter or more of', { raised: 'seventy=12', silent: 'seventy=11' }),
    // What is over already is said by the other.
    edge('A quarter or more of', { on: 'seventy=16', raised: 'wanted=30.7pct', silent: 'wanted=30.5pct' }),
    edge('“Take half and leave half”', { raised: 'wanted=51pct', silent: 'wanted=50pct' }),
    always('With your eyes on plants'),
    turns('enough', { 'too-few': 'none=3', yes: 'none=4' }, { on: 'thirty=0&fifty=0' }),
    turns('stands', { under: 'ten=23', open: 'ten=22' }),
    turns('stands', { over: 'ninety=13', open: 'ninety=12' }),
    shows('enough', { on: 'thirty=0&fifty=0', shown: 'none=3', hidden: 'none=4' }),
    shows('totalCount', { shown: '', hidden: 'knows-head-days=no' }),
    shows('leftCount', { shown: 'seventy=7', hidden: 'seventy=8' }),
    shows('overCount', { shown: 'ninety=4', hidden: 'ninety=3' }),
    tells('the one plant so far', { on: 'none=0&ten=0&thirty=0&fifty=0&seventy=0', told: 'ninety=1', untold: 'ninety=2' }),
    tells('of one plant', { on: 'none=0&ten=0&thirty=0&fifty=0&seventy=0', told: 'ninety=1', untold: 'ninety=2' }),
    tells('So few plants', { on: 'thirty=0&fifty=0', told: 'none=3', untold: 'none=4' }),
    tells('more than were grazed', { told: 'seventy=7', untold: 'seventy=8' }),
    tells('fewer than were grazed', { told: 'ninety=4', untold: 'ninety=3' }),
    tells('head-days would have taken', { told: 'knows-head-days=yes', untold: 'knows-head-days=no' }),
    tells('this count can’t tell', { told: 'ten=22', untold: 'ten=23' }),
    tells('lies within', { told: 'ten=22', untold: 'ten=23' }),
  ],
});
