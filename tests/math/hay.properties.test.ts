import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { baleVolumeFt3 } from '../../calculators/math/hay/baleVolumeFt3.ts';
import { baleWeightLb } from '../../calculators/math/hay/baleWeightLb.ts';
import { coldIncreasePercent } from '../../calculators/math/hay/coldIncreasePercent.ts';
import { costPerNutrientLb } from '../../calculators/math/hay/costPerNutrientLb.ts';
import { costPerTonEaten } from '../../calculators/math/hay/costPerTonEaten.ts';
import { cropYieldTons } from '../../calculators/math/hay/cropYieldTons.ts';
import { eatenShare } from '../../calculators/math/hay/eatenShare.ts';
import { hayNeededLb } from '../../calculators/math/hay/hayNeededLb.ts';
import { keptShare } from '../../calculators/math/hay/keptShare.ts';
import { meanMonthsStored } from '../../calculators/math/hay/meanMonthsStored.ts';
import { priceAfterLoss } from '../../calculators/math/hay/priceAfterLoss.ts';
import { pricePerTonFromBale } from '../../calculators/math/hay/pricePerTonFromBale.ts';
import { rindShare } from '../../calculators/math/hay/rindShare.ts';
import { sownFeedCostPerTon } from '../../calculators/math/hay/sownFeedCostPerTon.ts';
import { storageLossPercent } from '../../calculators/math/hay/storageLossPercent.ts';
import { wholeUnits } from '../../calculators/math/hay/wholeUnits.ts';
import { feederWaste } from '../../calculators/tables/feederWaste.ts';
import { hayStorageLossByMonths } from '../../calculators/tables/hayStorageLoss.ts';
import { expectWithin } from '../support/expectWithin.ts';
import { between } from '../support/numbers.ts';

const near = (value: number, other: number) => expect(Math.abs(value - other)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other)));
const loss = between(0, 90);

describe('losses', () => {
  it('compound: order does not matter, and together they leave more than their sum would', () => {
    fc.assert(
      fc.property(loss, loss, (first, second) => {
        near(keptShare([first, second]), keptShare([second, first]));
        expect(keptShare([first, second])).toBeGreaterThanOrEqual(1 - (first + second) / 100 - 1e-12);
      }),
    );
  });
  it('leave the herd just what it must eat', () => {
    fc.assert(
      fc.property(between(10, 1e6), between(0, 70), loss, loss, (dryMatterEatenLb, moisturePercent, storageLossPercentage, feedingLossPercent) => {
        const hayLb = hayNeededLb({ dryMatterEatenLb, moisturePercent, storageLossPercent: storageLossPercentage, feedingLossPercent });
        near(hayLb * (1 - moisturePercent / 100) * keptShare([storageLossPercentage, feedingLossPercent]), dryMatterEatenLb);
      }),
    );
  });
  it('cost the same by the ton as by the herd', () => {
    fc.assert(
      fc.property(between(10, 400), between(0, 70), loss, loss, (pricePerTon, moisturePercent, stored, fed) => {
        const losses = { moisturePercent, storageLossPercent: stored, feedingLossPercent: fed };
        near(costPerTonEaten({ pricePerTon, ...losses }), (pricePerTon * hayNeededLb({ dryMatterEatenLb: 2000, ...losses })) / 2000);
      }),
    );
  });
  it('charged by multiplying never charge more than they cost', () => {
    fc.assert(
      fc.property(between(1, 300), loss, (price, lossPercent) => {
        const divided = priceAfterLoss({ price, lossPercent, convention: 'divide' });
        expect(priceAfterLoss({ price, lossPercent, convention: 'multiply' })).toBeLessThanOrEqual(divided * (1 + 1e-12));
      }),
    );
  });
  it('in storage grow with time and stay in order', () => {
    fc.assert(
      fc.property(fc.constantFrom(...hayStorageLossByMonths.map(({ method }) => method)), between(0, 17), between(0, 1), (method, months, more) => {
        const now = storageLossPercent({ method, months });
        const later = storageLossPercent({ method, months: months + more });
        expect(now.low).toBeLessThanOrEqual(now.mid);
        expect(now.mid).toBeLessThanOrEqual(now.high);
        expect(later.low).toBeGreaterThanOrEqual(now.low);
        expect(later.high).toBeGreaterThanOrEqual(now.high);
      }),
    );
    expect(storageLossPercent({ method: 'barn', months: 0 })).toEqual({ low: 0, mid: 0, high: 0 });
  });
  it('on average are those of hay fed down evenly, bale by bale', () => {
    fc.assert(
      fc.property(between(0, 12), between(0, 8), fc.integer({ min: 1, max: 200 }), (monthsBeforeFeeding, feedingMonths, bales) => {
        const each = Array.from({ length: bales }, (_, index) => monthsBeforeFeeding + (feedingMonths * (index + 0.5)) / bales);
        near(each.reduce((sum, months) => sum + months, 0) / bales, meanMonthsStored({ monthsBeforeFeeding, feedingMonths }));
      }),
    );
  });
});

