import { describe, expect, it } from 'vitest';
import type { Calculator } from '../../calculators/kit/define.ts';
import { type Cell, choice, type Inputs, number, rows } from '../../calculators/kit/inputs.ts';
import { isOfferKey, type Offer, type OfferKey, offers } from '../../calculators/kit/offers.ts';
import { startTexts } from '../../calculators/kit/state.ts';
import { yieldBasisPercents } from '../../calculators/tables/yieldBasis.ts';
import { monthKeys } from '../../calculators/units/months.ts';
import { demoPlace } from '../../src/place/demo.ts';
import { moistureFeels } from '../../src/place/model/visit.ts';
import * as words from '../../src/place/model/words.ts';
import { airDryPercent } from '../../src/place/offer/allGround.ts';
import { fetchFiller, fetchParts } from '../../src/place/offer/fetchParts.ts';
import { animalsOf } from '../../src/place/offer/herdWhole.ts';
import { offersOf } from '../../src/place/offer/offersOf.ts';
import { rainWords } from '../../src/place/offer/placeOffers.ts';
import { textureWords } from '../../src/place/offer/textureWords.ts';
import { stockWords } from '../../src/place/offer/words.ts';
import { calculatorOf, calculators } from '../support/catalog.ts';
import { allOffers, fillTexts } from './allOffers.ts';
import { aPlace } from './aPlace.ts';

/** Every input or column that a place can fill, with where it stands. */
interface Asking {
  readonly at: string;
  readonly key: OfferKey;
  readonly input: Inputs[string];
  readonly table: string | undefined;
}
const askingsOf = ({ slug, inputs }: Pick<Calculator, 'slug' | 'inputs'>): readonly Asking[] =>
  Object.entries(inputs).flatMap(([name, input]): Asking[] => {
    if (input.kind !== 'rows') return input.offeredBy ? [{ at: `${slug} ${name}`, key: input.offeredBy, input, table: undefined }] : [];
    return Object.entries<Cell>(input.columns).flatMap(([column, cell]) =>
      cell.offeredBy ? [{ at: `${slug} ${name}.${column}`, key: cell.offeredBy, input: cell, table: input.offeredBy }] : [],
    );
  });
const askings = calculators.flatMap(askingsOf);

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

const stages = ['dry', 'late', 'nursing'] as const;
const single = (list: readonly string[]): readonly (readonly [string, ...string[]])[] => list.map((each) => [each]);
/** All words in which a place can tell a choice, each with what stands in for it. */
const canonical: Readonly<Partial<Record<OfferKey, readonly (readonly [string, ...string[]])[]>>> = {
  'place.rainClass': words.rainClasses.map(rainWords),
  'place.rainFrom': single(['known', 'year-rain']),
  'place.latitude': single([...[25, 30, 35, 40, 45, 50, 55].map((each) => `north-${each}`), 'south-25', 'south-35', 'south-45']),
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
  'pasture.stand': single(words.stands),
  'pasture.condition': single(words.conditions),
  'pasture.texture': words.textures.map(textureWords),
  'pasture.soilGroup': single(words.soilGroups),
  'pasture.rooting': single(['to-10', 'to-20', 'to-40', 'to-60', 'deeper']),
  'pastures.ground': single(['one', 'parts']),
  'pastures.reachFrom': single(['own', 'guide']),
  'pastures.yieldFrom': single(['survey', 'stock-days']),
  'pastures.stand': single(words.stands),
  'pastures.condition': single(words.conditions),
  'pastures.densityFrom': single(['own']),
  'pastures.texture': words.textures.map(textureWords),
  'herd.kind': words.stockKinds.flatMap((kind) => stages.flatMap((stage) => [300, 600, 900].map((weightLb) => stockWords(kind, stage, weightLb)))),
  'herd.seasonKind': words.stockKinds.flatMap((kind) =>
    stages.flatMap((stage) => [300, 600, 900].map((weightLb) => stockWords(kind, stage, weightLb))),
  ),
  'herd.winterKind': words.stockKinds.flatMap((kind) =>
    stages.flatMap((stage) => [300, 600, 900].map((weightLb) => stockWords(kind, stage, weightLb))),
  ),
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
  'water.sulfateAs': single(['so4']),
  'water.saltAs': single(['dissolved-solids']),
  'water.nitrateAs': single(['not-said']),
  'tools.frame': single(words.frames),
  'layer.texture': words.textures.map(textureWords),
  'layer.heldFrom': single(['survey', 'texture']),
  'rain.from': [['station', 'medians'], ['record']],
  'rain.since': single(monthKeys()),
  'rain.yearsFrom': single(['record']),
  'record.growthFrom': single(['heights']),
  'visit.moisture': single(moistureFeels),
  'earlier.beside': single(['visit']),
};

