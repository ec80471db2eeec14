import { choice, rows } from '../../kit/inputs.ts';

const inWater = 'In the water, half of it';
const inDips = 'It held for 5 minutes, then the dips';

export const inputs = {
  soil: choice('How does the soil feel?', 'loamy', {
    options: {
      loamy: 'Loamy or silty: soft, or like flour',
      sandy: 'Sandy: mostly grit',
      clayey: 'Clayey: sticky, makes a long ribbon',
      differs: 'The two places feel different',
    },
    help: 'Rub it wet between your fingers. Compare only places that feel alike.',
    offeredBy: 'pasture.texture',
  }),
  spot: choice('Where did you take them?', 'plants', {
    options: { plants: 'Under plants', bare: 'In bare spots', mixed: 'Some of each' },
    belongsTo: 'management',
    help: 'Ground under plants holds better than bare spots. Keep the two apart.',
    field:
      'Walk a line and stop every ten steps. Lift a slice of the top inch with a knife and let it break by itself. Keep a piece as wide as a pencil is thick and half as high. Don’t squeeze it, and leave out stones and thick roots.',
  }),
  dried: choice('Were they air-dry?', 'dry', {
    options: { dry: 'Yes', damp: 'No, or not sure' },
    belongsTo: 'management',
    help: 'Damp soil holds together in water whatever it is worth.',
    field:
      'Spread them on paper in the shade until they are hard and pale all through: some days, a week or more in damp weather. Not in an oven, not in the sun on a dashboard.',
  }),
  samples: rows({
    label: 'Samples',
    rowName: 'sample',
    each: '{seen}',
    help: 'Lay each in a small sieve or on window screen (holes of about 1/16 inch, 1.5 mm) and lower it into an inch of rain water or distilled water. “Gone” is when half of it is gone. Run one of each place at the same time. Eight or nine a place tell something; the field kit holds eighteen.',
    maxRows: 18,
    tool: {
      kind: 'marks',
      label: 'The soil goes into the water',
      atS: [5, 30, 300],
      says: [
        'Is half of it gone already?',
        'Is half of it gone now?',
        'If half still holds, raise and lower it four more times, a second up and a second down. With the soak that makes five.',
      ],
    },
    columns: {
      seen: choice('What you saw', 'half', {
        options: {
          dry: { label: 'Gone before it was wet', short: 'gone before wet', group: inWater },
          'by-5': { label: 'Gone within 5 seconds', short: 'gone in 5 seconds', group: inWater },
          'by-30': { label: 'Gone by 30 seconds', short: 'gone in 30 seconds', group: inWater },
          'by-300': { label: 'Gone by 5 minutes', short: 'gone in 5 minutes', group: inWater },
          crumbs: { label: 'Under 1/10 left', short: 'under 1/10 left', group: inDips },
          some: { label: 'Up to 1/4 left', short: 'up to 1/4 left', group: inDips },
          half: { label: 'Up to 3/4 left', short: 'up to 3/4 left', group: inDips },
          most: { label: 'Over 3/4 left', short: 'over 3/4 left', group: inDips },
        },
        belongsTo: 'management',
      }),
    },
    default: (['half', 'most', 'by-300', 'half', 'some', 'most', 'half', 'by-300'] as const).map((seen) => ({ seen })),
  }),
};