describe('bales', () => {
  it('of twice the size weigh eight times as much', () => {
    fc.assert(
      fc.property(between(2, 8), between(2, 8), (diameterFt, widthFt) => {
        const volume = (times: number) => baleVolumeFt3({ shape: 'round', diameterFt: times * diameterFt, widthFt: times * widthFt });
        near(volume(2), 8 * volume(1));
      }),
    );
  });
  it('fill no more than the box around them', () => {
    fc.assert(
      fc.property(between(2, 8), between(2, 8), (sideFt, widthFt) => {
        const box = baleVolumeFt3({ shape: 'rectangular', lengthFt: sideFt, heightFt: sideFt, widthFt });
        near(baleVolumeFt3({ shape: 'round', diameterFt: sideFt, widthFt }), (Math.PI / 4) * box);
      }),
    );
  });
  it('cost by the ton what their weight says', () => {
    fc.assert(
      fc.property(between(20, 200), between(8, 14), (volumeFt3, densityLbPerFt3) => {
        const baleLb = baleWeightLb({ volumeFt3, densityLbPerFt3 });
        near((pricePerTonFromBale({ pricePerBale: 50, baleLb }) * baleLb) / 2000, 50);
      }),
    );
  });
  it('spoil more with a thicker rind, and more where the ends weather too', () => {
    fc.assert(
      fc.property(between(36, 80), between(0, 10), between(0.1, 5), (diameterIn, rindIn, more) => {
        const sides = rindShare({ diameterIn, rindIn });
        expect(rindShare({ diameterIn, rindIn: rindIn + more })).toBeGreaterThan(sides);
        expect(rindShare({ diameterIn, rindIn, widthIn: 60 })).toBeGreaterThanOrEqual(sides);
      }),
    );
  });
  it('rounded up hold the amount, and one fewer does not', () => {
    fc.assert(
      fc.property(between(0, 1e6), between(1, 3000), (amount, size) => {
        const units = wholeUnits(amount, size);
        expect(Number.isInteger(units)).toBe(true);
        expect(units * size).toBeGreaterThanOrEqual(amount * (1 - 1e-8) - 1e-6);
        if (units > 0) expect((units - 1) * size).toBeLessThan(amount);
      }),
    );
  });
  it('are not added for float noise', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), between(0.1, 2000), (count, size) => {
        expect(wholeUnits(count * size, size)).toBe(count);
        expect(wholeUnits(count * size * (1 + 4 * Number.EPSILON), size)).toBe(count);
      }),
    );
  });
});

describe('cold', () => {
  it('asks more of a wet coat than of any dry one, and nothing in mild weather', () => {
    fc.assert(
      fc.property(between(-40, 58), (temperatureF) => {
        const [one, two] = (['one', 'two'] as const).map((wetCoatRule) => coldIncreasePercent({ temperatureF, coat: 'wet', wetCoatRule }));
        expect(two).toBe(2 * Number(one));
        for (const coat of ['dry-fall', 'dry-winter', 'dry-heavy-winter'] as const) {
          const dry = coldIncreasePercent({ temperatureF, coat, wetCoatRule: 'two' });
          expect(one).toBeGreaterThan(dry);
          expect(coldIncreasePercent({ temperatureF, coat, wetCoatRule: 'one' }), 'the rule is for wet coats only').toBe(dry);
        }
      }),
    );
    expect(coldIncreasePercent({ temperatureF: 59, coat: 'wet', wetCoatRule: 'two' })).toBe(0);
  });
});

