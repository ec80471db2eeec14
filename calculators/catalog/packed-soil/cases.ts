import { type Case, defineCases } from '../../kit/cases.ts';
import definition from './definition.ts';

const problems = { source: 'ucdavis-ssc100', seen: 'print' } as const;
const densities = [
  ['575 g dry in 400 cm³', 'volume-from=known&ring=400&weighed=dry&cores.core=575', '1.44', 'problem 1'],
  ['600 g with 10 % water in 400 cm³', 'volume-from=known&ring=400&weighed=moist&cores.core=600&cores.water=10', '1.36', 'problem 2'],
  ['650 g with 12 % water in 446.4 cm³', 'volume-from=known&ring=446.4&weighed=moist&cores.core=650&cores.water=12', '1.3', 'problem 3'],
  ['320 g with 15 % water in 12 by 6 by 4 cm', 'volume-from=hole&weighed=moist&cores.core=320&cores.water=15&cores.hole=288', '0.97', 'problem 4'],
  ['497 g dry in 350 cm³', 'volume-from=known&ring=350&weighed=dry&cores.core=497', '1.42', 'problem 5'],
] as const;
const porosities = [
  ['density 1.35', 'volume-from=known&ring=100&cores.core=135', '49', 'problem 6'],
  ['density 1.46', 'volume-from=known&ring=100&cores.core=146', '45', 'problem 8'],
  ['185 g in 188 cm³', 'volume-from=hole&cores.core=185&cores.hole=188', '63', 'problem 9'],
] as const;
const stony = 'volume-from=known&ring=100&cores.core=157.7&cores.stone=31.54';
const equations = { source: 'saxton-rawls-2006', where: 'equations 19 and 20 turned round, worked in another program', seen: 'computed' } as const;

export default defineCases(definition, [
  ...densities.map(
    ([name, query, fineGPerCm3, where]): Case => ({ name, query: `${query}&stones=none`, expect: { fineGPerCm3 }, where, ...problems }),
  ),
  ...porosities.map(
    ([name, query, porosityPercent, where]): Case => ({
      name,
      query: `${query}&weighed=dry&stones=none`,
      expect: { porosityPercent },
      where,
      ...problems,
    }),
  ),
  { name: 'loam with 20 % stones by weight', query: `${stony}&stones=weighed`, expect: { fineGPerCm3: '1.432' }, ...equations },
  { name: 'the same, stones in a jar', query: `${stony}&stones=jar&cores.jar=11.9`, expect: { fineGPerCm3: '1.432' }, ...equations },
  {
    name: 'clay of 1.45: roots begin to have problems',
    query: 'texture=clay&volume-from=known&ring=100&cores.core=145&weighed=dry&stones=none',
    expect: { 'limits.0.side': 'past' },
    source: 'illinois-nres201-2011',
    where: 'lectures 3-4, bulk densities when roots begin to have problems, read by hand',
    seen: 'computed',
  },
  {
    name: 'loam of 1.44: below the critical range',
    query: 'texture=loam&volume-from=known&ring=100&cores.core=144&weighed=dry&stones=none',
    expect: { 'limits.1.side': 'short' },
    source: 'ufl-critical-bulk-density',
    where: 'critical bulk density values, read by hand',
    seen: 'computed',
  },
  {
    name: 'two pushes of three passed 300 psi',
    query: 'probe=pushed&moisture=sponge&pushes.gauge=passed,passed,never&pushes.stop=5,7,',
    expect: { probeSays: 'moderate' },
    source: 'duiker-2002',
    where: 'classes by share of holes',
    seen: 'memory',
  },
]);
