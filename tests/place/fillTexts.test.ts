import { describe, expect, it } from 'vitest';
import { readCell } from '../../calculators/kit/read.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { rowsIn, startTexts, textIn } from '../../calculators/kit/state.ts';
import { convert } from '../../calculators/units/units.ts';
import type { Place } from '../../src/place/model/place.ts';
import type { Filled } from '../../src/place/offer/fillTexts.ts';
import type { Chosen } from '../../src/place/offer/offersOf.ts';
import { calculatorOf, calculators } from '../support/catalog.ts';
import { allOffers, fillTexts } from './allOffers.ts';
import { day, demo, fill, plain, textAt, with_ } from './filled.ts';

const choices: readonly (readonly [string, Chosen])[] = [
  ['no pasture', {}],
  ['one pasture', { ids: ['low-bench'] }],
  ['three pastures', { ids: ['high-bench', 'low-bench', 'creek-bottom'] }],
];
/** A day of each month, and the ends of February. */
const days = [...Array.from({ length: 12 }, (_, month) => `2027-${String(month + 1).padStart(2, '0')}-15`), '2028-02-29', '2028-12-31'];

describe.each(choices)('forms filled from the demo place, %s chosen', (_, chosen) => {
  it.each(calculators.map(({ slug }) => slug))(
    '%s computes without refusal on every day, and its marks are what stands there',
    (slug) => {
      for (const today of days) {
        const filled = fill(slug, { today, chosen });
        const run = runTexts(calculatorOf(slug), filled.texts);
        expect('refusals' in run ? run.refusals : [], today).toEqual([]);
        for (const { at, text } of filled.marks) expect(textAt(filled.texts, at), `${today} ${at}`).toBe(text);
        expect(new Set(filled.marks.map(({ at }) => at)).size).toBe(filled.marks.length);
      }
      // Thirty years of days, fourteen times.
    },
    60_000,
  );
});

it.each(calculators.map(({ slug }) => slug))('%s is the built example where the place tells nothing', (slug) => {
  const { hay, season, growth, rainClass, latitudeDeg, ...bare } = demo;
  const calculator = calculatorOf(slug);
  const filled = fill(slug, { place: { ...bare, soils: [], pastures: [], herd: [] } });
  expect(filled.marks).toEqual([]);
  expect(filled.said).toEqual([]);
  expect([hay, season, growth, rainClass, latitudeDeg]).not.toContain(undefined);
  const built = startTexts(calculator.inputs);
  const undated = Object.entries(calculator.inputs).filter(([, input]) => input.kind === 'number');
  for (const [key] of undated) expect(filled.texts[key]).toBe(built[key]);
});

describe('what was typed at the place', () => {
  const typed = (area: string, areaAc: number) =>
    fill('days-of-grass', {
      place: { ...demo, pastures: [{ id: 'a', name: 'A', areaAc, typed: { areaAc: area }, isCounted: true, paddocks: [] }] },
      chosen: { ids: ['a'] },
    });
  // 1 ha is 2.471054 acres (NIST SP 811, B.8).
  const areaAc = calculatorOf('days-of-grass').inputs['areaAc'];
  it.each(['16 ha', '1,250', '40 acres'])('stands in the form as “%s”', (text) => {
    if (areaAc?.kind !== 'number') throw new TypeError('no acres');
    const read = readCell(areaAc, text);
    if (!('value' in read) || typeof read.value !== 'number') throw new RangeError(text);
    const filled = fill('soil-loss', {
      place: { ...demo, pastures: [{ id: 'a', name: 'A', areaAc: read.value, typed: { areaAc: text }, isCounted: true, paddocks: [] }] },
      chosen: { ids: ['a'] },
    });
    expect(filled.texts['areaAc']).toBe(text);
    expect(filled.marks).toContainEqual(expect.objectContaining({ at: 'areaAc', text }));
  });
  it('gives way to the number where another window or a file has changed that', () => {
    const { texts } = typed('16 ha', 41);
    expect(plain(textIn(texts['areaAc']))).toBe('41 ac');
  });
  it('stands so of one pasture alone, and several make a number that a person would write', () => {
    const pasture = { id: 'a', name: 'A', areaAc: convert(40, 'ha', 'ac'), typed: { areaAc: '40 ha' }, isCounted: true, paddocks: [] };
    const other = { id: 'b', name: 'B', areaAc: 160, isCounted: true, paddocks: [] };
    const areaOf = (...pastures: (typeof pasture | typeof other)[]) =>
      plain(textIn(fill('days-of-grass', { place: { ...demo, pastures }, chosen: { ids: pastures.map(({ id }) => id) } }).texts['areaAc']));
    expect(areaOf(pasture)).toBe('40 ha');
    expect(areaOf(pasture, other)).toBe('258.8 ac');
  });
  it('and cannot be read is no offer', () => {
    const { marks } = fill('days-of-grass', {
      place: { ...demo, pastures: [{ id: 'a', name: 'A', typed: { areaAc: 'about forty' }, isCounted: true, paddocks: [] }] },
      chosen: { ids: ['a'] },
    });
    expect(marks.map(({ at }) => at)).not.toContain('areaAc');
  });
  it('of a price, a tank and a tool stands there too', () => {
    const place = {
      ...demo,
      prices: { hayLikelyUsdPerTon: 165 },
      tools: { paceFt: 5 },
      typed: { 'prices.hayLikelyUsdPerTon': '$165/ton', 'tools.paceFt': '60 in' },
    };
    expect(fill('hay-value', { place }).marks).toContainEqual(expect.objectContaining({ offer: 'prices.hayLikely', text: '$165/ton' }));
    expect(fill('rain-on-ground', { place }).marks).toContainEqual(expect.objectContaining({ offer: 'tools.pace', text: '60 in' }));
  });
});

