import type { ValuesOf } from '../../kit/inputs.ts';
import { animalUnitMonthLb } from '../../math/herd/animalUnitMonthLb.ts';
import { animalUnits } from '../../math/herd/animalUnits.ts';
import { dailyIntakeLb } from '../../math/herd/dailyIntakeLb.ts';
import { guideLine, guidePercents, type HerdStock } from '../../math/herd/guidePercents.ts';
import { herdAnimalUnits } from '../../math/herd/herdAnimalUnits.ts';
import { intakeSwing } from '../../math/herd/intakeSwing.ts';
import { monthRule } from '../../math/herd/monthRule.ts';
import { isBreeding, type Stage, stageFromBirth } from '../../math/herd/stageFromBirth.ts';
import { sumOf } from '../../math/special/sumOf.ts';
import { daysInMonth } from '../../units/days.ts';
import { type Month, monthKeys, monthNumber } from '../../units/months.ts';
import type { inputs } from './inputs.ts';

/** Units of a calf over four months where it is counted as a fixed share. */
const fixedCalfUnits = 0.3;

const monthRules = {
  'lb-600': monthRule('idaho', 'round'),
  'lb-750': monthRule('oregon', 'round'),
  'lb-780': monthRule('nebraska', 'round'),
  'lb-790': monthRule('handbook', 'twelfth'),
  // The grazing specification of the Kansas wildlife areas.
  'lb-870': { lbPerDay: 29, days: 30 },
  'lb-912': monthRule('air-dry-30', 'twelfth'),
  'lb-915': monthRule('air-dry-30', 'half'),
} as const;
export type MonthRule = keyof typeof monthRules;
const allMonthRules = ['lb-600', 'lb-750', 'lb-780', 'lb-790', 'lb-870', 'lb-912', 'lb-915'] as const satisfies readonly MonthRule[];
export type CalfRule = 'within' | 'by-weight' | 'fixed';
const allCalfRules = ['within', 'by-weight', 'fixed'] as const satisfies readonly CalfRule[];

/** February as most years have it. */
const commonYear = 2027;

type Asked = ValuesOf<typeof inputs>;
type Line = Asked['herd'][number];

function stageOf({ stageFrom, month }: Pick<Asked, 'stageFrom' | 'month'>, { stock, stage, birthMonth }: Line): Stage | 'none' {
  if (!isBreeding(stock)) return 'none';
  return stageFrom === 'known' ? stage : stageFromBirth(stock, monthNumber(birthMonth), monthNumber(month));
}
const isCow = (stock: HerdStock): boolean => stock !== 'ewe' && stock !== 'lamb' && stock !== 'doe' && stock !== 'horse';
const isSmall = (stock: HerdStock): boolean => stock === 'ewe' || stock === 'lamb' || stock === 'doe';

/** Share of its weight that one of a line eats in a month, by the guides or as given. */
function percentsOf({ stageFrom, intakeFrom, quality }: Asked, line: Line, month: Month) {
  if (intakeFrom === 'own') return { lowPercent: line.ownPercent, likelyPercent: line.ownPercent, highPercent: line.ownPercent };
  const stage = stageOf({ stageFrom, month }, line);
  return guidePercents(line.stock, stage === 'none' ? 'dry' : stage, quality);
}
/** The same herd month by month, its stages by the months of birth. Where the stage was given it is known for one day only. */
function yearOf(asked: Asked) {
  if (asked.stageFrom !== 'birth-month') return [];
  return monthKeys().map((inMonth) => {
    const lengthDays = daysInMonth(commonYear, monthNumber(inMonth));
    const inMonthLbPerDay = sumOf(asked.herd, (line) =>
      dailyIntakeLb({ head: line.countHead, weightLb: line.weightLb, intakePercent: percentsOf(asked, line, inMonth).likelyPercent }),
    );
    const isNursing = (line: Line): boolean => stageOf({ stageFrom: asked.stageFrom, month: inMonth }, line) === 'nursing';
    const nursingHead = sumOf(asked.herd, (line) => (isNursing(line) ? line.countHead : 0));
    return { inMonth, nursingHead, lengthDays, inMonthLbPerDay, inMonthTon: (inMonthLbPerDay * lengthDays) / 2000 };
  });
}

