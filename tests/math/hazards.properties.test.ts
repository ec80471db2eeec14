import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandOf, readingsOf } from '../../calculators/math/hazards/bandOf.ts';
import { dilutionParts, dilutionSharePercent } from '../../calculators/math/hazards/dilutionSharePercent.ts';
import { forageNitrateReadings, leastSharePercent } from '../../calculators/math/hazards/forageNitrateReadings.ts';
import { nitrateDose } from '../../calculators/math/hazards/nitrateDose.ts';
import { nitrateAsPpm, nitrateNitrogenPpm } from '../../calculators/math/hazards/nitrateNitrogenPpm.ts';
import { strictestPrussicRule } from '../../calculators/math/hazards/strictestPrussicRule.ts';
import {
  type BandList,
  deadlyNitrate,
  deadlyNitrateBand,
  forageNitrate,
  foragePrussicAcid,
  foragePrussicAcidAsIs,
  waterNitrate,
  waterSalts,
  waterSulfate,
} from '../../calculators/tables/feedHazards.ts';
import { prussicRules } from '../../calculators/tables/prussicRules.ts';
import { between } from '../support/numbers.ts';

const near = (one: number, other: number, relative = 1e-9): void => {
  expect(Math.abs(one - other)).toBeLessThanOrEqual(relative * Math.max(1, Math.abs(other)));
};
const every: readonly BandList[] = [
  ...forageNitrate,
  ...waterNitrate,
  ...waterSulfate,
  ...waterSalts,
  ...foragePrussicAcid,
  ...foragePrussicAcidAsIs,
];

describe('nitrate in any form', () => {
  const form = fc.constantFrom('no3-n' as const, 'no3' as const, 'kno3' as const);
  it('comes back from each form', () => {
    fc.assert(
      fc.property(form, between(0, 20_000), between(20, 95), (as, nitrogenPpm, dryMatterPercent) => {
        const amount = nitrateAsPpm(nitrogenPpm, as);
        near(nitrateNitrogenPpm({ amount, form: as, unit: 'ppm', basis: 'dry', dryMatterPercent }), nitrogenPpm);
        near(nitrateNitrogenPpm({ amount: amount / 10_000, form: as, unit: 'percent', basis: 'dry', dryMatterPercent }), nitrogenPpm);
        const asFed = (amount * dryMatterPercent) / 100;
        near(nitrateNitrogenPpm({ amount: asFed, form: as, unit: 'ppm', basis: 'as-fed', dryMatterPercent }), nitrogenPpm);
      }),
    );
  });
});

describe('the amount near the least that kills', () => {
  const nitrogenGPerCwt = ({ gPerCwt, form }: (typeof deadlyNitrate)[number]): number =>
    nitrateNitrogenPpm({ amount: gPerCwt, form, unit: 'ppm', basis: 'dry', dryMatterPercent: 100 });
  it('comes from what research prints, without the page whose unit is in doubt', () => {
    // By hand: 30 / 7.2182 = 4.16; 22.68 / 7.2182 = 3.14; 22.68 / 4.4268 = 5.12.
    const found = deadlyNitrate.filter(({ source }) => source !== 'mahanna-nitrate').map(nitrogenGPerCwt);
    expect(found.map((each) => each.toFixed(2))).toEqual(['4.16', '3.14', '5.12']);
    expect(deadlyNitrateBand).toEqual({ leastGPerCwt: Math.floor(Math.min(...found)), mostGPerCwt: Math.round(Math.max(...found)) });
  });
});

describe('published classes', () => {
  it('start at nothing, rise, and never grow milder', () => {
    for (const { list, bands } of every) {
      expect(bands[0]?.from, list).toBe(0);
      for (const [index, { from, severity }] of bands.entries()) {
        const before = bands[index - 1];
        if (before === undefined) continue;
        expect(from, list).toBeGreaterThan(before.from);
        expect(severity, list).toBeGreaterThanOrEqual(before.severity);
      }
    }
  });
  it('put an edge into the class above it', () => {
    for (const { bands } of every) for (const band of bands) expect(bandOf(bands, band.from)).toBe(band);
  });
  it('lead with the strictest, and more is never read milder', () => {
    fc.assert(
      fc.property(between(0, 12_000), between(0, 6000), fc.boolean(), (ppm, more, isPregnant) => {
        const readings = forageNitrateReadings(ppm, isPregnant);
        const severities = readings.map(({ severity }) => severity);
        expect(severities).toEqual(severities.toSorted((one, other) => other - one));
        expect(forageNitrateReadings(ppm + more, isPregnant)[0]?.severity).toBeGreaterThanOrEqual(severities[0] ?? 0);
        for (const lists of [waterNitrate, waterSulfate, waterSalts, foragePrussicAcid]) {
          const lead = readingsOf(lists, ppm, 'calves')[0]?.severity ?? 0;
          expect(readingsOf(lists, ppm + more, 'calves')[0]?.severity).toBeGreaterThanOrEqual(lead);
        }
      }),
    );
  });
  it('never give a pregnant animal more of a ration than another', () => {
    for (const { bands } of forageNitrate) {
      for (const { mostPercent, mostPregnantPercent } of bands) {
        if (mostPercent !== null && mostPregnantPercent !== null) expect(mostPregnantPercent).toBeLessThanOrEqual(mostPercent);
      }
    }
  });
  it('leave out lists for other animals', () => {
    const calves = readingsOf(waterSulfate, 700, 'calves').map(({ list }) => list);
    expect(calves).toContain('north-dakota-calves');
    expect(calves).not.toContain('north-dakota-adults');
  });
  it('take the longest wait and the tallest height', () => {
    for (const { crop, event, least } of prussicRules) expect(strictestPrussicRule(crop, event).least).toBeGreaterThanOrEqual(least);
  });
});

