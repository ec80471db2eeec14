import { faultsAt } from '../../asks/faults.ts';
import { caution, defineCalculator } from '../../kit/define.ts';
import { ranged, shown } from '../../kit/shown.ts';
import { formula, lookup, tabulate, tex } from '../../kit/steps.ts';
import { compute, densityGap, faultOf } from './compute.ts';
import { inputs } from './inputs.ts';
import { quantities } from './quantities.ts';

const readsProbe = ({ probe, moisture }: { readonly probe: string; readonly moisture: string }): boolean =>
  probe === 'pushed' && moisture === 'sponge';

export default defineCalculator({
  slug: 'packed-soil',
  version: 2,
  title: 'Soil compaction from bulk density',
  inputs,
  refusals: [
    ...faultsAt('cores', faultOf, {
      'stones-weigh-all':
        'In one core the stones weigh as much as the whole core or more. Give the dry weight of the soil with its stones, and the stones by themselves.',
      'stones-fill-all': 'In one core the stones take up as much room as the whole core or more. Check the volume of the core and the jar reading.',
      'heavier-than-rock':
        'One core comes out nearly as heavy as solid rock, over 2.3 g/cm³. Check its weight in grams, take off the can, and check the volume.',
      'lighter-than-peat': 'One core comes out lighter than loose peat, under 0.2 g/cm³. Check its weight in grams and the volume.',
    }),
  ],
  compute,
}).describe({
  question: 'Is it packed?',
  lead: 'Weigh a few cores of known volume. Stones are taken out, and the mean is compared with what roots can stand in your texture, by each published list under its own name.',
  searchWords: 'bulk density, compaction, hardpan, plow pan, penetrometer, hard ground, porosity, hoof traffic, pugging, roots grow sideways',
  first: ['cores.coreG', 'texture', 'probe'],
  groups: [
    {
      title: 'The cores and the probe',
      inputs: ['cores', 'volumeFrom', 'acrossIn', 'tallIn', 'ringMl', 'weighed', 'stones', 'moisture', 'pushes'],
      summary: '{cores}, {volumeFrom}, {acrossIn} across, {tallIn} tall, {ringMl}, {weighed}, {stones}, soil {moisture}, {pushes}',
    },
  ],
  handout: ['packed', 'fineGPerCm3', 'porosityPercent', 'probeSays', 'stoppedPercent', 'medianStopIn'],
  quantities,
  compares: {
    as: 'mean',
    // Clay that swells is denser dry than wet.
    movedBy: ['wetness', 'season', 'hands'],
    rows: 'lines',
    column: 'fineGPerCm3',
    middle: 'fineGPerCm3',
    alike: ['volumeFrom', 'acrossIn', 'tallIn', 'ringMl', 'weighed', 'stones'],
    same: { texture: 'the ribbon did not tell the same soil on the two days, so texture and packing can’t be told apart' },
  },
  results: [
    { of: 'packed', said: 'by the published lists' },
    ranged('fineGPerCm3', ['lowGPerCm3', 'highGPerCm3'], {
      gap: ['looser on that side', 'denser on that side'],
      between: densityGap,
      says: ({ coresCount }) => (coresCount === 1 ? 'one core only' : 'the cores ran from {low} to {high}'),
    }),
    shown('limits', 'porosityPercent'),
    { of: 'probeSays', when: ({ probe }) => probe === 'pushed' },
    { of: 'stoppedPercent', when: readsProbe },
    { of: 'medianStopIn', when: (values) => readsProbe(values) && values.stoppedPercent > 0 },
    { of: 'lines' },
  ],
  steps: [
    formula('canMl', tex`\frac{\pi}{4} \times (2.54 \times \q{acrossIn})^2 \times 2.54 \times \q{tallIn}`, {
      onlyWhen: ({ volumeFrom }) => volumeFrom === 'can',
      says: 'Volume of the can in milliliters: an inch is 2.54 centimeters.',
      source: 'common practice',
    }),
    tabulate('lines', {
      says: 'Each core: its volume, its dry weight, and the density of the soil between the stones. Solid soil and stones weigh 2.65 g a milliliter.',
      source: 'common practice',
      formulas: {
        volumeMl: [
          { when: ({ volumeFrom }) => volumeFrom === 'can', formula: tex`\q{canMl}`, because: 'the can' },
          { when: ({ volumeFrom }) => volumeFrom === 'known', formula: tex`\q{ringMl}`, because: 'the ring' },
          { formula: tex`\q{holeMl}`, because: 'the water that filled the hole' },
        ],
        dryG: [
          { when: ({ weighed }) => weighed === 'dry', formula: tex`\q{coreG}`, because: 'weighed dry' },
          { formula: tex`\frac{\q{coreG}}{1 + \q{waterPercent} / 100}`, because: 'its water taken off' },
        ],
        stonesMl: [
          { when: ({ stones }) => stones === 'jar', formula: tex`\q{jarMl}`, because: 'read in the jar' },
          { formula: tex`\frac{\q{stonesG}}{2.65}` },
        ],
        wholeGPerCm3: tex`\frac{\q{dryG}}{\q{volumeMl}}`,
        fineGPerCm3: tex`\frac{\q{dryG} - \q{stonesG}}{\q{volumeMl} - \q{stonesMl}}`,
        stoneVolumePercent: tex`\frac{\q{stonesMl}}{\q{volumeMl}} \times 100`,
        solidMl: tex`\frac{\q{dryG} - \q{stonesG}}{2.65}`,
        poreMl: tex`\q{volumeMl} - \q{stonesMl} - \q{solidMl}`,
      },
      sums: { totalGPerCm3: 'fineGPerCm3', allMl: 'volumeMl', allPoreMl: 'poreMl', allSolidMl: 'solidMl', allStoneMl: 'stonesMl' },
    }),
    formula('fineGPerCm3', tex`\frac{\q{totalGPerCm3}}{\q{coresCount}}`, {
      says: 'The mean of the cores. One core can be off by a tenth; the mean of several is what counts.',
      source: 'common practice',
    }),
    formula('porosityPercent', tex`100 \times (1 - \frac{\q{fineGPerCm3}}{2.65})`, {
      says: 'What is not solid is pores.',
      source: 'ucdavis-ssc100, problem 6',
    }),
    lookup('packed', {
      says: 'The mean against each list. The lists differ by up to 0.2, so none is taken for the truth. A list that tells only the best and the worst says nothing between them.',
      source: 'illinois-nres201-2011, with ufl-critical-bulk-density, nrcs-bulk-density-sheet and arshad-1996',
    }),
    lookup('probeSays', {
      onlyWhen: ({ probe }) => probe === 'pushed',
      says: 'By the share of pushes in which the gauge passed 300 psi: under 30 % little, to 50 % some, to 75 % a good deal. Only in moist soil.',
      source: 'duiker-2002, classes from memory',
    }),
    lookup('stoppedPercent', {
      onlyWhen: readsProbe,
      says: 'Pushes that passed 300 psi, of {pushesCount}.',
      source: 'duiker-2002, where roots stop',
    }),
    lookup('medianStopIn', {
      onlyWhen: (values) => readsProbe(values) && values.stoppedPercent > 0,
      says: 'The middle one of the depths at which they did.',
      source: 'our own',
    }),
  ],
  cautions: [
    caution(({ coresCount }) => coresCount < 3, {
      lead: 'Fewer than three cores: take more before you spend on loosening.',
      say: 'Fewer than three cores. Ground differs from step to step, and one core is squeezed easily. Take three or more before you spend money on loosening.',
      source: 'common practice',
    }),
    caution(({ lowGPerCm3, highGPerCm3 }) => highGPerCm3 - lowGPerCm3 > 0.2, {
      lead: 'The cores differ too much to take their mean.',
      say: 'The cores differ by more than 0.2. Either one was squeezed, or they are from two kinds of ground, such as a trail and the sod beside it. Set those side by side instead of taking their mean.',
      source: 'common practice',
    }),
    caution(({ lines }) => lines.some((line) => line.stoneVolumePercent > 25), {
      lead: 'Over a quarter of a core is stones: use a dug hole, not a can.',
      say: 'More than a quarter of a core is stones. A can catches them badly; dig a hole, line it with film and fill it with water instead.',
      source: 'common practice',
    }),
    caution(({ probeSays }) => probeSays === 'too-dry', {
      lead: 'A probe in dry soil means nothing: push it after a soaking rain.',
      say: 'A probe in dry soil means nothing: dry ground stops any probe, packed or not. Push it a day or two after a soaking rain.',
      source: 'duiker-2002, push at field capacity',
    }),
    caution(({ probeSays }) => probeSays === 'too-wet', {
      lead: 'A probe in soaked soil means nothing: wait until it has drained.',
      say: 'A probe in soaked soil means nothing: it slides through packed ground. Wait a day or two until water has drained.',
      source: 'duiker-2002, push at field capacity',
    }),
    caution(({ pushesCount }) => pushesCount > 0 && pushesCount < 10, {
      lead: 'Fewer than ten pushes: take their share as a hint.',
      say: 'Fewer than ten pushes. Take the share of them as a hint.',
      source: 'common practice',
    }),
    caution(({ packed, probeSays }) => (packed === 'open' || packed === 'between') && (probeSays === 'moderate' || probeSays === 'severe'), {
      lead: 'Loose cores, a stopped probe: take cores from where it stopped.',
      say: 'The cores are loose and the probe was stopped. The hard layer may lie below the cores, or the soil was drier than it felt. Take cores from the depth at which the probe stopped.',
      source: 'common practice',
    }),
    caution(({ packed }) => packed === 'packed', {
      lead: 'Before you rip, dig to find the tight layer, and call 811.',
      life: true,
      say: 'Before you rip anything, dig to see where the tight layer starts and ends, and call 811: a ripper goes deeper than many lines lie. Ripping wet ground packs it more, and ground ripped and grazed at once packs again.',
      source: 'common practice',
    }),
    caution(() => true, {
      lead: 'Call 811 days before you drive a ring or push a probe.',
      life: true,
      say: 'Call 811 a few working days before you drive a ring, push a probe or use an auger, so buried lines get marked. The call is free. It doesn’t cover lines of your own. Wear safety glasses when you hammer a ring in.',
      source: 'idaho-one-call-farm, with oklahoma-one-call',
    }),
    caution(() => true, {
      lead: 'Stay by soil in an oven or microwave: it can burst or catch fire.',
      life: true,
      say: 'Dry soil in an oven with the window open and nobody’s food in it, and wear gloves: the can comes out hot enough to burn. In a microwave use no metal, put a cup of water in beside the soil, run it a few minutes at a time, and stay there; stones can burst, and soil full of roots can smoke and catch fire.',
      source: 'astm-d4643, heat sink and short turns; fire by common practice',
    }),
  ],
  limits: [
    'It speaks of the depth that the cores came from, and of no other. Take them at the surface and again below; hoofs pack the top few inches, wheels deeper.',
    'The lists stand for roots of crops in plain mineral soil. They do not hold for peat, for fresh ash soils or for more than a little gypsum.',
    'Clay that swells is denser dry than wet. Take its cores moist, and compare cores of like moisture.',
    'Old root channels, cracks and worm holes let roots through ground that these numbers call tight. Dig and look at the roots before you believe a number.',
    'A probe adds the depth of the hard layer, no more. Its reading depends on moisture before anything else.',
  ],
  note: ({ packed, probe, probeSays, coresCount }, show) => {
    const texture = show('texture').replace(/^.*: /, '');
    const says = {
      packed: `packed for ${texture} by every published list that tells from when on roots suffer`,
      'lists-differ': `packed by some published lists for ${texture} and not by others`,
      between: `not packed for ${texture}, but tighter than the best`,
      open: `not packed by any published list for ${texture}`,
    }[packed];
    const means = { 'too-dry': 'means nothing, the soil was too dry', 'too-wet': 'means nothing, the soil was too wet' };
    const reading = probeSays === 'too-dry' || probeSays === 'too-wet' ? means[probeSays] : `met ${show('probeSays').toLowerCase()}`;
    const pushed = probe === 'pushed' ? ` The probe ${reading}.` : '';
    const cores = coresCount === 1 ? 'One core' : `Mean of ${show('coresCount')} cores`;
    const range = coresCount === 1 ? '' : ` (${show('lowGPerCm3').replace(/ .*$/, '')} to ${show('highGPerCm3')})`;
    return `${cores}: the soil without stones weighs ${show('fineGPerCm3')}${range}, ${show('porosityPercent')} of it pores: ${says}.${pushed}`;
  },
  picture: { kind: 'face', hard: { density: 'fineGPerCm3', poresPercent: 'porosityPercent', fromIn: 'medianStopIn' } },
  morePictures: [
    {
      kind: 'shares',
      whole: 'allMl',
      parts: [
        { of: 'allPoreMl', tone: 'water' },
        { of: 'allSolidMl', tone: 'kept' },
        { of: 'allStoneMl', tone: 'other' },
      ],
    },
  ],
  changes: [
    {
      version: 2,
      say: 'A list that does not tell from when on roots suffer is no longer counted as one by which they don’t. “Perhaps” can have become “Yes”.',
    },
  ],
  sources: [
    'illinois-nres201-2011',
    'ufl-critical-bulk-density',
    'nrcs-bulk-density-sheet',
    'arshad-1996',
    'ucdavis-ssc100',
    'duiker-2002',
    'idaho-one-call-farm',
    'oklahoma-one-call',
    'astm-d4643',
  ],
  topic: 'tailgate',
  order: 30,
  guides: ['loosening-packed-ground'],
});