describe('money', () => {
  it('a pound of nutrient costs more in wetter and in poorer feed', () => {
    fc.assert(
      fc.property(between(10, 400), between(30, 95), between(2, 50), between(0.5, 5), (pricePerTon, dryMatterPercent, nutrientPercent, more) => {
        const feed = { pricePerTon, dryMatterPercent, nutrientPercent };
        expect(costPerNutrientLb({ ...feed, dryMatterPercent: dryMatterPercent + more })).toBeLessThan(costPerNutrientLb(feed));
        expect(costPerNutrientLb({ ...feed, nutrientPercent: nutrientPercent + more })).toBeLessThan(costPerNutrientLb(feed));
      }),
    );
  });
  it('a sown ton costs the acre over what is eaten off it, and water stops at the ceiling', () => {
    fc.assert(
      fc.property(
        between(20, 400),
        between(0.01, 30),
        between(2, 8),
        between(1, 6),
        between(0.2, 1),
        (costPerAc, waterIn, inchesPerTon, mostTonsPerAc, eatenShare) => {
          const yieldTonsPerAc = cropYieldTons({ waterIn, inchesPerTon, mostTonsPerAc });
          expect(yieldTonsPerAc).toBeLessThanOrEqual(mostTonsPerAc);
          expect(yieldTonsPerAc * inchesPerTon).toBeLessThanOrEqual(waterIn * (1 + 1e-12));
          near(sownFeedCostPerTon({ costPerAc, yieldTonsPerAc, eatenShare }) * yieldTonsPerAc * eatenShare, costPerAc);
        },
      ),
    );
  });
});

it.each(feederWaste)(
  'range of $name runs from the least to the most of its columns, likely their median',
  ({ lowPercent, likelyPercent, highPercent, columns }) => {
    const sorted = columns.map(({ percent }) => percent).sort((a, b) => a - b);
    expect(lowPercent).toBe(sorted[0]);
    expect(highPercent).toBe(sorted.at(-1));
    const middle = ((sorted[Math.floor((sorted.length - 1) / 2)] ?? 0) + (sorted[Math.ceil((sorted.length - 1) / 2)] ?? 0)) / 2;
    expectWithin(likelyPercent, middle, 5e-10);
  },
);

describe('share of hay that is eaten', () => {
  const losses = { moisturePercent: 10, storageLossPercent: 20, feedingLossPercent: 25 };
  it('puts losses on top, or takes them off', () => {
    // On top: 0.9 / (1.2 × 1.25) = 0.6. Off: 0.9 × 0.8 × 0.75 = 0.54.
    expect(Math.abs(eatenShare({ ...losses, convention: 'multiply' }) - 0.6)).toBeLessThan(1e-12);
    expect(Math.abs(eatenShare({ ...losses, convention: 'divide' }) - 0.54)).toBeLessThan(1e-12);
  });
  it('takes no loss of all of it, either way', () => {
    for (const convention of ['multiply', 'divide'] as const)
      for (const wrong of [{ moisturePercent: 100 }, { storageLossPercent: 100 }, { feedingLossPercent: 100 }, { feedingLossPercent: -1 }])
        expect(() => eatenShare({ ...losses, ...wrong, convention })).toThrow(RangeError);
  });
});
describe('volume of a bale', () => {
  it('is none without a length, a width or a height', () => {
    const square = { shape: 'rectangular', lengthFt: 8, widthFt: 4, heightFt: 3 } as const;
    for (const wrong of [{ lengthFt: 0 }, { widthFt: 0 }, { heightFt: 0 }]) expect(() => baleVolumeFt3({ ...square, ...wrong })).toThrow(RangeError);
  });
});

describe('a word that no table holds', () => {
  it('is refused, as a link could carry it', () => {
    const call = (of: (...given: never[]) => unknown, given: object) => () => Reflect.apply(of, undefined, [given]);
    expect(call(coldIncreasePercent, { temperatureF: 20, coat: 'wet', wetCoatRule: 'three' })).toThrow('needs a rule of the table');
    expect(call(storageLossPercent, { method: 'under-a-tree', months: 3 })).toThrow('needs method of the table');
  });
});
