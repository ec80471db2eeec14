import { choice } from '../kit/inputs.ts';
import { months } from '../tables/months.ts';

const shownWhen = { curve: 'answers' };

/** When the grass grows: a printed curve by name, or the four answers that stand in for one. */
export const growthCurve = (quitLabel: string) => ({
  curve: choice('When the grass grows', 'answers', {
    options: {
      answers: 'Four answers of my own',
      nd0002: 'Cool-season grass, North Dakota',
      'smooth-brome-kansas': 'Smooth brome with nitrogen, northeast Kansas',
      co6707: 'Warm-season grass, eastern Colorado',
      'mlra69-fine-a': 'Mixed warm and cool season, southeastern Colorado',
    },
    help: 'A curve printed for your own county comes before any of these.',
  }),
  startMonth: choice('Month in which growth starts', 'mar', { options: months, shownWhen }),
  bestMonth: choice('Best month', 'may', { options: months, shownWhen }),
  quitMonth: choice(quitLabel, 'oct', { options: months, shownWhen }),
  fallFlush: choice('Comes back in the fall', 'some', {
    options: { none: 'No', some: 'Some, about a tenth of the year', much: 'Much, about a third of the year' },
    shownWhen,
  }),
});

/** Why the four answers are refused; each calculator says when. */
export const curveOutOfOrder = {
  at: 'quitMonth',
  say: 'The months must come in order: growth starts, is best, quits. With growth in the fall, the last month must come after the best one.',
} as const;
