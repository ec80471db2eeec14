import { howGrazed } from '../../asks/ground.ts';
import { choice, number } from '../../kit/inputs.ts';

const steps = { belongsTo: 'management', unit: 'count', min: 0, max: 5000, whole: true } as const;
const tally = (label: string) => ({ kind: 'tally', group: 'steps', until: 100, label }) as const;

export const inputs = {
  country: choice('What country is it?', 'humid', {
    options: { humid: { label: 'Humid: pasture, hay, woods', short: 'humid country' }, dry: { label: 'Dry range', short: 'dry range' } },
    help: 'It decides where the classes for storm runoff begin.',
    offeredBy: 'place.rainClass',
  }),
  grazing: choice('How it is grazed', 'moderate', {
    options: howGrazed,
    belongsTo: 'management',
    help: 'The class for storm runoff needs this as well as the count.',
    offeredBy: 'pasture.grazing',
  }),
  plantCount: number('Steps on a plant base', 'n_p', steps.unit, [steps.min, steps.max], 27, {
    ...steps,
    tool: tally('Plant base'),
    help: 'The base of a living plant, or moss and crust that holds the soil.',
  }),
  litterCount: number('Steps on litter', 'n_l', steps.unit, [steps.min, steps.max], 18, {
    ...steps,
    tool: tally('Litter'),
    help: 'Dead grass, leaves or dung that lie on the ground.',
  }),
  rockCount: number('Steps on rock', 'n_r', steps.unit, [steps.min, steps.max], 3, {
    ...steps,
    tool: tally('Rock'),
    help: 'Stones that a raindrop would strike instead of soil.',
  }),
  bareCount: number('Steps on bare soil', 'n_b', steps.unit, [steps.min, steps.max], 52, {
    ...steps,
    tool: tally('Bare soil'),
    help: 'Also where a leaf hangs over bare soil: go by what lies at the ground.',
    field:
      'Choose a far mark and walk to it. Put a notch or a nail line on the toe of your boot. At each step look straight down past the notch, and tap what lies there. Take three lines or more through the pasture, not along a fence, a trail or the water.',
  }),
};
