import { choice, date, number } from '../../kit/inputs.ts';
import { months } from '../../tables/months.ts';
import { ground } from './ground.ts';
import { herd } from './herd.ts';

const answers = { curve: 'answers' };

export const inputs = {
  ...ground,
  herd,
  fromDay: date('Turn-in, first day on grass this year', '2026-04-20'),
  toDay: date('Day until which the grass must last', '2026-10-31', { help: 'In the same calendar year. Feed for the winter is counted apart.' }),
  todayDay: date('Today', '2026-06-20'),
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
  startMonth: choice('Month in which growth starts', 'mar', { options: months, shownWhen: answers }),
  bestMonth: choice('Best month', 'may', { options: months, shownWhen: answers }),
  quitMonth: choice('Last month with growth', 'oct', { options: months, shownWhen: answers }),
  fallFlush: choice('Comes back in the fall', 'some', {
    options: { none: 'No', some: 'Some, about a tenth of the year', much: 'Much, about a third of the year' },
    shownWhen: answers,
  }),
  soFarPercent: number('Growth so far, of what is usual by today', 'a', 'pct', [0, 150], 80, {
    ask: 'What stands now, and what they have already eaten, against the same day in a usual year: half, two thirds, all of it?',
    field: 'Look at a caged spot, or at a pasture that nobody has grazed yet.',
  }),
  restPercent: number('Growth still to come, of what is usual', 'b', 'pct', [0, 100], 70, {
    help: 'Nobody knows it. The range under the answer runs from all of it to none.',
    ask: 'How wet is the ground a foot down? Dry: take 50 % or less. Rain after the best month seldom makes up.',
  }),
  land: choice('What land it is, and how it is grazed', 'season-long', {
    options: {
      range: { label: 'Range: native grass in large pastures', fills: { harvestPercent: 25 } },
      'season-long': { label: 'Pasture, grazed all season or moved now and then', fills: { harvestPercent: 40 } },
      moved: { label: 'Pasture, moved every 3 or 4 days', fills: { harvestPercent: 50 } },
      own: 'My own share',
    },
    belongsTo: 'management',
    shownWhen: { yieldFrom: 'survey', yieldMeans: 'eaten-of-growth' },
    help: 'Choosing one fills in the share eaten. It decides the head count more than anything else here.',
    since: { version: 2, before: 'own' },
  }),
  harvestPercent: number('Share eaten, of the whole growth', 'h', 'pct', [5, 80], 40, {
    belongsTo: 'management',
    shownWhen: { yieldFrom: 'survey', yieldMeans: 'eaten-of-growth' },
    help: 'Range: 25 %. Pasture grazed all season: 30 to 40 %. Moved every 3 or 4 days: 50 to 60 %. The stubble is already left.',
  }),
  gonePercent: number('Share gone when grazing ends', 'u', 'pct', [5, 90], 50, {
    belongsTo: 'management',
    shownWhen: { yieldFrom: 'survey', yieldMeans: 'gone-of-growth' },
    help: 'Eaten, trampled and blown away together: take half, leave half is 50 %.',
  }),
  eatenOfGonePercent: number('Share of what is gone that they ate', 'v', 'pct', [10, 100], 50, {
    belongsTo: 'management',
    shownWhen: { yieldFrom: 'survey', yieldMeans: 'gone-of-growth' },
    help: 'About half on range.',
  }),
  grazedPercent: number('Share eaten, of what stands above the stubble', 'g', 'pct', [10, 100], 65, {
    belongsTo: 'management',
    shownWhen: { yieldFrom: 'survey', yieldMeans: 'above-stubble' },
    help: 'A day in a paddock: 80 %. A week: 60 %. The rest is trampled or passed over.',
  }),
  goDay: date('Day by which they could go', '2026-07-10', { belongsTo: 'management', help: 'The sale, or the truck.' }),
};
