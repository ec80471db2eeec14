import { expect, it } from 'vitest';
import { faultsAt } from '../../calculators/asks/faults.ts';

it('looks for what is wrong once for each set of values, however many refusals ask', () => {
  const looked: number[] = [];
  const faultOf = ({ depthIn }: { readonly depthIn: number }): 'none' | 'shallow' | 'deep' => {
    looked.push(depthIn);
    return depthIn < 1 ? 'shallow' : depthIn > 9 ? 'deep' : 'none';
  };
  const refusals = [...faultsAt('depthIn', faultOf, { shallow: 'Too shallow.' }), ...faultsAt('soil', faultOf, { deep: 'Too deep.' })];
  const said = (values: { readonly depthIn: number }) => refusals.filter(({ when }) => when(values)).map(({ at, say }) => `${at}: ${say}`);
  expect(said({ depthIn: 0 })).toEqual(['depthIn: Too shallow.']);
  expect(said({ depthIn: 12 })).toEqual(['soil: Too deep.']);
  expect(said({ depthIn: 5 })).toEqual([]);
  expect(looked).toEqual([0, 12, 5]);
});
