import { choice } from '../kit/inputs.ts';
import { months } from '../tables/months.ts';

const shownWhen = { curve: 'answers' };

/** When the grass grows: a printed curve by name, or the four answers that stand in for one. */
export const growthCurve = (quitLabel: string) => ({
  curve: choice('When the grass grows', 'answers', {
    options: {
      answers: { label: 'Four answers of my own', short: 'by four answers' },
      nd0002: { label: 'Cool-season grass, North Dakota', short: 'North Dakota curve' },
      'smooth-brome-kansas': { label: 'Smooth brome with nitrogen, northeast Kansas', short: 'Kansas brome curve' },
      co6707: { label: 'Warm-season grass, eastern Colorado', short: 'eastern Colorado curve' },
      'mlra69-fine-a': { label: 'Mixed warm and cool season, southeastern Colorado', short: 'southeast Colorado curve' },
    },
    help: 'A curve printed for your own county comes before any of these.',
  }),
  startMonth: choice('Month in which growth starts', 'mar', { options: months, shownWhen }),
  bestMonth: choice('Best month', 'may', { options: months, shownWhen }),
  quitMonth: choice(quitLabel, 'oct', { options: months, shownWhen }),
  fallFlush: choice('Comes back in the fall', 'some', {
    options: {
      none: { label: 'No', short: 'no fall growth' },
      some: { label: 'Some, about a tenth of the year', short: 'some fall growth' },
      much: { label: 'Much, about a third of the year', short: 'much fall growth' },
    },
    shownWhen,
  }),
});
