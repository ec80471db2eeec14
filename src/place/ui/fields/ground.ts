import { conditions, covers, forages, grazings, soilGroups, stands, textures, uses } from '../../model/words.ts';
import { amount, choice, text, yesNo } from './field.ts';

const groupLabels = { a: 'A: takes water in fast (sand)', b: 'B: takes it in well', c: 'C: takes it in slowly', d: 'D: hardly takes it in (clay)' };
export const soilFields = [
  text('name', 'Name', { isNeeded: true }),
  choice('texture', 'Texture of the topsoil', textures, {}, { help: 'By the ribbon test, or from the soil survey.' }),
  choice('soilGroup', 'Hydrologic soil group', soilGroups, groupLabels, { help: 'As the soil survey lists it.' }),
  amount('organicMatterPercent', 'Organic matter', 'pct', [0, 30], 2.5),
  amount('depthIn', 'Depth to what stops roots', 'in', [1, 120], 40),
];
export const layerFields = [
  amount('thicknessIn', 'Thickness', 'in', [0.5, 120], 12),
  choice('texture', 'Texture', textures),
  amount('surveyInPerIn', 'Available water by the survey', 'ratio', [0.01, 0.5], 0.18, { help: 'Inches of water in an inch of soil.' }),
  amount('stonesPercent', 'Stones', 'pct', [0, 90], 5),
];
export const paddockFields = [text('name', 'Name', { isNeeded: true }), amount('areaAc', 'Size', 'ac', [0.01, 500_000], 10)];

/** What a pasture is asked first; the rest folds. */
export const pastureFirst = [
  text('name', 'Name', { isNeeded: true }),
  amount('areaAc', 'Size', 'ac', [0.01, 500_000], 40),
  choice('use', 'Used', uses, { grazed: 'Grazed', hay: 'Cut for hay', woods: 'Woods', yards: 'Yards and lanes' }),
  yesNo('isCounted', 'Count its grass for the whole place', true),
];
export const pastureGroups = [
  {
    title: 'Grass and heights',
    fields: [
      choice('forage', 'What grows there', forages, {
        'cool-season-mix': 'Cool-season mix',
        'low-cool-season': 'Bluegrass, redtop, fine fescue, white clover',
        'small-grains': 'Small grains',
        'sorghum-sudan': 'Sorghum-sudan',
      }),
      choice('stand', 'Kind of stand, for pounds by height', stands, {
        'orchardgrass-legume': 'Orchardgrass and legume',
        'bluegrass-clover': 'Bluegrass and white clover',
        'perennial-ryegrass-clover': 'Perennial ryegrass and clover',
        'timothy-legume': 'Timothy and legume',
      }),
      choice('condition', 'How thick it stands', conditions),
      amount('densityLbPerAcIn', 'Pounds in an inch of height', 'lb/ac/in', [20, 1000], 250, { help: 'Where your own clips have told.' }),
      amount('startHeightIn', 'Height when grazing starts', 'in', [1, 60], 8),
      amount('stopHeightIn', 'Height you leave', 'in', [0.5, 40], 4),
      amount('normalLbPerAc', 'Yield in a normal year', 'lb/ac', [10, 20_000], 3000, { help: 'Air-dry pounds, as soil surveys mostly print them.' }),
      amount('poorLbPerAc', 'Yield in a poor year', 'lb/ac', [0, 20_000], 1500),
      amount('rootsMostIn', 'Depth of most roots', 'in', [1, 120], 18),
      amount('rootsDeepestIn', 'Deepest root', 'in', [1, 240], 40),
    ],
  },
  {
    title: 'How stock use it',
    fields: [
      amount('reachPercent', 'Share of it that stock use', 'pct', [1, 100], 90),
      amount('waterDistanceMi', 'Farthest from water', 'mi', [0, 20], 0.5),
      choice('grazing', 'How it is grazed', grazings),
    ],
  },
  {
    title: 'Lay of the land and cover',
    fields: [
      amount('slopePercent', 'Slope', 'pct', [0, 100], 6, { help: 'Feet of drop in a hundred feet.' }),
      amount('slopeLengthFt', 'Length of the slope', 'ft', [1, 5000], 150),
      choice('cover', 'What grows there, for runoff', covers, {
        pasture: 'Pasture or range grass',
        meadow: 'Meadow, not grazed, cut for hay',
        brush: 'Brush with weeds and grass under it',
        'woods-grass': 'Trees over grass, about half and half',
        farmstead: 'Farmyard, buildings, lanes',
        herbaceous: 'Dry range: grass, weeds and low brush',
        'oak-aspen': 'Dry range: oak brush or aspen',
        'pinyon-juniper': 'Dry range: pinyon or juniper over grass',
        sagebrush: 'Dry range: sagebrush over grass',
        'desert-shrub': 'Dry range: desert shrub',
      }),
      amount('groundCoverPercent', 'Ground that is covered', 'pct', [0, 100], 70),
    ],
  },
];
