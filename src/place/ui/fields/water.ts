import { supplies, tankShapes } from '../../model/words.ts';
import { amount, choice, count, day, text } from './field.ts';

const pond = ['supply', 'pond'] as const;
const tanks = ['tanks.shape', ...tankShapes] as const;
export const waterGroups = [
  {
    title: undefined,
    fields: [
      text('name', 'Name', { isNeeded: true }),
      choice('supply', 'Where the water comes from', supplies, {
        pond: 'A pond',
        flow: 'A steady flow: well, spring, pipeline',
        hauled: 'It is hauled',
      }),
      amount('flowGpm', 'Steady flow', 'gpm', [0, 5000], 5, { shownWhen: ['supply', 'flow'] }),
      amount('lengthFt', 'Longest way across the water', 'ft', [1, 20_000], 200, { shownWhen: pond }),
      amount('widthFt', 'Widest way square to it', 'ft', [1, 20_000], 120, { shownWhen: pond }),
      amount('surfaceAc', 'Water surface, if you know it', 'ac', [0.001, 5000], 0.5, { shownWhen: pond }),
      amount('shoreFt', 'Way around the water', 'ft', [1, 100_000], 600, { shownWhen: pond }),
      amount('maxDepthFt', 'Deepest water', 'ft', [0.1, 200], 8, { shownWhen: pond }),
      amount('deadDepthFt', 'Depth to leave', 'ft', [0, 100], 2, { shownWhen: pond }),
      amount('evaporationInPerDay', 'Drying up', 'in/d', [0, 2], 0.25, { shownWhen: pond }),
      amount('seepageInPerDay', 'Soaking away', 'in/d', [0, 5], 0.1, { shownWhen: pond }),
    ],
  },
  {
    title: 'Tanks',
    fields: [
      choice('tanks.shape', 'Shape of the tanks', tankShapes, { square: 'Square-cornered', 'round-end': 'Round ends' }),
      count('tanks.count', 'Tanks', 'count', [1, 500], 1, { shownWhen: tanks }),
      amount('tanks.acrossFt', 'Across', 'ft', [0.5, 200], 10, { shownWhen: ['tanks.shape', 'round'] }),
      amount('tanks.lengthFt', 'Length', 'ft', [0.5, 500], 8, { shownWhen: ['tanks.shape', 'square', 'round-end'] }),
      amount('tanks.widthFt', 'Width', 'ft', [0.5, 200], 2, { shownWhen: ['tanks.shape', 'square', 'round-end'] }),
      amount('tanks.depthFt', 'Depth of the water', 'ft', [0.1, 50], 2, { shownWhen: tanks }),
    ],
  },
  {
    title: 'Water test',
    fields: [
      day('slip.day', 'Day of the slip', { help: 'Forms tell it beside the figures. Without its day the slip is not put into forms.' }),
      amount('slip.sulfateMgPerL', 'Sulfate', 'mg/l', [0, 20_000], 300),
      amount('slip.saltMgPerL', 'Salts, total dissolved', 'mg/l', [0, 50_000], 900),
      amount('slip.nitrateMgPerL', 'Nitrate', 'mg/l', [0, 5000], 20, { help: 'As your laboratory words it; the form asks which nitrate that is.' }),
    ],
  },
];
