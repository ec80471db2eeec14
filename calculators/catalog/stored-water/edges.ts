import { always, defineEdges, edge, shows, tells, turns } from '../../kit/edges.ts';
import definition from './definition.ts';

const twoLayers = 'layers.thickness=12in,24in';

export default defineEdges(definition, {
  limits: {
    'layers.thicknessIn': [1, 60],
    'layers.surveyRatio': [0.01, 0.5],
    'layers.stonesPercent': [0, 90],
    'layers.filledPercent': [0, 100],
    topOrganicPercent: [0, 8],
    organicPercent: [0, 8],
    rootsMostIn: [1, 120],
    rootsDeepestIn: [1, 120],
    useInPerDay: [0.01, 0.6],
    highF: [0, 125],
    lowF: [-20, 100],
    localPercent: [50, 200],
    easyPercent: [10, 80],
    growthPercent: [5, 99],
    rainIn: [0, 10],
    lostPercent: [0, 100],
  },
  edges: [
    always('Before you dig, have buried'),
    edge('This grass is short of', { on: 'easy-from=own', raised: 'easy=28.4pct', silent: 'easy=28.5pct' }),
    edge('A layer is drier than', {
      on: `${twoLayers}&layers.feel=measured,measured`,
      raised: 'layers.filled=90pct,70pct',
      silent: 'layers.filled=90pct,71pct',
    }),
    edge('A layer is drier than', { on: twoLayers, raised: 'layers.feel=wet,moist', silent: 'layers.feel=wet,wet' }),
    edge('A layer is drier than', { on: twoLayers, raised: 'layers.feel=full,moist', silent: 'layers.feel=full,wet' }),
    edge('Texture stands in for the', {
      on: 'layers.thickness=12in,24in',
      raised: 'layers.held-from=survey,texture',
      silent: 'layers.held-from=survey,survey',
    }),
    edge('Stones are taken off the', { on: twoLayers, raised: 'layers.stones=0pct,0.1pct', silent: 'layers.stones=0pct,0pct', within: 0.1 }),
    edge('Most roots end far above', { on: 'roots-most=8in', raised: 'roots-deepest=32.1in', silent: 'roots-deepest=32in' }),
    edge('Most roots end far above', { on: 'roots-deepest=32in', raised: 'roots-most=7.9in', silent: 'roots-most=8in' }),
    edge('Roots can’t go deeper than', { on: 'roots-deepest=49in', raised: 'roots-most=48.1in', silent: 'roots-most=48in' }),
    edge('The deepest root must be', { on: 'roots-most=13in', raised: 'roots-deepest=12.9in', silent: 'roots-deepest=13in' }),
    edge('By these figures the ground', { on: 'roots-most=1in', raised: 'layers.stones=75.1pct,0pct,0pct', silent: 'layers.stones=75pct,0pct,0pct' }),
    edge('So much less organic matter', {
      on: 'top-organic=6.61pct',
      raised: 'layers.survey=0.0684,0.2,0.18',
      silent: 'layers.survey=0.0685,0.2,0.18',
    }),
    edge('The low of the night', { on: 'use-from=weather&high=88f', raised: 'low=89f', silent: 'low=88f' }),
    edge('In such weather grass uses', { on: 'use-from=weather&low=0f', raised: 'high=10.3f', silent: 'high=10.4f' }),
    tells('it may be slowing now', { told: 'easy=44.5pct', untold: 'easy=44.6pct', on: 'easy-from=own' }),
    tells('it may be slowing now', { on: 'easy-from=own&easy=20pct', told: 'use=0.224in/d', untold: 'use=0.225in/d' }),
    tells('it may be slowing now', { told: 'use=0.327in/d', untold: 'use=0.326in/d' }),
    tells('much the same at both ends', { told: 'use=0.536in/d', untold: 'use=0.535in/d' }),
    tells('by what you measured', { on: 'layers.thickness=60in&layers.filled=60pct', told: 'layers.feel=measured', untold: 'layers.feel=moist' }),
    tells('the least of the published', { on: 'layers.thickness=60in', told: 'layers.held-from=texture', untold: 'layers.held-from=survey' }),
    tells('of rain today would make', { told: 'rain=0.01in', untold: 'rain=0in', within: 0.01 }),
    shows('wetGrowthDays', { shown: 'rain=0.01in', hidden: 'rain=0in', within: 0.01 }),
    turns('standing', { short: 'easy=28.4pct', growing: 'easy=28.5pct' }, { on: 'easy-from=own' }),
  ],
});
