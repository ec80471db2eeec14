import { choice, number, type ValuesOf } from '../../kit/inputs.ts';

/**
 * What one of a kind weighs, lb, and eats in a day, lb, to start the fields: a cow that is dry or early in milk, a weaned calf, a ewe with twins. They stand
 * here because the tables of intakes that they come from weigh more than the form may; a test holds them to those.
 */
const [cow, calf, ewe] = [
  { weightLb: 1250, eatenLbPerDay: 27 },
  // Beside milk it would eat less of the feed, and take less nitrate.
  { weightLb: 300, eatenLbPerDay: 7.5 },
  { weightLb: 160, eatenLbPerDay: 6.4 },
];

const nitrogenForms = {
  'no3-n': { label: 'NO3-N, nitrate-N or nitrate nitrogen', short: 'nitrate as NO3-N' },
  no3: { label: 'NO3 or nitrate ion', short: 'nitrate as NO3' },
};
const notSaid = { label: 'Not sure, or it only says nitrate', short: 'nitrate, word not known' };

/** What the slips say, in the laboratory's own words. */
export const placeInputs = {
  crop: choice('What is it?', 'sorghum-sudangrass', {
    options: {
      'sorghum-sudangrass': 'Sorghum-sudangrass',
      sudangrass: 'Sudangrass',
      sorghum: 'Sorghum, milo, cane, johnsongrass or shattercane',
      indiangrass: 'Indiangrass',
      other: 'Something else: corn, millet, oats, weeds, grass',
    },
    help: 'Sorghum kinds and indiangrass can hold prussic acid as well as nitrate.',
  }),
  testedBy: choice('Who tested the feed?', 'laboratory', {
    options: {
      laboratory: { label: 'A laboratory', short: 'by a laboratory' },
      'field-strip': { label: 'A strip or drops in the field', short: 'by a field strip' },
    },
  }),
  forageNitrate: choice('Nitrate in the feed: the word on the slip', 'not-said', {
    options: { 'not-said': notSaid, ...nitrogenForms, kno3: 'KNO3 or potassium nitrate', 'not-tested': 'Nitrate was not tested' },
    help: 'Copy the word. The same feed reads over four times higher as NO3 than as NO3-N, and over seven times as KNO3.',
    field: 'Look beside the number or in the heading over it. If it is not there, call the laboratory.',
    ask: 'Does it say N, nitrogen, or -N anywhere beside nitrate? Until you know, it is read the strictest way, as nitrogen.',
  }),
  slipUnit: choice('In what?', 'ppm', {
    options: { ppm: { label: 'ppm or mg/kg', short: 'in ppm' }, percent: { label: 'percent', short: 'in percent' } },
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'] },
  }),
  nitratePpmCount: number('Nitrate on the slip, ppm', 'x', 'ppm', [0, 200_000], 1600, {
    step: 100,
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'], slipUnit: 'ppm' },
  }),
  nitratePercent: number('Nitrate on the slip, percent', 'x', 'pct', [0, 20], 0.16, {
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'], slipUnit: 'percent' },
  }),
  prussicAcid: choice('Prussic acid (HCN) in the feed', 'not-tested', {
    options: { tested: { label: 'It is on the slip', short: 'on the slip' }, 'not-tested': { label: 'Not tested', short: 'not tested' } },
  }),
  prussicPpmCount: number('Prussic acid on the slip, ppm', 'y', 'ppm', [0, 20_000], 300, {
    help: 'HCN or cyanide, ppm or mg/kg. From percent: times 10,000.',
    shownWhen: { prussicAcid: 'tested' },
  }),
  basis: choice('Is the feed’s value dry or as fed?', 'not-said', {
    options: {
      'not-said': { label: 'Not sure, or it does not say', short: 'dry or as fed not known' },
      dry: { label: 'Dry matter', short: 'dry matter' },
      'as-fed': { label: 'As fed, as received, as is', short: 'as fed' },
    },
    help: 'The lists go by dry matter, and prussic acid has one line for dry and a lower one for as is. Slips say dry basis, dry matter or DM; or as fed, as received, as is.',
    ask: 'Two columns on the slip? Take the one headed dry. If nothing is said, it is read the strictest way, as fed.',
  }),
  feedForm: choice('How was it sent in?', 'hay', {
    options: {
      hay: { label: 'Dry hay', short: 'dry hay', fills: { dryMatterPercent: 88 } },
      baleage: { label: 'Wrapped bales', short: 'wrapped bales', fills: { dryMatterPercent: 50 } },
      silage: { label: 'Silage', short: 'silage', fills: { dryMatterPercent: 35 } },
      green: { label: 'Green and standing', short: 'green and standing', fills: { dryMatterPercent: 22 } },
    },
    help: 'Fills in the usual dry matter below. The slip’s own figure is better.',
    shownWhen: { basis: ['as-fed', 'not-said'] },
  }),
  dryMatterPercent: number('Dry matter of the sample', 'd', 'pct', [5, 100], 88, {
    help: 'On the slip as dry matter, or 100 less moisture.',
    shownWhen: { basis: ['as-fed', 'not-said'] },
  }),
  waterNitrate: choice('Nitrate in the water: the word on the slip', 'not-tested', {
    options: { 'not-tested': { label: 'Water nitrate was not tested', short: 'nitrate not tested' }, 'not-said': notSaid, ...nitrogenForms },
    help: 'What is in the water comes on top of what is in the feed.',
    offeredBy: 'water.nitrateAs',
  }),
  slipNitrateMgPerL: number('Nitrate in the water', 'w_s', 'mg/l', [0, 5000], 15, {
    help: 'mg/L and ppm are the same in water.',
    shownWhen: { waterNitrate: ['no3-n', 'no3', 'not-said'] },
    offeredBy: 'water.nitrate',
  }),
  waterSulfate: choice('Sulfate in the water: the word on the slip', 'not-tested', {
    options: {
      'not-tested': { label: 'Sulfate was not tested', short: 'sulfate not tested' },
      so4: { label: 'SO4 or sulfate', short: 'sulfate as SO4' },
      'so4-s': { label: 'SO4-S, sulfate-sulfur or sulfur', short: 'sulfate as SO4-S' },
      'not-said': { label: 'I am not sure', short: 'sulfate, word not known' },
    },
    offeredBy: 'water.sulfateAs',
  }),
  slipSulfateMgPerL: number('Sulfate in the water', 's_s', 'mg/l', [0, 20_000], 600, {
    shownWhen: { waterSulfate: ['so4', 'so4-s', 'not-said'] },
    offeredBy: 'water.sulfate',
  }),
  waterSalts: choice('Salts in the water', 'not-tested', {
    options: {
      'not-tested': { label: 'Salts were not tested', short: 'salts not tested' },
      'dissolved-solids': { label: 'Total dissolved solids (TDS)', short: 'dissolved solids' },
      conductivity: { label: 'Conductivity (EC)', short: 'conductivity' },
    },
    offeredBy: 'water.saltAs',
  }),
  slipSaltsMgPerL: number('Total dissolved solids', 't_s', 'mg/l', [0, 50_000], 1400, {
    shownWhen: { waterSalts: 'dissolved-solids' },
    offeredBy: 'water.salt',
  }),
  conductivityCount: number('Conductivity, mS/cm', 'E', 'count', [0, 80], 2.2, {
    help: 'mS/cm, dS/m and mmho/cm are the same. From µS/cm: divide by 1,000.',
    shownWhen: { waterSalts: 'conductivity' },
  }),
};