describe('ground', () => {
  it('of a chosen pasture goes into the forms of one pasture', () => {
    const chosen = { ids: ['breaks'] };
    const loss = fill('soil-loss', { chosen });
    expect(plain(textIn(loss.texts['areaAc']))).toBe('110 ac');
    expect([loss.texts['slopeFrom'], plain(textIn(loss.texts['slopePercent']))]).toEqual(['known', '20 pct']);
    expect(loss.texts['rooting']).toBe('to-40');
    expect(loss.marks.find(({ at }) => at === 'areaAc')).toEqual({ at: 'areaAc', offer: 'pasture.area', text: loss.texts['areaAc'] });
    expect(fill('storm-runoff', { chosen }).texts['ground']).toBe('one');
    expect(textIn(fill('sown-feed', { chosen: { ids: ['creek-bottom'] } }).texts['texture'])).toBe('clay');
    expect(textIn(fill('slake-test', { chosen: { ids: ['creek-bottom'] } }).texts['soil'])).toBe('clayey');
  });
  it('is not guessed where several pastures are grazed and none is chosen', () => {
    expect(fill('soil-loss').marks.filter(({ offer }) => offer.startsWith('pasture.'))).toEqual([]);
  });
  it('of several goes into tables, and makes them show', () => {
    const filled = fill('storm-runoff', { chosen: { ids: ['high-bench', 'creek-bottom'] } });
    expect(filled.texts['ground']).toBe('parts');
    expect(rowsIn(filled.texts['parts']).map(({ areaAc = '', soilGroup = '' }) => [plain(areaAc), soilGroup])).toEqual([
      ['120 ac', 'b'],
      ['35 ac', 'd'],
    ]);
    expect(fill('storm-runoff').texts['ground']).toBe('one');
  });
  it('of the demo place is that of the example of carrying-capacity', () => {
    const built = rowsIn(startTexts(calculatorOf('carrying-capacity').inputs)['pastures']);
    const filled = rowsIn(fill('carrying-capacity').texts['pastures']);
    const columns = ['areaAc', 'waterDistanceMi', 'slopePercent', 'ownUsablePercent', 'normalLbPerAc', 'poorLbPerAc'];
    const pick = (rows: typeof built) => rows.map((row) => columns.map((name) => row[name]));
    expect(pick(filled)).toEqual(pick(built));
    expect(fill('carrying-capacity').texts['reachFrom']).toBe('own');
  });
  it('gives the mean by acres of what grows', () => {
    // By hand, to four figures: (120 × 2400 + 85 × 3000 + 110 × 1600 + 35 × 4200 + 50 × 2800 + 30 × 2200) / 430.
    expect(plain(textIn(fill('decision-dates').texts['grassLbPerAc']))).toBe('2493 lb/ac');
  });
});

