import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import ringTest from '../../calculators/catalog/ring-test/definition.ts';
import { runQuery } from '../../calculators/kit/cases.ts';
import { toLink } from '../../calculators/kit/link.ts';
import { fromLink } from '../../calculators/kit/openLink.ts';
import { readCell } from '../../calculators/kit/read.ts';
import { readDuration } from '../../calculators/units/readDuration.ts';
import { readQuantity } from '../../calculators/units/readQuantity.ts';
import { units } from '../../calculators/units/units.ts';

const two = (part: number): string => String(part).padStart(2, '0');

describe('a time of more than one unit', () => {
  // Sixty seconds in a minute, sixty minutes in an hour (ISO 80000-3).
  it.each([
    ['14:30', 'min', 14.5],
    ['14:30', 's', 870],
    ['0:07', 's', 7],
    ['90:00', 'min', 90],
    ['1:02:30', 'min', 62.5],
    ['1:03:00', 'hr', 1.05],
    ['2:05.4', 's', 125.4],
    ['14min 30s', 'min', 14.5],
    ['14 min 30 sec', 's', 870],
    ['14 minutes, 30 seconds', 'min', 14.5],
    ['14m30s', 'min', 14.5],
    ['14′ 30″', 'min', 14.5],
    ['14\' 30"', 'min', 14.5],
    ["14' 30''", 'min', 14.5],
    ['1h 5min', 'min', 65],
    ['1 hr 5 min 30 s', 'min', 65.5],
    ['2 min 5.4 s', 's', 125.4],
    ['90 min 15 s', 'min', 90.25],
  ] as const)('%s asked for in %s is %s', (text, unit, value) => {
    expect(readQuantity(text, unit)).toEqual({ is: 'duration', value });
  });
  it('is exact to the second in every unit of time', () => {
    fc.assert(
      fc.property(fc.nat(99), fc.nat(59), fc.constantFrom('min', 's'), (minutes, seconds, unit) => {
        const total = 60 * minutes + seconds;
        for (const text of [`${minutes}:${two(seconds)}`, `${minutes}min ${seconds}s`, `${minutes} min, ${seconds} sec`]) {
          const reading = readQuantity(text, unit);
          expect(reading.is === 'duration' ? reading.value : reading).toBe(unit === 's' ? total : Number((total / 60).toPrecision(14)));
        }
      }),
    );
  });
  it.each([
    ['14:75', 'min', '15:15'],
    ['14:5', 'min', '14:05'],
    ['1:75:00', 'min', '2:15:00'],
    ['14 min 75 s', 'min', '15:15'],
    ['14:30', 'hr', '14h 30min, or 14min 30s'],
  ] as const)('%s in %s is refused, with what would be right', (text, unit, instead) => {
    expect(readQuantity(text, unit)).toEqual({ is: 'off watch', instead });
  });
  it('asks for something that it takes itself', () => {
    fc.assert(
      fc.property(fc.nat(99), fc.integer({ min: 60, max: 99 }), (minutes, seconds) => {
        const reading = readQuantity(`${minutes}:${seconds}`, 'min');
        expect(reading.is === 'off watch' ? readQuantity(reading.instead, 'min') : reading).toEqual({
          is: 'duration',
          value: Number(((60 * minutes + seconds) / 60).toPrecision(14)),
        });
      }),
    );
  });
  it('leaves one unit, and what is not time, to the reading of quantities', () => {
    for (const text of ['14.5', '870 s', '14 min', '1/2', '14:', ':30', '1:2:3:4', '14::30', '-14:30', '14,30', 'min s'])
      expect(readDuration(text, 'min')).toEqual({ is: 'none' });
    for (const unit of ['in', 'd', 'ft', 'count'] as const) expect(readQuantity('14:30', unit).is).toBe('unit');
    expect(units.min.dimension).toBe(units.s.dimension);
  });
  it('is never slow, whatever it is handed', () => {
    const started = performance.now();
    for (const text of ['1'.repeat(50_000), '1 '.repeat(25_000), '1h'.repeat(25_000), `1:${'0'.repeat(50_000)}`]) readDuration(text, 'min');
    expect(performance.now() - started).toBeLessThan(200);
  });
});

describe('a watch reading in a form', () => {
  const column = ringTest.inputs['rings']?.kind === 'rows' ? ringTest.inputs['rings'].columns['secondMin'] : undefined;
  if (!column) throw new TypeError('the ring test has lost its second pouring');
  it('is taken by the ring test', () => {
    const rate = (time: string) => runQuery(ringTest, `rings.first=${time}&rings.pours=once&rings.end=gone`).values['middleInPerHr'];
    expect(rate('14:30')).toBe(rate('14.5min'));
    expect(rate('14min+30s')).toBe(rate('870s'));
  });
  it('says what is wrong in words, at the field', () => {
    expect(readCell(column, '14:75')).toEqual({
      problem: 'Time of the second pouring: minutes and seconds run from 00 to 59, in two figures. Write 15:15.',
    });
    expect(readCell(column, '99:59:59')).toMatchObject({ problem: expect.stringMatching(/must be from/) });
  });
  it('comes back from a link as it was typed', () => {
    const { form } = fromLink(ringTest, 'rings.first=14:30,3min&rings.pours=once,once&rings.end=gone,gone');
    expect(form.this['rings']).toMatchObject([{ firstMin: '14:30' }, {}]);
    const again = fromLink(ringTest, toLink(ringTest, form)).form;
    expect(again.this['rings']).toEqual(form.this['rings']);
  });
});
