import { faultsAt } from '../../asks/faults.ts';
import type { Refusal } from '../../kit/refusals.ts';
import { plateFault } from './compute.ts';
import { type inputs, isByHeight, isClipping } from './inputs.ts';

export const refusals: readonly Refusal<typeof inputs>[] = [
  {
    at: 'plots',
    when: ({ way, plots }) => way === 'clips' && plots.length < 2,
    say: 'One plot cannot tell how the pasture differs. Put in at least two; ten do well.',
  },
  {
    at: 'plots',
    when: ({ way, plots }) => way === 'clips' && plots.length >= 2 && plots.every(({ greenG }) => greenG === 0),
    say: 'Every plot weighs nothing. Put in the weight of at least one.',
  },
  {
    at: 'heights',
    when: ({ way, heights }) => isByHeight(way) && heights.length < 2,
    say: 'One height cannot tell how the pasture differs. Put in at least two; twenty do well.',
  },
  {
    at: 'heights',
    when: ({ way, heights }) => isByHeight(way) && heights.length >= 2 && heights.every(({ heightIn }) => heightIn === 0),
    say: 'Every height is 0. Put in the height of at least one place.',
  },
  {
    at: 'calibration',
    when: ({ way, calibration }) => way === 'height-clips' && calibration.length < 3,
    say: 'Fewer than three clips do not set a stick. Put in at least three, or choose another way to measure.',
  },
  ...faultsAt('platePairs', plateFault, {
    few: 'A plate counts here only with ten clips of your own or more: printed lines come from other grass. Put in ten, or choose another way to measure.',
    same: 'The plate read the same over every clip, so no line goes through them. Clip under thin spots and thick ones too.',
    falls:
      'The clips do not get heavier as the plate reads higher. Look whether a weight stands beside the wrong reading; if not, this plate does not fit this stand.',
  }),
  {
    at: 'plateReadings',
    when: ({ way, plateReadings }) => way === 'plate' && plateReadings.length < 2,
    say: 'One reading cannot tell how the pasture differs. Put in at least two; twenty do well.',
  },
  {
    at: 'plateReadings',
    when: (values) => values.plateReadings.length >= 2 && plateFault(values) === 'nothing',
    say: 'By your own line nothing stands at such low readings. Put in a higher reading, or clip a few thin spots for the line.',
  },
  {
    at: 'dryG',
    when: ({ way, dryFrom, dryG, plateG }) => isClipping(way) && dryFrom === 'dried' && dryG <= plateG,
    say: 'Sample and plate when dry must weigh more than the empty plate. If you took the plate off, put 0 for the plate.',
  },
  {
    at: 'wetG',
    when: ({ way, dryFrom, wetG, dryG }) => isClipping(way) && dryFrom === 'dried' && dryG > wetG,
    say: 'The sample weighs more dry than wet. Check which weight is which.',
  },
];