describe('mixing and dose', () => {
  const mix = fc.record({ limitPpm: between(600, 2000), overPpm: between(1, 8000), lowPpm: between(0, 500) });
  it('brings the mix to the limit', () => {
    fc.assert(
      fc.property(mix, ({ limitPpm, overPpm, lowPpm }) => {
        const highPpm = limitPpm + overPpm;
        const share = dilutionSharePercent({ limitPpm, highPpm, lowPpm }) / 100;
        near(share * highPpm + (1 - share) * lowPpm, limitPpm);
        near(dilutionParts({ limitPpm, highPpm, lowPpm }), (1 - share) / share, 1e-6);
      }),
    );
  });
  it('adds feed and water, and turns the sum back into feed alone', () => {
    fc.assert(
      fc.property(between(1, 40), between(0, 6000), between(0, 40), between(0, 300), between(300, 2000), (feedLb, ppm, waterGal, mg, weightLb) => {
        const both = nitrateDose({ feedLb, feedNitrogenPpm: ppm, waterGal, waterNitrogenMgPerL: mg, weightLb });
        near(both.feedG + both.waterG, both.totalG);
        const same = nitrateDose({ feedLb, feedNitrogenPpm: both.asFeedPpm, waterGal: 0, waterNitrogenMgPerL: 0, weightLb });
        near(same.totalG, both.totalG);
        near(same.gPerCwt * weightLb, both.totalG * 100);
      }),
    );
  });
  it('refuses a limit that the other feed already breaks', () => {
    expect(() => dilutionSharePercent({ limitPpm: 1000, highPpm: 3000, lowPpm: 1000 })).toThrow(RangeError);
    expect(() => bandOf(waterSalts[0].bands, -1)).toThrow(RangeError);
    expect(() => nitrateNitrogenPpm({ amount: 1, form: 'no3', unit: 'ppm', basis: 'as-fed', dryMatterPercent: 0 })).toThrow(RangeError);
  });
  it('refuses what no class holds, and parts that cannot be mixed', () => {
    expect(() => bandOf(waterSalts[0].bands, Number.NaN)).toThrow('bandOf needs value');
    expect(() => bandOf([{ from: 10, printed: 'high', severity: 3 }], 5)).toThrow('first edge');
    expect(() => dilutionParts({ limitPpm: 500, highPpm: 4500, lowPpm: 500 })).toThrow('limitPpm');
    expect(() => dilutionParts({ limitPpm: 1500, highPpm: 1499, lowPpm: 500 })).toThrow('highPpm');
    expect(dilutionSharePercent({ limitPpm: 1500, highPpm: 1400, lowPpm: 500 })).toBe(100);
  });
  it('lets the strictest list lead, whatever stands first', () => {
    const mild: BandList = { list: 'mild', source: 's', where: 'w', seen: 'print', bands: [{ from: 0, printed: 'low', severity: 0 }] };
    const strict: BandList = { ...mild, list: 'strict', bands: [{ from: 0, printed: 'high', severity: 3 }] };
    for (const lists of [
      [mild, strict],
      [strict, mild],
    ])
      expect(readingsOf(lists, 1, 'calves').map(({ list }) => list)).toEqual(['strict', 'mild']);
    fc.assert(
      fc.property(between(0, 8000), fc.boolean(), (ppm, isPregnant) => {
        const readings = forageNitrateReadings(ppm, isPregnant);
        for (const [at, { severity, mostPercent }] of readings.entries()) {
          const next = readings[at + 1];
          if (mostPercent === 0) expect(severity).toBe(3);
          if (next) expect(severity).toBeGreaterThanOrEqual(next.severity);
          // Of equals the smaller share leads, and one that was not seen comes last.
          if (next?.severity === severity) expect(mostPercent ?? 101).toBeLessThanOrEqual(next.mostPercent ?? 101);
        }
        const named = readings.flatMap((reading) => (reading.mostPercent === null ? [] : [reading.mostPercent]));
        expect(leastSharePercent(ppm, isPregnant)).toBe(Math.min(100, ...named));
      }),
    );
  });
  it('calls nothing refused that a list allows', () => {
    const clemson = (ppm: number, isPregnant: boolean) => forageNitrateReadings(ppm, isPregnant).find(({ list }) => list === 'clemson');
    expect([clemson(2000, false)?.severity, clemson(2000, true)?.severity]).toEqual([2, 3]);
  });
  it('takes the tallest height and the longest wait of each crop', () => {
    for (const { crop, event, least } of prussicRules) {
      const strictest = strictestPrussicRule(crop, event);
      expect(strictest.crop).toBe(crop);
      expect(strictest.event).toBe(event);
      expect(strictest.least).toBeGreaterThanOrEqual(least);
    }
    // Of two alike, the one that stands first in the table is named.
    for (const { crop, event } of prussicRules) {
      const strictest = strictestPrussicRule(crop, event);
      expect(prussicRules.find((rule) => rule.crop === crop && rule.event === event && rule.least === strictest.least)).toEqual(strictest);
    }
    // A value from outside the types, as a link could carry it.
    expect(() => Reflect.apply(strictestPrussicRule, undefined, ['corn', 'height'])).toThrow('needs a crop and an event');
  });
});
