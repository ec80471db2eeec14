import { frames } from '../../model/words.ts';
import { amount, choice } from './field.ts';

export const toolGroups = [
  {
    title: 'Clipping frame',
    fields: [
      choice('tools.frame.kind', 'Your clipping frame', frames, {
        'hoop-around': 'A hoop, measured around its edge',
        'hoop-across': 'A hoop, measured across',
        rectangle: 'A square or rectangle',
      }),
      amount('tools.frame.aroundIn', 'Inside of the hoop, around its edge', 'in', [20, 400], 93, { shownWhen: ['tools.frame.kind', 'hoop-around'] }),
      amount('tools.frame.acrossIn', 'Inside of the hoop, straight across', 'in', [6, 130], 29.67, {
        shownWhen: ['tools.frame.kind', 'hoop-across'],
      }),
      amount('tools.frame.lengthIn', 'Inside length of the frame', 'in', [4, 200], 24, { shownWhen: ['tools.frame.kind', 'rectangle'] }),
      amount('tools.frame.widthIn', 'Inside width of the frame', 'in', [4, 200], 24, { shownWhen: ['tools.frame.kind', 'rectangle'] }),
    ],
  },
  {
    title: 'Ring for the ring test',
    fields: [
      amount('tools.ringBoreIn', 'Inside width of the ring', 'in', [1, 40], 6),
      amount('tools.ringInsertedIn', 'How deep it stands in the soil', 'in', [0, 20], 3),
      amount('tools.pouringMl', 'Water for one pouring', 'ml', [10, 20_000], 444),
    ],
  },
  {
    title: 'Can and pace',
    fields: [
      amount('tools.canAcrossIn', 'Inside width of the can', 'in', [1, 20], 3),
      amount('tools.canTallIn', 'Height of the can', 'in', [1, 20], 4.5),
      amount('tools.paceFt', 'One of your paces', 'ft', [0.5, 8], 2.6),
    ],
  },
];
