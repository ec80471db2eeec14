import { always, defineEdges, edge, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

const seen = (list: readonly string[]): string => `samples.seen=${list.join(',')}`;
const many = (count: number, of: string): readonly string[] => Array.from({ length: count }, () => of);

export default defineEdges(definition, {
  limits: {},
  edges: [
    always('In front of people use'),
    edge('Dry them first.', { raised: 'dried=damp', silent: 'dried=dry' }),
    edge('The two places differ in', { raised: 'soil=differs', silent: 'soil=clayey' }),
    edge('Sandy soil has little to', { raised: 'soil=sandy', silent: 'soil=loamy' }),
    edge('Samples from under plants', { raised: 'spot=mixed', silent: 'spot=plants' }),
    edge('Fewer than six samples.', { raised: seen(many(5, 'half')), silent: seen(many(6, 'half')) }),
    // A mean of 3 is still “partly”; a mean of 5 is not yet “well”. Eighteen samples come within a twentieth of either.
    turns('holds', { poorly: seen([...many(17, 'by-300'), 'by-30']), partly: seen(many(18, 'by-300')) }),
    turns('holds', { partly: seen(many(18, 'half')), well: seen([...many(17, 'half'), 'most']) }),
    turns('holds', { damp: 'dried=damp', partly: 'dried=dry' }),
    turns('comparable', { no: 'soil=differs', yes: 'soil=loamy' }),
  ],
});
