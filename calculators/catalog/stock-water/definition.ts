import { waterCautions } from '../../asks/waterSlip.ts';
import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown, shownWhen } from '../../kit/shown.ts';
import { unlistedHeat } from '../../tables/stockWater.ts';
import { compute, headOf, isUnfit, knownByHeat, lookAheadDays, type Results, stakeDrunkInOf } from './compute.ts';
import { drinkersOf } from './herd.ts';
import { inputs, type Values } from './inputs.ts';
import { quantities } from './quantities.ts';
import { hasTrough, isPiped, isPond, isRunningDown, steps } from './steps.ts';

const mileFt = 5280;
const untested = { sulfateMgPerL: 0, saltMgPerL: 0 };
/** Beside the days. Water that nothing should drink is never called enough. */
const enoughOf = (values: Values & Results): string =>
  isUnfit(values) ? 'but nothing should drink it as it is' : `${values.verdict === 'short' ? 'short of' : 'enough for'} the {wantedDays} asked for`;
/** Where the lists by heat end. */
const listsEndF = 90;
/** From here on a plan speaks of heat. */
const heatF = unlistedHeat.fromF;
const isShortOfReserve = ({ supply, reserveShortGal }: Pick<Values & Results, 'supply' | 'reserveShortGal'>): boolean =>
  supply !== 'pond' && reserveShortGal > 0;
