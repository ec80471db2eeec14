import type { Refusal } from '../../kit/define.ts';
import type { inputs } from './inputs.ts';

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
    when: ({ way, heights }) => way !== 'clips' && heights.length < 2,
    say: 'One height cannot tell how the pasture differs. Put in at least two; twenty do well.',
  },
  {
    at: 'heights',
    when: ({ way, heights }) => way !== 'clips' && heights.length >= 2 && heights.every(({ heightIn }) => heightIn === 0),
    say: 'Every height is 0. Put in the height of at least one place.',
  },
  {
    at: 'calibration',
    when: ({ way, calibration }) => way === 'height-clips' && calibration.length < 3,
    say: 'Fewer than three clips do not set a stick. Put in at least three, or choose another way to measure.',
  },
  {
    at: 'dryG',
    when: ({ way, dryFrom, dryG, plateG }) => (way === 'clips' || way === 'height-clips') && dryFrom === 'dried' && dryG <= plateG,
    say: 'Sample and plate when dry must weigh more than the empty plate. If you took the plate off, put 0 for the plate.',
  },
  {
    at: 'wetG',
    when: ({ way, dryFrom, wetG, dryG }) => (way === 'clips' || way === 'height-clips') && dryFrom === 'dried' && dryG > wetG,
    say: 'The sample weighs more dry than wet. Check which weight is which.',
  },
  { at: 'stock', when: ({ stock }) => stock.length === 0, say: 'Put in at least one kind of stock.' },
];
