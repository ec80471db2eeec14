import { months } from '../../tables/months.ts';

export const stockWords = {
  cow: 'Beef cow',
  heifer: 'Bred heifer or first-calf heifer',
  bull: 'Bull',
  growing: 'Stocker or growing heifer',
  calf: 'Calf on its mother that grazes some',
  ewe: 'Ewe',
  lamb: 'Growing lamb',
  doe: 'Doe',
  horse: 'Horse or mare',
} as const;
export const stageWords = {
  dry: 'Dry, or early in pregnancy',
  late: 'Last weeks before birth',
  nursing: 'Nursing young',
  none: 'Does not matter',
} as const;
export const calfLabels = {
  within: 'Left out until weaning at six months (Range Society, federal handbook)',
  'by-weight': 'By their weight, from three months (Nebraska)',
  fixed: '0.3 each, from four months (extension)',
} as const;
/** The name holds the pounds that the convention is known by. */
export const monthRuleLabels = {
  'lb-600': '600 lb (20 lb a day, 30 days)',
  'lb-750': '750 lb (25 lb a day, 30 days)',
  'lb-780': '780 lb (26 lb a day, 30 days)',
  'lb-790': '790 lb (26 lb a day, 30.4 days)',
  'lb-870': '870 lb (29 lb a day, 30 days)',
  'lb-912': '912 lb (30 lb a day, 30.4 days)',
  'lb-915': '915 lb (30 lb a day, 30.5 days)',
} as const;
export const monthWords = {
  jan: months.jan.label,
  feb: months.feb.label,
  mar: months.mar.label,
  apr: months.apr.label,
  may: months.may.label,
  jun: months.jun.label,
  jul: months.jul.label,
  aug: months.aug.label,
  sep: months.sep.label,
  oct: months.oct.label,
  nov: months.nov.label,
  dec: months.dec.label,
} as const;
