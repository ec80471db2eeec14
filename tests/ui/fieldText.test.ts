import { expect, it } from 'vitest';
import { unitMark } from '../../calculators/kit/read.ts';
import { keptText, shownText } from '../../calculators/ui/fieldText.ts';
import { readQuantity } from '../../calculators/units/readQuantity.ts';
import { isUnit, unitIn, units } from '../../calculators/units/units.ts';

const names = Object.keys(units).filter(isUnit);

it('a number with a unit is kept as it was typed, but for a unit cut short to what the field shows of it', () => {
  const taken = names.flatMap((unit) =>
    (['us', 'si'] as const).flatMap((system) => {
      const shown = unitIn(system, unit);
      const spellings = names.flatMap((each) => {
        const { dimension, print, words, typed } = units[each];
        return dimension === units[unit].dimension ? [each, print, words, words.replace(/s$/, ''), ...typed] : [];
      });
      const typed = [...new Set(spellings)].filter((each) => !/^[$/]?$/.test(each)).map((each) => `3 ${each}`);
      return typed.filter((each) => keptText(each, unit, system) !== each).map((each) => `${each} in ${system} beside ${shown}`);
    }),
  );
  expect([...new Set(taken)].toSorted()).toEqual([
    '3 dollars in si beside usd/ha',
    '3 millimeters in si beside mm/tonne/ha',
    '3 mm in si beside mm/tonne/ha',
    '3 usd in si beside usd/ha',
  ]);
});
it('what a field shows of a kept text reads as the same amount', () => {
  for (const [typed, unit] of [
    ['34 mm', 'in/ton/ac'],
    ['1 200 dollars', 'usd/ac'],
    ['34', 'in/ton/ac'],
  ] as const) {
    const kept = keptText(typed, unit, 'si');
    const [here, there] = [readQuantity(kept, unit), readQuantity(shownText(kept, unit, 'us'), unit)];
    expect(kept).toBe(`${typed}${unitMark}${unitIn('si', unit)}`);
    expect(here).toMatchObject({ is: 'value', unit: unitIn('si', unit) });
    expect(there).toEqual(here);
  }
});
