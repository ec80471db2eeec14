import { describe, expect, it } from 'vitest';
import type { Calculator } from '../../calculators/kit/define.ts';
import type { Cell, Inputs } from '../../calculators/kit/inputs.ts';
import { isOfferKey, type Offer, type OfferKey, offers } from '../../calculators/kit/offers.ts';
import { monthKeys } from '../../calculators/units/months.ts';
import { units } from '../../calculators/units/units.ts';
import * as words from '../../src/place/model/words.ts';
import { animalsOf, rainWords, stockWords, textureWords } from '../../src/place/offer/words.ts';
import { calculators } from '../support/catalog.ts';

/** Every input or column that a place can fill, with where it stands. */
interface Asking {
  readonly at: string;
  readonly key: OfferKey;
  readonly input: Inputs[string];
  readonly table: string | undefined;
}
const askings: readonly Asking[] = calculators.flatMap(({ slug, inputs }) =>
  Object.entries(inputs).flatMap(([name, input]): Asking[] => {
    if (input.kind !== 'rows') return input.offeredBy ? [{ at: `${slug} ${name}`, key: input.offeredBy, input, table: undefined }] : [];
    return Object.entries<Cell>(input.columns).flatMap(([column, cell]) =>
      cell.offeredBy ? [{ at: `${slug} ${name}.${column}`, key: cell.offeredBy, input: cell, table: input.offeredBy }] : [],
    );
  }),
);

/** Offers of earlier visits: no place can make them before those are kept. */
const awaited: readonly OfferKey[] = ['earlier.beside', 'earlier.rate'];
/** Offers that only forms to come ask for. */
const unasked: readonly OfferKey[] = [];

/** Which kind of offer goes into which kind of input. */
const kindsOf: Readonly<Record<Offer['kind'], string>> = {
  number: 'number',
  choice: 'choice',
  yesNo: 'yesNo',
  monthDay: 'date',
  day: 'date',
  record: 'record',
  months: 'months',
};
const dimensionOf = (unit: keyof typeof units): string => units[unit].dimension;

const stages = ['dry', 'late', 'nursing'] as const;
const single = (list: readonly string[]): readonly (readonly [string, ...string[]])[] => list.map((each) => [each]);
/** All words in which a place can tell a choice, each with what stands in for it. */
const canonical: Readonly<Partial<Record<OfferKey, readonly (readonly [string, ...string[]])[]>>> = {
  'place.rainClass': words.rainClasses.map(rainWords),
  'place.rainFrom': single(['known', 'year-rain']),
  'place.latitude': single([25, 30, 35, 40, 45, 50, 55].map((each) => `north-${each}`)),
  'growth.curve': single(words.curves),
  'growth.start': single(monthKeys()),
  'growth.best': single(monthKeys()),
  'growth.quit': single(monthKeys()),
  'growth.fall': single(words.fallFlushes),
  'pasture.slopeFrom': single(['known']),
  'pasture.lengthFrom': single(['known']),
  'pasture.cover': single(words.covers),
  'pasture.grazing': single(words.grazings),
  'pasture.forage': single(words.forages),
  'pasture.standingFeed': single(['tall-fescue', 'annual-range']),
  'grazing.eaten': single(['week', 'until-gone']),
  'pasture.densityFrom': single(['own']),
  'pasture.stand': single(words.stands),
  'pasture.condition': single(words.conditions),
  'pasture.texture': words.textures.map(textureWords),
  'pasture.soilGroup': single(words.soilGroups),
  'pasture.rooting': single(['to-10', 'to-20', 'to-40', 'to-60', 'deeper']),
  'pastures.ground': single(['one', 'parts']),
  'pastures.reachFrom': single(['own', 'guide']),
  'pastures.yieldFrom': single(['survey', 'stock-days']),
  'herd.kind': words.stockKinds.flatMap((kind) => stages.flatMap((stage) => [300, 600, 900].map((weightLb) => stockWords(kind, stage, weightLb)))),
  'herd.stage': single(stages),
  'herd.birthMonth': single(monthKeys()),
  'herd.stageFrom': single(['birth-month']),
  'herd.intakeFrom': single(['own']),
  'herd.mainAnimals': single(Object.values(animalsOf)),
  'hay.onHand': single(['none', 'at-baling', 'now']),
  'hay.storage': single(words.storages),
  'hay.boughtStorage': single(words.storages),
  'hay.feeder': single(words.feeders),
  'prices.hayFrom': single(['range', 'ton']),
  'water.supply': single(words.supplies),
  'water.surfaceFrom': single(['known', 'across', 'shore']),
  'water.flowFrom': single(['known']),
  'water.storage': single(words.tankShapes),
  'water.slip': single(['tested']),
  'tools.frame': single(words.frames),
  'layer.texture': words.textures.map(textureWords),
  'layer.heldFrom': single(['survey', 'texture']),
  'rain.from': [['station', 'medians'], ['record']],
  'record.growthFrom': single(['heights']),
};

