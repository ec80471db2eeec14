import { thinGrass, toxicStubble } from '../../asks/cautions.ts';
import { fescueMares, hasHorses } from '../../asks/horses.ts';
import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';
import { toxicFescueIn } from '../../tables/forageHeights.ts';
import { intakeFallsBelowLbPerAc } from '../../tables/harvestShare.ts';
import { isMeasuredGrowing, meetsWinter, refusals } from './cautions.ts';
import { compute, longestDays } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';
import { steps, type Values } from './steps.ts';

/** Neither nothing nor a year is a number of days to plan by. */
const lasts = (days: number, told: () => string): string => (days < 1 ? 'less than a day' : days >= longestDays ? 'a year or more' : told());

const isThinAtStart = ({ massFrom, standingLbPerAc, heightIn, densityLbPerAcIn, weatheredPercent }: Values): boolean =>
  (massFrom === 'known' ? standingLbPerAc : heightIn * densityLbPerAcIn) * (1 - weatheredPercent / 100) < intakeFallsBelowLbPerAc;

export default defineCalculator({ slug: 'standing-feed', version: 2, title: 'Stockpiled grass for winter', inputs, refusals, compute }).describe({
  question: 'How far does standing winter feed go?',
  lead: 'Days of grazing from grass saved for winter or gone dormant, how far to move the wire for each strip, and what weather takes while it waits.',
  searchWords:
    'stockpiled fescue, stockpiling, stockpile grazing days, dormant forage, winter range, strip grazing, how far to move the fence, winter grazing, weathering loss, extend the grazing season',
  first: [['standingLbPerAc', 'heightIn'], 'areaAc', 'stock', 'startDay'],
  groups: [
    {
      title: 'What stands there',
      inputs: ['massFrom', 'densityLbPerAcIn', 'measuredDay', 'feed', 'lossPercent'],
      summary: '{feed}, measured on {measuredDay}, {densityLbPerAcIn}, {lossPercent} lost in a month',
    },
    { title: 'When feed is wanted', inputs: ['fromDay', 'untilDay', 'isSouth'], summary: '{fromDay} to {untilDay}, {isSouth}' },
    {
      title: 'Strips and stubble',
      inputs: ['fenceFt', 'stripDays', 'stubbleLbPerAc', 'stubbleHeightIn'],
      summary: 'a strip for {stripDays}, a wire of {fenceFt}, {stubbleLbPerAc} left as stubble, {stubbleHeightIn} of stubble left',
    },
    { title: 'Ways of counting', inputs: ['eatenFrom', 'ownEatenPercent'], summary: 'share eaten {eatenFrom}, {ownEatenPercent}' },
  ],
  quantities,
  results: [
    ranged('grazingForDays', ['lowGrazingDays', 'highGrazingDays'], {
      says: '{low} if weather takes twice as much, {high} if it took nothing',
      short: '{low} to {high}, by what weather takes',
      said: 'of grazing',
      gap: ['less grazing', 'more grazing'],
      same: 'the same with twice the weather loss, or none',
    }),
    { of: 'lastDay', when: ({ grazingForDays }) => grazingForDays >= 1 },
    shown('firstStripFt', 'firstStripAc', 'verdict'),
    shownWhen(({ verdict }) => verdict === 'short', 'shortDays', 'shortLb'),
    shown('lossDays', 'startLbPerAc', 'eatenPercent', 'demandLbPerDay', 'strips'),
  ],
  steps,
  cautions: [
    caution(({ feed, stock }) => feed === 'tall-fescue' && stock.some(({ kind }) => kind !== 'horse'), {
      lead: 'The toxin of old fescue can cost cattle their feet. Leave 4 inches (10 cm).',
      life: true,
      say: 'Most old tall fescue carries a fungus that makes a toxin. In cold weather it can cost cattle their feet, ear tips and tail switch. Most of it sits in the lowest inches and in seed heads. It falls as winter goes on, so graze other feed first, leave 4 inches (10 cm), watch for lameness, and ask your veterinarian.',
      source: 'common practice',
    }),
    { when: (values) => values.feed === 'tall-fescue' && hasHorses(values), ...fescueMares },
    {
      when: ({ feed, massFrom, stubbleHeightIn }) => feed === 'tall-fescue' && massFrom === 'height' && stubbleHeightIn < toxicFescueIn,
      ...toxicStubble,
    },
    caution(({ feed }) => feed !== 'tall-fescue', {
      lead: 'Cured grass is low in protein. Test it; never give hungry stock urea.',
      life: true,
      say: 'Cured grass is often under 7 percent protein. Stock then eat less and lose flesh with a full belly. Send a sample to a laboratory and ask what supplement it needs; never give urea to hungry stock.',
      source: 'common practice',
    }),
    caution(isMeasuredGrowing, {
      lead: 'Measured while it still grows? Measure again once growth has stopped.',
      say: 'From April through September, in the south from October through March, such grass mostly still grows, and what stands then is not what will stand in winter. This counts no growth and lets weather take its share from the day that you measured. Measure again after the killing frost, or whenever growth has stopped.',
      source: 'common practice',
    }),
    caution(meetsWinter, {
      lead: 'Ice or snow can shut off the grass in a night. Keep hay and open water.',
      life: true,
      say: 'Ice or deep snow can shut off the grass in a night. Keep hay within reach for a storm, see that there is open water, and give shelter from the wind.',
      source: 'common practice',
    }),
    caution(() => true, {
      lead: 'Keep electric wire off power lines; a spark can set dead grass on fire.',
      life: true,
      say: 'Use a proper fence energizer, keep the wire away from power lines, and put up signs where people pass. In dry dead grass a spark or a hot machine starts a fire.',
      source: 'common practice',
    }),
    caution(({ stripDays, eatenFrom }) => stripDays > 7 && eatenFrom === 'by-strip', {
      lead: 'Past a week in a strip stock waste more: it will not last this long.',
      say: 'The share eaten is read at seven days. In a strip that lasts longer, or in the whole field at once, stock trample and foul far more of it, so it will not last as long as this says.',
      source: 'common practice',
    }),
    caution(({ firstStripAc, areaAc }) => firstStripAc >= areaAc, {
      lead: 'One strip would take the whole field. Make the strips shorter in days.',
      say: 'One strip would take the whole field, and may still be too little for those days. Make the strips shorter in days, or count this as a few days’ feed.',
      source: 'common practice',
    }),
    ...thinGrass<Values>(isThinAtStart, {
      lead: 'Grass this thin on the first day leaves cattle short before it is gone.',
      say: 'Under about 750 pounds an acre (840 kg/ha) will stand on the first day, and then cattle cannot bite off enough in a day. They go short before the grass is gone.',
      source: 'white-b5036',
    }),
    caution(({ grazingForDays }) => grazingForDays >= longestDays, {
      lead: 'It would last a year or more. Graze less of it, or check the numbers.',
      say: 'It would last a year or more, and nobody plans that far ahead on dead grass. There is more feed than this stock needs: graze less of it, or check the numbers.',
      source: 'common practice',
    }),
    caution(({ feed }) => feed === 'other', {
      lead: 'The loss for this grass is from memory. Clip again after a month.',
      say: 'The loss for other dormant grass is from memory. Clip again after a month and use your own.',
      source: 'from memory',
    }),
  ],
  limits: [
    'It takes the same loss in every month. A wet, windy month takes more, and ice or a heavy snow can lay half of it flat.',
    'The printed losses are from annual range in California and from tall fescue. Yours may lose half as much or twice as much.',
    'The stubble is taken to weather like the rest: it keeps its height, not its pounds.',
    'The table of shares eaten is for growing pasture. On frozen ground less is trampled in, on mud much more.',
    'It counts pounds, not feed value, which falls all winter. Cold stock, thin stock and stock that nurse need more than grass that is dead.',
    'Grazing dormant grass does little harm to the plant, but bare ground in late winter washes, and hoofs on wet clay undo what the roots built.',
    'It counts no growth. A mild spell adds some.',
  ],
  note: ({ verdict, stripDays, grazingForDays }, show) =>
    `${show('areaAc')} with ${show('startLbPerAc')} above the stubble feed this stock ${lasts(grazingForDays, () => `about ${show('grazingForDays')} (${show('lowGrazingDays')} to ${show('highGrazingDays')}), through about ${show('lastDay')}`)}. Strips for ${stripDays === 1 ? 'a day' : show('stripDays')}: move the wire ${show('firstStripFt')} at first, farther as weather takes its share. ${verdict === 'reaches' ? 'It covers all the days when feed is wanted.' : `That leaves ${show('shortDays')} to feed another way: ${show('shortLb')} of dry feed, before losses.`}`,
  picture: {
    kind: 'lines',
    rows: 'dayByDay',
    x: 'leftDay',
    ys: ['leftLbPerAc'],
    you: { at: 'startDay', value: 'startLbPerAc' },
    mark: { at: 'lastDay', says: 'last day' },
  },
  sources: [
    'larsen-2021',
    'tall-fescue-monograph',
    'oregon-fescue-mares',
    'extension-fescue-mares',
    'penn-state-agronomy-guide',
    'umaine-pasture-lesson-1',
    'white-b5036',
    'uky-multispecies',
    'coffey-hale-parasites',
    'swinker-laminitis-2013',
    'lory-fall-nitrogen-2022',
    'drought-horse-pasture',
  ],
  changes: [
    {
      version: 2,
      say: 'The date is the last day that is fed, as many days from the first as are told. Before, it could be that day or the one after it.',
    },
  ],
  topic: 'grass',
  order: 50,
  guides: ['feeding-on-dry-grass', 'stretching-winter-feed', 'annual-range'],
});