describe('days', () => {
  it('come round with today', () => {
    const { texts, marks } = fill('hay-to-grass', { today: '2027-08-01' });
    expect([texts['fromDay'], texts['toDay']]).toEqual(['2027-11-01', '2028-04-20']);
    expect(marks.filter(({ offer }) => offer.startsWith('season.')).map(({ text }) => text)).toEqual(['2027-11-01', '2028-04-20']);
  });
  it('of a winter that is under way are today and the turn-in of this one, with the hay that lies there', () => {
    const stack = { id: 'a', baleCount: 120, baleLb: 950, baledDay: '2026-06-20', storedAs: 'barn' } as const;
    const herd: Place['herd'] = [{ id: 'c', kind: 'cow', countHead: 45, weightLb: 1250, birthsDay: '03-10' }];
    const on = (today: string) => fill('hay-to-grass', { place: with_({ hay: { stacks: [stack] }, herd }), today });
    for (const today of ['2026-11-01', '2026-11-30', '2027-02-01', '2027-04-19']) {
      const { texts, marks, said, todayAt } = on(today);
      expect([texts['fromDay'], texts['toDay'], texts['ownCount'], texts['baledDay']]).toEqual([today, '2027-04-20', '120', '2026-06-20']);
      expect(rowsIn(texts['herd'])[0]?.['birthDay'], today).toBe('2027-03-10');
      expect(said).toEqual([]);
      // The first day is no figure of the place then, but today.
      expect([todayAt.includes('fromDay'), marks.some(({ at }) => at === 'fromDay')]).toEqual(today === '2026-11-01' ? [false, true] : [true, false]);
    }
    // The day of turn-in begins the plan of the next winter, for which this hay is too old.
    expect(on('2027-04-20').texts).toMatchObject({ fromDay: '2027-11-01', toDay: '2028-04-20' });
    expect(on('2027-04-20').said[0]).toMatch(/^The hay that your place has on hand is not counted here\. .*older than 18 months/);
  });
  it('of a place that tells only its stock are those of this winter too', () => {
    const { hay, season, ...bare } = demo;
    expect([hay, season]).not.toContain(undefined);
    expect(fill('hay-to-grass', { place: bare, today: '2026-12-01' }).texts).toMatchObject({ fromDay: '2026-12-01', toDay: '2027-04-20' });
  });
  it('of births are those of this winter, or else the nearest to it', () => {
    const births = (birthsDay: string, today: string) => {
      const herd: Place['herd'] = [{ id: 'c', kind: 'cow', countHead: 45, weightLb: 1250, birthsDay }];
      return rowsIn(fill('hay-to-grass', { place: with_({ herd }), today }).texts['herd'])[0]?.['birthDay'];
    };
    // Calved in fall, she nurses from the first day on; calving in May, she is dry to the last.
    expect(births('10-01', '2026-08-01')).toBe('2026-10-01');
    expect(births('05-10', '2026-08-01')).toBe('2027-05-10');
    expect(births('03-10', '2027-03-20')).toBe('2027-03-10');
  });
  it('go by a date that is told already, as by the one on which the grass ends', () => {
    const given = { fromDay: '2026-12-05' };
    const { texts, marks } = fill('hay-to-grass', { today: '2026-11-29', given });
    expect([texts['fromDay'], texts['toDay']]).toEqual(['2026-12-05', '2027-04-20']);
    expect(marks.filter(({ offer }) => offer.startsWith('season.')).map(({ at }) => at)).toEqual(['toDay']);
  });
  it('of a stack of hay stay what they are', () => {
    const baled = (baledDay: string) =>
      fill('hay-to-grass', { place: with_({ hay: { stacks: [{ id: 'a', baleCount: 60, baleLb: 950, baledDay, storedAs: 'barn' }] } }) });
    expect(baled('2025-10-01').texts['baledDay']).toBe('2025-10-01');
    // Older than the form can take: it says so, and counts none, not that of the example.
    const old = baled('2024-07-01');
    expect(old.said).toEqual([expect.stringMatching(/^The hay that your place has on hand is not counted here\. .*older than 18 months/)]);
    expect(old.texts['onHand']).toBe('none');
    expect(old.marks.find(({ at }) => at === 'onHand')?.says).toBe('what lies there is not counted');
  });
  it('too old for a form leave how it is fed and what is bought as the place has it', () => {
    const stacks = [{ id: 'a', baleCount: 60, baleLb: 950, baledDay: '2024-07-01', storedAs: 'barn' }] as const;
    const bought = { baleLb: 1230, loadCount: 31 };
    const { texts, marks } = fill('hay-to-grass', { place: with_({ hay: { stacks: [...stacks], bought, feeder: 'ring-open' } }) });
    expect([texts['onHand'], texts['feeder'], plain(textIn(texts['baleLb']))]).toEqual(['none', 'ring-open', '1230 lb']);
    expect(marks.map(({ offer }) => offer)).toEqual(expect.arrayContaining(['hay.onHand', 'hay.boughtBale', 'hay.load', 'hay.feeder']));
  });
  it('of the next grazing season stand in a form of one that is opened in winter, looking ahead from turn-in', () => {
    for (const [today, year] of [
      // The form asks for a day on which they could go, twenty from today and before the last one.
      ['2026-10-10', 2026],
      ['2026-10-11', 2027],
      ['2026-12-31', 2027],
      ['2027-01-15', 2027],
      ['2027-04-19', 2027],
      ['2027-04-20', 2027],
    ] as const) {
      const { texts, marks, said, todayAt, isExampleDates } = fill('carrying-capacity', { today });
      const isAhead = !['2026-10-10', '2027-04-20'].includes(today);
      expect([texts['fromDay'], texts['toDay'], isExampleDates], today).toEqual([`${year}-04-20`, `${year}-10-31`, false]);
      expect(texts['todayDay'], today).toBe(isAhead ? `${year}-04-20` : today);
      expect(todayAt.includes('todayDay'), today).toBe(!isAhead);
      expect(marks.find(({ at }) => at === 'todayDay')?.says, today).toBe(isAhead ? 'turn-in' : undefined);
      expect(said.join(), today).toBe(
        isAhead ? 'The grazing season of your place is over, or nearly. This looks ahead to the next one, from the day of turn-in.' : '',
      );
    }
  });
  it('of the example stay all together where those of the place would be refused, and bear no mark', () => {
    const winter = fill('carrying-capacity', { place: with_({ season: { turnInDay: '04-20' } }), today: '2027-01-15' });
    expect(winter.isExampleDates).toBe(true);
    expect([winter.texts['fromDay'], winter.texts['todayDay']]).toEqual(['2026-04-20', '2026-06-20']);
    expect(winter.marks.some(({ offer }) => offer.startsWith('season.'))).toBe(false);
    expect(winter.marks.some(({ offer }) => offer.startsWith('herd.'))).toBe(true);
  });
});

