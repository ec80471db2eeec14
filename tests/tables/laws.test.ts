import { describe, expect, it } from 'vitest';
import { antecedentTable } from '../../calculators/tables/antecedent.ts';
import { availableWaterLostToSalt, profileClasses } from '../../calculators/tables/availableWater.ts';
import { contouring } from '../../calculators/tables/contouring.ts';
import { agriculturalCovers, type Cover, type CoverCondition, cultivatedCovers, rangeCovers } from '../../calculators/tables/curveNumbers.ts';
import { designStorms } from '../../calculators/tables/designStorms.ts';
import { erodibilityByTextureLists, permeabilityScales } from '../../calculators/tables/erodibility.ts';
import * as hazards from '../../calculators/tables/feedHazards.ts';
import { forageHeights } from '../../calculators/tables/forageHeights.ts';
import { greenAmptTextures } from '../../calculators/tables/greenAmptTextures.ts';
import { pastureCover } from '../../calculators/tables/pastureCover.ts';
import { pondFactors, unitPeakCoefficients } from '../../calculators/tables/peakFlow.ts';
import { type DensityLimits, rootLimitingDensity } from '../../calculators/tables/rootLimitingDensity.ts';
import { rootStoppage } from '../../calculators/tables/rootStoppage.ts';
import { soilLossTolerance } from '../../calculators/tables/soilLossTolerance.ts';
import { soilWaterByTexture } from '../../calculators/tables/soilWaterByTexture.ts';
import { intakeByHeat, pipeInsideIn } from '../../calculators/tables/stockWater.ts';
import { textureCenters } from '../../calculators/tables/textureCenters.ts';
import { loadTables } from '../support/tableCells.ts';

/** What must hold for numbers of their kind, whatever a source prints. A misread cell breaks these sooner than any other test. */
const tables = await loadTables();
const cells = tables.flatMap(({ name, cells: each }) =>
  Object.entries(each).map(([path, value]) => ({ path: `${name}: ${path}`, key: keyOf(path), value })),
);
function keyOf(path: string): string {
  return path.split('.').findLast((part) => !/^\d+$/.test(part)) ?? path;
}
const numbersIn = (value: unknown): readonly number[] => (Array.isArray(value) ? value : [value]).filter((each) => typeof each === 'number');
const rises = (numbers: readonly number[]): boolean => numbers.every((each, at) => at === 0 || each >= (numbers[at - 1] ?? each));
const climbs = (numbers: readonly number[]): boolean => numbers.every((each, at) => at === 0 || each > (numbers[at - 1] ?? Number.NEGATIVE_INFINITY));
const falls = (numbers: readonly number[]): boolean => rises(numbers.map((each) => -each));
const columnOf = (rows: readonly (readonly number[])[], column: number): readonly number[] => rows.flatMap((row) => row.slice(column, column + 1));

/** Every record in the tables, however deep. */
function* recordsIn(value: unknown): Generator<Readonly<Record<string, unknown>>> {
  if (typeof value !== 'object' || value === null) return;
  if (!Array.isArray(value)) yield Object.fromEntries(Object.entries(value));
  for (const each of Object.values(value)) yield* recordsIn(each);
}
const records = tables.flatMap(({ name, exports }) =>
  Object.values(exports).flatMap((value) => [...recordsIn(value)].map((record) => ({ name, record }))),
);

describe('every table', () => {
  it('gives percents from 0 to 100 and shares from 0 to 1', () => {
    const outside = cells.filter(({ key, value }) => {
      const most = /percent$|^lost|removed/i.test(key) ? 100 : /share$|fraction$|porosity$|factor$/i.test(key) ? 1 : Number.POSITIVE_INFINITY;
      return numbersIn(value).some((number) => most !== Number.POSITIVE_INFINITY && (number < 0 || number > most));
    });
    expect(outside).toEqual([]);
  });
  it('has a number below nothing only among fitted coefficients', () => {
    expect(cells.filter(({ path, value }) => numbersIn(value).some((number) => number < 0) && !path.includes('unitPeakCoefficients'))).toEqual([]);
  });
  it('puts the low end before the high one', () => {
    const ends: readonly (readonly [string, string])[] = [
      ['low', 'high'],
      ['lowPercent', 'likelyPercent'],
      ['likelyPercent', 'highPercent'],
      ['lowGal', 'highGal'],
    ];
    for (const { name, record } of records)
      for (const [low, high] of ends) {
        const [one, other] = [record[low], record[high]];
        if (typeof one === 'number' && typeof other === 'number') expect(one, `${name}: ${JSON.stringify(record)}`).toBeLessThanOrEqual(other);
      }
    const pairs = cells.filter(({ value }) => Array.isArray(value) && value.length === 2 && !value.includes(null));
    expect(pairs.length).toBeGreaterThan(100);
    expect(pairs.filter(({ value, path }) => !rises(numbersIn(value)) && !path.includes('.rows.'))).toEqual([]);
  });
  it('puts classes in the order of their limits', () => {
    for (const { name, exports } of tables)
      for (const value of Object.values(exports))
        for (const list of [value, ...[...recordsIn(value)].flatMap((record) => Object.values(record))])
          if (Array.isArray(list))
            for (const limit of ['from', 'upTo', 'toIn', 'toSlopePercent', 'toRootingDepthIn', 'days']) {
              const limits = list
                .flatMap((row: unknown) => [...recordsIn(row)].slice(0, 1).map((record) => record[limit]))
                .filter((each) => typeof each === 'number');
              if (limits.length === list.length) expect(climbs(limits), `${name}: ${limit} ${limits.join(', ')}`).toBe(true);
            }
  });
});

