import { isSouth } from '../../asks/south.ts';
import { grazingStock, stockKind } from '../../asks/stock.ts';
import { choice, date, number } from '../../kit/inputs.ts';
import { commonGrazer } from '../../math/herd/likelyIntakePercent.ts';
import { toxicFescueIn } from '../../tables/forageHeights.ts';
import { standingFeedLossPerMonth, standingFeedLossPerWinter } from '../../tables/standingFeedLoss.ts';

export const stock = grazingStock({
  label: 'All stock that graze here',
  kind: stockKind('cow-dry', ['cow-dry', 'cow-dry-cured', 'cow-nursing', 'heifer', 'bull', 'stocker', 'ewe-dry', 'doe', 'doe-dry', 'horse'], {
    own: { 'cow-dry': { label: 'Dry cow on grass with green in it', fills: commonGrazer('cow-dry') } },
    appetiteOf: 'winter',
  }),
  appetiteOf: 'winter',
  ask: 'Average the weights on your cull tickets. Guesses by eye run light.',
  start: 'cow-dry',
  herd: [
    ['cow-dry', 45],
    ['bull', 2],
    ['heifer', 9],
  ],
});

const [wetYear, middleYear, dryYear] = standingFeedLossPerMonth;
/** November to March: the table gives fescue's loss over a winter. */
const winterMonths = 5;

/** At the start of the winter to come, or today in the middle of one. */
const inWinter = { lastBy: 'untilDay', notBefore: 'today' } as const;

export const inputs = {
  massFrom: choice('How you know what stands', 'known', { options: { known: 'I know the pounds an acre', height: 'I measured the height' } }),
  standingLbPerAc: number('Feed standing when measured', 'B', 'lb/ac', [100, 20_000], 2900, {
    step: 100,
    usual: 'forageLbPerAc',
    shownWhen: { massFrom: 'known' },
    help: 'From the ground up, with the water out, measured after growth stopped.',
    field: 'Clip ten plots at the ground, dry a sample and weigh. The calculator for forage on hand works it out.',
    ask: 'Choose “I measured the height”.',
  }),
  heightIn: number('Mean height when measured', 'H', 'in', [1, 80], 11, {
    usual: 'swardIn',
    shownWhen: { massFrom: 'height' },
    field:
      'Set a stick on the soil in twenty places and read where most leaves end. If snow or wind has laid it down, height tells you nothing, so clip.',
  }),
  densityLbPerAcIn: number('Pounds in an inch of height', 'd', 'lb/ac/in', [20, 1000], 250, {
    usual: 'swardLbPerAcIn',
    shownWhen: { massFrom: 'height' },
    ask: 'A good stand of pasture holds 200 to 300 lb/ac an inch (88 to 132 kg/ha a cm), a thin one 100 to 200 (44 to 88). Three clips of your own set the stick.',
    offeredBy: 'pasture.density',
  }),
  measuredDay: date('Day it was measured', '2026-11-10', {
    occurs: 'today',
    help: 'On or after the day when growth stopped. Weather takes its share from then on.',
  }),
  feed: choice('What stands there', 'tall-fescue', {
    options: {
      'tall-fescue': {
        label: 'Tall fescue saved for winter (a quarter lost, spread over five months)',
        short: 'Tall fescue',
        fills: { lossPercent: standingFeedLossPerWinter[0].percent / winterMonths },
      },
      'annual-range': { label: 'Annual range, an average year', short: 'Annual range', fills: { lossPercent: middleYear.percentPerMonth } },
      'annual-range-wet': {
        label: 'Annual range after a wet year',
        short: 'Annual range, wet year',
        fills: { lossPercent: wetYear.percentPerMonth },
      },
      'annual-range-dry': {
        label: 'Annual range after a dry year',
        short: 'Annual range, dry year',
        fills: { lossPercent: dryYear.percentPerMonth },
      },
      other: { label: 'Other dormant grass (from memory)', short: 'Other dormant grass', fills: { lossPercent: 7 } },
    },
    help: 'Fills in what weather takes in a month; change it to fit yours.',
    offeredBy: 'pasture.standingFeed',
  }),
  lossPercent: number('Weather takes in a month', 'p', 'pct', [0, 30], 5, {
    help: 'Percent of what stood when it was measured, each month alike.',
    field: 'Clip the same ground again a month later, under a cage. What is missing is your loss.',
  }),
  areaAc: number('Ground saved', 'A', 'ac', [0.5, 20_000], 40, { step: 5, usual: 'pastureAc', offeredBy: 'pasture.area' }),
  fenceFt: number('Length of the moving wire', 'l_f', 'ft', [50, 20_000], 1320, {
    help: 'Straight across the field, from fence to fence.',
    ask: 'Pace it, or measure it on an aerial photograph. A square of 40 acres is 1,320 feet across, one of 16 hectares 400 m.',
  }),
  stock,
  fromDay: date('Feed is wanted from', '2026-12-01', {
    occurs: inWinter,
    help: 'The day when other pasture is done. Until you open this field, they are fed another way.',
    offeredBy: 'season.hayFrom',
  }),
  untilDay: date('Feed is wanted until', '2027-04-01', {
    occurs: { nextFrom: 'today' },
    help: 'The day in spring when grass carries them again.',
    ask: 'Take a late spring that you remember, not an average one.',
    offeredBy: 'season.turnIn',
  }),
  isSouth,
  startDay: date('First day of grazing it', '2026-12-01', { occurs: inWinter, belongsTo: 'management' }),
  stubbleLbPerAc: number('Feed to leave', 's', 'lb/ac', [0, 10_000], 1000, {
    belongsTo: 'management',
    usual: 'stubbleLbPerAc',
    shownWhen: { massFrom: 'known' },
    help: 'If you clipped at the height that you leave, put 0: then it is already left out.',
    ask: 'Three or four inches (75 to 100 mm) of good sod hold about 1,000 lb/ac (1,120 kg/ha). Range needs 300 to 1,500 lb/ac (340 to 1,680 kg/ha), the taller the grass the more.',
  }),
  stubbleHeightIn: number('Stubble to leave, height', 'h', 'in', [0, 40], toxicFescueIn, {
    belongsTo: 'management',
    usual: 'stubbleIn',
    shownWhen: { massFrom: 'height' },
    ask: 'Four inches (100 mm) on fescue that may carry the toxin, three to four (75 to 100 mm) on other sod, eight (200 mm) or more on tall native grass. Bare ground washes in winter.',
    offeredBy: 'pasture.stopHeight',
  }),
  stripDays: number('Days that a strip lasts', 't_s', 'd', [1, 120], 3, {
    belongsTo: 'management',
    whole: true,
    help: 'How often you move the wire. If you turn them into the whole field, put all the days.',
  }),
  eatenFrom: choice('Share eaten of what stands above the stubble', 'by-strip', {
    options: {
      'by-strip': { label: 'from the table, by days in a strip', short: 'by days in a strip' },
      own: { label: 'my own figure', short: 'by my own figure' },
    },
    belongsTo: 'management',
    help: 'The rest is trampled, fouled or passed over. The stubble is already left out.',
  }),
  ownEatenPercent: number('Share eaten', 'u_o', 'pct', [5, 100], 60, { belongsTo: 'management', shownWhen: { eatenFrom: 'own' } }),
};
