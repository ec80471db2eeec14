// The first lines of a working: what was put in, in the unit that it was put in and in the equation's own.
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import weaning from '../../calculators/catalog/early-weaning/definition.ts';
import rain from '../../calculators/catalog/rain-on-ground/definition.ts';
import type { Calculator } from '../../calculators/kit/define.ts';
import { unitMark } from '../../calculators/kit/read.ts';
import { runTexts } from '../../calculators/kit/runTexts.ts';
import { startTexts, type Texts } from '../../calculators/kit/state.ts';
import { WorkingInputs } from '../../calculators/ui/WorkingParts.tsx';
import type { UnitSystem } from '../../calculators/units/units.ts';

function lines(calculator: Calculator, more: Texts, system: UnitSystem): readonly string[] {
  const texts = { ...startTexts(calculator.inputs, system), ...more };
  const ran = runTexts(calculator, texts, system);
  if (!('outcome' in ran)) throw new RangeError(JSON.stringify(ran.refusals));
  const markup = render(<WorkingInputs calculator={calculator} texts={texts} outcome={ran.outcome} />);
  return [...markup.matchAll(/<li>([^<]*)<b>(.*?)<\/b>/g)].map(([, label, said = '']) => `${label}${said}`.replaceAll('\u00a0', ' '));
}
const line = (calculator: Calculator, more: Texts, label: string, system: UnitSystem = 'us'): string | undefined =>
  lines(calculator, more, system)
    .find((each) => each.startsWith(`${label}: `))
    ?.slice(label.length + 2);

describe('what was put in', () => {
  it('names units as people read them, and leaves out what lies behind the figures that were shown', () => {
    // The example's 2,500 gallons stand in the field as 9,464 liters, which are 2,500.12; its $300 a hundred lb as 6.614 a kg, which are 300.006.
    expect(line(rain, { tankFrom: 'known' }, 'Tank holds', 'si')).toBe('9,464 L = 2,500 gal');
    expect(line(weaning, {}, 'Quote for the weight now', 'si')).toBe('$6.614 a kg = $300 a hundred lb');
  });
  it('holds three figures behind the first of what was typed, and thousands whole', () => {
    // 75 mm over 25.4 are 2.9528 in; 12,345 ha over 0.404 685 64 are 30,505.2 ac.
    expect(line(rain, { rainIn: '75 mm' }, 'Rain')).toBe('75 mm = 2.953 in');
    expect(line(rain, { areaAc: `12345${unitMark}ha` }, 'Ground')).toBe('12,345 ha = 30,505 ac');
  });
  it('says it once where it was typed in the equation’s own unit, with every figure', () => {
    expect(line(rain, { rainIn: '2 inches' }, 'Rain')).toBe('2 in');
    expect(line(rain, { rainIn: `1.23456${unitMark}in` }, 'Rain')).toBe('1.23456 in');
    expect(line(rain, { rainIn: '3 1/2 in' }, 'Rain')).toBe('3 1/2 in = 3.5 in');
  });
});
