import { describe, expect, it } from 'vitest';
import type { Cell } from '../../calculators/kit/inputs.ts';
import { hasSameRows, movedTexts } from '../../calculators/kit/movedTexts.ts';
import { offers } from '../../calculators/kit/offers.ts';
import { quantityText } from '../../calculators/kit/read.ts';
import { rowsIn, startTexts, type Texts } from '../../calculators/kit/state.ts';
import { textAt } from '../../calculators/kit/textAt.ts';
import { withTextAt } from '../../calculators/kit/withTextAt.ts';
import { dayOf } from '../../calculators/units/printQuantity.ts';
import type { Place } from '../../src/place/model/place.ts';
import { keepableOf, withPasture, withWater } from '../../src/place/offer/keepable.ts';
import { isWhole } from '../../src/place/offer/puts.ts';
import { stageOf } from '../../src/place/offer/stages.ts';
import { calculatorOf, calculators } from '../support/catalog.ts';
import { near } from '../support/near.ts';
import { allOffers, fillTexts } from './allOffers.ts';
import { aPlace } from './aPlace.ts';

const today = dayOf('2027-06-20') ?? 0;
const empty = aPlace({ pastures: [], herd: [] });
function kept(slug: string, typed: Readonly<Record<string, string>>, place: Place = empty, waterId = 'w-new') {
  const calculator = calculatorOf(slug);
  const texts = Object.entries(typed).reduce<Texts>((now, [at, to]) => withTextAt(now, at, to), startTexts(calculator.inputs));
  let count = 0;
  const list = keepableOf({
    calculator,
    texts,
    system: 'us',
    isOwn: (path) => Object.hasOwn(typed, path),
    place,
    pastureId: 'p-new',
    waterId,
    todayDay: today,
    newId: () => `id-${count++}`,
  });
  const onGround = withPasture(place, 'p-new', 'Pasture 1');
  const start = list.some(({ of }) => of === 'water') ? withWater(onGround, waterId, 'Water') : onGround;
  return { list, after: list.reduce((now, { put }) => put(now), start) };
}

