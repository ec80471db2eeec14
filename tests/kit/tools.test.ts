import { expect, it } from 'vitest';
import { choice, number } from '../../calculators/kit/inputs.ts';
import type { Tool } from '../../calculators/kit/tools.ts';
import type { UnitName } from '../../calculators/units/units.ts';
import { faultsOfTool } from '../support/toolFaults.ts';

const timed = <U extends UnitName>(unit: U, tool: Tool) => number('Time', 't', unit, [0.1, 900], 10, { tool });
const counted = (more: Parameters<typeof number>[5], [min, max]: readonly [number, number] = [0, 500]) =>
  number('Count', 'n', 'count', [min, max], 5, { whole: true, ...more });
const tally = { kind: 'tally', group: 'steps', until: 100, label: 'Bare' } as const;
const marks = { kind: 'marks', label: 'It goes in', atS: [5, 30], says: ['look', 'look again'] } as const;

it('lets a watch stand on a time, and on nothing else', () => {
  expect(faultsOfTool(timed('s', { kind: 'stopwatch' }), {})).toEqual([]);
  expect(faultsOfTool(timed('hr', { kind: 'stopwatch' }), {})).toEqual([]);
  for (const unit of ['d', 'gal', 'count'] as const)
    expect(faultsOfTool(timed(unit, { kind: 'stopwatch' }), {})).toEqual(['a stopwatch needs seconds, minutes or hours']);
});

it('wants marks that rise, each with its words', () => {
  const held = (tool: typeof marks | { kind: 'marks'; label: string; atS: readonly number[]; says: readonly string[] }) =>
    faultsOfTool(choice('Held', 'yes', { options: { yes: 'Yes' }, tool }), {});
  expect(held(marks)).toEqual([]);
  expect(held({ ...marks, atS: [30, 5] })).toEqual(['marks must rise from 0']);
  expect(held({ ...marks, atS: [0, 5] })).toEqual(['marks must rise from 0']);
  expect(held({ ...marks, says: ['look'] })).toEqual(['every mark needs its words']);
  expect(held({ ...marks, label: 'In:' })).toEqual(['marks need a label without a colon']);
  expect(faultsOfTool(timed('lb', marks), {})).toEqual(['marks on a number need seconds, minutes or hours']);
});

it('wants a tally of whole counts, its group of one mind', () => {
  const bareCount = counted({ tool: tally });
  const plantCount = counted({ tool: { ...tally, label: 'Plant' } });
  expect(faultsOfTool(bareCount, { bareCount, plantCount })).toEqual([]);
  expect(faultsOfTool(bareCount, { bareCount })).toEqual(['a tally needs a group of one side and one end']);
  expect(faultsOfTool(bareCount, { bareCount, plantCount: counted({ belongsTo: 'management', tool: { ...tally, label: 'Plant' } }) })).toEqual([
    'a tally needs a group of one side and one end',
  ]);
  expect(faultsOfTool(bareCount, { bareCount, plantCount: counted({ tool: { ...tally, until: 50, label: 'Plant' } }) })).toEqual([
    'a tally needs a group of one side and one end',
  ]);
  expect(faultsOfTool(bareCount, { bareCount, plantCount: bareCount })).toEqual(['each button of a tally needs a short label of its own']);
  for (const spoiled of [{ min: 1 }, { whole: false }, { unit: 'lb' as const }]) {
    const input = { ...counted({ tool: tally }), ...spoiled };
    expect(faultsOfTool(input, { input, plantCount })).toEqual(['a tally needs whole counts from 0']);
  }
  expect(faultsOfTool(counted({ tool: tally }, [0, 80]), { bareCount, plantCount })).toEqual(['a tally must end within the limit of its input']);
});
