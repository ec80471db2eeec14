import { defineEdges, edge, tells, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

export default defineEdges(definition, {
  limits: {
    rainIn: [0.01, 30],
    areaAc: [0.01, 100_000],
    groundCoverPercent: [0, 100],
    curveNumber: [30, 98],
    'parts.areaAc': [0.01, 100_000],
    'parts.groundCoverPercent': [0, 100],
    'parts.curveNumber': [30, 98],
  },
  edges: [
    edge('Less than half of this', { raised: 'ground-cover=49pct', silent: 'ground-cover=50pct' }),
    edge('One of these grounds has', { on: 'cover=own', raised: 'curve-number=39', silent: 'curve-number=40' }),
    edge('Runoff like this can fill', { raised: 'rain=2.74in', silent: 'rain=2.73in' }),
    edge('This method does not reach', { raised: 'wetness=frozen', silent: 'wetness=wet' }),
    edge('The dry-range list has no', { on: 'cover=sagebrush', raised: 'soil-group=a', silent: 'soil-group=b' }),
    edge('The dry-range list has no', { on: 'ground=parts&parts.cover=sagebrush', raised: 'parts.soil-group=a', silent: 'parts.soil-group=b' }),
    turns('condition', { poor: 'ground-cover=49pct', fair: 'ground-cover=50pct' }, { on: 'grazing=moderate' }),
    turns('condition', { fair: 'ground-cover=75pct', good: 'ground-cover=76pct' }, { on: 'grazing=light' }),
    turns('condition', { poor: 'cover=pasture', only: 'cover=own' }),
    turns('method', { 'too-small': 'rain=0.922in', rough: 'rain=0.923in' }),
    turns('method', { rough: 'rain=2.23in', usual: 'rain=2.24in' }, { on: 'cover=own&curve-number=75' }),
    turns('sod', { thin: 'ground-cover=49pct', closed: 'ground-cover=50pct' }),
    tells('even if the ground was wet', { told: 'rain=0.446in', untold: 'rain=0.447in' }),
    tells('too small for the method if the ground was wet, too', { told: 'rain=0.44in', untold: 'rain=0.45in' }),
  ],
});