describe('what a form knows and a place does not', () => {
  it('is what somebody typed, never the example', () => {
    expect(kept('days-of-grass', {}).list).toEqual([]);
    const { list, after } = kept('days-of-grass', { areaAc: '60\u00a0ac', 'stock.0.countHead': '38', untilDay: '2027-09-15' });
    expect(list.map(({ label, shown }) => `${label}: ${shown}`)).toEqual([
      'Acres of the pastures: 60 ac',
      'Stock on this grass: 38 nursing cows of 1,250 lb',
      'Last day on grass: Sep 15, 2027',
    ]);
    expect(isWhole(after)).toBe(true);
    expect(after.pastures).toMatchObject([{ id: 'p-new', areaAc: 60 }]);
    expect(after.season).toEqual({ endDay: '09-15' });
    expect(after.herd).toEqual([{ id: 'id-0', kind: 'cow', countHead: 38, told: { stage: 'nursing', day: '2027-06-20' } }]);
  });
  it('is not how stock stand today, where a form of the winter was filled in June', () => {
    expect(kept('standing-feed', { 'stock.0.countHead': '38' }).after.herd).toEqual([{ id: 'id-0', kind: 'cow', countHead: 38 }]);
  });
  it('is the hay on hand and the hay that is bought', () => {
    const { list, after } = kept('hay-to-grass', { ownCount: '120', baledDay: '2027-06-01', feeder: 'cone' });
    expect(list.map(({ key }) => key).toSorted()).toEqual(['baledDay', 'feeder', 'ownCount']);
    expect(after.hay).toEqual({ feeder: 'cone', stacks: [{ id: 'stack-1', baleCount: 120, countedDay: '2027-06-20', baledDay: '2027-06-01' }] });
    expect(isWhole(after)).toBe(true);
  });
  it('writes over bales that were counted only where it is asked for, and dates them', () => {
    const place = aPlace({ hay: { stacks: [{ id: 'a', baleCount: 60 }] } });
    const { list, after } = kept('hay-to-grass', { ownCount: '48' }, place);
    expect(list).toMatchObject([{ key: 'ownCount', replaces: true }]);
    expect(after.hay?.stacks).toEqual([{ id: 'a', baleCount: 48, countedDay: '2027-06-20' }]);
  });
  it('leaves several stacks alone, for nobody knows which was meant', () => {
    const place = aPlace({
      pastures: [],
      herd: [],
      hay: {
        stacks: [
          { id: 'a', baleCount: 5 },
          { id: 'b', baleCount: 9 },
        ],
      },
    });
    expect(kept('hay-to-grass', { ownCount: '120' }, place).list).toEqual([]);
  });
  it('is the water', () => {
    const { after } = kept('stock-water', { supply: 'pond', maxDepthFt: '9\u00a0ft' });
    expect(after.water).toEqual([{ id: 'w-new', name: 'Water', supply: 'pond', maxDepthFt: 9 }]);
    expect(isWhole(after)).toBe(true);
  });
  it('goes to the one of several waters that was meant, and leaves the others as they are', () => {
    const [pond, well] = [
      { id: 'a', name: 'Pond', supply: 'pond', maxDepthFt: 7 },
      { id: 'b', name: 'Well', supply: 'flow', flowGpm: 4 },
    ] as const;
    const place = aPlace({ pastures: [], herd: [], water: [pond, well] });
    const { list, after } = kept('stock-water', { supply: 'pond', maxDepthFt: '9\u00a0ft' }, place, 'a');
    expect(list).toMatchObject([{ key: 'maxDepthFt', of: 'water', replaces: true }]);
    expect(after.water).toEqual([{ ...pond, maxDepthFt: 9 }, well]);
    expect(kept('stock-water', { maxDepthFt: '9\u00a0ft' }, place, 'w-new').after.water).toEqual([
      pond,
      well,
      { id: 'w-new', name: 'Water', maxDepthFt: 9 },
    ]);
  });
  it('is the soil under the pasture', () => {
    const { after } = kept('soil-loss', { texture: 'clay-loam', areaAc: '60\u00a0ac' });
    expect(after.soils).toEqual([{ id: 'soil-p-new', name: 'Soil of Pasture 1', texture: 'clay-loam' }]);
    expect(after.pastures[0]).toMatchObject({ soilId: 'soil-p-new', areaAc: 60 });
    expect(isWhole(after)).toBe(true);
  });
  it('is every layer of the soil once each is measured, and no layer while one is still the example’s', () => {
    const first = { 'layers.0.thicknessIn': '9\u00a0in', 'layers.0.texture': 'loam', 'layers.0.stonesPercent': '10\u00a0pct' };
    expect(kept('stored-water', first).list).toEqual([]);
    const count = rowsIn(startTexts(calculatorOf('stored-water').inputs)['layers']).length;
    const all = { ...first, ...Object.fromEntries(Array.from({ length: count - 1 }, (_, each) => [`layers.${each + 1}.thicknessIn`, '14\u00a0in'])) };
    const { list, after } = kept('stored-water', all);
    expect(list).toMatchObject([{ of: 'pasture', replaces: false }]);
    expect(after.soils[0]?.layers).toHaveLength(count);
    expect(after.soils[0]?.layers?.[0]).toEqual({ thicknessIn: 9, texture: 'loam', stonesPercent: 10 });
    expect(after.pastures[0]?.soilId).toBe(after.soils[0]?.id);
    expect(isWhole(after)).toBe(true);
    expect(kept('stored-water', all, after).list).toEqual([]);
  });
  it('is the rain of the station once all twelve months are typed', () => {
    const months = (count: number) => Object.fromEntries(Array.from({ length: count }, (_, each) => [`stationIn.${each}`, `${each + 1}\u00a0in`]));
    const from = { rainFrom: 'station' };
    expect(kept('decision-dates', { ...from, ...months(11) }).list.map(({ key }) => key)).not.toContain('stationIn');
    const { list, after } = kept('decision-dates', { ...from, ...months(12) });
    expect(list.map(({ key }) => key)).toContain('stationIn');
    expect(after.stationMonthsIn).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(isWhole(after)).toBe(true);
  });
  it('is kept in the units of the place, whatever was typed', () => {
    // 16 ha are 39.54 acres: 1 ha is 2.471 acres (NIST SP 811).
    near(kept('days-of-grass', { areaAc: '16\u00a0ha' }).after.pastures[0]?.areaAc, 39.54, 0.005);
  });
  it('stands unticked where the place says something else, and not at all where it says the same', () => {
    const place = aPlace({ prices: { hayLikelyUsdPerTon: 165 }, pastures: [], herd: [{ id: 'c', kind: 'cow', countHead: 45, birthsDay: '03-10' }] });
    expect(kept('hay-value', { priceUsdPerTon: '165\u00a0usd/ton' }, place).list).toEqual([]);
    const { list, after } = kept('hay-value', { priceUsdPerTon: '180\u00a0usd/ton' }, place);
    expect(list.map(({ replaces }) => replaces)).toEqual([true]);
    expect(after.prices).toEqual({ hayLikelyUsdPerTon: 180 });
    const herd = kept('days-of-grass', { 'stock.0.countHead': '50' }, place);
    expect(herd.list.map(({ replaces }) => replaces)).toEqual([true]);
    // Their day of birth is known, and says more than the word of a form.
    expect(herd.after.herd).toEqual([{ id: 'c', kind: 'cow', countHead: 50, birthsDay: '03-10' }]);
  });
  it('is nothing that cannot be read, or that only the form has a word for', () => {
    expect(kept('days-of-grass', { areaAc: 'about 60' }).list).toEqual([]);
    expect(kept('cover-count', { country: 'humid' }).list).toEqual([]);
    expect(kept('days-of-grass', { 'stock.0.kind': 'other', 'stock.0.countHead': '12' }).list).toEqual([]);
  });
  it('comes back into the form that it came from', () => {
    const { after } = kept('days-of-grass', { areaAc: '60\u00a0ac', stopHeightIn: '4\u00a0in', 'stock.0.countHead': '38', untilDay: '2027-09-15' });
    const { texts, marks } = fillTexts(calculatorOf('days-of-grass'), allOffers(after, today), today);
    for (const [at, text] of [
      ['areaAc', '60\u00a0ac'],
      ['stopHeightIn', '4\u00a0in'],
      ['stock.0.kind', 'cow-nursing'],
      ['stock.0.countHead', '38'],
      ['untilDay', '2027-09-15'],
    ] as const) {
      expect(textAt(texts, at), at).toBe(text);
      expect(marks.map((mark) => mark.at)).toContain(at);
    }
  });
});