/** What is wrong with one of them, by the laws of offers. */
const laws: Readonly<Record<string, (asking: Asking) => readonly string[]>> = {
  'an offer of the list': ({ at, key }) => (isOfferKey(key) ? [] : [`${at} takes ${key}, which is no offer`]),
  'its own kind and unit': ({ at, key, input }) => {
    const offer: Offer | undefined = Object.hasOwn(offers, key) ? offers[key] : undefined;
    if (offer === undefined) return [];
    if (input.kind !== kindsOf[offer.kind]) return [`${at} is a ${input.kind} and takes a ${offer.kind}`];
    return 'unit' in offer && 'unit' in input && input.unit !== offer.unit ? [`${at} is in ${input.unit} and takes ${offer.unit}`] : [];
  },
  'an option, or a word why not, for all that it can say': ({ at, key, input }) => {
    if (input.kind !== 'choice') return [];
    const known = canonical[key];
    if (known === undefined) return [`${at}: no words are listed for ${key}`];
    const takesNot: readonly string[] = input.takesNot ?? [];
    const lost = known.filter((list) => !takesNot.includes(list[0]) && !list.some((each) => Object.hasOwn(input.options, each)));
    return [
      ...lost.map(([word]) => `${at} has no option for ${word}`),
      // And none is refused that no place can say.
      ...takesNot.filter((each) => !known.some((list) => list[0] === each)).map((word) => `${at} refuses ${word}, which no place says`),
    ];
  },
  'parts of a row where it asks for rows, and dates that go with today where they come round': ({ at, key, input, table }) => {
    const subject = key.split('.')[0];
    const isOfRow = ['layer', 'earlier'].includes(subject ?? '') || (subject === 'herd' && at.includes('.'));
    const rowSubject = { herd: ['herd'], pastures: ['pasture', 'record'], layers: ['layer'], earlier: ['earlier'] };
    const allowed: readonly string[] = table === undefined ? [] : (Object.entries(rowSubject).find(([name]) => name === table)?.[1] ?? []);
    if (at.includes('.') && !allowed.includes(subject ?? '')) return [`${at} takes ${key}, which no row of its table has`];
    if (!at.includes('.') && isOfRow && key !== 'earlier.beside' && key !== 'earlier.alike') return [`${at} takes ${key}, which only a row has`];
    const moves = input.kind === 'date' && (typeof input.occurs === 'object' || input.occurs === 'thisYear');
    if (isOfferKey(key) && offers[key].kind === 'monthDay' && !moves) return [`${at} takes a day of every year and does not move with today`];
    return [];
  },
  'nothing that is measured on the day: clips, rings, steps, slake and jars': ({ at }) =>
    measured.test(at.split(/[ .]/).at(-1) ?? '') ? [`${at} is measured on the day`] : [],
};
const measured =
  /^(?:greenG|heightIn|cutIn|readingCount|pairReadingCount|wetG|dryG|plateG|firstMin|secondMin|thirdMin|leftIn|plantCount|litterCount|rockCount|bareCount|seen|jarMl|coreG|holeMl|stoneG|runoffMl|throughMl|firstRunS|stepsCount|dropIn|fillS|noneCount|tenCount|thirtyCount|fiftyCount|seventyCount|ninetyCount)$/;

