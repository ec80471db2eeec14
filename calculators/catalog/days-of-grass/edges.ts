import { defineEdges, edge, shows, tells, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

export default defineEdges(definition, {
  limits: {
    areaAc: [0.1, 100000],
    heightIn: [0, 80],
    stopHeightIn: [0.5, 40],
    'stock.countHead': [1, 20000],
    'stock.weightLb': [20, 3000],
    'stock.intakePercent': [0.5, 8],
    densityLbPerAcIn: [20, 1000],
    reachPercent: [1, 100],
    growthLbPerAcDay: [0, 300],
    ownEatenPercent: [5, 100],
    canGoHead: [0, 20000],
  },
  edges: [
    edge('The stand is at or', { raised: 'height=3.5in', silent: 'height=3.6in' }),
    edge('The stand is at or', { raised: 'stop-height=7in', silent: 'stop-height=6.9in' }),
    // 750 lb an acre from the ground up: 2.73 in at 275, 7 in at 107.1.
    edge('Under about 750 pounds an', { raised: 'height=2.72in', silent: 'height=2.73in' }),
    edge('Under about 750 pounds an', { on: 'density-from=own', raised: 'density=107lb/ac/in', silent: 'density=108lb/ac/in' }),
    edge('The lowest inches of old', { raised: 'stand=tall-fescue', silent: 'stand=mixed-pasture' }),
    edge('The lowest inches of old', { on: 'stand=tall-fescue', raised: 'stop-height=3.9in', silent: 'stop-height=4in' }),
    edge('The lowest inches of old', { on: 'stand=tall-fescue', raised: 'density-from=list', silent: 'density-from=own' }),
    edge('You count on growth. In', { raised: 'growth=0.1lb/ac/d', silent: 'growth=0lb/ac/d', within: 0.1 }),
    // Eight whole days against seven: 13,475 lb of all the ground, 1,250 lb a day.
    edge('Past about seven days in', { raised: 'reach=74.3pct', silent: 'reach=74.2pct' }),
    edge('Past about seven days in', { raised: 'eaten-from=until-gone', silent: 'eaten-from=week' }),
    edge('Past about seven days in', { on: 'until=2027-06-30', raised: 'area=1354ac', silent: 'area=1355ac' }),
    edge('The pounds in an inch', { raised: 'stand=red-clover', silent: 'stand=timothy-legume' }),
    edge('The pounds in an inch', { on: 'stand=red-clover', raised: 'density-from=list', silent: 'density-from=own' }),
    edge('Before anything is sold, look', { raised: 'area=222ac', silent: 'area=223ac' }),
    edge('If this is a hard', { raised: 'area=222ac', silent: 'area=223ac' }),
    edge('The day to which it', { raised: 'until=2026-07-01', silent: 'until=2026-07-02' }),
    edge('That day is more than', { raised: 'until=2027-07-02', silent: 'until=2027-07-01' }),
    turns('verdict', { nothing: 'height=3.5in', short: 'height=3.6in' }),
    turns('verdict', { 'keeps-up': 'area=54.6ac', year: 'area=54.5ac' }, { on: 'growth=65.5lb/ac/d' }),
    turns('verdict', { year: 'area=1355ac', lasts: 'area=1354ac' }),
    turns('verdict', { lasts: 'today=2026-08-20', short: 'today=2026-08-19' }),
    shows('spareDays', { shown: 'today=2026-08-20', hidden: 'today=2026-08-19' }),
    shows('goTodayHead', {
      on: 'stock.kind=cow-nursing,ewe-nursing&stock.weight=1250lb,160lb&area=10ac',
      shown: 'stock.count=40,14',
      hidden: 'stock.count=40,15',
    }),
    shows('sellByDay', { on: 'eaten-from=week', shown: 'can-go=28', hidden: 'can-go=27' }),
    shows('missingHead', { on: 'eaten-from=week', shown: 'can-go=27', hidden: 'can-go=28' }),
    // At the high end 1,037.5 lb a day are eaten, and 16 acres’ worth of the growth.
    tells('at best growth keeps up', { told: 'growth=64.9lb/ac/d', untold: 'growth=64.8lb/ac/d' }),
    tells('at best a year or more', { told: 'area=789ac', untold: 'area=788ac' }),
    tells('but not at the low end', { told: 'area=389ac', untold: 'area=390ac' }),
    tells('at both ends of the range', { told: 'area=2.1ac', untold: 'area=2.2ac' }),
    tells('less than a day of grass', { told: 'area=3.7ac', untold: 'area=3.8ac' }),
  ],
});