describe('hazards', () => {
  const lists = Object.entries(hazards).flatMap(([name, value]) =>
    Array.isArray(value)
      ? value.flatMap((list: unknown) => [...recordsIn(list)].filter((record) => Array.isArray(record['bands'])).map((record) => ({ name, record })))
      : [],
  );
  const numbers = (bands: unknown, key: string): readonly number[] =>
    (Array.isArray(bands) ? bands : [])
      .flatMap((band: unknown) => [...recordsIn(band)].slice(0, 1).map((record) => record[key]))
      .filter((each) => typeof each === 'number');
  it('never allow more, or say less, as the measure rises, and never more to pregnant stock', () => {
    expect(lists.length).toBeGreaterThan(10);
    for (const { name, record } of lists) {
      const { list, bands } = record;
      expect(numbers(bands, 'from')[0], `${name}, ${list}`).toBe(0);
      expect(rises(numbers(bands, 'severity')), `${name}, ${list}: severity`).toBe(true);
      for (const key of ['mostPercent', 'mostPregnantPercent']) expect(falls(numbers(bands, key)), `${name}, ${list}: ${key}`).toBe(true);
      for (const band of Array.isArray(bands) ? bands : [])
        for (const { mostPercent, mostPregnantPercent } of [...recordsIn(band)].slice(0, 1))
          if (typeof mostPercent === 'number') expect(Number(mostPregnantPercent), `${name}, ${list}`).toBeLessThanOrEqual(mostPercent);
    }
  });
});

describe('water', () => {
  it('runs off more from tighter soil and from poorer cover', () => {
    const covers: readonly (readonly [string, Cover])[] = [
      ...Object.entries<Cover>(agriculturalCovers.covers),
      ...Object.entries<Cover>(rangeCovers.covers),
      ...Object.values<{ readonly treatments: Readonly<Record<string, Cover>> }>(cultivatedCovers.covers).flatMap(({ treatments }) =>
        Object.entries(treatments),
      ),
    ];
    const order: readonly CoverCondition[] = ['good', 'fair', 'poor'];
    for (const [name, { conditions }] of covers) {
      for (const { a, b, c, d } of Object.values(conditions)) {
        const known = [a, b, c, d].filter((each) => each !== null);
        expect(rises(known) && known.every((each) => each >= 30 && each <= 98), `${name}: ${known.join(', ')}`).toBe(true);
      }
      for (const group of ['a', 'b', 'c', 'd'] as const) {
        const known = order.flatMap((condition) => conditions[condition]?.[group] ?? []);
        expect(rises(known), `${name}, ${group}: ${known.join(', ')}`).toBe(true);
      }
    }
    for (const table of [agriculturalCovers, rangeCovers]) expect(table.poorBelowPercent).toBeLessThan(table.goodAbovePercent);
  });
  it('runs off less from dry ground and more from wet', () => {
    for (const [middle, dry, wet] of antecedentTable.rows) expect(rises([dry, middle, wet]), `${middle}`).toBe(true);
    for (const column of [0, 1, 2]) expect(falls(columnOf(antecedentTable.rows, column)), `column ${column}`).toBe(true);
  });
  it('falls in a storm from nothing to all of it, and never backwards', () => {
    for (const column of [0, 1, 2, 3, 4]) {
      const fallen = columnOf(designStorms.rows, column);
      expect(rises(fallen), `column ${column}`).toBe(true);
      expect([fallen[0], fallen.at(-1)]).toEqual([0, column === 0 ? 24 : 1]);
    }
  });
  it('peaks lower where more is held first or stands in ponds', () => {
    for (const [type, rows] of Object.entries<readonly (readonly number[])[]>(unitPeakCoefficients.types)) {
      expect(climbs(columnOf(rows, 0)), type).toBe(true);
      expect(falls(columnOf(rows, 1)), type).toBe(true);
    }
    expect(climbs(columnOf(pondFactors.rows, 0)) && falls(columnOf(pondFactors.rows, 1))).toBe(true);
  });
  it('is held in no soil past its pores, and never below wilting', () => {
    for (const [texture, water] of Object.entries(soilWaterByTexture.textures)) {
      for (const end of [0, 1] as const) expect(water.wiltingPointShare[end], texture).toBeLessThan(water.fieldCapacityShare[end]);
      expect(water.readilyEvaporableMm[1], texture).toBeLessThanOrEqual(water.evaporableMm[1]);
    }
    for (const [texture, { porosity, effectivePorosity }] of Object.entries<{ readonly porosity: number; readonly effectivePorosity: number }>(
      greenAmptTextures.textures,
    ))
      expect(effectivePorosity, texture).toBeLessThan(porosity);
    expect(climbs(availableWaterLostToSalt.conductivityDsPerM) && climbs(availableWaterLostToSalt.lostPercent)).toBe(true);
    expect(profileClasses.classes.at(-1)?.toIn).toBe(Number.POSITIVE_INFINITY);
  });
  it('is drunk more in heat, least by a cow that gives no milk', () => {
    for (const { source, airF, gal } of intakeByHeat) {
      expect(climbs(airF), source).toBe(true);
      const lists = Object.entries<readonly number[]>(gal);
      // The hottest end of the first list falls again for cows in milk: a plan takes the running maximum.
      for (const [animal, drunk] of lists) expect(animal === 'cow-nursing' || rises(drunk), `${source}, ${animal}`).toBe(true);
      const [dry, nursing] = ['cow-dry', 'cow-nursing'].map((name) => lists.find(([animal]) => animal === name)?.[1] ?? []);
      for (const [at, drunk] of (dry ?? []).entries()) expect(drunk, `${source}, ${at}`).toBeLessThan(nursing?.[at] ?? Number.POSITIVE_INFINITY);
    }
    expect(
      climbs(['3/4', '1', '1-1/4', '1-1/2', '2', '3'].map((size) => Object.entries(pipeInsideIn).find(([name]) => name === size)?.[1] ?? 0)),
    ).toBe(true);
  });
});