export const inputs = {
  ...placeInputs,
  animals: choice('Who eats and drinks it?', 'adult-cattle', {
    options: {
      'adult-cattle': { label: 'Cows and other grown cattle', fills: cow },
      calves: { label: 'Calves', fills: calf },
      'sheep-or-goats': { label: 'Sheep or goats', fills: ewe },
      horses: 'Horses, donkeys or mules',
    },
    help: 'Choosing one fills in weight and appetite below; change them to fit yours.',
    belongsTo: 'management',
    offeredBy: 'herd.mainAnimals',
  }),
  pregnant: choice('Is any of them pregnant?', 'yes', {
    options: { yes: 'Yes', no: 'No', 'not-sure': 'Not sure' },
    belongsTo: 'management',
    help: 'Nitrate can cost the calf or lamb at levels that spare the mother. Not sure counts as yes.',
  }),
  weightLb: number('Weight of one animal', 'W', 'lb', [40, 3000], cow.weightLb, {
    belongsTo: 'management',
    usual: 'animalLb',
    ask: 'The mean of your cull tickets; the lightest in the pen if they differ much.',
    offeredBy: 'herd.mainWeight',
  }),
  eatenLbPerDay: number('What it eats in a day, all feeds, dry matter', 'F', 'lb/d', [0.5, 90], cow.eatenLbPerDay, {
    belongsTo: 'management',
    usual: 'eatenLbPerDay',
    help: 'Hungry stock eat more, and faster. That is how most die.',
    ask: 'About 2 to 2.5 percent of a cow’s weight, 4 to 5 percent of a ewe’s with twins.',
    offeredBy: 'herd.mainEats',
  }),
  otherFeed: choice('What else do they eat?', 'untested', {
    options: {
      none: { label: 'Nothing else', short: 'nothing else' },
      tested: { label: 'Another feed, tested for nitrate', short: 'another feed, tested' },
      untested: { label: 'Another feed, not tested', short: 'another feed, not tested' },
    },
    belongsTo: 'management',
    help: 'A feed that nobody tested may be as high as this one. It is counted so.',
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'] },
  }),
  sharePercent: number('Share of this feed in all they eat', 'p', 'pct', [1, 100], 50, {
    belongsTo: 'management',
    help: 'By dry matter, mixed so that they cannot sort it.',
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'], otherFeed: 'tested' },
  }),
  otherPpmCount: number('Nitrate nitrogen (NO3-N) in the other feed, ppm of dry matter', 'l', 'ppm', [0, 20_000], 150, {
    belongsTo: 'management',
    help: 'From NO3: divide by 4.4. From KNO3: divide by 7.2.',
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'], otherFeed: 'tested' },
  }),
  waterFrom: choice('What it drinks in a day', 'summer', {
    options: {
      summer: { label: 'Hot weather, 95 °F (35 °C): the most in the lists', short: 'hot-weather drinking' },
      winter: { label: 'Cold weather, 40 °F (4 °C): the most in the lists', short: 'cold-weather drinking' },
      known: { label: 'I know it', short: 'drinking known' },
    },
    belongsTo: 'management',
    help: 'A list’s most is that of nursing stock, so that no nitrate is missed. In the cold a dry cow drinks 6 to 9 gallons: if you know it, say so.',
    shownWhen: { waterNitrate: ['no3-n', 'no3', 'not-said'] },
  }),
  waterGalPerDay: number('Water one animal drinks', 'G_k', 'gal/d', [0, 50], 24, {
    belongsTo: 'management',
    shownWhen: { waterNitrate: ['no3-n', 'no3', 'not-said'], waterFrom: 'known' },
  }),
  limitFrom: choice('Mix it down to which level?', 'strictest', {
    options: {
      strictest: { label: 'The lowest limit in the lists here', short: 'the lowest listed limit' },
      own: { label: 'A level that the laboratory or veterinarian gave me', short: 'a level given to me' },
    },
    belongsTo: 'management',
    convention: true,
    help: 'Lists differ twofold on where the first limit stands.',
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'], otherFeed: 'tested' },
  }),
  ownLimitPpmCount: number('Level for all they eat, ppm of nitrate nitrogen (NO3-N) in dry matter', 'L_o', 'ppm', [50, 5000], 1000, {
    belongsTo: 'management',
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'], otherFeed: 'tested', limitFrom: 'own' },
  }),
};

export type Values = ValuesOf<typeof inputs>;
