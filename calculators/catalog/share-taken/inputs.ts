import { number, yesNo } from '../../kit/inputs.ts';

const tally = (label: string) => ({ kind: 'tally', group: 'plants', until: 50, label }) as const;
const plants = (label: string, symbol: string, start: number, short: string, help: string, field?: string) =>
  number(label, symbol, 'count', [0, 500], start, {
    belongsTo: 'management',
    whole: true,
    tool: tally(short),
    help,
    ...(field !== undefined && { field }),
  });

export const inputs = {
  noneCount: plants('Plants not bitten', 'k_0', 12, 'Not bitten', 'No leaf or stem of it is gone.'),
  tenCount: plants('Plants with about a tenth gone', 'k_{10}', 8, 'A tenth gone', 'By weight. A few leaf tips are bitten: 1 to 20 percent.'),
  thirtyCount: plants('Plants with about three tenths gone', 'k_{30}', 10, 'Three tenths', 'By weight: 21 to 40 percent.'),
  fiftyCount: plants(
    'Plants with about half gone',
    'k_{50}',
    12,
    'Half gone',
    'By weight, 41 to 60 percent. A plant bitten to half of its height lost much less than half.',
  ),
  seventyCount: plants('Plants with about seven tenths gone', 'k_{70}', 6, 'Seven tenths', 'By weight: 61 to 80 percent.'),
  ninetyCount: plants(
    'Plants with about nine tenths gone',
    'k_{90}',
    2,
    'Nine tenths',
    'By weight: over 80 percent. Only a stub is left.',
    'Choose one grass that feeds the herd, on ground that is grazed as most of the pasture is, when stock leave and before it grows back. Walk a straight line. At each second step take the plant of that grass that is nearest to your toe, not the greenest. Clip and weigh the pieces of some plants first, to teach your eye how little of the weight is in the top half.',
  ),
  wantedPercent: number('Most that you want taken', 'w', 'pct', [5, 90], 33, {
    belongsTo: 'management',
    step: 1,
    help: 'Of the weight of this grass. Your lease or permit may set it. If nothing does: half is the old rule for range, a third is wiser in a drought.',
    isSetting: true,
  }),
  knowsHeadDays: yesNo('Do you know the head-days they grazed there?', true, {
    belongsTo: 'management',
    short: ['head-days known', 'head-days not known'],
  }),
  headDaysCount: number('Head-days they grazed there', 'd', 'count', [1, 1_000_000], 1200, {
    belongsTo: 'management',
    whole: true,
    shownWhen: { knowsHeadDays: 'yes' },
    help: 'Head times days, since the grass began to grow: 40 cows for 30 days are 1,200.',
  }),
};