/** Typed one by one into a form, over the example: another number, the next of a list. */
const anotherText = (cell: Cell): string | undefined => {
  if (cell.kind === 'number') return quantityText(cell.default === cell.max ? cell.min : cell.max, cell.unit);
  return cell.kind === 'choice' ? Object.keys(cell.options).find((each) => each !== cell.default) : undefined;
};
/** Offers that tell from where a number comes, or what follows from others: the number itself is kept. */
const followsFrom = new Set<string>(
  Object.keys(offers).filter((key) =>
    /From$|^(?:pastures\.(?:ground|normal)|herd\.|record\.|rain\.|earlier\.|visit\.|layer\.|grazing\.eaten)/.test(key),
  ),
);
/** Words of a form alone, which a place tells by a figure. */
const notKept = new Set<string>([
  'place.latitude',
  'pasture.rooting',
  'pasture.paddocks',
  'pasture.paddockArea',
  'pasture.standingFeed',
  'hay.onHand',
  // Worked out of the price at the seller's gate.
  'prices.hayDelivered',
  'prices.hayDry',
  'hay.ownLb',
  // Sums of several.
  'pastures.hayArea',
  'season.grassDays',
  'water.slip',
]);
it.each(calculators.map(({ slug }) => slug))('%s: each figure that a place can hold is kept from it, whole and as it was typed', (slug) => {
  const { inputs } = calculatorOf(slug);
  for (const [name, input] of Object.entries(inputs)) {
    if (input.kind === 'rows' || input.kind === 'months' || input.kind === 'record' || input.offeredBy === undefined) continue;
    const key = input.offeredBy;
    const text = anotherText(input);
    if (text === undefined || followsFrom.has(key) || notKept.has(key)) continue;
    // Where it is asked for at all.
    const beside = Object.fromEntries(Object.entries(input.shownWhen ?? {}).map(([at, word]) => [at, String([word].flat()[0])]));
    const { list, after } = kept(slug, { ...beside, [name]: text });
    const found = list.find((each) => each.key === name);
    const isWord = input.kind === 'choice';
    if (found === undefined && isWord) continue;
    expect(found, `${name} by ${key}`).toBeDefined();
    expect(isWhole(after), name).toBe(true);
    const again = kept(slug, { ...beside, [name]: text }, after).list.find((each) => each.key === name);
    expect(again, `${name} is known to the place now`).toBeUndefined();
  }
});

it('holds a told stage for a season, and never against a day of birth', () => {
  const told = { stage: 'nursing', day: '2027-06-20' } as const;
  expect(stageOf({ kind: 'cow', told }, today + 90)).toBe('nursing');
  expect(stageOf({ kind: 'cow', told }, today + 91)).toBe('dry');
  expect(stageOf({ kind: 'cow', told, birthsDay: '11-01' }, today)).toBe('dry');
  expect(stageOf({ kind: 'bull', told }, today)).toBe('dry');
});

describe('another choice at the place', () => {
  it('moves what stands as the one before had it, and leaves what was typed', () => {
    const before = { areaAc: '85', stopHeightIn: '4', stock: [{ kind: 'cow', countHead: '45' }] };
    const after = {
      areaAc: '120',
      stopHeightIn: '3.5',
      stock: [
        { kind: 'cow', countHead: '45' },
        { kind: 'bull', countHead: '2' },
      ],
    };
    expect(movedTexts({ ...before, stopHeightIn: '5' }, before, after)).toEqual({ ...after, stopHeightIn: '5' });
    const own = { ...before, stock: [{ kind: 'cow', countHead: '50' }] };
    expect(movedTexts(own, before, after)['stock']).toEqual(own.stock);
  });
  it('finds and writes a text by its path', () => {
    const texts = { a: '1', months: ['1', '2'], rows: [{ x: '1' }, { x: '2' }] };
    expect(['a', 'months.1', 'rows.1.x', 'rows.5.x', 'none'].map((at) => textAt(texts, at))).toEqual(['1', '2', '2', undefined, undefined]);
    expect(withTextAt(texts, 'months.0', '9')['months']).toEqual(['9', '2']);
    expect(withTextAt(texts, 'rows.1.x', '9')['rows']).toEqual([{ x: '1' }, { x: '9' }]);
    expect([hasSameRows(texts.rows, [{ x: '3' }]), hasSameRows(texts.rows, texts.rows)]).toEqual([false, true]);
  });
});
