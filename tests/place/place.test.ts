import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { ringTest } from '../../calculators/math/infiltration/ringTest.ts';
import { visitRatio } from '../../calculators/math/infiltration/visitRatio.ts';
import { slakeClass } from '../../calculators/math/soil/slakeClass.ts';
import { sumOf } from '../../calculators/math/special/sumOf.ts';
import { dayMs } from '../../calculators/units/days.ts';
import placeData from '../../content/place/place.json' with { type: 'json' };
import { place } from '../../content/place/place.ts';
import { placeSchema } from '../../content/place/schema.ts';
import { filesBelow, root } from '../support/files.ts';

const folder = 'content/place';
const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');

describe('the demo place', () => {
  it('fits its schema, which refuses what does not belong', () => {
    expect(v.safeParse(placeSchema, placeData).success).toBe(true);
    expect(v.safeParse(placeSchema, { ...placeData, owner: 'somebody' }).success).toBe(false);
    expect(v.safeParse(placeSchema, { ...placeData, areaAc: '610' }).success).toBe(false);
    expect(v.safeParse(placeSchema, { ...placeData, invented: 'A place.' }).success).toBe(false);
  });

  it('has acres that sum to 610', () => {
    expect(place.areaAc).toBe(610);
    expect(sumOf(place.pastures, ({ areaAc }) => areaAc)).toBe(610);
  });

  it('names every soil and pasture once, and no other', () => {
    const soils = place.soils.map(({ id }) => id);
    const pastures = place.pastures.map(({ id }) => id);
    expect(new Set(soils).size).toBe(soils.length);
    expect(new Set(pastures).size).toBe(pastures.length);
    expect(new Set(place.pastures.map(({ soil }) => soil))).toEqual(new Set(soils));
    for (const { sites } of place.visits) for (const { pasture } of sites) expect(pastures).toContain(pasture);
  });

  it('has paddocks where stock graze and nowhere else', () => {
    for (const { name, use, paddockCount } of place.pastures) expect(paddockCount > 0, name).toBe(use === 'grazed');
  });

  it('keeps its hay under the roof that it has', () => {
    const { roomBaleCount, stacks } = place.hayBarn;
    const inside = stacks.filter(({ storedAs }) => storedAs === 'barn');
    expect(sumOf(inside, ({ baleCount }) => baleCount)).toBeLessThanOrEqual(roomBaleCount);
  });

  it('bears out the figures of its README', () => {
    const grazedAc = sumOf(
      place.pastures.filter(({ use }) => use === 'grazed'),
      ({ areaAc }) => areaAc,
    );
    const meadowAc = sumOf(
      place.pastures.filter(({ use }) => use === 'hay'),
      ({ areaAc }) => areaAc,
    );
    const stockLb = sumOf(place.herd, ({ countHead, weightLb }) => countHead * weightLb);
    const eatenLbPerDay = stockLb * 0.025;
    const forageLb = grazedAc * place.usualForageLbPerAc * 0.35;
    const days = (first: string, last: string): number => (Date.parse(last) - Date.parse(first)) / dayMs;
    const hayDays = days('2026-11-01', '2027-04-20');
    const hayTons = sumOf(place.hayBarn.stacks, ({ baleCount, baleLb }) => (baleCount * baleLb) / 2000);
    const figures = [
      `| ${grazedAc} acres |`,
      `| ${meadowAc} acres |`,
      `| ${stockLb.toLocaleString('en-US')} lb |`,
      `${eatenLbPerDay.toLocaleString('en-US')} lb a day`,
      `${Math.round(forageLb).toLocaleString('en-US')} lb |`,
      `${Math.round(forageLb / eatenLbPerDay)} days |`,
      `is ${days('2026-04-20', '2026-11-01')} days`,
      `other ${hayDays} days take ${(hayDays * eatenLbPerDay).toLocaleString('en-US')} lb`,
      `that is ${Math.round((hayDays * eatenLbPerDay) / 0.85 / 2000)} tons`,
      `makes ${meadowAc * place.usualHayTonPerAc} tons`,
      `${sumOf(place.hayBarn.stacks, ({ baleCount }) => baleCount)} bales in the barn, ${hayTons} tons`,
    ];
    const readme = textOf(`${folder}/README.md`).replaceAll(/ +/g, ' ');
    expect(figures.filter((figure) => !readme.includes(figure))).toEqual([]);
  });

  it('names no office, brand, series or address', () => {
    // A few that would be the first to slip in; the rest a reader must see.
    const real =
      /\b(?:USDA|NRCS|SCS|FSA|NOAA|NWS|USGS|EPA|FAO|ARS|BLM|Extension Service|Department of|University|Inc|LLC|series\))\b|https?:|www\.|[®™]/;
    const files = filesBelow(folder, /\.(?:json|md|csv|ts)$/);
    expect(files.length).toBeGreaterThanOrEqual(8);
    expect(files.filter((file) => real.test(textOf(file)))).toEqual([]);
  });

  it('spells no proper name that is not the place’s own', () => {
    const texts: string[] = [];
    JSON.stringify(placeData, (_, value: unknown) => {
      if (typeof value === 'string') texts.push(value);
      return value;
    });
    // A capital inside a sentence marks a name.
    const names = texts.flatMap((text) => [...text.matchAll(/(?<=[a-z,;] )[A-Z]\w*/g)].map(([name]) => name));
    expect([...new Set(names)]).toEqual(['Two', 'Bench']);
  });
});