it('hands on which half of the world it lies in, and the nearest latitude there', () => {
  const at = (latitudeDeg: number) => {
    const place = with_({ latitudeDeg });
    return ['stored-water', 'season'].map((slug) => fill(slug, { place }).texts['latitude']);
  };
  expect(at(-33)).toEqual(['south-35', 'south-35']);
  expect(at(-41)).toEqual(['south-45', 'south-45']);
  expect(at(33)).toEqual(['north-35', 'north-35']);
  for (const slug of ['days-of-grass', 'rest-and-moves', 'standing-feed'])
    expect([-33, 33].map((latitudeDeg) => fill(slug, { place: with_({ latitudeDeg }) }).texts['isSouth'])).toEqual(['yes', 'no']);
});

describe('what does not fit', () => {
  it('is left to the example and told', () => {
    const place = with_({ latitudeDeg: 64, hotF: 135 });
    expect(fill('stored-water', { place }).marks.some(({ at }) => at === 'latitude')).toBe(false);
    expect(fill('stock-water', { place }).said).toEqual(['Hottest day to plan for: your place’s 135 °F is more or less than this form can take.']);
  });
  it('stays out by subject where it and the example refuse each other', () => {
    const prices: Place['prices'] = { hayLikelyUsdPerTon: 260 };
    const filled = fill('hay-value', { place: with_({ prices }) });
    expect('outcome' in runTexts(calculatorOf('hay-value'), filled.texts)).toBe(true);
    expect(filled.said).toEqual([
      'What your place has of prices is left out of this form. The high price is below the likely one. It may still be the example’s: put in the most that such hay went for lately.',
    ]);
    const all = with_({ prices: { hayLowUsdPerTon: 200, hayLikelyUsdPerTon: 260, hayHighUsdPerTon: 300 } });
    expect(plain(textIn(fill('hay-value', { place: all }).texts['priceUsdPerTon']))).toBe('260 usd/ton');
    expect(fill('hay-to-grass', { place: all }).texts['pricedBy']).toBe('range');
  });
  it('is not to blame for a date that its reader gave and the form refuses with or without it', () => {
    const filled = fill('standing-feed', { given: { fromDay: '2028-06-01' } });
    expect('refusals' in runTexts(calculatorOf('standing-feed'), filled.texts)).toBe(true);
    expect(filled.said).toEqual([]);
    expect(filled.marks.some(({ offer }) => offer.startsWith('herd.'))).toBe(true);
  });
  it('has stacks that a form has no room for', () => {
    const stack = { baleLb: 900, baledDay: '2026-07-01' };
    const hay: Place['hay'] = {
      stacks: [
        { id: 'a', baleCount: 20, ...stack },
        { id: 'b', baleCount: 80, ...stack },
      ],
    };
    const filled = fill('hay-to-grass', { place: with_({ hay }) });
    expect(filled.texts['ownCount']).toBe('80');
    expect(filled.said).toEqual(['Another stack of your place does not fit here. This is the largest.']);
    expect(plain(textIn(fill('feed-or-sell', { place: with_({ hay }) }).texts['hayOnHandLb']))).toBe('90000 lb');
    expect(fill('feed-or-sell', { place: with_({ hay }) }).said).toEqual([]);
  });
});