describe('what a definition takes from a place', () => {
  it('is found in most calculators', () => {
    const slugs = new Set(askings.map(({ at }) => at.split(' ')[0]));
    expect(calculators.map(({ slug }) => slug).filter((slug) => !slugs.has(slug))).toEqual(['rain-demonstration', 'share-taken']);
    expect(askings.length).toBeGreaterThan(150);
  });

  describe.each(Object.entries(laws))('is %s', (_, faultsOf) => {
    it.each(askings)('$at by $key', (asking) => {
      expect(faultsOf(asking)).toEqual([]);
    });
  });

  it('is told of names that are there to be measured', () => {
    const names = calculators.flatMap(({ inputs }) =>
      Object.entries(inputs).flatMap(([name, input]) => (input.kind === 'rows' ? Object.keys(input.columns) : [name])),
    );
    expect(names.filter((name) => measured.test(name)).length).toBeGreaterThan(20);
  });

  it('has every offer in the list asked for somewhere', () => {
    const asked = new Set<string>(askings.map(({ key }) => key));
    expect(Object.keys(offers).filter((key) => isOfferKey(key) && !asked.has(key) && !unasked.includes(key))).toEqual([]);
  });
});

it('takes what an earlier visit read in the one form that can stand beside it', () => {
  const taking = ({ slug }: Calculator): boolean => askings.some(({ at, key }) => at.startsWith(`${slug} `) && key.startsWith('earlier.'));
  expect(calculators.filter(taking).map(({ slug }) => slug)).toEqual(['ring-test']);
});

it.each(calculators.map((each) => [each.slug, each] as const))('the parts that %s fetches offer it all that a place offers it', async (_, form) => {
  const [place, today] = [demoPlace('demo', 'a test', '2026-06-01T00:00:00.000Z'), 20_624];
  for (const pastureIds of [[], ['low-bench']]) {
    const own = offersOf(await fetchParts([form]), place, today, { ids: pastureIds });
    expect((await fetchFiller(form))(form, own, today)).toEqual(fillTexts(form, allOffers(place, today, { ids: pastureIds }), today));
  }
});

