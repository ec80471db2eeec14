import { amount, table, word } from '../../kit/quantities.ts';
import { months } from '../../units/months.ts';

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

export const quantities = {
  kinds: table('Each kind of stock', ['stock', 'stage', 'countHead', 'lowPercent', 'likelyPercent', 'highPercent', 'eachLbPerDay', 'lineLbPerDay'], {
    stock: word('Kind', stockWords),
    stage: word('Stage', stageWords),
    countHead: amount('Head', 'n', 'head'),
    weightLb: amount('Weight of one', 'W', 'lb'),
    lowPercent: amount('Guides, least', 'p_l', 'pct', 1),
    likelyPercent: amount('Share of weight eaten', 'p', 'pct', 1),
    highPercent: amount('Guides, most', 'p_h', 'pct', 1),
    eachLbPerDay: amount('One eats', 'e', 'lb/d'),
    lineLbPerDay: amount('All eat', 'E', 'lb/d'),
    linearAu: amount('Units, straight', 'u_L', 'au', 1),
    metabolicAu: amount('Units, metabolic', 'u_M', 'au', 1),
    calfHead: amount('Calves', 'n_c', 'head'),
    calfLinearAu: amount('Calf units, straight', 'c_L', 'au', 1),
    calfMetabolicAu: amount('Calf units, metabolic', 'c_M', 'au', 1),
  }),
  herdLbPerDay: amount('The herd eats, with the water out', 'D', 'lb/d', -1),
  lowLbPerDay: amount('The herd eats, if the guides read high', 'D_l', 'lb/d', -1),
  highLbPerDay: amount('The herd eats, if the guides read low', 'D_h', 'lb/d', -1),
  ruleLbPerDay: amount('Pounds a day for one unit, by your convention', 'd', 'lb/d'),
  ruleDays: amount('Days in a month, by your convention', 't', 'd', 1),
  monthLb: amount('The herd eats in a month', 'M', 'lb', -2),
  monthTon: amount('In a month', 'M_t', 'ton', 1),
  lowMonthTon: amount('In a month, if the guides read high', 'M_l', 'ton', 1),
  highMonthTon: amount('In a month, if the guides read low', 'M_h', 'ton', 1),
  cattleLbPerDay: amount('Cattle', 'D_c', 'lb/d', -1),
  smallLbPerDay: amount('Sheep and goats', 'D_s', 'lb/d', -1),
  horsesLbPerDay: amount('Horses', 'D_e', 'lb/d', -1),
  grownLinearAu: amount('Units without calves, straight', 'G_L', 'au', 1),
  grownMetabolicAu: amount('Units without calves, metabolic', 'G_M', 'au', 1),
  calvesHead: amount('Calves on their mothers', 'N_c', 'head'),
  calvesLinearAu: amount('Calves by weight, straight', 'C_L', 'au', 1),
  calvesMetabolicAu: amount('Calves by weight, metabolic', 'C_M', 'au', 1),
  allLinearAu: amount('Animal units, straight by weight', 'U_L', 'au', 1),
  allMetabolicAu: amount('Animal units, metabolic', 'U_M', 'au', 1),
  unitsAu: amount('Animal units by your rule', 'U', 'au', 1),
  otherRuleAu: amount('The other weight rule would give', 'U_o', 'au', 1),
  eatenUnitsAu: amount('Animal units by what they eat', 'U_e', 'au', 1),
  ruleMonthLb: amount('A month by your animal units and pounds', 'M_U', 'lb', -2),
  yearMonths: table('The same head, month by month', ['inMonth', 'nursingHead', 'inMonthLbPerDay', 'inMonthTon'], {
    inMonth: word('Month', months),
    nursingHead: amount('Nursing', 'n_n', 'head'),
    lengthDays: amount('Days', 't_m', 'd'),
    inMonthLbPerDay: amount('Eat a day', 'D_m', 'lb/d', -1),
    inMonthTon: amount('In the month', 'M_m', 'ton', 1),
  }),
  yearTon: amount('In a year', 'M_y', 'ton'),
  calfCounts: table('The calves under each rule', { rule: word('Calves', calfLabels), countedAu: amount('Animal units', 'U_r', 'au', 1) }),
  monthCounts: table('The same herd under each month', ['rule', 'byUnitsLb', 'eatenMonthLb'], {
    rule: word('Animal-unit month', monthRuleLabels),
    countLbPerDay: amount('Pounds a day', 'd_r', 'lb/d'),
    countDays: amount('Days', 't_r', 'd', 1),
    unitLb: amount('One unit, one month', 'm_r', 'lb'),
    byUnitsLb: amount('Your units for that month', 'M_r', 'lb', -2),
    eatenMonthLb: amount('Eaten in those days, by the guides', 'E_r', 'lb', -2),
  }),
} as const;