export function compute(asked: Asked) {
  const { weightRule, calfRule } = asked;
  const { lbPerDay: ruleLbPerDay, days: ruleDays } = monthRules[asked.monthRule];
  const kinds = asked.herd.map((line) => {
    const { stock, countHead, weightLb } = line;
    const stage = stageOf(asked, line);
    const percents = percentsOf(asked, line, asked.month);
    const eachLbPerDay = dailyIntakeLb({ head: 1, weightLb, intakePercent: percents.likelyPercent });
    const lineLbPerDay = countHead * eachLbPerDay;
    const unitsOf = (rule: 'linear' | 'metabolic'): number => herdAnimalUnits([{ head: countHead, unitsPerHead: animalUnits(weightLb, rule) }]);
    const isCalf = stock === 'calf';
    return {
      stock,
      stage,
      countHead,
      weightLb,
      ...percents,
      eachLbPerDay,
      lineLbPerDay,
      linearAu: isCalf ? 0 : unitsOf('linear'),
      metabolicAu: isCalf ? 0 : unitsOf('metabolic'),
      calfHead: isCalf ? countHead : 0,
      calfLinearAu: isCalf ? unitsOf('linear') : 0,
      calfMetabolicAu: isCalf ? unitsOf('metabolic') : 0,
    };
  });
  const ends = kinds.map(({ stock, stage, lineLbPerDay }) => {
    // Figures of one's own are taken to miss by as much as the guides do for that kind.
    const { lowRatio, highRatio } = intakeSwing(guideLine(stock, stage === 'none' ? 'dry' : stage, asked.quality));
    return { stock, lineLbPerDay, lowRatio, lowLineLbPerDay: lineLbPerDay * lowRatio, highRatio, highLineLbPerDay: lineLbPerDay * highRatio };
  });
  const sum = (of: (kind: (typeof kinds)[number]) => number): number => sumOf(kinds, of);
  const herdLbPerDay = sum((kind) => kind.lineLbPerDay);
  const grownLinearAu = sum((kind) => kind.linearAu);
  const grownMetabolicAu = sum((kind) => kind.metabolicAu);
  const calvesHead = sum((kind) => kind.calfHead);
  const calvesLinearAu = sum((kind) => kind.calfLinearAu);
  const calvesMetabolicAu = sum((kind) => kind.calfMetabolicAu);
  const calfUnits = (rule: CalfRule, byWeight: number): number => (rule === 'within' ? 0 : rule === 'fixed' ? fixedCalfUnits * calvesHead : byWeight);
  const allLinearAu = grownLinearAu + calfUnits(calfRule, calvesLinearAu);
  const allMetabolicAu = grownMetabolicAu + calfUnits(calfRule, calvesMetabolicAu);
  const [unitsAu, otherRuleAu] = weightRule === 'linear' ? [allLinearAu, allMetabolicAu] : [allMetabolicAu, allLinearAu];
  const monthLb = herdLbPerDay * ruleDays;
  const lowLbPerDay = sumOf(ends, (end) => end.lowLineLbPerDay);
  const highLbPerDay = sumOf(ends, (end) => end.highLineLbPerDay);
  const yearMonths = yearOf(asked);
  const calfCounts = allCalfRules.map((rule) => ({
    rule,
    countedAu: weightRule === 'linear' ? grownLinearAu + calfUnits(rule, calvesLinearAu) : grownMetabolicAu + calfUnits(rule, calvesMetabolicAu),
  }));
  return {
    kinds,
    ends,
    herdLbPerDay,
    lowLbPerDay,
    highLbPerDay,
    ruleLbPerDay,
    ruleDays,
    monthLb,
    monthTon: monthLb / 2000,
    lowMonthTon: (lowLbPerDay * ruleDays) / 2000,
    highMonthTon: (highLbPerDay * ruleDays) / 2000,
    cattleLbPerDay: sum(({ stock, lineLbPerDay }) => (isCow(stock) ? lineLbPerDay : 0)),
    smallLbPerDay: sum(({ stock, lineLbPerDay }) => (isSmall(stock) ? lineLbPerDay : 0)),
    horsesLbPerDay: sum(({ stock, lineLbPerDay }) => (stock === 'horse' ? lineLbPerDay : 0)),
    grownLinearAu,
    grownMetabolicAu,
    calvesHead,
    calvesLinearAu,
    calvesMetabolicAu,
    allLinearAu,
    allMetabolicAu,
    unitsAu,
    otherRuleAu,
    eatenUnitsAu: herdLbPerDay / ruleLbPerDay,
    ruleMonthLb: animalUnitMonthLb({ animalUnits: unitsAu, lbPerDay: ruleLbPerDay, days: ruleDays }),
    yearMonths,
    yearTon: sumOf(yearMonths, (each) => each.inMonthTon),
    calfCounts,
    monthCounts: allMonthRules.map((rule) => {
      const { lbPerDay, days } = monthRules[rule];
      const all = { lbPerDay, days };
      return {
        rule,
        countLbPerDay: lbPerDay,
        countDays: days,
        unitLb: animalUnitMonthLb({ animalUnits: 1, ...all }),
        byUnitsLb: animalUnitMonthLb({ animalUnits: unitsAu, ...all }),
        eatenMonthLb: herdLbPerDay * days,
      };
    }),
  };
}