/** Each law is broken once on purpose. */
describe('a fault put into a definition', () => {
  const day = { occurs: 'fixed', default: '2026-06-01' } as const;
  const acres = number('Ground', 'A', 'ac', [1, 100], 40, { offeredBy: 'pasture.area' });
  const noOffer: Calculator['inputs'] = JSON.parse(JSON.stringify({ areaAc: { ...acres, offeredBy: 'pasture.acres' } }));
  const planted: readonly (readonly [string, Calculator['inputs'], string])[] = [
    ['an offer of another dimension', { areaAc: { ...acres, offeredBy: 'pasture.startHeight' } }, 'planted areaAc is in ac and takes in'],
    ['an offer of another kind', { areaAc: { ...acres, offeredBy: 'pasture.cover' } }, 'planted areaAc is a number and takes a choice'],
    ['an offer that is in no list', noOffer, 'planted areaAc takes pasture.acres, which is no offer'],
    ['an offer that only a row has', { thickIn: number('Layer', 'd', 'in', [1, 9], 3, { offeredBy: 'layer.thickness' }) }, 'which only a row has'],
    [
      'a row of another table',
      {
        herd: rows({
          label: 'Herd',
          rowName: 'group',
          each: '{areaAc}',
          maxRows: 3,
          offeredBy: 'herd',
          columns: { areaAc: acres },
          default: [{ areaAc: 40 }],
        }),
      },
      'planted herd.areaAc takes pasture.area, which no row of its table has',
    ],
    [
      'a word that its list lacks',
      { soil: choice('Soil', 'a', { options: { a: 'A', b: 'B', c: 'C' }, offeredBy: 'pasture.soilGroup' }) },
      'planted soil has no option for d',
    ],
    [
      'a word refused that no place says',
      { soil: choice('Soil', 'a', { options: { a: 'A', b: 'B', c: 'C', d: 'D' }, takesNot: ['e'], offeredBy: 'pasture.soilGroup' }) },
      'planted soil refuses e, which no place says',
    ],
    [
      'a day of every year that stays',
      { day: { kind: 'date', label: 'Day', belongsTo: 'place', ...day, offeredBy: 'season.turnIn' } },
      'does not move with today',
    ],
    [
      'an offer of what is measured',
      { heightIn: number('Height', 'h', 'in', [1, 60], 8, { offeredBy: 'pasture.startHeight' }) },
      'is measured on the day',
    ],
  ];
  it.each(planted)('is told: %s', (_, inputs, says) => {
    const found = askingsOf({ slug: 'planted', inputs }).flatMap((asking) => Object.values(laws).flatMap((faultsOf) => faultsOf(asking)));
    expect(found.join('\n')).toContain(says);
  });
  it('is told by no law where there is none', () => {
    expect(askingsOf({ slug: 'planted', inputs: { areaAc: acres } }).flatMap((asking) => Object.values(laws).flatMap((law) => law(asking)))).toEqual(
      [],
    );
  });
  it('an offered value beyond the limits of its field stays out and is said', () => {
    const calculator = calculatorOf('days-of-grass');
    const input = calculator.inputs['areaAc'];
    if (input?.kind !== 'number') throw new TypeError('no acres');
    const at = (areaAc: number) =>
      fillTexts(calculator, allOffers(aPlace({ pastures: [{ id: 'a', name: 'A', areaAc, isCounted: true, paddocks: [] }] }), 20_624), 20_624);
    for (const beyond of [input.max * 1.001, input.min / 2]) {
      const { texts, marks, said } = at(beyond);
      expect(marks.map((mark) => mark.at)).not.toContain('areaAc');
      expect(texts['areaAc']).toBe(startTexts(calculator.inputs)['areaAc']);
      expect(said.join()).toMatch(/your place’s .* ac is more or less than this form can take/);
    }
    expect(at(input.max).marks.map((mark) => mark.at)).toContain('areaAc');
  });
});

describe('a figure whose basis a form needs otherwise than a place tells it', () => {
  const singleOf = (place: Parameters<typeof allOffers>[0]) => allOffers(place, 20_000).single;
  const prices = { hayLikelyUsdPerTon: 140, freightUsdPerLoad: 400 };
  const bought = { baleLb: 1000, loadCount: 34, moisturePercent: 15 };
  it('is a price of hay with its freight, $400 on 17 tons, and by the dry ton', () => {
    const offered = singleOf(aPlace({ prices, hay: { stacks: [], bought } }));
    expect(offered.get('prices.hayLikely')).toMatchObject({ amount: 140 });
    expect(offered.get('prices.hayDelivered')).toMatchObject({ amount: 163.5, says: 'with freight' });
    expect(offered.get('prices.hayDry')).toMatchObject({ amount: 192.4 });
  });
  it('is a price at the gate, and said to be, where a load is not known', () => {
    const offered = singleOf(aPlace({ prices, hay: { stacks: [] } }));
    expect(offered.get('prices.hayDelivered')).toMatchObject({ amount: 140, says: 'at the seller’s gate: add freight' });
    expect(offered.has('prices.hayDry')).toBe(false);
  });
  it('is delivered already where freight is nothing', () => {
    expect(singleOf(aPlace({ prices: { ...prices, freightUsdPerLoad: 0 } })).get('prices.hayDelivered')).toMatchObject({
      amount: 140,
      says: 'with freight',
    });
  });
  it('is a yield in air-dry pounds, nine tenths of it dry (common practice)', () => {
    const place = aPlace();
    const offered = singleOf({ ...place, pastures: place.pastures.map((each) => ({ ...each, normalLbPerAc: 3000 })) });
    expect(offered.get('pastures.normal')).toMatchObject({ amount: 3000 });
    expect(offered.get('pastures.normalDry')).toMatchObject({ amount: 2700 });
    expect(airDryPercent).toBe(yieldBasisPercents['air-dry']);
  });
});
