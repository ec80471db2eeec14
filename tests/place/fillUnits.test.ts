import { describe, expect, it } from 'vitest';
import { movedTexts } from '../../calculators/kit/movedTexts.ts';
import { changeSystem, rowsIn, type Texts, textIn } from '../../calculators/kit/state.ts';
import { withTextAt } from '../../calculators/kit/withTextAt.ts';
import type { UnitSystem } from '../../calculators/units/units.ts';
import type { Place } from '../../src/place/model/place.ts';
import { calculatorOf } from '../support/catalog.ts';
import { allOffers, fillTexts } from './allOffers.ts';
import { day, demo, plain, with_ } from './filled.ts';

const today = day('2026-06-20');
const calculator = calculatorOf('days-of-grass');
const filledAt = (place: Place, ids: readonly string[]) => (system: UnitSystem) =>
  fillTexts(calculator, allOffers(place, today, { ids }), today, system).texts;
const changed = (texts: Texts, from: UnitSystem, to: UnitSystem, placedIn: (system: UnitSystem) => Texts) =>
  changeSystem(calculator.inputs, texts, from, to, placedIn);

describe('what a place put in, in other units', () => {
  const low = filledAt(demo, ['low-bench']);
  it('is converted, and comes back as it was', () => {
    const metric = changed(low('us'), 'us', 'si', low);
    // 85 international acres are 34.398 ha, 1,900 lb 861.8 kg.
    expect(plain(textIn(metric['areaAc']))).toBe('34.4 ha');
    expect(rowsIn(metric['stock']).map(({ weightLb = '' }) => plain(weightLb))).toContain('861.8 kg');
    expect(changed(metric, 'si', 'us', low)).toEqual(low('us'));
  });
  it('goes with another pasture after that as it did before', () => {
    const high = filledAt(demo, ['high-bench']);
    const metric = changed(low('us'), 'us', 'si', low);
    expect(movedTexts(metric, low('si'), high('si'))).toEqual(high('si'));
    // 120 acres are 48.562 ha.
    expect(plain(textIn(high('si')['areaAc']))).toBe('48.56 ha');
  });
  it('stays as somebody typed it over, and as it was typed at the place', () => {
    const own = withTextAt(low('us'), 'areaAc', '90 acres');
    expect(changed(own, 'us', 'si', low)['areaAc']).toBe('90 acres');
    const typed = filledAt(with_({ pastures: [{ id: 'a', name: 'A', areaAc: 40, typed: { areaAc: '40 acres' }, isCounted: true, paddocks: [] }] }), [
      'a',
    ]);
    expect(changed(typed('us'), 'us', 'si', typed)['areaAc']).toBe('40 acres');
  });
});