it('tells the day of a slip beside what it says', () => {
  const water: Place['water'] = [
    { id: 'w', name: 'Pond', supply: 'pond', surfaceAc: 1.2, slip: { day: '2026-06-03', sulfateMgPerL: 800, saltMgPerL: 1500 } },
  ];
  const { texts, marks } = fill('stock-water', { place: with_({ water }) });
  expect([texts['slip'], texts['surfaceFrom'], plain(textIn(texts['sulfateMgPerL']))]).toEqual(['tested', 'known', '800 mg/l']);
  expect(marks.find(({ at }) => at === 'sulfateMgPerL')?.says).toBe('slip of Jun 3, 2026');
});

describe('several waters', () => {
  const pond = { id: 'a', name: 'House pond', supply: 'pond', maxDepthFt: 9 } as const;
  const well = { id: 'b', name: 'Well', supply: 'flow', flowGpm: 4 } as const;
  const at = (water: Place['water'], ids: readonly string[] = []) => fill('stock-water', { place: with_({ water }), chosen: { ids } });
  const offersIn = ({ marks }: Filled) => marks.flatMap(({ offer }) => (offer.startsWith('water.') ? [offer] : []));
  const asks = 'Your place has 2 places with water, and this form takes one: tap the one that you mean.';
  it('give nothing before somebody has said which is meant', () => {
    expect(offersIn(at([pond, well]))).toEqual([]);
    expect(at([pond, well]).said).toContain(asks);
  });
  it.each([
    [pond, 'pond'],
    [well, 'flow'],
  ] as const)('give what $name has once it is chosen, and ask no more', ({ id }, supply) => {
    const filled = at([pond, well], ['low-bench', id]);
    expect(filled.texts['supply']).toBe(supply);
    expect(offersIn(filled)).toContain(id === 'a' ? 'water.maxDepth' : 'water.flow');
    expect(offersIn(filled)).not.toContain(id === 'a' ? 'water.flow' : 'water.maxDepth');
    expect(filled.said).not.toContain(asks);
  });
  it('are not asked about where there is one', () => {
    expect(offersIn(at([pond]))).toContain('water.maxDepth');
    expect(at([pond]).said.join()).not.toContain('places with water');
  });
});

it('writes the units of the reader', () => {
  const { texts } = fillTexts(calculatorOf('soil-loss'), allOffers(demo, day('2026-06-20'), { ids: ['low-bench'] }), day('2026-06-20'), 'si');
  // 85 international acres are 34.398 ha.
  expect(plain(textIn(texts['areaAc']))).toBe('34.4 ha');
});
