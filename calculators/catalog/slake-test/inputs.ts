import { choice, rows } from '../../kit/inputs.ts';

export const inputs = {
  soil: choice({
    label: 'How does the soil feel?',
    belongsTo: 'place',
    default: 'loamy',
    help: 'Rub it wet between your fingers. Compare only places that feel alike.',
    options: {
      loamy: { label: 'Loamy or silty: soft, or like flour' },
      sandy: { label: 'Sandy: mostly grit' },
      clayey: { label: 'Clayey: sticky, makes a long ribbon' },
      differs: { label: 'The two places feel different' },
    },
  }),
  spot: choice({
    label: 'Where did you take them?',
    belongsTo: 'management',
    default: 'plants',
    help: 'Ground under plants holds better than bare spots. Keep the two apart.',
    field:
      'Walk a line and stop every ten steps. Lift the top quarter inch with a knife and let it break by itself. Keep a piece the size of a pea, about 1/4 inch across. Don’t squeeze it, and leave out stones and thick roots.',
    options: {
      plants: { label: 'Under plants' },
      bare: { label: 'In bare spots' },
      mixed: { label: 'Some of each' },
    },
  }),
  dried: choice({
    label: 'Were they air-dry?',
    belongsTo: 'management',
    default: 'dry',
    help: 'Damp soil holds together in water whatever it is worth.',
    field: 'Spread them on paper in the shade for a day or two, until they are hard and pale. Not in an oven, not in the sun on a dashboard.',
    options: { dry: { label: 'Yes' }, damp: { label: 'No, or not sure' } },
  }),
  samples: rows({
    label: 'Samples',
    rowName: 'sample',
    help: 'Lay each in a small sieve or on window screen (holes of about 1/16 inch) and lower it into an inch of rain water or distilled water. Run one of each place at the same time. Eight or nine are enough.',
    maxRows: 9,
    tool: {
      kind: 'marks',
      label: 'The soil goes into the water',
      atS: [5, 30, 300],
      says: [
        'Is half of it gone already?',
        'Is half of it gone now?',
        'If half still holds, lift it out and lower it again, five times, a second up and a second down.',
      ],
    },
    columns: {
      seen: choice({
        label: 'When was half of it gone?',
        belongsTo: 'management',
        default: 'held',
        options: {
          dry: { label: 'It fell to pieces before it was wet' },
          'by-5': { label: 'Within 5 seconds' },
          'by-30': { label: 'Between 5 and 30 seconds' },
          'by-300': { label: 'Between 30 seconds and 5 minutes' },
          held: { label: 'Not within 5 minutes' },
        },
      }),
      left: choice({
        label: 'Left on the sieve after five dips',
        belongsTo: 'management',
        default: 'half',
        shownWhen: { seen: 'held' },
        options: {
          crumbs: { label: 'Next to nothing: less than a tenth' },
          some: { label: 'A tenth to a quarter' },
          half: { label: 'A quarter to three quarters' },
          most: { label: 'Three quarters or more' },
        },
      }),
    },
    default: [
      { seen: 'held', left: 'half' },
      { seen: 'held', left: 'most' },
      { seen: 'by-300', left: 'half' },
      { seen: 'held', left: 'half' },
      { seen: 'held', left: 'some' },
      { seen: 'held', left: 'most' },
      { seen: 'held', left: 'half' },
      { seen: 'by-300', left: 'half' },
    ],
  }),
};
