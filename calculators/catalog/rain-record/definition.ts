import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';
import { printDay } from '../../units/printQuantity.ts';
import { compute, fewestIndexYears } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';
import { hasDecile, hasIndex, hasMean, hasMedian, hasQuarter, isRanked, steps } from './steps.ts';

export default defineCalculator({
  slug: 'rain-record',
  version: 2,
  title: 'Rain record against normal',
  inputs,
  refusals: [
    {
      at: 'untilDay',
      when: ({ compareWith, rainRecord, untilDay }) => compareWith === 'record' && untilDay < (rainRecord[0]?.day ?? untilDay),
      say: 'The record begins after that day. Give a day within it.',
    },
  ],
  compute,
}).describe({
  question: 'How dry is it, by my own gauge?',
  lead: 'Your rain against the other years of your record: how many years were drier, percent of normal, and from thirty years on decile and standardized index. Days that nobody read are counted, never taken for dry.',
  searchWords:
    'percent of normal, rainfall record, rain gauge log, how dry is it, drought index, standardized precipitation index, SPI, decile, rainfall deficit, driest year, precipitation, csv',
  first: [['rainRecord', 'ownRainIn'], 'untilDay', 'windowMonths'],
  groups: [
    { title: 'What it is compared with', inputs: ['compareWith', 'stationIn'], summary: '{compareWith}, {stationIn}' },
    { title: 'Ways of counting', inputs: ['leastPercent', 'ownYear'], summary: '{leastPercent} of a month’s days read, this year {ownYear}' },
  ],
  quantities,
  results: [
    { of: 'basis', said: 'in this record', when: (values) => !isRanked(values) && values.basis !== 'medians' },
    ranged('drierCount', ['rankCount', 'recordCount'], {
      said: 'drier than this',
      gap: ['fewer drier on that side', 'more drier on that side'],
      short: 'place {low} from the dry end of {high} years',
      when: isRanked,
      says: 'place {low} from the dry end, of {high} years with this one',
      same: 'the wettest of {high} years',
    }),
    { of: 'ofMedianPercent', said: 'of the median rain', when: hasMedian },
    { of: 'otherMedianPercent', when: (values) => isRanked(values) && hasMedian(values) },
    { of: 'ofMeanPercent', when: hasMean },
    { of: 'totalIn', said: 'of rain' },
    { of: 'medianIn', when: hasMedian },
    { of: 'meanIn', when: hasMean },
    { of: 'quarterIn', when: hasQuarter },
    shownWhen(hasDecile, 'tenthIn', 'decile', 'group'),
    ranged('index', ['lowIndex', 'highIndex'], { when: hasIndex, says: '{low} to {high} with a record of this length' }),
    shownWhen(hasIndex, 'otherIndex', 'indexError', 'verdict'),
    shown('beginsDay', 'endsDay'),
    shownWhen(({ basis }) => basis !== 'medians', 'unreadDays', 'yearsCount', 'recordCount'),
    { of: 'leftOutCount', when: ({ basis, leftOutCount }) => basis !== 'medians' && leftOutCount > 0 },
    { of: 'running', when: ({ running }) => running.length > 0 },
    { of: 'driest', when: ({ driest }) => driest.length > 1 },
    { of: 'spells', when: ({ spells }) => spells.length > 0 },
  ],
  steps,
  cautions: [
    caution(({ basis, compareWith }) => compareWith === 'record' && basis === 'not-read', {
      lead: 'Too few days of these months were read for a fair total.',
      say: 'Too few days of these months were read for a fair total. Look at what was understood of the record: do days without a line mean no rain?',
      source: 'common practice',
    }),
    caution(({ compareWith, untilDay, endsDay }) => compareWith === 'record' && endsDay < untilDay, {
      lead: 'The record ends before the day that you gave.',
      say: 'The record ends before the day that you gave, or within a month that it gives only whole. The result goes up to the last day that it covers.',
      source: 'common practice',
    }),
    caution(({ unreadDays, basis }) => (basis === 'ranks' || basis === 'index') && unreadDays > 0, {
      lead: 'Some days were not read, so it may look drier than it was.',
      say: 'Some days of these months were not read. What fell on them is not in the total, so that it may look drier than it was.',
      source: 'common practice',
    }),
    caution(({ basis, recordCount }) => basis === 'ranks' && recordCount < fewestIndexYears, {
      lead: 'Under thirty years a record bears counts and percentages, no index.',
      say: 'Under thirty years a record bears counts and percentages, no index and no decile: at ten years an index near −1.5 is off by half a class either way.',
      source: 'kite-1977, standard error of a normal quantile',
    }),
    caution(({ basis, windowMonths }) => (basis === 'ranks' || basis === 'index') && windowMonths > 12, {
      lead: 'Over twelve months, neighboring years share months with this one.',
      say: 'Looking back over more than twelve months, the years before and after share months with this one, even where it is left out. They judge it less freely than their number says.',
      source: 'common practice',
    }),
    caution(({ basis }) => basis === 'medians', {
      lead: 'Added-up medians make this percentage look a little too good.',
      say: 'Twelve monthly medians added up are less than the median of the whole time, so this percentage looks a little too good. It cannot say how rare the dryness is.',
      source: 'common practice',
    }),
  ],
  limits: [
    'A gauge is a point. A storm that passed a mile off is not in it, and half of a summer’s rain may be such storms.',
    'It counts rain, not water in the ground: heat, wind, bare soil and runoff are not in it. Look at the grass and dig.',
    'A gauge read at seven in the morning gives most of yesterday’s rain to today. A change of the hour or of the place of the gauge looks like a change of weather.',
    'Snow and a frozen gauge read low. Melt what is in it, or take these months from a station.',
    'The index needs thirty years on record, better fifty, and takes the climate of all of them for one. The curve through them is a guess in the tails: past 2 either way it ranks, it does not measure.',
    'Totals over several days are shared evenly among them, which is right for a month and wrong for a day.',
  ],
  note: ({ basis, beginsDay, endsDay, drierCount, yearsCount, medianIn, ownYear }, show) => {
    const when = `Rain from ${printDay(beginsDay)} to ${printDay(endsDay)}`;
    if (basis === 'not-read') return `${when}: too few days were read to tell.`;
    if (basis === 'alone') return `${when}: ${show('totalIn')}. No other year to compare with.`;
    const total = `${when}: ${show('totalIn')}${medianIn > 0 ? `, ${show('ofMedianPercent')} of the median ${show('medianIn')}` : ''}`;
    if (basis === 'medians') return `${total} of the nearest station.`;
    const drier = drierCount === 0 ? 'none was drier' : `${drierCount} ${drierCount === 1 ? 'was' : 'were'} drier`;
    const index = basis === 'index' ? `; standardized index ${show('index')} with an error of ${show('indexError')}, ${show('verdict')}` : '';
    const judges = ownYear === 'left-out' ? `the ${yearsCount} other ${yearsCount === 1 ? 'year' : 'years'}` : `${yearsCount} years`;
    const among = ownYear === 'left-out' ? '' : ', this one among them';
    return `${total}. Of ${judges} on record${among}, ${drier}${index}.`;
  },
  picture: {
    kind: 'bars',
    rows: 'byMonth',
    x: 'monthDay',
    y: 'monthIn',
    usual: 'usualIn',
    usualSays: 'median of that month',
    shortSays: 'short of it',
  },
  sources: [
    'edwards-mckee-1997',
    'thom-1958',
    'wmo-1090-2012',
    'gibbs-maher-1967',
    'hyndman-fan-1996',
    'kite-1977',
    'ndmc-ranch-plan-monitoring',
    'subramanya-hydrology',
    'fair-geyer-okun',
    'vega-datasets',
  ],
  topic: 'rain',
  order: 60,
  guides: ['keeping-a-rain-record', 'telling-drought'],
  changes: [
    {
      version: 2,
      say: 'A year is now judged by the other years of the record, unless you count it in. Medians, percentages, deciles and the index follow. Links made before count it in, as they did.',
    },
  ],
});
