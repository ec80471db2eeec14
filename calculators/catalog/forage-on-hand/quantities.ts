import type { UnitName } from '../../units/units.ts';

const amount = <U extends UnitName>(label: string, symbol: string, unit: U, digits = 0) => ({ kind: 'number', label, symbol, unit, digits }) as const;
const offSquaredRatio = amount('Off the mean as a share of it, squared', 'e^2', 'ratio', 3);

export const quantities = {
  grazingForDays: amount('Grazing here', 'T', 'd'),
  lowGrazingDays: amount('Grazing at the low end', 'T_{low}', 'd'),
  highGrazingDays: amount('Grazing at the high end', 'T_{high}', 'd'),
  frameAreaFt2: amount('Area of the frame', 'a', 'sqft', 2),
  gramLbPerAc: amount('Each gram of dry forage in the frame is', 'k', 'lb/ac', 1),
  stagePercent: amount('Air-dry weight in the green', 'm_a', 'pct'),
  dryPercent: amount('Dry matter in the clippings', 'm', 'pct', 1),
  plotLines: {
    kind: 'rows',
    label: 'Each plot',
    columns: { greenG: amount('Green', 'g', 'g'), plotLbPerAc: amount('Dry forage', 'M_i', 'lb/ac', -1), offSquaredRatio },
  },
  plotSumLbPerAc: amount('Plots added up', 'M_{sum}', 'lb/ac', -1),
  heightLines: {
    kind: 'rows',
    label: 'Each height',
    columns: { heightIn: amount('Height', 'H_i', 'in', 1), offSquaredRatio },
  },
  heightSumIn: amount('Heights added up', 'H_{sum}', 'in', 1),
  clipLines: {
    kind: 'rows',
    label: 'Each clip that sets the stick',
    columns: {
      cutIn: amount('Cut off', 'h_c', 'in', 1),
      greenG: amount('Green', 'g', 'g'),
      clipLbPerAc: amount('Dry forage', 'M_c', 'lb/ac', -1),
      clipLbPerAcIn: amount('In an inch', 'd_c', 'lb/ac/in'),
    },
  },
  cutSumIn: amount('Inches cut, added up', 'h_{sum}', 'in', 1),
  clipSumLbPerAc: amount('Clips added up', 'M_{cs}', 'lb/ac', -1),
  usedLbPerAcIn: amount('Pounds in an inch', 'd', 'lb/ac/in'),
  lowLbPerAcIn: amount('Pounds in an inch, least', 'd_{low}', 'lb/ac/in'),
  highLbPerAcIn: amount('Pounds in an inch, most', 'd_{high}', 'lb/ac/in'),
  sampleCount: amount('Places measured', 'n', 'count'),
  offSumRatio: amount('Squares added up', 'S', 'ratio', 3),
  variationPercent: amount('How much the places differ, share of the mean', 'v', 'pct'),
  tRatio: amount('Student’s t', 't', 'ratio', 2),
  closePercent: amount('The mean is good to within', 'e', 'pct'),
  clippedLbPerAc: amount('Clipped, mean of the plots', 'M', 'lb/ac', -1),
  meanHeightIn: amount('Mean height', 'H', 'in', 1),
  standingLbPerAc: amount('Stands there in all', 'B', 'lb/ac', -1),
  stubbleKeptLbPerAc: amount('Left as stubble', 'b', 'lb/ac', -1),
  availableLbPerAc: amount('Stands above the stubble', 'F', 'lb/ac', -1),
  lowAvailableLbPerAc: amount('Above the stubble, low end', 'F_{low}', 'lb/ac', -1),
  highAvailableLbPerAc: amount('Above the stubble, high end', 'F_{high}', 'lb/ac', -1),
  eatenPercent: amount('Share of that eaten', 'u', 'pct'),
  eatenLbPerAc: amount('Stock will eat from an acre', 'G', 'lb/ac', -1),
  trampledLbPerAc: amount('Trampled or passed over', 'L', 'lb/ac', -1),
  eatenLb: amount('Stock will eat from the whole', 'G_A', 'lb', -2),
  stockLines: {
    kind: 'rows',
    label: 'Each kind of stock',
    columns: {
      countHead: amount('Head', 'N', 'head'),
      weightLb: amount('Weight of one', 'W', 'lb'),
      intakePercent: amount('Eats a day, share of its weight', 'p', 'pct', 1),
      lineLbPerDay: amount('Eats', 'D_i', 'lb/d'),
    },
  },
  demandLbPerDay: amount('All stock eat', 'D', 'lb/d', -1),
  neededPlots: amount('Places to measure for the closeness you want', 'n_E', 'count'),
} as const;
