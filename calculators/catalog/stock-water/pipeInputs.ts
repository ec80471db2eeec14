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
  pipe: choice({
    label: 'Must the water go through a long pipe to the trough?',
    belongsTo: 'management',
    default: 'none',
    shownWhen: { supply: ['pond', 'flow'] },
    help: 'A long or thin pipe can bring less than the water at its head could give.',
    options: { none: { label: 'No, or I timed it at the trough' }, piped: { label: 'Yes: work out what it brings' } },
  }),
  pipeSize: choice({
    label: 'Size of the pipe',
    belongsTo: 'management',
    default: 'one-and-quarter',
    shownWhen: piped,
    help: 'As it is sold. Plastic pipe, smooth inside.',
    options: {
      'three-quarter': { label: '3/4 in' },
      one: { label: '1 in' },
      'one-and-quarter': { label: '1 1/4 in' },
      'one-and-half': { label: '1 1/2 in' },
      two: { label: '2 in' },
      three: { label: '3 in' },
    },
  }),
  pipeLengthFt: number({
    label: 'Length of the pipe',
    symbol: 'l_p',
    belongsTo: 'management',
    unit: 'ft',
    min: 1,
    max: 50_000,
    default: 2000,
    shownWhen: piped,
    help: 'Add about a tenth for bends, valves and the float.',
  }),
  pipeHeadFt: number({
    label: 'Fall from the water down to the trough, or pressure as feet',
    symbol: 'h_p',
    belongsTo: 'management',
    unit: 'ft',
    min: 0.1,
    max: 1500,
    default: 30,
    shownWhen: piped,
    help: 'From the lowest water to the float. With a pump: 2.31 ft for each pound (psi) on the gauge at its lowest, less what the pipe climbs.',
    field: 'A hand level or a clear hose gives the fall. A map is good to about 10 ft.',
  }),
};