describe('ground', () => {
  it('washes less with more organic matter, under more cover and under a lower canopy', () => {
    for (const [texture, factors] of Object.entries<readonly number[]>(erodibilityByTextureLists['stewart-1975'].erodibility))
      expect(falls(factors), texture).toBe(true);
    for (const [texture, { below, above }] of Object.entries<{ readonly below: number; readonly above: number }>(
      erodibilityByTextureLists['stone-hilborn-2012'].erodibility,
    ))
      expect(above, texture).toBeLessThanOrEqual(below);
    for (const { slowestInPerH } of Object.values(permeabilityScales)) expect(climbs([...slowestInPerH].reverse())).toBe(true);
    for (const [height, grounds] of Object.entries<Readonly<Record<string, readonly (readonly number[])[]>>>(pastureCover.factors))
      for (const [ground, rows] of Object.entries(grounds)) {
        for (const row of rows) expect(falls(row), `${height}, ${ground}: ${row.join(', ')}`).toBe(true);
        for (const column of pastureCover.coverPercent.keys())
          expect(falls(columnOf(rows, column)), `${height}, ${ground}, column ${column}`).toBe(true);
      }
  });
  it('takes shorter fields and narrower strips as it steepens; a strip halves the factor of the contour', () => {
    const { rows } = contouring;
    expect(falls(rows.map(({ lengthLimitFt }) => lengthLimitFt)) && falls(rows.map(({ stripWidthFt }) => stripWidthFt))).toBe(true);
    for (const { contourFactor, stripFactor } of rows) expect(stripFactor).toBe(contourFactor / 2);
    for (const kind of ['renewable', 'nonRenewable'] as const) expect(rises(soilLossTolerance.rows.map((row) => row[kind])), kind).toBe(true);
    for (const { renewable, nonRenewable } of soilLossTolerance.rows) expect(nonRenewable).toBeLessThanOrEqual(renewable);
  });
  it('suits roots before it limits them, and limits them before it stops them', () => {
    for (const [list, { limits }] of Object.entries<{ readonly limits: Readonly<Record<string, DensityLimits>> }>(rootLimitingDensity))
      for (const [texture, { idealBelow, limitsFrom, stopsAbove }] of Object.entries(limits))
        expect(climbs([idealBelow, limitsFrom, stopsAbove].filter((each) => each !== undefined)), `${list}, ${texture}`).toBe(true);
  });
  it('is sand, silt and clay, and no more', () => {
    for (const [texture, { sandPercent, clayPercent }] of Object.entries<{ readonly sandPercent: number; readonly clayPercent: number }>(
      textureCenters.centers,
    ))
      expect(sandPercent + clayPercent, texture).toBeLessThanOrEqual(100);
  });
});

describe('grass', () => {
  it('is left above where it is stopped, below where it is started', () => {
    for (const { forage, source, startIn, stopIn } of forageHeights)
      for (const end of [0, 1] as const) expect(stopIn[end], `${forage}, ${source}`).toBeLessThan(startIn[end]);
  });
  it('stops more roots the more of it is taken', () => {
    expect(climbs(rootStoppage.removedPercent)).toBe(true);
    for (const row of rootStoppage.stoppedPercent) expect(rises(row)).toBe(true);
  });
  it('grows all of a year within the year', () => {
    const curves = cells.filter(({ path, value }) => path.startsWith('growthCurves') && Array.isArray(value) && value.length === 12);
    expect(curves.length).toBeGreaterThan(3);
    for (const { path, value } of curves) expect(Math.abs(numbersIn(value).reduce((sum, each) => sum + each, 0) - 100), path).toBeLessThanOrEqual(1);
  });
});
