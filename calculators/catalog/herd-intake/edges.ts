import { defineEdges, edge } from '../../kit/edges.ts';
import definition from './definition.ts';

export default defineEdges(definition, {
  limits: { 'herd.countHead': [0, 20000], 'herd.weightLb': [20, 3500], 'herd.ownPercent': [0.5, 8] },
  edges: [
    edge('Weights guessed by eye run', { raised: 'weight-from=guessed', silent: '' }),
    edge('On poor feed a cow', { raised: 'quality=poor', silent: 'quality=fair' }),
    edge('On poor feed a cow', { on: 'quality=poor', raised: 'herd.stock=heifer', silent: 'herd.stock=bull' }),
    edge('Cows nurse, and no line', { raised: 'herd.stock=cow,lamb&herd.stage=nursing,', silent: 'herd.stock=cow,calf&herd.stage=nursing,' }),
    edge('Cows nurse, and no line', { on: 'herd.stock=heifer', raised: 'herd.stage=nursing', silent: 'herd.stage=late' }),
    edge('Ewes or does nurse, and', { raised: 'herd.stock=ewe,calf&herd.stage=nursing,', silent: 'herd.stock=ewe,lamb&herd.stage=nursing,' }),
    edge('Ewes or does nurse, and', { on: 'herd.stock=doe', raised: 'herd.stage=nursing', silent: 'herd.stage=dry' }),
    edge('Keep cattle feed with monensin', { raised: 'herd.stock=cow,horse', silent: 'herd.stock=cow,bull' }),
    edge('Keep cattle feed with monensin', { raised: 'herd.stock=ewe,horse', silent: 'herd.stock=horse,horse' }),
    edge('Mineral and feed made for', { raised: 'herd.stock=cow,ewe', silent: 'herd.stock=cow,horse' }),
    edge('Mineral and feed made for', { raised: 'herd.stock=horse,ewe', silent: 'herd.stock=lamb,ewe' }),
    edge('Mineral and feed made for', { raised: 'herd.stock=doe,ewe', silent: 'herd.stock=doe,lamb' }),
    edge('Mineral and feed made for', { raised: 'herd.stock=cow,lamb', silent: 'herd.stock=cow,doe' }),
    // Kids have the line of growing lambs.
    edge('Mineral and feed made for', { raised: 'herd.stock=cow,lamb,bull', silent: 'herd.stock=cow,lamb,doe' }),
    edge('Mineral and feed made for', { on: 'herd.stock=cow,ewe', raised: 'herd.count=10,1', silent: 'herd.count=10,0' }),
    edge('Mineral and feed made for', { on: 'herd.stock=cow,ewe', raised: 'herd.count=1,10', silent: 'herd.count=0,10' }),
    edge('Goats stand more copper than', { raised: 'herd.stock=cow,doe', silent: 'herd.stock=cow,ewe' }),
    edge('Goats stand more copper than', { raised: 'herd.stock=horse,doe', silent: 'herd.stock=lamb,doe' }),
    edge('Goats stand more copper than', { on: 'herd.stock=cow,doe', raised: 'herd.count=10,1', silent: 'herd.count=10,0' }),
    edge('Goats stand more copper than', { on: 'herd.stock=cow,doe,ewe', raised: 'herd.count=10,10,0', silent: 'herd.count=10,10,1' }),
    edge('Put in at least one', { raised: 'herd.count=0', silent: 'herd.count=1' }),
    edge('Put in at least one', { raised: 'herd.stage=nursing&herd.count=0', silent: 'herd.stage=nursing,dry&herd.count=0,42' }),
  ],
});