describe('what a definition takes from a place', () => {
  it('is found in most calculators', () => {
    const slugs = new Set(askings.map(({ at }) => at.split(' ')[0]));
    expect(calculators.map(({ slug }) => slug).filter((slug) => !slugs.has(slug))).toEqual(['rain-demonstration']);
    expect(askings.length).toBeGreaterThan(150);
  });

  it.each(askings)('$at takes $key in its own kind and dimension', ({ key, input }) => {
    const offer: Offer = offers[key];
    expect(input.kind).toBe(kindsOf[offer.kind]);
    if ('unit' in offer && 'unit' in input) expect(dimensionOf(input.unit)).toBe(dimensionOf(offer.unit));
  });

  it.each(askings.filter(({ input, key }) => input.kind === 'choice' && !awaited.includes(key)))(
    '$at has an option, or a word why not, for all that $key can say',
    ({ at, key, input }) => {
      if (input.kind !== 'choice') throw new TypeError(`${at} is no choice`);
      const known = canonical[key];
      if (known === undefined) throw new RangeError(`no words are listed for ${key}`);
      const takesNot: readonly string[] = input.takesNot ?? [];
      const lost = known.filter((list) => !takesNot.includes(list[0]) && !list.some((each) => Object.hasOwn(input.options, each)));
      expect(lost.map((list) => list[0])).toEqual([]);
      // And none is refused that no place can say.
      expect(takesNot.filter((each) => !known.some((list) => list[0] === each))).toEqual([]);
    },
  );

  it('asks for rows of a table where it asks for parts of a row, and for dates that go with today where they come round', () => {
    const faults = askings.flatMap(({ at, key, input, table }) => {
      const subject = key.split('.')[0];
      const isOfRow = ['layer', 'earlier'].includes(subject ?? '') || (subject === 'herd' && at.includes('.'));
      const rowSubject = { herd: ['herd'], pastures: ['pasture', 'record'], layers: ['layer'], earlier: ['earlier'] };
      const allowed: readonly string[] = table === undefined ? [] : (Object.entries(rowSubject).find(([name]) => name === table)?.[1] ?? []);
      if (at.includes('.') && !allowed.includes(subject ?? '')) return [`${at} takes ${key}, which no row of its table has`];
      if (!at.includes('.') && isOfRow && key !== 'earlier.beside') return [`${at} takes ${key}, which only a row has`];
      const moves = input.kind === 'date' && (typeof input.occurs === 'object' || input.occurs === 'thisYear');
      if (offers[key].kind === 'monthDay' && !moves) return [`${at} takes a day of every year and does not move with today`];
      return [];
    });
    expect(faults).toEqual([]);
  });

  it('never takes what is measured on the day: clips, rings, steps, slake and jars', () => {
    const measured =
      /^(?:greenG|heightIn|cutIn|readingCount|pairReadingCount|wetG|dryG|plateG|firstMin|secondMin|thirdMin|leftIn|plantCount|litterCount|rockCount|bareCount|seen|jarMl|coreG|holeMl|stoneG|runoffMl|throughMl|firstRunS|stepsCount|dropIn|fillS)$/;
    const names = calculators.flatMap(({ slug, inputs }) =>
      Object.entries(inputs).flatMap(([name, input]) =>
        input.kind === 'rows'
          ? Object.entries<Cell>(input.columns).map(([column, cell]) => ({ at: `${slug} ${name}.${column}`, name: column, key: cell.offeredBy }))
          : [{ at: `${slug} ${name}`, name, key: input.offeredBy }],
      ),
    );
    const found = names.filter(({ name }) => measured.test(name));
    expect(found.length).toBeGreaterThan(20);
    expect(found.filter(({ key }) => key !== undefined)).toEqual([]);
  });

  it('has every offer in the list asked for somewhere', () => {
    const asked = new Set<string>(askings.map(({ key }) => key));
    expect(Object.keys(offers).filter((key) => isOfferKey(key) && !asked.has(key) && !unasked.includes(key))).toEqual([]);
  });
});

/** Tells which calculators await what is not kept yet. */
it('awaits earlier visits in one calculator', () => {
  const waiting = (calculator: Calculator): boolean => askings.some(({ at, key }) => at.startsWith(`${calculator.slug} `) && awaited.includes(key));
  expect(calculators.filter(waiting).map(({ slug }) => slug)).toEqual(['ring-test']);
});
