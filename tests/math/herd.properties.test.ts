import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { animalUnitMonthLb } from '../../calculators/math/herd/animalUnitMonthLb.ts';
import { animalUnits } from '../../calculators/math/herd/animalUnits.ts';
import { beefCowIntakeLb } from '../../calculators/math/herd/beefCowIntakeLb.ts';
import { carryingHead } from '../../calculators/math/herd/carryingHead.ts';
import { feedNeedLb } from '../../calculators/math/herd/feedNeedLb.ts';
import { growingCattleIntakeLb } from '../../calculators/math/herd/growingCattleIntakeLb.ts';
import { headToRemove } from '../../calculators/math/herd/headToRemove.ts';
import { maintenanceEnergyMcalPerKg } from '../../calculators/math/herd/maintenanceEnergyMcalPerKg.ts';
import { pairAnimalUnits } from '../../calculators/math/herd/pairAnimalUnits.ts';
import { intake } from '../../calculators/tables/intake.ts';
import { between } from '../support/numbers.ts';

const near = (value: number, other: number) => expect(Math.abs(value - other)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other)));

describe('animal units', () => {
  it('of both rules agree at 1,000 lb; above it the metabolic one counts less, below it more', () => {
    expect(animalUnits(1000, 'metabolic')).toBe(animalUnits(1000, 'linear'));
    fc.assert(
      fc.property(between(1001, 2500), between(50, 999), (heavy, light) => {
        expect(animalUnits(heavy, 'metabolic')).toBeLessThan(animalUnits(heavy, 'linear'));
        expect(animalUnits(light, 'metabolic')).toBeGreaterThan(animalUnits(light, 'linear'));
      }),
    );
  });
  it('never shrink as the calf grows, under any convention', () => {
    fc.assert(
      fc.property(
        between(800, 1600),
        between(60, 500),
        between(0, 8),
        fc.constantFrom('weights', 'fixed', 'within'),
        (cowLb, calfLb, calfMonths, convention) => {
          const pair = { cowLb, calfLb, calfMonths, convention } as const;
          expect(pairAnimalUnits({ ...pair, calfLb: calfLb + 50, calfMonths: calfMonths + 1 })).toBeGreaterThanOrEqual(pairAnimalUnits(pair));
        },
      ),
    );
  });
});

describe('carrying', () => {
  it('the reckoned head eats just what there is', () => {
    fc.assert(
      fc.property(between(1000, 1e7), between(2, 60), between(1, 365), (eatenLb, dailyLbPerHead, days) => {
        const head = carryingHead({ eatenLb, dailyLbPerHead, days });
        near(animalUnitMonthLb({ animalUnits: head, lbPerDay: dailyLbPerHead, days }), eatenLb);
      }),
    );
  });
  it('removing the reckoned head makes the forage last to the day', () => {
    fc.assert(
      fc.property(
        between(10, 500),
        between(10, 45),
        between(20, 300),
        between(0, 0.9),
        between(0.1, 1.5),
        (head, dailyLbPerHead, daysToFeed, waited, supply) => {
          const daysUntilSale = waited * daysToFeed;
          const eatenLb = supply * head * dailyLbPerHead * daysToFeed;
          const gone = headToRemove({ head, eatenLb, dailyLbPerHead, daysToFeed, daysUntilSale });
          if (gone > 0 && Number.isFinite(gone)) {
            expect(gone).toBeLessThanOrEqual(head * (1 + 1e-9));
            near((head * daysUntilSale + (head - gone) * (daysToFeed - daysUntilSale)) * dailyLbPerHead, eatenLb);
          }
          if (gone === Number.POSITIVE_INFINITY) expect(head * daysUntilSale * dailyLbPerHead).toBeGreaterThan(eatenLb);
          if (gone === 0) expect(supply).toBeGreaterThanOrEqual(1 - 1e-9);
        },
      ),
    );
  });
  it('waiting never lowers the number that must go', () => {
    fc.assert(
      fc.property(between(10, 500), between(0.1, 1.2), between(0, 100), between(0, 90), (head, supply, first, later) => {
        const plan = { head, eatenLb: supply * head * 30 * 200, dailyLbPerHead: 30, daysToFeed: 200 };
        const now = headToRemove({ ...plan, daysUntilSale: first });
        expect(headToRemove({ ...plan, daysUntilSale: first + later })).toBeGreaterThanOrEqual(now - 1e-9 * head);
      }),
    );
  });
});

describe('intake', () => {
  it('of stages adds up, and a stage cut in two eats the same', () => {
    fc.assert(
      fc.property(
        between(1, 200),
        between(1, 200),
        between(1, 500),
        between(200, 1800),
        between(0.5, 5),
        (first, second, head, weightLb, intakePercent) => {
          const stage = { head, weightLb, intakePercent };
          near(
            feedNeedLb([
              { ...stage, days: first },
              { ...stage, days: second },
            ]),
            feedNeedLb([{ ...stage, days: first + second }]),
          );
        },
      ),
    );
  });
  it('by the 1996 equations grows with weight, and by a fifth of a pound for each of milk', () => {
    fc.assert(
      fc.property(
        between(500, 2000),
        between(1, 300),
        between(46, 74),
        fc.boolean(),
        between(0, 50),
        (weightLb, more, tdnPercent, pregnant, milkLb) => {
          const cow = { weightLb, tdnPercent, pregnant, milkLb };
          expect(beefCowIntakeLb({ ...cow, weightLb: weightLb + more })).toBeGreaterThan(beefCowIntakeLb(cow));
          near(beefCowIntakeLb({ ...cow, milkLb: milkLb + 10 }) - beefCowIntakeLb(cow), 2);
        },
      ),
    );
    fc.assert(
      fc.property(between(200, 1000), between(50, 85), (weightLb, tdnPercent) => {
        const animal = { weightLb, tdnPercent };
        expect(growingCattleIntakeLb({ ...animal, age: 'yearling' })).toBeGreaterThan(growingCattleIntakeLb({ ...animal, age: 'calf' }));
      }),
    );
  });
  it('rests on energy that rises with TDN', () => {
    fc.assert(
      fc.property(between(35, 90), between(0.1, 5), (tdnPercent, more) => {
        expect(maintenanceEnergyMcalPerKg(tdnPercent + more)).toBeGreaterThan(maintenanceEnergyMcalPerKg(tdnPercent));
      }),
    );
  });
  // Derived apart from the equation: 400 to 800 lb on forage of 50 to 65 % TDN.
  it.each([
    ['calf', 1.8, 2.6],
    ['yearling', 2.4, 3.1],
  ] as const)('of growing cattle by the equation: a %s eats from %s to %s percent of its weight', (age, least, most) => {
    const percents = [400, 600, 800].flatMap((weightLb) =>
      (age === 'calf' ? [50, 55, 60, 65] : [50, 60]).map((tdnPercent) => (100 * growingCattleIntakeLb({ weightLb, tdnPercent, age })) / weightLb),
    );
    expect(Math.min(...percents).toFixed(1)).toBe(least.toFixed(1));
    expect(Math.max(...percents).toFixed(1)).toBe(most.toFixed(1));
  });
  it.each(intake)('range of $animal, $stage, $quality runs from the least to the most printed', (row) => {
    const printed = row.printed.map(({ percent }) => percent);
    expect(row.lowPercent).toBe(Math.min(...printed));
    expect(row.highPercent).toBe(Math.max(...printed));
    expect(row.likelyPercent).toBe(printed[0]);
  });
});
