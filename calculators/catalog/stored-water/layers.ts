import { choice, number, rows } from '../../kit/inputs.ts';

const filled = { dry: 'Dry', 'slightly-moist': 'Slightly moist', moist: 'Moist', wet: 'Wet', full: 'Full' } as const;

export const layers = rows({
  label: 'Layers, from the top down',
  rowName: 'layer',
  help: 'A layer ends where the soil changes, or every foot. The last one ends at rock, hardpan or water, or where you stopped digging.',
  maxRows: 6,
  columns: {
    thicknessIn: number('Thickness of the layer', 'd', 'in', [1, 60], 12, { field: 'Dig a hole with one straight side and hold a tape against it.' }),
    texture: choice('Texture', 'silt-loam', {
      options: {
        sand: 'Sand',
        'loamy-sand': 'Loamy sand',
        'sandy-loam': 'Sandy loam',
        loam: 'Loam',
        'silt-loam': 'Silt loam',
        silt: 'Silt',
        'sandy-clay-loam': 'Sandy clay loam',
        'clay-loam': 'Clay loam',
        'silty-clay-loam': 'Silty clay loam',
        'sandy-clay': 'Sandy clay',
        'silty-clay': 'Silty clay',
        clay: 'Clay',
      },
      help: 'Wet a handful and squeeze a ribbon out between thumb and finger. Sand makes none, loam under an inch, clay loam one to two, clay more.',
    }),
    heldFrom: choice('What it can hold', 'survey', {
      options: { survey: 'from the soil survey', texture: 'from the texture: I have no survey' },
      help: 'The soil survey’s figure for your soil goes first. Texture is the stand-in.',
    }),
    surveyRatio: number('Available water capacity in the survey', 'a', 'ratio', [0.01, 0.5], 0.2, {
      shownWhen: { heldFrom: 'survey' },
      help: 'Inches of water in an inch of soil. 0.20 is 2.4 in a foot. The survey has taken stones off already: then leave stones at 0.',
      ask: 'No survey at hand? Choose “from the texture”.',
    }),
    stonesPercent: number('Stones', 's', 'pct', [0, 90], 0, { help: 'Share of the side of the hole that is stone. Stones hold nothing.' }),
    feel: choice('Water in it today, by feel', 'moist', {
      options: {
        dry: `${filled.dry}: crumbles, no ball, no stain`,
        'slightly-moist': `${filled['slightly-moist']}: weak ball, no stain`,
        moist: `${filled.moist}: ball with finger marks, light stain`,
        wet: `${filled.wet}: ball, coats the hand`,
        full: `${filled.full}: soft ball, water shows when you squeeze or shake it`,
        measured: 'I measured it',
      },
      help: 'Never take it for full unseen. Take a handful from the middle of the layer and squeeze it hard.',
      field:
        'Dry: falls apart or is hard. Slightly moist: a weak ball, no stain on the fingers. Moist: a ball that keeps finger marks, a light stain. Wet: a ball, and soil and water coat the hand. Full: a soft ball, and water shows on it for a moment when you squeeze or shake it.',
    }),
    filledPercent: number('How full it is', 'f', 'pct', [0, 100], 50, {
      shownWhen: { feel: 'measured' },
      help: 'Share of the available water that is there: 0 where plants wilt for good, 100 after the soil has drained.',
    }),
  },
  default: [
    { thicknessIn: 8, texture: 'silt-loam', heldFrom: 'survey', surveyRatio: 0.22, stonesPercent: 0, feel: 'moist', filledPercent: 50 },
    { thicknessIn: 16, texture: 'silt-loam', heldFrom: 'survey', surveyRatio: 0.2, stonesPercent: 0, feel: 'wet', filledPercent: 50 },
    { thicknessIn: 24, texture: 'silty-clay-loam', heldFrom: 'survey', surveyRatio: 0.18, stonesPercent: 0, feel: 'wet', filledPercent: 50 },
  ],
});