export default defineCalculator({
  slug: 'stock-water',
  version: 3,
  title: 'Days of stock water left',
  inputs,
  refusals: [
    { at: 'herd', when: ({ herd }) => headOf({ herd }) === 0, say: 'No stock is on this water. Give at least one line a head.' },
    {
      at: 'deadDepthFt',
      when: ({ supply, deadDepthFt, maxDepthFt }) => supply === 'pond' && deadDepthFt >= maxDepthFt,
      say: 'The depth to leave is all the water that there is. Leave less than the deepest water; if the pond is down to its last foot or two, it is done: fence it and bring other water.',
    },
    {
      at: 'dropIn',
      when: (values) => values.supply === 'pond' && values.lossFrom === 'stake' && stakeDrunkInOf(values) > values.dropIn,
      say: 'What was drunk would have lowered this pond by more than the stake fell. The fall must be at least that much: look again at the gallons, the surface, or whether it rained.',
    },
    {
      at: 'tankLengthFt',
      when: ({ storage, tankLengthFt, tankWidthFt }) => storage === 'round-end' && tankLengthFt < tankWidthFt,
      say: 'A tank with round ends is longer than it is wide. Give the longer side as the length.',
    },
  ],
  compute,
}).describe({
  question: 'Will the water last?',
  lead: 'Days of water for your stock from a pond, a well or tanks, in the hottest weather, with what sun and ground take and what must stay in the mud.',
  searchWords:
    'how much water do cows drink, livestock water requirements, pond drying up, pond evaporation, gallons in a pond, farm pond volume, well running dry, hauling water, water trough size, gallons per minute, pipe size for stock water, stock tank capacity, blue-green algae',
  first: [
    'herd',
    ['lengthFt', 'surfaceAc', 'shoreFt', 'knownGpm', 'bucketFillS', 'loadGal'],
    'widthFt',
    ['maxDepthFt', 'pumpedHr', 'weeklyLoadsCount'],
    'wantedDays',
  ],
  groups: [
    {
      title: 'The water',
      inputs: ['supply', 'surfaceFrom', 'deadDepthFt', 'drinkFrom', 'flowFrom', 'bucketGal'],
      summary: '{supply}, {surfaceFrom}, {deadDepthFt} left in, {drinkFrom}, {flowFrom}, a bucket of {bucketGal}',
    },
    {
      title: 'Heat, sun and ground',
      inputs: ['hotF', 'intakeFrom', 'lossFrom', 'evaporationInPerDay', 'seepageInPerDay', 'dropIn', 'stakeDays', 'stakeDrunkGal'],
      summary:
        'up to {hotF}, drinking {intakeFrom}, {evaporationInPerDay} dries up, {seepageInPerDay} soaks away, the stake shows {dropIn} in {stakeDays}',
    },
    {
      title: 'Is it fit to drink?',
      inputs: ['hasScum', 'slip', 'sulfateMgPerL', 'saltMgPerL'],
      summary: '{hasScum}, {slip}, sulfate {sulfateMgPerL}, salts {saltMgPerL}',
    },
    {
      title: 'Tanks, trough and pipe',
      inputs: [
        'storage',
        'ownStoredGal',
        'tanksCount',
        'tankAcrossFt',
        'tankLengthFt',
        'tankWidthFt',
        'tankDepthFt',
        'walkFt',
        'pipe',
        'pipeSize',
        'pipeLengthFt',
        'pipeHeadFt',
      ],
      summary:
        '{storage}, {ownStoredGal}, {tankAcrossFt} across, {tankLengthFt} by {tankWidthFt}, {tankDepthFt} deep, grazing {walkFt} away, {pipe}, {pipeSize} wide',
    },
  ],
  handout: ['lastsDays', 'verdict', 'needGalPerDay', 'usableGal', 'storedGal', 'reserveGal'],
  quantities,
  results: [
    ranged('lastsDays', ['leastDays', 'mostDays'], {
      when: isRunningDown,
      says: (values) =>
        [
          enoughOf(values),
          values.supply === 'pond' ? '{low} if sun and ground take a quarter more' : '',
          values.mostDays === values.lastsDays
            ? ''
            : `${values.mostDays >= lookAheadDays ? 'a year or more' : '{high}'} if they drink no more than the lowest lists say`,
        ]
          .filter((part) => part !== '')
          .join('; '),
      short: enoughOf,
      said: 'of water',
      gap: ['less water', 'more water'],
    }),
    { of: 'verdict', said: 'for this stock', when: (values) => !isRunningDown(values) },
    ranged('needGalPerDay', ['leastNeedGalPerDay', 'needGalPerDay'], {
      says: ({ intakeFrom }) => (intakeFrom === 'known' ? 'by your own figure, whatever the heat' : '{low} by the lowest lists'),
    }),
    shownWhen(isPond, 'firstDayLossGal', 'usableGal', 'drinkOnlyDays', 'drunkGal', 'lostGal'),
    { of: 'pipeGpm', when: isPiped },
    shownWhen(({ supply }) => supply !== 'pond', 'supplyGalPerDay', 'supplyPercent'),
    { of: 'shortGalPerDay', when: ({ supply, shortGalPerDay }) => supply !== 'pond' && shortGalPerDay > 0 },
    { of: 'neededHr', when: ({ supply, neededHr }) => supply === 'flow' && neededHr <= 24 },
    { of: 'neededLoadsCount', when: ({ supply }) => supply === 'hauled' },
    shown('storedGal', 'storedDays', 'reserveGal'),
    { of: 'reserveShortGal', when: ({ reserveShortGal }) => reserveShortGal > 0 },
    { of: 'comes', when: hasTrough },
    { of: 'troughGal', when: (values) => hasTrough(values) && values.comes === 'herd' },
    shownWhen(hasTrough, 'refillGpm', 'edgeFt'),
    { of: 'lines' },
  ],
  steps,
  cautions: [
    caution(({ hasScum }) => hasScum, {
      lead: 'Scum like this can kill stock and dogs in hours. Keep all of them out.',
      life: true,
      say: 'Green scum or paint-like water can be blue-green algae. It can kill stock and dogs within hours and makes people sick. Keep all of them out, fence it, bring other water, and have a laboratory look before anything drinks there again.',
      source: 'harty-sulfate-2012',
    }),
    ...waterCautions<Values & Results>(
      ({ slip, sulfateMgPerL, saltMgPerL }) => (slip === 'tested' ? { sulfateMgPerL, saltMgPerL } : untested),
      drinkersOf,
    ),
    caution(({ slip }) => slip === 'none', {
      lead: 'Have the water tested: a pond turns saltier as it shrinks.',
      say: 'Have the water tested. In a drought ponds and shallow wells turn saltier as they shrink: what was fit in spring may not be in August. Salt, sulfate and nitrate can’t be seen.',
      source: 'common practice',
    }),
    caution((values) => isPond(values) && values.drinkFrom === 'bank', {
      lead: 'Weak stock bog in the mud of a falling pond and die. Fence it.',
      life: true,
      say: 'A falling pond leaves a ring of mud. Weak cows, calves and ewes bog in it and die. Fence it and pipe to a trough, or give them one hard ramp, and look every day.',
      source: 'common practice',
    }),
    caution(({ supply, deadDepthFt }) => supply === 'pond' && deadDepthFt < 1, {
      lead: 'The last foot or two is mud and foul water. Do not count on it.',
      say: 'Less than a foot is left in. The last foot or two is mud and foul water: do not count on it.',
      source: 'common practice',
    }),
    caution(({ supply, surfaceFrom }) => supply === 'pond' && surfaceFrom === 'shore', {
      lead: 'Paced round only, this is the most the pond can be. Pace it across.',
      say: 'Paced only around the edge, the pond is taken as a full circle: the most that it can be. The days are too many if it is long or has bays. Pace it across two ways instead.',
      source: 'common practice',
    }),
    caution(({ verdict }) => verdict === 'short', {
      lead: 'Plan now. Never let thirsty stock drink all they want at once.',
      life: true,
      say: 'Plan now what happens before the last day: sell, move, pipe or haul. Never bring thirsty stock to all the water they want at once, and take salt-mixed feed away while water is short: both can cause salt poisoning. Ask your veterinarian.',
      source: 'common practice',
    }),
    caution((values) => isShortOfReserve(values) && values.hotF < heatF, {
      lead: 'If pump or truck fails, stock can die within days.',
      life: true,
      say: 'A broken pump or late truck leaves stock dry in less than three days. They can die without it. Look at the water every day.',
      source: 'common practice',
    }),
    caution((values) => isShortOfReserve(values) && values.hotF >= heatF, {
      lead: 'If pump or truck fails in this heat, stock can die within a day or two.',
      life: true,
      say: 'A broken pump or a late truck in this heat leaves stock dry in less than three days. They can die within a day or two without it. Look at the water every day.',
      source: 'common practice',
    }),
    caution(({ supply }) => supply === 'flow', {
      lead: 'A well pumped harder can fall below its pump. Wells are licensed work.',
      say: 'A well that is pumped harder in a drought can fall below its pump, or take a neighbor’s water. Fit a backflow valve where the line also serves a house. Work on wells and power is for licensed people; permits are local.',
      source: 'common practice',
    }),
    caution(({ supply }) => supply === 'hauled', {
      lead: 'Water weighs 8.3 lb a gallon (1 kg/L). Mind what the brakes carry.',
      life: true,
      say: 'Water weighs 8.3 lb a gallon (1 kg a liter): 1,000 gallons (3,800 L) are over four tons (3.8 tonnes), and a half-full tank sloshes. Stay within what truck, trailer and brakes carry. Use a tank that never held chemicals, and keep an air gap when filling from a house line.',
      source: 'common practice',
    }),
    caution((values) => isPond(values) && values.verdict === 'short', {
      lead: 'Digging out a pond needs a license and permits. Keep tractors off the mud.',
      life: true,
      say: 'Digging out a pond or touching its dam needs someone licensed for it and local permits. Do not work on the wet bottom with a tractor.',
      source: 'common practice',
    }),
    caution(
      (values) =>
        hasTrough(values) &&
        values.storedGal < values.needGalPerDay / 2 &&
        ((isPiped(values) && values.pipeGpm < values.refillGpm) || (values.supply === 'flow' && values.arrivesGpm < values.refillGpm)),
      {
        lead: 'The trough fills slower than they empty it: the weak go without.',
        life: true,
        say: 'The trough fills slower than they empty it. The strong drink, the weak go without, and thirsty stock break floats and rims. Put more storage at the trough, a thicker pipe, or a second trough.',
        source: 'ohioline-anr12-2003',
      },
    ),
    caution((values) => isPiped(values) && values.pipeGpm * 60 * 24 < values.needGalPerDay, {
      lead: 'Even running day and night this pipe brings less than they drink.',
      life: true,
      say: 'Even running day and night this pipe does not bring what they drink. It needs a thicker pipe, more fall or a pump.',
      source: 'common practice',
    }),
    // Near water the trough rules have 4 in 100 drink at once, an inch of edge a head; in heat cattle come together from any distance.
    caution((values) => hasTrough(values) && values.hotF >= heatF && knownByHeat(values).has(true), {
      lead: 'In heat all come at once: 2 to 3 in (5 to 8 cm) of trough edge for each.',
      life: true,
      say: 'In heat cattle come to drink all at once, however near they graze, and the weak are pushed off. Missouri asks for 2 to 3 inches (5 to 8 cm) of trough edge a head then. If that is more than the edge above, go by it, and set a second trough out before the heat comes, so that they know it.',
      source: 'bailey-heat',
    }),
    caution(({ hotF, intakeFrom, herd }) => hotF >= heatF && intakeFrom === 'lists' && knownByHeat({ herd }).has(false), {
      lead: 'For sheep, goats and horses heat is counted as half as much again.',
      say: 'No list for sheep, goats, horses and llamas goes by heat. From 80 °F (27 °C) on half as much again is counted as on a cool day. A guess like that may be short for those in milk: measure in a hot week.',
      source: 'common practice',
    }),
    caution(({ hotF, intakeFrom, herd }) => hotF > listsEndF && intakeFrom === 'lists' && knownByHeat({ herd }).has(true), {
      lead: 'The lists end at 90 °F (32 °C). Above that stock drink at least this much.',
      say: 'The published lists end at 90 °F (32 °C; one rule at 95 °F, 35 °C). Above that stock drink at least this much; keep some in hand.',
      source: 'common practice',
    }),
    caution(({ walkFt }) => walkFt > mileFt, {
      lead: 'More than a mile is a long walk to water: thin stock lose flesh.',
      say: 'More than a mile is a long walk to water, and half a mile in rough country is. Grass beyond it is hardly used and thin stock lose flesh on the way.',
      source: 'luling-foundation',
    }),
  ],
  limits: [
    'It is a dry-spell plan: no rain, no inflow. Every day is taken as the hottest, so the herd’s part is rather too high than too low.',
    'How long a pond lasts depends mostly on what sun and ground take. A guess at that is worth little: put in a stake and run this again each week.',
    'The pond’s shape is a rule of thumb for sloping sides. A steep dug pond holds more, a wide shallow one less; a quarter either way is common.',
    'Published lists of what stock drink differ by a third and more in heat. Dry hay, salt, nursing and bad water all change it.',
    'For sheep, goats, horses and llamas no list by heat was found: the high end of a plain figure stands in, and half as much again from 80 °F (27 °C) on. That is common practice and no measurement.',
    'The pipe is taken as smooth plastic, full and clean. Air locks, scale, kinks and a stiff float bring less: time a bucket at the trough before you trust it.',
    'A flow measured today says nothing of a well or a spring in six weeks. Measure again, and write it down.',
    'The trough rules were made for cattle. Sheep need less edge and a lower rim; give every trough a ramp or a board by which small animals get out.',
    'It counts gallons, not whether the water is fit. The cautions name the common poisons; a laboratory and a veterinarian decide.',
  ],
  weighsOnPeople: true,
  note: (values, show) => {
    const { supply, verdict, storage, lastsDays } = values;
    const ending: Readonly<Record<typeof verdict, string>> = {
      lasts: `Water for about ${show('lastsDays')}${isUnfit(values) ? '' : `, enough for the ${show('wantedDays')} planned`}`,
      short: `Water for ${lastsDays < 1 ? 'less than a day' : `about ${show('lastsDays')}`}, short of the ${show('wantedDays')} planned`,
      'a-year': 'Water for a year or more',
      'keeps-up': 'The water keeps up with the stock as long as it comes in as it does now',
      unfit: 'There is water enough by the gallon',
    };
    const drunk =
      values.intakeFrom === 'known'
        ? `By their own figure they drink ${show('needGalPerDay')}`
        : `${knownByHeat(values).has(true) || values.hotF >= heatF ? `On a day of ${show('hotF')}` : 'By lists that do not go by heat'} they drink ${show('needGalPerDay')}`;
    const comes =
      supply === 'pond'
        ? `the pond holds ${show('usableGal')} above the ${show('deadDepthFt')} to leave in, and sun and ground take ${show('firstDayLossGal')} on the first day`
        : `${show('supplyGalPerDay')} comes in`;
    const pipe = isPiped(values) ? `; the pipe can bring ${show('pipeGpm')}, and the trough wants ${show('refillGpm')} when they come` : '';
    const stored = storage === 'none' ? 'nothing is stored' : `${show('storedGal')} is stored`;
    const unfit = isUnfit(values) ? ' Nothing should drink it before a laboratory and a veterinarian have looked at it and said so.' : '';
    return `${drunk}; ${comes}${pipe}. ${ending[verdict]}; ${stored}, and three days take ${show('reserveGal')}.${unfit}`;
  },
  picture: {
    kind: 'face',
    shownWhen: { supply: 'pond' },
    pond: { all: 'pondGal', drunk: 'drunkGal', lost: 'lostGal', left: 'leftGal', lastsDays: 'lastsDays', deadDepth: 'deadDepthFt' },
  },
  morePictures: [{ kind: 'lines', rows: 'levels', x: 'atDays', ys: ['leftGal'] }],
  sources: [
    'gould-fs1090',
    'beef-summer-water',
    'k-state-watering-handbook',
    'sigler-mt202209ag-2022',
    'noble-water-1999',
    'pennington-2014',
    'mwps14-new-hampshire',
    'burbrink-2022',
    'ncce-wayne-water-2017',
    'german-c274-2008',
    'dpird-dam-volume',
    'klausmeyer-watering',
    'engineering-toolbox-hazen-williams',
    'ohioline-anr12-2003',
    'bailey-heat',
    'harty-sulfate-2012',
    'meehan-water-2023',
    'montana-livestock-water',
    'weathers-1913',
    'luling-foundation',
  ],
  changes: [
    { version: 2, say: 'On days under 70 °F stock drink the most that lists for such days have. Before, a list that begins at 70 °F was asked too.' },
    {
      version: 3,
      say: 'Sheep, goats, horses and llamas, for which no list goes by heat, are counted with half as much again from 80 °F (27 °C) on; before, only a caution said so. A nursing doe never drinks less than a plain goat.',
    },
  ],
  topic: 'harm',
  order: 10,
  guides: ['watering-stock', 'laying-out-paddocks'],
});