describe('the field visits', () => {
  it('come in order, on the same pastures', () => {
    const [first, second, ...more] = place.visits;
    expect(more).toEqual([]);
    expect([first?.day.slice(0, 7), second?.day.slice(0, 7)]).toEqual(['2025-05', '2026-05']);
    expect(second?.sites.map(({ pasture }) => pasture)).toEqual(first?.sites.map(({ pasture }) => pasture));
  });

  it('wrote down the slake class that what was seen stands for', () => {
    for (const { sites } of place.visits)
      for (const { slakeSamples } of sites)
        for (const sample of slakeSamples)
          expect(slakeClass({ halfLostSeconds: sample.halfLostSeconds ?? Infinity, leftPercent: sample.leftPercent })).toBe(sample.slakeClass);
  });

  it('counted a hundred points at each site; the last count is the pasture’s cover', () => {
    for (const { sites } of place.visits)
      for (const { cover } of sites) expect(cover.plantCount + cover.litterCount + cover.stoneCount + cover.bareCount).toBe(100);
    for (const { pasture, cover } of place.visits.at(-1)?.sites ?? [])
      expect(place.pastures.find(({ id }) => id === pasture)?.groundCoverPercent).toBe(100 - cover.bareCount);
  });

  it('dug roots that fit into the soil', () => {
    for (const { sites } of place.visits)
      for (const { pasture, roots } of sites) {
        const soilId = place.pastures.find(({ id }) => id === pasture)?.soil;
        expect(roots.mostIn).toBeLessThanOrEqual(roots.deepestIn);
        expect(roots.deepestIn).toBeLessThanOrEqual(place.soils.find(({ id }) => id === soilId)?.depthIn ?? 0);
      }
  });

  it('shows what the README says: a gain on the high bench within chance, a gap between the benches beyond it', () => {
    const rates = (visit: number, pasture: string): number[] =>
      (place.visits[visit]?.sites.find((site) => site.pasture === pasture)?.rings ?? []).map((ring) => ringTest(ring).leadingRateInPerHr);
    const gain = visitRatio({ earlier: rates(0, 'high-bench'), later: rates(1, 'high-bench'), confidencePercent: 95 });
    expect(gain.ratio).toBeGreaterThan(1);
    expect(gain.low).toBeLessThan(1);
    const gap = visitRatio({ earlier: rates(1, 'high-bench'), later: rates(1, 'low-bench'), confidencePercent: 95 });
    expect(gap.low).toBeGreaterThan(1);
    expect(gap.ratio).toBeGreaterThan(gain.ratio);
  });
});
