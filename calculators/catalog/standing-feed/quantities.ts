import { stockLinesTable } from '../../asks/stock.ts';
import { amount, day, table, word } from '../../kit/quantities.ts';

export const quantities = {
  grazingForDays: amount('Standing feed lasts', 'T', 'd'),
  lowGrazingDays: amount('If weather takes twice as much', 'T_{low}', 'd'),
  highGrazingDays: amount('If weather took nothing', 'T_{high}', 'd'),
  lastDay: day('Feeds them through about'),
  verdict: word('Does it cover the days when feed is wanted?', {
    reaches: 'Yes, it covers all the days',
    short: 'No, some days are fed another way',
  }),
  wantedDays: amount('Days that feed is wanted', 'T_w', 'd'),
  openDays: amount('Of those, days after this field is opened', 'T_o', 'd'),
  shortDays: amount('Days to be fed another way', 'T_s', 'd'),
  shortLb: amount('Dry feed for those days', 'F_s', 'lb', -2),
  aboveLbPerAc: amount('Above the stubble when measured', 'F_0', 'lb/ac', -1),
  waitMonths: amount('From measuring to grazing', 't_w', 'mo', 1),
  weatheredPercent: amount('Weather takes before you start', 'p_w', 'pct'),
  startLbPerAc: amount('Above the stubble on the first day', 'F', 'lb/ac', -1),
  fromStartPercent: amount('Loss in a month, share of what is left on the first day', 'p_F', 'pct', 1),
  eatenPercent: amount('Share of that eaten', 'u', 'pct'),
  eatenLb: amount('Stock would eat if all were grazed on the first day', 'G', 'lb', -2),
  stockLines: stockLinesTable('p_i'),
  demandLbPerDay: amount('All stock eat', 'D', 'lb/d', -1),
  lossDays: amount('Days that weather takes while you graze and wait', 'T_p', 'd'),
  firstStripAc: amount('First strip', 'a_1', 'ac', 2),
  firstStripFt: amount('Move the wire for the first strip by', 'x_1', 'ft'),
  lossCases: table('By what weather takes', {
    caseLossPercent: amount('Loss in a month', 'p_c', 'pct', 1),
    caseStartLbPerAc: amount('Above the stubble on the first day', 'F_c', 'lb/ac', -1),
    caseFromStartPercent: amount('Loss in a month, of that', 'p_{Fc}', 'pct', 1),
    caseEatenLb: amount('Would be eaten on the first day', 'G_c', 'lb', -2),
    caseDays: amount('It lasts', 'T_c', 'd'),
  }),
  dayByDay: table('What stands, day by day', {
    leftDay: day('On'),
    afterDays: amount('Days in', 't', 'd'),
    leftLbPerAc: amount('Above the stubble, not yet grazed', 'F_t', 'lb/ac', -1),
  }),
  strips: table('A strip every two weeks', {
    atDay: day('On'),
    daysIn: amount('Days in', 't', 'd'),
    ungrazedLbPerAc: amount('Above the stubble, not yet grazed', 'F_t', 'lb/ac', -1),
    stripAc: amount('Strip', 'a', 'ac', 2),
    stripFt: amount('Move the wire by', 'x', 'ft'),
  }),
} as const;
