import { choice, number, type ValuesOf } from '../../kit/inputs.ts';
import { placeInputs } from './placeInputs.ts';

export const inputs = {
  ...placeInputs,
  animals: choice('Who eats and drinks it?', 'adult-cattle', {
    options: { 'adult-cattle': 'Cows and other grown cattle', calves: 'Calves', 'sheep-or-goats': 'Sheep or goats', horses: 'Horses' },
    belongsTo: 'management',
  }),
  pregnant: choice('Is any of them pregnant?', 'yes', {
    options: { yes: 'Yes', no: 'No', 'not-sure': 'Not sure' },
    belongsTo: 'management',
    help: 'Nitrate can cost the calf or lamb at levels that spare the mother. Not sure counts as yes.',
  }),
  weightLb: number('Weight of one animal', 'W', 'lb', [40, 3000], 1250, {
    belongsTo: 'management',
    usual: 'animalLb',
    ask: 'The mean of your cull tickets; the lightest in the pen if they differ much.',
  }),
  eatenLbPerDay: number('What it eats in a day, all feeds, dry matter', 'F', 'lb/d', [0.5, 90], 27, {
    belongsTo: 'management',
    usual: 'eatenLbPerDay',
    help: 'Hungry stock eat more, and faster. That is how most die.',
    ask: 'About 2 to 2.5 percent of a cow’s weight, 3 to 4 of a ewe’s with lambs.',
  }),
  otherFeed: choice('What else do they eat?', 'untested', {
    options: { none: 'Nothing else', tested: 'Another feed, tested for nitrate', untested: 'Another feed, not tested' },
    belongsTo: 'management',
    help: 'A feed that nobody tested may be as high as this one. It is counted so.',
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'] },
  }),
  sharePercent: number('Share of this feed in all they eat', 'p', 'pct', [1, 100], 50, {
    belongsTo: 'management',
    help: 'By dry matter, mixed so that they cannot sort it.',
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'], otherFeed: 'tested' },
  }),
  otherPpmCount: number('Nitrate nitrogen (NO3-N) in the other feed, ppm of dry matter', 'l', 'count', [0, 20_000], 150, {
    belongsTo: 'management',
    help: 'From NO3: divide by 4.4. From KNO3: divide by 7.2.',
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'], otherFeed: 'tested' },
  }),
  waterFrom: choice('What it drinks in a day', 'summer', {
    options: { summer: 'Warm weather: 1.5 gallons for each 100 lb', winter: 'Cold weather: 0.75 gallons for each 100 lb', known: 'I know it' },
    belongsTo: 'management',
    shownWhen: { waterNitrate: ['no3-n', 'no3', 'not-said'] },
  }),
  waterGalPerDay: number('Water one animal drinks', 'G_k', 'gal/d', [0, 50], 19, {
    belongsTo: 'management',
    shownWhen: { waterNitrate: ['no3-n', 'no3', 'not-said'], waterFrom: 'known' },
  }),
  limitFrom: choice('Mix it down to which level?', 'strictest', {
    options: { strictest: 'The lowest limit in the lists here', own: 'A level that the laboratory or veterinarian gave me' },
    belongsTo: 'management',
    convention: true,
    help: 'Lists differ twofold on where the first limit stands.',
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'], otherFeed: 'tested' },
  }),
  ownLimitPpmCount: number('Level for all they eat, ppm of nitrate nitrogen (NO3-N) in dry matter', 'L_o', 'count', [50, 5000], 1000, {
    belongsTo: 'management',
    shownWhen: { forageNitrate: ['no3-n', 'no3', 'kno3', 'not-said'], otherFeed: 'tested', limitFrom: 'own' },
  }),
};

export type Values = ValuesOf<typeof inputs>;
