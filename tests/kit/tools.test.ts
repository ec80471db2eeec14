import { expect, it } from 'vitest';
import { choice, number } from '../../calculators/kit/inputs.ts';
import { faultsOfTool } from '../support/toolFaults.ts';

const timed = { label: 'Time', symbol: 't', belongsTo: 'place', min: 0.1, max: 900, default: 10 } as const;
const counted = { label: 'Count', symbol: 'n', belongsTo: 'place', unit: 'count', min: 0, max: 500, default: 5, whole: true } as const;
const tally = { kind: 'tally', group: 'steps', until: 100, label: 'Bare' } as const;
const marks = { kind: 'marks', label: 'It goes in', atS: [5, 30], says: ['look', 'look again'] } as const;

it('lets a watch stand on a time, and on nothing else', () => {
  expect(faultsOfTool(number({ ...timed, unit: 's', tool: { kind: 'stopwatch' } }), {})).toEqual([]);
  expect(faultsOfTool(number({ ...timed, unit: 'hr', tool: { kind: 'stopwatch' } }), {})).toEqual([]);
  for (const unit of ['d', 'gal', 'count'] as const)
    expect(faultsOfTool(number({ ...timed, unit, tool: { kind: 'stopwatch' } }), {})).toEqual(['a stopwatch needs seconds, minutes or hours']);
});

it('wants marks that rise, each with its words', () => {
  const held = (tool: typeof marks | { kind: 'marks'; label: string; atS: readonly number[]; says: readonly string[] }) =>
    faultsOfTool(choice({ label: 'Held', belongsTo: 'place', default: 'yes', options: { yes: { label: 'Yes' } }, tool }), {});
  expect(held(marks)).toEqual([]);
  expect(held({ ...marks, atS: [30, 5] })).toEqual(['marks must rise from 0']);
  expect(held({ ...marks, atS: [0, 5] })).toEqual(['marks must rise from 0']);
  expect(held({ ...marks, says: ['look'] })).toEqual(['every mark needs its words']);
  expect(held({ ...marks, label: 'In:' })).toEqual(['marks need a label without a colon']);
  expect(faultsOfTool(number({ ...timed, unit: 'lb', tool: marks }), {})).toEqual(['marks on a number need seconds, minutes or hours']);
});

it('wants a tally of whole counts, its group of one mind', () => {
  const bareCount = number({ ...counted, tool: tally });
  const plantCount = number({ ...counted, tool: { ...tally, label: 'Plant' } });
  expect(faultsOfTool(bareCount, { bareCount, plantCount })).toEqual([]);
  expect(faultsOfTool(bareCount, { bareCount })).toEqual(['a tally needs a group of one side and one end']);
  expect(
    faultsOfTool(bareCount, { bareCount, plantCount: number({ ...counted, belongsTo: 'management', tool: { ...tally, label: 'Plant' } }) }),
  ).toEqual(['a tally needs a group of one side and one end']);
  expect(faultsOfTool(bareCount, { bareCount, plantCount: number({ ...counted, tool: { ...tally, until: 50, label: 'Plant' } }) })).toEqual([
    'a tally needs a group of one side and one end',
  ]);
  expect(faultsOfTool(bareCount, { bareCount, plantCount: bareCount })).toEqual(['each button of a tally needs a short label of its own']);
  for (const spoiled of [{ min: 1 }, { whole: false }, { unit: 'lb' as const }]) {
    const input = number({ ...counted, ...spoiled, tool: tally });
    expect(faultsOfTool(input, { input, plantCount })).toEqual(['a tally needs whole counts from 0']);
  }
  expect(faultsOfTool(number({ ...counted, max: 80, tool: tally }), { bareCount, plantCount })).toEqual([
    'a tally must end within the limit of its input',
  ]);
});
