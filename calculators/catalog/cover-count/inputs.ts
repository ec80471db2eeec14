import { choice, number } from '../../kit/inputs.ts';

const steps = { belongsTo: 'management', unit: 'count', min: 0, max: 5000, whole: true } as const;
const tally = (label: string) => ({ kind: 'tally', group: 'steps', until: 100, label }) as const;

export const inputs = {
  country: choice({
    label: 'What country is it?',
    belongsTo: 'place',
    default: 'humid',
    help: 'It decides where the classes for storm runoff begin.',
    options: { humid: { label: 'Humid: pasture, hay, woods' }, dry: { label: 'Dry range' } },
  }),
  grazing: choice({
    label: 'How it is grazed',
    belongsTo: 'management',
    default: 'moderate',
    help: 'The class for storm runoff needs this as well as the count.',
    options: {
      heavy: { label: 'Hard: little left, no litter on the ground' },
      moderate: { label: 'About half is left' },
      light: { label: 'Lightly or now and then; most is left' },
      rested: { label: 'Rested, not grazed now' },
    },
  }),
  plantCount: number({
    ...steps,
    label: 'Steps on a plant base',
    symbol: 'n_p',
    default: 27,
    tool: tally('Plant base'),
    help: 'The base of a living plant, or moss and crust that holds the soil.',
  }),
  litterCount: number({
    ...steps,
    label: 'Steps on litter',
    symbol: 'n_l',
    default: 18,
    tool: tally('Litter'),
    help: 'Dead grass, leaves or dung that lie on the ground.',
  }),
  rockCount: number({
    ...steps,
    label: 'Steps on rock',
    symbol: 'n_r',
    default: 3,
    tool: tally('Rock'),
    help: 'Stones that a raindrop would strike instead of soil.',
  }),
  bareCount: number({
    ...steps,
    label: 'Steps on bare soil',
    symbol: 'n_b',
    default: 52,
    tool: tally('Bare soil'),
    help: 'Also where a leaf hangs over bare soil: go by what lies at the ground.',
    field:
      'Choose a far mark and walk to it. Put a notch or a nail line on the toe of your boot. At each step look straight down past the notch, and tap what lies there. Take three lines or more through the pasture, not along a fence, a trail or the water.',
  }),
};
