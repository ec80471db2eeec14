import { choice, number } from '../../kit/inputs.ts';
import { pipeInsideIn } from '../../tables/stockWater.ts';

const piped = { supply: ['pond', 'flow'], pipe: 'piped' };

/** Common sizes by the names that stand in links. */
export const boreIn = {
  'three-quarter': pipeInsideIn['3/4'],
  one: pipeInsideIn['1'],
  'one-and-quarter': pipeInsideIn['1-1/4'],
  'one-and-half': pipeInsideIn['1-1/2'],
  two: pipeInsideIn['2'],
  three: pipeInsideIn['3'],
} as const;

/** The line from the water to the trough. */
export const pipeInputs = {
  pipe: choice('Must the water go through a long pipe to the trough?', 'none', {
    options: { none: 'No, or I timed it at the trough', piped: 'Yes: work out what it brings' },
    belongsTo: 'management',
    shownWhen: { supply: ['pond', 'flow'] },
    help: 'A long or thin pipe can bring less than the water at its head could give.',
  }),
  pipeSize: choice('Size of the pipe', 'one-and-quarter', {
    options: { 'three-quarter': '3/4 in', one: '1 in', 'one-and-quarter': '1 1/4 in', 'one-and-half': '1 1/2 in', two: '2 in', three: '3 in' },
    belongsTo: 'management',
    shownWhen: piped,
    help: 'As it is sold. Plastic pipe, smooth inside.',
  }),
  pipeLengthFt: number('Length of the pipe', 'l_p', 'ft', [1, 50_000], 2000, {
    belongsTo: 'management',
    shownWhen: piped,
    help: 'Add about a tenth for bends, valves and the float.',
  }),
  pipeHeadFt: number('Fall from the water down to the trough, or pressure as feet', 'h_p', 'ft', [0.1, 1500], 30, {
    belongsTo: 'management',
    shownWhen: piped,
    help: 'From the lowest water to the float. With a pump: 2.31 ft for each pound (psi) on the gauge at its lowest, less what the pipe climbs.',
    field: 'A hand level or a clear hose gives the fall. A map is good to about 10 ft.',
  }),
};
